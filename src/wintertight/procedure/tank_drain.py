"""How long a fresh tank takes to run empty through its own drain.

A tank of one cross-section A [m2] over an open drain of area a [m2] follows Torricelli's law,

    A dh/dt = -C a sqrt(2 g h)

from which the time to fall from a level h to the drain is t = A/(C a) sqrt(2 h/g). With the tank's
depth H and volume V, A = V/H; a tank filled to a share s of its depth takes sqrt(s) of the time of
a full one. The hose that may hang on the drain, and a vent too small for the air, are left out.
"""

import math

from wintertight.flow.losses import GRAVITY
from wintertight.units import INCH_M

DISCHARGE = 0.62
"""Discharge coefficient of a drain with a sharp edge [1]; memory."""

DRAIN_BORE_M = 0.5 * INCH_M
"""Bore of a fresh tank's usual drain valve [m]: half an inch; common practice."""

TANK_DEPTH_M = 12.0 * INCH_M
"""Depth of water in a full fresh tank [m]: a foot, whatever it holds; common practice."""


def drain_time_s(
    volume_m3: float,
    share: float = 1.0,
    *,
    depth_m: float = TANK_DEPTH_M,
    bore_m: float = DRAIN_BORE_M,
    discharge: float = DISCHARGE,
) -> float:
    """Give how long a fresh tank takes to run down to its drain.

    t = V/(C a) sqrt(2 s/(g H)), with a = pi d2/4.

    Args:
        volume_m3: what runs out of the full tank [m3], above 0.
        share: how full it is, of its depth [1], 0 to 1.
        depth_m: depth of water above the drain when full, H [m], above 0.
        bore_m: bore of the drain, d [m], above 0.
        discharge: discharge coefficient, C [1], above 0 to 1.

    Returns:
        The time [s].

    Example:
        >>> round(drain_time_s(0.2271) / 60.0)
        39

    Sources:
        calculated (Torricelli's law)
        memory (discharge coefficient)
        common-practice (bore and depth)
    """
    area_m2 = math.pi * bore_m**2 / 4.0
    full_s = volume_m3 / (discharge * area_m2) * math.sqrt(2.0 / (GRAVITY * depth_m))
    return full_s * math.sqrt(share)
