"""Draw coaches that fit the demo's cards, run every outlet of each, print gallons and seconds."""

import json
import multiprocessing
import sys
import time
from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cache

import numpy as np
import numpy.typing as npt

from tests.engines.fleet import CARDS
from wintertight.coach.load import load_card
from wintertight.errors import NoSteadyFlow
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.course import Course, lay_course, rules_for
from wintertight.flow.kernels.compiled import COMPILED
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.fluids.product import Product
from wintertight.procedure.drawn import draw
from wintertight.procedure.plan import plan_coach
from wintertight.units import GALLON_M3

LOW_DEGC = -23.3
PINK = Product("pink", 0.5, 0.0, -45.6, -12.2, GALLON_M3)
CASE = replace(BEST, chunk_m3=0.2e-3, parcel_m3=25e-6)

DRAWS = 1667
"""Coaches drawn for each card, however many of them are run [1]."""

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Kind:
    """A card's coach, laid out to be filled, and how its coaches differ: factors by link."""

    course: Course
    run_on_s: tuple[float, ...]
    factors: Mapping[str, Array]

    def gallons(self, number: int) -> float:
        """Give what comes out of all outlets of one drawn coach [gal]; nan: to the plain engine."""
        rules = rules_for(
            len(self.run_on_s), PINK.contents(), run_on_s=self.run_on_s, chunk_m3=CASE.chunk_m3
        )
        factors = {link: float(some[number]) for link, some in self.factors.items()}
        try:
            seen = self.course.stretched(factors).run(rules)
        except NoSteadyFlow:
            return float("nan")
        return float(seen.volume_m3.sum()) / GALLON_M3


@cache
def kinds() -> tuple[Kind, ...]:
    """Lay the coaches of all cards out, as their plans fill them."""
    return tuple(_kind(path.stem) for path in CARDS)


def _kind(stem: str) -> Kind:
    card = load_card(next(path for path in CARDS if path.stem == stem))
    plan = plan_coach(card, PINK, LOW_DEGC)
    coach = build_network(card, CASE)
    first = next(i for i, s in enumerate(plan.steps) if s.step.phase == "fill")
    before = [action for s in plan.steps[:first] for action in s.step.actions]
    ready = replay(coach, arriving_state(coach), before).end
    fills = [s for s in plan.steps if s.step.outlet is not None and s.run_on_s is not None]
    source = next(a.part for a in before if a.verb == "feed")
    lines = draw(card, DRAWS).lines
    return Kind(
        course=lay_course(coach, ready, [s.step.outlet or "" for s in fills], source),
        run_on_s=tuple(s.run_on_s or 0.0 for s in fills),
        factors={k: lines[link.part] for k, link in coach.links.items() if link.part in lines},
    )


def gallons_of(job: tuple[int, int, int]) -> list[float]:
    """Give the gallons of some drawn coaches of one card: (card, first, last)."""
    card, first, last = job
    return [_KINDS[card].gallons(number) for number in range(first, last)]


_KINDS: list[Kind] = []
EACH = 50


def main() -> None:
    """Print gallons of so many coaches and the seconds they took, on so many cores."""
    coaches, cores = int(sys.argv[1]), int(sys.argv[2])
    each = min(-(-coaches // len(CARDS)), DRAWS)
    _KINDS.extend(kinds())
    jobs = [
        (card, first, min(first + EACH, each))
        for card in range(len(CARDS))
        for first in range(0, each, EACH)
    ]
    _KINDS[0].gallons(0)  # what has to be compiled is compiled before the clock runs
    begin = time.perf_counter()
    if cores == 1:
        rows = [gallons_of(job) for job in jobs]
    else:
        with multiprocessing.get_context("fork").Pool(cores) as pool:
            rows = pool.map(gallons_of, jobs, chunksize=1)
    took = time.perf_counter() - begin
    gallons = [g for row in rows for g in row]
    json.dump({"compiled": COMPILED, "seconds": took, "gallons": gallons}, sys.stdout)


if __name__ == "__main__":
    main()
