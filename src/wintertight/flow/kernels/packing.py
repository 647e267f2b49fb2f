"""What hollows hold, and what fell out of outlets: lists of arrays, and rows of them."""

import numpy as np

from wintertight.flow.kernels.carrying import Ints
from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.parcels import SHARES, Array
from wintertight.flow.kernels.rows import Fallen, Filled, Packed


@kernel
def edges_of(arrays: list[Array]) -> Ints:
    """Give where arrays begin when they lie one behind another, and the end.

    Args:
        arrays: any.

    Returns:
        Places [1], one more than there are arrays.
    """
    edges = np.zeros(len(arrays) + 1, dtype=np.int64)
    for i in range(len(arrays)):
        edges[i + 1] = edges[i] + len(arrays[i])
    return edges


@kernel
def packed(volumes: list[Array], shares: list[Array], part: list[Array]) -> Packed:
    """Lay what hollows hold one behind another.

    Args:
        volumes: of each (see ``holding``).
        shares: of each.
        part: of each.

    Returns:
        Volumes [m3] and shares [1].
    """
    volumes_from, shares_from, part_from = edges_of(volumes), edges_of(shares), edges_of(part)
    every_volume = np.empty(volumes_from[-1])
    every_share = np.empty((shares_from[-1], SHARES))
    every_part = np.empty(part_from[-1])
    for i in range(len(volumes)):
        every_volume[volumes_from[i] : volumes_from[i + 1]] = volumes[i]
        every_share[shares_from[i] : shares_from[i + 1]] = shares[i]
        every_part[part_from[i] : part_from[i + 1]] = part[i]
    return Packed(every_volume, volumes_from, every_share, shares_from, every_part, part_from)


@kernel
def fallen(volumes: list[Array], shares: list[Array], outlets: int) -> Fallen:
    """Lay what fell out, outlet after outlet.

    Args:
        volumes: of its parcels [m3], one entry an outlet for each move.
        shares: of these [1].
        outlets: how many there are [1].

    Returns:
        Volumes [m3] and shares [1].
    """
    edges = np.zeros(outlets + 1, dtype=np.int64)
    for k in range(outlets):
        edges[k + 1] = edges[k]
        for i in range(k, len(volumes), outlets):
            edges[k + 1] += len(volumes[i])
    every_volume, every_share = np.empty(edges[-1]), np.empty((edges[-1], SHARES))
    for k in range(outlets):
        at = edges[k]
        for i in range(k, len(volumes), outlets):
            end = at + len(volumes[i])
            every_volume[at:end] = volumes[i]
            every_share[at:end] = shares[i]
            at = end
    return Fallen(every_volume, every_share, edges)


@kernel
def unpacked(
    filled: Filled,
) -> tuple[list[Array], list[Array], list[Array], list[Array], Ints]:
    """Give what hollows hold as lists.

    Args:
        filled: what they hold, one behind another.

    Returns:
        Volumes [m3], shares [1] and parts of each, its response, and for how many parcels that is
        long enough [1].
    """
    count = range(len(filled.size))
    volumes = [filled.volumes[filled.volumes_from[i] : filled.volumes_from[i + 1]] for i in count]
    shares = [filled.shares[filled.shares_from[i] : filled.shares_from[i + 1]] for i in count]
    part = [filled.part[filled.part_from[i] : filled.part_from[i + 1]] for i in count]
    begins, ends = filled.padded_from[filled.response], filled.padded_from[filled.response + 1]
    padded = [filled.padded[begins[i] : ends[i]] for i in count]
    return volumes, shares, part, padded, (ends - begins) // 2
