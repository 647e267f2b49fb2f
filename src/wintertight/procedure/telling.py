"""The few outlets whose first colour says most about all the rest.

Until readings can choose better: of the hot sides, the cold sides and the toilets, those that take
longest to colour, and the outside shower, which is often forgotten (common practice). An outlet
that colours at once tells nothing, and nobody can time it.
"""

from wintertight.coach.card import Card
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace

MOST = 4
"""Most outlets that are timed [1]; common practice."""

SHORTEST_S = 3.0
"""First colour that can be timed by hand takes at least this long [s]; common practice."""


def telling_outlets(card: Card, network: CoachNetwork, trace: Trace) -> frozenset[str]:
    """Give the outlets worth a stopwatch.

    Args:
        card: the coach's card.
        network: the coach.
        trace: a replay in which each outlet ran.

    Returns:
        Controls of at most four outlets.
    """
    longest: dict[str, tuple[float, str]] = {}
    for moment in trace.moments:
        seen = moment.outcome.run
        if seen is None or seen.first_colour_s is None or seen.first_colour_s < SHORTEST_S:
            continue
        control = network.controls[seen.outlet]
        if control.thing != "tap":
            continue
        kind = card.fitting[control.part].kind
        side = seen.outlet.rpartition(".")[2] if "." in seen.outlet else kind
        group = kind if kind == "outside shower" else side
        longest[group] = max(longest.get(group, (0.0, "")), (seen.first_colour_s, seen.outlet))
    return frozenset(outlet for _, outlet in sorted(longest.values())[-MOST:])
