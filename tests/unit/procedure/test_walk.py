from dataclasses import replace
from itertools import permutations

import pytest

from tests.unit.procedure.ready_coach import FEW, planned_in_small_strides, ready, volume_of
from wintertight.flow.actions import Action
from wintertight.flow.replay import replay
from wintertight.flow.until import Until
from wintertight.procedure.orders import Round
from wintertight.procedure.walk import Walk, Walker

pytestmark = pytest.mark.long

SECONDS_APART = 2.0
"""How far two ways of finding a run-on may lie apart [s]: the planner stops with a chunk, which
takes nearly a second, and rounds up; and one in eight from sixteen seconds on."""


def walker(of: Round) -> Walker:
    """Give a walker that has not gone round yet."""
    return Walker(of.bench, of.job.product, of.nearest)


@pytest.mark.parametrize("name", ["small-trailer", "middle-travel-trailer"])
def test_a_walk_is_what_the_planner_finds(name: str) -> None:
    """Guards the large strides: run-on and volume against the planner, which uses small ones."""
    of = ready(name)
    walk = walker(of).walk(of.nearest)
    planned = planned_in_small_strides(of, of.nearest)
    assert list(walk.short) == [plan.outlet for plan in planned if not plan.clears]
    for outlet, mine, plan in zip(of.nearest, walk.run_on_s, planned, strict=True):
        apart = max(SECONDS_APART, plan.run_on_s / 8.0)
        assert mine == pytest.approx(plan.run_on_s, abs=apart), outlet
    assert walk.volume_m3 == pytest.approx(volume_of(planned), rel=0.06)


def test_orders_rank_as_the_planner_ranks_them() -> None:
    """Guards that of 24 orders no two far apart change places against the planner."""
    of, some = ready(), FEW[1:]
    mine = walker(of)
    walks = {order: mine.walk(order).volume_m3 for order in permutations(some)}
    plans = {order: volume_of(planned_in_small_strides(of, order)) for order in walks}
    far = 0.2e-3  # two seconds of a tap: what two run-ons that are rounded apart come to
    pairs = [(a, b) for a, b in permutations(walks, 2) if plans[a] < plans[b] - far]
    assert pairs
    assert all(walks[a] < walks[b] for a, b in pairs)


def test_its_run_on_done_by_the_engine_is_the_walk() -> None:
    """Guards volume and seconds against a replay of the very same seconds in one go."""
    of = ready()
    walk = walker(of).walk(of.nearest)
    actions = [
        Action("run", o, until=Until(run_on_s=s))
        for o, s in zip(walk.order, walk.run_on_s, strict=True)
    ]
    runs = [m.outcome.run for m in replay(of.bench.network, of.bench.state, actions).moments]
    assert sum(run.volume_m3 for run in runs if run) == pytest.approx(walk.volume_m3, rel=5e-3)
    assert sum(run.seconds for run in runs if run) == pytest.approx(walk.seconds, rel=5e-3)


def test_what_is_taken_over_changes_little() -> None:
    """Guards that an order worked out after many others comes out as it does alone."""
    of = ready()
    used = walker(of)
    orders = [of.nearest, of.nearest[::-1], of.nearest[3:] + of.nearest[:3]]
    orders += [order[1::-1] + order[2:] for order in orders]
    after: list[Walk] = [used.walk(order) for order in orders]
    assert sum(walk.taken_over for walk in after) > 0
    for order, walk in zip(orders, after, strict=True):
        alone = walker(of).walk(order)
        assert alone.taken_over == 0
        assert walk.volume_m3 == pytest.approx(alone.volume_m3, rel=0.01)
        assert walk.short == alone.short


def test_anew_takes_nothing_over() -> None:
    """Guards that what is worked out anew stands on no other order."""
    of = ready()
    used = walker(of)
    first, again = used.walk(FEW), used.walk(FEW, anew=True)
    assert used.walk(FEW).taken_over == len(FEW)
    assert again.taken_over == 0
    assert again.volume_m3 == first.volume_m3


def test_a_line_left_weak_outranks_gallons() -> None:
    """Guards that an order is never better for what it leaves undone."""
    whole = Walk(("a", "b"), (3.0, 3.0), (), 2e-3, 20.0)
    assert whole.badness < replace(whole, short=("b",), volume_m3=1e-3).badness
