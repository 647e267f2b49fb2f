import sys

import pytest

from tests.architecture.tree import ROOT

sys.path.insert(0, str(ROOT))  # docs/ is not installed

from docs.generate.accuracy import accuracy_page, page_of

pytestmark = pytest.mark.long

ROW = {
    "source": "crc",
    "place": "p. 1",
    "what": "a [m]",
    "theirs": "0.350",
    "ours": 0.35024,
    "difference": 0.00024,
    "tolerance": 0.0005,
    "why": "",
}


def test_the_accuracy_page_is_up_to_date() -> None:
    """Guards that docs/accuracy.md shows what the checks give now (else: make docs)."""
    page = (ROOT / "docs" / "accuracy.md").read_text(encoding="utf-8")
    assert page == accuracy_page(), "docs/accuracy.md is old: run make docs"


def test_a_row_survives_another_machine() -> None:
    """Guards that last digits of arithmetic do not change the page, and real changes do."""
    page = page_of([ROW])
    assert "| crc | p. 1 | a [m] | 0.350 | 0.3502 | +0.00024 | 0.0005 |  |" in page
    assert page == page_of([{**ROW, "ours": 0.35024 + 1e-13, "difference": 0.00024 + 1e-13}])
    assert page != page_of([{**ROW, "difference": 0.0003}])
