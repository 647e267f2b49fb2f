import math

import pytest

from wintertight.coach.tubing import BORES, Bore
from wintertight.cold.burst import survives
from wintertight.cold.cooling import STILL_AIR
from wintertight.cold.hold import Wet, freezes, held_for, seconds_until_gone
from wintertight.cold.outdoors import HOUR_S, Outdoors
from wintertight.errors import OutOfRange
from wintertight.fluids.contents import Contents


def test_nothing_left_is_never_gone() -> None:
    """Guards a coach that is quite empty."""
    assert held_for([], 5.0, -30.0).seconds == math.inf


def test_a_claim_ends_with_what_is_known_of_the_cold() -> None:
    """Guards that no claim is made beyond the last hour of a forecast."""
    line = Wet("line", 1e-3, "indoors", 0.0123)
    mild = held_for([line], 10.0, Outdoors((5.0,) * 6))
    assert mild.parts == (("line", math.inf),)
    assert mild.seconds == 6.0 * HOUR_S


def test_the_first_part_ends_the_claim() -> None:
    """Guards the order of the parts."""
    wet = [Wet("b", 1e-4, "indoors", 0.0123), Wet("a", 1e-4, "outside", 0.0123)]
    found = held_for(wet, 5.0, -10.0)
    assert [part for part, _ in found.parts] == ["a", "b"]
    assert found.seconds == found.parts[0][1]


def test_the_three_times_come_in_their_order() -> None:
    """Guards water at freezing, gone and solid; a sealed hollow is gone before."""
    giving = freezes(Wet("x", 1e-4, "closed", 0.0123), 5.0, -10.0)
    sealed = freezes(Wet("x", 1e-4, "closed", 0.0123, gives=False), 5.0, -10.0)
    assert 0.0 < giving.cold_s < giving.gone_s < giving.solid_s
    assert 0.0 < sealed.gone_s < sealed.cold_s == giving.cold_s
    assert sealed.solid_s == giving.solid_s


@pytest.mark.parametrize("tube", BORES.values(), ids=lambda t: f"{t.nominal} {t.material}")
def test_no_known_tube_has_more_outside_than_is_counted(tube: Bore) -> None:
    """Guards the surface that air takes heat from, for each tube of the tables."""
    wet = Wet("line", 1e-4, "closed", tube.largest_bore_m)
    assert wet.loses_W_m2_K * tube.largest_bore_m >= STILL_AIR * tube.outside_m * (1.0 - 1e-12)


@pytest.mark.parametrize("volume", [1e-6, 1e-5, 1e-4, 1e-3, 0.02])
def test_no_hollow_has_less_surface_than_a_ball(volume: float) -> None:
    """Guards the shape taken for a hollow that is no tube: a ball has the least surface."""
    wet = Wet("x", volume, "closed")
    side = 2.0 * volume / wet.radius_m
    ball = (36.0 * math.pi * volume**2) ** (1.0 / 3.0)
    assert wet.loses_W_m2_K * side >= STILL_AIR * ball


def test_a_claim_ends_where_a_verdict_says_it_freezes() -> None:
    """Guards that clock and verdict use one margin: neither holds what the other gives up."""
    wet = Wet("line", 1e-3, "closed", 0.0123)
    for low in (1.5, 1.0, 0.5, -3.0):
        bursts = survives(Contents(), low, "open", relieved=False).safe is not True
        assert math.isfinite(held_for([wet], 5.0, low).seconds) == bursts


@pytest.mark.parametrize(
    ("volume", "bore", "sleeve"),
    [
        (0.0, 0.01, 0.0),
        (-1e-4, 0.01, 0.0),
        (math.nan, 0.01, 0.0),
        (1e-4, math.nan, 0.0),
        (1e-4, -0.01, 0.0),
        (1e-4, 0.01, -0.01),
        (1e-4, 0.01, math.inf),
    ],
)
def test_a_hollow_of_unknown_size_is_refused(volume: float, bore: float, sleeve: float) -> None:
    """Guards that what is not known is given no clock."""
    with pytest.raises(OutOfRange):
        Wet("x", volume, "closed", bore, sleeve_m=sleeve)


@pytest.mark.parametrize(("start", "cold"), [(math.nan, -5.0), (5.0, math.nan), (math.inf, -5.0)])
def test_a_temperature_that_is_none_is_refused(start: float, cold: float) -> None:
    """Guards that an unknown temperature gives no clock."""
    with pytest.raises(OutOfRange):
        seconds_until_gone(Wet("x", 1e-4, "closed", 0.0123), start, cold)
