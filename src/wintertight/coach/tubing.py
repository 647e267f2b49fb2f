"""Bores of tube, from the dimensions its standard prints.

A standard prints the outside diameter and the wall with its tolerance. The thinnest wall gives the
largest bore: that one counts for "fluid needed" and "water at risk". The wall in the middle of the
tolerance gives the bore that listed volumes are made from.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from math import pi
from types import MappingProxyType

from wintertight.errors import OutOfRange
from wintertight.units import INCH_M


@dataclass(frozen=True, slots=True)
class Bore:
    """One size of tube, and its bore.

    Attributes:
        nominal: the size by name, as "1/2".
        material: as in `MATERIALS`.
        outside_m: outside diameter [m].
        thinnest_wall_m: least wall the standard allows [m].
        thickest_wall_m: greatest wall the standard allows [m].
        source: key of the source.
    """

    nominal: str
    material: str
    outside_m: float
    thinnest_wall_m: float
    thickest_wall_m: float
    source: str

    @property
    def largest_bore_m(self) -> float:
        """Give the bore at the thinnest wall [m]."""
        return self.outside_m - 2.0 * self.thinnest_wall_m

    @property
    def middle_bore_m(self) -> float:
        """Give the bore at the wall in the middle of the tolerance [m]."""
        return self.outside_m - self.thinnest_wall_m - self.thickest_wall_m

    def volume_m3(self, length_m: float) -> float:
        """Give the most a length can hold [m3], at the largest bore."""
        return pi / 4.0 * self.largest_bore_m**2 * length_m


_Rows = tuple[tuple[str, str, str, str], ...]

# Nominal size, outside diameter, least wall, greatest wall [in], digits as printed.
_PEX: _Rows = (
    ("3/8", "0.500", "0.070", "0.080"),
    ("1/2", "0.625", "0.070", "0.080"),
    ("3/4", "0.875", "0.097", "0.107"),
    ("1", "1.125", "0.125", "0.138"),
)
# Copper's printed wall is the middle, its tolerance is plus and minus.
_COPPER_L: _Rows = (
    ("3/8", "0.500", "0.031", "0.039"),
    ("1/2", "0.625", "0.036", "0.044"),
    ("3/4", "0.875", "0.041", "0.049"),
    ("1", "1.125", "0.045", "0.055"),
)
_COPPER_M: _Rows = (
    ("3/8", "0.500", "0.023", "0.027"),
    ("1/2", "0.625", "0.025", "0.031"),
    ("3/4", "0.875", "0.029", "0.035"),
    ("1", "1.125", "0.031", "0.039"),
)
_POLYBUTYLENE: _Rows = (
    ("3/8", "0.500", "0.062", "0.072"),
    ("1/2", "0.625", "0.062", "0.072"),
    ("3/4", "0.875", "0.080", "0.090"),
    ("1", "1.125", "0.102", "0.112"),
)

_TABLES: Mapping[str, tuple[str, _Rows]] = MappingProxyType(
    {
        "PEX": ("astm-f876", _PEX),
        "copper L": ("astm-b88-type-l", _COPPER_L),
        "copper M": ("astm-b88-type-m", _COPPER_M),
        "polybutylene": ("astm-d3309", _POLYBUTYLENE),
    }
)

MATERIALS: tuple[str, ...] = tuple(_TABLES)
"""Materials whose sizes are known here."""

BORES: Mapping[tuple[str, str], Bore] = MappingProxyType(
    {
        (nominal, material): Bore(
            nominal,
            material,
            outside_m=float(outside) * INCH_M,
            thinnest_wall_m=float(thin) * INCH_M,
            thickest_wall_m=float(thick) * INCH_M,
            source=source,
        )
        for material, (source, rows) in _TABLES.items()
        for nominal, outside, thin, thick in rows
    }
)
"""Every size by nominal size and material."""


def bore(nominal: str, material: str = "PEX") -> Bore:
    """Find a tube by its name.

    Args:
        nominal: "3/8", "1/2", "3/4" or "1", in inches.
        material: one of `MATERIALS`.

    Returns:
        The tube.

    Raises:
        OutOfRange: no such tube is known.

    Example:
        >>> half = bore("1/2")
        >>> round(half.largest_bore_m / INCH_M, 3), round(half.middle_bore_m / INCH_M, 3)
        (0.485, 0.475)

    Sources: astm-f876; astm-b88-type-l; astm-b88-type-m and astm-d3309 (both from memory)
    """
    name = nominal.strip().removesuffix("in").removesuffix('"').strip()
    found = BORES.get((name, material))
    if found is None:
        sizes = ", ".join(n for n, m in BORES if m == material) or "none"
        message = f"no {material} tube of {nominal!r} is known (sizes: {sizes})"
        raise OutOfRange(message)
    return found
