"""A fresh tank that runs empty, against scipy's integration of the same balance, written anew."""

import math

import pytest
from scipy.integrate import solve_ivp

from wintertight.procedure.tank_drain import drain_time_s


@pytest.mark.parametrize("share", [1.0, 0.4])
@pytest.mark.parametrize(
    ("volume_m3", "depth_m", "bore_m"), [(0.227, 0.3, 0.0127), (0.07, 0.2, 0.019)]
)
def test_a_tank_runs_empty_as_torricelli_says(
    volume_m3: float, depth_m: float, bore_m: float, share: float
) -> None:
    """Guards the closed form of the drain time against an integration down to a hair's depth."""
    area_m2, hole_m2 = volume_m3 / depth_m, math.pi * (bore_m / 2.0) ** 2

    def rate(_: float, level: list[float]) -> list[float]:
        return [-0.7 * hole_m2 * math.sqrt(2.0 * 9.80665 * max(level[0], 0.0)) / area_m2]

    def nearly_empty(_: float, level: list[float]) -> float:
        return float(level[0] - 1e-6 * depth_m)

    nearly_empty.terminal = True  # type: ignore[attr-defined]
    done = solve_ivp(
        rate, (0.0, 1e5), [share * depth_m], events=nearly_empty, rtol=1e-9, atol=1e-12
    )
    ours = drain_time_s(volume_m3, share, depth_m=depth_m, bore_m=bore_m, discharge=0.7)
    # The last millionth of the depth takes a thousandth of a full tank's time.
    left = drain_time_s(volume_m3, 1e-6, depth_m=depth_m, bore_m=bore_m, discharge=0.7)
    assert done.t_events[0][0] == pytest.approx(ours - left, rel=1e-6)
