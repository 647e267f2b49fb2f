"""One hollow among many: how it holds, by number, and what it lets out for what comes in.

Three arrays say what a hollow holds, whatever its way of holding:

    DISPLACED   volumes and shares of its segments, the one nearest the outlet first
    RUNS        shares: ``fed``; part: ``part`` (see ``runs``)
    STIRRED     shares: the one content, shape (1, 4)
"""

from typing import Final

import numpy as np

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.parcels import SHARES, Array, Parcels
from wintertight.flow.kernels.plug import push_plug
from wintertight.flow.kernels.runs import IN_ALL, push_runs
from wintertight.flow.kernels.vessel import push_vessel

DISPLACED: Final = 0
RUNS: Final = 1
STIRRED: Final = 2


@kernel
def push(
    way: int,
    volume: float,
    parcel_m3: float,
    padded: Array,
    volumes: Array,
    shares: Array,
    part: Array,
    in_volumes: Array,
    in_shares: Array,
) -> tuple[Array, Array, Array, Parcels]:
    """Push a stream into a hollow; as much leaves at its other end.

    Args:
        way: how it holds.
        volume: of the hollow [m3].
        parcel_m3: volume of a parcel, for runs [m3].
        padded: response, for runs (see ``push_runs``).
        volumes: what it holds.
        shares: what it holds.
        part: what it holds.
        in_volumes: of the parcels that come in [m3].
        in_shares: of these [1].

    Returns:
        ``volumes``, ``shares`` and ``part`` afterwards, and the parcels that left: volumes [m3]
        and shares [1].
    """
    if way == DISPLACED:
        kept, gone = push_plug(volumes, shares, in_volumes, in_shares)
        return kept[0], kept[1], part, gone
    if way == RUNS:
        fed, after, gone = push_runs(shares, part, parcel_m3, padded, in_volumes, in_shares)
        return volumes, fed, after, gone
    held, gone = push_vessel(volume, shares[0], in_volumes, in_shares)
    return volumes, held.reshape(1, SHARES), part, gone


@kernel
def about(way: int, volume: float, volumes: Array, shares: Array, part: Array) -> Array:
    """Give the mean shares of a hollow, by what came in and went out: quick.

    Args:
        way: how it holds.
        volume: of the hollow [m3].
        volumes: what it holds.
        shares: what it holds.
        part: what it holds.

    Returns:
        Mean shares [1], shape (4,).
    """
    mean = np.zeros(SHARES)
    if way == RUNS:
        mean += part[IN_ALL:] / volume
    elif way == STIRRED:
        mean += shares[0]
    else:
        for c in range(SHARES):
            mean[c] = np.sum(volumes * shares[:, c]) / volume
    return mean


@kernel
def glycol_about(way: int, volume: float, volumes: Array, shares: Array, part: Array) -> float:
    """Give the share of glycol alone of the same mean.

    Args:
        way: how it holds.
        volume: of the hollow [m3].
        volumes: what it holds.
        shares: what it holds.
        part: what it holds.

    Returns:
        Share of glycol [1].
    """
    glycol = 0.0
    if way == RUNS:
        glycol = part[IN_ALL]
    elif way == STIRRED:
        glycol = shares[0, 0] * volume
    else:
        for i in range(len(volumes)):
            glycol += volumes[i] * shares[i, 0]
    return max(glycol / volume, 0.0)  # below 0 is rounding
