"""Symbols of fittings, in the manner of ISO 14617: valves as two triangles, and so on.

A symbol is drawn about its middle, its pipe running to the right, in units of its half length. What
has no symbol of its own in the standard is a plain square or circle; its label says what it is.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from wintertight.coach.kinds import KINDS
from wintertight.documents.drawing.views import Point

Ink = Literal["empty", "full", "open line"]


@dataclass(frozen=True, slots=True)
class Shape:
    """One closed or open line of a symbol, its corners in half lengths."""

    corners: tuple[Point, ...]
    ink: Ink = "empty"


def _round(radius: float, x: float = 0.0, y: float = 0.0, ink: Ink = "empty") -> Shape:
    """Give a circle as a polygon of sixteen corners, as round as it is ever seen."""
    ring = (
        (1.0, 0.0), (0.924, 0.383), (0.707, 0.707), (0.383, 0.924), (0.0, 1.0), (-0.383, 0.924),
        (-0.707, 0.707), (-0.924, 0.383), (-1.0, 0.0), (-0.924, -0.383), (-0.707, -0.707),
        (-0.383, -0.924), (0.0, -1.0), (0.383, -0.924), (0.707, -0.707), (0.924, -0.383),
    )  # fmt: skip
    return Shape(tuple((x + radius * a, y + radius * b) for a, b in ring), ink)


_BODY = (
    Shape(((-1.0, -0.6), (0.0, 0.0), (-1.0, 0.6))),
    Shape(((1.0, -0.6), (0.0, 0.0), (1.0, 0.6))),
)
_SQUARE = Shape(((-1.0, -0.8), (1.0, -0.8), (1.0, 0.8), (-1.0, 0.8)))
_BOX = Shape(((-1.4, -1.0), (1.4, -1.0), (1.4, 1.0), (-1.4, 1.0)))
_ACROSS = Shape(((0.0, -0.8), (0.0, 0.8)), "open line")

SYMBOLS: Mapping[str, tuple[Shape, ...]] = MappingProxyType(
    {
        "joint": (_round(0.35, ink="full"),),
        "valve": (*_BODY, _round(0.3)),
        "shut valve": (
            *(Shape(triangle.corners, "full") for triangle in _BODY),
            _round(0.3, ink="full"),
        ),
        "three-way valve": (*_BODY, Shape(((-0.6, 1.0), (0.0, 0.0), (0.6, 1.0)))),
        "check valve": (
            Shape(((-0.8, -0.7), (0.6, 0.0), (-0.8, 0.7))),
            Shape(((0.7, -0.8), (0.7, 0.8)), "open line"),
        ),
        "pump": (_round(1.0), Shape(((-0.5, -0.86), (1.0, 0.0), (-0.5, 0.86)), "open line")),
        "filter": (_SQUARE, _ACROSS),
        "tank": (_BOX,),
        "heater": (
            _BOX,
            Shape(((-1.0, 0.4), (-0.5, -0.4), (0.0, 0.4), (0.5, -0.4), (1.0, 0.4)), "open line"),
        ),
        "drain": (Shape(((-0.8, -0.7), (0.8, -0.7), (0.0, 0.8))),),
        "tap": (
            _round(0.7),
            Shape(((-0.5, -0.5), (0.5, 0.5)), "open line"),
            Shape(((-0.5, 0.5), (0.5, -0.5)), "open line"),
        ),
        "toilet": (_round(0.9), _round(0.5)),
        "inlet": (
            _round(0.9),
            Shape(((-1.0, 0.0), (0.6, 0.0)), "open line"),
            Shape(((0.1, -0.4), (0.6, 0.0), (0.1, 0.4)), "open line"),
        ),
        "trap": (
            Shape(
                ((-0.8, -0.7), (-0.8, 0.5), (-0.4, 0.9), (0.0, 0.5), (0.0, 0.1), (0.8, 0.1)),
                "open line",
            ),
        ),
        "dead end": (Shape(((-0.8, 0.0), (0.5, 0.0)), "open line"), _ACROSS),
        "manifold": (Shape(((-1.4, -0.4), (1.4, -0.4), (1.4, 0.4), (-1.4, 0.4))),),
        "appliance": (_SQUARE,),
    }
)
"""Shapes of each symbol."""

_OF_KIND: Mapping[str, str] = MappingProxyType(
    {
        "tee": "joint",
        "manifold": "manifold",
        "capped tee": "dead end",
        "prepared stub": "dead end",
        "fresh tank": "tank",
        "gray tank": "tank",
        "black tank": "tank",
        "strainer": "filter",
        "filter housing": "filter",
        "fridge filter": "filter",
        "membrane filter": "filter",
        "outside filter": "filter",
        "demand pump": "pump",
        "macerator": "pump",
        "antifreeze hose": "inlet",
        "city inlet": "inlet",
        "tank rinse": "inlet",
        "ball valve": "valve",
        "check valve": "check valve",
        "three-way valve": "three-way valve",
        "tempering valve": "three-way valve",
        "recirculating diverter": "three-way valve",
        "service panel": "manifold",
        "low point": "drain",
        "tank heater": "heater",
        "on-demand heater": "heater",
        "hydronic coil": "heater",
        "trap": "trap",
        "gravity toilet": "toilet",
        "vacuum toilet": "toilet",
        "macerating toilet": "toilet",
        "cassette toilet": "toilet",
    }
)


def symbol_of(kind: str) -> str:
    """Give the name of the symbol of a kind of fitting; taps by what they can open, else a square.

    Example:
        >>> symbol_of("ball valve"), symbol_of("kitchen tap"), symbol_of("softener")
        ('valve', 'tap', 'appliance')
    """
    if kind in _OF_KIND:
        return _OF_KIND[kind]
    return "tap" if KINDS[kind].ports == ("hot", "cold") else "appliance"
