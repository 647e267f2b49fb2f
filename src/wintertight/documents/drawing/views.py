"""From places in the coach to places on paper.

The isometric view shows the three axes at 120 degrees, all to one scale, as ISO 5456-3 has it for
isometric axonometry. The eye stands at the curb side, before the coach and above it: the front is
at the left, the road side behind. Plan looks down, side looks from the curb side; both to the same
scale.
"""

import math
from typing import Literal

from wintertight.coach.position import Position

View = Literal["isometric", "plan", "side"]

Point = tuple[float, float]
"""Right and down on paper."""

_COS, _SIN = math.cos(math.pi / 6.0), math.sin(math.pi / 6.0)


def seen(place: Position, view: View) -> Point:
    """Give where a place is seen.

    Args:
        place: place in the coach.
        view: which way one looks.

    Returns:
        Right and down from where front, road side and floor meet [m].

    Example:
        >>> x, y = seen(Position(2.0, 0.0, 1.0), "isometric")
        >>> round(x, 3), round(y, 3)
        (1.732, -2.0)
        >>> seen(Position(2.0, 0.5, 1.0), "plan"), seen(Position(2.0, 0.5, 1.0), "side")
        ((2.0, 0.5), (2.0, -1.0))
    """
    if view == "plan":
        return place.along_m, place.across_m
    if view == "side":
        return place.along_m, -place.height_m
    right = _COS * (place.along_m + place.across_m)
    return right, _SIN * (place.across_m - place.along_m) - place.height_m
