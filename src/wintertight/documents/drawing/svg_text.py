"""Writes a picture as SVG; the same picture gives the same bytes.

Coordinates are rounded to a tenth of a unit. Line patterns differ without their colour; safety
colours are those of ISO 3864-4 as RAL names them (red 3001, yellow 1003, blue 5005; from memory).
"""

import math
from collections.abc import Iterator, Mapping
from types import MappingProxyType
from xml.sax.saxutils import escape

import svg

from wintertight.documents.drawing.labels import leader_of
from wintertight.documents.drawing.letters import LINE, width_of
from wintertight.documents.drawing.picture import TEXT, Label, Mark, Pattern, Picture, Stroke
from wintertight.documents.drawing.symbols import SYMBOLS
from wintertight.documents.drawing.views import Point

INK, RED, YELLOW, BLUE, PINK, GREY = (
    "#1a1a1a", "#9b2423", "#f9a900", "#005387", "#f3a3bf", "#8c8c8c",
)  # fmt: skip

Layer = tuple[str, float, tuple[float, ...]]

LAYERS: Mapping[Pattern, tuple[Layer, ...]] = MappingProxyType(
    {
        "outline": ((GREY, 1.0, ()),),
        "cold": ((BLUE, 2.6, ()),),
        "hot": ((RED, 2.6, (14.0, 3.0, 2.5, 3.0, 2.5, 3.0)),),
        "neither": ((INK, 2.6, (8.0, 4.0)),),
        "water": ((BLUE, 7.0, ()),),
        "antifreeze": ((INK, 7.0, ()), (PINK, 4.6, ()), (INK, 4.6, (2.0, 6.0))),
        "mixed": ((INK, 7.0, ()), ("#ffffff", 4.6, ()), (BLUE, 4.6, (7.0, 5.0))),
        "air": ((INK, 7.0, ()), ("#ffffff", 4.6, ())),
        "unproven": ((INK, 7.0, ()), (YELLOW, 4.6, ()), (INK, 1.6, (1.6, 5.0))),
        "gap": ((RED, 10.0, ()), ("#ffffff", 3.0, (3.0, 3.0))),
    }
)
"""Colour, width and dashes of each layer of a line, from below."""

FAMILY = "Noto Sans, Arial, sans-serif"


def svg_text(picture: Picture) -> str:
    """Give the text of an SVG file.

    Args:
        picture: what is drawn.

    Returns:
        SVG 1.1 with title and description for readers who cannot see it.
    """
    left, upper, right, lower = picture.window
    clip = f"{picture.name}-window"
    drawn = svg.G(
        clip_path=f"url(#{clip})",
        elements=[layer for stroke in picture.strokes for layer in _stroke(stroke)],
    )
    whole = svg.SVG(
        viewBox=svg.ViewBoxSpec(0, 0, _r(picture.width), _r(picture.height)),
        extra={
            "role": "img",
            "aria-labelledby": f"{picture.name}-title {picture.name}-words",
            "font-family": FAMILY,
            "font-size": f"{TEXT:g}",
        },
        elements=[
            svg.Title(text=_written(picture.title), id=f"{picture.name}-title"),
            svg.Desc(text=_written(picture.description), id=f"{picture.name}-words"),
            svg.Defs(
                elements=[
                    svg.ClipPath(
                        id=clip,
                        elements=[
                            svg.Rect(
                                x=_r(left),
                                y=_r(upper),
                                width=_r(right - left),
                                height=_r(lower - upper),
                            )
                        ],
                    )
                ]
            ),
            svg.Rect(width=_r(picture.width), height=_r(picture.height), fill="#ffffff"),
            drawn,
            *(shape for mark in picture.marks for shape in _mark(mark)),
            *(part for label in picture.labels for part in _label(label)),
        ],
    )
    return str(whole) + "\n"


def _written(text: str) -> str:
    """Give a text as it is written in XML; what no XML may hold is left out."""
    return escape("".join(letter for letter in text if letter.isprintable() or letter == " "))


def _r(value: float) -> float:
    return round(value, 1) + 0.0


def _flat(points: tuple[Point, ...]) -> list[svg.Point]:
    return [svg.Point(_r(x), _r(y)) for x, y in points]


def _stroke(stroke: Stroke) -> Iterator[svg.Element]:
    for colour, width, dashes in LAYERS[stroke.pattern]:
        yield svg.Polyline(
            points=_flat(stroke.points),
            fill="none",
            stroke=colour,
            stroke_width=width,
            stroke_dasharray=list(dashes) or None,
            stroke_linejoin="round",
        )


def _mark(mark: Mark) -> Iterator[svg.Element]:
    thick = 2.4 if mark.strong else 1.5
    for shape in SYMBOLS[mark.symbol]:
        corners = tuple(_turned(mark, corner) for corner in shape.corners)
        if shape.ink == "open line":
            yield svg.Polyline(points=_flat(corners), fill="none", stroke=INK, stroke_width=thick)
        else:
            fill = INK if shape.ink == "full" else "#ffffff"
            yield svg.Polygon(points=_flat(corners), fill=fill, stroke=INK, stroke_width=thick)
    if mark.handle:
        yield from _handle(mark)


def _handle(mark: Mark) -> Iterator[svg.Element]:
    """Draw the lever: it lies over the pipe when along, and stands off from it when across."""
    ends = ((0.0, -1.0), (2.2, -1.0)) if mark.handle == "along" else ((0.0, 0.0), (0.0, -2.4))
    stem = tuple(_turned(mark, end) for end in ((0.0, 0.0), ends[0]))
    lever = tuple(_turned(mark, end) for end in ends)
    yield svg.Polyline(points=_flat(stem), fill="none", stroke=INK, stroke_width=3.0)
    yield svg.Polyline(
        points=_flat(lever), fill="none", stroke=INK, stroke_width=7.0, stroke_linecap="round"
    )
    yield svg.Polyline(
        points=_flat(lever), fill="none", stroke=YELLOW, stroke_width=3.4, stroke_linecap="round"
    )


def _turned(mark: Mark, corner: Point) -> Point:
    turn = math.radians(mark.turned_deg)
    cos, sin = math.cos(turn), math.sin(turn)
    x, y = mark.size * corner[0], mark.size * corner[1]
    return mark.at[0] + cos * x - sin * y, mark.at[1] + sin * x + cos * y


def _label(label: Label) -> Iterator[svg.Element]:
    leader = leader_of(label)
    if leader is not None:
        yield svg.Polyline(points=_flat(leader), fill="none", stroke=GREY, stroke_width=0.9)
        x, y = leader[1]
        yield svg.Circle(cx=_r(x), cy=_r(y), r=1.8, fill=INK)
    for place, line in enumerate(label.lines):
        # Set to its measured width, whatever font the reader has.
        yield svg.Text(
            text=_written(line),
            x=_r(label.x),
            y=_r(label.y + TEXT * (LINE * place + 1.0)),
            text_anchor=label.anchored,
            textLength=_r(width_of(line, TEXT, bold=label.bold)),
            lengthAdjust="spacingAndGlyphs",
            font_weight="bold" if label.bold else None,
            fill=INK,
        )
