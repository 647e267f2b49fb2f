"""A route, and what the hollows on it hold, laid out as the rows of numbers that a run takes."""

from collections.abc import Mapping, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from wintertight.flow.case import Case
from wintertight.flow.held import NO_ARRAY, Held, RunsHeld
from wintertight.flow.hydraulics import BAY_DEGC, STILL_M3_S
from wintertight.flow.kernels.carrying import NO_HOLLOW
from wintertight.flow.kernels.rows import Filled, Legs, Pace, Packed, Stop
from wintertight.flow.routing import Route, edges_of
from wintertight.flow.steady.laws import LAWS
from wintertight.flow.steady.loops import LoopPlan
from wintertight.flow.stream import SHARES
from wintertight.flow.until import Until
from wintertight.fluids.transport import viscosity_ladder

if TYPE_CHECKING:
    from wintertight.flow.laminar import SeriesKernel

Array = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

NOTHING = np.zeros(SHARES)
ROOM = 3
"""Parcels for which there is room at any time, beyond those that are coming [1]."""

NO_SHARES = np.zeros((0, SHARES))

CONTENT = ("volumes", "shares", "part")
"""What a hollow holds, by the names of its arrays."""


def legs_of(route: Route, plan: LoopPlan, feeds: Mapping[str, Array], glycol: Array) -> Legs:
    """Lay out the legs of a route.

    Args:
        route: the route.
        plan: the loops on which its flow was found.
        feeds: shares of what each source node gives [1], shape (4,) each.
        glycol: share of glycol in each link [1], in the order of the links.

    Returns:
        The legs.
    """
    holding = np.full(len(glycol), NO_HOLLOW, dtype=np.int64)
    holding[route.index] = route.hollow
    pipes = plan.links[: plan.laws.pipes]
    return Legs(
        up=route.up,
        down=route.down,
        hollow=route.hollow,
        place=plan.place[route.index],
        sign=route.sign,
        outs=route.outs,
        nodes=len(route.nodes),
        is_fed=np.array([node in feeds for node in route.nodes], dtype=np.bool_),
        feeds=np.array([feeds.get(node, NOTHING) for node in route.nodes]),
        pipe_hollow=holding[pipes],
        pipe_glycol=glycol[pipes],
    )


def filled_of(hollows: Sequence[Held], coming_m3: float) -> Filled:
    """Lay out what hollows hold.

    Args:
        hollows: what lies on the way, each turned to the way in which it will be pushed.
        coming_m3: volume for which responses are long enough, beyond what each line took in [m3].

    Returns:
        What they are, and what they hold.
    """
    lengths: dict[SeriesKernel, int] = {}
    for held in hollows:
        if isinstance(held, RunsHeld):
            room = len(held.shares) + int(coming_m3 / held.parcel_m3) + ROOM
            lengths[held.kernel] = max(lengths.get(held.kernel, 0), room)
    row = {kernel: i for i, kernel in enumerate(lengths)}
    padded = [kernel.padded(length) for kernel, length in lengths.items()] or [NO_ARRAY]
    volumes, shares, part = ([getattr(h, name) for h in hollows] for name in CONTENT)
    return Filled(
        way=np.array([h.way for h in hollows], dtype=np.int64),
        size=np.array([h.volume_m3 for h in hollows]),
        parcel_m3=np.array([h.parcel_m3 for h in hollows]),
        response=np.array(
            [row[h.kernel] if isinstance(h, RunsHeld) else 0 for h in hollows], dtype=np.int64
        ),
        padded=np.concatenate(padded),
        padded_from=edges_of(map(len, padded)),
        volumes=np.concatenate((NO_ARRAY, *volumes)),
        volumes_from=edges_of(map(len, volumes)),
        shares=np.concatenate((NO_SHARES, *shares)),
        shares_from=edges_of(map(len, shares)),
        part=np.concatenate((NO_ARRAY, *part)),
        part_from=edges_of(map(len, part)),
    )


def put_back(hollows: Sequence[Held], holds: Packed) -> None:
    """Let hollows hold what a run left in them.

    Args:
        hollows: those that were laid out.
        holds: what they hold now.
    """
    pieces = [
        _cut(holds.volumes, holds.volumes_from),
        _cut(holds.shares, holds.shares_from),
        _cut(holds.part, holds.part_from),
    ]
    for held, volumes, shares, part in zip(hollows, *pieces, strict=True):
        held.put(volumes, shares, part)


def _cut(rows: Array, edges: Ints) -> list[Array]:
    """Cut rows at their edges."""
    return [rows[begin:end] for begin, end in pairwise(edges.tolist())]


@lru_cache(maxsize=64)
def pace_of(case: Case) -> Pace:
    """Say how often the flow is looked at in a coach, as one case takes it."""
    shares, logs = viscosity_ladder(BAY_DEGC)
    longest_m3 = case.longest_chunk_m3
    return Pace(
        chunk_m3=case.chunk_m3,
        longest_m3=longest_m3 or 0.0,
        looks=case.viscosity_m2_s is None,
        ease=longest_m3 is not None,
        still_m3_s=STILL_M3_S,
        friction=LAWS["churchill"],
        ladder_top=float(shares[-1]),
        ladder_logs=logs,
    )


def stop_of(case: Case, until: Until, watched: int, colour: float, *, nothing_to_see: bool) -> Stop:
    """Say when a run stops.

    Args:
        case: the case that the coach was built for.
        until: the rule; its limit is that of all that is drawn.
        watched: row of the outlet that is watched.
        colour: share of antifreeze in the liquid at which colour shows [1].
        nothing_to_see: whether no antifreeze can come.

    Returns:
        The numbers; the caller is not asked on the way.
    """
    in_strides = case.longest_chunk_m3 is not None
    limit_s, limit_m3, run_on_s = until.rules
    return Stop(
        watched=watched,
        colour=colour,
        limit_s=limit_s,
        limit_m3=limit_m3,
        run_on_s=run_on_s,
        drawn_m3=until.limit_m3,
        expect_m3=-1.0 if until.expect_m3 is None else until.expect_m3,
        at_once=nothing_to_see,
        closes_in=in_strides and until.run_on_s is not None and not nothing_to_see,
        spares_look=in_strides,
        asks=False,
    )
