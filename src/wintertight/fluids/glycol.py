"""Propylene glycol in water: its shares and its freezing point.

The printed table gives both shares of each mixture, so the way from one to the other is the
table's own, and includes that the two liquids shrink when they are mixed.
"""

from functools import cache, lru_cache

from wintertight.errors import OutOfRange
from wintertight.fluids.curve import MonotoneCurve
from wintertight.fluids.tables import read_table
from wintertight.units import fahrenheit_to_celsius

_TABLE = "ashrae_fundamentals_propylene_glycol_freezing_points"

HIGHEST_MASS_SHARE = 0.60
"""End of the printed table [1 of the mass]."""


@cache
def _freezing_curve() -> MonotoneCurve:
    columns = read_table(_TABLE).columns
    share = [0.0, *(p / 100.0 for p in columns["mass_percent"])]
    return MonotoneCurve(
        share, [0.0, *(fahrenheit_to_celsius(t) for t in columns["freezing_point_degF"])]
    )


@cache
def _share_curve() -> MonotoneCurve:
    columns = read_table(_TABLE).columns
    return MonotoneCurve(
        [0.0, *(p / 100.0 for p in columns["mass_percent"]), 1.0],
        [0.0, *(p / 100.0 for p in columns["volume_percent"]), 1.0],
    )


@cache
def coldest_glycol() -> float:
    """Give the freezing point at the end of the table.

    A mixture richer than the table's last row freezes no warmer than this: the ice line goes on
    falling, and pure propylene glycol freezes near -59 degC.

    Returns:
        The freezing point [degC].

    Sources: ashrae-fundamentals table of propylene glycol, last row; memory (pure glycol)
    """
    return _freezing_curve().y[-1]


def mass_share_glycol(volume_share: float) -> float:
    """Turn the share of the volume into the share of the mass.

    Args:
        volume_share: propylene glycol [1], 0 to 1.

    Returns:
        Its share of the mass [1].

    Raises:
        OutOfRange: not between 0 and 1.

    Example:
        >>> round(mass_share_glycol(0.294), 6)
        0.3

    Sources: ashrae-fundamentals table of propylene glycol, first two columns
    """
    _check(volume_share, 1.0, "a share of the volume")
    return _share_curve().where(volume_share) if 0.0 < volume_share < 1.0 else volume_share


def volume_share_glycol(mass_share: float) -> float:
    """Turn the share of the mass into the share of the volume.

    Args:
        mass_share: propylene glycol [1], 0 to 1.

    Returns:
        Its share of the volume [1].

    Raises:
        OutOfRange: not between 0 and 1.

    Example:
        >>> round(volume_share_glycol(0.50), 6)
        0.499

    Sources: ashrae-fundamentals table of propylene glycol, first two columns
    """
    _check(mass_share, 1.0, "a share of the mass")
    return _share_curve().at(mass_share)


def freezing_point_glycol(mass_share: float) -> float:
    """Give the temperature at which the first ice appears.

    The printed points are joined by a monotone cubic; 0 degC at no glycol.

    Args:
        mass_share: propylene glycol [1], 0 to 0.60.

    Returns:
        The freezing point [degC].

    Raises:
        OutOfRange: above 0.60, where no point is printed.

    Example:
        >>> round(freezing_point_glycol(0.30), 2)
        -12.67

    Sources: ashrae-fundamentals table of propylene glycol, third column
    """
    _check(mass_share, HIGHEST_MASS_SHARE, "glycol's share of the mass")
    return _freezing_curve().at(mass_share)


@lru_cache(maxsize=256)
def liquidus_glycol(temperature_degC: float) -> float:
    """Give the share that just does not freeze: what the liquid between ice crystals holds.

    Args:
        temperature_degC: [degC], 0 down to -51.06.

    Returns:
        Glycol's share of the mass of the liquid [1].

    Raises:
        OutOfRange: above 0 degC, or colder than the table's end.

    Example:
        >>> round(liquidus_glycol(-33.5), 4)
        0.5

    Sources: ashrae-fundamentals table of propylene glycol, third column
    """
    curve = _freezing_curve()
    if not curve.y[-1] <= temperature_degC <= 0.0:
        message = f"glycol's freezing points are printed from 0 to {curve.y[-1]:.1f} degC"
        raise OutOfRange(message)
    return curve.where(temperature_degC)


def _check(share: float, highest: float, what: str) -> None:
    if not 0.0 <= share <= highest:
        message = f"{what} must lie between 0 and {highest:g}, not {share:g}"
        raise OutOfRange(message)
