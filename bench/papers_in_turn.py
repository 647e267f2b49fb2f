"""A card read, planned, priced, and every paper and drawing of it made: coach after coach.

Run as a process of its own, plain or compiled (see ``bench_papers``). All coaches of the demo take
their turn, round after round, so that each paper is set after those of five other coaches: the
typesetter keeps what it set last, and the same paper set twice in a row would cost it nothing. What
the engine keeps of a network's shape is thrown away before each turn.
"""

import json
import sys
import time
from datetime import date
from pathlib import Path

from bench.bench_plan import LOW_DEGC, PINK
from tests.engines.fleet import CARDS
from wintertight.coach.load import load_card
from wintertight.coach.shop import load_shop
from wintertight.documents.visit_papers import Visit, visit_papers
from wintertight.flow.kernels.compiled import COMPILED
from wintertight.flow.steady.loops import forget_shapes
from wintertight.procedure.estimate import estimate_job
from wintertight.procedure.plan import plan_coach
from wintertight.procedure.priced_job import priced_job

DAY = date(2026, 10, 15)
ROUNDS = 6


def seconds_of(file: Path, *, missed: bool) -> tuple[float, float]:
    """Give how long the plan took, and all of it with its papers [s]."""
    forget_shapes()
    begin = time.perf_counter()
    plan = plan_coach(load_card(file), PINK, LOW_DEGC, with_missed_steps=missed)
    planned = time.perf_counter() - begin
    prices = load_shop(file.parents[1] / "shop.toml").prices
    priced = None if prices is None else estimate_job(priced_job(plan), prices, DAY)
    made = list(visit_papers(Visit(plan, "shop", priced)))
    if not any(name.endswith(".pdf") for name, _ in made):
        message = f"no papers came of {file.stem}"
        raise AssertionError(message)
    return planned, time.perf_counter() - begin


def main() -> None:
    """Print the shortest times of each coach, and whether the arithmetic was compiled."""
    best: dict[str, list[float]] = {}
    for missed in (False, True):
        for _ in range(ROUNDS // 2 if missed else ROUNDS):
            for file in CARDS:
                took = seconds_of(file, missed=missed)
                key = f"{file.stem}{' missed' if missed else ''}"
                best[key] = [min(pair) for pair in zip(took, best.get(key, took), strict=True)]
    json.dump({"compiled": COMPILED, "best": best}, sys.stdout)


if __name__ == "__main__":
    main()
