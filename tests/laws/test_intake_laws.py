"""Laws of cards made from answers: whoever answers whatever gets plumbing that holds together."""

from functools import cache

import pytest

from tests.intake.described import crowded, drawn, looked_at
from tests.unit.procedure.demo_coach import PINK, celsius
from wintertight.coach.card import Card
from wintertight.coach.findings import findings
from wintertight.coach.intake.made import made_card
from wintertight.coach.intake.questions import QUESTIONS
from wintertight.coach.intake.shapes import SHAPES
from wintertight.coach.kinds import ASKED_FOR, KINDS
from wintertight.procedure.plan import plan_coach

CARDS, PLANS = 100, 6
SLIPS = {"heights inconsistent", "sag longer than line", "outside the coach", "valve without role"}


@cache
def card_of(seed: int) -> Card:
    """Make the card of a drawn coach."""
    return made_card(drawn(seed), f"R-{seed}", "drawn")


def test_fittings_have_room_and_lines_reach() -> None:
    """Guards places and lengths of drawn coaches: nothing overlaps, no line is too short."""
    for seed in range(CARDS):
        assert crowded(card_of(seed)) == "", seed


def test_no_card_has_slips() -> None:
    """Guards that a made card never needs a word about its own heights, places or roles."""
    for seed in range(CARDS):
        assert not {f.key for f in findings(card_of(seed))} & SLIPS, seed


def test_what_was_not_looked_at_is_not_absent() -> None:
    """Guards that no kind is called absent unless each question that settles it was answered."""
    for seed in range(CARDS):
        answers = drawn(seed)
        card = card_of(seed)
        for question in QUESTIONS.values():
            if question.asked_if(answers) and not answers.known(question.key):
                assert not set(question.settles) & set(card.looked_for.absent), (seed, question.key)


def test_every_kind_is_settled_once_all_is_answered() -> None:
    """Guards that a coach of which everything was answered has nothing left to look for."""
    for shape in SHAPES:
        card = made_card(looked_at(shape), "S-1", shape)
        there = {f.kind for f in card.fittings}
        assert set(ASKED_FOR) == set(card.looked_for.absent) | (there & set(ASKED_FOR)), shape
        assert all(f.seen == "present" for f in card.fittings), shape


def test_all_is_guessed_that_nobody_measured() -> None:
    """Guards that every length of a made card says that it is a guess, with its spread."""
    for seed in range(20):
        for line in card_of(seed).lines:
            assert line.length.how == "guessed"
            assert line.length.spread >= 0.2


def test_the_same_answers_make_the_same_card() -> None:
    """Guards that nothing but the answers decides what a card says."""
    answers = drawn(4)
    twice = [made_card(answers, "S-1", "twice").card_hash for _ in range(2)]
    assert twice[0] == twice[1]


@pytest.mark.parametrize("seed", range(PLANS))
def test_a_drawn_coach_is_planned(seed: int) -> None:
    """Guards that a plan comes of any answers, no step is like another, and its books close."""
    card = card_of(seed)
    plan = plan_coach(card, PINK, celsius(0.0))
    assert len({s.step.id for s in plan.steps}) == len(plan.steps)
    assert abs(plan.balance.relative_error) < 1e-9
    proven = {part.id.partition("/")[0] for part in plan.parts}
    wet = {f.id for f in card.fittings if f.seen == "present" and KINDS[f.kind].hollow_m3}
    assert wet <= proven | {f.id for f in card.fittings if not KINDS[f.kind].wetted}


@pytest.mark.parametrize("seed", range(3))
def test_leaving_a_question_open_makes_nothing_safe(seed: int) -> None:
    """Guards that a plan without some answers is never surer than with all of them."""
    whole = drawn(seed, left_open=0.0)
    parts = plan_coach(made_card(whole, "S-1", "whole"), PINK, celsius(0.0)).parts
    key = ("heater", "appliances", "antifreeze inlet")[seed]
    less = plan_coach(made_card(whole.without(key), "S-1", "less"), PINK, celsius(0.0))
    assert less.verdict != "safe"
    assert sum(p.safe is not True for p in less.parts) >= 1
    assert parts
