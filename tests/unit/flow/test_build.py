from pathlib import Path

import numpy as np
import pytest

from wintertight.coach.load import load_card
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST, CAREFUL, PLUG, Case
from wintertight.flow.hydraulics import half_turned, pipe_network, steady_flow
from wintertight.flow.losses import EMITTERS, GALLON_PER_MINUTE
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.units import PSI_PA

CARD = load_card(
    Path(__file__).parents[3] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
)
GALLON_M3 = 3.785411784e-3
FOOT_M = 0.3048
PINK = Contents(glycol=0.5)
DRAWING = (
    ("jug-hose", "in the jug"),
    ("jug-valve", "along"),
    ("tank-valve", "across"),
    ("heater-cold-valve", "across"),
    ("heater-hot-valve", "across"),
    ("bypass-valve", "along"),
    ("pump/switch", "on"),
)


def job(case: Case, *, without: str = "") -> Trace:
    """Draw from the jug and run every outlet for two litres, perhaps leaving a setting out."""
    coach = build_network(CARD, case)
    actions = [Action("feed", "jug-hose", contents=PINK)]
    actions += [Action("set", c, s) for c, s in DRAWING if c != without]
    actions += [Action("run", o, until=Until(volume_m3=2e-3)) for o in coach.outlets]
    return replay(coach, arriving_state(coach), actions)


def test_half_inch_line_holds_the_published_volume() -> None:
    """Guards the content of a line against 0.0092 gal a foot, plus up to 6 % for a thin wall."""
    line = build_network(CARD).links["hose"]
    published = 0.92 / 100.0 * GALLON_M3 * 3.0
    assert published < line.volume_m3 < 1.06 * published
    assert line.length_m == pytest.approx(3.0 * FOOT_M)


def test_the_careful_side_holds_more_and_mixes_more() -> None:
    """Guards the three cases: guessed lengths at their upper end, half the runs, and none."""
    best, careful, plug = (build_network(CARD, case) for case in (BEST, CAREFUL, PLUG))
    name = "kitchen-cold"  # 9.4 ft guessed within 25 %, three bends
    assert [n.links[name].runs for n in (best, careful, plug)] == [4, 2, 1]
    assert [n.links[name].holding for n in (best, careful, plug)] == ["runs", "runs", "plug"]
    longer = careful.links[name].volume_m3 / best.links[name].volume_m3
    assert longer == pytest.approx(1.0 + 0.25 * 1.645 / 2.0, abs=2e-3)
    assert careful.links[name].length_m == best.links[name].length_m


def test_every_fitting_has_its_hollow() -> None:
    """Guards sizes the card gives: a heater of six gallons, a filter bowl of nine tenths of a L."""
    coach = build_network(CARD)
    assert coach.links["heater"].volume_m3 == pytest.approx(6.0 * GALLON_M3)
    assert coach.links["filter"].volume_m3 == pytest.approx(0.9e-3)
    assert (coach.links["heater"].holding, coach.links["filter"].holding) == ("vessel", "vessel")
    assert coach.pools["gray-tank"].volume_m3 == pytest.approx(32.0 * GALLON_M3)
    assert coach.unmodelled == ()


@pytest.mark.parametrize("kind", EMITTERS)
def test_a_fixture_gives_its_flow_at_its_pressure(kind: str) -> None:
    """Guards each emitter by its own two numbers, in water of 20 degC."""
    from wintertight.flow.losses import emitter_resistance  # noqa: PLC0415 - beside its check

    gallons, psi = EMITTERS[kind]
    head_m = psi * PSI_PA / (998.2 * 9.80665)
    assert np.sqrt(head_m / emitter_resistance(kind)) == pytest.approx(gallons * GALLON_PER_MINUTE)


def test_a_half_turned_valve_resists_more() -> None:
    """Guards the setting half: the valve passes, and its flow is lower."""
    coach = build_network(CARD)
    state = arriving_state(coach)
    for control, setting in (*DRAWING, ("kitchen.cold", "open")):
        state = state.with_setting(control, setting)
    turned = state.with_setting("jug-valve", "half")
    assert half_turned(coach, turned) == {"jug-valve"}
    i = pipe_network(coach).link_ids.index("jug-valve")
    full, half = (steady_flow(coach, s).flow_m3_s[i] for s in (state, turned))
    assert 0.9 * full < half < full


def test_what_nothing_ran_through_is_named() -> None:
    """Guards dead ends: after every outlet has run, exactly these still hold what they held."""
    trace = job(BEST)
    still = {k for k, how in trace.end.treated.items() if how == "as found"}
    assert still == {
        "tank-valve",
        "tank-stub",
        "suction-a",
        "heater",
        "heater-cold-valve",
        "heater-hot-valve",
        "heater-cold-a",
        "heater-cold-b",
        "heater-hot-a",
        "heater-hot-b",
    }
    for link in still:
        assert trace.end.held[link] is trace.start.held[link]
    assert trace.balance.relative_error < 1e-9


@pytest.mark.parametrize("case", [BEST, CAREFUL, PLUG])
def test_contents_stay_between_water_and_product(case: Case) -> None:
    """Guards every content of a whole job: no stronger than the jug, no weaker than water."""
    trace = job(case)
    for moment in trace.moments:
        for held in moment.state.held.values():
            for shares in (held.mean().reshape(1, -1), held.sections()):
                assert shares.min() > -1e-9
                assert shares[:, 0].max() < 0.5 + 1e-9
    assert trace.balance.relative_error < 1e-9


@pytest.mark.parametrize("left_out", ["heater-hot-valve", "heater-cold-valve"])
def test_one_heater_valve_left_open_is_a_dead_end(left_out: str) -> None:
    """Guards that one forgotten heater valve keeps its water beside the way of the rest."""
    trace = job(PLUG, without=left_out)
    run = next(m.outcome.run for m in trace.moments if m.action.part == "shower.hot")
    assert run is not None
    assert run.strength == pytest.approx(1.0)
    assert trace.end.mean("heater").water == pytest.approx(1.0)


def test_both_heater_valves_open_never_clear() -> None:
    """Guards the wrong valves: the hot side stays weak for as long as the heater holds water."""
    coach = build_network(CARD, PLUG)
    actions = [Action("feed", "jug-hose", contents=PINK)]
    actions += [Action("set", c, s) for c, s in DRAWING if not c.startswith("heater")]
    actions += [Action("run", "shower.hot", until=Until(run_on_s=60.0))]
    run = replay(coach, arriving_state(coach), actions).moments[-1].outcome.run
    assert run is not None
    assert run.first_colour_s is not None
    assert 0.3 < run.strength < 0.9
