"""When a content freezes, and how much of it is ice.

Below its freezing point a mixture is slush: pure ice in a liquid that has grown just strong enough
not to freeze. So the mass of ice follows from the balance of the antifreeze (the lever rule),

    ice = 1 - w0 / w(t),

with w0 the antifreeze's share of the mass of the whole, and w(t) that of the remaining liquid.
Air plays no part: the liquid is judged.
"""

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from wintertight.fluids.contents import Contents
from wintertight.fluids.ethanol import (
    HIGHEST_MASS_SHARE as HIGHEST_ETHANOL,
)
from wintertight.fluids.ethanol import (
    coldest_ethanol,
    freezing_point_ethanol,
    liquidus_ethanol,
    mass_share_ethanol,
)
from wintertight.fluids.glycol import (
    HIGHEST_MASS_SHARE as HIGHEST_GLYCOL,
)
from wintertight.fluids.glycol import (
    coldest_glycol,
    freezing_point_glycol,
    liquidus_glycol,
    mass_share_glycol,
)

WhyNull = Literal["no liquid", "product unknown", "blend", "beyond the table"]

TRACE = 0.01
"""Of two antifreezes, the one that is less than this share of both is counted as water [1].

Water protects less than either, so that errs to the safe side, and it keeps a rest from last
year's other product from making a whole line unknown.
"""


@dataclass(frozen=True, slots=True)
class Freezing:
    """A freezing point, a bound on it, or why there is none.

    Attributes:
        point_degC: where the first ice appears [degC]; None where it is not known.
        at_most_degC: it is known to be no warmer than this [degC]; None where nothing is known.
        why_null: key of the reason where the point is None.
    """

    point_degC: float | None
    at_most_degC: float | None = None
    why_null: WhyNull | None = None


@dataclass(frozen=True, slots=True)
class Ice:
    """A mass share of ice, a bound on it, or why there is none.

    Attributes:
        fraction: share of the mass that is ice [1]; None where it is not known.
        at_least: it is known to be no less than this [1].
        why_null: key of the reason where the fraction is None.
    """

    fraction: float | None
    at_least: float = 0.0
    why_null: WhyNull | None = None


@dataclass(frozen=True, slots=True)
class Solution:
    """A liquid as one antifreeze in water.

    Attributes:
        kind: which one; "water" where there is none.
        mass_share: its share of the mass [1].
    """

    kind: Literal["water", "glycol", "ethanol"]
    mass_share: float


@lru_cache(maxsize=4096)
def solution(contents: Contents) -> Solution | WhyNull:
    """Give the liquid as one antifreeze in water, or the key of why it is none.

    Args:
        contents: any.

    Returns:
        The solution, or the reason.
    """
    liquid = contents.liquid()
    if liquid is None:
        return "no liquid"
    if liquid.rated > 0.0:
        return "product unknown"
    glycol, ethanol = liquid.glycol, liquid.ethanol
    if glycol > 0.0 and ethanol > 0.0:
        if min(glycol, ethanol) >= TRACE * (glycol + ethanol):
            return "blend"
        glycol, ethanol = (glycol, 0.0) if glycol > ethanol else (0.0, ethanol)
    if glycol > 0.0:
        return Solution("glycol", mass_share_glycol(glycol))
    if ethanol > 0.0:
        return Solution("ethanol", mass_share_ethanol(ethanol))
    return Solution("water", 0.0)


def freezing_point(contents: Contents) -> Freezing:
    """Give the temperature at which the first ice appears in the liquid of a content.

    Args:
        contents: any; its air is left out.

    Returns:
        The freezing point; for a mixture richer than its printed table only the bound that it
        freezes no warmer than the table's last row.

    Example:
        >>> freezing_point(Contents()).point_degC
        0.0
        >>> freezing_point(Contents(glycol=0.2, ethanol=0.2)).why_null
        'blend'

    Sources: ashrae-fundamentals (glycol); lange table 5.13 (ethanol)
    """
    found = solution(contents)
    if isinstance(found, str):
        return Freezing(None, why_null=found)
    if found.kind == "water":
        return Freezing(0.0, 0.0)
    if found.kind == "glycol":
        if found.mass_share > HIGHEST_GLYCOL:
            return Freezing(None, coldest_glycol(), "beyond the table")
        point = freezing_point_glycol(found.mass_share)
        return Freezing(point, point)
    if found.mass_share > HIGHEST_ETHANOL:
        return Freezing(None, coldest_ethanol(), "beyond the table")
    point = freezing_point_ethanol(found.mass_share)
    return Freezing(point, point)


def ice_fraction(contents: Contents, temperature_degC: float) -> Ice:
    """Give the share of the liquid's mass that is ice at rest at a temperature.

    ice = 1 - w0 / w(t) below the freezing point, else nothing.

    Args:
        contents: any; its air is left out.
        temperature_degC: [degC].

    Returns:
        The share; colder than the printed table only a lower bound, unless it is water, which is
        all ice.

    Example:
        >>> round(ice_fraction(Contents(glycol=0.20), -23.3).fraction, 2)
        0.51
        >>> ice_fraction(Contents(), -1.0).fraction
        1.0

    Sources: ashrae-fundamentals (glycol); lange table 5.13 (ethanol); calculated (lever rule)
    """
    found = solution(contents)
    if isinstance(found, str):
        return Ice(None, why_null=found)
    if temperature_degC >= 0.0:
        return Ice(0.0)
    if found.kind == "water":
        return Ice(1.0, 1.0)
    glycol = found.kind == "glycol"
    end = coldest_glycol() if glycol else coldest_ethanol()
    at = max(temperature_degC, end)
    liquid_share = liquidus_glycol(at) if glycol else liquidus_ethanol(at)
    all_liquid = found.mass_share >= liquid_share
    ice = 0.0 if all_liquid else 1.0 - found.mass_share / liquid_share
    if temperature_degC < end:
        return Ice(None, ice, "beyond the table")
    return Ice(ice, ice)
