"""Water out: by gravity, by hand, and behind the pump's air."""

import math
from collections.abc import Iterator

from wintertight.coach.card import Fitting
from wintertight.coach.kinds import KINDS
from wintertight.coach.sides import hanging_on
from wintertight.flow.actions import Action
from wintertight.flow.until import Until
from wintertight.procedure.job import Job, step
from wintertight.procedure.steps import Step

DRY_RUN_S = 12.0
"""How long the pump runs on an empty tank, to clear the tank's own line [s]; common practice."""

WEAK_SHARE = 0.05
"""Share of its water that a heater left full may still hold to count as filled [1]."""

BRIDGED = ("softener", "UV sleeve")
"""Kinds that leave a gap in a line when they are taken out: a hose bridges it."""


def drain(job: Job) -> Iterator[Step]:
    """Give the steps that take water out."""
    yield step(
        "open taps",
        "drain",
        *(Action("set", tap, "open") for tap in (*job.roles.taps, *job.roles.heads)),
        setting="open",
    )
    for tank in job.roles.of_kind("fresh tank"):
        yield step(
            "open tank drain",
            "drain",
            Action("set", f"{tank.id}/drain", "open"),
            part=tank.id,
            setting="open",
        )
    if job.roles.low_points:
        yield step(
            "open low points",
            "drain",
            *(Action("set", low, "open") for low in job.roles.low_points),
            setting="open",
            count=float(len(job.roles.low_points)),
        )
    yield from open_bypass(job)
    for heater in job.roles.of_kind("tank heater"):
        yield from open_heater(job, heater)
    if job.has_bypass:
        yield from (plug_out(job, heater) for heater in job.roles.of_kind("on-demand heater"))
    for rinse in job.roles.of_kind("tank rinse"):
        yield step(
            "open rinse inlet",
            "drain",
            Action("set", f"{rinse.id}/inlet", "open"),
            part=rinse.id,
            setting="open",
        )
    yield step("let it drain", "drain", Action("drain"))
    yield from drain_through_inlet(job)
    yield from by_hand(job)
    yield from run_dry(job)
    yield from empty_wastes(job)


def open_bypass(job: Job) -> Iterator[Step]:
    """Give the step that lets the heater's hot leg drain to a low point of the cold side."""
    ends = {line.id: (line.start, line.end) for line in job.card.lines}
    begun = (
        line
        for line, both in ends.items()
        for end in both
        if end.port == "hot" and job.card.fitting[end.fitting].kind == "tank heater"
    )
    leg = {end.fitting for line in hanging_on(job.card, begun) for end in ends[line]}
    if not job.roles.low_points or leg & set(job.roles.low_points):
        return
    for valve in job.roles.valves("heater bypass"):
        yield step(
            "open bypass to drain",
            "drain",
            Action("set", valve.id, "along"),
            part=valve.id,
            setting="along",
        )


def empty_wastes(job: Job) -> Iterator[Step]:
    """Give the step that empties waste tanks at a dump, if there are any."""
    wastes = job.roles.of_kind("gray tank", "black tank")
    if wastes:
        gates = [f"{tank.id}/gate" for tank in wastes]
        yield step(
            "empty waste tanks",
            "drain",
            *(Action("set", gate, "open") for gate in gates),
            Action("drain"),
            *(Action("set", gate, "shut") for gate in gates),
            setting="emptied",
            cautions=("sewer hose apart",),
        )


def drain_through_inlet(job: Job) -> Iterator[Step]:
    """Let air through the inlet into the line a panel fills from the city.

    In every other position the panel cuts that line off, and its water hangs in it.
    """
    checks = tuple(job.roles.controls("check", lambda f: f.kind == "city inlet"))
    for panel, city in job.roles.positions("city water") if checks else ():
        found = job.network.controls[panel.id].as_found
        yield step(
            "drain panel",
            "drain",
            Action("set", panel.id, city),
            *(Action("set", check, "pressed") for check in checks),
            Action("drain"),
            *(Action("set", check, "free") for check in checks),
            Action("set", panel.id, found),
            part=panel.id,
            setting="emptied",
            position=city,
            back=found,
        )


