"""Gallons of ten thousand coaches on two cores, compiled, against the same source plain on one.

Each is drawn from one of the demo's cards, with lines as its spreads let them be, and every outlet
is run by its plan: colour, then the run-on. What the plain run gives for its few must be the same.
"""

import json
from collections.abc import Iterator
from typing import Any

import numpy as np

from bench.own_process import printed_by

COACHES, CORES, CHECKED = 10_000, 2, 12


def measure() -> Iterator[str]:
    """Give the lines, each from a process of its own."""
    many, few = _gallons(COACHES, CORES, compiled=True), _gallons(CHECKED, 1, compiled=False)
    if not many["compiled"] or few["compiled"]:
        yield "gallons of many coaches: nothing was compiled; install the fleet extra"
        return
    all_gallons = np.array(many["gallons"])
    of_card = all_gallons.reshape(-1, len(all_gallons) // (CHECKED // 2))
    apart = np.abs(of_card[:, :2].ravel() - np.array(few["gallons"])).max()
    each, each_plain = many["seconds"] / len(all_gallons), few["seconds"] / len(few["gallons"])
    low, middle, high = np.nanquantile(all_gallons, [0.05, 0.5, 0.95])
    yield (
        f"gallons of {len(all_gallons)} coaches on {CORES} cores, compiled: "
        f"{many['seconds']:.0f} s, {1e3 * each:.1f} ms a coach; plain on one core "
        f"{1e3 * each_plain:.0f} ms a coach, ratio {each_plain / each:.0f}"
    )
    yield (
        f"the same: {low:.1f}/{middle:.1f}/{high:.1f} gal (5/50/95 %), "
        f"{int(np.isnan(all_gallons).sum())} left to the plain engine; the {len(few['gallons'])} "
        f"that both did at most {apart:.1e} gal apart"
    )


def _gallons(coaches: int, cores: int, *, compiled: bool) -> dict[str, Any]:
    words = (str(coaches), str(cores))
    told = printed_by("fleet_gallons", *words, compiled=compiled, OPENBLAS_NUM_THREADS="1")
    found: dict[str, Any] = json.loads(told)
    return found
