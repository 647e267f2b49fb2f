"""The job sheet: one page that a technician carries to the coach and writes on."""

from wintertight.documents.coach_link import qr_content, qr_picture
from wintertight.documents.drawing.of_plan import StepPicture, plan_pictures
from wintertight.documents.drawn_content import drawn_content
from wintertight.documents.sheet_content import sheet_content
from wintertight.documents.typeset import checked_paper, typeset
from wintertight.procedure.plan import Plan
from wintertight.units import System


def job_sheet_pdf(  # noqa: PLR0913, PLR0917 - a plan and how to say it
    plan: Plan,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
    pictures: tuple[StepPicture, ...] | None = None,
    link: str = "",
) -> bytes:
    """Give the job sheet of a plan as a PDF/UA-1 and PDF/A-2a file.

    Args:
        plan: the plan.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".
        pictures: all pictures of the plan, if they are drawn already.
        link: address of the coach's page, checked; "" where there is none.

    Returns:
        The bytes; the same plan gives the same bytes.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)
    shown = plan_pictures(plan, language) if pictures is None else pictures
    content = sheet_content(plan, language, checked, system) | drawn_content(shown, language)
    content["qr"] = qr_content(link, language)
    svgs = {one.picture.name: one.svg for one in shown} | qr_picture(link)
    return typeset("job-sheet", content, svgs)
