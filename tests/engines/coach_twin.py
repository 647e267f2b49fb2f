"""A whole coach for EPANET: every hollow as volume of pipe, and fronts as both engines see them."""

from pathlib import Path
from typing import Any

import numpy as np
import numpy.typing as npt

from tests.engines.epanet_twin import UnbalancedError, epanet_fronts
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import pipe_network, steady_flow
from wintertight.flow.kernels.carrying import carry_along
from wintertight.flow.routing import route
from wintertight.flow.state import State
from wintertight.flow.steady import LinkKind, NetworkBuilder, PipeNetwork
from wintertight.flow.stream import RATED, SHARES, Stream, shares_of
from wintertight.fluids.contents import Contents

WATER_M2_S = 1.004e-6
WIDE_M = 0.04  # loses a three-hundredth of what half-inch tube loses
PINK = Contents(rated=1.0)  # moves as water does: its viscosity is not known


def fallen_out(coach: CoachNetwork, state: State, outlet: str, seconds: float) -> Stream:
    """Give what leaves an outlet meanwhile, with the other engine's law of friction."""
    flow = steady_flow(coach, state, friction="epanet", viscosity_m2_s=WATER_M2_S).flow_m3_s
    way = route(coach, flow)
    along, held = flow[way.index] * way.sign, [state.held[link].copy() for link in way.hollows]
    for leg in way.legs:
        if leg.link.id in way.hollows:
            held[way.hollows.index(leg.link.id)].turn(forward=leg.forward)
    feeds = {s.node: shares_of(state.feeds[name]) for name, s in coach.sources.items()}
    coming = dict(zip((leg.link.id for leg in way.legs), along * seconds, strict=True))
    volumes, shares = carry_along(
        way.up,
        way.down,
        along,
        way.hollow,
        len(way.nodes),
        np.array([node in feeds for node in way.nodes]),
        np.array([feeds.get(node, np.zeros(SHARES)) for node in way.nodes]),
        seconds,
        np.array([one.way for one in held]),
        np.array([one.volume_m3 for one in held]),
        np.array([one.parcel_m3 for one in held]),
        [one.response(coming[link]) for link, one in zip(way.hollows, held, strict=True)],
        [one.volumes for one in held],
        [one.shares for one in held],
        [one.part for one in held],
        False,  # noqa: FBT003 - parcels are not joined
    )
    spouts = [k for k in way.outs if way.legs[k].link.id == coach.outlets[outlet].link]
    end = way.down[spouts[0]]
    return Stream(volumes[end], shares[end])


def crossed_s(stream: Stream, seconds: float) -> float:
    """Give when the first parcel of half strength began to leave [s]."""
    first = int(np.flatnonzero(stream.shares[:, RATED] >= 0.5)[0])
    return float(stream.volumes[:first].sum() / stream.volume_m3 * seconds)


def fronts_there(  # noqa: PLR0913 - a run has these inputs
    coach: CoachNetwork,
    state: State,
    outlet: str,
    seconds: float,
    folder: Path,
    *,
    source: str,
    slow: float = 100.0,
) -> tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]]:
    """Give times [s] and the share at an outlet as the other engine sees it."""
    twin = hollow_twin(coach)
    link = coach.outlets[outlet].link
    holds = coach.links[link].holding != "nothing"
    watched = f"after {link}" if holds else coach.links[link].start
    flow = steady_flow(coach, state, friction="epanet", viscosity_m2_s=WATER_M2_S).flow_m3_s
    moving = dict(zip(coach.links, flow != 0.0, strict=True))
    # Its solver does not settle with many wide pipes that carry nothing.
    is_open = np.array([moving[name.removeprefix("hollow ")] for name in twin.link_ids])
    times, seen = settled_fronts(
        twin,
        is_open,
        WATER_M2_S,
        folder,
        supply={coach.sources[source].node: 1.0},
        watch=[watched],
        duration_s=seconds,
        slow=slow,
    )
    return times, seen[watched]


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


def hollow_twin(
    coach: CoachNetwork, *, times: float = 1.0, wide_m: float = WIDE_M, longest_m: float = 1.0
) -> PipeNetwork:
    """Give each link its content as volume of pipe, as another engine knows no other hollow.

    All contents can be made some ``times`` as large, so that the other engine's second is so much
    shorter. What a link's own tube does not hold stands before it, in a pipe ``wide_m`` wide, or
    wider so that it is ``longest_m`` long at most.
    """
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
        holds = times * link.volume_m3 if link.holding != "nothing" else 0.0
        missing = holds - own
        if missing > 1e-12:
            start = f"after {link.id}"
            builder.node(start, float(plain.elevation_m[plain.start[i]]))
            wide.append((f"hollow {link.id}", link.start, start, missing))
        lay_again(builder, plain, i, start, link.end)
    for name, start, end, volume in wide:
        bore = max(wide_m, (4.0 / np.pi * volume / longest_m) ** 0.5)
        length = volume / (np.pi / 4.0 * bore**2)
        builder.pipe(name, start, end, length_m=float(length), bore_m=float(bore))
    return builder.build()


def lay_again(builder: NetworkBuilder, plain: PipeNetwork, i: int, start: str, end: str) -> None:
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
