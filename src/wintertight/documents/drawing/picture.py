"""A picture before it is written: strokes, marks and labels in the units of its paper."""

from dataclasses import dataclass, replace
from typing import Literal

from wintertight.documents.drawing.letters import LINE, width_of
from wintertight.documents.drawing.views import Point

Pattern = Literal[
    "outline", "hot", "cold", "neither", "water", "antifreeze", "mixed", "air", "unproven", "gap"
]
"""How a line is drawn; each differs from the others without its colour."""

Handle = Literal["along", "across", ""]
"""How a lever lies to its pipe; "" is no lever."""

TEXT = 16.0
"""Size of letters [unit]."""


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line of pipe, or of the outline: its corners, and how it is drawn."""

    points: tuple[Point, ...]
    pattern: Pattern


@dataclass(frozen=True, slots=True)
class Mark:
    """A symbol.

    Attributes:
        symbol: its name.
        at: where its middle is.
        turned_deg: which way its pipe runs, clockwise from the right [deg].
        size: half of its extent along the pipe.
        handle: how the handle stands to the pipe, if it has one.
        strong: whether it is what the picture is about.
    """

    symbol: str
    at: Point
    turned_deg: float = 0.0
    size: float = 7.0
    handle: Handle = ""
    strong: bool = False


@dataclass(frozen=True, slots=True)
class Label:
    """A text, and what it belongs to.

    Attributes:
        lines: the text, one entry a line.
        x, y: left end, or right end where ``anchored`` is "end", of the box, and its upper edge.
        anchored: which end ``x`` is.
        to: where its leader ends; None where it needs none.
        bold: whether it is set bold.
    """

    lines: tuple[str, ...]
    x: float
    y: float
    anchored: Literal["start", "end", "middle"] = "start"
    to: Point | None = None
    bold: bool = False

    @property
    def width(self) -> float:
        """Width of its box."""
        return max(width_of(line, TEXT, bold=self.bold) for line in self.lines)

    @property
    def height(self) -> float:
        """Height of its box."""
        return LINE * TEXT * len(self.lines)

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Left, upper, right and lower edge."""
        left = self.x - {"start": 0.0, "middle": 0.5, "end": 1.0}[self.anchored] * self.width
        return left, self.y, left + self.width, self.y + self.height


@dataclass(frozen=True, slots=True)
class Picture:
    """A whole picture.

    Attributes:
        name: what its file is called, without an ending.
        title: what it is, for a reader who cannot see it.
        description: what it shows, in sentences.
        width, height: of its paper.
        window: left, upper, right and lower edge of what is drawn; strokes end there.
        strokes, marks, labels: what is drawn, the last on top.
    """

    name: str
    title: str
    description: str
    width: float
    height: float
    window: tuple[float, float, float, float]
    strokes: tuple[Stroke, ...]
    marks: tuple[Mark, ...]
    labels: tuple[Label, ...]


def moved_up(picture: Picture, by: float) -> Picture:
    """Give a picture with everything so much higher, on paper that is so much shorter.

    Args:
        picture: the picture.
        by: how much is taken off its top, in units of its paper.

    Returns:
        The picture.
    """
    left, upper, right, lower = picture.window
    return replace(
        picture,
        height=picture.height - by,
        window=(left, max(upper - by, 0.0), right, lower - by),
        strokes=tuple(
            replace(s, points=tuple((x, y - by) for x, y in s.points)) for s in picture.strokes
        ),
        marks=tuple(replace(m, at=(m.at[0], m.at[1] - by)) for m in picture.marks),
        labels=tuple(
            replace(label, y=label.y - by, to=label.to and (label.to[0], label.to[1] - by))
            for label in picture.labels
        ),
    )
