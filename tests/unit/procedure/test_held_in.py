from dataclasses import replace

import numpy as np
import pytest

from tests.unit.procedure.demo_coach import SMALL, card, planned
from wintertight.coach.tubing import bore
from wintertight.procedure.drawn import PRINTED_WITHIN, draw
from wintertight.procedure.held_in import ENOUGH, HeldIn, with_scatter
from wintertight.procedure.plan import Plan


def safe(plan: Plan) -> set[str]:
    """Give the parts a plan calls safe."""
    return {part.id for part in plan.parts if part.safe is True}


@pytest.mark.parametrize("degF", [20.0, -10.0, -20.0, -30.0])
def test_what_is_called_safe_holds_in_enough_draws(degF: float) -> None:
    """Guards the rule: safe on the careful side, and in nineteen of twenty draws."""
    plan = planned(degF, text=SMALL)
    assert all(plan.held_in.parts[part] >= ENOUGH for part in safe(plan))
    assert set(plan.held_in.parts) == {part.id for part in plan.parts}


def test_too_few_draws_make_a_part_unproven() -> None:
    """Guards that the scatter reaches the verdict, and only of parts that are called safe."""
    plan = planned(text=SMALL)
    few: HeldIn = replace(plan.held_in, parts={part.id: 0.94 for part in plan.parts})
    weak = replace(few, too_weak=frozenset({"kitchen-cold"}))
    parts = {part.id: part for part in with_scatter(plan.parts, weak)}
    assert parts["kitchen-hot"].safe is None
    assert parts["kitchen-hot"].claim == "unproven"
    assert parts["kitchen-hot"].reason == "too few draws"
    assert parts["kitchen-hot"].params == {"held_in": 0.94}
    assert parts["kitchen-cold"].reason == "product may be weaker"
    assert with_scatter(plan.parts, plan.held_in) == plan.parts


def test_a_product_at_its_limit_is_not_proven() -> None:
    """Guards the product's own scatter: at -30 degF 35 % suffices on paper, with nothing over."""
    plan = planned(-30.0, text=SMALL)
    assert plan.verdict == "unproven"
    assert {p.reason for p in plan.parts if p.safe is None} == {"product may be weaker"}


def test_draws_are_counted_for_the_whole_coach() -> None:
    """Guards the count: all parts at once hold in no more draws than the weakest of them."""
    held = planned().held_in
    assert 0 < held.coach <= held.draws * held.parts[held.weakest]
    assert held.parts[held.weakest] == min(held.parts[part] for part in safe(planned()))
    assert held.left.p05 < held.left.p50 < held.left.p95


def test_unknown_composition_is_not_drawn() -> None:
    """Guards that a product known by its rating only gets no credit and no doubt from draws."""
    plan = planned(-10.0, "thrift", SMALL)
    assert set(plan.held_in.parts.values()) == {0.0, 1.0}


def test_bores_stay_within_their_tolerance() -> None:
    """Guards that a wall lies between the thinnest and the thickest the standard allows."""
    plain = card(SMALL)
    drawn, tube = draw(plain, 500), bore("1/2", "PEX")
    line = next(one for one in plain.lines if one.size == "1/2" and one.bore is None)
    assert drawn.bores_m[line.id].max() <= tube.largest_bore_m
    assert drawn.bores_m[line.id].min() >= tube.outside_m - 2.0 * tube.thickest_wall_m
    assert drawn.bores_m[line.id].mean() == pytest.approx(tube.middle_bore_m, rel=0.005)
    lengths = drawn.lines[line.id] * (tube.largest_bore_m / drawn.bores_m[line.id]) ** 2
    assert lengths.mean() == pytest.approx(1.0, abs=3.0 * line.length.spread / 2.0 / 500**0.5)


def test_product_and_mixing_scatter_as_they_are_said_to() -> None:
    """Guards two standard deviations of a label, and runs from half to all."""
    drawn = draw(card(SMALL), 4000)
    assert drawn.product.std() == pytest.approx(PRINTED_WITHIN / 2.0, rel=0.05)
    assert np.quantile(drawn.mixing, [0.0, 0.5, 1.0]) == pytest.approx([0.0, 0.5, 1.0], abs=0.03)
