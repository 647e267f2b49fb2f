"""Stirred vessels: the exponential of a wash-out, and what a heater left full would cost."""

import math
from dataclasses import replace
from functools import cache
from types import MappingProxyType

import pytest

from tests.conftest import Published
from tests.unit.procedure.demo_coach import DEMO, GALLON_M3, PINK, planned
from wintertight.coach.load import load_card
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.replay import replay
from wintertight.flow.state import WATER, Books, all_held, arriving_state
from wintertight.flow.stream import AIR, RATED
from wintertight.flow.until import Until
from wintertight.fluids.contents import DUST, Contents
from wintertight.procedure.methods.pump_steps import pump_job, steps_before_filling
from wintertight.procedure.phases.draining import washed_through_m3
from wintertight.wording.steps import step_text

FED = Contents(rated=1.0)
STRONG = 0.95
NO_BYPASS = DEMO / "cards" / "no-bypass-trailer.toml"
STRIDE_M3 = 0.5e-3


@pytest.mark.parametrize("volumes", [0.5, 1.0, 2.0, 3.0])
def test_the_filter_housing_of_a_coach_washes_out_exponentially(
    volumes: float, published: Published
) -> None:
    """Guards the housing in the middle of a whole coach against the formula of a stirred tank."""
    coach = build_network(load_card(DEMO / "cards" / "middle-travel-trailer.toml"))
    housing = next(link for link in coach.links.values() if link.part == "filter")
    full = arriving_state(coach, FED)
    watery = full.held[housing.id].copy()
    watery.reset(WATER)
    state = replace(full, held=MappingProxyType({**full.held, housing.id: watery}))
    state = replace(state, books=Books.opened(all_held(state)))
    for control, setting in (("pump/switch", "on"), ("tank-valve", "across")):
        state = state.with_setting(control, setting)
    state = state.with_settings({"jug-valve": "along", "jug-hose": "in the jug"})
    state = state.with_feed("jug-hose", FED)
    run = Action("run", "kitchen.cold", until=Until(volume_m3=volumes * housing.volume_m3))
    left = replay(coach, state, [run]).end.held[housing.id].mean()[RATED]
    published(
        "calculated",
        f"share of the feed in a coach's filter housing after {volumes:g} of its volumes [1]",
        f"{1.0 - math.exp(-volumes):.6f}",
        float(left),
        place="1 - exp(-V/Vt)",
    )


@cache
def drawn(*, emptied: bool) -> tuple[float, float]:
    """Fill the heater of the coach without a bypass from a jug that never ends.

    Returns:
        What was drawn at its first hot tap [gal] until an emptied heater held no air, or one left
        full was strong; and the share of the feed in it then [1].
    """
    # Larger chunks change seconds, not shares.
    card, case = load_card(NO_BYPASS), replace(BEST, chunk_m3=STRIDE_M3)
    coach = build_network(card, case)
    job = pump_job(card, coach, PINK)
    steps = [s for s in steps_before_filling(job) if emptied or s.phase != "drain"]
    actions = [action for step in steps for action in step.actions]
    state = replay(coach, arriving_state(coach), actions).end.with_feed(job.enters_by.source, FED)
    outlet = next(name for name in coach.outlets if name.endswith(".hot"))
    stride = Action("run", outlet, until=Until(volume_m3=STRIDE_M3))
    volume_m3, share = 0.0, 0.0
    while True:
        state = replay(coach, state, [stride]).end
        before, share = share, float(state.held["heater"].mean()[RATED])
        if emptied and state.held["heater"].mean()[AIR] < DUST:
            return (volume_m3 + STRIDE_M3) / GALLON_M3, share
        if not emptied and share >= STRONG:
            last = STRIDE_M3 * (STRONG - before) / (share - before)
            return (volume_m3 + last) / GALLON_M3, STRONG
        volume_m3 += STRIDE_M3


def before_the_heater_gallons() -> float:
    """Give what stands in the lines between the jug and the heater [gal]."""
    coach = build_network(load_card(NO_BYPASS), BEST)
    cold = planned(text=NO_BYPASS.read_text(encoding="utf-8"))
    way = next(s.run.way for s in cold.steps if s.run and (s.step.outlet or "").endswith(".hot"))
    links = [coach.links[name] for name in way]
    ahead = links[: next(i for i, link in enumerate(links) if link.id == "heater")]
    return sum(link.volume_m3 for link in ahead) / GALLON_M3


def test_a_heater_left_full_takes_three_of_its_volumes(published: Published) -> None:
    """Guards the gallons through a six gallon heater, left full and stirred, until it is strong."""
    gallons, _ = drawn(emptied=False)
    published(
        "calculated",
        "antifreeze through a 6 gal heater left full until it holds 95 % of it [gal]",
        f"{6.0 * math.log(20.0):.2f}",
        gallons - before_the_heater_gallons(),
        tolerance=0.1,
        why="what comes in is softened by the bowls and lines before it",
        place="V ln 20",
    )
    published(
        "common-practice",
        "antifreeze drawn to clear a 6 gal heater left full [gal]",
        "20",
        gallons,
        tolerance=2.0,
        why="the trade says about twenty",
    )


def test_a_heater_emptied_first_takes_its_own_content(published: Published) -> None:
    """Guards the gallons of the same heater once it is drained through its plug."""
    gallons, share = drawn(emptied=True)
    published(
        "common-practice",
        "antifreeze drawn to fill a 6 gal heater drained first [gal]",
        "6",
        gallons,
    )
    # The quart below its plug is a twenty-fourth of it; the lines before it add a little water.
    assert 0.90 < share < 1.0 - 1.0 / 24.0
    # As much through a heater left full would leave it at two thirds.
    assert -math.expm1(-gallons / 6.0) < 0.67


@pytest.mark.parametrize(("size", "needed"), [(6.0, "17.97"), (10.0, "29.96"), (16.0, "47.93")])
def test_what_a_heater_of_another_size_would_take(
    size: float, needed: str, published: Published
) -> None:
    """Guards the gallons that the plan tells for each usual size, three volumes less a little."""
    published(
        "calculated",
        f"antifreeze through a {size:g} gal heater left full until 5 % of its water is left [gal]",
        needed,
        washed_through_m3(size * GALLON_M3, 0.05) / GALLON_M3,
        place="V ln 20",
    )
    assert math.exp(-3.0) == pytest.approx(0.0498, abs=5e-5)


def test_the_plan_has_it_emptied_and_says_why() -> None:
    """Guards that a reader whose coach has no bypass is told what leaving the heater full costs."""
    plan = planned(text=NO_BYPASS.read_text(encoding="utf-8"))
    keys = [s.step.key for s in plan.steps]
    assert keys.index("plug out") < keys.index("let it drain") < keys.index("close heater")
    plug = next(s for s in plan.steps if s.step.key == "plug out")
    said = step_text(plug, plan.card)
    assert "left full it would take about 18 gal of antifreeze and still hold 5 % water" in said
    assert "emptied it takes its own 6 gal" in said
    assert "left full" not in " ".join(step_text(s, planned().card) for s in planned().steps)
