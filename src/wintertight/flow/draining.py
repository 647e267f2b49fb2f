"""What gravity takes out of a coach as it stands.

Two passes. First, where water can fall to: the spill level of a node is the lowest barrier that has
to be climbed on any way from it to an open outlet (a minimax path, found as Dijkstra finds shortest
ones). Second, where air can come in: from every open vent down through lines that drain. A line is

  drained     it falls towards an end whose water can leave, and air reaches its upper end
  trapped     its water has no way out, or hangs in its bore
  uncertain   it is too level, or no air was shown to reach it: its water is taken to stay

A heater and a bowl hold their water below their ports: neither drains through them.
"""

import heapq
import math
from dataclasses import dataclass
from typing import Literal

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.state import State
from wintertight.flow.stream import AIR

Drainage = Literal["drained", "trapped", "uncertain"]

LEAST_SLOPE = 0.01
"""Fall per length below which a line is taken as level [1]; common practice."""

LEAST_FALL_M = 0.01
"""Fall below which a line is taken as level [m]; common practice."""

HANGING_BORE_M = 0.005
"""Bore below which water hangs in a tube even with air above it [m]: bretherton."""

LEAST_BORE_M = 0.008
"""Bore below which nobody can count on a tube to drain [m]; common practice."""

LEVEL_M = 1e-6
"""Heights closer than this are the same [m]."""


@dataclass(frozen=True, slots=True)
class Drained:
    """What gravity does to each line and through-fitting, and which vessels run empty."""

    drainage: dict[str, Drainage]
    emptied: tuple[str, ...]


def drain_by_gravity(network: CoachNetwork, state: State) -> Drained:
    """Tell what drains as the controls stand.

    Args:
        network: the coach.
        state: how its controls stand.

    Returns:
        A class for each link that holds something, and the vessels and tanks that run empty.
    """
    open_at = {
        o.node: o.height_m
        for o in network.openings
        if state.settings[o.gate.control] in o.gate.passes
    }
    links = [k for k in network.links.values() if _lets_by(k, state)]
    emptied = _emptied(network, open_at)
    joints: list[Joint] = [(k.start, k.end, k) for k in links]
    for heater in emptied:
        if heater in network.heater_ports:
            bottom, top = network.heater_ports[heater]
            link = network.links[heater]
            joints += [(link.start, bottom, None), (link.end, bottom, None), (bottom, top, None)]
    spill = _spill_levels(network, joints, open_at)
    candidates = {k.id: _falls_to(network, k, spill) for k in links}
    airy = {n for k in links if _holds_air(k, state) for n in (k.start, k.end)}
    aired = _aired(network, links, candidates, set(open_at) | airy, emptied)
    drainage: dict[str, Drainage] = {}
    for link in network.links.values():
        if link.holding == "nothing" or link.id in emptied:
            continue
        drainage[link.id] = _class_of(network, link, candidates.get(link.id), spill, aired)
    return Drained(drainage, emptied)


def _lets_by(link: Link, state: State) -> bool:
    """Can water and air pass a link without pressure?"""
    passes = link.gate is None or state.settings[link.gate.control] in link.gate.passes
    wide = link.way != "pipe" or link.bore_m >= LEAST_BORE_M
    return passes and wide and link.way != "pump" and not link.one_way and not link.is_outlet


def _holds_air(link: Link, state: State) -> bool:
    """Is it mostly air already, drawn in by the pump or drained before?"""
    held = state.held.get(link.id)
    return held is not None and bool(held.mean()[AIR] > 0.5)  # noqa: PLR2004 - more than half


def _below_its_ports(network: CoachNetwork, link: Link) -> bool:
    """Does it hold its water lower than the ports through which it could leave?"""
    bowl = link.gate and network.controls[link.gate.control].thing == "bowl"
    return bool(bowl) or link.id in network.heater_ports


def _emptied(network: CoachNetwork, open_at: dict[str, float]) -> tuple[str, ...]:
    """Give the vessels whose bottom is open and into which air can come."""
    found = [
        heater
        for heater, (bottom, top) in network.heater_ports.items()
        if bottom in open_at and top in open_at
    ]
    found += [tank for tank in network.pools if tank in open_at]
    return tuple(found)


Joint = tuple[str, str, Link | None]


def _spill_levels(
    network: CoachNetwork, joints: list[Joint], open_at: dict[str, float]
) -> dict[str, float]:
    """Give each node's lowest barrier on any way to an open outlet [m]."""
    beside: dict[str, list[tuple[str, float]]] = {}
    for start, end, link in joints:
        over = max(network.heights_m[start], network.heights_m[end])
        if link and link.highest_m is not None:
            over = max(over, link.highest_m)
        beside.setdefault(start, []).append((end, over))
        beside.setdefault(end, []).append((start, over))
    level: dict[str, float] = {}
    queue = [(height, node) for node, height in open_at.items()]
    heapq.heapify(queue)
    while queue:
        height, node = heapq.heappop(queue)
        if node in level:
            continue
        level[node] = height
        for other, over in beside.get(node, ()):
            if other not in level:
                heapq.heappush(queue, (max(height, over), other))
    return level


def _falls_to(network: CoachNetwork, link: Link, spill: dict[str, float]) -> str | None:
    """Give the end towards which a link drains, if it does."""
    heights = network.heights_m
    for low, high in ((link.start, link.end), (link.end, link.start)):
        fall = heights[high] - heights[low]
        can_leave = spill.get(low, math.inf) <= heights[low] + LEVEL_M
        if link.way != "pipe":
            if can_leave:
                return low
            continue
        steep = fall >= max(LEAST_FALL_M, LEAST_SLOPE * link.length_m) - LEVEL_M
        sags = link.lowest_m is not None and link.lowest_m < heights[low] - LEVEL_M
        humps = link.highest_m is not None and link.highest_m > heights[high] + LEVEL_M
        if can_leave and steep and not sags and not humps:
            return low
    return None


def _aired(
    network: CoachNetwork,
    links: list[Link],
    candidates: dict[str, str | None],
    vents: set[str],
    emptied: tuple[str, ...],
) -> frozenset[str]:
    """Give the nodes that air reaches: from vents, down through links that drain."""
    aired = set(vents)
    for heater in emptied:
        if heater in network.heater_ports:
            link = network.links[heater]
            aired |= {link.start, link.end}
    grew = True
    while grew:
        grew = False
        for link in links:
            low = candidates[link.id]
            if low is None:
                continue
            high = link.end if low == link.start else link.start
            through = link.way != "pipe" and bool({low, high} & aired)
            if (high in aired or through) and not {low, high} <= aired:
                aired |= {low, high}
                grew = True
    return frozenset(aired)


def _class_of(
    network: CoachNetwork,
    link: Link,
    low: str | None,
    spill: dict[str, float],
    aired: frozenset[str],
) -> Drainage:
    hangs = link.way == "pipe" and link.bore_m < HANGING_BORE_M
    if hangs or _below_its_ports(network, link):
        return "trapped"
    if low is not None:
        high = link.end if low == link.start else link.start
        return "drained" if high in aired else "uncertain"
    lowest = min(network.heights_m[link.start], network.heights_m[link.end])
    if link.lowest_m is not None:
        lowest = min(lowest, link.lowest_m)
    level = min(spill.get(link.start, math.inf), spill.get(link.end, math.inf))
    return "uncertain" if level <= lowest + LEAST_FALL_M else "trapped"
