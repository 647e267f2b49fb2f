from collections.abc import Callable

import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI
from scipy.interpolate import PchipInterpolator

from wintertight.fluids.contents import Contents
from wintertight.fluids.curve import MonotoneCurve
from wintertight.fluids.ethanol import freezing_point_ethanol, volume_share_ethanol
from wintertight.fluids.glycol import freezing_point_glycol, mass_share_glycol, volume_share_glycol
from wintertight.fluids.transport import transport
from wintertight.fluids.water import density_water, viscosity_water

Published = Callable[..., None]


def theirs(what: str, fluid: str, share: float, temperature: float) -> float:
    """Ask the other engine for a property of a mixture."""
    return float(
        PropsSI(what, "T", temperature + 273.15, "P", 101325.0, f"INCOMP::{fluid}[{share}]")
    )


def freezing(fluid: str, share: float) -> float:
    """Ask the other engine for a freezing point [degC]."""
    return theirs("T_freeze", fluid, share, 26.85) - 273.15


@pytest.mark.parametrize("percent", [10, 13, 17, 22, 27, 33, 38, 42, 47, 52, 57, 60])
def test_freezing_point_of_glycol_by_volume(published: Published, percent: int) -> None:
    """Guards our curve, between printed rows too, against a fit of the same handbook."""
    share = percent / 100.0
    published(
        "coolprop",
        f"freezing point of {percent} % glycol by volume [degC]",
        f"{freezing('APG', share):.2f}",
        freezing_point_glycol(mass_share_glycol(share)),
        0.1,
        "the other engine's polynomial misses the handbook's own rows by up to 0.06 K",
        place="INCOMP::APG",
    )


@pytest.mark.parametrize(
    ("percent", "spread"),
    [(10, 1.0), (20, 1.0), (30, 1.0), (40, 1.0), (45, 1.0), (50, 1.4), (54, 1.5), (60, 1.5)],
)
def test_freezing_point_of_glycol_by_mass(
    published: Published, percent: int, spread: float
) -> None:
    """Guards that the margin of 1 K covers the spread between two published curves to 45 %."""
    share = percent / 100.0
    published(
        "coolprop",
        f"freezing point of {percent} % glycol by mass, independent data [degC]",
        f"{freezing('MPG', share):.2f}",
        freezing_point_glycol(share),
        spread,
        "two published curves; the verdict's margin of 1 K covers the spread up to 45 %",
        place="INCOMP::MPG",
    )


@pytest.mark.parametrize("percent", [5, 10, 15, 20, 25, 30, 35, 39])
def test_freezing_point_of_ethanol(published: Published, percent: int) -> None:
    """Guards our curve of ethanol against independent data, known to be lower from 14 to 30 %."""
    share = percent / 100.0
    ours = freezing_point_ethanol(share)
    published(
        "coolprop",
        f"freezing point of {percent} % ethanol by mass [degC]",
        f"{freezing('MEA', share):.2f}",
        ours,
        1.2,
        "the other data freeze up to 1.2 K colder between 14 and 32 %; the warmer table is used",
        place="INCOMP::MEA",
    )
    assert ours > freezing("MEA", share) - 0.2


GRID = [
    (0.20, 0.0),
    (0.20, 20.0),
    (0.35, 0.0),
    (0.35, 20.0),
    (0.50, -20.0),
    (0.50, 0.0),
    (0.50, 20.0),
    (0.60, 0.0),
    (0.60, 40.0),
]


@pytest.mark.parametrize(("share", "temperature"), GRID)
def test_glycol_flows_as_the_other_data_say(
    published: Published, share: float, temperature: float
) -> None:
    """Guards density and viscosity against the handbook's fit, which is not where ours are from."""
    ours = transport(Contents(glycol=share), temperature)
    assert ours.density_kg_m3 is not None
    assert ours.viscosity_Pa_s is not None
    rho = theirs("D", "APG", share, temperature)
    mu = 1000.0 * theirs("V", "APG", share, temperature)
    where = f"of {100 * share:.0f} % glycol by volume at {temperature:g} degC"
    published(
        "coolprop", f"density {where} [kg/m3]", f"{rho:.1f}", ours.density_kg_m3,
        8.0, "two published data sets; 0.8 %", place="INCOMP::APG",
    )  # fmt: skip
    published(
        "coolprop", f"viscosity {where} [mPa s]", f"{mu:.3f}", 1000.0 * ours.viscosity_Pa_s,
        (0.15 if temperature < 0.0 else 0.11) * mu,
        "two data sets, 10 % apart in thin mixtures near 0 degC, 15 % at -20 degC",
        place="INCOMP::APG",
    )  # fmt: skip


@pytest.mark.parametrize("percent", [10, 30, 60])
@pytest.mark.parametrize("temperature", [0.0, 20.0, 40.0])
def test_the_correlation_is_copied_right(percent: int, temperature: float) -> None:
    """Guards the shipped coefficients against the other engine's copy of the same correlation."""
    share = percent / 100.0
    for contents, fluid in (
        (Contents(glycol=volume_share_glycol(share)), "MPG"),
        (Contents(ethanol=volume_share_ethanol(share)), "MEA"),
    ):
        ours = transport(contents, temperature)
        assert ours.density_kg_m3 == pytest.approx(theirs("D", fluid, share, temperature), rel=1e-5)
        assert ours.viscosity_Pa_s == pytest.approx(
            theirs("V", fluid, share, temperature), rel=2e-4
        )


@pytest.mark.parametrize("temperature", [0.5, 4.0, 10.0, 20.0, 30.0, 40.0])
def test_water_flows_as_the_equation_of_state_says(
    published: Published, temperature: float
) -> None:
    """Guards density and viscosity of water against the international equation of state."""
    state = ("T", temperature + 273.15, "P", 101325.0, "Water")
    published(
        "coolprop", f"density of water at {temperature:g} degC [kg/m3]",
        f"{PropsSI('D', *state):.2f}", density_water(temperature),
        0.01, "two formulas for the same data", place="Water",
    )  # fmt: skip
    published(
        "coolprop", f"viscosity of water at {temperature:g} degC [mPa s]",
        f"{1000 * PropsSI('V', *state):.4f}", 1000.0 * viscosity_water(temperature),
        0.0005, "two formulas for the same data", place="Water",
    )  # fmt: skip


def test_the_curve_is_the_known_monotone_cubic() -> None:
    """Guards our own monotone cubic against a library's, point by point."""
    x = [0.0, 0.1, 0.15, 0.3, 0.5, 0.6]
    y = [0.0, -3.3, -5.1, -12.7, -33.5, -51.1]
    ours, reference = MonotoneCurve(x, y), PchipInterpolator(x, y)
    for at in np.linspace(0.0, 0.6, 121):
        assert ours.at(float(at)) == pytest.approx(float(reference(at)), abs=1e-12)
