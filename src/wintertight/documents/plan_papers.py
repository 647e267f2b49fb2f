"""Everything on paper that a plan gives: job sheet, owner's guide and drawings."""

from collections.abc import Iterator

from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.guide_pictures import guide_pictures
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.owner_guide import owner_guide_pdf
from wintertight.documents.typeset import Paper
from wintertight.procedure.plan import Plan
from wintertight.units import System


def plan_papers(
    plan: Plan, language: str = "en", paper: Paper = "us-letter", system: System = "us"
) -> Iterator[tuple[str, bytes]]:
    """Make every paper and drawing of a plan.

    Args:
        plan: the plan.
        language: two letters.
        paper: of what is printed.
        system: units of what is printed.

    Yields:
        Name of a file and its bytes: the papers, then the drawings in the order of the job.
    """
    coach, drawn = plan.card.id, plan_pictures(plan, language)
    yield f"{coach}-job-sheet.pdf", job_sheet_pdf(plan, language, paper, system, drawn)
    shown = guide_pictures(plan, drawn)
    yield f"{coach}-owners-guide.pdf", owner_guide_pdf(plan, language, paper, system, shown)
    for one in drawn:
        yield f"{coach}-{one.picture.name}.svg", one.svg.encode("utf-8")
