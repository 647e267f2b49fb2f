"""What sweeps a line: the speed that carries water up, and the speed at which air fills a bore."""

import math
from typing import Final

from wintertight.flow.losses import GRAVITY, WATER_DENSITY

NOSE_FACTOR: Final = 0.542
"""Speed of the nose of air that empties a level tube, over sqrt(g D) [1]: benjamin."""

SURFACE_TENSION: Final = 0.0728
"""Of clean water against air at 20 degC [N/m]; memory."""

WATER_VISCOSITY: Final = 1.0e-3
"""Of water at 20 degC [Pa s]; memory."""

RISER_SWEPT: Final = 1.0
"""Wallis number from which a riser counts as swept [1]: the upper of the values 0.9 to 1 given for
carrying a film up."""

RISER_DOUBTFUL: Final = 0.53
"""Wallis number from which a riser is in doubt [1]: 0.725 squared. Published constants of flooding
lie between 0.725 and 1 by the shape of the tube's ends; between their squares water may hang, rise
or run back. Below, it runs back."""

LAYER_SWEPT: Final = 0.5
"""Wallis number from which air whips up a layer of water in a level line and drives it on as slugs
[1]: wallis-dobson, 0.5 a^1.5 with the air's share a of the bore taken as 1."""

LEVEL_DOUBTFUL: Final = 0.7
"""Share of what a level line asks for from which it is in doubt [1]. In bores near a centimetre
surface tension slows the nose by up to about this (zukoski, from memory), and a layer that fills a
fifth of the bore is whipped up at 0.8^1.5 of the number above: the true limit lies in the band."""


def wallis_number(
    air_m_s: float, air_density: float, bore_m: float, water_density: float = WATER_DENSITY
) -> float:
    """Give the dimensionless speed of air by which it carries water up a riser.

    j_g* = j_g sqrt(rho_g / (g D (rho_l - rho_g))).

    Args:
        air_m_s: superficial velocity of the air [m/s], 0 and up.
        air_density: its density there [kg/m3], 1 to 10.
        bore_m: bore [m], 0.005 to 0.05.
        water_density: density of the water [kg/m3].

    Returns:
        Wallis number [1]: about 0.9 to 1 carries a film of water up.

    Example:
        >>> print(f"{wallis_number(9.0, 1.2, 0.01232):.2f}")
        0.90

    Sources: wallis (from memory).
    """
    return air_m_s * math.sqrt(air_density / (GRAVITY * bore_m * (water_density - air_density)))


def riser_velocity(
    bore_m: float,
    air_density: float,
    number: float = RISER_SWEPT,
    water_density: float = WATER_DENSITY,
) -> float:
    """Give the speed of air at which the Wallis number has a value.

    Args:
        bore_m: bore [m], 0.005 to 0.05.
        air_density: density of the air [kg/m3], 1 to 10.
        number: Wallis number [1].
        water_density: density of the water [kg/m3].

    Returns:
        Superficial velocity [m/s].

    Example:
        >>> print(f"{riser_velocity(0.01232, 1.2, 0.9):.1f}")
        9.0

    Sources: wallis (from memory).
    """
    return number / wallis_number(1.0, air_density, bore_m, water_density)


def nose_velocity(bore_m: float) -> float:
    """Give the speed below which air runs in over the water of a level tube, 0.542 sqrt(g D).

    Water pushed along faster than this leaves the whole bore at once, but for a film.

    Args:
        bore_m: bore [m], 0.005 to 0.05.

    Returns:
        Velocity [m/s].

    Example:
        >>> print(f"{nose_velocity(0.01232):.3f}")
        0.188

    Sources: benjamin (from memory).
    """
    return NOSE_FACTOR * math.sqrt(GRAVITY * bore_m)


def film_share(
    push_m_s: float,
    viscosity_Pa_s: float = WATER_VISCOSITY,
    surface_tension: float = SURFACE_TENSION,
) -> float:
    """Give the share of a bore that the first push leaves on the wall as a film.

    t/R = 1.34 Ca^(2/3) / (1 + 2.5 * 1.34 Ca^(2/3)), Ca = mu U / sigma; share 1 - (1 - t/R)^2.

    Args:
        push_m_s: speed of the water pushed along [m/s], 0 to 10.
        viscosity_Pa_s: viscosity of the liquid [Pa s].
        surface_tension: of the liquid [N/m].

    Returns:
        Share of the bore's area [1]; never above 0.64.

    Example:
        >>> print(f"{film_share(1.0):.3f}")
        0.125

    Sources: aussillous-quere (from memory).
    """
    thin = 1.34 * (viscosity_Pa_s * push_m_s / surface_tension) ** (2.0 / 3.0)
    thickness = thin / (1.0 + 2.5 * thin)
    return float(1.0 - (1.0 - thickness) ** 2)
