"""The pictures of a coach: all of it, what a step turns, where the front is, and the end."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType

from wintertight.coach.card import Card, Fitting
from wintertight.coach.position import Position
from wintertight.coach.sides import sides_of
from wintertight.documents.drawing.framing import Frame, clearest, fitted, height_of
from wintertight.documents.drawing.labels import GAP, Wanted, height_needed, in_columns
from wintertight.documents.drawing.picture import (
    TEXT,
    Label,
    Pattern,
    Picture,
    Stroke,
    moved_up,
)
from wintertight.documents.drawing.scene import (
    CLOSE_MARK,
    LEVERS,
    MARK,
    box_of,
    corners,
    lines,
    marks,
    outline,
    shown,
)
from wintertight.documents.drawing.views import View
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, listed

WIDE, COLUMN, HIGH = 1000.0, 190.0, 520.0
"""Width of a picture of a whole coach, of a column of its labels, and its usual height [unit]."""

SMALL_WIDE, SMALL_COLUMN = 580.0, 90.0
"""Widths of a picture that stands beside another [unit]."""

CLOSE_WIDE, CLOSE_COLUMN, CLOSE_HIGH = 540.0, 140.0, 190.0
"""The same of a close-up."""

EDGE = 12.0
"""Blank edge around a picture [unit]."""

ENDS = 26.0
"""Room for the words front and rear [unit]."""

LEGEND = 36.0
"""Height of the legend below a picture [unit]."""

CLOSE_LEAST_M = 0.5
"""A close-up shows at least so much of the coach across and down [m]."""

NOTHING: Mapping[str, str] = MappingProxyType({})


def whole_coach(card: Card, language: str = "en", view: View = "isometric") -> Picture:
    """Draw all lines, and all fittings with their names.

    Args:
        card: the coach.
        language: two letters.
        view: which way one looks.

    Returns:
        The picture.
    """
    named = [f for f in shown(card) if f.kind != "tee"]
    names = {f.id: begun(part_name(card, f.id, language)) for f in named}
    title = say("drawing", "whole coach", language, coach=card.name)
    words = say("drawing", "whole coach words", language, parts=listed(names.values(), language))
    there = set(sides_of(card).values())
    legend = _words([side for side in _SIDES if side in there], language)
    drawn = _Drawn("coach", title, words, names, legend, view)
    return _whole(card, drawn, language)


_SIDES: tuple[Pattern, ...] = ("cold", "hot", "neither")


def _words(patterns: Iterable[Pattern], language: str) -> dict[Pattern, str]:
    return {pattern: say("drawing", f"pattern {pattern}", language) for pattern in patterns}


@dataclass(frozen=True, slots=True)
class _Drawn:
    """What makes one picture of a whole coach another than the next.

    Attributes:
        name, title, words: of the picture.
        names: by fitting, what is written beside it.
        legend: by pattern, what it means.
        view: which way one looks.
        patterns: by line, how it is drawn; None for hot and cold.
        settings: by valve, how it stands.
        bold: fittings whose labels are bold.
        wide: width of the paper.
        column: width of each column of labels.
    """

    name: str
    title: str
    words: str
    names: Mapping[str, str]
    legend: Mapping[Pattern, str]
    view: View = "isometric"
    patterns: Mapping[str, Pattern] | None = None
    settings: Mapping[str, str] = field(default_factory=lambda: NOTHING)
    bold: frozenset[str] = frozenset()
    wide: float = WIDE
    column: float = COLUMN


def contents_picture(  # noqa: PLR0913, PLR0917 - a picture and its words
    card: Card,
    name: str,
    title: str,
    patterns: Mapping[str, Pattern],
    names: Mapping[str, str],
    meaning: Mapping[Pattern, str],
    *,
    settings: Mapping[str, str] = NOTHING,
    bold: frozenset[str] = frozenset(),
    small: bool = False,
    language: str = "en",
) -> Picture:
    """Draw the whole coach by what its lines hold, or by what is claimed of them.

    Args:
        card: the coach.
        name: of the picture.
        title: of the picture.
        patterns: by line, how it is drawn.
        names: by fitting, what is written beside it; the others have no label.
        meaning: by pattern, what it means; the legend tells those that are there.
        settings: by valve, how it stands.
        bold: fittings whose labels are bold.
        small: whether it stands beside others, on narrower paper.
        language: two letters.

    Returns:
        The picture.
    """
    there = set(patterns.values())
    legend = {pattern: word for pattern, word in meaning.items() if pattern in there}
    said = "; ".join(names.values())
    wide, column = (SMALL_WIDE, SMALL_COLUMN) if small else (WIDE, COLUMN)
    drawn = _Drawn(
        name, title, said, names, legend, "isometric", patterns, settings, bold, wide, column
    )
    return _whole(card, drawn, language)


def _whole(card: Card, drawn: _Drawn, language: str) -> Picture:
    fittings = shown(card)
    box = box_of(card)
    places = [*corners(box), *(f.at for f in fittings if f.at is not None)]
    probe = [Wanted(text, (0.0, 0.0), part in drawn.bold) for part, text in drawn.names.items()]
    left, right = EDGE + drawn.column + 20.0, drawn.wide - EDGE - drawn.column - 20.0
    drawing = height_of(places, drawn.view, right - left) + 2.0 * ENDS
    high = max(min(HIGH, drawing), height_needed(probe, drawn.column))
    frame = fitted(places, drawn.view, (left, EDGE + ENDS, right, EDGE + high - ENDS), 1.0)
    room = (EDGE, EDGE + high)
    labels = _labels(frame, fittings, drawn.names, drawn.bold, drawn.wide, drawn.column, room)
    ends = tuple(_ends(frame, corners(box), language))
    strokes = (*outline(box, frame), *lines(card, frame, drawn.patterns))
    symbols = tuple(marks(card, frame, fittings, drawn.settings, size=MARK))
    reached = [y for stroke in strokes for _, y in stroke.points]
    reached += [mark.at[1] + side for mark in symbols for side in (-MARK, MARK)]
    reached += [label.box[side] for label in (*labels, *ends) for side in (1, 3)]
    bottom = max(reached)
    samples, meanings = _legend(drawn.legend, bottom + 2.0 * GAP)
    height = bottom + LEGEND
    picture = Picture(
        drawn.name,
        drawn.title,
        drawn.words,
        drawn.wide,
        height,
        (0.0, 0.0, drawn.wide, height),
        (*strokes, *samples),
        symbols,
        (*labels, *meanings, *ends),
    )
    return moved_up(picture, min(reached) - EDGE)


def _labels(  # noqa: PLR0913, PLR0917 - a window and what stands beside it
    frame: Frame,
    fittings: Iterable[Fitting],
    names: Mapping[str, str],
    bold: frozenset[str],
    width: float,
    column: float,
    room: tuple[float, float],
) -> tuple[Label, ...]:
    wanted = [
        Wanted(names[f.id], frame.at(f.at), f.id in bold)
        for f in fittings
        if f.id in names and f.at is not None
    ]
    top, bottom = room
    return in_columns(wanted, width=width, column=column, edge=EDGE, top=top, bottom=bottom)


def _ends(frame: Frame, at: Sequence[Position], language: str) -> Iterable[Label]:
    """Name front and rear below the ends of the floor at the curb side, where nothing else is."""
    x, y = frame.at(at[3])
    yield Label((say("drawing", "front", language),), x, y + 4.0)
    x, y = frame.at(at[2])
    yield Label((say("drawing", "rear", language),), x, y + 4.0, anchored="end")


def _legend(meaning: Mapping[Pattern, str], top: float) -> tuple[list[Stroke], list[Label]]:
    """Set a sample of each pattern, with its word behind it, in one row."""
    strokes, labels, x = [], [], EDGE
    for pattern, word in meaning.items():
        middle = top + TEXT * 0.65
        strokes.append(Stroke(((x, middle), (x + 40.0, middle)), pattern))
        label = Label((word,), x + 48.0, top)
        labels.append(label)
        x = label.box[2] + 26.0
    return strokes, labels


def close_up(  # noqa: PLR0913 - a picture and its words
    card: Card,
    name: str,
    title: str,
    parts: tuple[str, ...],
    settings: Mapping[str, str],
    *,
    back: Mapping[str, str] = NOTHING,
    beside: tuple[str, ...] = (),
    language: str = "en",
) -> Picture:
    """Draw a few parts large, with each handle as it must stand.

    Args:
        card: the coach.
        name: of the picture.
        title: of the picture.
        parts: ids of the fittings it is about.
        settings: by fitting, how it must stand.
        back: by fitting, how it is set afterwards.
        beside: ids of others that are named, so that one finds the place.
        language: two letters.

    Returns:
        The picture, from the side from which no part hides another.
    """
    about = [card.fitting[part] for part in parts if card.fitting[part].at is not None]
    places = [f.at for f in about if f.at is not None]
    margin = 30.0
    window = (
        EDGE + CLOSE_COLUMN + 20.0 + margin,
        EDGE + margin,
        CLOSE_WIDE - EDGE - CLOSE_COLUMN - 20.0 - margin,
        EDGE + CLOSE_HIGH - margin,
    )
    frame = clearest(places, window, CLOSE_LEAST_M)
    edge = (window[0] - margin, window[1] - margin, window[2] + margin, window[3] + margin)
    inside = [
        f
        for f in shown(card)
        if f.at is not None
        and edge[0] < frame.at(f.at)[0] < edge[2]
        and edge[1] < frame.at(f.at)[1] < edge[3]
    ]
    names = {f.id: begun(part_name(card, f.id, language)) for f in inside if f.id in beside}
    for f in about:
        called = begun(part_name(card, f.id, language))
        stands = settings.get(f.id)
        names[f.id] = _stands(called, stands, back.get(f.id), language) if stands else called
    strong = frozenset(f.id for f in about)
    labels = _labels(
        frame, inside, names, strong, CLOSE_WIDE, CLOSE_COLUMN, (EDGE, EDGE + CLOSE_HIGH)
    )
    bottom = max([EDGE + CLOSE_HIGH, *(label.box[3] for label in labels)])
    where = say("drawing", f"seen {frame.view}", language)
    note = Label((where,), EDGE, bottom + GAP)
    return Picture(
        name,
        title,
        "; ".join([*(" ".join(names[f.id].split()) for f in about), where]),
        CLOSE_WIDE,
        bottom + LEGEND,
        (edge[0], edge[1], edge[2], edge[3]),
        (*outline(box_of(card), frame), *lines(card, frame)),
        tuple(marks(card, frame, inside, settings, size=CLOSE_MARK, strong=strong)),
        (*labels, note),
    )


def _stands(called: str, setting: str, back: str | None, language: str) -> str:
    said = _setting(setting, language)
    if back is not None:
        said = say("drawing", "then back", language, setting=said, back=_setting(back, language))
    return say("drawing", "stands", language, part=called, setting=said)


def _setting(setting: str, language: str) -> str:
    return say("drawing", f"stands {setting}", language) if setting in LEVERS else setting
