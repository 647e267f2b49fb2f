"""Every wrong setting, sign and outcome has its words, and the names in braces fit."""

from string import Formatter
from typing import get_args

import pytest

from tests.unit.wording.test_coverage import names_in
from wintertight.coach.card import Card
from wintertight.procedure.mistake_outcome import MistakeOutcome, Outcome, Sign, SignKey
from wintertight.procedure.mistakes import MISTAKES, Mistake
from wintertight.wording.catalogue import LANGUAGES, catalogue
from wintertight.wording.english import ENGLISH
from wintertight.wording.mistakes import (
    BY_EASE,
    mistake_text,
    mistakes_heading,
    seen_text,
    sign_text,
)

CASES = [(key, how) for key, hows in MISTAKES.items() for how in (*hows, *([] if hows else [""]))]
GIVEN = {"part", "heater", "seconds", "share"}
BARE = Card.model_construct(id="X", name="X", fittings=(), lines=())


def said(subject: str) -> set[str]:
    """Give the keys of a subject in English."""
    return set(ENGLISH[subject])


@pytest.mark.parametrize(("key", "how"), CASES)
def test_every_mistake_has_its_sentence(key: str, how: str) -> None:
    """Guards that each mistake says in each circumstance what is wrong and what settles it."""
    for subject in ("mistake", "mistake settle"):
        assert said(subject) & {key, f"{key}: {how}"}, subject


@pytest.mark.parametrize("subject", ["mistake", "mistake settle"])
def test_no_words_are_left_over(subject: str) -> None:
    """Guards that no words stay behind when their mistake or circumstance goes."""
    known = {key for key, _ in CASES} | {f"{key}: {how}" for key, how in CASES}
    known.add("failed check: hole")
    assert sorted(said(subject) - known) == []


def test_signs_outcomes_and_headings_are_those_there_are() -> None:
    """Guards that what the procedure tells has words, and that nothing else has."""
    assert said("sign") == {*get_args(SignKey), "seen", "cup", "none"}
    assert set(BY_EASE) == set(get_args(SignKey))
    outcomes = set(get_args(Outcome))
    assert said("mistake outcome") == outcomes | {"doubtful", "water", "more", "less"}
    shown = {f"{o}: {how}" for o in outcomes for how in ("no tap shows it", "seen")}
    assert said("mistake piece") == {"sentence", "and more"} | shown


@pytest.mark.parametrize("key", sorted(ENGLISH["mistake"]))
def test_mistakes_name_only_what_they_are_given(key: str) -> None:
    """Guards that no name in braces is left without words."""
    assert names_in(ENGLISH["mistake"][key]) <= GIVEN


def test_what_settles_it_needs_no_names() -> None:
    """Guards that the cure is said without parameters."""
    assert {k for k, text in ENGLISH["mistake settle"].items() if names_in(text)} == set()


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    "subject",
    ["mistake", "mistake settle", "mistake outcome", "sign", "cause", "cause in passing", "sight"],
)
def test_pieces_fit_into_one_sentence(subject: str, language: str) -> None:
    """Guards that no piece begins large or ends in a stop: they are put together."""
    pieces = catalogue(language)[subject]
    wrong = [k for k, text in pieces.items() if text.endswith(".") or text[0].isupper()]
    assert wrong == []


def test_names_in_braces_are_read() -> None:
    """Guards the reading of names itself."""
    assert list(Formatter().parse("{part} and {share}"))
    assert names_in("{part} and {share}") == {"part", "share"}


def test_the_strongest_sign_is_named_and_the_rest_counted() -> None:
    """Guards that a sign seen at many outlets names the one where it is plainest."""
    late = [Sign("late", "aft", seconds=8.0), Sign("late", "fore", seconds=95.0)]
    assert sign_text(late, BARE) == "colour comes 1 min 35 s late at the fore (and 1 more)"
    pale = [Sign("stays pale", "aft", share=0.64), Sign("stays pale", "fore", share=0.71)]
    assert sign_text(pale, BARE) == "only 64 % of full strength comes at the aft (and 1 more)"


def test_what_is_easy_to_see_comes_first() -> None:
    """Guards that a flood under the coach is told before a pale cup."""
    signs = (Sign("stays pale", "aft", share=0.6), Sign("runs elsewhere", "fore"))
    text = seen_text(MistakeOutcome("gap", signs=signs), BARE)
    assert text == (
        "to be seen: antifreeze runs out at the fore, only 60 % of full strength comes at the aft"
    )


def test_what_only_a_cup_shows_is_said_so() -> None:
    """Guards the difference between what a tap shows, what a cup shows, and nothing at all."""
    pale = MistakeOutcome("gap", signs=(Sign("stays pale", "aft", share=0.6),))
    assert seen_text(pale, BARE).startswith("the taps show nothing, a cup held beside the jug")
    assert seen_text(MistakeOutcome("gap"), BARE) == "no tap shows it"
    assert mistakes_heading(pale) == mistakes_heading(MistakeOutcome("gap"))


def test_only_what_bursts_is_said_to_burst() -> None:
    """Guards that parts nobody can vouch for are counted apart from those that would burst."""
    outcome = MistakeOutcome(
        "gap",
        parts=("trunk", "aft", "fore"),
        bursting=("trunk",),
        water_m3=2e-3,
        more_m3=4e-3,
    )
    text = mistake_text(Mistake("branch left shut", "valve"), outcome, BARE)
    assert text == (
        "The valve left shut: nothing behind it is drained or filled; trunk would burst, nobody"
        " could vouch for 2 parts more, 0.5 gal of water stays behind, 1.1 gal more antifreeze"
        " than planned is used; no tap shows it; to settle it, open it and run every outlet"
        " behind it."
    )
    metric = mistake_text(Mistake("branch left shut", "valve"), outcome, BARE, system="metric")
    assert "2 L of water" in metric


def test_a_refused_order_says_why() -> None:
    """Guards that a hazard brought about by a mistake stands in its sentence."""
    outcome = MistakeOutcome("hazard", hazard="heat without water")
    text = mistake_text(Mistake("weak product", "pump", params={"share": 0.25}), outcome, BARE)
    assert ENGLISH["hazard"]["heat without water"] in text
