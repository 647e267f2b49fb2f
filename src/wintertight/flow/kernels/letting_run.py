"""Letting open outlets run on for as long as every link keeps its way.

One call moves fluid on, looks at the flow anew, and so on, until a rule says stop. What needs the
whole coach is told and left to the caller: a link that turns round, a valve that opens or shuts by
itself, flows that do not settle (see ``wintertight.flow.running``).
"""

from typing import Final

import numpy as np

from wintertight.flow.kernels.carrying import Ints, carry_along
from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.filling import has_room, pipes_at
from wintertight.flow.kernels.parcels import DUST_M3, SHARES, Array
from wintertight.flow.kernels.rows import Fallen, Filled, Legs, Pace, Packed, Stop
from wintertight.flow.kernels.watching import (
    COLOUR_S,
    FLOW_M3_S,
    SECONDS,
    VOLUME_M3,
    seconds_left,
    watch,
)
from wintertight.flow.steady.circuit import Circuit, heads_in, standing_wrongly
from wintertight.flow.steady.newton import UNSETTLED, settle

STOPPED: Final = 0
GIVEN_UP: Final = 1
LOOK: Final = 2
ASK: Final = 3
MORE_ROOM: Final = 4
GO_ON: Final = 5
"""Why it came back: a rule was met; nothing more comes of it; the flow has to be found anew with
the whole coach; the caller wants to be asked; a line takes in more parcels than its response is
long. And that it did not."""

DRAWN_M3: Final = 0
STRIDE_M3: Final = 1
PACE: Final = 2
MOVED: Final = 3
PROGRESS: Final = 4
"""Columns of how far a run is: volume drawn [m3], next stride [m3], flow half way through a stride
over that at its beginning [1], moves made [1]; and how many columns there are."""

STEADY: Final = 0.002
"""Change of the whole flow from one look to the next [1] below which the next stride may double."""

BEYOND_M3: Final = 25e-6
"""Volume by which a long stride goes beyond where colour shows [m3]."""

SLOWEST_PACE: Final = 0.8
"""Least flow half way through a stride, as a share of that at its beginning [1]."""


@kernel
def paced(at: Array, before_m3_s: float, now_m3_s: float, chunk_m3: float, longest: float) -> None:
    """Lengthen the stride while the flow stays as it is, and begin anew when it does not.

    In long strides the flow is taken as it will be half way, if it goes on changing as it did.

    Args:
        at: how far the run is, shape (``PROGRESS``,); changed in place.
        before_m3_s: whole flow at the last look [m3/s].
        now_m3_s: whole flow now [m3/s].
        chunk_m3: the shortest stride [m3].
        longest: the longest one [m3].
    """
    if before_m3_s == 0.0:
        return
    change = now_m3_s / before_m3_s - 1.0
    longer = min(2.0 * at[STRIDE_M3], longest)
    at[STRIDE_M3] = longer if abs(change) < STEADY else chunk_m3
    at[PACE] = min(max(1.0 + 0.5 * change, SLOWEST_PACE), 1.0)


@kernel
def turned_round(before: Array, now: Array, still_m3_s: float) -> bool:
    """Tell whether any flow [m3/s] has another direction, or begins or ceases to count."""
    for k in range(len(before)):
        was = 0 if abs(before[k]) <= still_m3_s else (1 if before[k] > 0.0 else -1)
        is_now = 0 if abs(now[k]) <= still_m3_s else (1 if now[k] > 0.0 else -1)
        if was != is_now:
            return True
    return False


