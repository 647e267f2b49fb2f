"""Draws parts of a coach into a window: its outline, its lines and its fittings."""

import math
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from wintertight.coach.card import Card, Fitting
from wintertight.coach.position import Position
from wintertight.coach.sides import sides_of
from wintertight.documents.drawing.framing import Frame
from wintertight.documents.drawing.picture import Handle, Mark, Pattern, Stroke
from wintertight.documents.drawing.routes import way_of
from wintertight.documents.drawing.symbols import symbol_of
from wintertight.documents.drawing.views import Point

WIDE_M = 2.44
"""Width of a coach whose card does not tell it: 8 ft, common practice [m]."""

APART = 5.0
"""Hot and cold ends at one tap are drawn so far from its middle [unit]."""

MARK, CLOSE_MARK = 6.0, 15.0
"""Half length of a symbol in a whole coach, and in a close-up [unit]."""


LEVERS: Mapping[str, Handle] = {"along": "along", "across": "across"}
"""Settings that a lever shows."""


@dataclass(frozen=True, slots=True)
class Box:
    """How long and wide a coach is, and how high its living space [m]."""

    long_m: float
    wide_m: float
    high_m: float = 2.0


def box_of(card: Card) -> Box:
    """Give the outline of a coach; where its length is not told, it ends behind its last part."""
    places = [f.at for f in card.fittings if f.at is not None]
    long = max((at.along_m for at in places), default=3.0) + 0.3
    if card.coach.length is not None:
        long = max(card.coach.length.value, long - 0.3)
    return Box(long, max([WIDE_M, *(at.across_m for at in places)]))


def corners(box: Box) -> tuple[Position, ...]:
    """Give the eight corners of a coach, floor first, from front at the road side around."""
    return tuple(
        Position(along, across, height)
        for height in (0.0, box.high_m)
        for along, across in (
            (0.0, 0.0),
            (box.long_m, 0.0),
            (box.long_m, box.wide_m),
            (0.0, box.wide_m),
        )
    )


def outline(box: Box, frame: Frame) -> Iterator[Stroke]:
    """Draw the floor and the walls behind; what would stand before the pipes is left out."""
    at = [frame.at(corner) for corner in corners(box)]
    if frame.view == "side":
        yield Stroke((at[0], at[1], at[5], at[4], at[0]), "outline")
        return
    yield Stroke((*at[0:4], at[0]), "outline")
    if frame.view != "plan":
        yield Stroke((at[0], at[4], at[5], at[1]), "outline")
        yield Stroke((at[5], at[6], at[2]), "outline")


def lines(
    card: Card, frame: Frame, patterns: Mapping[str, Pattern] | None = None
) -> Iterator[Stroke]:
    """Draw the lines: by their contents or claims if given, else hot, cold or neither."""
    shown: Mapping[str, Pattern] = patterns if patterns is not None else sides_of(card)
    for line in sorted(card.lines, key=lambda one: (_ORDER.index(shown[one.id]), one.id)):
        way = way_of(card, line, APART / frame.scale)
        if way:
            yield Stroke(tuple(frame.at(place) for place in way), shown[line.id])


_ORDER: tuple[Pattern, ...] = (
    "outline", "neither", "cold", "hot", "air", "water", "antifreeze", "mixed", "unproven", "gap",
)  # fmt: skip
"""What must not be hidden is drawn last."""


def shown(card: Card) -> tuple[Fitting, ...]:
    """Give the fittings that have a place and were not found absent."""
    return tuple(f for f in card.fittings if f.at is not None and f.seen != "absent")


def marks(  # noqa: PLR0913 - symbols, and how they stand
    card: Card,
    frame: Frame,
    fittings: Iterable[Fitting],
    settings: Mapping[str, str],
    *,
    size: float,
    strong: frozenset[str] = frozenset(),
) -> Iterator[Mark]:
    """Draw fittings as symbols, valves as they stand."""
    for fitting in fittings:
        if fitting.at is None:
            continue
        setting = settings.get(fitting.id, "")
        handle = LEVERS.get(setting, "") if fitting.id in strong else ""
        symbol = symbol_of(fitting.kind)
        if symbol == "valve" and setting == "across":
            symbol = "shut valve"
        turned = direction(card, frame, fitting)
        upright = symbol not in {"valve", "shut valve", "check valve", "pump", "three-way valve"}
        yield Mark(
            symbol,
            frame.at(fitting.at),
            0.0 if upright else turned,
            size,
            handle,
            fitting.id in strong,
        )


def direction(card: Card, frame: Frame, fitting: Fitting) -> float:
    """Give which way the pipe of a fitting runs on paper, clockwise from the right [deg].

    The longer of the first stretches of its lines decides; what flows out of a pump or a check
    valve shows its way.
    """
    best, turned = 0.0, 0.0
    for line in card.lines:
        for end, leaves in ((line.start, True), (line.end, False)):
            if end.fitting != fitting.id:
                continue
            way = way_of(card, line)
            if len(way) < 2 or fitting.at is None:  # noqa: PLR2004 - a stretch has two ends
                continue
            here = frame.at(fitting.at)
            points = [frame.at(place) for place in way]
            if math.dist(points[-1], here) < math.dist(points[0], here):
                points.reverse()
            length = min(math.dist(points[0], points[1]), 40.0)
            if length > best + 1e-6:
                best, turned = length, _angle(points[0], points[1])
                if end.port == "in" or (not end.port and not leaves):
                    turned += 180.0
    return round(turned % 360.0, 1)


def _angle(a: Point, b: Point) -> float:
    return math.degrees(math.atan2(b[1] - a[1], b[0] - a[0]))
