"""Laws of wrong settings: worse never does better, and no fluid is made or lost."""

from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.procedure.demo_coach import SMALL, planned
from wintertight.flow.losses import GALLON_PER_MINUTE
from wintertight.procedure.mistake_outcome import (
    MistakeOutcome,
    mistaken_trace,
    outcome_of,
)
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.plan import Plan

FEW = settings(max_examples=5)
RUNS = ("kitchen.hot", "kitchen.cold")


def plan() -> Plan:
    """Plan a coach with a galley and nothing else."""
    return planned(text=SMALL)


@cache
def mistakes() -> tuple[Mistake, ...]:
    """Give its wrong settings."""
    return possible_mistakes(plan())


def with_share(key: str, share: float) -> MistakeOutcome:
    """Give what comes of a jug with some water, or of a suction with some air [1]."""
    return outcome_of(plan(), Mistake(key, "pump", params={"share": share}))


@given(st.floats(0.01, 0.6), st.floats(0.01, 0.3))
@FEW
def test_more_water_in_the_jug_spares_no_part(share: float, more: float) -> None:
    """Guards that what bursts with a stretched jug bursts with one that is stretched more."""
    mild, harsh = with_share("weak product", share), with_share("weak product", share + more)
    assert set(mild.bursting) <= set(harsh.bursting)
    assert set(mild.parts) <= set(harsh.parts)
    assert mild.water_m3 <= harsh.water_m3 + 1e-9


@given(st.floats(0.01, 0.45))
@FEW
def test_air_at_the_suction_saves_antifreeze_in_proportion(share: float) -> None:
    """Guards that a leak never draws more, and leaves at least its share of the job undrawn."""
    leaky = with_share("suction leak", share)
    whole = plan().antifreeze.p50
    assert leaky.more_m3 <= 0.0
    assert leaky.more_m3 > -2.5 * share * whole


@given(st.sampled_from(range(12)), st.floats(1.0, 40.0))
@FEW
def test_a_jug_that_is_dry_for_longer_lets_in_more_air(which: int, seconds: float) -> None:
    """Guards books and volume of a slug: never more than a small pump can move."""
    part = RUNS[which % 2]
    trace = mistaken_trace(plan(), Mistake("jug ran dry", part, params={"seconds": seconds}))
    assert trace.balance.relative_error < 1e-9
    dry = [
        m.outcome.run
        for m in trace.moments
        if m.outcome.run and m.action.part == part and m.action.until
        if m.action.until.seconds == seconds
    ]
    assert len(dry) == 1
    assert 0.0 < dry[0].volume_m3 < 3.0 * GALLON_PER_MINUTE * seconds
    assert dry[0].volume_m3 == pytest.approx(dry[0].flow_m3_s * seconds, rel=0.25)


@given(st.data())
@settings(max_examples=4)
def test_every_wrong_setting_closes_its_books_and_tells_the_same_twice(
    data: st.DataObject,
) -> None:
    """Guards closed books, and that nothing is left behind from one mistake to the next."""
    mistake = data.draw(st.sampled_from(mistakes()))
    assert mistaken_trace(plan(), mistake).balance.relative_error < 1e-9
    assert outcome_of(plan(), mistake) == outcome_of(plan(), mistake)
