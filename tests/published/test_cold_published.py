"""Freezing and cooling against worked numbers in print, or remembered from a named handbook."""

from collections.abc import Callable

import pytest

from wintertight.cold.cooling import (
    CONDUCTIVITY_WATER,
    cooling_s,
    insulation_resistance,
    wind_coefficient,
)
from wintertight.cold.freezing import (
    CONDUCTIVITY_ICE,
    freezing_debt,
    front_depth_m,
    neumann_lambda,
    stefan_number,
)
from wintertight.units import INCH_M

POUND_KG, FOOT_M, BTU_J = 0.45359237, 0.3048, 1055.056


def test_a_half_space_freezes_as_printed(published: Callable[..., None]) -> None:
    """Guards Neumann's solution: wall at -10 degC, and the depth of the ice after an hour."""
    place = "11.2, wall 10 K below freezing"
    stefan = stefan_number(10.0)
    published("carslaw-jaeger", "Stefan number [1]", "0.06147", stefan, place=place)
    published("carslaw-jaeger", "lambda [1]", "0.17356", neumann_lambda(stefan), place=place)
    depth = 1e3 * front_depth_m(10.0, 3600.0)
    published("carslaw-jaeger", "ice after an hour [mm]", "22.63", depth, place=place)


def test_a_tube_freezes_as_remembered(published: Callable[..., None]) -> None:
    """Guards the quasi-steady tube: R 6.16 mm, 10 K, Biot number 1."""
    minutes = freezing_debt(6.16e-3, 1.0) / 10.0 / 60.0
    place = "from memory, calculated"
    published("london-seban", "tube frozen solid [min]", "6.53", minutes, place=place)


def test_an_insulated_pipe_cools_as_in_the_handbook(published: Callable[..., None]) -> None:
    """Guards the time to freezing of the handbook's example, worked in its own units."""
    # NPS 3, an inch of insulation of 0.30 Btu in/(h ft2 F), water at 42 F in air at -18 F; the
    # example counts the insulation only.
    outer, inner = 3.5 * INCH_M, 3.068 * INCH_M
    conductivity = 0.30 * BTU_J * INCH_M / (3600.0 * FOOT_M**2) * 1.8
    resistance = insulation_resistance(outer, outer + 2.0 * INCH_M, conductivity)
    heat = 62.4 * POUND_KG / FOOT_M**3 * 3.141592653589793 / 4.0 * inner**2
    heat *= BTU_J / POUND_KG * 1.8
    hours = cooling_s(heat * resistance, 5.0 + 5.0 / 9.0, -27.0 - 7.0 / 9.0, 0.0) / 3600.0
    published("ashrae-insulation", "NPS 3 to freezing [h]", "1.7", hours, place="example")


@pytest.mark.parametrize(
    ("reynolds", "factor", "power"),
    [(400.0, 0.683, 0.466), (4000.0, 0.683, 0.466), (40000.0, 0.193, 0.618)],
)
def test_wind_across_a_tube(
    published: Callable[..., None], reynolds: float, factor: float, power: float
) -> None:
    """Guards the correlation against Hilpert's older one, within what such measurements scatter."""
    # Hilpert: Nu = C Re^m Pr^(1/3); C and m by ranges of Re, from memory.
    diameter = 0.0159
    speed = reynolds * 1.33e-5 / diameter
    ours = wind_coefficient(speed, diameter) * diameter / 0.0243
    hilpert = factor * reynolds**power * 0.71 ** (1.0 / 3.0)
    published(
        "churchill-bernstein",
        f"Nusselt number at Re {reynolds:.0f} [1], Hilpert's",
        f"{hilpert:.0f}",
        ours,
        0.25 * hilpert,
        "two correlations of scattered measurements, each within 25 %",
        place="from memory",
    )


def test_ice_conducts_four_times_as_well_as_water() -> None:
    """Guards the constant: 2.22 against water's 0.56 W/m/K, common tables."""
    assert pytest.approx(4.0, rel=0.05) == CONDUCTIVITY_ICE / CONDUCTIVITY_WATER
