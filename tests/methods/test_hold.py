"""The freeze hold: a quarter of an hour's work that buys hours (common practice), and then ends."""

import math

import pytest

from tests.methods.every_plan import CARDS, gaps, low_of, plan_of, product_of
from wintertight.procedure.plan import Plan, plan_coach

A_FROST_DEGC = -4.0
"""A night of frost [degC]: 25 degF."""


def held(name: str, low_degC: float, start_degC: float | None = None) -> Plan:
    """Plan a hold of one coach of the demo."""
    card = CARDS[name]
    return plan_coach(card, product_of(card), low_degC, "hold", start_degC=start_degC)


@pytest.mark.parametrize("name", CARDS)
def test_a_quarter_of_an_hour_buys_hours(name: str) -> None:
    """Guards common practice: a quarter of an hour of work, hours in a night of frost."""
    plan = held(name, A_FROST_DEGC)
    assert plan.hold is not None
    assert 10.0 * 60.0 < plan.duration.p50 < 25.0 * 60.0
    assert 2.0 * 3600.0 < plan.hold.seconds < 24.0 * 3600.0


@pytest.mark.parametrize("name", CARDS)
def test_a_hold_is_never_called_protected(name: str) -> None:
    """Guards the verdict: what expires is a gap, whatever the clock says."""
    plan = held(name, A_FROST_DEGC)
    assert plan.verdict == "gap"
    assert gaps(plan)
    assert plan.buy.count == 0
    assert plan.refused == ()


@pytest.mark.parametrize("name", ["small-trailer", "full-fifth-wheel"])
def test_colder_ends_sooner_and_warmer_to_begin_with_later(name: str) -> None:
    """Guards the clock of a whole coach."""
    clocks = [held(name, low).hold for low in (-2.0, -4.0, -10.0, -20.0, -30.0)]
    seconds = [clock.seconds for clock in clocks if clock is not None]
    assert len(seconds) == len(clocks)
    assert seconds == sorted(seconds, reverse=True)
    warm, cold = held(name, -10.0, 15.0).hold, held(name, -10.0, 1.0).hold
    assert warm is not None
    assert cold is not None
    assert warm.seconds > cold.seconds


@pytest.mark.parametrize("name", CARDS)
def test_a_claim_never_outlives_its_expiry(name: str) -> None:
    """Guards that every part that would burst has its hour, and none before the claim ends."""
    plan = held(name, A_FROST_DEGC)
    assert plan.hold is not None
    clock = dict(plan.hold.parts)
    for part in gaps(plan):
        assert part in clock or _open_ended(plan, part)
    assert min(clock.values()) == plan.hold.seconds
    assert all(math.isfinite(seconds) for seconds in clock.values())


def _open_ended(plan: Plan, part: str) -> bool:
    """Tell whether all ends of a part stand open at the end of the job."""
    ends = [k for k in plan.careful.network.links_of.get(part, ()) if k.is_outlet and k.gate]
    settings = plan.careful.end.settings
    return bool(ends) and all(k.gate and settings[k.gate.control] in k.gate.passes for k in ends)


def test_no_frost_no_end() -> None:
    """Guards that a night above freezing ends nothing."""
    plan = held("small-trailer", 1.0)
    assert plan.hold is not None
    assert plan.hold.seconds == math.inf


def test_other_methods_have_no_clock() -> None:
    """Guards that only a hold expires."""
    assert plan_of("small-trailer", "drain").hold is None
    assert low_of(CARDS["small-trailer"]) < 0.0
