"""Density and viscosity of what flows: water, glycol in water, ethanol in water.

The mixtures follow one published correlation. At no antifreeze it misses pure water by up to
1.6 %, so below one tenth of the mass it is scaled, by a factor that fades out there, to meet the
formulas for pure water exactly.
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from wintertight.errors import OutOfRange
from wintertight.fluids.contents import DUST, Contents
from wintertight.fluids.ethanol import mass_share_ethanol
from wintertight.fluids.glycol import liquidus_glycol, mass_share_glycol, volume_share_glycol
from wintertight.fluids.melinder import HIGHEST_MASS_SHARE, Solute, density_and_viscosity
from wintertight.fluids.slush import freezing_point
from wintertight.fluids.water import density_water, viscosity_water

COLDEST = -35.0
HOTTEST = 40.0
HIGHEST_GLYCOL = 0.60
"""Richest mixture that can be made to flow here [1 of the volume]."""

WhyNot = Literal["frozen", "freezing point unknown", "air", "product unknown", "blend", "too rich"]
_FADE = 0.10
_STEPS = 601


@dataclass(frozen=True, slots=True)
class Transport:
    """Density and viscosity of a content, or why there are none.

    Attributes:
        density_kg_m3: [kg/m3].
        viscosity_Pa_s: [Pa s].
        why_null: key of the reason where the two are None.
    """

    density_kg_m3: float | None
    viscosity_Pa_s: float | None
    why_null: WhyNot | None = None


def transport(contents: Contents, temperature_degC: float) -> Transport:
    """Give density and viscosity of a liquid.

    Args:
        contents: what it is; without air.
        temperature_degC: [degC], -35 to 40.

    Returns:
        Both, or neither with the reason: below the freezing point it is slush and neither is
        defined; a product of unknown composition and a blend have no published values.

    Raises:
        OutOfRange: a temperature outside that range.

    Example:
        >>> round(transport(Contents(glycol=0.499), 0.0).viscosity_Pa_s, 4)
        0.0191
        >>> transport(Contents(glycol=0.2), -20.0).why_null
        'frozen'

    Sources: melinder; kell and iapws-sr6-08 (pure water)
    """
    _check_temperature(temperature_degC)
    why = _why_not(contents, temperature_degC)
    if why is not None:
        return Transport(None, None, why)
    solute: Solute = "ethanol" if contents.ethanol > 0.0 else "propylene_glycol"
    share = (
        mass_share_ethanol(contents.ethanol)
        if contents.ethanol > 0.0
        else mass_share_glycol(contents.glycol)
    )
    if share > HIGHEST_MASS_SHARE + DUST:
        return Transport(None, None, "too rich")
    rho, mu = _meeting_water(solute, np.array([share]), temperature_degC)
    return Transport(float(rho[0]), float(mu[0]))


def kinematic_viscosity(
    glycol_volume_share: NDArray[np.float64], temperature_degC: float
) -> NDArray[np.float64]:
    """Give the kinematic viscosity of many glycol mixtures at one temperature, fast.

    Read from a ladder of 601 shares, laid out once for each temperature, linear in its logarithm
    between rungs.

    Args:
        glycol_volume_share: propylene glycol [1], 0 to 0.60; any shape.
        temperature_degC: one temperature for all [degC], -35 to 40, above their freezing points.

    Returns:
        Kinematic viscosity [m2/s], in the shape of the shares.

    Raises:
        OutOfRange: a share or temperature outside those ranges, or a mixture that would freeze.

    Example:
        >>> nu = kinematic_viscosity(np.array([0.0, 0.499]), 20.0)
        >>> [round(1e6 * float(n), 3) for n in nu]
        [1.003, 6.153]

    Sources: melinder; kell and iapws-sr6-08 (pure water)
    """
    shares, logs, least = _ladder(float(temperature_degC))
    low, high = glycol_volume_share.min(initial=1.0), glycol_volume_share.max(initial=0.0)
    # Written so that nan is refused as well.
    if not (low >= least and high <= HIGHEST_GLYCOL):
        message = f"glycol flows at {temperature_degC:g} degC from {least:.3g} to 0.6 of the volume"
        raise OutOfRange(message)
    return np.exp(np.interp(glycol_volume_share, shares, logs))


def viscosity_ladder(temperature_degC: float) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Give the ladder from which ``kinematic_viscosity`` reads, for a program that reads by itself.

    Args:
        temperature_degC: one temperature for all [degC], 0 to 40.

    Returns:
        Shares of glycol by volume [1] and the logarithm of the viscosity [m2/s] at each.

    Raises:
        OutOfRange: a temperature outside that range.

    Example:
        >>> shares, logs = viscosity_ladder(20.0)
        >>> round(1e6 * float(np.exp(logs[0])), 3)
        1.003

    Sources: melinder; kell and iapws-sr6-08 (pure water)
    """
    if not temperature_degC >= 0.0:
        message = "below freezing not every mixture flows"
        raise OutOfRange(message)
    shares, logs, _ = _ladder(float(temperature_degC))
    return shares, logs


@lru_cache(maxsize=64)
def _ladder(temperature: float) -> tuple[NDArray[np.float64], NDArray[np.float64], float]:
    _check_temperature(temperature)
    shares = np.linspace(0.0, HIGHEST_GLYCOL, _STEPS)
    mass = np.array([mass_share_glycol(float(s)) for s in shares])
    rho, mu = _meeting_water("propylene_glycol", mass, temperature)
    least = 0.0 if temperature >= 0.0 else _least_liquid_share(temperature)
    return shares, np.log(mu / rho), least


def _least_liquid_share(temperature: float) -> float:
    return volume_share_glycol(liquidus_glycol(temperature))


def _meeting_water(
    solute: Solute, share: NDArray[np.float64], temperature: float
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    rho, mu = density_and_viscosity(solute, share, temperature)
    rho_0, mu_0 = density_and_viscosity(solute, np.zeros(1), max(temperature, 0.0))
    water = max(temperature, 0.0)
    fade = np.clip(1.0 - share / _FADE, 0.0, 1.0)
    rho = rho * (density_water(water) / rho_0[0]) ** fade
    return rho, mu * (viscosity_water(water) / mu_0[0]) ** fade


def _why_not(contents: Contents, temperature: float) -> WhyNot | None:
    if contents.air > 0.0:
        return "air"
    if contents.rated > 0.0:
        return "product unknown"
    if contents.glycol > 0.0 and contents.ethanol > 0.0:
        return "blend"
    freezing = freezing_point(contents)
    highest = freezing.point_degC if freezing.point_degC is not None else freezing.at_most_degC
    if highest is None:
        return "freezing point unknown"
    if temperature < highest:
        return "frozen" if freezing.point_degC is not None else "freezing point unknown"
    return None


def _check_temperature(temperature: float) -> None:
    if not COLDEST <= temperature <= HOTTEST:
        message = f"density and viscosity are known here from {COLDEST:g} to {HOTTEST:g} degC"
        raise OutOfRange(message)
