import json
from pathlib import Path

from tests.architecture.tree import ROOT
from tests.doors.door import CARD, Door
from wintertight.coach.left_open import asked
from wintertight.coach.load import load_card


def test_check_names_every_finding_in_words(door: Door) -> None:
    """Guards that a readable card is status 0, and each finding is a sentence."""
    found = door("coach", "check", CARD, "--json").object()
    card = load_card(CARD)
    assert found["schema"] == "wintertight/check/1"
    assert found["card_hash"] == card.card_hash
    assert found["coach"] == {"id": card.id, "name": card.name}
    assert [f["key"] for f in found["findings"]] == [f.key for f in asked(card)]
    done = door("coach", "check", CARD)
    assert done.status == 0
    assert all(f"- {f['text']}\n" in done.out for f in found["findings"])


def test_check_reads_any_letters(door: Door, tmp_path: Path) -> None:
    """Guards that names in other scripts come through whole, and control signs do not."""
    text = CARD.read_text("utf-8").replace(
        'name = "Middle travel trailer, 27 ft, bath at the rear"',
        'name = "Fjällräv 雪 ❄ \\u001b[31m"',
    )
    card = tmp_path / "välkommen 雪.toml"
    card.write_text(text, encoding="utf-8")
    done = door("coach", "check", card)
    assert done.out.startswith("Fjällräv 雪 ❄")
    assert "\x1b" not in done.out
    assert door("coach", "check", card, "--json").out.isascii()


def test_check_asks_and_says_where_to_look(door: Door, tmp_path: Path) -> None:
    """Guards that what is open is a question a technician can answer at the coach."""
    card = tmp_path / "card.toml"
    card.write_text(CARD.read_text("utf-8").replace('drains_to = "kitchen-trap"\n', "", 1), "utf-8")
    lines = door("coach", "check", card).out.splitlines()
    assert (
        "- Kitchen tap: no trap is noted below it. Is there one? Look in the cabinet below."
    ) in lines
    assert any("what drains into it?" in line for line in lines)


def test_schema_is_the_one_in_the_manual(door: Door) -> None:
    """Guards that the printed schema and the committed one are the same."""
    committed = (ROOT / "docs" / "card.schema.json").read_text("utf-8")
    assert json.loads(door("coach", "schema").out) == json.loads(committed)


def test_a_language_or_unit_that_is_not_there_is_one_line(door: Door) -> None:
    """Guards that the line names the option and what there is."""
    door("coach", "check", CARD, "--language", "xx").refused("WT-140", "--language:", "en")
    door("coach", "check", CARD, "--units", "x").refused("WT-140", "--units:", "us or metric")
