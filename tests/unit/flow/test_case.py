"""Which side of what is uncertain a case takes."""

import math

import pytest

from wintertight.coach.quantity import Quantity
from wintertight.flow.case import BEST, CAREFUL, PLUG, UPPER_95
from wintertight.flow.losses import (
    COEFFICIENTS,
    EMITTERS,
    GALLON_PER_MINUTE,
    GRAVITY,
    WATER_DENSITY,
    emitter_resistance,
    fitting_resistance,
)
from wintertight.units import PSI_PA


@pytest.mark.parametrize(("bends", "every", "half"), [(0, 1, 1), (1, 2, 1), (2, 3, 2), (7, 8, 4)])
def test_laminar_runs_by_bends(bends: int, every: int, half: int) -> None:
    """Guards a run between each two bends, and half as many on the careful side, at least one."""
    assert BEST.runs(bends) == every
    assert CAREFUL.runs(bends) == half
    assert PLUG.runs(bends) is None


def test_lengths_and_hollows_at_their_upper_end() -> None:
    """Guards the upper 95 % point of a length whose spread is two standard deviations."""
    length = Quantity(4.0, "guessed", 0.3)
    assert BEST.length_m(length) == 4.0
    assert CAREFUL.length_m(length) == pytest.approx(4.0 * (1.0 + 0.5 * 1.645 * 0.3), rel=1e-3)
    assert CAREFUL.volume_m3(length) == CAREFUL.length_m(length)
    assert pytest.approx(1.645 / 2.0, abs=0.005) == UPPER_95


@pytest.mark.parametrize("kind", sorted(EMITTERS))
def test_a_fixture_lets_out_what_it_is_rated_for(kind: str) -> None:
    """Guards the resistance of each fixture against its own pair of flow and pressure."""
    gallons, psi = EMITTERS[kind]
    head = emitter_resistance(kind) * (gallons * GALLON_PER_MINUTE) ** 2
    assert head * WATER_DENSITY * GRAVITY == pytest.approx(psi * PSI_PA)


@pytest.mark.parametrize("kind", sorted(COEFFICIENTS))
def test_a_fitting_costs_its_velocity_head(kind: str) -> None:
    """Guards h = K v^2/2g by hand, in a bore of its own and in half-inch tube."""
    for bore in (0.0123, 0.02):
        speed = 2e-4 / (math.pi * bore**2 / 4.0)
        head = COEFFICIENTS[kind] * speed**2 / (2.0 * 9.80665)
        assert fitting_resistance(kind, bore) * 2e-4**2 == pytest.approx(head)
