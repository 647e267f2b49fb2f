"""The job sheet: one page that a technician carries to the coach and writes on."""

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
    """Give the job sheet of a plan as a PDF/UA-1 file.

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
    return typeset("job-sheet", sheet_content(plan, language, checked, system))