@kernel
def looked(
    circuit: Circuit,
    flow: Array,
    whole_m3_s: float,
    legs: Legs,
    filled: Filled,
    pace: Pace,
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
    at: Array,
) -> tuple[bool, Array]:
    """Find the flow [m3/s] anew on the same loops; tell whether every link keeps its way."""
    pipes = pipes_at(
        circuit.pipe_rows,
        legs.pipe_hollow,
        legs.pipe_glycol,
        filled.way,
        filled.size,
        pace.ladder_top,
        pace.ladder_logs,
        volumes,
        shares,
        part,
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
        paced(at, whole_m3_s, whole_now, pace.chunk_m3, pace.longest_m3)
    return True, now


@kernel
def edges_of(arrays: list[Array]) -> Ints:
    """Give where arrays begin when they lie one behind another, and the end."""
    edges = np.zeros(len(arrays) + 1, dtype=np.int64)
    for i in range(len(arrays)):
        edges[i + 1] = edges[i] + len(arrays[i])
    return edges


@kernel
def packed(volumes: list[Array], shares: list[Array], part: list[Array]) -> Packed:
    """Lay what hollows hold one behind another."""
    volumes_from, shares_from, part_from = edges_of(volumes), edges_of(shares), edges_of(part)
    every_volume = np.empty(volumes_from[-1])
    every_share = np.empty((shares_from[-1], SHARES))
    every_part = np.empty(part_from[-1])
    for i in range(len(volumes)):
        every_volume[volumes_from[i] : volumes_from[i + 1]] = volumes[i]
        every_share[shares_from[i] : shares_from[i + 1]] = shares[i]
        every_part[part_from[i] : part_from[i + 1]] = part[i]
    return Packed(every_volume, volumes_from, every_share, shares_from, every_part, part_from)


@kernel
def fallen(volumes: list[Array], shares: list[Array], outlets: int) -> Fallen:
    """Lay what fell out, outlet after outlet; the lists hold one entry an outlet for each move."""
    edges = np.zeros(outlets + 1, dtype=np.int64)
    for k in range(outlets):
        edges[k + 1] = edges[k]
        for i in range(k, len(volumes), outlets):
            edges[k + 1] += len(volumes[i])
    every_volume, every_share = np.empty(edges[-1]), np.empty((edges[-1], SHARES))
    for k in range(outlets):
        at = edges[k]
        for i in range(k, len(volumes), outlets):
            end = at + len(volumes[i])
            every_volume[at:end] = volumes[i]
            every_share[at:end] = shares[i]
            at = end
    return Fallen(every_volume, every_share, edges)


@kernel
def unpacked(
    filled: Filled,
) -> tuple[list[Array], list[Array], list[Array], list[Array], Ints]:
    """Give volumes, shares and parts of hollows, their responses, and how long these are [1]."""
    count = range(len(filled.size))
    volumes = [filled.volumes[filled.volumes_from[i] : filled.volumes_from[i + 1]] for i in count]
    shares = [filled.shares[filled.shares_from[i] : filled.shares_from[i + 1]] for i in count]
    part = [filled.part[filled.part_from[i] : filled.part_from[i + 1]] for i in count]
    begins, ends = filled.padded_from[filled.response], filled.padded_from[filled.response + 1]
    padded = [filled.padded[begins[i] : ends[i]] for i in count]
    return volumes, shares, part, padded, (ends - begins) // 2


@kernel
def next_stride(
    at: Array, watched: Array, whole_m3_s: float, pace: Pace, stop: Stop
) -> tuple[int, float]:
    """Give why there is none, or ``GO_ON`` and how long the next stride takes [s].

    Args:
        at: how far the run is, shape (``PROGRESS``,).
        watched: row of the outlet that is watched, shape (``SEEN``,).
        whole_m3_s: flow out of all outlets [m3/s].
        pace: how long strides are.
        stop: when to stop.
    """
    left = seconds_left(watched, stop.limit_s, stop.limit_m3, stop.run_on_s)
    if left <= 0.0:
        return STOPPED, left
    # Where only other outlets flow, this one would never reach its limit.
    dead = np.isinf(left) and watched[FLOW_M3_S] == 0.0
    if dead or at[DRAWN_M3] >= stop.drawn_m3 - DUST_M3:
        return GIVEN_UP, left
    seconds = min(left, (stop.drawn_m3 - at[DRAWN_M3]) / whole_m3_s / at[PACE])
    if not stop.at_once and whole_m3_s > pace.still_m3_s:
        seconds = min(seconds, at[STRIDE_M3] / whole_m3_s / at[PACE])
    passed, flow = watched[VOLUME_M3], watched[FLOW_M3_S]
    if closing_in(watched, stop) and flow > 0.0 and passed < stop.expect_m3:
        seconds = min(seconds, (stop.expect_m3 + BEYOND_M3 - passed) / flow)
    return GO_ON, seconds


@kernel
def is_over(watched: Array, stop: Stop) -> bool:
    """Tell whether a rule says stop."""
    return seconds_left(watched, stop.limit_s, stop.limit_m3, stop.run_on_s) <= 0.0


@kernel
def closing_in(watched: Array, stop: Stop) -> bool:
    """Tell whether a stride is to end where colour shows, which it has not yet."""
    return stop.closes_in and bool(np.isnan(watched[COLOUR_S]))


@kernel
def move(
    legs: Legs,
    filled: Filled,
    along: Array,
    seconds: float,
    ease: bool,  # noqa: FBT001 - a compiler of Python knows no keywords
    colour: float,
    padded: list[Array],
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
    at: Array,
    rows: Array,
    came_m3: Array,
    fell_volumes: list[Array],
    fell_shares: list[Array],
) -> None:
    """Move fluid on for some seconds [s]; everything after ``padded`` is changed in place."""
    at_once = seconds * at[PACE]  # at the flow as it stands
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
        padded,
        volumes,
        shares,
        part,
        ease,
    )
    for k in range(len(along)):
        if legs.is_fed[legs.up[k]]:
            came_m3[legs.up[k]] += along[k] * at_once
    for k in range(len(legs.outs)):
        end = legs.down[legs.outs[k]]
        watch(rows[k], reached[end], reached_shares[end], colour)
        rows[k, VOLUME_M3] += reached[end].sum()
        at[DRAWN_M3] += along[legs.outs[k]] * at_once
        fell_volumes.append(reached[end])
        fell_shares.append(reached_shares[end])
    rows[:, SECONDS] += seconds
    at[MOVED] += 1.0


