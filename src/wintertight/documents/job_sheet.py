"""The job sheet: one page that a technician carries to the coach and writes on."""

from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.drawing.svg_text import svg_text
from wintertight.documents.drawn_content import drawn_content
from wintertight.documents.sheet_content import sheet_content
from wintertight.documents.typeset import checked_paper, typeset
from wintertight.procedure.plan import Plan
from wintertight.units import System


def job_sheet_pdf(
    plan: Plan,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
) -> bytes:
    """Give the job sheet of a plan as a PDF/UA-1 and PDF/A-2a file.

    Args:
        plan: the plan.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".

    Returns:
        The bytes; the same plan gives the same bytes.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)
    shown = plan_pictures(plan, language)
    pictures = {one.picture.name: svg_text(one.picture) for one in shown}
    content = sheet_content(plan, language, checked, system) | drawn_content(shown, language)
    return typeset("job-sheet", content, pictures)
