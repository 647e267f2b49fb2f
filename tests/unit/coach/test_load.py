import time
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.load import load_card, read_card
from wintertight.errors import InputError, UnreadableFile

FILE = Path(__file__).parents[3] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
TEXT = FILE.read_text("utf-8")
LINES = TEXT.splitlines()


def write(content: bytes) -> Callable[[Path], Path]:
    """Give what writes a file with this content into a folder."""

    def written(folder: Path) -> Path:
        path = folder / "card.toml"
        path.write_bytes(content)
        return path

    return written


@pytest.mark.parametrize(
    ("made", "says"),
    [
        (lambda folder: folder / "none.toml", "no such file"),
        (lambda folder: folder, "a folder, not a file"),
        (lambda folder: folder / "a\0b", "cannot be opened"),
        (write(b"#" * 4_000_001), "larger than 4 MB"),
        (write(b'schema = "x"\nname = "caf\xe9"\n'), "not UTF-8"),
        (write(TEXT.encode("utf-16")), "not UTF-8"),
    ],
)
def test_an_unreadable_file_is_one_line(
    tmp_path: Path, made: Callable[[Path], Path], says: str
) -> None:
    """Guards that no file, of whatever kind, ends in anything but one plain line."""
    with pytest.raises(UnreadableFile, match=says) as caught:
        load_card(made(tmp_path))
    assert len(str(caught.value).splitlines()) == 1


def test_a_byte_order_mark_and_carriage_returns_do_not_matter(tmp_path: Path) -> None:
    """Guards cards saved by editors of other systems, and the line numbers of their faults."""
    path = write(b"\xef\xbb\xbf" + TEXT.replace("\n", "\r\n").encode())(tmp_path)
    assert load_card(path).card_hash == read_card(TEXT).card_hash
    broken = TEXT.replace('"40 gal"', '"40"').replace("\n", "\r\n")
    with pytest.raises(InputError) as caught:
        read_card("\ufeff" + broken)
    assert caught.value.place.line == broken[: broken.index('"40"')].count("\n") + 1


@pytest.mark.parametrize(
    "text",
    [
        "a" + ".a" * 1_000_000 + " = 1",
        "a = " + "[" * 1_000_000,
        "a = " + "{a = " * 100_000,
        "[" * 1_000_000,
        "a = " + "1" * 1_000_000,
        'a = "' + "x" * 1_000_000,
        "[[fitting]]\n" * 20_000,
    ],
)
def test_hostile_texts_end_soon(text: str) -> None:
    """Guards against texts that are small, legal or not, and slow or deep."""
    before = time.perf_counter()
    with pytest.raises(InputError) as caught:
        read_card(text)
    assert len(str(caught.value)) < 1000
    assert time.perf_counter() - before < 10


def test_the_first_card_loads_at_once() -> None:
    """Guards the time to read a card in a warm process: 40 ms at most, best of five."""

    def once() -> float:
        before = time.perf_counter()
        read_card(TEXT)
        return time.perf_counter() - before

    assert min(once() for _ in range(5)) < 0.040


CHANGES = st.one_of(
    st.tuples(st.just("drop"), st.integers(0, len(LINES) - 1), st.just("")),
    st.tuples(st.just("twice"), st.integers(0, len(LINES) - 1), st.just("")),
    st.tuples(
        st.just("put"),
        st.integers(0, len(LINES) - 1),
        st.sampled_from(LINES)
        | st.sampled_from(["[[line]]", "[fitting]", "at = 1", "id = []", "x = {", '"""', "a.b=1"])
        | st.text(max_size=12),
    ),
    st.tuples(st.just("value"), st.integers(0, len(LINES) - 1), st.sampled_from(
        ["1", "-1", "nan", "inf", "true", "[]", "{}", '""', '"x"', "1979-05-27", "'1 ft'", "[[1]]",
         '{ told = "1 ft" }', '{ guessed = "1 ft", spread = 2 }', "9999999999999999", '"\\u0000"']
    )),
)  # fmt: skip


@given(st.lists(CHANGES, min_size=1, max_size=4))
def test_a_changed_card_is_a_card_or_an_input_error(changes: list[tuple[str, int, str]]) -> None:
    """Guards that no slip of an editor ends in an exception of another kind, or in two lines."""
    lines = list(LINES)
    for kind, at, text in changes:
        place = min(at, len(lines) - 1)
        if kind == "drop":
            del lines[place]
        elif kind == "twice":
            lines.insert(place, lines[place])
        elif kind == "put":
            lines[place] = text
        elif "=" in lines[place]:
            lines[place] = f"{lines[place].partition('=')[0]}= {text}"
    said = refusal("\n".join(lines))
    assert len(said.splitlines()) <= 1
    assert said.isprintable()


def refusal(text: str) -> str:
    """Give what is said of a text, or nothing if it is a card."""
    try:
        read_card(text, "card.toml")
    except InputError as error:
        return str(error)
    return ""
