"""The winter record: what was done to a coach, what that proves, and what is open."""

from wintertight.documents.coach_link import qr_picture
from wintertight.documents.drawing.of_plan import end_drawn
from wintertight.documents.record_content import record_content
from wintertight.documents.recorded_job import RecordedJob
from wintertight.documents.typeset import checked_paper, typeset
from wintertight.units import System


def winter_record_pdf(
    job: RecordedJob,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
) -> bytes:
    """Give the winter record of a job as a PDF/UA-1 file.

    Args:
        job: the record and what follows from it.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".

    Returns:
        The bytes; the same job gives the same bytes.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)
    end = end_drawn(job.done.plan, language)
    content = record_content(job, language, checked, system, (end,))
    return typeset("winter-record", content, {end.picture.name: end.svg} | qr_picture(job.link))
