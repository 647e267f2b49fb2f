"""Laws of records: what is left out never helps, and the plan's own record is the plan."""

from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.procedure.demo_coach import PINK, SMALL, card, celsius, planned
from wintertight.procedure.as_done import AsDone, prove_record
from wintertight.procedure.hindsight.look_back import look_back
from wintertight.procedure.missed import RANK
from wintertight.procedure.plan import Plan
from wintertight.procedure.record import Record

LOW_DEGC = celsius(-10.0)
OUTLETS = [p.step.id for p in planned(text=SMALL).steps if p.step.outlet]


def record_of(plan: Plan, skipped: frozenset[str] = frozenset(), **more: Any) -> Record:
    """Write the record of a plan that was followed, but for some steps."""
    events = [
        {
            "id": str(p.n),
            "seq": p.n,
            "step": p.step.id,
            "result": "skipped" if p.step.id in skipped else "done",
            **more.get(p.step.id, {}),
        }
        for p in plan.steps
    ]
    return Record.model_validate({"schema": "wintertight/record/1", "events": events})


def as_planned(plan: Plan) -> dict[str, Any]:
    """Give what would be timed, counted and read if everything went by the sheet."""
    more: dict[str, Any] = {}
    for p in plan.steps:
        if p.telling and p.run is not None:
            colour_s = p.run.first_colour_s
            more[p.step.id] = {"first_colour_s": colour_s, "run_on_s": p.run_on_s}
        if p.step.key == "draw from jug":
            more[p.step.id] = {"jugs_left": 10.0}
        if p.step.key == "take reading":
            left = 10.0 - plan.antifreeze.p50 / plan.product.container_m3
            cup = {"kind": "glycol share", "value": plan.product.glycol, "sd": 0.01}
            hot = [s.step.outlet for s in plan.steps if (s.step.outlet or "").endswith(".hot")]
            more[p.step.id] = {"jugs_left": left, "part": hot[-1], "reading": cup}
    return more


@cache
def proved(skipped: frozenset[str]) -> AsDone:
    """Prove the small coach's job without some steps."""
    plan = planned(text=SMALL)
    return prove_record(card(SMALL), record_of(plan, skipped), PINK, LOW_DEGC)


@settings(max_examples=12)
@given(st.frozensets(st.sampled_from(OUTLETS), min_size=1, max_size=3))
def test_an_outlet_left_out_never_helps_what_it_feeds(skipped: frozenset[str]) -> None:
    """Guards that no part on the way to a skipped outlet is proven better than with it."""
    full = proved(frozenset())
    fed = {
        full.plan.careful.network.links[link].part
        for p in planned(text=SMALL).steps
        if p.step.id in skipped and p.run
        for link in p.run.way
    }
    safe = {part.id: part.safe for part in full.plan.parts}
    for part in proved(skipped).plan.parts:
        if part.id in fed:
            assert RANK[part.safe] <= RANK[safe[part.id]], part.id


@pytest.mark.parametrize("text", ["small", "middle"])
def test_the_plans_own_record_is_the_plan(text: str) -> None:
    """Guards that a job gone exactly by the sheet gives the plan's proof and raises no doubt."""
    plan = planned(text=SMALL) if text == "small" else planned()
    done = prove_record(plan.card, record_of(plan, **as_planned(plan)), PINK, LOW_DEGC)
    after, told = look_back(done, PINK)
    assert told is not None
    assert told.causes[0].explanation.cause == "as recorded"
    assert told.doubts == {}
    assert after.plan.verdict == plan.verdict
    for ours, theirs in zip(after.plan.parts, plan.parts, strict=True):
        assert (ours.id, ours.claim, ours.safe) == (theirs.id, theirs.claim, theirs.safe)
        assert ours.worst.glycol == pytest.approx(theirs.worst.glycol, abs=1e-12)


def test_a_record_without_observations_tells_no_more_than_it_says() -> None:
    """Guards that nothing is diagnosed from ticks alone."""
    _, told = look_back(proved(frozenset()), PINK)
    assert told is None
