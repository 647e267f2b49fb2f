import math

import pytest

from wintertight.cold.outdoors import Outdoors
from wintertight.cold.through_hours import (
    air_degC,
    halved,
    seconds_to_cool,
    seconds_to_pay,
    water_degC,
)


def test_equal_rates_are_the_limit_of_near_ones() -> None:
    """Guards the water where room and water follow equally slowly: t/w exp(-t/w)."""
    equal = water_degC(1200.0, 5.0, 5.0, -5.0, (900.0, 900.0))
    by_hand = -5.0 + 10.0 * math.exp(-4.0 / 3.0) * (1.0 + 4.0 / 3.0)
    assert equal == pytest.approx(by_hand, rel=1e-12)
    near = water_degC(1200.0, 5.0, 5.0, -5.0, (900.0, 900.001))
    assert equal == pytest.approx(near, abs=1e-5)


@pytest.mark.parametrize("slow", [(1.0, 1e5), (1e5, 1.0), (1e-3, 1e6), (0.0, 50.0), (50.0, 0.0)])
def test_long_times_end_at_the_cold(slow: tuple[float, float]) -> None:
    """Guards that rates far apart overflow nowhere, and all comes to the cold outside."""
    assert water_degC(1e9, 7.0, 7.0, -9.0, slow) == pytest.approx(-9.0, abs=1e-9)


def test_air_without_a_room_is_the_cold() -> None:
    """Guards that what stands outside meets the cold at once."""
    assert air_degC(0.0, 20.0, -3.0, 0.0) == -3.0
    assert air_degC(100.0, 20.0, -3.0, 100.0) == pytest.approx(-3.0 + 23.0 / math.e)


def test_a_short_dip_that_warms_again_within_the_hour_is_seen() -> None:
    """Guards the first time at freezing where the water has risen again by the hour's end."""
    # The room is far below freezing when it turns mild: the water still falls, then rises.
    slow = (900.0, 1500.0)
    seconds, air = seconds_to_cool(slow, 5.0, Outdoors((-30.0, 20.0, 20.0), 600.0))
    room, water = air_degC(600.0, 5.0, -30.0, 900.0), water_degC(600.0, 5.0, 5.0, -30.0, slow)
    assert water > 0.0
    assert water_degC(600.0, room, water, 20.0, slow) > 0.0
    assert 600.0 < seconds < 1200.0
    assert water_degC(seconds - 600.0, room, water, 20.0, slow) == pytest.approx(0.0, abs=1e-9)
    assert air == pytest.approx(air_degC(seconds - 600.0, room, 20.0, 900.0))


def test_mild_hours_pay_nothing_and_cost_nothing() -> None:
    """Guards that a thaw between two frosts only waits."""
    frost = seconds_to_pay(5.0 * 3600.0, 0.0, 0.0, 0.0, Outdoors((-4.0, -4.0)))
    with_thaw = seconds_to_pay(5.0 * 3600.0, 0.0, 0.0, 0.0, Outdoors((-4.0, 9.0, -4.0)))
    assert frost == pytest.approx(1.25 * 3600.0)
    assert with_thaw == pytest.approx(2.25 * 3600.0)


def test_a_room_pays_only_once_it_is_below_freezing() -> None:
    """Guards the debt in a room that starts warm: by hand, from the time its air is at 0 degC."""
    room = 1800.0
    begin = room * math.log(15.0 / 5.0)
    end = begin + 4000.0
    lag = 15.0 * room * (math.exp(-begin / room) - math.exp(-end / room))
    debt = 5.0 * 4000.0 - lag
    assert seconds_to_pay(debt, 0.0, 10.0, room, Outdoors.staying(-5.0)) == pytest.approx(end)


def test_nothing_freezes_where_no_hour_is_cold() -> None:
    """Guards that mild nights end nothing, and leave a debt unpaid."""
    mild = Outdoors((3.0, 0.0, 1.0))
    assert seconds_to_cool((900.0, 900.0), 5.0, mild)[0] == math.inf
    assert seconds_to_pay(1.0, 0.0, 0.0, 900.0, mild) == math.inf


def test_halving_finds_the_change() -> None:
    """Guards the search for the place where something changes."""
    assert halved(0.0, 4.0, lambda t: t < math.e) == pytest.approx(math.e, rel=1e-15)
