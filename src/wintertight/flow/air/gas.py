"""Air as the lines see it: an ideal gas at the temperature of the bay.

Up to 50 psi its density is within 0.3 % of an ideal gas's, far below what is known of any
tap.
"""

import math
from typing import Final

from wintertight.units import FOOT_M, ZERO_CELSIUS_K

GAS_CONSTANT_AIR: Final = 8.31432 / 0.0289644
"""Gas constant of dry air [J/(kg K)]: us-standard-atmosphere."""

HEAT_CAPACITY_RATIO: Final = 1.4
"""Heat capacity of air at constant pressure over that at constant volume [1]."""

ATMOSPHERE_PA: Final = 101_325.0
"""Standard atmosphere [Pa]."""

FREE_AIR_DEGC: Final = 15.0
"""Temperature at which free air is counted [degC]."""

CUBIC_FOOT_PER_MINUTE: Final = FOOT_M**3 / 60.0
"""One cubic foot a minute [m3/s]."""

_SUTHERLAND_SLOPE: Final = 1.458e-6
_SUTHERLAND_K: Final = 110.4


def density_air(pressure_Pa: float, temperature_degC: float) -> float:
    """Give the density of air, rho = p / (R T).

    Args:
        pressure_Pa: absolute pressure [Pa], 0 to 1e6.
        temperature_degC: temperature [degC], -40 to 60.

    Returns:
        Density [kg/m3].

    Example:
        >>> print(f"{density_air(101_325.0, 15.0):.4f}")
        1.2250

    Sources: us-standard-atmosphere (gas constant); white (ideal gas).
    """
    return pressure_Pa / specific_energy(temperature_degC)


def specific_energy(temperature_degC: float) -> float:
    """Give R T, what divides pressure into density; also the square of the isothermal sound speed.

    Args:
        temperature_degC: temperature [degC], -40 to 60.

    Returns:
        R T [J/kg].

    Example:
        >>> print(f"{specific_energy(15.0):.0f}")
        82714

    Sources: us-standard-atmosphere (gas constant).
    """
    return GAS_CONSTANT_AIR * (temperature_degC + ZERO_CELSIUS_K)


def viscosity_air(temperature_degC: float) -> float:
    """Give the dynamic viscosity of air by Sutherland's formula; pressure does not change it.

    mu = 1.458e-6 T^1.5 / (T + 110.4), T in kelvin.

    Args:
        temperature_degC: temperature [degC], -40 to 60.

    Returns:
        Dynamic viscosity [Pa s].

    Example:
        >>> print(f"{viscosity_air(15.0):.4e}")
        1.7894e-05

    Sources: us-standard-atmosphere (Sutherland's formula, from memory).
    """
    kelvin = temperature_degC + ZERO_CELSIUS_K
    return _SUTHERLAND_SLOPE * math.sqrt(kelvin) ** 3 / (kelvin + _SUTHERLAND_K)


def free_air(mass_kg_s: float) -> float:
    """Give a mass flow as compressors are rated: its volume at 1 atm and 15 degC.

    Args:
        mass_kg_s: mass flow [kg/s].

    Returns:
        Free air [m3/s].

    Example:
        >>> print(f"{free_air(1.2250e-3):.4e}")
        1.0000e-03

    Sources: calculated.
    """
    return mass_kg_s / density_air(ATMOSPHERE_PA, FREE_AIR_DEGC)


def mass_of_free_air(free_air_m3_s: float) -> float:
    """Give the mass flow of so much free air; the inverse of ``free_air``.

    Args:
        free_air_m3_s: flow at 1 atm and 15 degC [m3/s].

    Returns:
        Mass flow [kg/s].

    Example:
        >>> print(f"{mass_of_free_air(2.5 * CUBIC_FOOT_PER_MINUTE):.3e}")
        1.445e-03

    Sources: calculated.
    """
    return free_air_m3_s * density_air(ATMOSPHERE_PA, FREE_AIR_DEGC)
