"""The job sheet: a page or two to work from, then drawings; the same bytes, nothing lost."""

import io
import re
from dataclasses import replace

import pytest
from pypdf import PdfReader

from tests.unit.documents.demo_plans import (
    COLD,
    WARM,
    demo_card,
    doubtful_plan,
    long_named_card,
    plan_of,
)
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.sheet_content import never_skip, sheet_content
from wintertight.documents.typeset import PAPERS, Paper
from wintertight.errors import ChoiceError
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.steps import Missed

pytestmark = pytest.mark.long

POINTS_PER_MM = 72.0 / 25.4
LARGEST = {"us-letter": (612, 792), "a4": (595, 842)}


def read(pdf: bytes) -> PdfReader:
    """Open a sheet."""
    return PdfReader(io.BytesIO(pdf), strict=True)


def words(pdf: bytes) -> str:
    """Give all text of a sheet, blanks and line ends made one."""
    return " ".join(" ".join(page.extract_text() for page in read(pdf).pages).split())


def many_outlets(plan: Plan, times: int) -> Plan:
    """Give a plan whose outlets come several times over, under long names."""
    card = long_named_card()
    runs = [s for s in plan.steps if s.run]
    early = [s for s in plan.steps if s.step.phase in {"make safe", "drain", "set"}]
    late = [s for s in plan.steps if s.step.phase == "finish"]
    steps = [*early, *(runs * times), *late]
    return replace(
        plan, card=card, steps=tuple(replace(s, n=n) for n, s in enumerate(steps, start=1))
    )


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("missed", [False, True])
def test_the_work_fits_one_sheet(paper: Paper, missed: bool) -> None:  # noqa: FBT001 - two cases
    """Guards that the bundled coach's steps are two pages, one sheet, and drawings another."""
    pages = read(job_sheet_pdf(plan_of(missed=missed), paper=paper)).pages
    assert len(pages) == 4
    drawings = [n for n, page in enumerate(pages) if "Drawings" in page.extract_text()]
    assert drawings == [2]
    size = tuple(round(float(x)) for x in pages[0].mediabox[2:])
    assert size == LARGEST[paper]


@pytest.mark.parametrize("method", ["pump", "air-then-pump"])
def test_steps_stand_in_the_order_of_the_job(method: str) -> None:
    """Guards that no step stands before one that comes first, also where phases come back."""
    plan = plan_coach(demo_card(), plan_of().product, WARM, method)
    phases = sheet_content(plan, "en", "a4", "us")["phases"]
    shown = [
        row["n"]
        for phase in phases
        for some in phase["blocks"]
        for row in some.get("steps", some.get("outlets"))
    ]
    assert shown == [step.n for step in plan.steps]


def test_what_to_have_at_hand_stands_on_it() -> None:
    """Guards that the sheet names tools and small parts, each with a box to tick."""
    content = sheet_content(plan_of(), "en", "a4", "us")
    assert [some["lead"] for some in content["at_hand"]] == ["Tools", "Small parts that may be due"]
    text = words(job_sheet_pdf(plan_of()))
    for thing in (thing for some in content["at_hand"] for thing in some["things"]):
        assert thing in text


def test_everything_stands_on_it() -> None:
    """Guards that verdict, jugs, every step's number and the limits are on the sheet."""
    plan = plan_of()
    text = words(job_sheet_pdf(plan))
    assert "Protected as planned to -4 °F, once every step is done; void once water runs." in text
    assert f"Bring {plan.buy.count} jugs of Heron pink -50 (1 gal each)" in text
    assert "The coach's manual and local code come before this sheet." in text
    assert plan.card.card_hash.removeprefix("sha256:")[:10] in text
    for planned in plan.steps:
        assert re.search(rf"\b{planned.n} [A-Z]", text), planned.n
    telling = sum(s.telling for s in plan.steps)
    assert telling
    assert text.count("time it") == telling


def test_the_same_plan_gives_the_same_bytes() -> None:
    """Guards that a sheet can be compared and filed by its content."""
    assert job_sheet_pdf(plan_of()) == job_sheet_pdf(plan_of())


