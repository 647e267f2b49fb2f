"""What a sample shows without any scale: whether a freezer freezes it, and its colour.

A freezer is the only test of strength that works for every product.
"""

import math

from wintertight.cold.glycol_need import HARMLESS_ICE, burst_need_by_ice
from wintertight.fluids.contents import Contents
from wintertight.fluids.ethanol import coldest_ethanol, liquidus_ethanol, volume_share_ethanol
from wintertight.fluids.product import Product
from wintertight.procedure.instruments import COLDEST_READ_DEGC, share_freezing_at

PINK_AT_FULL = 0.98
"""Likelihood that undiluted product is called pink [1]; common practice."""

PINK_AT_NOTHING = 0.02
"""Likelihood that plain water is called pink [1]; common practice."""

PALEST_PINK = 0.1
"""Share of product that is still called pink nine times out of ten [1]; common practice."""

_FADES = PALEST_PINK / math.log((PINK_AT_FULL - PINK_AT_NOTHING) / (PINK_AT_FULL - 0.9))


def likelihood_pink(share: float) -> float:
    """Give how likely a mixture of the product with water is called pink.

    The dye is strong: a tenth of the product still looks like all of it, so colour tells product
    from water, and hardly strong from weak. ``0.98 - 0.96 exp(-share / 0.04)``, laid through the
    three values of the trade.

    Args:
        share: share of the product in the mixture [1]; outside 0 to 1 the nearer end counts.

    Returns:
        The likelihood [1], larger with more of the product.

    Example:
        >>> [round(likelihood_pink(share), 2) for share in (1.0, 0.1, 0.01, 0.0)]
        [0.98, 0.9, 0.23, 0.02]

    Sources: common-practice
    """
    within = min(1.0, max(0.0, share))
    return PINK_AT_FULL - (PINK_AT_FULL - PINK_AT_NOTHING) * math.exp(-within / _FADES)


def strongest_with_ice(temperature_degC: float, product: Product, *, solid: bool) -> Contents:
    """Give the strongest mixture that has ice in it at a temperature.

    Slush is no stronger than what just freezes there. What is solid has more ice than bursts
    nothing: (1 - 0.334) w(t) at the most.

    Args:
        temperature_degC: where the sample lay [degC]; beyond the printed table its nearer end
            counts, which is the weaker one.
        product: what the sample is of.
        solid: whether it was frozen solid, not slush.

    Returns:
        Ethanol in water where the product has nothing else, else glycol in water: of any other
        product it is the glycol that freezes alike.

    Example:
        >>> pink = Product("pink", 0.35, None, None, None, 0.004)
        >>> round(strongest_with_ice(-20.0, pink, solid=False).glycol, 2)
        0.38
        >>> round(strongest_with_ice(-20.0, pink, solid=True).glycol, 2)
        0.25

    Sources: ashrae-fundamentals; lange table 5.13; math-for-hvacr p. 97 (the ice fraction)
    """
    full = product.contents()
    if full.ethanol > 0.0 and full.glycol == 0.0:
        liquid = liquidus_ethanol(min(0.0, max(coldest_ethanol(), temperature_degC)))
        return Contents(
            ethanol=volume_share_ethanol((1.0 - HARMLESS_ICE) * liquid if solid else liquid)
        )
    if solid:
        return Contents(glycol=burst_need_by_ice(max(COLDEST_READ_DEGC, temperature_degC)))
    return Contents(glycol=share_freezing_at(temperature_degC))
