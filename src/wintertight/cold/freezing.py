"""How fast still water freezes: into a half-space, and inward in a tube.

A half-space has an exact solution (Neumann). For a tube the ice is taken as quasi-steady: what heat
it holds itself is small against what it gives off in freezing. That makes it freeze a few per cent
too soon, which is the careful side of a claim that expires.
"""

import math

CONDUCTIVITY_ICE = 2.22
"""Thermal conductivity of ice at 0 degC [W/(m K)]. Sources: carslaw-jaeger (11.2, its example)."""

DENSITY_ICE = 917.0
"""Density of ice a few degrees below 0 degC [kg/m3]. Sources: carslaw-jaeger (11.2)."""

HEAT_ICE = 2050.0
"""Specific heat of ice [J/(kg K)]. Sources: carslaw-jaeger (11.2, its example)."""

LATENT_HEAT = 333.5e3
"""Heat that water gives off in freezing at 0 degC [J/kg]. Sources: carslaw-jaeger (11.2)."""


def stefan_number(degrees_below_K: float) -> float:
    """Give the Stefan number of ice: sensible over latent heat.

        Ste = c dT / L

    Args:
        degrees_below_K: how far the cold wall is below freezing [K], 0 and up.

    Returns:
        The number [1].

    Example:
        >>> round(stefan_number(10.0), 5)
        0.06147

    Sources: carslaw-jaeger
    """
    return HEAT_ICE * degrees_below_K / LATENT_HEAT


def neumann_lambda(stefan: float) -> float:
    """Give the root of Neumann's one-phase solidification.

        sqrt(pi) lambda exp(lambda^2) erf(lambda) = Ste

    Args:
        stefan: Stefan number [1], 0 to 5.

    Returns:
        lambda [1].

    Example:
        >>> round(neumann_lambda(0.06147), 5)
        0.17356

    Sources: carslaw-jaeger (11.2)
    """
    low, high = 0.0, 2.0
    for _ in range(60):
        middle = (low + high) / 2.0
        made = math.sqrt(math.pi) * middle * math.exp(middle**2) * math.erf(middle)
        low, high = (middle, high) if made < stefan else (low, middle)
    return (low + high) / 2.0


def front_depth_m(degrees_below_K: float, seconds: float) -> float:
    """Give how deep a half-space of water at 0 degC has frozen under a cold wall.

        s = 2 lambda sqrt(a t)

    Args:
        degrees_below_K: how far the wall is below freezing [K], 0 to 40.
        seconds: how long [s], 0 and up.

    Returns:
        Depth of the ice [m].

    Example:
        >>> round(1e3 * front_depth_m(10.0, 3600.0), 2)
        22.63

    Sources: carslaw-jaeger (11.2)
    """
    diffusivity = CONDUCTIVITY_ICE / (DENSITY_ICE * HEAT_ICE)
    return 2.0 * neumann_lambda(stefan_number(degrees_below_K)) * math.sqrt(diffusivity * seconds)


def freezing_debt(radius_m: float, biot: float, ice_share: float = 1.0) -> float:
    """Give how much cold it takes to freeze a share of the water in a tube, from its wall inward.

    For a constant cold, seconds are this over the kelvin below freezing; for one that changes, it
    is the integral of the kelvin below freezing. With x the radius of what is still water over that
    of the bore, and so 1 - x^2 the share that is ice:

        rho L R^2 / k ((1 - x^2) (1/4 + 1/(2 Bi)) + x^2/2 ln x)

    Args:
        radius_m: radius R of the bore [m], above 0.
        biot: Biot number h R / k of ice and what lies outside it [1], above 0.
        ice_share: share of the water that is to be ice [1], 0 to 1.

    Returns:
        Degrees below freezing times time [K s].

    Example:
        >>> round(freezing_debt(6.16e-3, 1.0) / 10.0 / 60.0, 2)
        6.53

    Sources: london-seban (the whole tube); calculated (a share of it, the same integral)
    """
    inner = 1.0 - ice_share
    logarithm = 0.25 * inner * math.log(inner) if inner > 0.0 else 0.0
    part = ice_share * (0.25 + 0.5 / biot) + logarithm
    return DENSITY_ICE * LATENT_HEAT * radius_m**2 / CONDUCTIVITY_ICE * part
