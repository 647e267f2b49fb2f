"""Before anything is opened: heat off, pressure off, shut-offs open."""

from collections.abc import Iterator

from wintertight.flow.actions import Action
from wintertight.procedure.job import Job, step
from wintertight.procedure.steps import Step


def make_safe(job: Job) -> Iterator[Step]:
    """Give the steps that make a coach safe to work on."""
    for heater in job.roles.of_kind("tank heater", "on-demand heater", "hydronic coil"):
        if heater.heat or heater.kind == "tank heater":
            yield step(
                "heat off",
                "make safe",
                *(Action("set", f"{heater.id}/{source}", "off") for source in heater.heat),
                part=heater.id,
                setting="off",
                cautions=("hot water",),
                sources=" and ".join(heater.heat) or "heat",
            )
    cities = [f.id for f in job.roles.of_kind("city inlet")]
    switches = [f"{pump.id}/switch" for pump in job.roles.of_kind("demand pump")]
    pushing = [*(f"{city}/hose" for city in cities), *switches]
    if pushing:
        yield step(
            "pressure off",
            "make safe",
            *(Action("set", control, "off") for control in pushing),
            part=job.network.controls[pushing[0]].part,
            setting="off",
        )
    for valve in job.roles.valves("branch shut-off"):
        yield step(
            "open shut-off",
            "make safe",
            Action("set", valve.id, "along"),
            part=valve.id,
            setting="along",
        )
