"""What a stirred vessel lets out; free air in it leaves before liquid does."""

import math

import numpy as np

from wintertight.flow.kernels.compiled import COMPILED, kernel
from wintertight.flow.kernels.parcels import AIR, DUST_M3, SHARES, Array, Parcels

STIR_STEP = 0.25
"""Largest parcel let out of a stirred vessel while it changes, as a share of its volume [1]."""

NEARLY_ALIKE = 1e-3
"""Shares [1] closer than this to those of the feed go over to them in one parcel, still exact."""


LONGEST_AT_ONCE = 300.0
"""Volumes of the vessel up to which small parcels are worked out at once [1]: exp() carries it."""


def _stirred_at_once(
    volume: float, shares: Array, in_volumes: Array, in_shares: Array
) -> tuple[Array, Parcels]:
    """Give the same for liquid in small parcels, without a loop, which Python runs slowly."""
    turn = in_volumes / volume
    passed = turn.cumsum()
    grown = np.exp(passed)
    rise = grown.copy()
    rise[1:] -= grown[:-1]
    rise[0] -= 1.0
    after = (shares + (in_shares * rise[:, None]).cumsum(axis=0)) / grown[:, None]
    gap = np.concatenate((shares[None, :], after[:-1])) - in_shares
    out = in_shares - gap * (np.expm1(-turn) / turn)[:, None]
    return after[-1], (in_volumes, out)


def _at_once(volume: float, shares: Array, in_volumes: Array, in_shares: Array) -> bool:
    """Tell whether that can be done."""
    return bool(
        shares[AIR] == 0.0
        and len(in_volumes) > 1
        and not in_shares[:, AIR].any()
        and in_volumes.min() > DUST_M3
        and in_volumes.max() <= STIR_STEP * volume
        and in_volumes.sum() <= LONGEST_AT_ONCE * volume
    )


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
    if _at_once(volume, shares, in_volumes, in_shares):
        return _stirred_at_once(volume, shares, in_volumes, in_shares)
    return push_each(volume, shares, in_volumes, in_shares)


push_vessel = push_each if COMPILED else _push_in_python
