"""The winter record: what was done to a coach, what that proves, and what is open."""

from typing import TYPE_CHECKING

from wintertight.documents.coach_link import qr_picture
from wintertight.documents.drawing.of_plan import end_drawn
from wintertight.documents.record_content import record_content
from wintertight.documents.recorded_job import RecordedJob
from wintertight.documents.signed_paper import sign_paper
from wintertight.documents.typeset import checked_paper, typeset
from wintertight.units import System
from wintertight.wording.catalogue import say

if TYPE_CHECKING:
    from pyhanko.sign.signers import SimpleSigner


def winter_record_pdf(
    job: RecordedJob,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
    signer: "SimpleSigner | None" = None,
) -> bytes:
    """Give the winter record of a job as a PDF/UA-1 and PDF/A-2a file.

    Args:
        job: the record and what follows from it.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".
        signer: what signs it, as `read_signer` gives it; nobody does where None.

    Returns:
        The bytes; the same job gives the same bytes, unless it is signed.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)
    end = end_drawn(job.done.plan, language)
    content = record_content(job, language, checked, system, (end,))
    pdf = typeset("winter-record", content, {end.picture.name: end.svg} | qr_picture(job.link))
    if signer is None:
        return pdf
    reason, field = (say("winter record", key, language) for key in ("technician", "signatures"))
    return sign_paper(pdf, signer, reason, field)
