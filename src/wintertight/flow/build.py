"""From a coach's card to its network."""

import math
from types import MappingProxyType

from wintertight.coach.card import Card, Line
from wintertight.coach.joints import joined_ends
from wintertight.flow.case import BEST, Case
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.fittings.supply import add_suction_hose
from wintertight.flow.fittings.table import BUILDERS
from wintertight.flow.fittings.workbench import Workbench
from wintertight.flow.losses import BEND_LOSS, PLASTIC_ROUGHNESS_M

SHORTEST_RUNS_M = 0.05
"""A nipple shorter than this [m] has no room for a laminar profile: it is taken as displaced."""


def build_network(card: Card, case: Case = BEST) -> CoachNetwork:
    """Turn a card into the network that a replay runs on.

    Args:
        card: a card that has been read and whose plumbing was checked.
        case: which side of what is uncertain to take.

    Returns:
        The network. A fitting without a model is named in ``unmodelled`` and passes nothing.
    """
    bench = Workbench(card, case)
    for fitting in card.fittings:
        if fitting.seen != "present":
            continue
        builder = BUILDERS.get(fitting.kind)
        if builder is None:
            bench.unmodelled.append(fitting.id)
        else:
            builder(bench, fitting)
        if fitting.makers_steps:
            bench.control(fitting, "maker's steps", "to do | done", "/maker's steps")
    ends = joined_ends(card)
    for line in card.lines:
        start, end = ends[line.id]
        bench.links[line.id] = _line_link(line, case, str(start), str(end))
        for joint in (start, end):
            at = card.fitting[joint.fitting].at
            bench.heights_m.setdefault(str(joint), at.height_m if at else 0.0)
    present = [f for f in card.fittings if f.seen == "present"]
    if not any(f.kind == "antifreeze hose" for f in present):
        for pump in (f for f in present if f.kind == "demand pump"):
            add_suction_hose(bench, pump)
    return CoachNetwork(
        links=MappingProxyType(bench.links),
        controls=MappingProxyType(bench.controls),
        sources=MappingProxyType(bench.sources),
        outlets=MappingProxyType(bench.outlets),
        openings=tuple(bench.openings),
        pools=MappingProxyType(bench.pools),
        heights_m=MappingProxyType(bench.heights_m),
        unmodelled=tuple(bench.unmodelled),
        case=case,
        heater_ports=MappingProxyType(bench.heater_ports),
        breathers=tuple(bench.breathers),
        places_m=MappingProxyType(
            {f.id: (f.at.along_m, f.at.across_m) for f in card.fittings if f.at}
        ),
    )


def _line_link(line: Line, case: Case, start: str, end: str) -> Link:
    """Make the pipe of one line."""
    middle = line.middle_bore_m
    wide = line.largest_bore_m if case.bore == "largest" else middle
    length = case.length_m(line.length)
    learned = line.volume
    volume = learned.value if learned else math.pi / 4.0 * wide**2 * length
    runs = case.runs(line.bends)
    laminar = runs is not None and length >= SHORTEST_RUNS_M
    return Link(
        id=line.id,
        part=line.id,
        start=start,
        end=end,
        way="pipe",
        length_m=line.length.value,
        bore_m=middle,
        roughness_m=PLASTIC_ROUGHNESS_M,
        bends_loss=BEND_LOSS * line.bends,
        holding="runs" if laminar else "plug",
        volume_m3=volume,
        runs=runs or 1,
        lowest_m=line.lowest_m,
        highest_m=line.highest_m,
        start_m=line.start_height_m,
        end_m=line.end_height_m,
    )
