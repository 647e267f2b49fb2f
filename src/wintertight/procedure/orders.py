"""Does the order of the outlets matter? Nearest first against the best and worst orders found.

Ten outlets have more than three million orders, so this is a search and says so: it knows the
orders it has tried and no others. It tries nearest first (as planned), farthest first and some
shuffled orders; then, from the best of them downhill and from the worst uphill, it swaps two
outlets, neighbours first, keeps what goes further that way, and stops when no swap does or when so
many runs of an outlet were worked out. So few outlets that all
their orders are no more than ``ALL_OF_THEM`` are all tried. The seed is fixed: asked twice, it
answers alike.

All orders are worked out alike (see ``walk``): on the careful side, without cups and without the
mending of a plan. The gallons are there to be compared with each other, not with the plan's.
"""

import math
import random
from collections.abc import Mapping
from dataclasses import dataclass, replace
from itertools import combinations, cycle, permutations
from typing import Literal

from wintertight.coach.card import Card
from wintertight.errors import ChoiceError
from wintertight.flow.build import build_network
from wintertight.flow.case import CAREFUL
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.fluids.product import Product
from wintertight.procedure.job import Job
from wintertight.procedure.methods.pump_steps import pump_job, steps_before_filling
from wintertight.procedure.methods.worked import actions_of
from wintertight.procedure.missed import in_strides
from wintertight.procedure.walk import Walk, Walker
from wintertight.procedure.walking import walking_order
from wintertight.proof.judge import Bench

OrderKey = Literal[
    "nearest first will do", "another order saves", "another order clears more", "one outlet"
]

ALL_OF_THEM = 120
"""Most orders that are tried without exception [1]: those of five outlets."""

SHUFFLED = 2
"""Shuffled orders that are tried [1]."""

MOST_RUNS = 150
"""Runs of one outlet that are worked out before no more swaps are tried [1]: a large coach shall
not take longer than five seconds."""

SEED = 20
"""Seed of what is shuffled [1]."""

ALIKE = 0.04
"""Share of the volume up to which two orders are alike [1]: by so much the difference of two orders
moves when both are worked out in the small strides of a plan, and run-ons are counted no closer
than to a second."""

WORTH_M3 = 1e-3
"""What another order must save to be worth a word [m3]: about a quart; common practice."""


@dataclass(frozen=True, slots=True)
class Round:
    """A coach ready to be filled: pump on, every outlet shut.

    Attributes:
        job: what is drawn in, and where.
        bench: the coach on the careful side, in large strides.
        nearest: its outlets, nearest first, as they are planned.
    """

    job: Job
    bench: Bench
    nearest: tuple[str, ...]

    def bench_at(self, trace: Trace) -> Bench:
        """Give the bench for the coach as something leaves it."""
        return replace(self.bench, state=trace.end)


@dataclass(frozen=True, slots=True)
class OrdersCompared:
    """What became of the orders that were tried.

    Attributes:
        nearest: nearest first, as planned.
        farthest: the same outlets the other way round.
        best, worst: the ends of what was tried: fewest outlets left short, then least volume; and
            most of both.
        tried: how many orders were tried, nearest first among them [1].
        better: how many of those take less than nearest first by more than ``ALIKE`` [1].
        worse: how many take more by as much [1].
        all_tried: whether there are no other orders.
    """

    nearest: Walk
    farthest: Walk
    best: Walk
    worst: Walk
    tried: int
    better: int
    worse: int
    all_tried: bool

    @property
    def saving_m3(self) -> float:
        """What the best order found takes less than nearest first [m3]."""
        return self.nearest.volume_m3 - self.best.volume_m3

    @property
    def key(self) -> OrderKey:
        """Key of its sentence."""
        if len(self.nearest.order) < 2:  # noqa: PLR2004 - two make an order
            return "one outlet"
        if self.nearest.short != self.best.short:
            return "another order clears more"
        if self.saving_m3 > max(WORTH_M3, ALIKE * self.nearest.volume_m3):
            return "another order saves"
        return "nearest first will do"

    @property
    def params(self) -> Mapping[str, float | str]:
        """What its sentence needs."""
        return {
            "nearest_m3": self.nearest.volume_m3,
            "farthest_m3": self.farthest.volume_m3,
            "best_m3": self.best.volume_m3,
            "worst_m3": self.worst.volume_m3,
            "saving_m3": max(self.saving_m3, 0.0),
            "tried": float(self.tried),
            "better": float(self.better),
            "nearest_short": float(len(self.nearest.short)),
            "best_short": float(len(self.best.short)),
        }


def ready_to_fill(card: Card, product: Product, low_degC: float) -> Round:
    """Do a pump job up to the running pump.

    Args:
        card: the coach's card.
        product: what it is filled with.
        low_degC: design low [degC].

    Returns:
        The coach, ready to be filled.

    Raises:
        ChoiceError: the coach has no pump that could draw antifreeze.
    """
    network = in_strides(build_network(card, CAREFUL))
    job = pump_job(card, network, product)
    state = replay(network, arriving_state(network), actions_of(steps_before_filling(job))).end
    source = network.sources[job.enters_by.source]
    through = network.controls[job.enters_by.control].part
    order = walking_order(network, state, source.node)
    nearest = tuple(o for o in order if network.controls[o].part != through)
    return Round(job, Bench(card, network, state, low_degC, product), nearest)


