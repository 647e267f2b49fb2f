"""Questions about a card, in words."""

from pathlib import Path

import pytest

from wintertight.coach.findings import Finding
from wintertight.coach.kind_fields import SINKS
from wintertight.coach.kinds import ASKED_FOR
from wintertight.coach.left_open import ASKED
from wintertight.coach.load import load_card
from wintertight.coach.sister import QUESTIONS
from wintertight.wording.card_questions import finding_question, sister_questions
from wintertight.wording.english.coach_questions import QUESTIONS as SENTENCES
from wintertight.wording.english.coach_questions import SISTER, WHERE

FOLDER = Path(__file__).parents[3] / "src/wintertight/demo/cards"
SMALL = load_card(FOLDER / "small-trailer.toml")
SAID_OF_THE_FILE = {"written", "ask", "head", "head next"}


@pytest.mark.parametrize("key", ASKED)
def test_everything_open_is_a_question(key: str) -> None:
    """Guards that each key is asked in words, with its parameters."""
    given = {"kind": "kitchen tap", "missing": "heater hot", "vin": "1", "expected": "2"}
    params = {name: given.get(name, 1.0) for name in ASKED[key]}
    text = finding_question(Finding(key, "kitchen", params), SMALL)
    assert text.endswith((".", "?"))
    assert "?" in text or key.startswith("vin")


def test_no_sentence_is_left_over() -> None:
    """Guards the tables against keys nobody asks for."""
    assert set(SENTENCES) == set(ASKED)
    assert set(SISTER) == set(QUESTIONS) | SAID_OF_THE_FILE
    traps = {f"trap below {sink}" for sink in SINKS}
    assert set(WHERE) == {"any", *ASKED_FOR, *traps}


def test_it_is_said_where_to_look() -> None:
    """Guards that the place fits the kind, and a kind without one has a general hint."""
    trap = finding_question(Finding("no trap", "kitchen", {"kind": "kitchen tap"}), SMALL)
    assert trap.endswith("Is there one? Look in the cabinet below.")
    maker = finding_question(Finding("nobody has looked", "", {"kind": "ice maker"}), SMALL)
    assert maker.startswith("Ice maker: is there one? Look in the freezer")
    tee = finding_question(Finding("not looked at", "city-tee", {"kind": "tee"}), SMALL)
    assert tee.endswith("Look where its lines lead.")


def test_a_sister_is_asked_about() -> None:
    """Guards the questions that go with the card of a sister coach."""
    assert any("outside shower" in text for text in sister_questions(SMALL))
    assert not any(text.startswith("Ice maker") for text in sister_questions(SMALL))
