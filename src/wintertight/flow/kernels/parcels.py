"""Parcels in a row: volumes [m3], shape (p,), and shares of each [1], shape (p, 4).

The last of the four shares is air. Nothing is lost where parcels are cut, joined or mixed.
"""

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.compiled import kernel

Array = npt.NDArray[np.float64]
Parcels = tuple[Array, Array]

SHARES = 4
AIR = 3

DUST_M3 = 1e-15
"""A parcel smaller than this [m3] is rounding, not fluid."""

ALIGNED = 1e-12
"""Cuts closer than this share of a whole stream are one cut [1]."""

MANY = 64
"""More parcels than this are a long stream [1]."""

NEARLY = 1e-4
"""Shares closer than this may be joined in a long stream [1]."""


@kernel
def put(volumes: Array, shares: Array, count: int, volume: float, share: Array) -> int:
    """Put one more parcel behind ``count`` others, joined with the last where that is alike.

    Args:
        volumes: room for parcels [m3]; changed in place.
        shares: room for their shares [1]; changed in place.
        count: how many there are [1].
        volume: of the parcel [m3].
        share: its shares [1], shape (4,).

    Returns:
        How many there are now [1].
    """
    if count:
        last = shares[count - 1]
        if (
            last[0] == share[0]
            and last[1] == share[1]
            and last[2] == share[2]
            and last[3] == share[3]
        ):
            volumes[count - 1] += volume
            return count
    volumes[count] = volume
    shares[count] = share
    return count + 1


@kernel
def mixed_pair(volumes: Array, shares: Array, others: Array, their_shares: Array) -> Parcels:
    """Mix two streams that arrive at one place during the same time, each at a steady rate.

    Args:
        volumes: of the parcels of the one [m3].
        shares: of these [1].
        others: volumes of the parcels of the other [m3].
        their_shares: of these [1].

    Returns:
        One stream cut at every cut of either.
    """
    n, m = len(volumes), len(others)
    one, other = volumes.sum(), others.sum()
    out_volumes, out_shares = np.empty(n + m), np.empty((n + m, SHARES))
    i, j, count = 0, 0, 0
    at = 0.0
    end_i, end_j = volumes[0] / one, others[0] / other
    while i < n and j < m:
        end = 1.0 if i == n - 1 and j == m - 1 else min(end_i, end_j)
        a, b = (end - at) * one, (end - at) * other
        if a + b > DUST_M3:
            out_volumes[count] = a + b
            out_shares[count] = (a * shares[i] + b * their_shares[j]) / (a + b)
            count += 1
        at = end
        first, second = end_i - end <= ALIGNED, end_j - end <= ALIGNED
        if first:
            i += 1
            if i < n:
                end_i += volumes[i] / one
        if second:
            j += 1
            if j < m:
                end_j += others[j] / other
    return out_volumes[:count], out_shares[:count]


@kernel
def eased(volumes: Array, shares: Array) -> Parcels:
    """Join neighbours of a long stream that are nearly alike; volumes and components stay.

    Args:
        volumes: of the parcels [m3].
        shares: of these [1].

    Returns:
        As many parcels or fewer.
    """
    count = len(volumes)
    if count <= MANY:
        return volumes, shares
    begins = np.zeros(count, dtype=np.bool_)
    begins[0] = True
    for c in range(SHARES):
        rounded = np.rint(shares[:, c] / NEARLY)
        begins[1:] |= rounded[1:] != rounded[:-1]
    starts = np.flatnonzero(begins)
    run = np.zeros(count + 1)
    run[1:] = volumes.cumsum()
    edges = np.zeros(len(starts) + 1, dtype=np.int64)
    edges[:-1] = starts
    edges[-1] = count
    joined = run[edges[1:]] - run[edges[:-1]]
    joined_shares = np.empty((len(starts), SHARES))
    for c in range(SHARES):
        run[1:] = (volumes * shares[:, c]).cumsum()
        joined_shares[:, c] = (run[edges[1:]] - run[edges[:-1]]) / joined
    return joined, joined_shares
