"""What gravity takes out of a coach as it stands.

Two passes. First, where water can fall to: the spill level of a node is the lowest barrier that has
to be climbed on any way from it to an open outlet (a minimax path, found as Dijkstra finds shortest
ones); what lies lower than its spill level stays. Second, where air can come in: from every open
vent down through lines that run empty. Both are made on two sides of what nobody can know:

  careful   a line that is too level keeps its water and lets no air by, a check valve is shut, air
            does not rise through water in a tube, a tube under 8 mm is no way out
  hopeful   level lines run empty, puddles shallower than a bore do no harm, a check valve lets its
            way by, air goes wherever there is no water, only a tube under 5 mm is no way out

A line is *drained* if nothing stays on the careful side, *trapped* if something stays even on the
hopeful one, and else *uncertain*. No siphon is counted on: a hump stops water on both sides.
"""

import math
from dataclasses import dataclass
from typing import Literal

from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.falling import Standing, Stays, what_stays
from wintertight.flow.slopes import LEVEL_M, Lie, lie_of
from wintertight.flow.state import State
from wintertight.flow.stream import AIR
from wintertight.flow.tilt import Tilt

Drainage = Literal["drained", "trapped", "uncertain"]

MOSTLY = 0.5
"""Share of air from which a line counts as holding air [1]."""

MOST_KNOWN = 512
"""How many settings of one coach are remembered [1]."""


@dataclass(frozen=True, slots=True)
class Drained:
    """What gravity does to each line and through-fitting, and which vessels run empty.

    Attributes:
        drainage: class of each link that holds something and is no emptied vessel.
        emptied: vessels and tanks that run empty, down to their heel.
        least_m3, most_m3: what stays of each link's liquid, on the hopeful and on the careful
            side [m3]; the film that clings to a wall not counted.
        spill_m: spill level of each node from which water finds a way out, careful side [m].
    """

    drainage: dict[str, Drainage]
    emptied: tuple[str, ...]
    least_m3: dict[str, float]
    most_m3: dict[str, float]
    spill_m: dict[str, float]


def drain_by_gravity(network: CoachNetwork, state: State, tilt: Tilt | None = None) -> Drained:
    """Tell what drains as the controls stand.

    Args:
        network: the coach.
        state: how its controls stand.
        tilt: slope of the floor; level where None.

    Returns:
        A class for each link that holds something, what stays in each [m3], and the vessels and
        tanks that run empty.
    """
    air = {k: float(held.mean()[AIR]) for k, held in state.held.items()}
    airy = frozenset(k for k, share in air.items() if share > MOSTLY)
    careful, hopeful = _both_sides(network, lie_of(network, tilt), state, airy)
    drainage: dict[str, Drainage] = {}
    least: dict[str, float] = {}
    most: dict[str, float] = {}
    for link in network.links.values():
        if link.holding == "nothing" or link.id in careful.emptied:
            continue
        shares = hopeful.share[link.id], careful.share[link.id]
        if link.id in hopeful.emptied:
            shares = 0.0, 1.0
        drainage[link.id] = _class_of(*shares)
        liquid = (1.0 - air.get(link.id, 0.0)) * link.volume_m3
        least[link.id], most[link.id] = (min(s * link.volume_m3, liquid) for s in shares)
    return Drained(drainage, careful.emptied, least, most, careful.spill_m)


def drain_as_it_stands(network: CoachNetwork, state: State) -> Drained:
    """Tell what drains on whichever of the floor's slopes that a coach may stand on.

    Args:
        network: the coach, and the slopes of its floor.
        state: how its controls stand.

    Returns:
        As `drain_by_gravity`; a link is drained or trapped only if it is so on each slope, and else
        uncertain; a vessel runs empty only if it does on each. What stays is the least and the
        most of all slopes [m3].
    """
    tilts = network.tilts or (None,)
    found = [drain_by_gravity(network, state, tilt) for tilt in tilts]
    if len(found) == 1:
        return found[0]
    emptied = tuple(v for v in found[0].emptied if all(v in one.emptied for one in found))
    named = {link for one in found for link in one.drainage}
    return Drained(
        drainage={
            link: _alike({one.drainage.get(link, "drained") for one in found})
            for link in network.links
            if link in named
        },
        emptied=emptied,
        least_m3={k: min(one.least_m3.get(k, 0.0) for one in found) for k in named},
        most_m3={k: max(one.most_m3.get(k, 0.0) for one in found) for k in named},
        spill_m={
            node: max(one.spill_m.get(node, -math.inf) for one in found)
            for node in {node for one in found for node in one.spill_m}
        },
    )


def _alike(classes: set[Drainage]) -> Drainage:
    return classes.pop() if len(classes) == 1 else "uncertain"


def _class_of(least: float, most: float) -> Drainage:
    if most <= LEVEL_M:
        return "drained"
    return "trapped" if least > LEVEL_M else "uncertain"


def _both_sides(
    network: CoachNetwork, lie: Lie, state: State, airy: frozenset[str]
) -> tuple[Stays, Stays]:
    """Give the careful and the hopeful side; what was asked for before is remembered."""
    gated = [k.gate for k in network.links.values() if k.gate]
    gated += [o.gate for o in network.openings]
    key = (tuple(state.settings[g.control] in g.passes for g in gated), airy)
    found = lie.known.get(key)
    if not isinstance(found, tuple):
        if len(lie.known) >= MOST_KNOWN:
            lie.known.clear()
        found = tuple(
            what_stays(Standing(network, lie, state, airy, careful=careful))
            for careful in (True, False)
        )
        lie.known[key] = found
    return found[0], found[1]
