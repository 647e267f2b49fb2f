"""Each method on each coach against what the trade says of it: common practice, no source."""

import pytest

from tests.methods.every_plan import CARDS, EVERY, gaps, of_kind, plan_of
from wintertight.procedure.plan import Plan

EMPTYING = ("drain", "air")
BY_ANTIFREEZE = ("pump", "air-then-pump")


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_a_record_can_tell_every_step_from_the_others(name: str, method: str) -> None:
    """Guards that no two steps of a job have one id: a record names steps by it."""
    ids = [planned.step.id for planned in plan_of(name, method).steps]
    assert len(set(ids)) == len(ids)


@pytest.mark.parametrize("name", CARDS)
@pytest.mark.parametrize("method", ["air", "drain", "hand-pump"])
def test_what_does_not_run_through_the_pump_leaves_it_wet(name: str, method: str) -> None:
    """Guards common practice: blowing out, and all that comes in at the inlet, misses the pump."""
    plan = plan_of(name, method)
    pumps = of_kind(plan, "demand pump")
    assert pumps
    assert pumps <= gaps(plan)
    assert plan.verdict == "gap"


@pytest.mark.parametrize("name", CARDS)
@pytest.mark.parametrize("method", BY_ANTIFREEZE)
def test_antifreeze_through_the_pump_covers_everything(name: str, method: str) -> None:
    """Guards common practice: run through its own pump to every outlet, a coach is protected."""
    assert plan_of(name, method).verdict == "safe"


@pytest.mark.parametrize("name", CARDS)
def test_blowing_out_first_needs_no_more_antifreeze(name: str) -> None:
    """Guards common practice: water blown out need not be pushed out."""
    # Run-on is counted in whole seconds, so that a coach whose lines drain anyway may take a
    # spoonful more: up to one per cent. And it is counted from colour: in a line of water the
    # middle of the stream runs ahead and shows it before the line is full, in a line of air nothing
    # does. What leaves a tap meanwhile comes on top.
    blown, pumped = plan_of(name, "air-then-pump"), plan_of(name, "pump")
    assert blown.antifreeze.p50 <= 1.01 * pumped.antifreeze.p50 + _while_colour_is_late(
        blown, pumped
    )
    assert blown.duration.p50 > pumped.duration.p50


def _while_colour_is_late(plan: Plan, beside: Plan) -> float:
    """Give what leaves the outlets of one plan between its colour and the other's [m3]."""
    earlier_s = {p.step.outlet: p.run.first_colour_s for p in beside.steps if p.run}
    return sum(
        run.flow_m3_s * max(0.0, (run.first_colour_s or 0.0) - (earlier_s[run.outlet] or 0.0))
        for run in (p.run for p in plan.steps)
        if run is not None and run.outlet in earlier_s
    )


@pytest.mark.parametrize("name", CARDS)
@pytest.mark.parametrize("method", EMPTYING)
def test_an_empty_coach_takes_antifreeze_for_traps_and_sumps_only(name: str, method: str) -> None:
    """Guards common practice: a cup or a few a trap, and no line filled."""
    plan = plan_of(name, method)
    filled = {part.id for part in plan.parts if part.claim == "filled"}
    pools = set(plan.careful.network.pools)
    assert filled
    assert filled <= pools
    poured = sum(
        action.volume_m3
        for step in plan.steps
        for action in step.step.actions
        if action.verb == "pour"
    )
    assert plan.antifreeze.p50 == pytest.approx(poured)


@pytest.mark.parametrize("name", CARDS)
def test_air_clears_lines_that_gravity_leaves(name: str) -> None:
    """Guards that blowing out leaves no part worse than draining alone, and some better."""
    drained = {p.id for p in plan_of(name, "drain").parts if p.safe is True}
    blown = {p.id for p in plan_of(name, "air").parts if p.safe is True}
    assert drained < blown


@pytest.mark.parametrize("name", CARDS)
@pytest.mark.parametrize("method", ["air", "drain"])
def test_small_tubes_and_check_valves_are_never_clear(name: str, method: str) -> None:
    """Guards that what small tubes and check valves hold is not called swept or drained."""
    # A tube of 5 mm and less keeps its water whatever is above it (Bretherton).
    plan = plan_of(name, method)
    for part in plan.parts:
        links = plan.careful.network.links_of.get(part.id, ())
        small = any(k.way == "pipe" and k.bore_m <= 0.005 for k in links)
        if small or part.kind in {"check valve", "demand pump"}:
            assert part.claim not in {"swept", "drained"}, part.id


@pytest.mark.parametrize(("name", "method"), [both for both in EVERY if both[1] != "thaw"])
def test_heaters_are_emptied_or_filled_but_never_forgotten(name: str, method: str) -> None:
    """Guards that no method leaves a tank heater full of water."""
    plan = plan_of(name, method)
    for part in plan.parts:
        if part.kind == "tank heater":
            assert part.safe is True
            assert part.claim in {"drained", "filled"}
