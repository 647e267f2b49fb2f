"""The page of coaches made from answers is what the plan says now, and as the trade expects."""

import pytest

from docs.generate.coaches import row_of, shape_plan
from tests.architecture.tree import ROOT
from wintertight.coach.intake.shapes import SHAPES
from wintertight.units import GALLON_M3

pytestmark = pytest.mark.long

PAGE = (ROOT / "docs" / "coaches.md").read_text(encoding="utf-8")

BYPASSED_TRAILERS = (
    "short travel trailer",
    "long bunkhouse trailer",
    "rear-kitchen trailer",
    "fifth wheel, one bath",
    "toy hauler",
)


@pytest.mark.parametrize("shape", ["teardrop", "short travel trailer", "camper van"])
def test_the_page_of_coaches_is_up_to_date(shape: str) -> None:
    """Guards that docs/coaches.md shows what a plan says now (else: make docs)."""
    assert row_of(shape) in PAGE


def test_every_shape_has_its_row() -> None:
    """Guards that no shape is missing from the page, and none is left that is gone."""
    rows = [line.split("|")[1].strip() for line in PAGE.splitlines() if line.startswith("| ")]
    assert rows[1:] == list(SHAPES)


@pytest.mark.parametrize("shape", BYPASSED_TRAILERS)
def test_a_trailer_with_a_bypass_takes_what_the_trade_takes(shape: str) -> None:
    """Guards common practice: one to four gallons for a trailer whose heater is bypassed."""
    plan = shape_plan(shape)
    assert plan.verdict == "safe"
    assert 1.0 <= plan.antifreeze.p50 / GALLON_M3 <= 4.0


def test_a_large_motorhome_takes_more() -> None:
    """Guards common practice: a large motorhome takes more than any trailer with a bypass."""
    most = max(shape_plan(shape).antifreeze.p50 for shape in BYPASSED_TRAILERS)
    assert shape_plan("rear-engine motorhome").antifreeze.p50 > most
