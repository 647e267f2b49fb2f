"""Sets a paper: plain content in, the bytes of a PDF out; the same content gives the same bytes."""

import json
from collections.abc import Mapping
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Any, Literal, get_args

import typst

from wintertight.documents.printed_text import numbers_as_written
from wintertight.errors import ChoiceError

Paper = Literal["us-letter", "a4"]

PAPERS: tuple[Paper, ...] = get_args(Paper)

TEMPLATES = Path(__file__).with_name("templates")

FONTS = TEMPLATES / "fonts"

PRINTED_AT = datetime(2000, 1, 1, tzinfo=UTC)
"""Every paper carries this date of creation, so that the same content gives the same bytes."""


def checked_paper(paper: str) -> Paper:
    """Give a size of paper by its name.

    Raises:
        ChoiceError: there is no such paper.
    """
    for known in PAPERS:
        if paper == known:
            return known
    message = f"no paper is called '{paper}'; expected one of {', '.join(PAPERS)}"
    raise ChoiceError(message)


def typeset(
    template: str, content: Mapping[str, Any], pictures: Mapping[str, str] | None = None
) -> bytes:
    """Set a paper as a file that is both PDF/UA-1 and PDF/A-2a.

    Args:
        template: name of a file in ``templates``, without its ending.
        content: plain data for it, its language under ``lang``; ``sheet`` there.
        pictures: SVG texts by name; ``pictures`` there, each to be shown with its own words.

    Returns:
        The bytes.
    """
    made = _compiler(template).compile(
        format="pdf",
        sys_inputs={
            "sheet": json.dumps(numbers_as_written(content, content["lang"]), ensure_ascii=False),
            "pictures": json.dumps(dict(pictures or {}), ensure_ascii=False),
        },
        pdf_standards=["ua-1", "a-2a"],
        timestamp=PRINTED_AT,
    )
    if not isinstance(made, bytes):
        message = "the typesetter gave no single file"
        raise TypeError(message)
    return made


@cache
def _compiler(template: str) -> typst.Compiler:
    """Give the typesetter with our own fonts only, so that a paper looks alike everywhere."""
    return typst.Compiler(
        TEMPLATES / f"{template}.typ",
        root=TEMPLATES,
        font_paths=[FONTS],
        ignore_system_fonts=True,
    )
