"""Running outlets one after another, from the first solve to the last drop, in one go.

What differs from one coach to the next comes as numbers; which links lie on whose way, and in which
direction they flow, was found out beforehand (see ``wintertight.flow.course``). Should a link turn
round on the way all the same, that is told, and nothing more is worked out.
"""

import math
from typing import Final

import numpy as np

from wintertight.flow.kernels.carrying import NO_HOLLOW, Ints, carry_along
from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.holding import DISPLACED, RUNS, about, glycol_about
from wintertight.flow.kernels.parcels import SHARES, Array
from wintertight.flow.kernels.rows import Hollows, Laws, Rules, Ways
from wintertight.flow.kernels.runs import begun_runs, mean_runs
from wintertight.flow.kernels.watching import (
    FLOW_M3_S,
    SECONDS,
    VOLUME_M3,
    sample,
    seconds_left,
    watch,
)
from wintertight.flow.steady.newton import UNSETTLED, settle

WENT_WELL: Final = 0
TURNED_ROUND: Final = 1
DID_NOT_SETTLE: Final = 2
OUT_OF_ROOM: Final = 3
"""How it went; out of room is a line that took in more parcels than its response is long."""


@kernel
def pipes_at(
    rows: Array,
    pipe_hollow: Ints,
    still: Array,
    way: Ints,
    size: Array,
    ladder_top: float,
    ladder_logs: Array,
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
) -> Array:
    """Give the rows of ``newton.head_losses`` for pipes, with the viscosity of what they hold.

    Args:
        rows: see ``Laws.pipe_rows``, of these pipes.
        pipe_hollow: what each pipe holds.
        still: share of glycol in a pipe that holds none of the hollows [1].
        way: how each hollow holds.
        size: volume of each [m3].
        ladder_top: see ``Rules``.
        ladder_logs: see there.
        volumes: what each hollow holds.
        shares: what each hollow holds.
        part: what each hollow holds.

    Returns:
        The rows [s/m2], [1].
    """
    pipes = np.empty(rows.shape)
    last = len(ladder_logs) - 1
    for j in range(len(pipe_hollow)):
        i = pipe_hollow[j]
        glycol = still[j]
        if i != NO_HOLLOW:
            glycol = glycol_about(way[i], size[i], volumes[i], shares[i], part[i])
        rung = min(max(glycol / ladder_top * last, 0.0), 1.0 * last)
        below = min(int(rung), last - 1)
        over = rung - below
        log = ladder_logs[below] * (1.0 - over) + ladder_logs[below + 1] * over
        viscosity = math.exp(log)
        pipes[0, j] = rows[0, j] * viscosity
        pipes[1, j] = rows[1, j] / viscosity
        pipes[2, j] = rows[2, j]
    return pipes


@kernel
def turn_to(
    hollow: Ints,
    sign: Array,
    forward: Array,
    hollows: Hollows,
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
) -> None:
    """Let hollows be pushed the way their legs flow; what flowed the other way is turned round."""
    for k in range(len(hollow)):
        i = hollow[k]
        if i == NO_HOLLOW or forward[i] == sign[k]:
            continue
        forward[i] = sign[k]
        if hollows.way[i] == DISPLACED:
            volumes[i], shares[i] = volumes[i][::-1].copy(), shares[i][::-1].copy()
        elif hollows.way[i] == RUNS:
            kept = hollows.kept[hollows.response[i]]
            mean = mean_runs(shares[i], part[i], hollows.parcel_m3[i], hollows.size[i], kept)
            shares[i], part[i] = begun_runs(hollows.size[i], mean)


@kernel
def has_room(
    hollow: Ints, coming_m3: Array, way: Ints, parcel_m3: Array, length: Ints, shares: list[Array]
) -> bool:
    """Tell whether the responses of hollows, of such length, suffice for what comes [m3]."""
    for k in range(len(hollow)):
        i = hollow[k]
        if (
            i != NO_HOLLOW
            and way[i] == RUNS
            and len(shares[i]) + coming_m3[k] / parcel_m3[i] + 2.0 > length[i]
        ):
            return False
    return True


