"""The drawings that README and manual show: of the bundled middle travel trailer."""

from functools import cache

from docs.generate.demo_plans import demo_plans
from wintertight.documents.drawing.of_plan import plan_pictures

COACH = "HL-204"

SHOWN = ("coach", "step-13", "step-14", "front-19", "end")
"""Names of the pictures that are kept in docs/drawings."""


@cache
def _drawn() -> dict[str, str]:
    (plan,) = (plan for plan in demo_plans() if plan.card.id == COACH)
    return {one.picture.name: one.svg for one in plan_pictures(plan)}


def drawing(name: str) -> str:
    """Give the SVG of one picture by its name."""
    return _drawn()[name]
