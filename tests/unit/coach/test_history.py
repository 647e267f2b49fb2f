"""Earlier selves of a card."""

import json
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from wintertight.coach.history import earlier, history, history_file, keep, replace_card
from wintertight.coach.load import load_card, read_card
from wintertight.errors import InputError, SyntaxFault, UnreadableFile

FILE = Path(__file__).parents[3] / "src/wintertight/demo/cards/small-trailer.toml"
OLD = FILE.read_text("utf-8")
NEW = OLD.replace('"2.8 ft"', '"3 ft"')
NEWEST = OLD.replace('"2.8 ft"', '"3.1 ft"')
DAY = datetime(2025, 10, 4, 9, 30, tzinfo=UTC)


@pytest.fixture
def card(tmp_path: Path) -> Path:
    """Give a card's file of its own."""
    file = tmp_path / "HL-118.toml"
    file.write_text(OLD, encoding="utf-8")
    return file


def test_a_replaced_card_stays_in_its_history(card: Path) -> None:
    """Guards that every earlier text is kept whole, oldest first, with when and why."""
    assert earlier(card) == ()
    replace_card(card, NEW, "line measured", DAY)
    now = replace_card(card, NEWEST, "measured again", DAY + timedelta(days=1))
    assert card.read_text("utf-8") == NEWEST
    assert now.card_hash == load_card(card).card_hash
    first, second = earlier(card)
    assert (first.text, first.why, first.at) == (OLD, "line measured", DAY)
    assert (second.text, second.card_hash) == (NEW, read_card(NEW).card_hash)
    assert history_file(card) == card.with_name("HL-118.history.jsonl")
    assert sorted(file.name for file in card.parent.iterdir()) == [
        "HL-118.history.jsonl",
        "HL-118.toml",
    ]


def test_a_line_of_the_history_is_what_it_is_said_to_be(card: Path) -> None:
    """Guards the format of the file."""
    replace_card(card, NEW, "why ❄", DAY)
    (line,) = history_file(card).read_text("ascii").splitlines()
    assert json.loads(line) == {
        "schema": "wintertight/card-history/1",
        "at": "2025-10-04T09:30:00+00:00",
        "why": "why ❄",
        "card_hash": read_card(OLD).card_hash,
        "text": OLD,
    }


def test_a_bad_text_changes_nothing(card: Path) -> None:
    """Guards that the new text is read before anything is written."""
    with pytest.raises(SyntaxFault, match=r"HL-118\.toml"):
        replace_card(card, "schema = ", "slip", DAY)
    assert card.read_text("utf-8") == OLD
    assert not history_file(card).exists()


@pytest.mark.parametrize("cut", [1, 40, 2000])
def test_a_cut_write_loses_no_other(card: Path, cut: int) -> None:
    """Guards that a damaged line is told and stays apart from those before and after it."""
    replace_card(card, NEW, "one", DAY)
    replace_card(card, NEWEST, "two", DAY)
    file = history_file(card)
    file.write_bytes(file.read_bytes()[:-cut])
    # Without its last sign, a line is whole still.
    whole = ["one", "two"] if cut == 1 else ["one"]
    damaged = () if cut == 1 else (2,)
    assert [e.why for e in history(card).entries] == whole
    assert history(card).damaged == damaged
    replace_card(card, OLD, "three", DAY)
    assert [e.why for e in history(card).entries] == [*whole, "three"]
    assert history(card).damaged == damaged


@pytest.mark.parametrize(
    "line", ["[]", "3", "null", '{"schema": "x"}', "[" * 100_000, '{"at": 3}', "\ufffd{"]
)
def test_strange_lines_are_damaged_lines(card: Path, line: str) -> None:
    """Guards that nothing in the file can stop the others from being read."""
    replace_card(card, NEW, "one", DAY)
    with history_file(card).open("a", encoding="utf-8") as stream:
        stream.write(line + "\n")
    assert (len(earlier(card)), history(card).damaged) == (1, (2,))


def test_a_card_that_cannot_be_read_is_kept_too(card: Path) -> None:
    """Guards that a broken card may be replaced, and its text is not lost."""
    card.write_text("broken", encoding="utf-8")
    replace_card(card, NEW, "mended", DAY)
    assert [(e.text, e.card_hash) for e in earlier(card)] == [("broken", None)]


def test_a_second_try_keeps_one(card: Path) -> None:
    """Guards that a card kept before a failed move is not kept twice for the same reason."""
    keep(card, "line measured", DAY)
    replace_card(card, NEW, "line measured", DAY)
    assert len(earlier(card)) == 1


def test_a_failed_move_leaves_the_card(card: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Guards that the card stands as it was, and no part of a file is left."""

    def refuse(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", refuse)
    with pytest.raises(InputError, match="No space left on device; the card stands as it was"):
        replace_card(card, NEW, "line measured", DAY)
    assert card.read_text("utf-8") == OLD
    assert len(list(card.parent.iterdir())) == 2


def test_a_history_that_cannot_be_opened_is_one_line(card: Path) -> None:
    """Guards that a folder in its place is told and the card is not replaced."""
    history_file(card).mkdir()
    with pytest.raises(UnreadableFile, match="history cannot be read"):
        replace_card(card, NEW, "line measured", DAY)
    assert card.read_text("utf-8") == OLD


def test_a_linked_card_keeps_its_history_beside_the_card(card: Path, tmp_path: Path) -> None:
    """Guards that a link stays a link, and both ways to a card lead to one history."""
    link = tmp_path / "link.toml"
    link.symlink_to(card)
    replace_card(link, NEW, "line measured", DAY)
    assert link.is_symlink()
    assert card.read_text("utf-8") == NEW
    assert earlier(link) == earlier(card) != ()
