"""What reaches a heater whose plug is out runs out of the hole.

A job done rightly never meets that: its heater is cut off, or its plug is back in, before anything
is pumped or blown. So the holes are no part of a coach as it is built; they are added where a step
is left out or a handle stands wrongly.
"""

from dataclasses import replace
from types import MappingProxyType

from wintertight.flow.coach_network import CoachNetwork, Gate, Link
from wintertight.flow.fittings.workbench import AIR
from wintertight.flow.losses import fitting_resistance


def with_plug_holes(network: CoachNetwork, *heaters: str) -> CoachNetwork:
    """Let what reaches a heater from either side run out where its plug was, while that is out.

    The heater itself is bypassed by its own hole, so its link carries nothing.

    Args:
        network: the coach.
        heaters: ids of the heaters; every one that has a plug where none is named.

    Returns:
        The coach with two more ways out a heater.
    """
    links, heights_m = dict(network.links), dict(network.heights_m)
    for heater in heaters or tuple(network.heater_ports):
        link = network.links[heater]
        for node in (link.start, link.end):
            spout = Link(
                id=f"{node}(hole)",
                part=heater,
                start=node,
                end=f"{node}(hole){AIR}",
                resistance_s2_m5=fitting_resistance("tank heater"),
                one_way=True,
                gate=Gate(f"{heater}/plug", frozenset({"out"})),
                drops_to="",
            )
            links[spout.id] = spout
            heights_m[spout.end] = network.heights_m[f"{heater}/plug"]
    return replace(network, links=MappingProxyType(links), heights_m=MappingProxyType(heights_m))
