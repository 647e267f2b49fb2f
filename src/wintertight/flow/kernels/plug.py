"""What a hollow lets out that is displaced: first in, first out."""

import numpy as np

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.parcels import DUST_M3, SHARES, Array, Parcels, put


@kernel
def push_plug(
    volumes: Array, shares: Array, in_volumes: Array, in_shares: Array
) -> tuple[Parcels, Parcels]:
    """Push a stream into a row of segments; as much leaves at the other end.

    Args:
        volumes: of the segments held [m3], the one nearest the outlet first.
        shares: of these [1].
        in_volumes: of the parcels that come in [m3].
        in_shares: of these [1].

    Returns:
        The segments held afterwards, and the parcels that left.
    """
    had = len(volumes)
    most = had + len(in_volumes)
    kept_volumes, kept_shares = np.empty(most), np.empty((most, SHARES))
    gone_volumes, gone_shares = np.empty(most), np.empty((most, SHARES))
    kept, gone = 0, 0
    to_leave = in_volumes.sum()
    for i in range(most):
        if i < had:
            volume, share = volumes[i], shares[i]
        else:
            volume, share = in_volumes[i - had], in_shares[i - had]
        # The last crumb stays: a hollow is never left without content.
        leaves = min(volume, to_leave)
        to_leave -= leaves
        if leaves > DUST_M3:
            gone = put(gone_volumes, gone_shares, gone, leaves, share)
        if volume - leaves > DUST_M3:
            kept = put(kept_volumes, kept_shares, kept, volume - leaves, share)
    return (
        (kept_volumes[:kept], kept_shares[:kept]),
        (gone_volumes[:gone], gone_shares[:gone]),
    )
