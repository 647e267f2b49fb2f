"""The drawings that README and manual show are those of the program."""

import pytest

from docs.generate.drawings import SHOWN, drawing
from tests.architecture.tree import ROOT

pytestmark = pytest.mark.long


@pytest.mark.parametrize("name", SHOWN)
def test_a_shown_drawing_is_up_to_date(name: str) -> None:
    """Guards that docs/drawings shows what is drawn now (else: make docs)."""
    assert (ROOT / "docs" / "drawings" / f"{name}.svg").read_text("utf-8") == drawing(name)


def test_every_drawing_is_shown_somewhere() -> None:
    """Guards against a drawing in the folder that no page shows."""
    pages = "".join((ROOT / p).read_text("utf-8") for p in ("README.md", "docs/manual.md"))
    there = {path.stem for path in (ROOT / "docs" / "drawings").glob("*.svg")}
    assert there == set(SHOWN)
    assert all(f"drawings/{name}.svg" in pages for name in SHOWN)
