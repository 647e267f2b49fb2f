"""Which fields of a card carry a unit, and of what kind: one table for who writes and compares."""

from collections.abc import Mapping
from types import MappingProxyType

from wintertight.units import Dimension

FIELD_DIMENSION: Mapping[str, Dimension] = MappingProxyType(
    {
        "length": "length",
        "height": "length",
        "floor_above_ground": "length",
        "design_low_degC": "temperature",
        "at": "length",
        "at_within_m": "length",
        "volume": "volume",
        "flow": "flow",
        "cut_off": "pressure",
        "bore": "length",
        "start_height_m": "length",
        "end_height_m": "length",
        "lowest_m": "length",
        "highest_m": "length",
        "opening_s": "time",
    }
)
"""Field of a card, by its name inside, and what its text must measure."""
