"""The way of a line through the coach, drawn parallel to its axes.

A card tells where a line begins and ends, how long it is and perhaps how low or high it runs; not
where its elbows are. It is drawn as most are laid (common practice): down from its ends to where it
runs, along the coach, then across.
"""

from wintertight.coach.card import Card, Line
from wintertight.coach.position import Position

APART = {"hot": -1.0, "cold": 1.0}
"""Hot and cold ends at one tap stand beside each other, hot towards the front."""


def way_of(card: Card, line: Line, apart_m: float = 0.0) -> tuple[Position, ...]:
    """Give the corners of a line, its ends among them.

    Args:
        card: the coach.
        line: one of its lines.
        apart_m: how far hot and cold ends are drawn from the middle of a tap [m].

    Returns:
        Places; empty where one of its ends has none. Two after one another differ.
    """
    first, last = (card.fitting[end.fitting].at for end in (line.start, line.end))
    if first is None or last is None:
        return ()
    begin = _moved(first, line.start.port, apart_m, line.start_height_m)
    finish = _moved(last, line.end.port, apart_m, line.end_height_m)
    if begin.height_m < finish.height_m:
        return tuple(reversed(_laid(finish, begin, _runs_at(line, begin, finish))))
    return _laid(begin, finish, _runs_at(line, begin, finish))


def _moved(place: Position, port: str, apart_m: float, height_m: float | None) -> Position:
    along = place.along_m + APART.get(port, 0.0) * apart_m
    return Position(along, place.across_m, place.height_m if height_m is None else height_m)


def _runs_at(line: Line, begin: Position, finish: Position) -> float:
    if line.lowest_m is not None:
        return line.lowest_m
    if line.highest_m is not None:
        return line.highest_m
    return min(begin.height_m, finish.height_m)


def _laid(upper: Position, lower: Position, height_m: float) -> tuple[Position, ...]:
    corners = (
        upper,
        Position(upper.along_m, upper.across_m, height_m),
        Position(lower.along_m, upper.across_m, height_m),
        Position(lower.along_m, lower.across_m, height_m),
        lower,
    )
    kept = [corners[0]]
    for corner in corners[1:]:
        if corner != kept[-1]:
            kept.append(corner)
    return tuple(kept)
