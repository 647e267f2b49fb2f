"""Every handle as it must stand before antifreeze or air comes in."""

from collections.abc import Iterator

from wintertight.flow.actions import Action
from wintertight.procedure.job import Job, step
from wintertight.procedure.steps import Step

HEATERS_WITH_PLUGS = ("tank heater", "on-demand heater")


def set_handles(job: Job) -> Iterator[Step]:
    """Give the steps that set handles, put the hose into the jug and start the pump."""
    yield from close_up(job)
    yield from open_diverters(job)
    yield _draw_from_jug(job)
    yield _pump_on(job)


def draw_after_blowing(job: Job) -> Iterator[Step]:
    """Give the steps that put the hose into the jug and start the pump, all else being shut."""
    yield _draw_from_jug(job)
    yield _pump_on(job)


def pump_by_hand(job: Job) -> Iterator[Step]:
    """Give the steps that set handles and put a hand pump on the city inlet of an empty coach."""
    yield from close_up(job, heaters=HEATERS_WITH_PLUGS)
    enters = job.enters_by
    named = job.roles.positions("city water")
    yield step(
        "hand pump on",
        "set",
        *(Action("set", valve.id, name) for valve, name in named),
        Action("set", enters.control, enters.setting),
        Action("feed", enters.source, contents=job.product.contents()),
        part=job.network.controls[enters.control].part,
        setting=enters.setting,
        cautions=("right product", "low pressure by hand"),
        product=job.product.name,
    )


def close_up(
    job: Job, *, heaters: tuple[str, ...] = ("tank heater",), filled: bool = True
) -> Iterator[Step]:
    """Give the steps that shut what is open and leave the heater out of the flow.

    Args:
        job: the coach.
        heaters: kinds of heater whose plugs are out, and go back where there is no bypass.
        filled: whether a heater that cannot be bypassed is filled then.
    """
    yield step(
        "shut everything",
        "set",
        *(Action("set", tap, "shut") for tap in (*job.roles.taps, *job.roles.low_points)),
        setting="shut",
    )
    if job.has_bypass:
        yield _set_bypass(job)
        return
    for heater in job.roles.of_kind(*heaters):
        lever = f"{heater.id}/relief"
        yield step(
            "close heater",
            "set",
            Action("set", f"{heater.id}/plug", "in"),
            *(Action("set", c, "shut") for c in (lever,) if c in job.network.controls),
            part=heater.id,
            setting="plug in, relief shut",
            filled="yes" if filled else "no",
        )


def open_diverters(job: Job) -> Iterator[Step]:
    """Give the steps that send water round, not out."""
    for diverter in job.roles.controls("diverter"):
        yield step(
            "open diverter",
            "set",
            Action("set", diverter, "recirculate"),
            part=diverter,
            setting="recirculate",
        )


def _set_bypass(job: Job) -> Step:
    bypasses = job.roles.valves("heater bypass")
    into, out = job.roles.valves("heater cold"), job.roles.valves("heater hot")
    named = job.roles.positions("heater bypass")
    part = bypasses[0].id if bypasses else named[0][0].id
    return step(
        "set bypass",
        "set",
        *(Action("set", valve.id, "across") for valve in (*into, *out)),
        *(Action("set", bypass.id, "along") for bypass in bypasses),
        *(Action("set", valve.id, name) for valve, name in named),
        part=part,
        setting="along" if bypasses else named[0][1],
        valves=", ".join(v.name or v.id for v in (*into, *out)),
    )


def _pump_on(job: Job) -> Step:
    on = Action("set", f"{job.pump}/switch", "on")
    return step("pump on", "set", on, part=job.pump or "", setting="on")


def _draw_from_jug(job: Job) -> Step:
    enters = job.enters_by
    tank_valves = job.roles.valves("tank suction")
    jug_valves = job.roles.valves("antifreeze inlet")
    named = job.roles.positions("antifreeze")
    part = jug_valves[0].id if jug_valves else _under_the_hose(job)
    return step(
        "draw from jug",
        "set",
        *(Action("set", valve.id, "across") for valve in tank_valves),
        *(Action("set", valve.id, "along") for valve in jug_valves),
        *(Action("set", valve.id, name) for valve, name in named),
        Action("set", enters.control, enters.setting),
        Action("feed", enters.source, contents=job.product.contents()),
        part=part,
        setting="along" if jug_valves else "in the jug",
        cautions=("right product",),
        product=job.product.name,
    )


def _under_the_hose(job: Job) -> str:
    """Give the fitting that the jug's hose goes on: the strainer, where a pump has one before it.

    Put on behind the strainer, it would leave the water that the strainer holds.
    """
    enters = job.enters_by
    part = job.network.controls[enters.control].part
    if job.card.fitting[part].kind != "demand pump":
        return part
    end = job.network.links[job.network.sources[enters.source].link].end
    return end.partition(".")[0]
