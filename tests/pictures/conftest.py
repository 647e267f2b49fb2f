"""One browser for all pictures, and the plans of the demo's coaches."""

from collections.abc import Iterator
from functools import cache

import pytest

from tests.architecture.tree import ROOT
from tests.pictures.browser import Browser, browser
from tests.unit.procedure.demo_coach import PINK, celsius
from wintertight.coach.load import load_card
from wintertight.procedure.plan import Plan, plan_coach

FOLDER = ROOT / "src" / "wintertight" / "demo" / "cards"
CARDS = tuple(sorted(path.stem for path in FOLDER.glob("*.toml")))


@cache
def plan_of(card: str) -> Plan:
    """Plan a coach of the demo to -10 degF."""
    return plan_coach(load_card(FOLDER / f"{card}.toml"), PINK, celsius(-10.0))


@pytest.fixture(scope="session")
def page() -> Iterator[Browser]:
    """Give the browser."""
    with browser() as started:
        yield started
