"""Compile a network and its open links into loops, once; then each solve is small.

A spanning tree hangs from the held heads; each carrying link outside it closes one loop. Flows
that are the tree's own flows plus any mix of loops keep continuity at every node by
construction, so Newton's step of the global gradient method needs one unknown a loop instead of
one a node, and the heads follow along the tree.
"""

from collections import OrderedDict, deque
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Final
from weakref import WeakKeyDictionary

import numpy as np

from wintertight.flow.steady.carrying import carrying_links
from wintertight.flow.steady.circuit import Circuit
from wintertight.flow.steady.laws import LossLaws
from wintertight.flow.steady.network import Bools, Floats, Ints, LinkKind, PipeNetwork

_KEPT_PLANS: Final = 512


@dataclass(frozen=True, eq=False, slots=True)
class LoopPlan:
    """What of a network does not depend on viscosity or flow.

    Attributes:
        links: the carrying links: pipes, loss links, pumps.
        gates: the open one-way links.
        place: place of each link of the network among the carrying ones; -1 where it is none.
        laws: head-loss constants of the carrying links.
        circuit: the same, and all that is known of loops, trees and gates, as rows of numbers.
        unfed: a node with a demand but no open way to it, or -1.
    """

    links: Ints
    gates: Ints
    place: Ints
    laws: LossLaws
    circuit: Circuit
    unfed: int


_plans: WeakKeyDictionary[PipeNetwork, OrderedDict[bytes, LoopPlan]] = WeakKeyDictionary()


def loop_plan(network: PipeNetwork, open_links: Bools, closed: Bools) -> LoopPlan:
    """Give the plan for the open links less those a one-way link keeps closed.

    Args:
        network: the network.
        open_links: which links are open.
        closed: which of the one-way links stand closed against their flow.

    Returns:
        The plan; the last ones of each network are kept.

    Sources: todini-pilati (the step it speeds up); memory (its co-tree form).
    """
    kept = _plans.get(network)
    if kept is None:
        kept = _plans[network] = OrderedDict()
    key = open_links.tobytes() + closed.tobytes()
    plan = kept.get(key)
    if plan is None:
        plan = kept[key] = _compile(network, open_links, closed)
        if len(kept) > _KEPT_PLANS:
            kept.popitem(last=False)
    else:
        kept.move_to_end(key)
    return plan


def _compile(network: PipeNetwork, open_links: Bools, closed: Bools) -> LoopPlan:
    passing = open_links & ~closed
    groups, paths, tops, in_tree = _laid_out(_Laid.out(network, passing))
    links = np.concatenate(groups)
    chords = np.flatnonzero(~in_tree)
    start, end = network.start[links], network.end[links]
    loops = paths[start[chords]] - paths[end[chords]]
    loops[np.arange(chords.size), chords] += 1.0
    is_fixed, carries_one_way = network.is_fixed, network.carries_one_way
    top_head = np.where(is_fixed, network.fixed_head_m, 0.0)[tops]
    demand = np.where(is_fixed, 0.0, network.demand_m3_s)
    unfed = np.flatnonzero((demand != 0.0) & ~is_fixed[tops])
    place = np.full(len(network.link_ids), -1, dtype=np.int64)
    place[links] = np.arange(links.size)
    lift = np.where(network.kind == LinkKind.PUMP, network.pump_shutoff_m, 0.0)
    adrift = ~is_fixed[tops]
    gates = np.flatnonzero(carries_one_way & open_links)
    resting = gates[place[gates] < 0]
    into_drift = adrift[network.end[resting]]
    resting = resting[into_drift & (tops[network.start[resting]] != tops[network.end[resting]])]
    laws = LossLaws.of(network, links, groups[0].size, groups[2].size)
    return LoopPlan(
        links=links,
        gates=gates,
        place=place,
        laws=laws,
        circuit=Circuit(
            loops=loops,
            loops_turned=np.ascontiguousarray(loops.T),
            chords=chords,
            loop_head=top_head[start[chords]] - top_head[end[chords]],
            tree_flow=demand @ paths,
            paths=paths,
            top_head=top_head,
            quadratic=laws.quadratic,
            pump_rows=laws.pump_rows,
            one_way=laws.one_way,
            pipe_rows=laws.pipe_rows,
            tops=tops,
            adrift=np.flatnonzero(adrift),
            lift_start=network.start[resting],
            lift_end=network.end[resting],
            lift_m=lift[resting],
            gate_place=place[gates],
            gate_start=network.start[gates],
            gate_end=network.end[gates],
            gate_m=lift[gates],
            gate_closed=closed[gates],
        ),
        unfed=int(unfed[0]) if unfed.size else -1,
    )


