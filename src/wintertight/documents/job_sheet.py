"""The job sheet: one page that a technician carries to the coach and writes on."""

import json
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Literal

import typst

from wintertight.documents.sheet_content import sheet_content
from wintertight.errors import ChoiceError
from wintertight.procedure.plan import Plan
from wintertight.units import System

Paper = Literal["us-letter", "a4"]

PAPERS: tuple[Paper, ...] = ("us-letter", "a4")

TEMPLATES = Path(__file__).with_name("templates")

PRINTED_AT = datetime(2000, 1, 1, tzinfo=UTC)
"""Every sheet carries this date of creation, so that the same plan gives the same bytes."""


def job_sheet_pdf(
    plan: Plan,
    language: str = "en",
    paper: Paper = "us-letter",
    system: System = "us",
) -> bytes:
    """Give the job sheet of a plan as a PDF/UA-1 file.

    Args:
        plan: the plan.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".

    Returns:
        The bytes; the same plan gives the same bytes.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    if paper not in PAPERS:
        message = f"no paper is called '{paper}'; expected one of {', '.join(PAPERS)}"
        raise ChoiceError(message)
    content = json.dumps(sheet_content(plan, language, paper, system), ensure_ascii=False)
    made = _compiler().compile(
        format="pdf",
        sys_inputs={"sheet": content},
        pdf_standards="ua-1",
        timestamp=PRINTED_AT,
    )
    if not isinstance(made, bytes):
        message = "the typesetter gave no single file"
        raise TypeError(message)
    return made


@cache
def _compiler() -> typst.Compiler:
    """Give the typesetter with our own fonts only, so that a sheet looks alike everywhere."""
    return typst.Compiler(
        TEMPLATES / "job-sheet.typ",
        root=TEMPLATES,
        font_paths=[TEMPLATES / "fonts"],
        ignore_system_fonts=True,
    )
