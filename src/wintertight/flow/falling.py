"""The two passes of draining, on one side of what nobody can know.

Where water can fall to, and where air can come in: `wintertight.flow.draining` says what they mean
and puts both sides together.
"""

import heapq
import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.slopes import LEAST_FALL_M, LEVEL_M, Lie, Stretch
from wintertight.flow.state import State

HANGING_BORE_M = 0.005
"""Bore below which water hangs in a tube even with air above it [m]: bretherton."""

LEAST_BORE_M = 0.008
"""Bore below which nobody can count on a tube to drain [m]; common practice."""

UNVENTED_BORE_M = 0.015
"""Mouth from which on water falls out of a tube that is open below only [m]: extrand, who finds
the limit for water between 10 and 15 mm."""

FITTING_BORE = 0.8
"""Bore of a fitting inside a tube, per bore of the tube [1]; common practice."""


@dataclass(frozen=True, slots=True)
class Stays:
    """One side: share of each link that stays [1], vessels that run empty, spill levels [m]."""

    share: dict[str, float]
    emptied: tuple[str, ...]
    spill_m: dict[str, float]


@dataclass(frozen=True, slots=True)
class Standing:
    """A coach as it stands and lies, seen from one side."""

    network: CoachNetwork
    lie: Lie
    state: State
    airy: frozenset[str]
    careful: bool

    def open_nodes(self) -> frozenset[str]:
        """Give the nodes where it is open to the air."""
        settings = self.state.settings
        return frozenset(
            o.node for o in self.network.openings if settings[o.gate.control] in o.gate.passes
        )

    def stands_open(self, link: Link) -> bool:
        """Does its control let pass?"""
        return link.gate is None or self.state.settings[link.gate.control] in link.gate.passes

    def is_way(self, link: Link) -> bool:
        """Can water and air pass without pressure?"""
        if link.way == "pump" or link.is_outlet or not self.stands_open(link):
            return False
        if link.one_way and self.careful:
            return False
        least = LEAST_BORE_M if self.careful else HANGING_BORE_M
        return link.way != "pipe" or link.bore_m >= least

    def holds_back(self, stretch: Stretch) -> bool:
        """Is it too level to count on?"""
        return self.careful and not stretch.steep

    def air_rises(self, stretch: Stretch, *, behind_water: bool) -> bool:
        """Does air find its way up through it while its water comes down?"""
        if not (self.careful and stretch.tube) or stretch.link in self.airy:
            return True
        link = self.network.links.get(stretch.link)
        mouth_m = FITTING_BORE * link.bore_m if link else 0.0
        return behind_water and mouth_m >= UNVENTED_BORE_M


def what_stays(standing: Standing) -> Stays:
    """Make both passes on one side."""
    network, lie = standing.network, standing.lie
    openings = standing.open_nodes()
    ways = [s for k in network.links.values() if standing.is_way(k) for s in lie.stretches[k.id]]
    ways += _inside_vessels(standing, openings)
    spill = _spill_levels(ways, {node: lie.heights_m[node] for node in openings})
    wet = {s: _wet_share(s, spill, careful=standing.careful) for s in ways}
    aired = _aired(standing, wet, openings)
    share = {k: 1.0 for k, link in network.links.items() if link.holding != "nothing"}
    for link in share:
        if standing.is_way(network.links[link]) and not _hangs_below(network, link):
            share[link] = sum(
                s.share * _left(standing, s, wet[s], aired) for s in lie.stretches[link]
            )
        elif not standing.careful and _at_an_open_end(standing, network.links[link], aired):
            share[link] = 0.0
    return Stays(share, tuple(_emptied(standing, openings, aired)), spill)


def _inside_vessels(standing: Standing, openings: frozenset[str]) -> Iterator[Stretch]:
    """Give the ways from a heater's ports to its plug and its relief valve, where these are open.

    Air rises through the hole of a plug while water falls out of it, or it does not: it is not
    counted on.
    """
    heights = standing.lie.heights_m
    for heater, (bottom, top) in standing.network.heater_ports.items():
        link = standing.network.links[heater]
        joints = [(link.start, top), (link.end, top)] if top in openings else []
        if bottom in openings:
            joints += [(link.start, link.end), (link.start, bottom), (link.end, bottom)]
        for joint in joints:
            low, high = sorted(joint, key=heights.__getitem__)
            yield Stretch("", low, high, heights[low], heights[high], tube=bottom in joint)


