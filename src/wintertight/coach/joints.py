"""Which port each end of a line joins.

A card names a port where it matters (``pump.out``) and may leave it out where it does not: at a
fitting with one unnamed port, and at a two-way valve whose sides are alike. There the line that
ends at the valve gets the first side that is free, and the line that starts from it the last.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from wintertight.coach.card import Card, End, Line

ALIKE = ("a", "b")
"""Ports of a fitting whose two sides are alike."""


@dataclass(frozen=True, slots=True)
class Joint:
    """One end of one line.

    Attributes:
        line: the line.
        key: "from" or "to", as on the card.
        end: the fitting and port it joins; port "" is an unnamed one.
    """

    line: Line
    key: str
    end: End


def written_joints(card: Card) -> Iterator[Joint]:
    """Give both ends of every line as the card has them, in the order of the card."""
    for line in card.lines:
        yield Joint(line, "from", line.start)
        yield Joint(line, "to", line.end)


def joined_ends(card: Card) -> Mapping[str, tuple[End, End]]:
    """Give both ends of every line with the sides of two-way valves filled in.

    Args:
        card: a card whose plumbing was checked.

    Returns:
        By id of the line, the end at its "from" and the end at its "to". Neither the order of the
        lines nor that of the fittings changes the answer. A side that is already taken is given a
        second time only if the card has too many lines at the valve.
    """
    taken = {(joint.end.fitting, joint.end.port) for joint in written_joints(card)}
    sides: dict[tuple[str, str], End] = {}
    for joint in sorted(written_joints(card), key=lambda joint: (joint.line.id, joint.key)):
        sides[joint.line.id, joint.key] = _with_side(card, joint, taken)
    return {line.id: (sides[line.id, "from"], sides[line.id, "to"]) for line in card.lines}


def _with_side(card: Card, joint: Joint, taken: set[tuple[str, str]]) -> End:
    end = joint.end
    fitting = card.fitting.get(end.fitting)
    if end.port or fitting is None or fitting.ports != ALIKE:
        return end
    wanted = ALIKE if joint.key == "to" else ALIKE[::-1]
    side = next((side for side in wanted if (end.fitting, side) not in taken), wanted[0])
    taken.add((end.fitting, side))
    return End(end.fitting, side)
