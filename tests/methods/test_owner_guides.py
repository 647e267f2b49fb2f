"""The owner's guide of every method on every coach of the demo."""

import io

import pytest
from pypdf import PdfReader

from tests.methods.every_plan import EVERY, plan_of
from wintertight.documents.owner_guide import owner_guide_pdf, page_count
from wintertight.documents.shown_cautions import shown_cautions
from wintertight.documents.typeset import PAPERS
from wintertight.wording.names import part_name
from wintertight.wording.steps import caution

NEVER = {
    "pump": "When a tap never clears",
    "hand-pump": "When a tap never clears",
    "air": "When an outlet never blows clear",
    "air-then-pump": "When a tap never clears",
    "drain": "When it does not run empty",
    "hold": "When it does not run empty",
    "thaw": "When a section does not hold",
}


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_a_guide_of_every_method_is_whole(name: str, method: str) -> None:
    """Guards two pages, every caution, every outlet, every heater and the end."""
    plan = plan_of(name, method)
    for paper in PAPERS if method == "air-then-pump" else PAPERS[:1]:
        pdf = owner_guide_pdf(plan, paper=paper)
        assert page_count(pdf) <= 2, paper
        pages = PdfReader(io.BytesIO(pdf)).pages
        text = " ".join(" ".join(page.extract_text() for page in pages).split())
        for keys in shown_cautions(plan.steps).values():
            assert all(f"Mind: {caution(key)}" in text for key in keys)
        for planned in plan.steps:
            if planned.step.key in {"run outlet", "blow outlet", "heat off"}:
                told = part_name(plan.card, planned.step.part).partition(", ")[0]
                assert told.lower() in text.lower()
        assert NEVER[method] in text
        assert ("Void once water runs" in text) is (method != "thaw")
        assert ("Only then heat on" in text) is (
            method != "thaw" and any(f.heat for f in plan.card.fittings)
        )
        assert ("never to 50 psi or more" in text) is ("air" in method)
