"""Letting open outlets run on for as long as every link keeps its way.

One call moves fluid on, looks at the flow anew, and so on, until a rule says stop. What needs the
whole coach is told and left to the caller: a link that turns round, a valve that opens or shuts by
itself, flows that do not settle (see ``wintertight.flow.running``).
"""

import numpy as np

from wintertight.flow.kernels.carrying import carry_along
from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.filling import has_room, pipes_at
from wintertight.flow.kernels.packing import fallen, packed, unpacked
from wintertight.flow.kernels.parcels import SHARES, Array
from wintertight.flow.kernels.rows import Fallen, Filled, Legs, Pace, Packed, Stop, Underway
from wintertight.flow.kernels.striding import (
    ASK,
    BEYOND_M3,
    DRAWN_M3,
    GO_ON,
    LOOK,
    MORE_ROOM,
    MOVED,
    PACE,
    STOPPED,
    closing_in,
    is_over,
    next_stride,
    paced,
    turned_round,
)
from wintertight.flow.kernels.watching import COLOUR_S, FLOW_M3_S, SECONDS, VOLUME_M3, watch
from wintertight.flow.steady.circuit import Circuit, heads_in, standing_wrongly
from wintertight.flow.steady.newton import UNSETTLED, settle


@kernel
def looked(
    circuit: Circuit,
    flow: Array,
    whole_m3_s: float,
    legs: Legs,
    filled: Filled,
    pace: Pace,
    run: Underway,
) -> tuple[bool, Array]:
    """Find the flow anew on the same loops.

    Args:
        circuit: loops and laws.
        flow: of each carrying link up to now [m3/s].
        whole_m3_s: out of all outlets up to now [m3/s].
        legs: the links that flow.
        filled: what the hollows on the way are.
        pace: what the flow hangs on.
        run: the run; its next stride is changed in place.

    Returns:
        Whether every link keeps its way, and the flows [m3/s].
    """
    pipes = pipes_at(
        circuit.pipe_rows,
        legs.pipe_hollow,
        legs.pipe_glycol,
        filled.way,
        filled.size,
        pace.ladder_top,
        pace.ladder_logs,
        run.volumes,
        run.shares,
        run.part,
    )
    begin = circuit.tree_flow + flow[circuit.chords] @ circuit.loops
    now, lost, steps, _ = settle(
        circuit.loops,
        circuit.loops_turned,
        circuit.loop_head,
        begin,
        pace.friction,
        pipes,
        circuit.quadratic,
        circuit.pump_rows,
        circuit.one_way,
        0.0,
    )
    if steps == UNSETTLED or turned_round(flow, now, pace.still_m3_s):
        return False, flow
    if standing_wrongly(circuit, now, heads_in(circuit, lost)).any():
        return False, flow
    if pace.longest_m3 > 0.0:
        whole_now = (now[legs.place] * legs.sign)[legs.outs].sum()
        paced(run.at, whole_m3_s, whole_now, pace.chunk_m3, pace.longest_m3)
    return True, now


@kernel
def move(
    legs: Legs, filled: Filled, pace: Pace, stop: Stop, along: Array, seconds: float, run: Underway
) -> None:
    """Move fluid on for some seconds [s]; the run is changed in place."""
    at_once = seconds * run.at[PACE]  # at the flow as it stands
    reached, reached_shares = carry_along(
        legs.up,
        legs.down,
        along,
        legs.hollow,
        legs.nodes,
        legs.is_fed,
        legs.feeds,
        at_once,
        filled.way,
        filled.size,
        filled.parcel_m3,
        run.padded,
        run.volumes,
        run.shares,
        run.part,
        pace.ease,
    )
    for k in range(len(along)):
        if legs.is_fed[legs.up[k]]:
            run.came_m3[legs.up[k]] += along[k] * at_once
    for k in range(len(legs.outs)):
        end = legs.down[legs.outs[k]]
        watch(run.rows[k], reached[end], reached_shares[end], stop.colour)
        run.rows[k, VOLUME_M3] += reached[end].sum()
        run.at[DRAWN_M3] += along[legs.outs[k]] * at_once
        run.fell_volumes.append(reached[end])
        run.fell_shares.append(reached_shares[end])
    run.rows[:, SECONDS] += seconds
    run.at[MOVED] += 1.0


