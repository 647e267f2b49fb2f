import re

import pytest

from tests.architecture.tree import ROOT
from wintertight.coach.intake.answers import Answers
from wintertight.coach.intake.order import askable, next_question, worth
from wintertight.coach.intake.questions import QUESTIONS, Stage, standing

PAGE = (ROOT / "docs" / "questions.md").read_text(encoding="utf-8")
STAGES: tuple[Stage, ...] = ("phone", "walk-around")
TRAILER = Answers().with_answer("shape", "short travel trailer")


def order(answers: Answers, stage: Stage) -> list[str]:
    """Give the order in which a stage asks, if everything is left open."""
    left: frozenset[str] = frozenset()
    asked = []
    while (question := next_question(answers, left, stage)) is not None:
        asked.append(question.key)
        left |= {question.key}
    return asked


def test_the_shape_comes_first() -> None:
    """Guards that what all guesses hang on is asked first, though it settles no fitting."""
    assert worth(QUESTIONS["shape"], Answers()) == 0
    assert order(Answers(), "phone")[0] == "shape"


def test_what_settles_most_comes_next() -> None:
    """Guards the order by hand: kinds settled and one for a guessed fitting, then the table."""
    # Four kinds; two kinds and a guess; three kinds; a guess each; nothing.
    assert order(TRAILER, "phone") == [
        *("appliances", "heater", "outside", "bypass", "baths", "design low", "length"),
    ]


def test_around_the_coach_the_order_is_by_worth() -> None:
    """Guards that no question comes before one that would settle more."""
    counts = [worth(QUESTIONS[key], TRAILER) for key in order(TRAILER, "walk-around")]
    assert counts == sorted(counts, reverse=True)
    assert counts[0] > counts[-1] == 0


def test_of_equals_the_one_that_moves_gallons_comes_first() -> None:
    """Guards that among questions which settle as much, gallons decide."""
    asked = [QUESTIONS[key] for stage in STAGES for key in order(TRAILER, stage)]
    ranks = [(q.stage == "phone", worth(q, TRAILER), q.moves_gal) for q in asked]
    assert ranks == sorted(ranks, reverse=True)


def test_gallons_moved_are_those_of_the_trials() -> None:
    """Guards that no question claims to move more or less than the page of the trials says."""
    rows = re.findall(
        r"^\| ([a-z -]+) \| (?:phone|walk-around) \| ([0-9.]+) \|", PAGE, re.MULTILINE
    )
    assert {key: round(float(gallons)) for key, gallons in rows} == {
        key: q.moves_gal for key, q in QUESTIONS.items() if key != "shape"
    }


def test_what_an_answer_settled_counts_no_more() -> None:
    """Guards that a kind which another answer has settled adds nothing."""
    question = QUESTIONS["antifreeze inlet"]
    assert worth(question, TRAILER) == 3
    known = TRAILER.with_answer("antifreeze inlet", "no inlet")
    assert worth(question, known) == 1


@pytest.mark.parametrize(
    ("key", "answer", "never"),
    [
        ("heater", "on-demand heater", {"bypass", "heater tank"}),
        ("heater", "no heater", {"bypass", "heater tank", "mixing"}),
        ("baths", "no bath", {"toilet", "tub", "sprayer"}),
        ("appliances", (), {"fridge filter", "fridge shut-off"}),
        ("outside", ("spray port",), {"outside shut-off"}),
    ],
)
def test_what_has_no_sense_is_not_asked(
    key: str, answer: str | tuple[str, ...], never: set[str]
) -> None:
    """Guards that nobody is asked for the toilet of a coach without a bath."""
    answers = TRAILER.with_answer(key, answer)
    assert never.isdisjoint([*order(answers, "phone"), *order(answers, "walk-around")])
    assert len(askable(answers, "phone")) + len(askable(answers, "walk-around")) == (
        len(QUESTIONS) - len(never | _without_outside_and_fridge(answers))
    )


def _without_outside_and_fridge(answers: Answers) -> set[str]:
    """Give what is never asked of a coach without outside shower and water at the fridge."""
    assert "outside shower" not in answers.several("outside")
    return {"outside shut-off", "fridge filter", "fridge shut-off"}


def test_an_answer_that_lost_its_sense_does_not_count() -> None:
    """Guards that a later answer drops what hung on the earlier one, and brings it back."""
    answers = TRAILER.with_answer("bypass", "three valves").with_answer("heater", "no heater")
    assert not standing(answers).known("bypass")
    assert standing(answers.with_answer("heater", "tank of 6 gal")).known("bypass")


def test_no_stage_asks_twice() -> None:
    """Guards that what is answered or left open is not asked again."""
    asked = [*order(TRAILER, "phone"), *order(TRAILER, "walk-around")]
    assert len(asked) == len(set(asked))
    assert "shape" not in asked
