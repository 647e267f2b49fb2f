"""The owner's guide: two pages for the owner who winterizes a coach alone."""

import json
import re
from collections.abc import Mapping
from dataclasses import replace
from functools import cache
from types import MappingProxyType
from typing import Any

from wintertight.documents.guide_content import guide_content
from wintertight.documents.guide_density import (
    LARGEST_PT,
    MOST_PAGES,
    WITHOUT_WHYS,
    Density,
    roomiest,
)
from wintertight.documents.typeset import checked_paper, typeset
from wintertight.procedure.plan import Plan
from wintertight.units import System

NO_PICTURES: Mapping[str, str] = MappingProxyType({})

_PAGES = re.compile(rb"/Type\s*/Pages\s*/Count (\d+)")


def owner_guide_pdf(
    plan: Plan,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
    pictures: Mapping[str, str] = NO_PICTURES,
) -> bytes:
    """Give the owner's guide of a plan as a PDF/UA-1 file.

    It is set as roomily as two pages allow; for a coach that does not fit two pages at the closest
    setting it flows on, and nothing is left out.

    Args:
        plan: the plan.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".
        pictures: SVG texts by name: "bypass", how the bypass stands, and "way in", where the
            antifreeze comes in; the guide is whole without them.

    Returns:
        The bytes; the same plan gives the same bytes.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)

    @cache
    def said(density: Density) -> Mapping[str, Any]:
        return guide_content(plan, language, checked, system, density, frozenset(pictures))

    @cache
    def set_at(density: Density) -> bytes:
        words = said(replace(density, size_pt=LARGEST_PT, run_in=False))
        content = {**words, "size_pt": density.size_pt, "run_in": density.run_in}
        return typeset("owner-guide", content, pictures)

    def fits(density: Density) -> bool:
        return page_count(set_at(density)) <= MOST_PAGES

    letters = len(json.dumps(said(WITHOUT_WHYS[0]), ensure_ascii=False))
    return set_at(roomiest(fits, letters, len(pictures)))


def page_count(pdf: bytes) -> int:
    """Give the number of pages of a PDF that the typesetter made.

    Args:
        pdf: its bytes.

    Returns:
        The number of pages [1].

    Raises:
        ValueError: there is no tree of pages in it.
    """
    found = _PAGES.search(pdf)
    if found is None:
        message = "expected a PDF with a tree of pages"
        raise ValueError(message)
    return int(found[1])
