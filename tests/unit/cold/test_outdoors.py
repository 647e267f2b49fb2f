import math

import pytest

from wintertight.cold.outdoors import HOUR_S, Outdoors
from wintertight.errors import OutOfRange


def test_hours_come_in_their_order_and_the_coldest_stays() -> None:
    """Guards the spans of a night, and what is taken behind its last hour."""
    night = Outdoors((2.0, -7.0, -3.0))
    assert list(night.spans()) == [
        (0.0, HOUR_S, 2.0),
        (HOUR_S, HOUR_S, -7.0),
        (2.0 * HOUR_S, HOUR_S, -3.0),
        (3.0 * HOUR_S, math.inf, -7.0),
    ]
    assert (night.coldest_degC, night.known_s) == (-7.0, 3.0 * HOUR_S)


def test_a_cold_that_stays_is_one_span() -> None:
    """Guards the cold that is there from the first minute."""
    cold = Outdoors.staying(-4.0)
    assert list(cold.spans()) == [(0.0, math.inf, -4.0)]
    assert cold.known_s == math.inf


def test_a_margin_makes_each_hour_colder() -> None:
    """Guards the margin of a verdict, and that nothing gets colder than can be."""
    night = Outdoors((2.0, -7.0, -273.0)).colder_by(1.0)
    assert night.degC == (1.0, -8.0, -273.15)


@pytest.mark.parametrize("bad", [math.nan, math.inf, -math.inf, -273.2])
def test_what_is_no_temperature_is_refused(bad: float) -> None:
    """Guards that an unknown hour never counts as a mild one."""
    with pytest.raises(OutOfRange):
        Outdoors((-1.0, bad))
    with pytest.raises(OutOfRange):
        Outdoors.staying(bad)


@pytest.mark.parametrize(("night", "step"), [((), HOUR_S), ((1.0,), 0.0), ((1.0,), math.nan)])
def test_a_night_without_hours_is_refused(night: tuple[float, ...], step: float) -> None:
    """Guards that no night, and steps that do not last, are refused."""
    with pytest.raises(OutOfRange):
        Outdoors(night, step)
