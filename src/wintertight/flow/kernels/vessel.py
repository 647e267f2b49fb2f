"""What a stirred vessel lets out; free air in it leaves before liquid does."""

import math

import numpy as np

from wintertight.flow.kernels.compiled import COMPILED, kernel
from wintertight.flow.kernels.parcels import AIR, DUST_M3, SHARES, Array, Parcels

STIR_STEP = 0.25
"""Largest parcel let out of a stirred vessel while it changes, as a share of its volume [1]."""

NEARLY_ALIKE = 1e-3
"""Shares [1] closer than this to those of the feed go over to them in one parcel, still exact."""


@kernel
def push_each(
    volume: float, shares: Array, in_volumes: Array, in_shares: Array
) -> tuple[Array, Parcels]:
    """Push a stream into a stirred vessel; as much leaves.

    With no free air in it, and a feed of shares ``f`` without air, what it holds goes as
    ``f + (c - f) exp(-V/volume)``; exact for each parcel.

    Args:
        volume: of the vessel [m3].
        shares: what it holds [1], shape (4,).
        in_volumes: of the parcels that come in [m3].
        in_shares: of these [1].

    Returns:
        What it holds afterwards [1], and the parcels that left.

    Sources: levenspiel (stirred tank), calculated from it.
    """
    held = shares.copy()
    most = 0
    for i in range(len(in_volumes)):
        most += 2 + 2 * math.ceil(in_volumes[i] / (STIR_STEP * volume))
    out_volumes, out_shares = np.empty(most), np.empty((most, SHARES))
    count = 0
    for i in range(len(in_volumes)):
        share = in_shares[i]
        air = share[AIR]
        wet = 1.0 - air
        feed = share / max(wet, DUST_M3)
        feed[AIR] = 0.0
        left = in_volumes[i]
        while left > 0.0:
            each = min(left, STIR_STEP * volume)
            if held[AIR] == 0.0 and wet * left > DUST_M3:
                gap = held - feed
                if left > each and np.abs(gap).max() < NEARLY_ALIKE:
                    each = left
                left -= each
                # Air that only passes leaves with the liquid of its parcel.
                turn = wet * each / volume
                fall = math.expm1(-turn)
                out_volumes[count] = each
                out_shares[count] = (feed - gap * (fall / turn)) * wet
                out_shares[count, AIR] = air
                count += 1
                held = feed + gap * (1.0 + fall)
                continue
            left -= each
            # Air first: what was free in it, and what comes with the parcel.
            free = min(held[AIR] * volume + each * air, each)
            rest = each - free
            after_air = held[AIR] * volume + each * air - free
            if free > DUST_M3:
                out_volumes[count] = free
                out_shares[count, :AIR] = 0.0
                out_shares[count, AIR] = 1.0
                count += 1
            liquid = held * volume
            liquid[AIR] = 0.0
            full = max(volume - after_air, DUST_M3)
            # Air that left made room for part of the feed: the liquid held grew to `full` first.
            start = (liquid + (each * wet - rest) * feed) / full
            if rest > DUST_M3:
                gap = start - feed
                turn = rest / full
                fall = math.expm1(-turn)
                out_volumes[count] = rest
                out_shares[count] = feed - gap * (fall / turn)
                count += 1
                start = feed + gap * (1.0 + fall)
            held = start * (full / volume)
            held[AIR] = after_air / volume if after_air > DUST_M3 else 0.0
    return held, (out_volumes[:count], out_shares[:count])


def _push_in_python(
    volume: float, shares: Array, in_volumes: Array, in_shares: Array
) -> tuple[Array, Parcels]:
    """Do the same; one antifreeze in water, without air, in plain numbers, quicker in Python."""
    there = shares.astype(np.bool_) | in_shares.any(axis=0)
    if there.sum() > 1 or there[AIR] or not len(in_volumes):
        return push_each(volume, shares, in_volumes, in_shares)
    c = int(there.argmax())
    share, out_volumes, out_shares = float(shares[c]), [], []
    for left, feed in zip(in_volumes.tolist(), in_shares[:, c].tolist(), strict=True):
        while left > DUST_M3:
            gap, each = share - feed, min(left, STIR_STEP * volume)
            if left > each and abs(gap) < NEARLY_ALIKE:
                each = left
            left -= each  # noqa: PLW2901 - what is left of the parcel
            turn = each / volume
            fall = math.expm1(-turn)
            out_volumes.append(each)
            out_shares.append(feed - gap * (fall / turn))
            share = feed + gap * (1.0 + fall)
    held, gone = np.zeros(SHARES), np.zeros((len(out_volumes), SHARES))
    held[c], gone[:, c] = share, out_shares
    return held, (np.array(out_volumes), gone)


push_vessel = push_each if COMPILED else _push_in_python