def _spill_levels(ways: Iterable[Stretch], open_at_m: dict[str, float]) -> dict[str, float]:
    """Give each node's lowest barrier on any way to an open outlet [m]."""
    before: dict[str, list[tuple[str, float]]] = {}
    for s in ways:
        if s.upstream != s.high:
            before.setdefault(s.high, []).append((s.low, s.high_m))
        if s.upstream != s.low:
            before.setdefault(s.low, []).append((s.high, s.high_m))
    level: dict[str, float] = {}
    queue = [(height, node) for node, height in open_at_m.items()]
    heapq.heapify(queue)
    while queue:
        height, node = heapq.heappop(queue)
        if node in level:
            continue
        level[node] = height
        for other, over in before.get(node, ()):
            if other not in level:
                heapq.heappush(queue, (max(height, over), other))
    return level


def _wet_share(stretch: Stretch, spill: dict[str, float], *, careful: bool) -> float:
    """Give the share of a stretch that lies under its spill level [1]."""
    downstream = [n for n in (stretch.low, stretch.high) if n != stretch.upstream]
    top = min(spill.get(node, math.inf) for node in downstream)
    depth = top - stretch.low_m - (0.0 if careful else LEAST_FALL_M)
    rise = stretch.high_m - stretch.low_m
    if depth <= LEVEL_M:
        return 0.0
    return 1.0 if depth >= rise else depth / rise


def _aired(
    standing: Standing, wet: dict[Stretch, float], openings: frozenset[str]
) -> frozenset[str]:
    """Give the nodes that air reaches: from vents, through what runs empty.

    An opening is where air comes in, but it is also the mouth of the tube above it, and nobody
    knows how wide: on the careful side air rises in a wide tube only from where it has come in
    behind water that fell away.
    """
    counted_on = [s for s in wet if s.link in standing.airy or not standing.holds_back(s)]
    beside: dict[str, list[Stretch]] = {}
    for s in counted_on:
        if wet[s] == 0.0:
            beside.setdefault(s.low, []).append(s)
            beside.setdefault(s.high, []).append(s)
    falls_away = {s.high for s in counted_on if wet[s] < 1.0 and _falls(s)}
    links = standing.network.links
    behind_water = {n: n in falls_away or not standing.careful for n in openings}
    if not standing.careful:
        ends = (n for k in standing.airy for n in (links[k].start, links[k].end))
        behind_water.update(dict.fromkeys(ends, True))
    edge = list(behind_water)
    while edge:
        node = edge.pop()
        for s in beside.get(node, ()):
            other = s.high if node == s.low else s.low
            rises = _falls(s) and node == s.low
            if s.upstream == other or (
                rises and not standing.air_rises(s, behind_water=behind_water[node])
            ):
                continue
            inside = behind_water[node] or other in falls_away or (_falls(s) and not rises)
            if inside > behind_water.get(other, -1):
                behind_water[other] = inside
                edge.append(other)
    return frozenset(behind_water)


def _falls(stretch: Stretch) -> bool:
    return stretch.high_m - stretch.low_m > LEVEL_M


def _left(standing: Standing, stretch: Stretch, wet: float, aired: frozenset[str]) -> float:
    """Give the share of a stretch that stays [1]."""
    behind = stretch.upstream or stretch.high
    level = not (_falls(stretch) or stretch.upstream)
    has_air = behind in aired or (level and stretch.low in aired)
    return wet if has_air and not standing.holds_back(stretch) else 1.0


def _hangs_below(network: CoachNetwork, link: str) -> bool:
    """Does it hold its water lower than the ports through which it could leave?"""
    gate = network.links[link].gate
    bowl = gate is not None and network.controls[gate.control].thing == "bowl"
    return bowl or link in network.heater_ports


def _at_an_open_end(standing: Standing, link: Link, aired: frozenset[str]) -> bool:
    """Is it the body of an open tap, or a cavity that another of its passages lets run empty?"""
    if link.is_outlet:
        return standing.stands_open(link) and link.start in aired
    if link.gate is None or standing.stands_open(link) or not {link.start, link.end} & aired:
        return False
    return any(
        other.id != link.id
        and other.gate
        and other.gate.control == link.gate.control
        and standing.stands_open(other)
        for other in standing.network.links.values()
        if other.part == link.part
    )


def _emptied(standing: Standing, openings: frozenset[str], aired: frozenset[str]) -> Iterator[str]:
    """Give the vessels whose bottom is open and into which air can come."""
    for heater, (bottom, top) in standing.network.heater_ports.items():
        link = standing.network.links[heater]
        vented = not standing.careful or bool({link.start, link.end, top} & aired)
        if bottom in openings and vented:
            yield heater
    yield from (tank for tank in standing.network.pools if tank in openings)
