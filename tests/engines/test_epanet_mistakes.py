"""Wrong settings against EPANET 2.3: shares that stay, mixes that are drawn, flows that cross."""

from collections.abc import Iterable
from dataclasses import replace
from functools import cache
from pathlib import Path

import numpy as np
import pytest

from tests.conftest import Published
from tests.engines.epanet_twin import TwinFlow, epanet_flow
from tests.unit.procedure.demo_coach import planned
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import (
    BAY_DEGC,
    half_turned,
    passes,
    pipe_network,
    steady_flow,
)
from wintertight.flow.replay import replay
from wintertight.flow.state import State, arriving_state, with_outlet_open
from wintertight.flow.until import OutletRun, Until
from wintertight.fluids.transport import kinematic_viscosity
from wintertight.procedure.mistaken import with_mistake
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.plan import Plan

AS_WATER_M2_S = float(kinematic_viscosity(np.zeros(1), BAY_DEGC)[0])
"""A product of unknown composition moves as water does."""

LAW = "another law of friction"
LITRE_MIN = 6e4


@cache
def plan() -> Plan:
    """Plan the coach with a product that moves as water does."""
    return planned(product="thrift")


def the(key: str, circumstance: str = "") -> Mistake:
    """Give one mistake possible at the coach."""
    return next(
        m for m in possible_mistakes(plan()) if (m.key, m.circumstance) == (key, circumstance)
    )


def ready(mistake: Mistake) -> tuple[CoachNetwork, State]:
    """Give the coach in plug flow with a mistake made, its pump on and nothing filled yet."""
    best = build_network(plan().card, PLUG)
    steps, network = with_mistake(plan().steps, best, mistake)
    before = (s for s in steps if s.phase not in {"fill", "finish"})
    done = [a for step in before for a in step.actions]
    return network, replay(network, arriving_state(network), done).end


def there(network: CoachNetwork, state: State, outlet: str, folder: Path) -> TwinFlow:
    """Give the other engine's flows with one outlet open."""
    opened = with_outlet_open(network, state, outlet)
    pipes = pipe_network(network, half_turned(network, opened))
    return epanet_flow(pipes, passes(network, opened), AS_WATER_M2_S, folder)


def along(network: CoachNetwork, flow: TwinFlow, links: Iterable[str]) -> list[float]:
    """Give flows of some links [m3/s]."""
    names = list(network.links)
    return [float(flow.flow_m3_s[names.index(link)]) for link in links]


def run(network: CoachNetwork, state: State, outlet: str, volume_m3: float) -> OutletRun:
    """Run an outlet and give what is seen there."""
    action = Action("run", outlet, until=Until(volume_m3=volume_m3))
    seen = replay(network, state, [action]).moments[-1].outcome.run
    assert seen is not None
    return seen


@pytest.mark.parametrize("outlet", ["shower.hot", "kitchen.hot", "lavatory.hot"])
def test_a_hot_tap_stays_at_the_share_of_the_bypass(
    outlet: str, tmp_path: Path, published: Published
) -> None:
    """Guards the plateau at a hot tap while the full heater stands open beside the bypass."""
    network, state = ready(the("heater left open", "full"))
    bypass, heater = along(
        network, there(network, state, outlet, tmp_path), ("bypass-valve", "heater-hot-valve")
    )
    theirs = abs(bypass) / (abs(bypass) + abs(heater))
    seen = run(network, state, outlet, 10e-3)
    assert 0.5 < theirs < 0.8
    published(
        "epanet",
        f"share of antifreeze at the demo coach's {outlet}, heater full and open by the bypass [1]",
        f"{theirs:.3f}",
        seen.strength,
        tolerance=5e-3,
        why=LAW,
        place="version 2.3.5",
    )


@pytest.mark.parametrize(
    ("mistake", "least", "most"),
    [
        (("inlet half open", "tank valve too"), 0.40, 0.60),
        (("tank valve half open", "full"), 0.60, 0.90),
    ],
)
def test_what_is_drawn_is_the_mix_of_both_suctions(
    mistake: tuple[str, str], least: float, most: float, tmp_path: Path, published: Published
) -> None:
    """Guards the share of antifreeze a pump draws through two valves that stand half way."""
    network, state = ready(the(*mistake))
    jug, tank = along(
        network,
        there(network, state, "kitchen.cold", tmp_path),
        ("jug-valve", "tank-valve"),
    )
    theirs = jug / (jug + tank)
    assert min(jug, tank) > 0.0
    assert least < theirs < most
    seen = run(network, state, "kitchen.cold", 12e-3)
    published(
        "epanet",
        f"share of antifreeze the demo coach draws, {mistake[0]}, {mistake[1]} [1]",
        f"{theirs:.3f}",
        seen.strength,
        tolerance=5e-3,
        why=LAW,
        place="version 2.3.5",
    )


@pytest.mark.parametrize("key", ["shower crossing", "pause button"])
@pytest.mark.parametrize(("outlet", "sign"), [("toilet", 1.0), ("lavatory.hot", -1.0)])
def test_a_shut_head_lets_hot_and_cold_run_together(
    key: str, outlet: str, sign: float, tmp_path: Path, published: Published
) -> None:
    """Guards the way and the size of what crosses a shower: hot to cold at a cold tap, and back."""
    mistake = the(key)
    network, state = ready(mistake)
    handles = (f"{mistake.part}.hot(handle)", f"{mistake.part}.cold(handle)")
    hot, cold = along(network, there(network, state, outlet, tmp_path), handles)
    assert hot == pytest.approx(-cold, rel=1e-4)
    assert sign * hot > 0.1 / LITRE_MIN
    opened = with_outlet_open(network, state, outlet)
    ours = dict(
        zip(
            network.links,
            steady_flow(network, opened, viscosity_m2_s=AS_WATER_M2_S).flow_m3_s,
            strict=True,
        )
    )
    published(
        "epanet",
        f"flow from hot to cold in the demo coach's {mistake.part}, {outlet} open [L/min]",
        f"{LITRE_MIN * hot:.3f}",
        LITRE_MIN * ours[handles[0]],
        tolerance=0.02 * abs(LITRE_MIN * hot),
        why=LAW,
        place="version 2.3.5",
    )


def test_without_the_mistake_nothing_crosses(tmp_path: Path) -> None:
    """Guards the comparison above: with the handles shut both engines let nothing through."""
    network, state = ready(replace(the("pause button"), sets={}))
    handles = ("shower.hot(handle)", "shower.cold(handle)")
    assert along(network, there(network, state, "toilet", tmp_path), handles) == [0.0, 0.0]


def test_the_open_plug_hole_takes_nearly_all_that_is_pumped(
    tmp_path: Path, published: Published
) -> None:
    """Guards how little comes at a tap while the heater's valves are open and its plug is out."""
    network, state = ready(the("heater left open", "plug out"))
    names = (network.outlets["toilet"].link, "heater.cold(hole)", "heater.hot(hole)")
    toilet, *holes = along(network, there(network, state, "toilet", tmp_path), names)
    assert sum(holes) > 20.0 * toilet
    opened = with_outlet_open(network, state, "toilet")
    flows = steady_flow(network, opened, viscosity_m2_s=AS_WATER_M2_S).flow_m3_s
    ours = dict(zip(network.links, flows, strict=True))
    published(
        "epanet",
        "flow out of the demo coach's heater, plug out and valves open [L/min]",
        f"{LITRE_MIN * sum(holes):.2f}",
        LITRE_MIN * sum(ours[name] for name in names[1:]),
        tolerance=0.05,
        why=LAW,
        place="version 2.3.5",
    )
