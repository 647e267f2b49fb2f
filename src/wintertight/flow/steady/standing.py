"""Heads in water that stands still: a dead end has the head of the place it hangs on."""

from collections import deque
from dataclasses import dataclass
from typing import Self

import numpy as np

from wintertight.flow.steady.network import Bools, Floats, Ints, LinkKind, PipeNetwork


@dataclass(frozen=True, eq=False, slots=True)
class StandingWater:
    """How known heads spread: first over open links both ways, then through one-way links.

    Attributes:
        nodes: nodes that stand in open connection with a node of known head.
        sources: the node of known head each of them hangs on.
        gates: rows (link, start, end) of one-way links, behind which heads may be unknown yet.
        lifts: head a gate adds to water at rest [m]: a pump's shut-off head.
        groups: the nodes in open two-way connection with each node.
    """

    nodes: Ints
    sources: Ints
    gates: tuple[tuple[int, int, float], ...]
    groups: tuple[Ints, ...]

    @classmethod
    def of(cls, network: PipeNetwork, passing: Bools, shut: Bools, reached: Bools) -> Self:
        """Follow the links that pass; ``shut`` are the one-way links held closed by the heads."""
        one_way = network.carries_one_way
        n = len(network.node_ids)
        touching: list[list[int]] = [[] for _ in range(n)]
        for link in np.flatnonzero(passing & ~one_way).tolist():
            start, end = int(network.start[link]), int(network.end[link])
            touching[start].append(end)
            touching[end].append(start)
        known = reached | network.is_fixed
        hangs = _spread(touching, np.flatnonzero(known).tolist())
        dead = np.flatnonzero((hangs >= 0) & ~known)
        lift = np.where(network.kind == LinkKind.PUMP, network.pump_shutoff_m, 0.0)
        gates = tuple(
            (int(network.start[link]), int(network.end[link]), float(lift[link]))
            for link in np.flatnonzero((passing | shut) & one_way).tolist()
            if hangs[network.end[link]] < 0
        )
        behind = [_spread(touching, [end]) for _, end, _ in gates]
        return cls(
            nodes=dead,
            sources=hangs[dead],
            gates=gates,
            groups=tuple(np.flatnonzero(group >= 0) for group in behind),
        )

    def fill(self, head: Floats) -> None:
        """Write the heads of standing water into the array of all heads, nan where unknown."""
        head[self.nodes] = head[self.sources]
        for _ in self.gates:
            offers = [
                (head[start] + lift, group)
                for (start, end, lift), group in zip(self.gates, self.groups, strict=True)
                if np.isnan(head[end]) and not np.isnan(head[start])
            ]
            if not offers:
                return
            highest, group = max(offers, key=lambda offer: float(offer[0]))
            head[group] = highest


def _spread(touching: list[list[int]], seeds: list[int]) -> Ints:
    hangs = np.full(len(touching), -1, dtype=np.int64)
    hangs[seeds] = seeds
    queue = deque(seeds)
    while queue:
        node = queue.popleft()
        for other in touching[node]:
            if hangs[other] < 0:
                hangs[other] = hangs[node]
                queue.append(other)
    return hangs
