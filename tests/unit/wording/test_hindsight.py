"""What a record tells has its words: every cause, every observation, every reason for nothing."""

import pytest

from tests.demo_records import proved
from wintertight.procedure.chances import AS_RECORDED, CHANCE
from wintertight.procedure.hindsight.explanations import CAUSE_OF
from wintertight.procedure.hindsight.look_back import Cause, Sight
from wintertight.procedure.mistakes import MISTAKES
from wintertight.wording.english import ENGLISH
from wintertight.wording.hindsight import cause_text, cure_text, likelihood, sight_text


def test_every_cause_has_a_name_and_words() -> None:
    """Guards that what can be found can be said, in passing and in full."""
    assert set(ENGLISH["cause in passing"]) == {AS_RECORDED, *CHANCE}
    by_mistake = set(CAUSE_OF.values())
    assert set(ENGLISH["cause"]) == {AS_RECORDED, *CHANCE} - by_mistake
    assert set(CAUSE_OF) == set(MISTAKES)


def test_every_cause_has_a_cure() -> None:
    """Guards that a named cause says what to do about it."""
    found = proved("small-trailer-bad")
    assert found.told is not None
    for cause in found.told.causes:
        cure = cure_text(cause)
        assert bool(cure) == (cause.explanation.cause != AS_RECORDED)
        assert "{" not in cure
        assert "{" not in cause_text(cause, found.done.plan.card)


@pytest.mark.parametrize(
    ("sight", "says"),
    [
        (Sight("colour", "kitchen.hot", 0.0, 4.0, 0.0, 3.0), "at once; as recorded after 4 s"),
        (Sight("none", "kitchen.hot", None, 4.0, None, 9.0), "no colour at the"),
        (Sight("untimed", "kitchen.hot", None, 4.0, None, 9.0), "no time written down at the"),
        (Sight("jugs", "0", 0.0076, 0.0095, 0.0095, 2.0), "2 gal gone from the jugs"),
        (Sight("strength", "jug", 0.75, 1.0, 1.0, 5.0), "in the jug itself"),
        (Sight("strength", "kitchen.hot", 0.7, None, None, 9.0), "as recorded none"),
    ],
)
def test_an_observation_is_told_beside_what_was_expected(sight: Sight, says: str) -> None:
    """Guards the words of each sort of observation."""
    card = proved("small-trailer-bad").done.plan.card
    assert says in sight_text(sight, card)


def test_nothing_is_told_as_certain() -> None:
    """Guards that a likelihood never reads as a hundred per cent."""
    assert likelihood(1.0) == "99 %"
    found = proved("small-trailer-bad")
    assert found.told is not None
    assert isinstance(found.told.causes[0], Cause)
    assert sum(cause.fits for cause in found.told.causes) == pytest.approx(1.0)
