"""A plan in French: no longer than in English, and nothing in it that was put together badly."""

import re
from collections.abc import Callable
from functools import partial
from io import BytesIO

import pytest
from pypdf import PdfReader

from tests.unit.documents.demo_plans import demo_plan, doubtful_plan, plan_of
from wintertight.documents.job_sheet import job_sheet_pdf
from wintertight.documents.screen import plan_screen
from wintertight.documents.typeset import Paper
from wintertight.procedure.plan import Plan
from wintertight.wording.french.typography import NARROW

pytestmark = pytest.mark.long

BROKEN = re.compile(
    rf"[{{}}]|\w'\w|(?<=\w) [:;?!%]|\b[Dd]e le\b|\b[Dd]e les\b|\bà les?\b|\.\.|\.[{NARROW} ]:"
    r"|\b1 éléments\b|\b1 bidons\b|\b1 tasses\b"
)
"""A hole, an apostrophe or a blank that is not French print, an article that should be joined."""


@pytest.mark.parametrize("paper", ["us-letter", "a4"])
def test_the_french_work_fits_one_sheet(paper: Paper) -> None:
    """Guards that French, which is longer, still leaves two pages of work, then drawings."""
    pages = PdfReader(BytesIO(job_sheet_pdf(plan_of(missed=True), "fr", paper))).pages
    assert len(pages) == 4
    assert "Schémas" in pages[2].extract_text()
    text = " ".join(pages[0].extract_text().split())
    assert "Feuille de travail" in text
    assert "impératif" in text


@pytest.mark.parametrize(
    "made",
    [
        plan_of,
        doubtful_plan,
        partial(demo_plan, "large-motorhome"),
        partial(demo_plan, "on-demand-van"),
    ],
    ids=["usual", "doubtful", "large", "van"],
)
def test_a_french_plan_is_put_together_well(made: Callable[[], Plan]) -> None:
    """Guards print, plurals and articles of whole plans with every part named."""
    assert BROKEN.findall(plan_screen(made(), "fr", all_parts=True)) == []


def test_what_is_badly_put_together_is_found() -> None:
    """Guards the pattern itself with pieces joined wrong on purpose."""
    for wrong in ("Vidange de le réservoir", "l'eau", "Ouvrir : {part}", "1 bidons", "là .."):
        assert BROKEN.search(wrong)
