"""Air through one outlet at a time, from the city inlet."""

from wintertight.flow.actions import Action
from wintertight.flow.air.blowing import Blow
from wintertight.procedure.job import Job, step
from wintertight.procedure.steps import Step


def air_on(job: Job, blow: Blow) -> Step:
    """Give the step that puts the air line on the city inlet, its regulator set."""
    enters = job.enters_by
    named = job.roles.positions("city water")
    return step(
        "air on",
        "blow",
        *(Action("set", valve.id, name) for valve, name in named),
        Action("set", enters.control, enters.setting),
        part=job.network.controls[enters.control].part,
        setting=enters.setting,
        cautions=("air pressure", "clean air", "eyes", "no engine indoors"),
        regulator_Pa=blow.supply.regulator_Pa,
    )


def blow_outlet(job: Job, outlet: str, blow: Blow) -> Step:
    """Give the step that blows one outlet out."""
    kind = job.card.fitting[job.network.controls[outlet].part].kind
    return step(
        "blow outlet",
        "blow",
        Action("blow", outlet, blow=blow),
        part=outlet,
        setting="open, then shut",
        kind=kind,
    )


def air_off(job: Job) -> Step:
    """Give the step that takes the air line off again."""
    enters = job.enters_by
    return step(
        "air off",
        "blow",
        Action("set", enters.control, "off"),
        part=job.network.controls[enters.control].part,
        setting="off",
    )
