"""A hot side without a low point of its own drains through the heater's bypass."""

import pytest

from tests.intake.described import looked_at
from tests.unit.procedure.demo_coach import PINK, celsius
from wintertight.coach.intake.made import made_card
from wintertight.coach.sides import hanging_on, sides_of
from wintertight.procedure.plan import Plan, plan_coach

pytestmark = pytest.mark.long

LEG = {"heater-hot-1", "heater-hot-2", "heater-hot-valve"}
"""What lies between a bypassed heater and the hot side."""


def planned(low_points: str) -> Plan:
    """Plan a short trailer with three valves at its heater, and these low points."""
    answers = looked_at("short travel trailer").with_answer("low points", low_points)
    answers = answers.with_answer("bypass", "three valves")
    card = made_card(answers, "S-1", "trailer")
    return plan_coach(card, PINK, celsius(-10.0), with_missed_steps=True)


def test_the_bypass_is_opened_where_the_hot_side_has_no_low_point() -> None:
    """Guards that the heater's hot leg drains by it, and that missing the step is a gap there."""
    plan = planned("cold only")
    (opened,) = (s for s in plan.steps if s.step.key == "open bypass to drain")
    assert (opened.step.part, opened.step.setting) == ("bypass-valve", "along")
    assert {p.id: p.claim for p in plan.parts if p.id in LEG} == dict.fromkeys(LEG, "drained")
    assert plan.verdict == "safe"
    assert opened.if_missed is not None
    assert opened.if_missed.outcome == "gap"
    assert set(opened.if_missed.parts) >= LEG


def test_it_stays_shut_where_the_hot_side_drains_by_itself() -> None:
    """Guards that a coach with both low points, or with none, gets no step more."""
    for low_points in ("two", "none"):
        keys = {s.step.key for s in planned(low_points).steps}
        assert "open bypass to drain" not in keys


def test_hot_and_cold_are_told_apart_across_a_bypass() -> None:
    """Guards the sides of lines: what is on one side of the bypass valve is not on the other."""
    card = planned("two").card
    sides = sides_of(card)
    assert sides["heater-hot-1"] == "hot"
    assert sides["heater-cold-1"] == "cold"
    hot = hanging_on(card, ["heater-hot-1"])
    assert {"heater-hot-2", "low-hot-stub"} <= hot
    assert not hot & {"heater-cold-1", "low-cold-stub"}
    assert {sides[line] for line in hot} == {"hot"}
