from functools import cache

import numpy as np
import numpy.typing as npt
import pytest

from tests.unit.procedure.demo_coach import DEMO, PINK, celsius
from tests.unit.procedure.drawn_coach import drawn_replay, drawn_strength
from wintertight.coach.load import load_card
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.procedure.drawn import Drawn, draw
from wintertight.procedure.held_in import HeldIn, held_in
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.run_on import weakest_share
from wintertight.proof.judge import Bench, prove_parts

pytestmark = pytest.mark.long

Array = npt.NDArray[np.float64]

LOW = celsius(-10.0)
HOLDS = 0.5
"""Share of product from which a section is compared [1]: what holds less fails either way."""


def counted(plan: Plan, drawn: Drawn) -> HeldIn:
    """Count the draws in which a plan holds."""
    bench = Bench(plan.card, plan.careful.network, plan.careful.end, plan.low_degC, plan.product)
    best = build_network(plan.card, BEST)
    return held_in(drawn, bench, plan.careful, best, prove_parts(bench))


@cache
def plan_of(coach: str) -> Plan:
    """Plan a coach of the demo."""
    return plan_coach(load_card(DEMO / "cards" / f"{coach}.toml"), PINK, LOW)


@cache
def both(coach: str, draws: int) -> tuple[Array, Array]:
    """Give shares in the weakest sections of all links: by draws, and by a full replay of each."""
    plan, drawn = plan_of(coach), draw(plan_of(coach).card, draws)
    quick = counted(plan, drawn).shares
    full = []
    for i in range(draws):
        held = drawn_replay(plan, drawn, i, trusts_drains=False).end.held
        strength = drawn_strength(plan, drawn, i)
        full.append([weakest_share(held[link], strength) for link in quick])
    return np.array(list(quick.values())).T, np.array(full)


@pytest.mark.parametrize(
    ("coach", "draws"), [("middle-travel-trailer", 25), ("full-fifth-wheel", 10)]
)
def test_draws_agree_with_full_replays(coach: str, draws: int) -> None:
    """Guards what is left in each link against replays of coaches built from the drawn values."""
    # A run-on is counted to a second, which is 0.01 of the weakest sections, and is planned with
    # 0.02 to spare: on the mean the draws must be ten times nearer than a second, and a single
    # link of a single draw within twice the spare. What errs most is on the careful side.
    quick, full = both(coach, draws)
    error = quick - full
    assert abs(error.mean()) < 0.001
    assert np.abs(error).mean() < 0.002
    assert error.max() < 0.02
    assert error.min() > -0.04


@pytest.mark.parametrize("coach", ["middle-travel-trailer", "full-fifth-wheel"])
def test_weak_links_spread_as_full_replays_do(coach: str) -> None:
    """Guards the spread: where replays differ by more than 0.01, so do the draws."""
    quick, full = both(coach, 25 if coach.startswith("middle") else 10)
    wide = full.std(axis=0) > 0.01
    assert wide.sum() >= 10
    assert quick[:, wide].std(axis=0).mean() == pytest.approx(
        full[:, wide].std(axis=0).mean(), rel=0.2
    )
