from pathlib import Path

import pytest

import wintertight
from wintertight.coach.findings import findings
from wintertight.coach.kinds import KINDS
from wintertight.coach.load import load_card

CARDS = sorted((Path(wintertight.__file__).parent / "demo/cards").glob("*.toml"))
WORTH_KNOWING = {"no shut-off", "no bypass", "no antifreeze inlet"}
"""Findings that are true of these coaches, and no slips of their cards."""


@pytest.mark.parametrize("path", CARDS, ids=lambda p: p.stem)
def test_a_demo_card_has_no_slips(path: Path) -> None:
    """Guards the bundled cards: they read, and what is said of them is meant."""
    assert {finding.key for finding in findings(load_card(path))} <= WORTH_KNOWING


def test_every_kind_of_fitting_is_in_some_coach() -> None:
    """Guards that no kind is without an example, and so without a run through the engine."""
    seen = {fitting.kind for path in CARDS for fitting in load_card(path).fittings}
    assert sorted(set(KINDS) - seen) == []


def test_no_two_coaches_share_a_number() -> None:
    """Guards the shop's numbers."""
    ids = [load_card(path).id for path in CARDS]
    assert len(set(ids)) == len(ids)