@kernel
def move_on(
    legs: Legs,
    filled: Filled,
    along: Array,
    seconds: float,
    ease: bool,  # noqa: FBT001 - a compiler of Python knows no keywords
    stop: Stop,
    padded: list[Array],
    volumes: list[Array],
    shares: list[Array],
    part: list[Array],
    at: Array,
    rows: Array,
    came_m3: Array,
    fell_volumes: list[Array],
    fell_shares: list[Array],
) -> None:
    """Do the same; a stride that closes in goes hardly further than to where colour shows."""
    watched = rows[stop.watched]
    closes_in = closing_in(watched, stop)
    had_volumes, had_shares, had_part = volumes.copy(), shares.copy(), part.copy()
    had_rows, had_at, had_came, had_fallen = (
        rows.copy(),
        at.copy(),
        came_m3.copy(),
        len(fell_shares),
    )
    for again in range(2):
        move(
            legs,
            filled,
            along,
            seconds,
            ease,
            stop.colour,
            padded,
            volumes,
            shares,
            part,
            at,
            rows,
            came_m3,
            fell_volumes,
            fell_shares,
        )
        flow = watched[FLOW_M3_S] / at[PACE]
        shown = watched[COLOUR_S]
        if again or not closes_in or np.isnan(shown):
            return
        if (watched[SECONDS] - shown) * flow <= 2.0 * BEYOND_M3:
            return
        seconds = max(shown - had_rows[stop.watched, SECONDS], 0.0) + BEYOND_M3 / flow
        for i in range(len(volumes)):
            volumes[i], shares[i], part[i] = had_volumes[i], had_shares[i], had_part[i]
        rows[:] = had_rows
        at[:] = had_at
        came_m3[:] = had_came
        while len(fell_shares) > had_fallen:
            fell_volumes.pop()
            fell_shares.pop()


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
        spares_look = stop.spares_look and not closing_in(watched, stop)
        move_on(
            legs,
            filled,
            along,
            seconds,
            pace.ease,
            stop,
            padded,
            volumes,
            shares,
            part,
            at,
            rows,
            came_m3,
            fell_volumes,
            fell_shares,
        )
        if spares_look and is_over(watched, stop):
            why = STOPPED
        elif pace.looks:
            keeps, flow = looked(
                circuit, flow, whole, legs, filled, pace, volumes, shares, part, at
            )
            why = GO_ON if keeps else LOOK
        if why == GO_ON and stop.asks and not np.isnan(watched[COLOUR_S]):
            why = ASK
    return (
        why,
        flow,
        packed(volumes, shares, part),
        fallen(fell_volumes, fell_shares, len(legs.outs)),
    )
