"""Fresh tanks and their drains against common practice of the trade, no source."""

from collections.abc import Callable

from wintertight.procedure.tank_drain import drain_time_s
from wintertight.units import GALLON_M3


def test_a_big_tank_drains_in_half_an_hour_to_an_hour(published: Callable[..., None]) -> None:
    """Guards the drain of a fresh tank: 60 gal in 30 to 60 minutes."""
    minutes = drain_time_s(60.0 * GALLON_M3) / 60.0
    published(
        "common-practice",
        "60 gal fresh tank runs empty [min]",
        "45",
        minutes,
        15.0,
        "common practice says 30 to 60 minutes",
    )


def test_torricelli_by_hand() -> None:
    """Guards the law against the time worked out by hand for a barrel."""
    # 0.2 m3, 0.5 m deep, a hole of 20 mm, C = 1: A = 0.4 m2, a = 3.1416e-4 m2,
    # t = A/a sqrt(2 h/g) = 1273.2 * sqrt(2 * 0.5 / 9.80665) = 1273.2 * 0.31933 = 406.6 s.
    full = drain_time_s(0.2, depth_m=0.5, bore_m=0.02, discharge=1.0)
    assert abs(full - 406.6) < 0.05
    quarter = drain_time_s(0.2, 0.25, depth_m=0.5, bore_m=0.02, discharge=1.0)
    assert abs(quarter - full / 2.0) < 1e-9