@dataclass(frozen=True, slots=True)
class _Laid:
    """A network with some links open; the same as any other that is laid alike, of any size."""

    shape: bytes
    network: PipeNetwork = field(compare=False)
    passing: Bools = field(compare=False)

    @classmethod
    def out(cls, network: PipeNetwork, passing: Bools) -> "_Laid":
        """Put down all that trees hang on: how links join, what kind they are, where water goes."""
        draws = network.demand_m3_s != 0.0
        rows = (network.start, network.end, network.kind, network.is_fixed, draws)
        shape = b"|".join(row.tobytes() for row in (*rows, network.carries_one_way, passing))
        return cls(shape, network, passing)


@lru_cache(maxsize=_KEPT_PLANS)
def _laid_out(laid: _Laid) -> tuple[tuple[Ints, Ints, Ints], Floats, Ints, Bools]:
    """Give carrying pipes, loss links and pumps, then what ``_hang_trees`` gives."""
    network = laid.network
    carrying = np.flatnonzero(carrying_links(network, laid.passing))
    kinds = network.kind[carrying]
    pipes, losses, pumps = (
        carrying[kinds == kind] for kind in (LinkKind.PIPE, LinkKind.LOSS, LinkKind.PUMP)
    )
    links = np.concatenate((pipes, losses, pumps))
    return (pipes, losses, pumps), *_hang_trees(network, laid.passing, links)


def forget_shapes() -> None:
    """Forget what was laid out so far, as in a process that has not seen any coach."""
    _laid_out.cache_clear()


def _hang_trees(network: PipeNetwork, passing: Bools, links: Ints) -> tuple[Floats, Ints, Bools]:
    """Give the path to each node, the node its tree hangs from, and the carrying links in trees.

    One-way links are taken in last, so that a reluctant one closes a loop and is no branch;
    where they carry nothing they are not taken in at all: they pass a head on one way only.
    """
    n, m = len(network.node_ids), links.size
    place = np.full(passing.size, -1, dtype=np.int64)
    place[links] = np.arange(m)
    one_way = network.carries_one_way
    touching: list[list[tuple[int, int, float]]] = [[] for _ in range(n)]
    for link in np.flatnonzero(passing & ~(one_way & (place < 0))).tolist():
        start, end = int(network.start[link]), int(network.end[link])
        touching[start].append((link, end, 1.0))
        touching[end].append((link, start, -1.0))
    paths = np.zeros((n, m))
    tops = np.full(n, -1, dtype=np.int64)
    in_tree = np.zeros(m, dtype=np.bool_)
    fixed = np.flatnonzero(network.is_fixed)
    tops[fixed] = fixed
    for seeds in (fixed.tolist(), *([node] for node in range(n))):
        if len(seeds) == 1 and tops[seeds[0]] < 0:
            tops[seeds[0]] = seeds[0]
        queue = deque((node, *step) for node in seeds for step in touching[node])
        later: deque[tuple[int, int, int, float]] = deque()
        while queue or later:
            node, link, other, sign = step = (queue or later).popleft()
            if tops[other] >= 0:
                continue
            if one_way[link] and queue:
                later.append(step)
                continue
            tops[other] = tops[node]
            paths[other] = paths[node]
            if place[link] >= 0:
                in_tree[place[link]] = True
                paths[other, place[link]] = sign
            queue.extend((other, *step) for step in touching[other])
    return paths, tops, in_tree