@kernel
def move_to_colour(
    legs: Legs, filled: Filled, pace: Pace, stop: Stop, along: Array, seconds: float, run: Underway
) -> None:
    """Do the same, but hardly further than to where colour shows, if it does meanwhile."""
    had = (run.volumes.copy(), run.shares.copy(), run.part.copy())
    had_at, had_rows, had_came = run.at.copy(), run.rows.copy(), run.came_m3.copy()
    had_fallen = len(run.fell_shares)
    move(legs, filled, pace, stop, along, seconds, run)
    watched = run.rows[stop.watched]
    flow, shown = watched[FLOW_M3_S] / run.at[PACE], watched[COLOUR_S]
    if np.isnan(shown) or (watched[SECONDS] - shown) * flow <= 2.0 * BEYOND_M3:
        return
    for i in range(len(run.volumes)):
        run.volumes[i], run.shares[i], run.part[i] = had[0][i], had[1][i], had[2][i]
    run.at[:] = had_at
    run.rows[:] = had_rows
    run.came_m3[:] = had_came
    while len(run.fell_shares) > had_fallen:
        run.fell_volumes.pop()
        run.fell_shares.pop()
    again = max(shown - watched[SECONDS], 0.0) + BEYOND_M3 / flow
    move(legs, filled, pace, stop, along, again, run)


@kernel
def let_run(
    legs: Legs,
    circuit: Circuit,
    filled: Filled,
    pace: Pace,
    stop: Stop,
    begin_flow: Array,
    at: Array,
    rows: Array,
    came_m3: Array,
) -> tuple[int, Array, Packed, Fallen]:
    """Let outlets run.

    Args:
        legs: the links that flow.
        circuit: loops and laws.
        filled: what the hollows on the way hold.
        pace: how long its strides are.
        stop: when to stop, and at which outlet.
        begin_flow: of each carrying link [m3/s].
        at: how far it is, shape (``PROGRESS``,); changed in place.
        rows: of each outlet that flows, and last one for an outlet that does not, shape
            (outlets + 1, ``SEEN``); changed in place.
        came_m3: what each source gave [m3], by node; changed in place.

    Returns:
        Why it came back, the last flows [m3/s], what the hollows hold, and what fell out of each
        outlet that flows.
    """
    volumes, shares, part, padded, room = unpacked(filled)
    fell_volumes = [np.empty(0) for _ in range(0)]
    fell_shares = [np.empty((0, SHARES)) for _ in range(0)]
    run = Underway(volumes, shares, part, padded, at, rows, came_m3, fell_volumes, fell_shares)
    flow, watched, why = begin_flow, rows[stop.watched], GO_ON
    while why == GO_ON:
        along = flow[legs.place] * legs.sign
        whole = along[legs.outs].sum()
        rows[: len(legs.outs), FLOW_M3_S] = along[legs.outs] * at[PACE]
        why, seconds = next_stride(at, watched, whole, pace, stop)
        if why != GO_ON:
            break
        if not has_room(legs.hollow, along * seconds, filled.way, filled.parcel_m3, room, shares):
            why = MORE_ROOM
            break
        closes_in = closing_in(watched, stop)
        if closes_in:
            move_to_colour(legs, filled, pace, stop, along, seconds, run)
        else:
            move(legs, filled, pace, stop, along, seconds, run)
        if stop.spares_look and not closes_in and is_over(watched, stop):
            why = STOPPED
        elif pace.looks:
            keeps, flow = looked(circuit, flow, whole, legs, filled, pace, run)
            why = GO_ON if keeps else LOOK
        if why == GO_ON and stop.asks and not np.isnan(watched[COLOUR_S]):
            why = ASK
    fell = fallen(fell_volumes, fell_shares, len(legs.outs))
    return why, flow, packed(volumes, shares, part), fell
