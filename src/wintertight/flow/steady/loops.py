"""Compile a network and its open links into loops, once; then each solve is small.

The carrying links hold a spanning tree that hangs from the held heads; each further link
closes one loop. Flows that are the tree's own flows plus any mix of loops keep continuity at
every node by construction, so Newton's step of the global gradient method needs one unknown a
loop instead of one a node, and the heads follow along the tree.
"""

from collections import OrderedDict, deque
from dataclasses import dataclass
from typing import Final
from weakref import WeakKeyDictionary

import numpy as np

from wintertight.flow.steady.carrying import carrying_links
from wintertight.flow.steady.laws import LossLaws
from wintertight.flow.steady.network import Bools, Floats, Ints, LinkKind, PipeNetwork
from wintertight.flow.steady.standing import StandingWater

_KEPT_PLANS: Final = 64


@dataclass(frozen=True, eq=False, slots=True)
class LoopPlan:
    """What of a network does not depend on viscosity or flow.

    Attributes:
        links: the carrying links: pipes, loss links, pumps.
        loops: one row a loop, +1 or -1 where a link runs with or against it.
        chords: place in ``links`` of the link that closes each loop.
        loop_head: head that drives each loop [m].
        tree_flow: flows along the tree that meet the demands [m3/s].
        nodes: free nodes the tree reaches.
        paths: one row a node: the links from its held head to it.
        root_head: the held head each of them hangs from [m].
        laws: head-loss constants of the carrying links.
        standing: how heads spread into what stands still.
        unfed: a node with a demand but no open way to it, or -1.
    """

    links: Ints
    loops: Floats
    loops_turned: Floats
    chords: Ints
    loop_head: Floats
    tree_flow: Floats
    nodes: Ints
    paths: Floats
    root_head: Floats
    laws: LossLaws
    standing: StandingWater
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
    carrying = np.flatnonzero(carrying_links(network, passing))
    kinds = network.kind[carrying]
    groups = [carrying[kinds == kind] for kind in (LinkKind.PIPE, LinkKind.LOSS, LinkKind.PUMP)]
    links = np.concatenate(groups)
    paths, roots, chords = _hang_tree(network, links)
    start, end = network.start[links], network.end[links]
    loops = paths[start[chords]] - paths[end[chords]]
    loops[np.arange(chords.size), chords] += 1.0
    held = np.where(network.is_fixed, network.fixed_head_m, 0.0)
    root_head = held[roots]
    demand = np.where(network.is_fixed, 0.0, network.demand_m3_s)
    unfed = np.flatnonzero((demand != 0.0) & (roots < 0))
    nodes = np.flatnonzero(~network.is_fixed & (roots >= 0))
    return LoopPlan(
        links=links,
        loops=loops,
        loops_turned=np.ascontiguousarray(loops.T),
        chords=chords,
        loop_head=root_head[start[chords]] - root_head[end[chords]],
        tree_flow=demand @ paths,
        nodes=nodes,
        paths=paths[nodes],
        root_head=root_head[nodes],
        laws=LossLaws.of(network, links, groups[0].size, groups[2].size),
        standing=StandingWater.of(network, passing, open_links & closed, roots >= 0),
        unfed=int(unfed[0]) if unfed.size else -1,
    )


def _hang_tree(network: PipeNetwork, links: Ints) -> tuple[Floats, Ints, Ints]:
    """Give the path to each node, its held node (-1 if none) and the links that close loops.

    One-way links are taken into the tree last: a closed one then closes a loop and no branch.
    """
    n, m = len(network.node_ids), links.size
    paths = np.zeros((n, m))
    roots = np.full(n, -1, dtype=np.int64)
    one_way = network.carries_one_way[links].tolist()
    touching: list[list[tuple[int, int, float]]] = [[] for _ in range(n)]
    ends = zip(network.start[links].tolist(), network.end[links].tolist(), strict=True)
    for place, (start, end) in enumerate(ends):
        touching[start].append((place, end, 1.0))
        touching[end].append((place, start, -1.0))
    fixed = np.flatnonzero(network.is_fixed).tolist()
    roots[fixed] = fixed
    first = deque((node, step) for node in fixed for step in touching[node])
    later: deque[tuple[int, tuple[int, int, float]]] = deque()
    in_tree = np.zeros(m, dtype=np.bool_)
    while first or later:
        if not first:
            node, (place, other, sign) = later.popleft()
        else:
            node, (place, other, sign) = first.popleft()
            if one_way[place]:
                later.append((node, (place, other, sign)))
                continue
        if roots[other] >= 0:
            continue
        in_tree[place] = True
        roots[other] = roots[node]
        paths[other] = paths[node]
        paths[other, place] = sign
        first.extend((other, step) for step in touching[other])
    return paths, roots, np.flatnonzero(~in_tree)
