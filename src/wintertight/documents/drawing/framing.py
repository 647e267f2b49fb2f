"""Fits what is to be seen onto the paper, and finds the view in which nothing hides."""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations

from wintertight.coach.position import Position
from wintertight.documents.drawing.views import Point, View, seen

VIEWS: tuple[View, ...] = ("isometric", "plan", "side")

CLEAR = 26.0
"""Distance between two symbols from which both can be made out in a close-up."""


@dataclass(frozen=True, slots=True)
class Frame:
    """From metres to paper.

    Attributes:
        view: which way one looks.
        scale: units to the metre.
        left, upper: what is added after scaling.
    """

    view: View
    scale: float
    left: float
    upper: float

    def at(self, place: Position) -> Point:
        """Give where a place is on paper."""
        x, y = seen(place, self.view)
        return self.left + self.scale * x, self.upper + self.scale * y


def fitted(
    places: Sequence[Position],
    view: View,
    window: tuple[float, float, float, float],
    least_m: float,
) -> Frame:
    """Fit places into a window, in the middle of it.

    Args:
        places: at least one.
        view: which way one looks.
        window: left, upper, right and lower edge on paper.
        least_m: what is shown at least, across and down [m].

    Returns:
        The frame.
    """
    points = [seen(place, view) for place in places]
    spans = []
    for axis in (0, 1):
        values = [point[axis] for point in points]
        spans.append((min(values), max(values)))
    left, upper, right, lower = window
    (x0, x1), (y0, y1) = spans
    scale = min((right - left) / max(x1 - x0, least_m), (lower - upper) / max(y1 - y0, least_m))
    return Frame(
        view,
        scale,
        (left + right - scale * (x0 + x1)) / 2.0,
        (upper + lower - scale * (y0 + y1)) / 2.0,
    )


def height_of(places: Sequence[Position], view: View, width: float) -> float:
    """Give how high places are drawn that are fitted into a width, in units of that width."""
    xs, ys = zip(*(seen(place, view) for place in places), strict=True)
    return float(width * (max(ys) - min(ys)) / max(max(xs) - min(xs), 1e-9))


def clearest(
    places: Sequence[Position], window: tuple[float, float, float, float], least_m: float
) -> Frame:
    """Give the isometric frame, or where something hides in it the view that shows it best."""
    frames = [fitted(places, view, window, least_m) for view in VIEWS]
    clear = [nearest(frame, places) for frame in frames]
    if clear[0] >= CLEAR:
        return frames[0]
    return max(zip(frames, clear, strict=True), key=lambda both: both[1])[0]


def nearest(frame: Frame, places: Iterable[Position]) -> float:
    """Give the least distance between two of some places on paper [unit]; infinite for one."""
    points = [frame.at(place) for place in places]
    return min((math.dist(a, b) for a, b in combinations(points, 2)), default=math.inf)
