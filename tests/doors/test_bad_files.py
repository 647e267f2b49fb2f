from pathlib import Path

import pytest

from tests.doors.door import CARD, Door

BAD = {
    "missing.toml": None,
    "binary.toml": b"\x89PNG\r\n\x1a\n\x00\xff",
    "huge.toml": b"# " + 4_000_001 * b"x",
    "deep.toml": b"a = " + 5000 * b"[" + 5000 * b"]",
    "empty.toml": b"",
    "prose.toml": b"Dear shop,\nhere is my coach.\n",
    "nan.toml": b"id = nan\n",
    "other.toml": b'schema = "wintertight/shop/1"\n',
}


@pytest.fixture
def bad(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    """Give a file that is no card and no list."""
    name = str(request.param)
    content, file = BAD[name], tmp_path / name
    if content is not None:
        file.write_bytes(content)
    return file


@pytest.mark.parametrize("bad", BAD, indirect=True)
@pytest.mark.parametrize(
    "command", [("plan",), ("flow", "--open", "kitchen"), ("coach", "check")], ids=" ".join
)
def test_a_bad_card_is_one_line(door: Door, command: tuple[str, ...], bad: Path) -> None:
    """Guards that whatever lies where a card should, each command refuses it in one line."""
    done = door(*command, bad, "--json")
    done.refused(done.err[:6], bad.name)
    assert done.err[:6] in {"WT-101", "WT-111", "WT-120"}


@pytest.mark.parametrize("bad", BAD, indirect=True)
def test_a_bad_list_is_one_line(door: Door, bad: Path) -> None:
    """Guards that whatever lies where the shop's list should is refused in one line."""
    done = door("plan", CARD, "--shop", bad)
    done.refused(done.err[:6], bad.name)
    assert done.err[:6] in {"WT-101", "WT-111", "WT-120"}


@pytest.mark.parametrize("bad", BAD, indirect=True)
def test_a_bad_record_is_one_line(door: Door, bad: Path) -> None:
    """Guards that whatever lies where the record should is refused in one line."""
    done = door("prove", CARD, "--done", bad, "--json")
    done.refused(done.err[:6], bad.name)
    assert done.err[:6] in {"WT-101", "WT-111", "WT-130"}


def test_a_folder_is_one_line(door: Door, tmp_path: Path) -> None:
    """Guards that a folder in the place of a file is named as such."""
    door("plan", tmp_path).refused("WT-101", "folder")
    door("prove", CARD, "--done", tmp_path).refused("WT-101", "folder")
    door("plan", CARD, "--shop", tmp_path).refused("WT-101", "folder")


def test_a_wrong_field_is_found_by_line_and_name(door: Door, tmp_path: Path) -> None:
    """Guards that the line tells where in the card to look."""
    lines = CARD.read_text("utf-8").splitlines()
    at = lines.index('cut_off = "55 psi"')
    lines[at] = "cut_off = 55"
    card = tmp_path / "card.toml"
    card.write_text("\n".join(lines), encoding="utf-8")
    door("coach", "check", card).refused(
        "WT-110", f"card.toml:{at + 1} fitting[pump].cut_off: ", "psi"
    )
