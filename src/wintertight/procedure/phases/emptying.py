"""Everything open: as much water out as gravity and hands take, where little or nothing is filled.

The order matters. The pump runs dry first: air that it drives through lines already drained might
carry water back into them. Then all that stays open by itself is opened at once, so that each line
finds a way for its water and one for air; then what only opens while a hand holds it, one after
another, with all else standing open; then handles with several positions are worked through them.
"""

from collections.abc import Iterator

from wintertight.coach.kinds import KINDS
from wintertight.flow.actions import Action
from wintertight.procedure.job import Job, step
from wintertight.procedure.phases.draining import (
    by_hand,
    empty_wastes,
    open_heater,
    plug_out,
    run_dry,
)
from wintertight.procedure.steps import Step

HELD_OPEN = frozenset({"valve of a machine", "lever", "check"})
"""Things that a hand, or a machine, holds open; they shut by themselves."""

CAPS = frozenset({"cap", "line end"})
"""Things that are taken off and put back on."""

AIR_END = "open to the air"
"""Setting of a hose whose end hangs in the open."""


def empty_out(job: Job) -> Iterator[Step]:
    """Give the steps that empty a coach as far as gravity and hands can."""
    yield from empty_tank_line(job)
    yield from open_handles(job)
    yield from open_everything(job)
    yield step("let it drain", "drain", Action("drain"))
    yield from hold_open(job)
    yield from _work_positions(job)
    yield from by_hand(job)
    yield from caps_back(job)
    yield from empty_wastes(job)


def empty_tank_line(job: Job) -> Iterator[Step]:
    """Give the steps that empty the fresh tank and the line from it."""
    for tank in job.roles.of_kind("fresh tank"):
        yield step(
            "open tank drain",
            "drain",
            Action("set", f"{tank.id}/drain", "open"),
            Action("drain"),
            part=tank.id,
            setting="open",
        )
    yield from run_dry(job)


def open_handles(job: Job) -> Iterator[Step]:
    """Give the step that sets every two-way handle along its pipe, if there are any."""
    valves = [f.id for f in job.roles.of_kind("ball valve") if f.role is not None]
    hoses = [
        c for c in job.roles.controls("hose") if AIR_END in job.network.controls[c].settings[2:]
    ]
    ends = [c for c in hoses if "stowed" in job.network.controls[c].settings]
    if valves or ends:
        yield step(
            "open handles",
            "drain",
            *(Action("set", valve, "along") for valve in valves),
            *(Action("set", end, AIR_END) for end in ends),
            setting="along",
            hose="yes" if ends else "no",
        )


def open_everything(job: Job, *, caps: bool = True) -> Iterator[Step]:
    """Give the steps that open all that stays open by itself, with or without what is capped."""
    roles = job.roles
    diverters = tuple(roles.controls("diverter"))
    yield step(
        "open taps",
        "drain",
        *(Action("set", tap, "open") for tap in (*roles.taps, *roles.heads)),
        *(Action("set", diverter, "recirculate") for diverter in diverters),
        setting="open",
    )
    if roles.low_points:
        yield step(
            "open low points",
            "drain",
            *(Action("set", low, "open") for low in roles.low_points),
            setting="open",
            count=float(len(roles.low_points)),
        )
    for heater in roles.of_kind("tank heater"):
        yield from open_heater(job, heater)
    yield from (plug_out(job, heater) for heater in roles.of_kind("on-demand heater"))
    for rinse in roles.of_kind("tank rinse"):
        yield step(
            "open rinse inlet",
            "drain",
            Action("set", f"{rinse.id}/inlet", "open"),
            part=rinse.id,
            setting="open",
        )
    capped = _caps(job) if caps else []
    if capped:
        yield step(
            "caps off", "drain", *(Action("set", c, s) for c, s in capped), setting="off"
        )  # fmt: skip


def _caps(job: Job) -> list[tuple[str, str]]:
    """Give the outlets that are opened by taking something off, and how they stand then."""
    controls = job.network.controls
    return [
        (name, dict(outlet.opens)[name])
        for name, outlet in job.network.outlets.items()
        if controls[name].thing in CAPS
    ]


def caps_back(job: Job) -> Iterator[Step]:
    """Give the step that puts caps back on, so that no dirt and no mouse gets in."""
    controls = job.network.controls
    caps = [name for name, _ in _caps(job)]
    if caps:
        yield step(
            "caps on",
            "drain",
            *(Action("set", name, controls[name].as_found) for name in caps),
            setting="on",
        )


def hold_open(job: Job) -> Iterator[Step]:
    """Give a step for each outlet that opens only while something holds it."""
    controls = job.network.controls
    for name, outlet in job.network.outlets.items():
        fitting = job.card.fitting[controls[name].part]
        pedal = KINDS[fitting.kind].relief == "hold toilet pedal"
        if not pedal and controls[name].thing not in HELD_OPEN:
            continue
        found = [(control, controls[control].as_found) for control, _ in outlet.opens]
        yield step(
            "hold open",
            "drain",
            *(Action("set", control, setting) for control, setting in outlet.opens),
            Action("drain"),
            *(Action("set", control, setting) for control, setting in found),
            part=name,
            setting="open, then shut",
            kind=fitting.kind,
        )


def _work_positions(job: Job) -> Iterator[Step]:
    """Give a step for each handle with several positions: each cuts another line off."""
    for fitting in job.roles.of_kind("three-way valve", "service panel"):
        found = job.network.controls[fitting.id].as_found
        city = {p.name for p in fitting.positions if p.use == "city water"}
        checks = tuple(job.roles.controls("check", lambda f: f.kind == "city inlet"))
        actions: list[Action] = []
        for position in fitting.positions:
            pressed = checks if position.name in city else ()
            actions += [
                Action("set", fitting.id, position.name),
                *(Action("set", check, "pressed") for check in pressed),
                Action("drain"),
                *(Action("set", check, "free") for check in pressed),
            ]
        yield step(
            "work positions",
            "drain",
            *actions,
            Action("set", fitting.id, found),
            part=fitting.id,
            setting="emptied",
            positions="; ".join(p.name for p in fitting.positions),
            back=found,
            pressed="yes" if city and checks else "no",
        )
