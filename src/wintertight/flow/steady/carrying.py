"""Which links can carry flow at all; every other link carries exactly nothing.

A link carries only where it lies on a simple path between two nodes at which water enters or
leaves, a held head or a demand, or in a ring with a pump. Join all entries to one outside node;
then the links that can carry are those in one biconnected part with that node, and those in a
biconnected ring that holds a pump.
"""

from collections.abc import Iterator, Sequence

import numpy as np

from wintertight.flow.steady.network import Bools, LinkKind, PipeNetwork


def carrying_links(network: PipeNetwork, open_links: Bools) -> Bools:
    """Tell which links can carry flow, by the shape of the network alone.

    Args:
        network: the network.
        open_links: which links are open, one truth value a link.

    Returns:
        True where a link can carry; what is False has a flow of exactly zero.

    Sources: memory (biconnected parts of a graph, Tarjan 1972).
    """
    outside = len(network.node_ids)
    pumps = set(np.flatnonzero(network.kind == LinkKind.PUMP).tolist())
    ends = list(zip(network.start.tolist(), network.end.tolist(), strict=True))
    touching: list[list[int]] = [[] for _ in range(outside + 1)]
    for link in np.flatnonzero(open_links).tolist():
        start, end = ends[link]
        touching[start].append(link)
        touching[end].append(link)
    for node in np.flatnonzero(network.is_fixed | (network.demand_m3_s != 0.0)).tolist():
        touching[node].append(len(ends))
        touching[outside].append(len(ends))
        ends.append((outside, node))
    carrying = np.zeros(len(ends), dtype=np.bool_)
    entered = [-1] * len(touching)
    for root in range(outside, -1, -1):
        if entered[root] < 0:
            for part in _biconnected_parts(root, ends, touching, entered):
                through = any(ends[edge][0] == outside for edge in part)
                if through or (len(part) > 1 and pumps.intersection(part)):
                    carrying[part] = True
    return carrying[: len(network.link_ids)]


def _biconnected_parts(
    root: int,
    ends: Sequence[tuple[int, int]],
    touching: Sequence[Sequence[int]],
    entered: list[int],
) -> Iterator[list[int]]:
    """Give the edges of each biconnected part around a root: depth first, without recursion."""
    lowest = [0] * len(touching)
    entered[root] = 0
    clock = 1
    used: set[int] = set()
    edges: list[int] = []
    way = [(root, iter(touching[root]), 0)]
    while way:
        node, rest, mark = way[-1]
        edge = next(rest, None)
        if edge is None:
            way.pop()
            if not way:
                break
            above = way[-1][0]
            lowest[above] = min(lowest[above], lowest[node])
            if lowest[node] >= entered[above]:
                yield edges[mark:]
                del edges[mark:]
            continue
        if edge in used:
            continue
        used.add(edge)
        other = ends[edge][0] + ends[edge][1] - node
        if entered[other] < 0:
            entered[other] = lowest[other] = clock
            clock += 1
            way.append((other, iter(touching[other]), len(edges)))
        else:
            lowest[node] = min(lowest[node], entered[other])
        edges.append(edge)
