"""How long the strides of a run are, and why it ends."""

from typing import Final

import numpy as np

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.kernels.parcels import DUST_M3, Array
from wintertight.flow.kernels.rows import Pace, Stop
from wintertight.flow.kernels.watching import COLOUR_S, FLOW_M3_S, VOLUME_M3, seconds_left

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
    """Tell whether any flow has another direction, or begins or ceases to count.

    Args:
        before: flows before [m3/s].
        now: the same flows now [m3/s].
        still_m3_s: a flow up to this counts for nothing [m3/s].
    """
    for k in range(len(before)):
        was = 0 if abs(before[k]) <= still_m3_s else (1 if before[k] > 0.0 else -1)
        is_now = 0 if abs(now[k]) <= still_m3_s else (1 if now[k] > 0.0 else -1)
        if was != is_now:
            return True
    return False


@kernel
def next_stride(
    at: Array, watched: Array, whole_m3_s: float, pace: Pace, stop: Stop
) -> tuple[int, float]:
    """Give why there is no further stride, or ``GO_ON`` and how long the next one takes.

    Args:
        at: how far the run is, shape (``PROGRESS``,).
        watched: row of the outlet that is watched, shape (``SEEN``,).
        whole_m3_s: flow out of all outlets [m3/s].
        pace: how long strides are.
        stop: when to stop.

    Returns:
        Why, and seconds [s].
    """
    left = seconds_left(watched, stop.limit_s, stop.limit_m3, stop.run_on_s)
    if left <= 0.0:
        return STOPPED, left
    # Where only other outlets flow, this one would never reach its limit.
    dead = np.isinf(left) and watched[FLOW_M3_S] == 0.0
    if dead or at[DRAWN_M3] >= stop.drawn_m3 - DUST_M3:
        return GIVEN_UP, left
    seconds = left
    if whole_m3_s > 0.0:
        seconds = min(seconds, (stop.drawn_m3 - at[DRAWN_M3]) / whole_m3_s / at[PACE])
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
