"""Everything on paper of a visit: what a plan gives, what it costs, and what a record proves."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.estimate_paper import estimate_pdf
from wintertight.documents.guide_pictures import guide_pictures
from wintertight.documents.hang_tag import hang_tag_pdf
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.owner_guide import owner_guide_pdf
from wintertight.documents.recorded_job import RecordedJob
from wintertight.documents.typeset import Paper
from wintertight.documents.winter_record import winter_record_pdf
from wintertight.procedure.estimate import Estimate
from wintertight.procedure.plan import Plan
from wintertight.units import System

if TYPE_CHECKING:
    from pyhanko.sign.signers import SimpleSigner


@dataclass(frozen=True, eq=False, slots=True)
class Visit:
    """What the papers of a visit are made from.

    Attributes:
        plan: the plan.
        shop: name of the shop.
        estimate: what it costs; None where the shop has no price table.
        job: what was done; None before it is.
        link: address of the coach's page; "" where there is none.
        signer: what signs the winter record; None where nobody does.
    """

    plan: Plan
    shop: str = ""
    estimate: Estimate | None = None
    job: RecordedJob | None = None
    link: str = ""
    signer: "SimpleSigner | None" = None


def visit_papers(
    visit: Visit, language: str = "en", paper: Paper = "us-letter", system: System = "us"
) -> Iterator[tuple[str, bytes]]:
    """Make every paper and drawing of a visit.

    Args:
        visit: what they are made from.
        language: two letters.
        paper: of what is printed.
        system: units of what is printed.

    Yields:
        Name of a file and its bytes: the papers, then the drawings in the order of the job.
    """
    plan, look = visit.plan, (language, paper, system)
    coach, drawn = plan.card.id, plan_pictures(plan, language)
    if visit.estimate is not None:
        yield f"{coach}-estimate.pdf", estimate_pdf(visit.estimate, plan, visit.shop, *look)
    yield f"{coach}-job-sheet.pdf", job_sheet_pdf(plan, *look, drawn, visit.link)
    guide = owner_guide_pdf(plan, *look, guide_pictures(plan, drawn))
    yield f"{coach}-owners-guide.pdf", guide
    if visit.job is not None:
        yield f"{coach}-winter-record.pdf", winter_record_pdf(visit.job, *look, visit.signer)
        yield f"{coach}-hang-tag.pdf", hang_tag_pdf(visit.job, *look)
    for one in drawn:
        yield f"{coach}-{one.picture.name}.svg", one.svg.encode("utf-8")