def test_it_can_be_read_aloud() -> None:
    """Guards that the sheet is tagged, titled and names its language, as PDF/UA asks."""
    pdf = read(job_sheet_pdf(plan_of()))
    assert pdf.metadata is not None
    assert pdf.metadata.title == "Job sheet HL-204"
    root = pdf.root_object
    assert str(root["/Lang"]) == "en"
    assert "/StructTreeRoot" in root
    assert "/Marked" in str(root["/MarkInfo"].get_object())
    assert b"<pdfuaid:part>1</pdfuaid:part>" in job_sheet_pdf(plan_of())


def test_it_can_be_kept() -> None:
    """Guards that the file says it is PDF/A-2a, made to be read in many years."""
    pdf = job_sheet_pdf(plan_of())
    assert b"<pdfaid:part>2</pdfaid:part>" in pdf
    assert b"<pdfaid:conformance>A</pdfaid:conformance>" in pdf


def test_print_is_never_too_small() -> None:
    """Guards that no text is under eight and a half points."""
    sizes: set[float] = set()

    def note(text: str, _cm: object, matrix: list[float], _font: object, size: float) -> None:
        if text.strip():
            sizes.add(round(abs(size * matrix[3]), 2))

    read(job_sheet_pdf(plan_of(missed=True))).pages[0].extract_text(visitor_text=note)
    assert sizes
    assert min(sizes) >= 8.5


def test_long_names_and_many_outlets_flow_on() -> None:
    """Guards that what does not fit flows to a second page that names the coach."""
    plan = many_outlets(plan_of(), 4)
    pdf = job_sheet_pdf(plan)
    pages = [page.extract_text() for page in read(pdf).pages]
    assert len(pages) > 4
    assert "HL-204" in pages[1]
    assert f"page 2 of {len(pages)}" in pages[1]
    assert "Outlet" in pages[1]
    text = words(pdf)
    assert "behind the tall cupboard" in text
    for planned in plan.steps:
        assert re.search(rf"\b{planned.n} [A-Z]", text), planned.n


def test_what_is_not_proven_is_on_the_sheet() -> None:
    """Guards that gaps and unknowns come with what to do, in groups."""
    gap = words(job_sheet_pdf(plan_of("Heron spirit -50", COLD)))
    assert "NOT protected to -31 °F" in gap
    assert "Take a stronger product, or empty it." in gap
    doubt = words(job_sheet_pdf(doubtful_plan()))
    assert "Any accumulator and any washing machine (not proven) Look; enter on the card" in doubt


def test_only_the_dearest_steps_are_marked() -> None:
    """Guards that hazards and the greatest losses are marked, and a small loss is not."""
    plan = plan_of()
    losses = {1: Missed("hazard", hazard="plug while hot"), 2: Missed("same")}
    losses |= {n: Missed("gap", ("heater",), n * 1e-3) for n in range(3, 13)}
    losses[13] = Missed("unproven", ("heater", "low-hot"), 1e-3)
    losses[14] = Missed("gap", ("heater", "low-hot"), 1.0, noticed=True)
    steps = tuple(replace(s, if_missed=losses.get(s.n)) for s in plan.steps)
    assert never_skip(replace(plan, steps=steps)) == {1, 11, 12, 13}
    assert never_skip(plan) == frozenset()


def test_words_of_a_card_are_words_only() -> None:
    """Guards that a name with the typesetter's own signs is printed as it is written."""
    strange = 'Coach *bold* #pagebreak() $x$ <a> \\ "q" _u_'
    plan = plan_of()
    card = plan.card.model_copy(update={"name": strange})
    assert strange in words(job_sheet_pdf(replace(plan, card=card)))


def test_a_paper_that_is_not_there_is_named() -> None:
    """Guards that a wrong paper is an error that says which there are."""
    with pytest.raises(ChoiceError, match="expected one of us-letter, a4"):
        job_sheet_pdf(plan_of(), paper="a3")
