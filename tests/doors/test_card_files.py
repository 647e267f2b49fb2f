"""Cards compared, copied for a sister coach, and their earlier selves."""

import tomllib
from datetime import UTC, datetime
from pathlib import Path

import pytest

from tests.doors.door import CARD, Door
from wintertight.coach.history import history_file, replace_card
from wintertight.coach.load import load_card

TEXT = CARD.read_text("utf-8")
NEW = TEXT.replace('drains_to = "kitchen-trap"\n', "", 1).replace('"27 ft"', '"28 ft"', 1)
DAY = datetime(2025, 10, 4, 9, 30, tzinfo=UTC)


@pytest.fixture
def card(tmp_path: Path) -> Path:
    """Give a card that was replaced once."""
    file = tmp_path / "HL.toml"
    file.write_text(TEXT, encoding="utf-8")
    replace_card(file, NEW, "looked\nagain", DAY)
    return file


def test_two_cards_are_compared(door: Door, card: Path) -> None:
    """Guards the sentences, the units asked for, and that a card is like itself."""
    done = door("coach", "compare", CARD, card)
    assert done.status == 0
    head, *rest = done.out.splitlines()
    assert head.endswith(": 2 differences.")
    assert rest[0] == "- Coach: length was 27 ft (told, within 10 %), is 28 ft (told, within 10 %)."
    assert rest[1] == "- Kitchen tap: what it drains to was kitchen-trap, is no longer given."
    assert "8.23 m" in door("coach", "compare", CARD, card, "--units", "metric").out
    assert door("coach", "compare", CARD, CARD).out.endswith(": no difference.\n")


def test_the_differences_are_data(door: Door, card: Path) -> None:
    """Guards the object: SI with the unit in the key, and the same sentences."""
    found = door("coach", "compare", card, "--json").object()
    assert found["schema"] == "wintertight/card-changes/1"
    assert found["after"]["card_hash"] == load_card(card).card_hash
    assert found["before"]["card_hash"] == load_card(CARD).card_hash
    length, drain = found["differences"]
    assert length["before"] == {"value_m": pytest.approx(8.2296), "how": "told", "spread": 0.1}
    assert (drain["subject"], drain["part"], drain["field"]) == ("fitting", "kitchen", "drains_to")
    assert "after" not in drain
    assert f"- {drain['text']}\n" in door("coach", "compare", card).out


def test_every_demo_card_can_be_compared_with_every_other(door: Door) -> None:
    """Guards that no kind of value is without its plain data."""
    cards = sorted(CARD.parent.glob("*.toml"))
    for one, other in zip(cards, [*cards[1:], cards[0]], strict=True):
        assert door("coach", "compare", one, other, "--json").object()["differences"]


def test_a_card_without_earlier_self_says_so(door: Door, tmp_path: Path) -> None:
    """Guards one clear line where there is nothing to compare with."""
    door("coach", "compare", CARD).refused("WT-100", "no earlier self", "another card")
    assert door("coach", "history", CARD).out.endswith(": this card was never replaced.\n")
    door("coach", "history", tmp_path / "none.toml").refused("WT-101", "no such file")


def test_the_history_is_listed(door: Door, card: Path) -> None:
    """Guards when, why and how much changed, on screen and as data."""
    head, entry = door("coach", "history", card).out.splitlines()
    assert head.endswith(": 1 earlier card, oldest first.")
    assert entry == "- 2025-10-04 09:30  looked again: 2 differences to the next."
    assert "2 differences from the card replaced 2025-10-04" in door("coach", "compare", card).out
    (found,) = door("coach", "history", card, "--json").object()["earlier"]
    assert found == {
        "at": "2025-10-04T09:30:00+00:00",
        "why": "looked\nagain",
        "card_hash": load_card(CARD).card_hash,
        "differences": 2,
    }


def test_a_cut_line_is_told(door: Door, card: Path) -> None:
    """Guards that damage is told on every screen and hides nothing else."""
    with history_file(card).open("a", encoding="utf-8") as stream:
        stream.write('{"schema": "wintertight/card-hist')
    for command in ("history", "compare"):
        out = door("coach", command, card).out
        assert "Line 2 of " in out
        assert "2 differences" in out
    assert door("coach", "history", card, "--json").object()["damaged_lines"] == [2]


def test_a_history_of_nothing_but_damage_is_not_silent(door: Door, card: Path) -> None:
    """Guards that a history of which no line can be read is not taken for none."""
    history_file(card).write_text("{", encoding="utf-8")
    door("coach", "compare", card).refused("WT-100", "no earlier self that can be read")
    out = door("coach", "history", card).out
    assert "no earlier card can be read" in out
    assert "Line 1 of " in out


def test_a_spoilt_card_still_has_its_history(door: Door, card: Path) -> None:
    """Guards that earlier selves are listed when they are needed most, and none is made up."""
    card.write_text("spoilt", encoding="utf-8")
    assert "is no card that can be read." in door("coach", "history", card).out
    (found,) = door("coach", "history", card, "--json").object()["earlier"]
    assert (found["differences"], found["why_null"]) == (None, "no card")
    replace_card(card, TEXT, "mended", DAY)
    door("coach", "compare", card).refused("WT-100", "no card that can be read")


def test_a_sister_gets_a_card(door: Door, tmp_path: Path) -> None:
    """Guards the new card, its comment, what is asked next, and that it can be checked."""
    file = tmp_path / "sister.toml"
    done = door("coach", "sister", CARD, file, "--id", "HL-901", "--name", 'The "other" one')
    assert done.status == 0
    assert "HL-901" in done.out.splitlines()[0]
    text = file.read_text("utf-8")
    asked = [line for line in done.out.splitlines() if line.startswith("- ")]
    assert asked
    assert all(f"# {line}\n" in text for line in asked)
    assert tomllib.loads(text)["name"] == 'The "other" one'
    assert load_card(file).id == "HL-901"
    assert door("coach", "check", file).status == 0


def test_a_file_that_is_there_is_not_written_over(door: Door, tmp_path: Path) -> None:
    """Guards every file that stands where the new card should go, and a folder that is not."""
    file = tmp_path / "sister.toml"
    file.write_text("mine", encoding="utf-8")
    door("coach", "sister", CARD, file, "--id", "HL-901").refused("WT-100", "not written over")
    assert file.read_text("utf-8") == "mine"
    door("coach", "sister", CARD, tmp_path / "no" / "s.toml", "--id", "HL-901").refused(
        "WT-100", "cannot be written"
    )


@pytest.mark.parametrize("number", ["HL 901", load_card(CARD).id])
def test_a_wrong_number_names_its_option(door: Door, tmp_path: Path, number: str) -> None:
    """Guards that the line names the option, and nothing is written."""
    file = tmp_path / "sister.toml"
    door("coach", "sister", CARD, file, "--id", number).refused("WT-120", "--id:")
    assert not file.exists()
