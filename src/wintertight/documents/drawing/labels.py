"""Sets labels into two columns beside a drawing, so that none touches another.

Each label gets a leader to its part. Labels are shared out between the columns by where their parts
are, and ordered so that leaders of one column do not cross.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from wintertight.documents.drawing.letters import broken
from wintertight.documents.drawing.picture import TEXT, Label
from wintertight.documents.drawing.views import Point

GAP = 5.0
"""Least distance between two labels of one column [unit]."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """A label that is to be set: its text, and the point it belongs to."""

    text: str
    to: Point
    bold: bool = False


def height_needed(wanted: Sequence[Wanted], column: float) -> float:
    """Give how high a drawing must be for its labels to fit in two columns of a width."""
    heights = sorted((_made(w, column).height + GAP for w in wanted), reverse=True)
    return sum(heights) / 2.0 + (heights[0] if heights else 0.0)


def in_columns(  # noqa: PLR0913 - labels, and the room there is
    wanted: Sequence[Wanted], *, width: float, column: float, edge: float, top: float, bottom: float
) -> tuple[Label, ...]:
    """Set labels beside a drawing.

    Args:
        wanted: the labels.
        width: of the paper.
        column: width of each of the two columns.
        edge: blank edge outside them.
        top: upper edge of both columns.
        bottom: their lower edge; if they need more room they go on below it.

    Returns:
        The labels, in the order in which they stand, left column first.
    """
    made = sorted(((w, _made(w, column)) for w in wanted), key=lambda one: (one[0].to, one[0].text))
    total = sum(label.height + GAP for _, label in made)
    left: list[Label] = []
    right: list[Label] = []
    filled = 0.0
    for _, label in made:
        filled += label.height + GAP
        (left if filled <= total / 2.0 else right).append(label)
    at_left = [replace(label, x=edge + column, anchored="end") for label in left]
    at_right = [replace(label, x=width - edge - column) for label in right]
    return (*_stacked(at_left, top, bottom), *_stacked(at_right, top, bottom))


def _made(wanted: Wanted, column: float) -> Label:
    lines = broken(wanted.text, TEXT, column, bold=wanted.bold)
    return Label(lines, 0.0, 0.0, to=wanted.to, bold=wanted.bold)


def _stacked(column: list[Label], top: float, bottom: float) -> list[Label]:
    """Stack one column: first by height of the parts, then until no two leaders cross."""
    order = sorted(column, key=lambda label: (label.to or (0.0, 0.0))[::-1])
    for _ in range(len(order) ** 2):
        placed = _placed(order, top, bottom)
        crossing = next(
            (
                (i, j)
                for i in range(len(placed))
                for j in range(i + 1, len(placed))
                if _cross(placed[i], placed[j])
            ),
            None,
        )
        if crossing is None:
            return placed
        i, j = crossing
        order[i], order[j] = order[j], order[i]
    return _placed(order, top, bottom)


def _placed(order: Sequence[Label], top: float, bottom: float) -> list[Label]:
    """Set labels as near as may be to the heights of their parts, in this order."""
    ys: list[float] = []
    floor = top
    for label in order:
        wish = (label.to[1] if label.to else top) - label.height / 2.0
        ys.append(max(wish, floor))
        floor = ys[-1] + label.height + GAP
    ceiling = bottom
    for place in range(len(order) - 1, -1, -1):
        ys[place] = min(ys[place], ceiling - order[place].height)
        ceiling = ys[place] - GAP
    # Pushed out above, all go down again: then the column is fuller than the drawing is high.
    floor = top
    for place, label in enumerate(order):
        ys[place] = max(ys[place], floor)
        floor = ys[place] + label.height + GAP
    return [replace(label, y=y) for label, y in zip(order, ys, strict=True)]


def leader_of(label: Label) -> tuple[Point, Point] | None:
    """Give both ends of the leader of a label: at its text, and at its part."""
    if label.to is None:
        return None
    left, upper, right, lower = label.box
    beside = right + 3.0 if label.anchored == "end" else left - 3.0
    return (beside, (upper + lower) / 2.0), label.to


def _cross(one: Label, other: Label) -> bool:
    first, second = leader_of(one), leader_of(other)
    if first is None or second is None or first[1] == second[1]:
        return False
    return _apart(*first, *second) and _apart(*second, *first)


def _apart(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Tell whether two points are on different sides of a straight line through a and b."""
    return _turn(a, b, c) * _turn(a, b, d) < 0.0


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
