import math

import pytest

from wintertight.cold.freezing import freezing_debt, front_depth_m, neumann_lambda


def test_no_cold_makes_no_ice() -> None:
    """Guards the beginning of both solutions."""
    assert neumann_lambda(0.0) == pytest.approx(0.0, abs=1e-12)
    assert front_depth_m(10.0, 0.0) == 0.0
    assert freezing_debt(0.01, 1.0, 0.0) == 0.0


def test_little_cold_freezes_as_the_square_root() -> None:
    """Guards the limit of a small Stefan number: lambda^2 = Ste / 2."""
    assert neumann_lambda(1e-6) == pytest.approx(math.sqrt(0.5e-6), rel=1e-6)


def test_a_tube_in_poor_air_takes_its_ice_in_step_with_the_heat() -> None:
    """Guards the limit of a small Biot number, where only the air resists: half costs half."""
    whole = freezing_debt(0.01, 1e-6)
    assert freezing_debt(0.01, 1e-6, 0.5) == pytest.approx(0.5 * whole, rel=1e-5)


def test_four_times_the_depth_needs_sixteen_times_the_time() -> None:
    """Guards the square root of time."""
    once, later = front_depth_m(5.0, 600.0), front_depth_m(5.0, 16.0 * 600.0)
    assert later == pytest.approx(4.0 * once)
