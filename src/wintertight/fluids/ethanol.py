"""Ethanol in water: its shares and its freezing point.

A share of the volume here is the share the parts had before they were mixed (ideal volumes), with
789 kg/m3 for ethanol and 998.2 kg/m3 for water, both at 20 degC. The mixture itself shrinks by up
to 4 %, and a label's "% by volume" counts the mixed volume: the same figure stands for less
ethanol there. `wintertight.fluids.product` turns a label's figure into the share used here.
"""

from functools import cache

from wintertight.errors import OutOfRange
from wintertight.fluids.curve import MonotoneCurve
from wintertight.fluids.tables import read_table

_TABLE = "lange_15th_edition_table_5_13_ethanol"

DENSITY_ETHANOL_20 = 789.0
"""Pure ethanol at 20 degC [kg/m3]. Sources: crc"""
DENSITY_WATER_20 = 998.2
"""Water at 20 degC [kg/m3]. Sources: crc"""
HIGHEST_MASS_SHARE = 0.390
"""End of the printed table [1 of the mass]."""


@cache
def _freezing_curve() -> MonotoneCurve:
    columns = read_table(_TABLE).columns
    share = [0.0, *(p / 100.0 for p in columns["mass_percent"])]
    return MonotoneCurve(share, [0.0, *columns["freezing_point_degC"]])


@cache
def coldest_ethanol() -> float:
    """Give the freezing point at the end of the table.

    A richer mixture freezes no warmer: the ice line falls on to below -100 degC.

    Returns:
        The freezing point [degC].

    Sources: lange table 5.13, last row; memory (beyond it)
    """
    return _freezing_curve().y[-1]


def mass_share_ethanol(volume_share: float) -> float:
    """Turn the share of the volume before mixing into the share of the mass.

    Args:
        volume_share: ethanol [1], 0 to 1.

    Returns:
        Its share of the mass [1].

    Raises:
        OutOfRange: not between 0 and 1.

    Example:
        >>> round(mass_share_ethanol(0.40), 4)
        0.3451

    Sources: crc (densities at 20 degC)
    """
    _check(volume_share, 1.0, "a share of the volume")
    ethanol = volume_share * DENSITY_ETHANOL_20
    return ethanol / (ethanol + (1.0 - volume_share) * DENSITY_WATER_20)


def volume_share_ethanol(mass_share: float) -> float:
    """Turn the share of the mass into the share of the volume before mixing.

    Args:
        mass_share: ethanol [1], 0 to 1.

    Returns:
        Its share of the volume [1].

    Raises:
        OutOfRange: not between 0 and 1.

    Example:
        >>> round(volume_share_ethanol(0.39), 4)
        0.4472

    Sources: crc (densities at 20 degC)
    """
    _check(mass_share, 1.0, "a share of the mass")
    ethanol = mass_share / DENSITY_ETHANOL_20
    return ethanol / (ethanol + (1.0 - mass_share) / DENSITY_WATER_20)


def freezing_point_ethanol(mass_share: float) -> float:
    """Give the temperature at which the first ice appears.

    The printed points are joined by a monotone cubic; 0 degC at no ethanol.

    Args:
        mass_share: ethanol [1], 0 to 0.390.

    Returns:
        The freezing point [degC].

    Raises:
        OutOfRange: above 0.390, where no point is printed.

    Example:
        >>> round(freezing_point_ethanol(0.203), 2)
        -10.6

    Sources: lange table 5.13
    """
    _check(mass_share, HIGHEST_MASS_SHARE, "ethanol's share of the mass")
    return _freezing_curve().at(mass_share)


def liquidus_ethanol(temperature_degC: float) -> float:
    """Give the share that just does not freeze.

    Args:
        temperature_degC: [degC], 0 down to -28.7.

    Returns:
        Ethanol's share of the mass of the liquid [1].

    Raises:
        OutOfRange: above 0 degC, or colder than the table's end.

    Example:
        >>> round(liquidus_ethanol(-16.0), 4)
        0.267

    Sources: lange table 5.13
    """
    curve = _freezing_curve()
    if not curve.y[-1] <= temperature_degC <= 0.0:
        message = f"ethanol's freezing points are printed from 0 to {curve.y[-1]:.1f} degC"
        raise OutOfRange(message)
    return curve.where(temperature_degC)


def _check(share: float, highest: float, what: str) -> None:
    if not 0.0 <= share <= highest:
        message = f"{what} must lie between 0 and {highest:g}, not {share:g}"
        raise OutOfRange(message)
