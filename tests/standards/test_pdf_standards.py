"""Every paper is PDF/UA-1 and PDF/A-2a by a validator that is not ours."""

import io
import re
from collections.abc import Callable
from datetime import date
from functools import cache

import pytest
from pypdf import PdfReader

from tests.recorded_jobs import LINK, demo_job
from tests.standards.validator import faults
from tests.unit.documents.demo_plans import DEMO, demo_plan
from wintertight.coach.shop import load_shop
from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.estimate_paper import estimate_pdf
from wintertight.documents.guide_pictures import guide_pictures
from wintertight.documents.hang_tag import hang_tag_pdf
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.owner_guide import owner_guide_pdf
from wintertight.documents.typeset import PAPERS, Paper
from wintertight.documents.winter_record import winter_record_pdf
from wintertight.procedure.estimate import estimate_job
from wintertight.procedure.priced_job import priced_job
from wintertight.wording.catalogue import LANGUAGES

EDGE_PT = 4.0 / 25.4 * 72.0
"""Width of the edge that most printers leave blank [pt]; common practice."""

CARDS = ("large-motorhome", "on-demand-van")


def _sheet(card: str, language: str, paper: Paper) -> bytes:
    return job_sheet_pdf(demo_plan(card), language, paper, link=LINK)


def _guide(card: str, language: str, paper: Paper) -> bytes:
    plan = demo_plan(card)
    shown = guide_pictures(plan, plan_pictures(plan, language))
    return owner_guide_pdf(plan, language, paper, "us", shown)


def _estimate(card: str, language: str, paper: Paper) -> bytes:
    plan, shop = demo_plan(card), load_shop(DEMO / "shop.toml")
    assert shop.prices is not None
    priced = estimate_job(priced_job(plan), shop.prices, date(2026, 10, 15))
    return estimate_pdf(priced, plan, shop.name, language, paper)


def _record(card: str, language: str, paper: Paper) -> bytes:
    return winter_record_pdf(demo_job(f"{card}-bad", LINK), language, paper)


def _tag(card: str, language: str, paper: Paper) -> bytes:
    return hang_tag_pdf(demo_job(f"{card}-bad", LINK), language, paper)


MADE: dict[str, Callable[[str, str, Paper], bytes]] = {
    "job sheet": _sheet,
    "owner's guide": _guide,
    "estimate": _estimate,
    "winter record": _record,
    "hang tag": _tag,
}


@cache
def made(name: str, card: str, language: str, paper: Paper) -> bytes:
    """Give a paper; each is made once."""
    return MADE[name](card, language, paper)


@pytest.mark.parametrize("card", CARDS)
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", MADE)
def test_a_paper_breaks_no_rule(name: str, paper: Paper, language: str, card: str) -> None:
    """Guards that screen readers and archives can rely on each paper (ISO 14289-1, ISO 19005-2)."""
    assert faults(made(name, card, language, paper)) == []


@pytest.mark.parametrize("card", CARDS)
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", MADE)
def test_nothing_is_printed_where_no_printer_prints(
    name: str, paper: Paper, language: str, card: str
) -> None:
    """Guards that every line keeps 4 mm from the edge: what most printers cannot reach."""
    outside: list[str] = []
    for sheet in PdfReader(io.BytesIO(made(name, card, language, paper))).pages:
        width, height = (float(side) for side in sheet.mediabox[2:])

        def note(text: str, cm: list[float], tm: list[float], _font: object, size: float) -> None:
            x = cm[0] * tm[4] + cm[2] * tm[5] + cm[4]
            y = cm[1] * tm[4] + cm[3] * tm[5] + cm[5]
            high = abs(size * tm[3] * cm[3])
            inside = EDGE_PT < x < width - EDGE_PT and EDGE_PT < y < height - EDGE_PT - high  # noqa: B023
            if text.strip() and not inside:
                outside.append(text)

        sheet.extract_text(visitor_text=note)
    assert outside == []


@pytest.mark.parametrize(
    ("there", "instead", "rule"),
    [
        (b"/MarkInfo<</Marked true", b"/MarkInfo<</Marked null", "PDFUA1"),
        (b"<pdfuaid:part>1<", b"<pdfuaid:part>9<", "PDFUA1"),
        (b"<pdfaid:part>2<", b"<pdfaid:part>7<", "PDFA2A"),
    ],
)
def test_a_spoiled_paper_is_found_out(there: bytes, instead: bytes, rule: str) -> None:
    """Guards that the validator can fail: one mark spoiled, and it names a rule."""
    sheet = _tag("on-demand-van", "en", "a4")
    assert sheet.count(there) == 1
    assert any(fault.startswith(rule) for fault in faults(sheet.replace(there, instead)))


def test_a_wrong_count_is_found_out() -> None:
    """Guards that counts are still checked where the validator's own count is looked into."""
    sheet = _tag("on-demand-van", "en", "a4")
    for found in list(re.finditer(rb"/Length (\d+)", sheet))[:5]:
        wrong = b"%0*d" % (len(found[1]), (int(found[1]) + 9) % 10 ** len(found[1]))
        spoiled = sheet[: found.start(1)] + wrong + sheet[found.end(1) :]
        assert any("LENGTH" in fault for fault in faults(spoiled))
