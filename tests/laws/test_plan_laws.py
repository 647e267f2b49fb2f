import json
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.procedure.demo_coach import PINK, SMALL, TEXT, card, celsius, planned, rebuilt
from wintertight.coach.card import Card
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.fluids.contents import Contents, mix
from wintertight.procedure.as_done import prove_record
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.readings import with_reading
from wintertight.procedure.record import Reading, read_record
from wintertight.proof.claims import PartProof, verdict_of
from wintertight.proof.judge import Bench, prove_parts

RANK = {False: 0, None: 1, True: 2}
VERDICT = {"gap": 0, "unproven": 1, "safe": 2}
LOW = celsius(-10.0)

lows = st.floats(-55.0, 2.0)


def judged(plan: Plan, low: float) -> tuple[PartProof, ...]:
    """Prove the end of a plan at another design low [degC]."""
    return prove_parts(Bench(plan.card, plan.careful.network, plan.careful.end, low, plan.product))


@given(lows, st.floats(0.0, 30.0), st.sampled_from(["pink", "blue", "thrift", "spirit"]))
@settings(max_examples=25)
def test_colder_is_never_safer(low: float, colder: float, product: str) -> None:
    """Guards that no part and no verdict is better at a colder design low."""
    plan = planned(product=product, text=SMALL)
    mild, harsh = judged(plan, low), judged(plan, low - colder)
    assert VERDICT[verdict_of(harsh)] <= VERDICT[verdict_of(mild)]
    for part, twin in zip(mild, harsh, strict=True):
        assert RANK[twin.safe] <= RANK[part.safe], part.id


@given(st.floats(0.0, 0.6), st.floats(0.0, 0.6), lows)
@settings(max_examples=30)
def test_more_glycol_is_never_less_safe(one: float, other: float, low: float) -> None:
    """Guards that a coach full of a richer mixture is as safe in each part, or safer."""
    network = planned(text=SMALL).careful.network
    proofs = [
        prove_parts(
            Bench(card(SMALL), network, arriving_state(network, Contents(glycol=g)), low, PINK)
        )
        for g in sorted((one, other))
    ]
    for part, twin in zip(*proofs, strict=True):
        assert RANK[part.safe] <= RANK[twin.safe], part.id


@given(st.floats(0.0, 0.6), st.floats(0.0, 0.5), st.floats(0.0, 1.0), lows)
@settings(max_examples=30)
def test_more_water_is_never_safer(glycol: float, air: float, water: float, low: float) -> None:
    """Guards that water let into a coach makes no part safer."""
    network = planned(text=SMALL).careful.network
    held = Contents(glycol=glycol * (1.0 - air), air=air)
    proofs = [
        prove_parts(Bench(card(SMALL), network, arriving_state(network, contents), low, PINK))
        for contents in (mix([(1.0, held), (water, Contents())]), held)
    ]
    for part, twin in zip(*proofs, strict=True):
        assert RANK[part.safe] <= RANK[twin.safe], part.id


def renamed(plain: Card, order: list[int]) -> Card:
    """Give a card with every fitting and line renamed, and listed in another order."""

    def name(old: str) -> str:
        return f"n{sum(map(ord, old)) % 97:02d}-{old[::-1].strip('-')}"

    fittings = [
        f.model_copy(update={"id": name(f.id), "drains_to": f.drains_to and name(f.drains_to)})
        for f in plain.fittings
    ]
    lines = [
        one.model_copy(
            update={
                "id": name(one.id),
                "start": type(one.start)(name(one.start.fitting), one.start.port),
                "end": type(one.end)(name(one.end.fitting), one.end.port),
            }
        )
        for one in plain.lines
    ]
    shuffled = [
        tuple(
            sorted(some, key=lambda one, some=some: (order[some.index(one) % len(order)], one.id))
        )
        for some in (fittings, lines)
    ]
    return rebuilt(plain, fittings=shuffled[0], lines=shuffled[1])


@given(st.permutations(list(range(7))))
@settings(max_examples=4)
def test_names_and_order_change_nothing(order: list[int]) -> None:
    """Guards that a coach is its plumbing: names and order do not matter."""
    plain = planned(text=SMALL)
    other = plan_coach(renamed(plain.card, order), PINK, LOW)
    assert other.verdict == plain.verdict
    best, twin = plain.best.end.books.came_in, other.best.end.books.came_in
    assert twin[1:].sum() == pytest.approx(best[1:].sum(), rel=1e-9)
    assert [s.run_on_s for s in other.steps] == [s.run_on_s for s in plain.steps]


@cache
def without_step(i: int) -> tuple[PartProof, ...]:
    """Prove the small coach with one step of its plan left out."""
    plan = planned(text=SMALL)
    network = plan.careful.network
    steps = [s.step for n, s in enumerate(plan.steps) if n != i]
    trace = replay(network, arriving_state(network), [a for s in steps for a in s.actions])
    return prove_parts(Bench(plan.card, network, trace.end, LOW, PINK))


@given(st.integers(0, len(planned(text=SMALL).steps) - 1))
@settings(max_examples=12)
def test_a_skipped_step_improves_nothing(i: int) -> None:
    """Guards that no part of a coach is safer for a step left out."""
    for part, twin in zip(planned(text=SMALL).parts, without_step(i), strict=True):
        assert RANK[twin.safe] <= RANK[part.safe], part.id


@pytest.mark.parametrize("text", [SMALL, TEXT])
def test_the_record_of_a_plan_proves_the_plan(text: str) -> None:
    """Guards that plan and proof are one engine: the plan's record gives the plan, each time."""
    plan = planned(text=text)
    events = [
        {"id": str(n), "seq": n, "step": s.step.id, "result": "done"}
        for n, s in enumerate(plan.steps)
    ]
    record = read_record(json.dumps({"schema": "wintertight/record/1", "events": events}))
    done = prove_record(card(text), record, PINK, LOW).plan
    assert done.verdict == plan.verdict
    for part, twin in zip(plan.parts, done.parts, strict=True):
        assert (part.id, part.safe, part.reason) == (twin.id, twin.safe, twin.reason)
        assert abs(part.worst.glycol - twin.worst.glycol) < 1e-9
    assert done.antifreeze.p50 == pytest.approx(plan.antifreeze.p50, rel=1e-9)


def test_a_plan_is_the_same_each_time() -> None:
    """Guards that nothing is left to chance: planned twice, a coach gets the same numbers."""
    first, again = planned(text=SMALL), plan_coach(card(SMALL), PINK, LOW)
    for band, twin_band in ((first.antifreeze, again.antifreeze), (first.duration, again.duration)):
        assert band.p05 == pytest.approx(twin_band.p05, rel=1e-12)
        assert band.p95 == pytest.approx(twin_band.p95, rel=1e-12)
    for part, twin in zip(first.parts, again.parts, strict=True):
        assert (part.id, part.safe, part.claim) == (twin.id, twin.safe, twin.claim)
        assert part.worst.glycol == pytest.approx(twin.worst.glycol, abs=1e-12)


@given(
    st.sampled_from(["glycol share", "freezing point"]),
    st.floats(0.0, 1.0),
    st.none() | st.floats(0.0, 0.5),
    lows,
)
def test_no_reading_carries_a_claim_further(
    kind: str, value: float, sd: float | None, low: float
) -> None:
    """Guards that a reading makes no part safer than the engine finds it."""
    shown = value if kind == "glycol share" else -50.0 * value
    reading = Reading.model_validate({"kind": kind, "value": shown, "sd": sd})
    for part in judged(planned(text=SMALL), low):
        assert RANK[with_reading(part, reading, low, PINK).safe] <= RANK[part.safe]