@kernel
def fill_one(
    o: int,
    ways: Ways,
    laws: Laws,
    hollows: Hollows,
    rules: Rules,
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
    responses: list[Array],
    row: Array,
    series: Array,
) -> int:
    """Run one outlet until a rule says stop; give how it went."""
    legs = slice(ways.leg_from[o], ways.leg_from[o + 1])
    links = slice(laws.link_from[o], laws.link_from[o + 1])
    up, down, hollow = ways.up[legs], ways.down[legs], ways.hollow[legs]
    place, sign = ways.place[legs], ways.sign[legs]
    quadratic, one_way, flow = laws.quadratic[links], laws.one_way[links], laws.begin_flow[links]
    heads = laws.loop_head[laws.loop_from[o] : laws.loop_from[o + 1]]
    mesh = laws.mesh[laws.mesh_from[o] : laws.mesh_from[o + 1]].reshape(len(heads), len(flow))
    turned = np.ascontiguousarray(mesh.T)
    pumps = np.ascontiguousarray(laws.pump_rows[:, laws.pump_from[o] : laws.pump_from[o + 1]])
    of_pipes = slice(laws.pipe_from[o], laws.pipe_from[o + 1])
    pipe_rows, pipe_hollow = laws.pipe_rows[:, of_pipes], laws.pipe_hollow[of_pipes]
    way, size, parcel_m3 = hollows.way, hollows.size, hollows.parcel_m3
    length = np.full(len(size), hollows.kept.shape[1], dtype=np.int64)
    no_glycol = np.zeros(len(pipe_hollow))
    is_fed = np.zeros(ways.nodes[o], dtype=np.bool_)
    is_fed[ways.source[o]] = True
    feeds = np.zeros((ways.nodes[o], SHARES))
    feeds[ways.source[o]] = rules.feed
    colour = rules.shows * (rules.feed[0] + rules.feed[1] + rules.feed[2])
    limit_m3 = rules.limit_m3
    for k in range(len(hollow)):
        if hollow[k] != NO_HOLLOW:
            limit_m3 += size[hollow[k]]
    while True:
        pipes = pipes_at(
            pipe_rows,
            pipe_hollow,
            no_glycol,
            way,
            size,
            rules.ladder_top,
            rules.ladder_logs,
            volumes,
            shares,
            part,
        )
        flow, _, steps, _ = settle(
            mesh, turned, heads, flow, laws.friction, pipes, quadratic, pumps, one_way, 0.0
        )
        if steps == UNSETTLED:
            return DID_NOT_SETTLE
        along = flow[place] * sign
        if np.min(along) <= 0.0:
            return TURNED_ROUND
        row[FLOW_M3_S] = along[ways.spout[o]]
        left = seconds_left(row, rules.limit_s[o], limit_m3, rules.run_on_s[o])
        if left <= 0.0:
            return WENT_WELL
        seconds = min(left, rules.chunk_m3 / row[FLOW_M3_S])
        if not has_room(hollow, along * seconds, way, parcel_m3, length, shares):
            return OUT_OF_ROOM
        reached, reached_shares = carry_along(
            up,
            down,
            along,
            hollow,
            ways.nodes[o],
            is_fed,
            feeds,
            seconds,
            way,
            size,
            parcel_m3,
            responses,
            volumes,
            shares,
            part,
            False,  # noqa: FBT003 - a compiler of Python knows no keywords
        )
        last = down[ways.spout[o]]
        watch(row, reached[last], reached_shares[last], colour)
        sample(series, row, rules.each_s, reached[last], reached_shares[last])
        row[VOLUME_M3] += reached[last].sum()
        row[SECONDS] += seconds


@kernel
def fill_in_turn(
    ways: Ways,
    laws: Laws,
    hollows: Hollows,
    rules: Rules,
    seen: Array,
    series: Array,
    means: Array,
) -> int:
    """Run outlets one after another.

    Args:
        ways: their legs.
        laws: their laws and loops.
        hollows: what lies on the way, and what it holds at first.
        rules: what is drawn, and when to stop.
        seen: room for what is seen, shape (outlets, ``SEEN``).
        series: room for samples of strength [1], shape (outlets, samples); samples may be 0.
        means: room for the mean shares of each hollow at the end [1], shape (hollows, 4).

    Returns:
        How it went.
    """
    count = len(hollows.size)
    volumes = [np.full(1, hollows.size[i]) for i in range(count)]
    shares = [hollows.first[i : i + 1].copy() for i in range(count)]
    part = [np.zeros(1) for _ in range(count)]
    responses = [hollows.padded[i] for i in hollows.response]
    forward = np.ones(count)
    for i in range(count):
        if hollows.way[i] == RUNS:
            shares[i], part[i] = begun_runs(hollows.size[i], hollows.first[i])
    seen[:] = 0.0
    seen[:, :VOLUME_M3] = np.nan
    for o in range(len(ways.spout)):
        a, b = ways.leg_from[o], ways.leg_from[o + 1]
        turn_to(ways.hollow[a:b], ways.sign[a:b], forward, hollows, volumes, shares, part)
        went = fill_one(
            o, ways, laws, hollows, rules, volumes, shares, part, responses, seen[o], series[o]
        )
        if went != WENT_WELL:
            return went
    for i in range(count):
        means[i] = about(hollows.way[i], hollows.size[i], volumes[i], shares[i], part[i])
    return WENT_WELL
