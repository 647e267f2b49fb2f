"""Minutes of a draining fresh tank against what the trade says: common practice, no source."""

import pytest

from wintertight.procedure.tank_drain import DRAIN_BORE_M, drain_time_s
from wintertight.units import GALLON_M3, INCH_M


@pytest.mark.parametrize("depth_in", [8.0, 10.0, 12.0, 14.0, 16.0])
def test_sixty_gallons_take_half_an_hour_to_an_hour(depth_in: float) -> None:
    """Guards that 60 gal drain in 30 to 60 min, flat tank or deep one (common practice)."""
    minutes = drain_time_s(60 * GALLON_M3, depth_m=depth_in * INCH_M) / 60.0
    assert 30.0 <= minutes <= 60.0


def test_only_a_half_inch_drain_takes_that_long() -> None:
    """Guards the bore taken as usual: a size down or up leaves the trade's half hour to an hour."""
    assert pytest.approx(0.5 * INCH_M) == DRAIN_BORE_M
    minutes = [
        drain_time_s(60 * GALLON_M3, bore_m=bore * INCH_M) / 60.0 for bore in (0.375, 0.5, 0.75)
    ]
    assert [30.0 <= each <= 60.0 for each in minutes] == [False, True, False]
