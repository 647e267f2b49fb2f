"""The page of wrong settings has them all; a few of its lines are made anew and compared."""

import sys

import pytest

from tests.architecture.tree import ROOT

sys.path.insert(0, str(ROOT))  # docs/ is not installed

from docs.generate.mistakes import line_of
from tests.unit.documents.demo_plans import demo_plan
from wintertight.procedure.mistakes import MISTAKES, possible_mistakes

pytestmark = pytest.mark.long

LINES = (ROOT / "docs" / "mistakes.md").read_text(encoding="utf-8").splitlines()


def test_every_wrong_setting_has_its_section() -> None:
    """Guards that the page names each key, in order, with a line for each circumstance."""
    assert [line[3:] for line in LINES if line.startswith("## ")] == list(MISTAKES)
    for hows in MISTAKES.values():
        for how in hows:
            assert any(line.startswith("- HL-") and f", {how}: *" in line for line in LINES), how


@pytest.mark.parametrize("key", ["inlet half open", "weak product", "cartridge left in"])
def test_some_lines_are_up_to_date(key: str) -> None:
    """Guards that docs/mistakes.md shows what comes of these mistakes now (else: make docs)."""
    plan = demo_plan("middle-travel-trailer")
    for mistake in possible_mistakes(plan):
        if mistake.key == key:
            assert line_of(plan, mistake) in LINES, "docs/mistakes.md is old: run make docs"
