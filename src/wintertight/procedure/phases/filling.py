"""One outlet at a time until colour, and on."""

from wintertight.flow.actions import Action
from wintertight.flow.until import Until
from wintertight.procedure.job import Job, step
from wintertight.procedure.steps import Step

CAUTIONS = {"city inlet": ("face clear of the inlet",)}


def fill_outlet(job: Job, outlet: str, until: Until) -> Step:
    """Give the step that runs one outlet until its rule says stop."""
    kind = job.card.fitting[job.network.controls[outlet].part].kind
    return step(
        "run outlet",
        "fill",
        Action("run", outlet, until=until),
        part=outlet,
        setting="open, then shut",
        cautions=CAUTIONS.get(kind, ()),
        kind=kind,
    )
