"""A card under way: fittings with their places, and lines laid between them by written rules.

A line runs along, across and up or down, never aslant, and is a tenth longer than that: tubes sag
and are clipped round what is in their way. Each change of direction is an elbow. No two fittings
stand nearer than two inches: the later one is moved along until it has room. All of this is common
practice; every length is a guess with a spread of a quarter.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import count, pairwise
from typing import Any

Spot = tuple[float, float, float]
"""A place [ft]: from the front, from the road side, above the floor."""

SLACK = 0.10
"""By how much a tube is longer than the way along its three directions [1]; common practice."""

STUB_FT = 0.2
"""Least length of a line [ft]: what is in the joints at its ends; common practice."""

ROOM_FT = 1.0 / 6.0
"""Least distance between two fittings [ft]; common practice."""

SPREAD = "25 %"
"""Half-width of the band of a guessed length [1]; common practice."""


@dataclass
class Draft:
    """Fittings and lines so far.

    Attributes:
        length_ft, width_ft: of the coach [ft].
        fittings, lines: as a card's file writes them.
        at: where each fitting stands [ft].
        in_slide: fittings that stand in a slide-out: a line to them has a loop more.
    """

    length_ft: float
    width_ft: float
    fittings: list[dict[str, Any]] = field(default_factory=list)
    lines: list[dict[str, Any]] = field(default_factory=list)
    at: dict[str, Spot] = field(default_factory=dict)
    in_slide: set[str] = field(default_factory=set)

    def fitting(self, name: str, kind: str, spot: Spot, room: str, /, **more: Any) -> str:
        """Place a fitting, and give its id."""
        self.at[name] = place = self._with_room(spot)
        written = [feet(value) for value in place]
        entry = {"id": name, "kind": kind, "at": written, "compartment": room}
        self.fittings.append({**entry, **{key: value for key, value in more.items() if value}})
        return name

    def unplaced(self, name: str, kind: str, /, **more: Any) -> None:
        """Add what has no place in the coach, or none that anybody knows."""
        self.fittings.append({"id": name, "kind": kind, **more})

    def line(self, name: str, start: str, end: str, room: str, /, **more: Any) -> None:
        """Lay a line between two fittings, each named with its port where it has several."""
        here, there = self.at[start.partition(".")[0]], self.at[end.partition(".")[0]]
        legs = [abs(a - b) for a, b in zip(here, there, strict=True)]
        slides = {start.partition(".")[0], end.partition(".")[0]} & self.in_slide
        loop = LOOP_FT if len(slides) == 1 else 0.0
        long = max(STUB_FT, _up((1.0 + SLACK) * sum(legs) + loop))
        turns = sum(leg > ROOM_FT for leg in legs) - 1 + (2 if loop else 0)
        entry = {
            "id": name,
            "from": start,
            "to": end,
            "length": {"guessed": feet(long), "spread": SPREAD},
            "compartment": room,
        }
        bends = {"bends": turns} if turns > 0 else {}
        self.lines.append({**entry, **bends, **more})

    def chain(self, name: str, ends: Iterable[tuple[str, str]], room: str, **more: Any) -> None:
        """Lay a line from each fitting to the next: pairs of the ports in and out of each."""
        ports = list(ends)
        for n, (before, after) in enumerate(pairwise(ports), start=1):
            self.line(f"{name}-{n}" if len(ports) > 2 else name, before[1], after[0], room, **more)  # noqa: PLR2004 - one line needs no number

    def _with_room(self, spot: Spot) -> Spot:
        """Move a place until nothing stands too near it."""
        along, across, height = spot
        for step in count():
            aside = ROOM_FT * 1.2 * ((step + 1) // 2) * (1 if step % 2 else -1)
            here = (along + aside, across, height)
            within = 0.0 <= here[0] <= self.length_ft
            place = tuple(round(value, 2) for value in here)
            free = all(math.dist(place, other) >= ROOM_FT for other in self.at.values())
            if within and free:
                return place[0], place[1], place[2]
        raise AssertionError  # a coach has more room than fittings


LOOP_FT = 4.0
"""What a line into a slide-out needs more, to follow it out [ft]; common practice."""


def feet(value: float) -> str:
    """Write a length in feet."""
    return f"{round(value, 2) + 0.0:g} ft"


def _up(value: float) -> float:
    """Round up to a tenth of a foot."""
    return math.ceil(10.0 * value - 1e-9) / 10.0
