"""The pictures of an owner's guide: how the bypass stands, and where antifreeze comes in."""

from collections.abc import Iterable, Mapping

from wintertight.documents.drawing.of_plan import StepPicture
from wintertight.documents.guide_content import PICTURE_AT
from wintertight.procedure.plan import Plan


def guide_pictures(plan: Plan, pictures: Iterable[StepPicture]) -> Mapping[str, str]:
    """Choose what the guide of a plan shows.

    Args:
        plan: the plan.
        pictures: those of its pictures that show handles, others among them or not.

    Returns:
        SVG texts by the guide's names of pictures, of those steps that turn a handle.
    """
    key = {planned.n: planned.step.key for planned in plan.steps}
    found: dict[str, str] = {}
    for shown in pictures:
        name = PICTURE_AT.get(key[shown.step]) if shown.step is not None else None
        if name is not None and shown.shows == "handles":
            found.setdefault(name, shown.svg)
    return found
