"""What lies behind a heater that still holds its water.

Air bubbles through such a heater and takes water along as long as it lasts: what lies behind it is
wetted again however fast the air is. Drained through its plug first, a heater is only a wide way.
"""

from typing import Final

from wintertight.flow.air.air_flow import AirFlow
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.state import State
from wintertight.flow.stream import AIR

FULL: Final = 0.5
"""Share of liquid from which a heater counts as full [1]: a drained one keeps a twentieth; common
practice."""


def behind_full_heaters(network: CoachNetwork, state: State, air: AirFlow) -> frozenset[str]:
    """Find the links that air reaches only, or also, through a heater full of water.

    Args:
        network: the coach.
        state: what its heaters hold.
        air: the air that moves.

    Returns:
        Ids of the links behind them.

    Sources: common-practice.
    """
    leaving: dict[str, list[str]] = {}
    for name, moving in air.links.items():
        link = network.links[name]
        leaving.setdefault(link.start if moving.forward else link.end, []).append(name)
    waiting = [
        name
        for name in air.links
        if name in network.heater_ports and float(state.held[name].mean()[AIR]) <= 1.0 - FULL
    ]
    behind: set[str] = set()
    while waiting:
        name = waiting.pop()
        link = network.links[name]
        for after in leaving.get(link.end if air.links[name].forward else link.start, ()):
            if after not in behind:
                behind.add(after)
                waiting.append(after)
    return frozenset(behind)
