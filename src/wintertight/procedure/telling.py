"""The few outlets whose first colour says most about all the rest.

By where they are, until readings can choose better: the farthest hot and cold tap, the toilet, and
the outside shower (common practice).
"""

from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace

OFTEN_FORGOTTEN = ("gravity toilet", "outside shower")


def telling_outlets(network: CoachNetwork, trace: Trace) -> frozenset[str]:
    """Give the outlets worth a stopwatch.

    Args:
        network: the coach.
        trace: a replay in which each outlet ran.

    Returns:
        Controls of at most four outlets.
    """
    far: dict[str, tuple[float, str]] = {}
    for moment in trace.moments:
        seen = moment.outcome.run
        if seen is None or seen.first_colour_m3 is None:
            continue
        control = network.controls[seen.outlet]
        side = seen.outlet.rpartition(".")[2]
        way = sum(network.links[link].volume_m3 for link in seen.way)
        if control.thing == "tap" and side in {"hot", "cold"}:
            far[side] = max(far.get(side, (0.0, "")), (way, seen.outlet))
        elif control.thing == "tap":
            far["toilet"] = max(far.get("toilet", (0.0, "")), (way, seen.outlet))
    return frozenset(outlet for _, outlet in far.values())
