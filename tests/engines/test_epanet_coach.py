"""A whole coach against EPANET 2.3: flows with each outlet open, fronts, and a split that stays."""

from pathlib import Path
from typing import Any

import numpy as np
import numpy.typing as npt
import pytest

from tests.conftest import Published
from tests.engines.epanet_twin import UnbalancedError, crossing_time, epanet_flow, epanet_fronts
from wintertight.coach.load import load_card
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import passes, pipe_network, steady_flow
from wintertight.flow.routing import carry, route
from wintertight.flow.state import State, arriving_state
from wintertight.flow.steady import LinkKind, NetworkBuilder, PipeNetwork
from wintertight.flow.stream import RATED, Stream, shares_of
from wintertight.fluids.contents import Contents

CARD = Path(__file__).parents[2] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
WATER_M2_S = 1.004e-6
AGREEMENT = 1e-6  # of the largest flow; a hundred times closer than a coach needs
FRONT_S = 0.1
WIDE_M = 0.04  # loses a three-hundredth of what half-inch tube loses
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
PINK = Contents(rated=1.0)  # moves as water does: its viscosity is not known


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
    seen = fallen_out(state, outlet, LONGEST_S)
    ours = crossed_s(seen, LONGEST_S)
    times, shares = fronts_there(state, outlet, ours + 3.0, tmp_path)
    theirs = crossing_time(times, shares, 0.5)
    assert 5.0 < ours < LONGEST_S
    assert ours == pytest.approx(theirs, abs=FRONT_S)


def test_the_bypass_open_beside_the_heater_never_clears_there_either(tmp_path: Path) -> None:
    """Guards the share at which an outlet stays while part of it comes from the heater."""
    state = standing("shower.hot", **BOTH_WAYS)
    seen = fallen_out(state, "shower.hot", 45.0)
    _, shares = fronts_there(state, "shower.hot", 45.0, tmp_path, slow=1.0)
    ours = float(seen.shares[-1, RATED])
    assert 0.2 < ours < 0.8
    assert ours == pytest.approx(float(shares[-1]), abs=1e-5)


def fallen_out(state: State, outlet: str, seconds: float) -> Stream:
    """Give what leaves an outlet meanwhile, with the other engine's law of friction."""
    flow = steady_flow(COACH, state, friction="epanet", viscosity_m2_s=WATER_M2_S).flow_m3_s
    held = {link: content.copy() for link, content in state.held.items()}
    feeds = {s.node: shares_of(state.feeds[name]) for name, s in COACH.sources.items()}
    carried = carry(route(COACH, flow), held, feeds, seconds)
    return carried.fell_out[COACH.outlets[outlet].link]


def crossed_s(stream: Stream, seconds: float) -> float:
    """Give when the first parcel of half strength began to leave [s]."""
    first = int(np.flatnonzero(stream.shares[:, RATED] >= 0.5)[0])
    return float(stream.volumes[:first].sum() / stream.volume_m3 * seconds)


def fronts_there(
    state: State, outlet: str, seconds: float, folder: Path, slow: float = 100.0
) -> tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]]:
    """Give times [s] and the share at an outlet as the other engine sees it."""
    twin = hollow_twin(COACH)
    link = COACH.outlets[outlet].link
    flow = steady_flow(COACH, state, friction="epanet", viscosity_m2_s=WATER_M2_S).flow_m3_s
    moving = dict(zip(COACH.links, flow != 0.0, strict=True))
    # Its solver does not settle with many wide pipes that carry nothing.
    is_open = np.array([moving[name.removeprefix("hollow ")] for name in twin.link_ids])
    times, seen = settled_fronts(
        twin,
        is_open,
        WATER_M2_S,
        folder,
        supply={COACH.sources["jug-hose"].node: 1.0},
        watch=[f"after {link}"],
        duration_s=seconds,
        slow=slow,
    )
    return times, seen[f"after {link}"]


def settled_fronts(
    *args: Any, widenings: tuple[float, ...] = (5.0, 6.0, 8.0, 4.0, 3.0), **kwargs: Any
) -> tuple[npt.NDArray[np.float64], dict[str, npt.NDArray[np.float64]]]:
    """Follow fronts as ``epanet_fronts`` does, with the first widening with which EPANET settles.

    Which one that is hangs on the last digits of the network, the fronts do not.
    """
    *first, last = widenings
    for widening in first:
        try:
            return epanet_fronts(*args, widening=widening, **kwargs)
        except UnbalancedError:
            continue
    return epanet_fronts(*args, widening=last, **kwargs)


def hollow_twin(coach: CoachNetwork) -> PipeNetwork:
    """Give each link its content as volume of pipe, as another engine knows no other hollow."""
    plain = pipe_network(coach)
    builder = NetworkBuilder()
    for i, name in enumerate(plain.node_ids):
        fixed = None if np.isnan(plain.fixed_head_m[i]) else float(plain.fixed_head_m[i])
        builder.node(name, float(plain.elevation_m[i]), fixed_head_m=fixed)
    wide: list[tuple[str, str, str, float]] = []
    for i, link in enumerate(coach.links.values()):
        start = link.start
        pipe = plain.kind[i] == LinkKind.PIPE
        own = np.pi / 4.0 * plain.bore_m[i] ** 2 * plain.length_m[i] if pipe else 0.0
        missing = link.volume_m3 - own if link.holding != "nothing" else 0.0
        if missing > 1e-12:
            start = f"after {link.id}"
            builder.node(start, float(plain.elevation_m[plain.start[i]]))
            wide.append((f"hollow {link.id}", link.start, start, missing))
        _lay(builder, plain, i, start, link.end)
    for name, start, end, volume in wide:
        bore = max(WIDE_M, (4.0 / np.pi * volume) ** 0.5)  # a metre long at most
        length = volume / (np.pi / 4.0 * bore**2)
        builder.pipe(name, start, end, length_m=float(length), bore_m=float(bore))
    return builder.build()


def _lay(builder: NetworkBuilder, plain: PipeNetwork, i: int, start: str, end: str) -> None:
    """Lay one link of a network again, perhaps from another node."""
    name, one_way = plain.link_ids[i], bool(plain.one_way[i])
    if plain.kind[i] == LinkKind.PIPE:
        builder.pipe(
            name,
            start,
            end,
            length_m=float(plain.length_m[i]),
            bore_m=float(plain.bore_m[i]),
            roughness_m=float(plain.roughness_m[i]),
            minor_loss=float(plain.minor_loss[i]),
            one_way=one_way,
        )
    elif plain.kind[i] == LinkKind.PUMP:
        builder.pump(
            name,
            start,
            end,
            shutoff_m=float(plain.pump_shutoff_m[i]),
            coefficient=float(plain.pump_coefficient[i]),
            exponent=float(plain.pump_exponent[i]),
        )
    else:
        builder.loss(
            name, start, end, coefficient=float(plain.loss_coefficient[i]), one_way=one_way
        )
