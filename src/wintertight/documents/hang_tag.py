"""The hang tag: a card for the main tap that says what was done, or what is open."""

from wintertight.documents.coach_link import qr_picture
from wintertight.documents.recorded_job import RecordedJob
from wintertight.documents.tag_content import tag_content
from wintertight.documents.typeset import checked_paper, typeset
from wintertight.units import System


def hang_tag_pdf(
    job: RecordedJob,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
) -> bytes:
    """Give the hang tag of a job as a PDF/UA-1 file of one page.

    Args:
        job: the record and what follows from it.
        language: two letters.
        paper: the shop's paper: a tag is 4 by 6 in with "us-letter", A6 with "a4".
        system: "us" or "metric".

    Returns:
        The bytes; the same job gives the same bytes. A tag promises a temperature only where every
        part is proven to it and nothing in the record speaks against it.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)
    return typeset("hang-tag", tag_content(job, language, checked, system), qr_picture(job.link))
