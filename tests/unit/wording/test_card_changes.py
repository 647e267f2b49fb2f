"""Differences between cards, in words."""

from dataclasses import replace
from pathlib import Path
from typing import get_args

import pytest

from wintertight.coach.card import Antifreeze, Coach, Compartment, Fitting, Line, Site
from wintertight.coach.compare import KEYS, Subject, differences
from wintertight.coach.edit import changed
from wintertight.coach.load import load_card
from wintertight.coach.quantity import USUAL_SPREAD
from wintertight.units import System
from wintertight.wording.card_changes import amended_text, change_count, difference_text
from wintertight.wording.english.card_changes import CHANGES, FIELDS, SUBJECTS, WAYS
from wintertight.wording.english.coach_questions import HISTORY

FOLDER = Path(__file__).parents[3] / "src/wintertight/demo/cards"
SMALL = load_card(FOLDER / "small-trailer.toml")
FULL = load_card(FOLDER / "full-fifth-wheel.toml")


def said(after: object, system: System = "us") -> list[str]:
    """Give all differences from the small trailer in words."""
    card = changed(SMALL, **after) if isinstance(after, dict) else FULL
    return [difference_text(d, SMALL, card, "en", system) for d in differences(SMALL, card)]


def test_a_length_says_both() -> None:
    """Guards the sentence of a changed length, in both systems of units."""
    line = SMALL.lines[0]
    measured = changed(line, length=replace(line.length, value=0.9144, how="measured", spread=0.02))
    after = {"lines": (measured, *SMALL.lines[1:])}
    assert said(after) == [
        "Tank stub: length was 2.8 ft (guessed, within 25 %), is 3 ft (measured, within 2 %)."
    ]
    assert "is 0.9144 m (measured" in said(after, "metric")[0]


def test_a_small_difference_is_shown() -> None:
    """Guards that two numbers that differ are not said to be the same."""
    assert SMALL.site is not None
    low = SMALL.site.design_low_degC
    assert low is not None
    (text,) = said({"site": changed(SMALL.site, design_low_degC=low + 0.0001)})
    assert text == "Site: design low was -10 °F, is -9.99982 °F."


def test_two_coaches_can_be_compared() -> None:
    """Guards that everything that can differ has a sentence."""
    texts = said(None)
    assert "Macerator pump: looked for, and this coach has none." not in texts
    assert 'Card: name was "Small trailer, 15 ft, wet bath", is "' in " ".join(texts)
    assert all(text.endswith(".") for text in texts)
    assert change_count(1) == "1 difference"
    assert change_count(len(texts)) == f"{len(texts)} differences"


AMENDED = {"amended": (1, False), "amended anew": (2, True), "amended nothing": (0, True)}


@pytest.mark.parametrize("key", AMENDED)
def test_each_outcome_of_a_correction_has_its_own_sentence(key: str) -> None:
    """Guards that who put a card right is told whether it was, and how much of it."""
    count, rewritten = AMENDED[key]
    said = amended_text("coach.toml", count, rewritten=rewritten)
    assert said == CHANGES[key].format(file="coach.toml", count=change_count(count))


def test_no_sentence_is_left_over() -> None:
    """Guards the tables against keys nobody says."""
    of_parts = ("compartment", "fitting", "line", "looked for")
    whole = {f"{key}: {of}" for key in ("added", "removed") for of in of_parts}
    headings = {"heading", "heading with earlier", "none", "one", "many", *AMENDED}
    assert set(CHANGES) == whole | (set(KEYS) - {"added", "removed"}) | headings
    assert set(WAYS) == {"quantity", "text", "yes", "no", *USUAL_SPREAD}
    assert set(SUBJECTS) | set(of_parts) == set(get_args(Subject))
    assert set(HISTORY) == {
        "none",
        "none readable",
        "heading one",
        "heading many",
        "entry",
        "unreadable",
        "damaged",
    }


def test_every_field_has_a_name() -> None:
    """Guards that no field of a card is without words, and no words without a field."""
    tables = (Coach, Site, Antifreeze, Compartment, Fitting, Line)
    assert set(FIELDS) == {name for table in tables for name in table.model_fields}
