"""A card with one fitting less: the branch goes, the rest holds together."""

import pytest

from tests.unit.procedure.demo_coach import card
from wintertight.coach.edit import without_fitting
from wintertight.coach.plumbing import plumbing_faults


def test_an_outlet_goes_with_its_branch() -> None:
    """Guards that the lines that led only to it are gone, and it stands on the card as absent."""
    whole = card()
    edited = without_fitting(whole, "toilet")
    assert edited is not None
    assert edited.fitting["toilet"].seen == "absent"
    assert all("toilet" not in (line.start.fitting, line.end.fitting) for line in edited.lines)
    assert len(edited.lines) < len(whole.lines)
    assert not plumbing_faults(edited)
    assert edited.card_hash != whole.card_hash
    assert edited.fitting is not whole.fitting


def test_what_drained_into_it_drains_on() -> None:
    """Guards that a sink whose trap is missing drains into what is below the trap."""
    whole = card()
    edited = without_fitting(whole, "kitchen-trap")
    assert edited is not None
    assert edited.fitting["kitchen"].drains_to == whole.fitting["kitchen-trap"].drains_to


@pytest.mark.parametrize("name", ["pump", "fresh-tank", "heater", "filter", "kitchen-cold-tee"])
def test_what_others_are_fed_through_stays(name: str) -> None:
    """Guards that a coach is never torn apart on a word."""
    assert without_fitting(card(), name) is None


def test_nothing_is_taken_off_twice() -> None:
    """Guards an unknown fitting, and one that is absent already."""
    once = without_fitting(card(), "toilet")
    assert once is not None
    assert without_fitting(once, "toilet") is None
    assert without_fitting(card(), "no-such-thing") is None
