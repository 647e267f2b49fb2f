"""Moving fluid along a route for a while: each leg takes in what reaches its upper node."""

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.holding import push
from wintertight.flow.kernels.parcels import DUST_M3, SHARES, Array, eased, mixed_pair

Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]

NO_HOLLOW = -1
"""A leg that holds nothing."""


@kernel
def order_legs(up: Ints, down: Ints, nodes: int) -> Ints:
    """Put legs in an order in which each comes after all that feed it.

    Args:
        up: node each leg comes from.
        down: node it goes to.
        nodes: how many nodes there are [1].

    Returns:
        Places in ``up``; fewer than there are where some run in a circle.
    """
    legs = len(up)
    waiting = np.zeros(nodes, dtype=np.int64)
    for leg in range(legs):
        waiting[down[leg]] += 1
    order = np.empty(legs, dtype=np.int64)
    placed = np.zeros(legs, dtype=np.bool_)
    count, before = 0, -1
    while count != before:
        before = count
        for leg in range(legs):
            if not placed[leg] and waiting[up[leg]] == 0:
                placed[leg] = True
                order[count] = leg
                count += 1
                waiting[down[leg]] -= 1
    return order[:count]


@kernel
def carry_along(
    up: Ints,
    down: Ints,
    flow: Array,
    hollow: Ints,
    nodes: int,
    is_fed: Bools,
    feeds: Array,
    seconds: float,
    way: Ints,
    size: Array,
    parcel_m3: Array,
    padded: list[Array],
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
    ease: bool,  # noqa: FBT001 - a compiler of Python knows no keywords
) -> tuple[list[Array], list[Array]]:
    """Move fluid along legs for some seconds.

    Args:
        up: node each leg comes from, legs in order.
        down: node it goes to.
        flow: of each leg [m3/s], above 0.
        hollow: what each leg holds, by its place in the lists below; ``NO_HOLLOW`` for nothing.
        nodes: how many nodes there are [1].
        is_fed: whether a node is that of a source.
        feeds: shares of what each source gives [1], shape (nodes, 4).
        seconds: how long [s].
        way: how each hollow holds (see ``holding``).
        size: volume of each hollow [m3].
        parcel_m3: parcel of each hollow [m3].
        padded: response of each hollow.
        volumes: what each hollow holds; changed in place, like the next two.
        shares: what each hollow holds.
        part: what each hollow holds.
        ease: whether parcels nearly alike are joined where they are many.

    Returns:
        Volumes [m3] and shares [1] of the parcels that reached each node: what came in at a
        source, and what fell out at the last node of an outlet.
    """
    leaving = np.zeros(nodes)
    for leg in range(len(up)):
        leaving[up[leg]] += flow[leg]
    none, none_shares = np.empty(0), np.empty((0, SHARES))
    at_volumes = [none for _ in range(nodes)]
    at_shares = [none_shares for _ in range(nodes)]
    for node in range(nodes):
        if is_fed[node] and leaving[node] > 0.0:
            at_volumes[node] = np.full(1, leaving[node] * seconds)
            at_shares[node] = feeds[node : node + 1].copy()
    for leg in range(len(up)):
        come, come_shares = at_volumes[up[leg]], at_shares[up[leg]]
        if len(come) == 0:
            continue
        share = flow[leg] / leaving[up[leg]]
        if share != 1.0:
            come = come * share
        i = hollow[leg]
        if i != NO_HOLLOW:
            volumes[i], shares[i], part[i], gone = push(
                way[i],
                size[i],
                parcel_m3[i],
                padded[i],
                volumes[i],
                shares[i],
                part[i],
                come,
                come_shares,
            )
            come, come_shares = eased(gone[0], gone[1]) if ease else gone
        to = down[leg]
        if come.sum() <= DUST_M3:
            continue
        if len(at_volumes[to]) == 0:
            at_volumes[to], at_shares[to] = come, come_shares
        else:
            at_volumes[to], at_shares[to] = mixed_pair(
                at_volumes[to], at_shares[to], come, come_shares
            )
    return at_volumes, at_shares
