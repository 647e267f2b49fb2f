"""How much glycol keeps a place from bursting, and how much from freezing.

Freezing is not bursting: slush with little enough ice still finds room. Two rules say how little,
and the one that asks for more glycol counts:

  one ice fraction   slush bursts nothing up to 0.334 of ice by mass. The printed burst column
                     corresponds to 0.30 to 0.35 from 20 to -40 degF, and to this mean.
  printed column     the burst column itself, joined by straight lines, begun at 32 degF with none.
"""

from bisect import bisect_left
from functools import cache

from wintertight.errors import OutOfRange
from wintertight.fluids.glycol import (
    HIGHEST_MASS_SHARE,
    coldest_glycol,
    freezing_point_glycol,
    liquidus_glycol,
    mass_share_glycol,
    volume_share_glycol,
)
from wintertight.fluids.tables import read_table
from wintertight.units import fahrenheit_to_celsius

HARMLESS_ICE = 0.334
"""Ice in slush that bursts nothing that has somewhere to grow [1 of the mass]."""

_TABLE = "math_for_hvacr_2018_page_97_propylene_glycol"


@cache
def _printed() -> tuple[tuple[float, ...], tuple[float, ...]]:
    columns = read_table(_TABLE).columns
    degrees = [fahrenheit_to_celsius(t) for t in columns["temperature_degF"]]
    need = [p / 100.0 for p in columns["burst_volume_percent"]]
    return (0.0, *degrees), (0.0, *need)


def burst_need_by_ice(temperature_degC: float) -> float:
    """Give the glycol with which the ice at a temperature stays harmless.

    w0 = (1 - 0.334) w(t), w the share of the liquid that just does not freeze.

    Args:
        temperature_degC: [degC], down to -51.06.

    Returns:
        Glycol's share of the volume [1]; none from 0 degC up.

    Raises:
        OutOfRange: colder than the table of freezing points.

    Example:
        >>> round(burst_need_by_ice(-17.78), 3)
        0.237

    Sources: ashrae-fundamentals (freezing points); math-for-hvacr p. 97 (the ice fraction)
    """
    if temperature_degC >= 0.0:
        return 0.0
    return volume_share_glycol((1.0 - HARMLESS_ICE) * liquidus_glycol(temperature_degC))


def burst_need_printed(temperature_degC: float) -> float:
    """Give the glycol the printed burst column asks for.

    Args:
        temperature_degC: [degC], down to -51.1.

    Returns:
        Glycol's share of the volume [1]; none from 0 degC up.

    Raises:
        OutOfRange: colder than the column's last row.

    Example:
        >>> round(burst_need_printed(-23.3333333), 6)
        0.28

    Sources: math-for-hvacr p. 97, burst column
    """
    if temperature_degC >= 0.0:
        return 0.0
    degrees, need = _printed()
    if temperature_degC < degrees[-1]:
        message = f"the burst column ends at {degrees[-1]:.1f} degC"
        raise OutOfRange(message)
    k = bisect_left(degrees, -temperature_degC, key=lambda t: -t)
    part = (temperature_degC - degrees[k - 1]) / (degrees[k] - degrees[k - 1])
    return need[k - 1] + part * (need[k] - need[k - 1])


def burst_need(temperature_degC: float) -> float:
    """Give the glycol that keeps from bursting: the larger need of the two rules.

    Args:
        temperature_degC: [degC], down to -51.06.

    Returns:
        Glycol's share of the volume [1].

    Raises:
        OutOfRange: colder than either table.

    Example:
        >>> round(burst_need(-30.0), 3)
        0.314

    Sources: ashrae-fundamentals; math-for-hvacr p. 97
    """
    return max(burst_need_by_ice(temperature_degC), burst_need_printed(temperature_degC))


def freeze_need(temperature_degC: float) -> float:
    """Give the glycol that keeps from freezing at all.

    Args:
        temperature_degC: [degC], down to -51.06.

    Returns:
        Glycol's share of the volume [1]; none from 0 degC up.

    Raises:
        OutOfRange: colder than the table of freezing points.

    Example:
        >>> round(freeze_need(-12.67), 3)
        0.294

    Sources: ashrae-fundamentals
    """
    return (
        0.0 if temperature_degC >= 0.0 else volume_share_glycol(liquidus_glycol(temperature_degC))
    )


def burst_limit_glycol(volume_share: float) -> tuple[float, bool]:
    """Give how cold a glycol mixture may get where slush has somewhere to grow.

    Args:
        volume_share: propylene glycol [1], 0 to 1.

    Returns:
        The coldest temperature [degC] at which both rules still hold, and whether that is where
        the tables end, so that colder is unknown rather than unsafe.

    Example:
        >>> limit, at_end = burst_limit_glycol(0.28)
        >>> round(limit, 2), at_end
        (-23.33, False)

    Sources: ashrae-fundamentals; math-for-hvacr p. 97
    """
    whole = mass_share_glycol(volume_share)
    liquid = whole / (1.0 - HARMLESS_ICE)
    by_ice = coldest_glycol() if liquid >= HIGHEST_MASS_SHARE else freezing_point_glycol(liquid)
    by_column = _limit_printed(volume_share)
    at_end = liquid >= HIGHEST_MASS_SHARE and by_column <= by_ice
    return max(by_ice, by_column), at_end


def _limit_printed(volume_share: float) -> float:
    degrees, need = _printed()
    if volume_share >= need[-1]:
        return degrees[-1]
    k = bisect_left(need, volume_share)
    if k == 0:
        return degrees[0]
    part = (volume_share - need[k - 1]) / (need[k] - need[k - 1])
    return degrees[k - 1] + part * (degrees[k] - degrees[k - 1])
