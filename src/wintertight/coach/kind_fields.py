"""Which field of a fitting belongs to which kinds, as one table.

A field that is not in the table belongs to every kind.
"""

from collections.abc import Mapping
from types import MappingProxyType

from wintertight.coach.kinds import KINDS, ROLES

SINKS = frozenset({"kitchen tap", "lavatory tap", "shower", "tub"})
"""Fixtures over a drain that needs a trap."""

TOILETS = frozenset({"gravity toilet", "vacuum toilet", "macerating toilet", "cassette toilet"})

APPLIANCES = frozenset({"ice maker", "door dispenser", "fridge filter", "washer", "dishwasher"})

HEATERS = frozenset({"tank heater", "on-demand heater", "hydronic coil"})

TWO_SIDED = frozenset(kind for kind, facts in KINDS.items() if facts.ports == ("hot", "cold"))
"""Fixtures with a hot and a cold side, of which some coaches have one only."""

OWN_STEPS = (
    APPLIANCES
    | TOILETS - {"gravity toilet"}
    | frozenset(
        {
            "on-demand heater",
            "hydronic coil",
            "whirlpool",
            "recirculating diverter",
            "softener",
            "UV sleeve",
            "membrane filter",
            "macerator",
        }
    )
)
"""Kinds whose maker's steps replace the general ones."""

_HOLLOW = frozenset(KINDS) - {"tee", "antifreeze hose"}

FIELD_KINDS: Mapping[str, frozenset[str]] = MappingProxyType(
    {
        "role": frozenset(ROLES),
        "volume": _HOLLOW,
        "flow": frozenset({"demand pump"}),
        "cut_off": frozenset({"demand pump"}),
        "tank": frozenset({"tank heater"}),
        "heat": HEATERS,
        "only": TWO_SIDED,
        "drains_to": SINKS | TOILETS | frozenset({"trap", "washer", "dishwasher", "whirlpool"}),
        "positions": frozenset({"three-way valve", "service panel"}),
        "makers_steps": OWN_STEPS,
    }
)
"""Field of a fitting, as written on a card, and the kinds that may have it."""


def kinds_with(field: str) -> str:
    """Give the kinds that may have a field, in words for a message."""
    kinds = sorted(FIELD_KINDS[field])
    if len(kinds) > _MANY:
        return f"{len(kinds)} other kinds"
    return " or ".join(kinds)


_MANY = 6
