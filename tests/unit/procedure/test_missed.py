import pytest

from tests.unit.procedure.demo_coach import PINK, SMALL, card, celsius
from wintertight.procedure.methods.worked import Asked
from wintertight.procedure.missed import missed_steps
from wintertight.procedure.plan import plan_coach
from wintertight.procedure.steps import Missed


@pytest.fixture(scope="module")
def outcomes() -> dict[str, Missed]:
    """Give what comes of each missed step of the small coach."""
    plan = plan_coach(card(SMALL), PINK, celsius(-10.0), with_missed_steps=True)
    return {s.step.id: s.if_missed for s in plan.steps if s.if_missed is not None}


@pytest.mark.parametrize(
    ("step", "outcome", "parts"),
    [
        ("plug-out:heater", "gap", {"heater"}),
        ("set-bypass:bypass-valve", "gap", {"bypass-b", "low-hot", "kitchen"}),
        ("open-low-points", "gap", {"heater-cold-b", "heater-hot-b"}),
        ("draw-from-jug:jug-valve", "gap", {"hose", "jug-valve", "pump", "strainer"}),
        ("pump-on:pump", "gap", {"pump", "hose", "city-branch", "kitchen"}),
        ("run-outlet:kitchen.hot", "gap", {"kitchen"}),
        ("loosen-bowl:filter", "gap", {"filter"}),
        ("loosen-bowl:strainer", "gap", {"strainer"}),
        ("empty-waste-tanks", "gap", {"gray-tank"}),
        ("open-tank-drain:fresh-tank", "gap", {"fresh-tank"}),
        ("run-outlet:city-inlet", "unproven", {"city-inlet", "city-branch"}),
        ("run-pump-dry:pump", "unproven", {"tank-stub", "tank-valve"}),
        ("leave-taps-open", "hazard", {"kitchen", "pump"}),
        ("pump-off:pump", "hazard", {"pump"}),
        ("heat-off:heater", "hazard", set()),
        ("take-reading", "same", set()),
        ("hang-tag", "same", set()),
    ],
)
def test_what_comes_of_a_missed_step(
    outcomes: dict[str, Missed], step: str, outcome: str, parts: set[str]
) -> None:
    """Guards that a missed step names what it leaves in danger."""
    missed = outcomes[step]
    assert missed.outcome == outcome
    assert parts <= set(missed.parts)


def test_only_what_hangs_on_a_step_is_named(outcomes: dict[str, Missed]) -> None:
    """Guards against a list of everything: a bowl, a plug or a tank concerns itself alone."""
    for step in ("plug-out:heater", "loosen-bowl:filter", "loosen-bowl:strainer"):
        assert len(outcomes[step].parts) == 1


def test_a_heater_left_full_holds_its_water(outcomes: dict[str, Missed]) -> None:
    """Guards the water a missed plug leaves: a full heater of six gallons, taken as larger."""
    assert 0.0227 < outcomes["plug-out:heater"].water_m3 < 0.0250


def test_heat_left_on_is_a_hazard(outcomes: dict[str, Missed]) -> None:
    """Guards that a heater drained while heated is named as such."""
    assert outcomes["heat-off:heater"].hazard in {"heater drained while heated", "plug while hot"}


def test_no_steps_no_outcomes() -> None:
    """Guards the empty job."""
    plan_card = card(SMALL)

    assert missed_steps(Asked.of(plan_card, PINK, -20.0), ()) == ()
