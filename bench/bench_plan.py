"""A whole plan of two demo coaches, warm, and what leaving out every step once adds to it.

The reference of the same run is one steady solve of the demo coach by EPANET, its file read: how
many of these a plan costs.
"""

import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

import numpy as np

from bench.timing import best_ms
from tests.engines.coach_twin import WATER_M2_S, hollow_twin
from tests.engines.epanet_twin import opened_for_timing
from tests.engines.fleet import CARDS, drawing
from wintertight.coach.card import Card
from wintertight.coach.load import load_card
from wintertight.fluids.product import Product
from wintertight.procedure.plan import plan_coach
from wintertight.units import GALLON_M3

PINK = Product("pink", 0.5, 0.0, -45.6, -12.2, GALLON_M3)
LOW_DEGC = -23.3
NAMES = ("middle-travel-trailer", "full-fifth-wheel")
ROUNDS = 3


def measure() -> Iterator[str]:
    """Give a line for each coach."""
    solve_ms = _epanet_solve_ms()
    for name in NAMES:
        card = load_card(next(path for path in CARDS if path.stem == name))
        plan_coach(card, PINK, LOW_DEGC)
        whole, missed = (
            min(_seconds(card, with_missed_steps=asked) for _ in range(ROUNDS))
            for asked in (False, True)
        )
        yield (
            f"whole plan of {name}, warm: {1e3 * whole:.0f} ms; every step left out once: "
            f"{missed - whole:.2f} s more on all cores; one steady solve by EPANET "
            f"{solve_ms:.3f} ms, ratio {1e3 * whole / solve_ms:.0f} and "
            f"{1e3 * (missed - whole) / solve_ms:.0f}"
        )


def _seconds(card: Card, *, with_missed_steps: bool) -> float:
    begin = time.perf_counter()
    plan_coach(card, PINK, LOW_DEGC, with_missed_steps=with_missed_steps)
    return time.perf_counter() - begin


def _epanet_solve_ms() -> float:
    here = drawing(next(path for path in CARDS if path.stem == NAMES[0]))
    twin = hollow_twin(here.coach)
    everything = np.ones(len(twin.link_ids), dtype=np.bool_)
    with (
        tempfile.TemporaryDirectory() as folder,
        opened_for_timing(twin, everything, WATER_M2_S, Path(folder)) as solve,
    ):
        return best_ms(solve)
