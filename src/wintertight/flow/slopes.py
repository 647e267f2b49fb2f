"""Heights along every link, on a floor that may slope.

Each link is cut into straight stretches at its sag and its hump. Of a stretch only what draining
asks for is kept: its two ends with the lower one first, how much of its link it is, and whether it
falls steeply enough to count on.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import pairwise
from typing import NamedTuple
from weakref import WeakKeyDictionary

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.tilt import Tilt

LEAST_SLOPE = 0.01
"""Fall per length below which a line is taken as level [1]; common practice."""

LEAST_FALL_M = 0.01
"""Fall below which a line is taken as level [m]: less than its bore; common practice."""

LEVEL_M = 1e-6
"""Heights closer than this are the same [m]."""

_FITTING = re.compile(r"[A-Za-z0-9_-]+")


LEVEL = Tilt()


class Stretch(NamedTuple):
    """A straight stretch between two nodes, or a passage through a fitting.

    Attributes:
        link: id of the link it is part of; "" for a passage inside a vessel.
        low, high: its lower and its upper end.
        low_m, high_m: their heights [m].
        share: share of the link's content that is in it [1].
        tube: True where air rises through water only if the bore is wide.
        steep: does it fall enough to count on?
        upstream: node from which a check valve lets pass; "" where both ways are free.
    """

    link: str
    low: str
    high: str
    low_m: float
    high_m: float
    share: float = 0.0
    tube: bool = False
    steep: bool = True
    upstream: str = ""


@dataclass(frozen=True, slots=True)
class Lie:
    """How one coach's plumbing lies on one floor.

    Attributes:
        heights_m: height of each node, and of each sag and hump [m].
        stretches: the stretches of each link.
        known: what was worked out for this lie before.
    """

    heights_m: dict[str, float]
    stretches: dict[str, tuple[Stretch, ...]]
    known: dict[object, object] = field(default_factory=dict)


_KNOWN: WeakKeyDictionary[CoachNetwork, dict[Tilt, Lie]] = WeakKeyDictionary()


def lie_of(network: CoachNetwork, tilt: Tilt | None = None) -> Lie:
    """Give how a coach lies; worked out once for each network and tilt.

    Args:
        network: the coach.
        tilt: slope of the floor; level where None.

    Returns:
        Its heights and stretches.
    """
    tilt = tilt or LEVEL
    known = _KNOWN.setdefault(network, {})
    if tilt not in known:
        heights = {
            node: height + tilt.rise_m(place_of(network, node))
            for node, height in network.heights_m.items()
        }
        lie = Lie(heights, {})
        for link in network.links.values():
            lie.stretches[link.id] = tuple(_stretches(network, link, tilt, heights))
        known[tilt] = lie
    return known[tilt]


def place_of(network: CoachNetwork, node: str) -> tuple[float, float]:
    """Give where the fitting of a node stands.

    Args:
        network: the coach.
        node: id of a node: that of a fitting, alone or with a port or the like behind it.

    Returns:
        From the front and from the road side [m]; (0, 0) where nobody knows.
    """
    owner = _FITTING.match(node)
    return network.places_m.get(owner.group() if owner else node, (0.0, 0.0))


def _stretches(
    network: CoachNetwork, link: Link, tilt: Tilt, heights: dict[str, float]
) -> Iterator[Stretch]:
    upstream = link.start if link.one_way else ""
    if link.way != "pipe":
        low, high = sorted((link.start, link.end), key=heights.__getitem__)
        yield Stretch(link.id, low, high, heights[low], heights[high], share=1.0, upstream=upstream)
        return
    first, last = (tilt.rise_m(place_of(network, node)) for node in (link.start, link.end))
    here, height, done = link.start, heights[link.start], 0.0
    bends = _bends(network, link)
    for i, (share, bend_m) in enumerate(bends):
        node = link.end if i == len(bends) - 1 else f"{link.id}@{i}"
        height_m = heights.setdefault(node, bend_m + first + (last - first) * share)
        part = share - done
        fall = abs(height_m - height)
        least = max(LEAST_FALL_M, LEAST_SLOPE * link.length_m * part)
        ends = (here, height), (node, height_m)
        (low, low_m), (high, high_m) = sorted(ends, key=lambda end: end[1])
        yield Stretch(
            link.id,
            low,
            high,
            low_m,
            high_m,
            share=part,
            tube=True,
            steep=part == 0.0 or fall >= least - LEVEL_M,
            upstream=here if link.one_way else "",
        )
        here, height, done = node, height_m, share


def _bends(network: CoachNetwork, link: Link) -> list[tuple[float, float]]:
    """Give where along a pipe its slope changes: share of its length [1], height above floor [m].

    A line is taken to rise and fall at one slope all along. With a sag and a hump, the hump lies
    between the sag and the lower end: that keeps more water.
    """
    start, end = network.heights_m[link.start], network.heights_m[link.end]
    first = start if link.start_m is None else link.start_m
    last = end if link.end_m is None else link.end_m
    low, high = sorted((first, last))
    sag = [link.lowest_m] if link.lowest_m is not None and link.lowest_m < low - LEVEL_M else []
    hump = (
        [link.highest_m] if link.highest_m is not None and link.highest_m > high + LEVEL_M else []
    )
    between = [*sag, *hump] if first >= last else [*hump, *sag]
    heights = [first, *between, last]
    climbs = [abs(b - a) for a, b in pairwise(heights)]
    total = sum(climbs)
    found: list[tuple[float, float]] = []
    if first != start:
        found.append((0.0, first))
    run = 0.0
    for climb, height in zip(climbs, heights[1:], strict=True):
        run += climb
        found.append((run / total if height is not last and total else 1.0, height))
    found[-1] = (1.0, last)
    if last != end:
        found.append((1.0, end))
    return found
