"""What a line of laminar runs in series lets out and keeps (see ``wintertight.flow.laminar``).

Its content follows from what it was full of at first and from the parcels of equal volume fed
since then: ``fed``, shape (1 + n, 4), holds the first content and then, for each parcel, how its
shares differ from that. The rest stands in ``part``, shape (13,): of the parcel that is not yet
whole its volume [m3] and the four component volumes in it [m3]; whether each component ever
differed; and the component volumes in the whole line [m3], by what came in and went out.
"""

import numpy as np

from wintertight.flow.kernels.compiled import COMPILED, kernel
from wintertight.flow.kernels.parcels import DUST_M3, SHARES, Array, Parcels

PART = 1 + 3 * SHARES
"""Length of ``part`` [1]."""

MARKS = 1 + SHARES
"""Where in ``part`` the marks of components begin [1]."""

IN_ALL = 1 + 2 * SHARES
"""Where in ``part`` the component volumes of the whole line begin [1]."""

NEARLY = 1e-12
"""A parcel that lacks less than this share of itself is whole [1]."""

LONG = 1_000_000
"""Products in a convolution from which a transform is faster [1]."""


@kernel
def parcels_of(volume: float, parcel_m3: float) -> int:
    """Give how many whole parcels a volume [m3] makes [1]."""
    return int(volume / parcel_m3 + NEARLY)


def _overlap_by_transform(long: Array, short: Array) -> Array:
    """Give the same by Fourier transform, which numba does not know, where it is faster."""
    if len(short) * (len(long) - len(short)) < LONG:
        return np.convolve(long, short, "valid")
    size = 1 << (len(long) - 1).bit_length()  # what wraps round lies before the overlap
    spectrum = np.fft.rfft(long, size) * np.fft.rfft(short, size)
    return np.asarray(np.fft.irfft(spectrum, size)[len(short) - 1 : len(long)])


@kernel
def _overlap_by_sum(long: Array, short: Array) -> Array:
    """Give the products of a short row with each full stretch of a long one, the short turned."""
    count = len(short)
    out = np.zeros(len(long) - count + 1)
    for k in range(count):
        factor = short[count - 1 - k]
        if factor != 0.0:
            for j in range(len(out)):
                out[j] += factor * long[k + j]
    return out


overlap = _overlap_by_sum if COMPILED else _overlap_by_transform


@kernel
def push_runs(
    fed: Array,
    part: Array,
    parcel_m3: float,
    padded: Array,
    in_volumes: Array,
    in_shares: Array,
) -> tuple[Array, Array, Parcels]:
    """Push a stream into a line of laminar runs; as much leaves.

    Args:
        fed: what was fed so far.
        part: what was fed of the parcel that is not yet whole.
        parcel_m3: volume of a parcel [m3].
        padded: response of the line: as many zeros as it has entries, then the share of a parcel
            that leaves so many parcels later [1]; half its length is more than all parcels.
        in_volumes: of the parcels that come in [m3].
        in_shares: of these [1].

    Returns:
        ``fed`` and ``part`` afterwards, and the parcels that left: volumes [m3] and shares [1].
    """
    had = len(fed) - 1
    count = len(in_volumes)
    begun = part[0]
    at = np.zeros(count + 2)
    at[1] = begun
    at[2:] = begun + in_volumes.cumsum()
    whole = at[count + 1]
    new = parcels_of(whole, parcel_m3)
    edges = np.minimum(parcel_m3 * np.arange(new + 1), whole)
    now = np.zeros((1 + had + new, SHARES))
    now[: 1 + had] = fed
    after = part.copy()
    after[0] = whole - edges[new]
    half = len(padded) // 2
    response = padded[half + 1 - new : half + 1 + had + new]
    sizes, out = np.empty(new + 1), np.empty((new + 1, SHARES))
    out[:] = fed[0]
    sizes[:] = parcel_m3
    sizes[0] -= begun
    sizes[new] = after[0] if new else whole - begun
    brought = in_shares.sum(axis=0)
    for c in range(SHARES):
        first, mark = fed[0, c], MARKS + c
        if brought[c] != 0.0 or part[1 + c] != 0.0:
            run = np.zeros(count + 2)
            run[1] = part[1 + c]
            run[2:] = part[1 + c] + (in_volumes * in_shares[:, c]).cumsum()
            sums = np.interp(edges, at, run)
            now[1 + had :, c] = (sums[1:] - sums[:-1]) / parcel_m3 - first
            after[1 + c] = run[count + 1] - sums[new]
        elif first != 0.0:
            now[1 + had :, c] = -first
        if new and (brought[c] != 0.0 or part[1 + c] != 0.0 or first != 0.0):
            after[mark] = 1.0
        if after[mark] != 0.0:
            out[:, c] += overlap(response, now[1:, c])
        if after[mark] != 0.0 or first != 0.0 or brought[c] != 0.0:
            into = (in_volumes * in_shares[:, c]).sum()
            after[IN_ALL + c] += into - (sizes * out[:, c]).sum()
    if after[0] <= DUST_M3:
        after[:MARKS] = 0.0
    skip = 0 if sizes[0] > DUST_M3 else 1
    keep = new + 1 if sizes[new] > DUST_M3 else new
    return now, after, (sizes[skip:keep], out[skip:keep])


@kernel
def begun_runs(volume: float, shares: Array) -> tuple[Array, Array]:
    """Begin a line of laminar runs that is full of one content.

    Args:
        volume: of the line [m3].
        shares: of the content [1], shape (4,).

    Returns:
        ``fed`` [1] and ``part`` [m3].
    """
    part = np.zeros(PART)
    part[IN_ALL:] = volume * shares
    return shares.copy().reshape(1, SHARES), part


@kernel
def mean_runs(fed: Array, part: Array, parcel_m3: float, volume: float, kept: Array) -> Array:
    """Give the mean shares of a line of laminar runs [1], shape (4,).

    Args:
        fed: what was fed so far.
        part: what was fed of the parcel that is not yet whole.
        parcel_m3: volume of a parcel [m3].
        volume: of the line [m3].
        kept: share of a parcel that is still in the line so many parcels later [1]; longer than
            all parcels.

    Returns:
        Mean shares [1], shape (4,).
    """
    n = len(fed) - 1
    first, sums = fed[0], part[1:MARKS]
    # An unfinished parcel has pushed out its own volume of what leaves next.
    lag = part[0] / parcel_m3
    mean: Array = first + (sums - part[0] * first) / volume
    if n:
        weights = ((1.0 - lag) * kept[:n] + lag * kept[1 : n + 1])[::-1] * (parcel_m3 / volume)
        for c in range(SHARES):
            if part[MARKS + c]:
                mean[c] += (weights * fed[1:, c]).sum()
    return mean
