"""In which order a technician goes round the outlets.

Nearest to the pump first, along the pipes (common practice): what is nearest clears first and
carries the front for the next. The cold and hot side of one fixture are done while one stands
there: a fixture takes its place by the nearer of its sides. Stubs that only need their own few
spoonfuls changed (low points, the city inlet) come last, when all that feeds them is strong: run
first, they would spill what the taps need.
"""

import heapq
from collections.abc import Mapping

from wintertight.flow.coach_network import CoachNetwork, Gate
from wintertight.flow.state import State


def distances_m3(network: CoachNetwork, state: State, source: str) -> Mapping[str, float]:
    """Give the least volume of pipe [m3] from a source to each node, as the controls stand.

    Args:
        network: the coach.
        state: how its controls stand; a valve that is shut is no way.
        source: node to start from.

    Returns:
        Volume by node; nodes that cannot be reached are missing.
    """
    beside: dict[str, list[tuple[str, float]]] = {}
    for link in network.links.values():
        if link.is_outlet or not _stands_open(link.gate, state):
            continue
        beside.setdefault(link.start, []).append((link.end, link.volume_m3))
        if not link.one_way:
            beside.setdefault(link.end, []).append((link.start, link.volume_m3))
    reached: dict[str, float] = {}
    queue = [(0.0, source)]
    while queue:
        far, node = heapq.heappop(queue)
        if node in reached:
            continue
        reached[node] = far
        for other, volume in beside.get(node, ()):
            if other not in reached:
                heapq.heappush(queue, (far + volume, other))
    return reached


def _stands_open(gate: Gate | None, state: State) -> bool:
    return gate is None or state.settings[gate.control] in gate.passes


def walking_order(network: CoachNetwork, state: State, source: str) -> tuple[str, ...]:
    """Give the outlets that can be reached, in the order in which they are run.

    Args:
        network: the coach.
        state: how its controls stand when the filling starts.
        source: node the antifreeze comes from.

    Returns:
        Controls of the outlets.
    """
    far = distances_m3(network, state, source)
    reach = {name: far[o.node] for name, o in network.outlets.items() if o.node in far}
    fixture: dict[str, float] = {}
    for name, distance in reach.items():
        part = network.controls[name].part
        fixture[part] = min(distance, fixture.get(part, distance))
    return tuple(
        sorted(
            reach,
            key=lambda name: (
                network.controls[name].thing != "tap",
                fixture[network.controls[name].part],
                network.controls[name].part,
                reach[name],
                name,
            ),
        )
    )
