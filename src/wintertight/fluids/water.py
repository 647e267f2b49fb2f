"""Water and ice at the pressure of the air."""

import math

from wintertight.errors import OutOfRange

COLDEST = -20.0
HOTTEST = 100.0

DENSITY_WATER_0 = 999.84
"""Water at 0 degC [kg/m3]. Sources: crc"""
DENSITY_ICE_0 = 916.7
"""Ice at 0 degC [kg/m3]. Sources: crc"""
GROWTH_ON_FREEZING = DENSITY_WATER_0 / DENSITY_ICE_0 - 1.0
"""How much water grows when it turns to ice [1]."""
FULLEST_CLOSED_CAVITY = DENSITY_ICE_0 / DENSITY_WATER_0
"""A closed cavity filled no higher than this has room for all its water as ice [1]."""

_VISCOSITY = ((280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.45903, -40.0))
_DENSITY = (
    999.83952,
    16.945176,
    -7.9870401e-3,
    -46.170461e-6,
    105.56302e-9,
    -280.54253e-12,
)


def density_water(temperature_degC: float) -> float:
    """Give the density of liquid water at 1 atm.

    rho = (sum a_k t^k) / (1 + 16.879850e-3 t)

    Args:
        temperature_degC: [degC], -20 to 100; below 0 undercooled.

    Returns:
        Density [kg/m3].

    Raises:
        OutOfRange: outside that range.

    Example:
        >>> round(density_water(20.0), 2)
        998.2

    Sources: kell eq. 16
    """
    t = _checked(temperature_degC)
    above = math.fsum(a * t**k for k, a in enumerate(_DENSITY))
    return above / (1.0 + 16.879850e-3 * t)


def viscosity_water(temperature_degC: float) -> float:
    """Give the viscosity of liquid water at 0.1 MPa.

    mu = 1e-6 sum a_k (T / 300 K)^b_k

    Args:
        temperature_degC: [degC], -20 to 100; below 0 undercooled.

    Returns:
        Viscosity [Pa s].

    Raises:
        OutOfRange: outside that range.

    Example:
        >>> round(1000 * viscosity_water(20.0), 4)
        1.0016

    Sources: iapws-sr6-08 eq. 7
    """
    reduced = (_checked(temperature_degC) + 273.15) / 300.0
    return 1e-6 * math.fsum(a * math.pow(reduced, b) for a, b in _VISCOSITY)


def _checked(temperature: float) -> float:
    if not (math.isfinite(temperature) and COLDEST <= temperature <= HOTTEST):
        message = f"water's properties are known here from {COLDEST:g} to {HOTTEST:g} degC"
        raise OutOfRange(message)
    return temperature
