"""Which lines of a coach are hot and which are cold."""

from collections import defaultdict, deque
from collections.abc import Iterable, Mapping
from typing import Literal

from wintertight.coach.card import Card, Fitting
from wintertight.coach.joints import ALIKE, joined_ends

Side = Literal["hot", "cold", "neither"]

_BETWEEN = frozenset({"heater bypass"})
"""What joins hot to cold is neither."""

_THROUGH = frozenset({"in", "out"})


def sides_of(card: Card) -> Mapping[str, Side]:
    """Give the side of each line.

    Hot is what hangs on a port called hot, by tees, valves and whatever else lets it through; cold
    likewise. What hangs on both, or on none, such as the way to the pump, is neither.

    Args:
        card: a card whose plumbing was checked.

    Returns:
        The side by id of the line.
    """
    ends = joined_ends(card)
    found: dict[str, set[str]] = defaultdict(set)
    for side in ("hot", "cold"):
        begun = (line for line, both in ends.items() if any(end.port == side for end in both))
        for line in hanging_on(card, begun):
            found[line].add(side)
    return {line: _one(found[line]) for line in ends}


def hanging_on(card: Card, lines: Iterable[str]) -> frozenset[str]:
    """Give the lines that hang on some others by tees, valves and whatever else lets water through.

    Args:
        card: a card whose plumbing was checked.
        lines: ids of the lines to begin with.

    Returns:
        Their ids, those to begin with among them. The bypass of a heater and a
        tempering valve are no way through; any other valve counts as open.
    """
    ends = joined_ends(card)
    at: dict[str, list[str]] = defaultdict(list)
    for line, both in ends.items():
        for end in both:
            if _lets_through(card.fitting[end.fitting]):
                at[end.fitting].append(line)
    reached: set[str] = set()
    waiting = deque(lines)
    while waiting:
        line = waiting.popleft()
        if line not in reached:
            reached.add(line)
            waiting.extend(other for end in ends[line] for other in at.get(end.fitting, ()))
    return frozenset(reached)


def _lets_through(fitting: Fitting) -> bool:
    if fitting.role in _BETWEEN:
        return False
    alike = fitting.ports == ALIKE or set(fitting.ports) == _THROUGH
    return alike or fitting.kind in {"tee", "manifold"}


def _one(sides: set[str]) -> Side:
    if sides == {"hot"}:
        return "hot"
    return "cold" if sides == {"cold"} else "neither"
