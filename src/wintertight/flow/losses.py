"""How hard it is to flow through a fitting.

Fixtures are emitters: a flow at a pressure. Fittings are a loss coefficient on the velocity head
of half-inch tube. All are common practice; a real coach's values differ, and change minutes rather
than shares.
"""

import math
from collections.abc import Mapping
from types import MappingProxyType

from wintertight.units import GALLON_M3, INCH_M, PSI_PA

GRAVITY = 9.80665
"""Standard gravity [m/s2]."""

WATER_DENSITY = 998.2
"""Water at 20 degC [kg/m3]."""

GALLON_PER_MINUTE = GALLON_M3 / 60.0
"""One US gallon per minute [m3/s]."""

HALF_INCH_BORE_M = 0.485 * INCH_M
"""Bore of half-inch PEX, to which loss coefficients refer [m]."""

BEND_LOSS = 1.2
"""Loss coefficient of one insert elbow or coupling [1]; common practice."""

PLASTIC_ROUGHNESS_M = 1.5e-6
"""Roughness of drawn plastic tube [m]."""

EMITTERS: Mapping[str, tuple[float, float]] = MappingProxyType(
    {
        "kitchen tap": (1.8, 40.0),
        "lavatory tap": (1.2, 40.0),
        "shower": (1.8, 40.0),
        "tub": (3.0, 40.0),
        "outside shower": (1.8, 40.0),
        "outside kitchen": (1.8, 40.0),
        "spray port": (2.0, 40.0),
        "bidet sprayer": (1.0, 40.0),
        "whirlpool": (3.0, 40.0),
        "gravity toilet": (2.5, 40.0),
        "vacuum toilet": (1.5, 40.0),
        "macerating toilet": (1.5, 40.0),
        "cassette toilet": (1.5, 40.0),
        "washer": (2.0, 40.0),
        "dishwasher": (1.0, 40.0),
        "ice maker": (0.5, 40.0),
        "door dispenser": (0.5, 40.0),
        "membrane filter": (1.0, 40.0),
        "capped tee": (1.5, 40.0),
        "prepared stub": (1.5, 40.0),
        "low point": (1.5, 40.0),
        "city inlet": (3.0, 40.0),
    }
)
"""Flow [gal/min] through one side of a fixture at a pressure [psi]; common practice. A low point is
only cracked open while the pump runs."""

COEFFICIENTS: Mapping[str, float] = MappingProxyType(
    {
        "ball valve": 0.5,
        "half-turned valve": 12.0,
        "check valve": 4.0,
        "strainer": 3.0,
        "filter housing": 4.0,
        "many-way valve": 2.0,
        "tempering valve": 6.0,
        "tank heater": 2.0,
        "on-demand heater": 20.0,
        "source": 1.0,
    }
)
"""Loss coefficient on the velocity head in half-inch tube [1]; common practice."""


def emitter_resistance(kind: str) -> float:
    """Give the resistance r of one side of a fixture, h = r q |q|.

    Args:
        kind: a kind of fitting in ``EMITTERS``.

    Returns:
        Resistance [s2/m5].

    Example:
        >>> head_m = emitter_resistance("shower") * (1.8 * GALLON_PER_MINUTE) ** 2
        >>> round(head_m * WATER_DENSITY * GRAVITY / PSI_PA, 6)
        40.0

    Sources: common-practice
    """
    gallons, psi = EMITTERS[kind]
    head = psi * PSI_PA / (WATER_DENSITY * GRAVITY)
    return head / (gallons * GALLON_PER_MINUTE) ** 2


def fitting_resistance(kind: str, bore_m: float = HALF_INCH_BORE_M) -> float:
    """Give the resistance r of a fitting, h = r q |q| = K v^2 / 2g.

    Args:
        kind: a kind of fitting in ``COEFFICIENTS``.
        bore_m: bore to which its coefficient K refers [m], above 0.

    Returns:
        Resistance [s2/m5].

    Example:
        >>> round(fitting_resistance("ball valve") * (3.0 * GALLON_PER_MINUTE) ** 2, 3)
        0.064

    Sources: common-practice
    """
    area = math.pi / 4.0 * bore_m**2
    return COEFFICIENTS[kind] / (2.0 * GRAVITY * area**2)