def compare_orders(
    ready: Round,
    outlets: tuple[str, ...] | None = None,
    *,
    shuffled: int = SHUFFLED,
    most_runs: int = MOST_RUNS,
    all_of_them: int = ALL_OF_THEM,
) -> OrdersCompared:
    """Compare running the outlets nearest first with the best and worst orders found.

    Args:
        ready: the coach, ready to be filled.
        outlets: controls of some outlets, where not all are asked about.
        shuffled: how many shuffled orders are tried [1].
        most_runs: after so many runs of one outlet no more swaps are tried [1].
        all_of_them: up to so many orders all are tried [1].

    Returns:
        What was found.

    Raises:
        ChoiceError: one of the outlets is none that is run, or there is none.
    """
    wanted = ready.nearest if outlets is None else outlets
    unknown = [o for o in wanted if o not in ready.nearest]
    if unknown or not wanted:
        message = (
            f"'{', '.join(unknown)}' is no outlet that is run; expected {', '.join(ready.nearest)}"
        )
        raise ChoiceError(message)
    nearest = tuple(o for o in ready.nearest if o in wanted)
    tried = _Tried(Walker(ready.bench, ready.job.product, nearest))
    every = math.factorial(len(nearest)) <= all_of_them
    if every:
        for order in permutations(nearest):
            tried.look_at(order)
    else:
        _search(tried, nearest, shuffled, most_runs)
    return tried.compared(nearest, all_tried=every)


class _Tried:
    """The orders tried so far."""

    def __init__(self, walker: Walker) -> None:
        self.walker = walker
        self.walks: dict[tuple[str, ...], Walk] = {}

    def look_at(self, order: tuple[str, ...], *, anew: bool = False) -> Walk:
        """Work an order out, once; anew where a run of it was taken over from another."""
        if order not in self.walks or (anew and self.walks[order].taken_over):
            self.walks[order] = self.walker.walk(order, anew=anew)
        return self.walks[order]

    def extreme(self, sign: int, *, alone: bool = False) -> Walk:
        """Give the best (1) or worst (-1); alone: of those that took no run over."""
        walks = [walk for walk in self.walks.values() if not (alone and walk.taken_over)]
        return min(walks, key=lambda walk: _signed(walk, sign))

    def compared(self, nearest: tuple[str, ...], *, all_tried: bool) -> OrdersCompared:
        """Sum up; neither end stands on what was taken over from another order."""
        for order in (nearest, nearest[::-1], self.extreme(1).order, self.extreme(-1).order):
            self.look_at(order, anew=True)
        usual = self.walks[nearest]
        best, worst = self.extreme(1, alone=True), self.extreme(-1, alone=True)
        others = [walk for walk in self.walks.values() if walk.order != nearest]
        return OrdersCompared(
            nearest=usual,
            farthest=self.walks[nearest[::-1]],
            best=best,
            worst=worst,
            tried=len(self.walks),
            better=sum(_further(walk, usual, 1) for walk in others),
            worse=sum(_further(walk, usual, -1) for walk in others),
            all_tried=all_tried,
        )


def _search(tried: _Tried, nearest: tuple[str, ...], shuffled: int, most_runs: int) -> None:
    """Try the two plain orders and some shuffled ones, then swap downhill and uphill."""
    chance = random.Random(SEED)  # noqa: S311 - nothing secret hangs on it
    tried.look_at(nearest, anew=True)
    tried.look_at(nearest[::-1], anew=True)
    for _ in range(shuffled):
        tried.look_at(tuple(chance.sample(nearest, len(nearest))))
    for sign, left in ((1, 2), (-1, 1)):
        most = tried.walker.runs + (most_runs - tried.walker.runs) // left
        _swap(tried, sign, most, chance)


def _swap(tried: _Tried, sign: int, most_runs: int, chance: random.Random) -> None:
    """Go from the best order downhill (1), or from the worst uphill (-1), swap by swap."""
    here = tried.extreme(sign)
    pairs = list(combinations(range(len(here.order)), 2))
    chance.shuffle(pairs)
    pairs.sort(key=lambda pair: pair[1] - pair[0])
    fruitless = 0
    for i, j in cycle(pairs):
        if tried.walker.runs >= most_runs or fruitless == len(pairs):
            return
        there = tried.look_at(_swapped(here.order, i, j))
        further = _signed(there, sign) < _signed(here, sign)
        here, fruitless = (there, 0) if further else (here, fruitless + 1)


def _swapped(order: tuple[str, ...], i: int, j: int) -> tuple[str, ...]:
    swapped = list(order)
    swapped[i], swapped[j] = order[j], order[i]
    return tuple(swapped)


def _signed(walk: Walk, sign: int) -> tuple[int, float]:
    short, volume = walk.badness
    return sign * short, sign * volume


def _further(walk: Walk, usual: Walk, sign: int) -> bool:
    """Tell whether a walk is better (1) or worse (-1) than the usual one, and not merely alike."""
    short, volume = len(walk.short) - len(usual.short), walk.volume_m3 - usual.volume_m3
    return sign * short < 0 or (short == 0 and sign * volume < -ALIKE * usual.volume_m3)
