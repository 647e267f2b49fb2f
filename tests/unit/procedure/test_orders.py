import time
from itertools import permutations

import pytest

from tests.unit.procedure.demo_coach import PINK, SMALL, card, planned
from tests.unit.procedure.ready_coach import (
    FEW,
    LOW,
    planned_in_small_strides,
    ready,
    volume_of,
)
from wintertight.errors import ChoiceError
from wintertight.procedure.orders import (
    ALIKE,
    ALL_OF_THEM,
    WORTH_M3,
    OrdersCompared,
    compare_orders,
    ready_to_fill,
)
from wintertight.procedure.walk import Walk, Walker

pytestmark = pytest.mark.long


def walk(litres: float, *short: str) -> Walk:
    """Give an order that takes so many litres."""
    return Walk(("a", "b"), (3.0, 3.0), short, litres * 1e-3, 60.0)


def compared(nearest: Walk, best: Walk) -> OrdersCompared:
    """Give a comparison with made-up ends."""
    return OrdersCompared(nearest, nearest, best, nearest, 9, 1, 0, all_tried=False)


def test_few_outlets_are_tried_in_every_order() -> None:
    """Guards both ends against every order, each worked out alone by a walker of its own."""
    of, some = ready(), FEW[:3]
    alone = {
        order: Walker(of.bench, PINK, of.nearest).walk(order).volume_m3
        for order in permutations(some)
    }
    found = compare_orders(of, some)
    assert found.all_tried
    assert found.tried == len(alone)
    assert found.best.volume_m3 == pytest.approx(min(alone.values()), rel=2e-3)
    assert found.worst.volume_m3 == pytest.approx(max(alone.values()), rel=2e-3)
    usual = alone[some]
    assert found.better == sum(v < usual * (1.0 - ALIKE) for v in alone.values())
    assert found.worse == sum(v > usual * (1.0 + ALIKE) for v in alone.values())


def test_the_search_finds_what_all_orders_hold() -> None:
    """Guards the search against all 120 orders of five outlets: it tries a third and comes near."""
    of = ready()
    every = compare_orders(of, FEW)
    searched = compare_orders(of, FEW, all_of_them=0, most_runs=100)
    assert every.all_tried
    assert every.tried == ALL_OF_THEM
    assert not searched.all_tried
    assert searched.tried < ALL_OF_THEM // 2
    assert every.best.volume_m3 - 1e-5 <= searched.best.volume_m3
    assert searched.worst.volume_m3 <= every.worst.volume_m3 + 1e-5
    spread = every.worst.volume_m3 - every.best.volume_m3
    assert spread > ALIKE * every.best.volume_m3
    assert searched.best.volume_m3 - every.best.volume_m3 < 0.25 * spread


def test_what_the_best_order_saves_is_saved_in_small_strides() -> None:
    """Guards a saving that is told against the planner, which uses the small strides of a plan."""
    of = ready("no-bypass-trailer")
    found = compare_orders(of)
    assert found.key == "another order saves"
    usual, best = (
        volume_of(planned_in_small_strides(of, one.order)) for one in (found.nearest, found.best)
    )
    assert usual - best == pytest.approx(found.saving_m3, abs=ALIKE * usual)
    assert usual - best > 0.5 * found.saving_m3


def test_more_searching_is_never_worse() -> None:
    """Guards that the ends move apart only as more orders are tried."""
    of = ready()
    little, more = (compare_orders(of, most_runs=runs) for runs in (0, 120))
    assert more.tried > little.tried
    assert more.best.volume_m3 <= little.best.volume_m3 + 1e-5
    assert more.worst.volume_m3 >= little.worst.volume_m3 - 1e-5


def test_asked_twice_it_answers_alike() -> None:
    """Guards that nothing is left to chance."""
    of = ready()
    assert compare_orders(of, most_runs=60) == compare_orders(of, most_runs=60)


def test_the_ends_hold_every_order_that_is_named() -> None:
    """Guards that nearest and farthest first lie between the best and the worst."""
    found = compare_orders(ready())
    for one in (found.nearest, found.farthest):
        assert found.best.badness <= one.badness <= found.worst.badness
        assert sorted(one.order) == sorted(found.best.order) == sorted(found.worst.order)
    assert found.farthest.order == found.nearest.order[::-1]
    assert found.nearest.order == ready().nearest
    assert found.best.taken_over == found.worst.taken_over == 0


def test_a_large_coach_takes_no_longer_than_fifteen_walks() -> None:
    """Guards the time on the full fifth wheel, by one walk worked out alone in the same run."""
    # Such a walk takes a third of a second on a quiet core, so fifteen take five seconds.
    of = ready("full-fifth-wheel")
    begun = time.process_time()
    Walker(of.bench, PINK, of.nearest).walk(of.nearest)
    alone_s = time.process_time() - begun
    found = compare_orders(of)
    assert time.process_time() - begun < 16.0 * alone_s
    assert found.tried > 15


@pytest.mark.parametrize(
    ("nearest", "best", "key"),
    [
        (walk(5.0), walk(4.9), "nearest first will do"),
        (walk(5.0), walk(5.0 - 1e3 * WORTH_M3 - 0.1), "another order saves"),
        (walk(5.0, "a"), walk(6.0), "another order clears more"),
    ],
)
def test_what_is_worth_a_word(nearest: Walk, best: Walk, key: str) -> None:
    """Guards that a spoonful is no news, a quart is, and a line left weak before any gallons."""
    found = compared(nearest, best)
    assert found.key == key
    assert found.params["saving_m3"] == max(0.0, nearest.volume_m3 - best.volume_m3)


def test_one_outlet_has_no_order() -> None:
    """Guards that a single outlet is compared with nothing."""
    found = compare_orders(ready(), FEW[:1])
    assert (found.key, found.tried, found.better, found.worse) == ("one outlet", 1, 0, 0)


@pytest.mark.parametrize("some", [("nothing",), ()])
def test_only_outlets_that_are_run_can_be_asked_about(some: tuple[str, ...]) -> None:
    """Guards that a slip of the pen is named, with what there is."""
    with pytest.raises(ChoiceError, match=r"is no outlet that is run; expected kitchen\.cold"):
        compare_orders(ready(), some)


def test_the_order_is_the_planners() -> None:
    """Guards that nearest first is what a plan of the same coach does."""
    plan = planned(text=SMALL)
    order = ready_to_fill(card(SMALL), PINK, LOW).nearest
    assert list(order) == [s.step.outlet for s in plan.steps if s.step.outlet]
