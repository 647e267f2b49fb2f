"""A whole coach against EPANET 2.3: flows with each outlet open, fronts, and a split that stays."""

from pathlib import Path

import numpy as np
import pytest

from tests.conftest import Published
from tests.engines.coach_twin import (
    PINK,
    WATER_M2_S,
    crossed_s,
    fallen_out,
    fronts_there,
)
from tests.engines.epanet_twin import crossing_time, epanet_flow
from wintertight.coach.load import load_card
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.hydraulics import passes, pipe_network, steady_flow
from wintertight.flow.state import State, arriving_state
from wintertight.flow.stream import RATED

CARD = Path(__file__).parents[2] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
AGREEMENT = 1e-6  # of the largest flow; a hundred times closer than a coach needs
FRONT_S = 0.1
LONGEST_S = 60.0
DRAWING = {
    "jug-hose": "in the jug",
    "jug-valve": "along",
    "tank-valve": "across",
    "pump/switch": "on",
    "heater-cold-valve": "across",
    "heater-hot-valve": "across",
    "bypass-valve": "along",
}
BOTH_WAYS = {"heater-cold-valve": "along", "heater-hot-valve": "along"}
COACH = build_network(load_card(CARD), PLUG)


def standing(*outlets: str, **also: str) -> State:
    """Give the coach drawing from the jug past its heater, with some outlets open."""
    state = arriving_state(COACH)
    opened = {c: setting for o in outlets for c, setting in COACH.outlets[o].opens}
    settings = {**DRAWING, **{k.replace("_", "-"): v for k, v in also.items()}, **opened}
    for control, setting in settings.items():
        state = state.with_setting(control, setting)
    return state.with_feed("jug-hose", PINK)


def test_the_coach_has_twelve_outlets() -> None:
    """Guards that the comparison below covers every outlet there is."""
    assert len(COACH.outlets) == 12


@pytest.mark.parametrize("outlet", COACH.outlets)
def test_flows_agree_with_each_outlet_open(
    outlet: str, published: Published, tmp_path: Path
) -> None:
    """Guards every flow in the coach, outlet by outlet, against another engine's."""
    state = standing(outlet)
    theirs = epanet_flow(pipe_network(COACH), passes(COACH, state), WATER_M2_S, tmp_path)
    alike = steady_flow(COACH, state, friction="epanet", viscosity_m2_s=WATER_M2_S)
    largest = np.abs(alike.flow_m3_s).max()
    assert largest > 5e-5
    assert np.abs(theirs.flow_m3_s - alike.flow_m3_s).max() <= AGREEMENT * largest
    own = steady_flow(COACH, state, viscosity_m2_s=WATER_M2_S)
    published(
        "epanet",
        f"flow from the demo coach's {outlet}, our friction law [L/min]",
        f"{6e4 * theirs.flow_m3_s.max():.3f}",
        6e4 * own.flow_m3_s.max(),
        tolerance=1e-3,
        why="another law of friction, and a fixture loses far more than its lines",
        place="version 2.3.5",
    )


@pytest.mark.parametrize(
    ("outlets", "also"),
    [
        (("shower.hot",), BOTH_WAYS),
        (("kitchen.hot", "low-hot"), BOTH_WAYS),
        (("outside-shower.hot", "outside-shower.cold"), {}),
        (("shower.hot", "toilet", "kitchen.cold"), {**BOTH_WAYS, "city-inlet/hose": "on"}),
    ],
)
def test_flows_agree_where_they_split(
    outlets: tuple[str, ...], also: dict[str, str], tmp_path: Path
) -> None:
    """Guards flows in loops and to several outlets: heater and bypass open, two sources."""
    state = standing(*outlets, **also)
    theirs = epanet_flow(pipe_network(COACH), passes(COACH, state), WATER_M2_S, tmp_path)
    ours = steady_flow(COACH, state, friction="epanet", viscosity_m2_s=WATER_M2_S)
    largest = np.abs(ours.flow_m3_s).max()
    assert np.abs(theirs.flow_m3_s - ours.flow_m3_s).max() <= AGREEMENT * largest


@pytest.mark.parametrize("outlet", COACH.outlets)
def test_fronts_arrive_when_they_do_there(outlet: str, tmp_path: Path) -> None:
    """Guards the seconds until what is drawn from the jug stands at an outlet, in plug flow."""
    state = standing(outlet)
    seen = fallen_out(COACH, state, outlet, LONGEST_S)
    ours = crossed_s(seen, LONGEST_S)
    times, shares = fronts_there(COACH, state, outlet, ours + 3.0, tmp_path, source="jug-hose")
    theirs = crossing_time(times, shares, 0.5)
    assert 5.0 < ours < LONGEST_S
    assert ours == pytest.approx(theirs, abs=FRONT_S)


def test_the_bypass_open_beside_the_heater_never_clears_there_either(tmp_path: Path) -> None:
    """Guards the share at which an outlet stays while part of it comes from the heater."""
    state = standing("shower.hot", **BOTH_WAYS)
    seen = fallen_out(COACH, state, "shower.hot", 45.0)
    _, shares = fronts_there(
        COACH, state, "shower.hot", 45.0, tmp_path, source="jug-hose", slow=1.0
    )
    ours = float(seen.shares[-1, RATED])
    assert 0.2 < ours < 0.8
    assert ours == pytest.approx(float(shares[-1]), abs=1e-5)
