"""The pictures of an owner's guide: how the bypass stands, and where antifreeze comes in."""

from collections.abc import Mapping

from wintertight.documents.drawing.of_plan import step_pictures
from wintertight.documents.drawing.svg_text import svg_text
from wintertight.documents.guide_content import PICTURE_AT
from wintertight.procedure.plan import Plan


def guide_pictures(plan: Plan, language: str = "en") -> Mapping[str, str]:
    """Draw what the guide of a plan shows.

    Args:
        plan: the plan.
        language: two letters.

    Returns:
        SVG texts by the guide's names of pictures, of those steps that turn a handle.
    """
    key = {planned.n: planned.step.key for planned in plan.steps}
    found: dict[str, str] = {}
    for shown in step_pictures(plan, language):
        name = PICTURE_AT.get(key[shown.step]) if shown.step is not None else None
        if name is not None and not shown.picture.name.startswith("front"):
            found.setdefault(name, svg_text(shown.picture))
    return found
