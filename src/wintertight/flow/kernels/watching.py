"""What is seen at an outlet while it runs, and how long it still has to."""

from typing import Final

import numpy as np

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.parcels import AIR, Array

COLOUR_S: Final = 0
COLOUR_M3: Final = 1
VOLUME_M3: Final = 2
SECONDS: Final = 3
FLOW_M3_S: Final = 4
SEEN: Final = 5
"""Columns of what is seen at each outlet: first colour that stays [s] and what had come out by then
[m3] (nan without), volume [m3], seconds [s], last flow [m3/s]; and how many columns there are."""

WET: Final = 0.5
"""Share of air from which a parcel is no liquid [1]."""

AN_INSTANT_S: Final = 1e-9
"""A time that is rounding [s]."""


@kernel
def watch(row: Array, volumes: Array, shares: Array, strength: float) -> None:
    """Note when colour shows, and stays, in what comes out.

    Colour that water or air follows was what a hose still held: only what stays counts.

    Args:
        row: of one outlet, shape (``SEEN``,); its first two entries are changed in place.
        volumes: of the parcels that come out [m3].
        shares: of these [1].
        strength: share of antifreeze in the liquid at which colour shows [1].
    """
    bought = shares[:, 0] + shares[:, 1] + shares[:, 2]
    air = shares[:, AIR]
    clear = np.flatnonzero((air >= WET) | (bought < strength * (1.0 - air)))
    shown = 0
    if len(clear):
        row[COLOUR_S] = np.nan
        shown = clear[-1] + 1
    if np.isnan(row[COLOUR_S]) and shown < len(volumes):
        passed = volumes[:shown].sum()
        row[COLOUR_S] = row[SECONDS] + passed / row[FLOW_M3_S]
        row[COLOUR_M3] = row[VOLUME_M3] + passed


@kernel
def sample(series: Array, row: Array, each_s: float, volumes: Array, shares: Array) -> None:
    """Note the strength of what comes out at even times; parcels leave one after another.

    Args:
        series: strength at each time [1]; changed in place.
        row: of one outlet, shape (``SEEN``,).
        each_s: seconds between two times [s].
        volumes: of the parcels [m3].
        shares: of these [1].
    """
    at = row[SECONDS]
    for i in range(len(volumes)):
        end = at + volumes[i] / row[FLOW_M3_S]
        k = int(np.ceil(at / each_s - AN_INSTANT_S))
        while k < len(series) and k * each_s < end - AN_INSTANT_S:
            series[k] = shares[i, 0] + shares[i, 1] + shares[i, 2]
            k += 1
        at = end


@kernel
def seconds_left(row: Array, limit_s: float, limit_m3: float, run_on_s: float) -> float:
    """Give the time until a rule says stop.

    Args:
        row: of one outlet, shape (``SEEN``,).
        limit_s: time in all [s]; infinite for none.
        limit_m3: volume in all [m3]; infinite for none.
        run_on_s: time after first colour [s]; nan for none.

    Returns:
        Time left [s]: infinite while no rule is near, 0 when one is met.
    """
    left: float = limit_s - row[SECONDS]
    if np.isfinite(limit_m3):
        left = min(left, (limit_m3 - row[VOLUME_M3]) / row[FLOW_M3_S] if row[FLOW_M3_S] else 0.0)
    if not np.isnan(row[COLOUR_S]) and not np.isnan(run_on_s):
        left = min(left, row[COLOUR_S] + run_on_s - row[SECONDS])
    return left if left > AN_INSTANT_S else 0.0
