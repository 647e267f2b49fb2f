"""First aid for a coach that may have frozen."""

import pytest

from tests.methods.every_plan import CARDS, gaps, low_of, plan_of, product_of
from wintertight.flow.actions import Action
from wintertight.flow.replay import replay
from wintertight.flow.state import ICE
from wintertight.procedure.comparing import compare_methods
from wintertight.procedure.hazards import hazard_of
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.methods.worked import Asked
from wintertight.procedure.missed import missed_steps

PUSHING = ("pump", "hand-pump", "air", "air-then-pump", "drain")


@pytest.mark.parametrize("name", CARDS)
def test_nothing_is_claimed(name: str) -> None:
    """Guards that a coach that may have frozen is unproven, every part of it."""
    plan = plan_of(name, "thaw")
    assert plan.verdict == "unproven"
    assert {p.safe for p in plan.parts} == {None}
    assert {p.claim for p in plan.parts} == {"unproven"}
    assert not gaps(plan)


@pytest.mark.parametrize("name", CARDS)
def test_neither_pump_nor_air_before_it_is_warm(name: str) -> None:
    """Guards the order: nothing pushes, blows or heats until the coach has thawed."""
    plan = plan_of(name, "thaw")
    warmed = False
    for moment in plan.careful.moments:
        action = moment.action
        warmed = warmed or action.verb == "thaw"
        assert (ICE in moment.state.marks) is not warmed
        if not warmed:
            assert action.verb in {"set", "drain"}
            assert action.setting not in {"on", "hand pump", "air line"}


@pytest.mark.parametrize("name", CARDS)
@pytest.mark.parametrize("method", PUSHING)
def test_any_other_method_is_refused_on_ice(name: str, method: str) -> None:
    """Guards that every method that pushes anything is refused on a coach with ice in it."""
    frozen = plan_of(name, "thaw").careful.start
    plan = plan_of(name, method)
    found = set()
    state = frozen
    for step in plan.steps:
        for action in step.step.actions:
            found.add(hazard_of(plan.card, plan.careful.network, state, action))
            if action.verb == "set":
                state = state.with_setting(action.part, action.setting)
    assert "pressure on ice" in found


@pytest.mark.parametrize("name", ["small-trailer", "full-fifth-wheel"])
def test_leaving_out_the_warmth_is_a_hazard(name: str) -> None:
    """Guards the missed step: without it the test would press on ice."""
    plan = plan_of(name, "thaw")
    steps = tuple(p.step for p in plan.steps)
    warm = next(i for i, s in enumerate(steps) if s.key == "warm it")
    kept = [a for i, s in enumerate(steps) if i != warm for a in s.actions]
    state, found = plan.careful.start, set()
    for action in kept:
        found.add(hazard_of(plan.card, plan.careful.network, state, action))
        state = replay(plan.careful.network, state, [action]).end
    assert "pressure on ice" in found


@pytest.mark.parametrize("control", ["burner", "element"])
def test_no_heat_on_ice(control: str) -> None:
    """Guards the heater: it is not lit while ice may stand in it."""
    plan = plan_of("middle-travel-trailer", "thaw")
    on = Action("set", f"heater/{control}", "on")
    assert hazard_of(plan.card, plan.careful.network, plan.careful.start, on) == "heat on ice"


def test_first_aid_is_no_choice_among_methods() -> None:
    """Guards the comparison: it holds what can be chosen, and all of it."""
    card = CARDS["small-trailer"]
    found = [c.method for c in compare_methods(card, product_of(card), low_of(card))]
    assert set(found) == set(METHODS) - {"thaw"}


def test_the_trace_of_missed_steps_starts_on_ice() -> None:
    """Guards that leaving steps out is worked out from the coach as it arrives: frozen."""
    card = CARDS["small-trailer"]
    plan = plan_of("small-trailer", "thaw")
    steps = tuple(p.step for p in plan.steps)
    asked = Asked.of(card, product_of(card), low_of(card))
    outcomes = missed_steps(asked, steps, frozenset({ICE}))
    by_key = {s.key: o for s, o in zip(steps, outcomes, strict=True)}
    assert by_key["warm it"].outcome == "hazard"
    assert by_key["warm it"].hazard == "pressure on ice"
