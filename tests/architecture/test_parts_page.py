"""The page of parts is made anew and compared; for one column each step is left out once."""

import sys
from functools import cache

import pytest

from tests.architecture.tree import PACKAGE, ROOT

sys.path.insert(0, str(ROOT))  # docs/ is not installed

from docs.generate.parts import CHECKS, FILLED, NO_STEP, WORST_FIRST, Row, parts_page
from wintertight.coach.kinds import KINDS
from wintertight.coach.load import load_card
from wintertight.wording.names import kind_name

pytestmark = pytest.mark.long

PAGE = (ROOT / "docs" / "parts.md").read_text(encoding="utf-8")
CARDS = sorted((PACKAGE / "demo" / "cards").glob("*.toml"))


@cache
def rows() -> dict[str, Row]:
    """Give the rows of the page as it stands, by the name of their kind."""
    lines = [line for line in PAGE.splitlines() if line.startswith("| ")][1:]
    found = [Row(*(cell.strip() for cell in line.strip("|").split("|"))) for line in lines]
    return {row.kind: row for row in found}


def test_the_parts_page_is_up_to_date() -> None:
    """Guards that docs/parts.md shows what planning, and missing each step, gives now."""
    assert parts_page() == PAGE, "docs/parts.md is old: run make docs"


def test_every_kind_has_a_row() -> None:
    """Guards that no kind a card may name is missing, in the order in which they are defined."""
    assert list(rows()) == [kind_name(kind) for kind in KINDS]


@pytest.mark.parametrize("kind", KINDS)
def test_every_coach_that_has_a_kind_is_listed(kind: str) -> None:
    """Guards the column of coaches against the cards themselves; there is one for every kind."""
    cards = [load_card(path) for path in CARDS]
    having = [card.id for card in cards if any(f.kind == kind for f in card.fittings)]
    assert rows()[kind_name(kind)].coaches == ", ".join(having)
    assert having


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_is_checked_and_says_what_comes_of_missing_it(kind: str) -> None:
    """Guards that each row names a check, and a missed step's outcome or why there is none."""
    row = rows()[kind_name(kind)]
    named = row.checked_by.split("; ")
    assert named[0]
    assert set(named) <= set(CHECKS)
    if row.steps == NO_STEP:
        assert row.worst_if_missed == FILLED
    else:
        step, _, outcome = row.worst_if_missed.partition(": ")
        assert step in row.steps.split(", ")
        assert outcome in WORST_FIRST
