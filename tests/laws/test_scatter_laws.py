from dataclasses import replace
from functools import cache

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.procedure.demo_coach import SMALL, planned, swapped
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.procedure.drawn import Drawn, draw
from wintertight.procedure.held_in import ENOUGH, HeldIn, held_in
from wintertight.procedure.plan import Plan
from wintertight.proof.judge import Bench, prove_parts

DRAWS = 800
TOLERANCE = 1e-9
"""Strengths are ratios of sums: rounding only."""


def counted(plan: Plan, drawn: Drawn) -> HeldIn:
    """Count the draws in which a plan holds."""
    bench = Bench(plan.card, plan.careful.network, plan.careful.end, plan.low_degC, plan.product)
    parts = prove_parts(bench)
    return held_in(drawn, bench, plan.careful, build_network(plan.card, BEST), parts)


@cache
def usual() -> Drawn:
    """Draw the small coach."""
    return draw(planned(text=SMALL).card, DRAWS)


def spread_out(drawn: Drawn, factor: float) -> Drawn:
    """Give draws that lie so much farther from the best values."""
    return replace(
        drawn,
        lines={part: 1.0 + factor * (some - 1.0) for part, some in drawn.lines.items()},
        pump=1.0 + factor * (drawn.pump - 1.0),
        counting=1.0 + factor * (drawn.counting - 1.0),
        product=factor * drawn.product,
    )


@given(st.floats(-0.02, 0.02), st.floats(0.0, 0.03))
@settings(max_examples=12)
def test_a_stronger_product_never_holds_in_fewer(one: float, more: float) -> None:
    """Guards that a stronger product lowers no part's share of draws."""
    plan, drawn = planned(text=SMALL), usual()
    weak = counted(plan, replace(drawn, product=drawn.product + one))
    strong = counted(plan, replace(drawn, product=drawn.product + one + more))
    assert all(strong.parts[part] >= share for part, share in weak.parts.items())
    assert strong.coach >= weak.coach
    assert strong.left.p05 >= weak.left.p05 - TOLERANCE


@given(st.floats(0.3, 1.2), st.floats(0.0, 1.0))
@settings(max_examples=12)
def test_a_longer_run_on_never_holds_in_fewer(one: float, longer: float) -> None:
    """Guards that counting longer lowers no part's share of draws."""
    plan, drawn = planned(text=SMALL), usual()
    short = counted(plan, replace(drawn, counting=drawn.counting * one))
    long = counted(plan, replace(drawn, counting=drawn.counting * (one + longer)))
    assert all(long.parts[part] >= share for part, share in short.parts.items())
    assert long.left.p05 >= short.left.p05 - TOLERANCE


@given(st.floats(0.1, 1.0), st.floats(0.1, 0.8))
@settings(max_examples=12)
def test_more_spread_never_holds_better(one: float, more: float) -> None:
    """Guards that the five per cent point of what is left falls as less is known."""
    plan, drawn = planned(text=SMALL), usual()
    near, far = (counted(plan, spread_out(drawn, f)) for f in (one, one + more))
    assert far.left.p05 <= near.left.p05 + TOLERANCE


@given(st.sampled_from([60, 80, 99]), st.sampled_from([0.0, -10.0, -20.0]))
@settings(max_examples=4)
def test_a_wild_guess_is_run_on_longer_or_not_proven(spread: int, degF: float) -> None:
    """Guards that a long line nobody has measured is not called safe by its middle value."""
    known = '{ guessed = "9.4 ft", spread = "25 %" }'
    sure = swapped(known, '{ measured = "9.4 ft" }', SMALL)
    wild = swapped(known, f'{{ guessed = "9.4 ft", spread = "{spread} %" }}', SMALL)
    by_measure, by_guess = planned(degF, text=sure), planned(degF, text=wild)
    line = next(part for part in by_guess.parts if part.id == "kitchen-cold")
    run_ons = [
        next(s.run_on_s or 0.0 for s in plan.steps if s.step.outlet == "kitchen.cold")
        for plan in (by_measure, by_guess)
    ]
    assert line.safe is not True or run_ons[1] > run_ons[0]
    assert line.safe is not True or by_guess.held_in.parts[line.id] >= ENOUGH
    as_if_measured = counted(by_measure, draw(by_guess.card))
    assert as_if_measured.parts[line.id] < by_guess.held_in.parts[line.id]
