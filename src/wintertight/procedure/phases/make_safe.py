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
    yield step(
        "pressure off",
        "make safe",
        *(Action("set", f"{city}/hose", "off") for city in cities),
        Action("set", f"{job.pump}/switch", "off"),
        part=cities[0] if cities else job.pump,
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