def open_heater(job: Job, heater: Fitting) -> Iterator[Step]:
    """Give the steps that let air into a tank heater at the top, and its water out below."""
    yield step(
        "open relief",
        "drain",
        Action("set", f"{heater.id}/relief", "open"),
        part=heater.id,
        setting="relief lever open",
        cautions=("hot water",),
    )
    yield plug_out(job, heater)


def plug_out(job: Job, heater: Fitting) -> Step:
    """Give the step that takes a heater's plug out."""
    anode = heater.tank == "steel with anode"
    return step(
        "plug out",
        "drain",
        Action("set", f"{heater.id}/plug", "out"),
        part=heater.id,
        setting="plug out",
        cautions=("plug under pressure", "hot water"),
        anode="yes" if anode else "no",
        **({} if job.has_bypass else _left_full(heater)),
    )


def _left_full(heater: Fitting) -> dict[str, float | str]:
    """Say what a heater that is filled would cost if it were not emptied first."""
    own_m3 = heater.volume.value if heater.volume else KINDS[heater.kind].hollow_m3
    return {
        "filled": "yes",
        "own_m3": own_m3,
        "left_full_m3": washed_through_m3(own_m3, WEAK_SHARE),
        "share": WEAK_SHARE,
    }


def washed_through_m3(volume_m3: float, share_left: float) -> float:
    """Give what must flow through a stirred vessel until so much of its first content is left.

        V = V_vessel ln(1/c)

    Args:
        volume_m3: content of the vessel [m3], not negative.
        share_left: share c of the first content that may be left [1], above 0, at most 1.

    Returns:
        Volume that flows through [m3].

    Example:
        >>> round(washed_through_m3(6.0, 0.05), 2)
        17.97

    Sources: levenspiel, the wash-out of a stirred tank
    """
    return volume_m3 * math.log(1.0 / share_left)


def by_hand(job: Job) -> Iterator[Step]:
    """Give the steps that empty by hand what gravity leaves."""
    for bowl in job.roles.of_kind("filter housing"):
        yield step(
            "cartridge out",
            "drain",
            Action("set", f"{bowl.id}/cartridge", "out"),
            Action("set", f"{bowl.id}/bowl", "off"),
            Action("set", f"{bowl.id}/bowl", "tight"),
            part=bowl.id,
            setting="cartridge out, bowl emptied and back on",
        )
    for body in job.roles.controls("body"):
        fitting = job.card.fitting[job.network.controls[body].part]
        yield step(
            "take out",
            "drain",
            Action("set", body, "removed"),
            part=fitting.id,
            setting="removed",
            bridged="yes" if fitting.kind in BRIDGED else "no",
        )
    for filtered in job.roles.of_kind("fridge filter"):
        yield step(
            "fridge filter out",
            "drain",
            Action("set", f"{filtered.id}/filter", "bypass plug in"),
            part=filtered.id,
            setting="bypass plug in",
        )
    for maker in job.roles.of_kind("ice maker"):
        yield step(
            "clear ice maker",
            "drain",
            Action("set", f"{maker.id}/mould", "emptied"),
            part=maker.id,
            setting="emptied",
        )
    for control in job.roles.controls("maker's steps"):
        fitting = job.card.fitting[job.network.controls[control].part]
        yield step(
            "maker's steps",
            "drain",
            Action("set", control, "done"),
            part=fitting.id,
            setting="done",
            steps="; ".join(fitting.makers_steps),
        )


def run_dry(job: Job) -> Iterator[Step]:
    """Clear the line from the fresh tank: the pump draws air through it, the rest falls back."""
    outlet = next(iter((*job.roles.low_points, *job.network.outlets)), None)
    if outlet is None or job.pump is None or not job.roles.of_kind("fresh tank"):
        return
    yield step(
        "run pump dry",
        "drain",
        Action("set", f"{job.pump}/switch", "on"),
        Action("run", outlet, until=Until(seconds=DRY_RUN_S)),
        Action("set", f"{job.pump}/switch", "off"),
        Action("drain"),
        part=job.pump,
        setting="on, then off",
        seconds=DRY_RUN_S,
    )
