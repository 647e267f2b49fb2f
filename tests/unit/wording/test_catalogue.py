"""Every language says the same things."""

from string import Formatter

import pytest

from wintertight.errors import ChoiceError
from wintertight.wording.catalogue import LANGUAGES, Catalogue, catalogue, say, say_best
from wintertight.wording.english import ENGLISH


def differences(catalogue: Catalogue) -> list[str]:
    """Give what a catalogue has missing, surplus or with other names in braces than English."""
    found = [f"subject {s}" for s in sorted(set(catalogue) ^ set(ENGLISH))]
    for subject in sorted(set(catalogue) & set(ENGLISH)):
        ours, theirs = ENGLISH[subject], catalogue[subject]
        found += [f"{subject}/{k} missing" for k in sorted(set(ours) - set(theirs))]
        found += [f"{subject}/{k} surplus" for k in sorted(set(theirs) - set(ours))]
        found += [
            f"{subject}/{k} names"
            for k in sorted(set(ours) & set(theirs))
            if names_in(ours[k]) != names_in(theirs[k])
        ]
    return found


def names_in(sentence: str) -> set[str]:
    """Give the names in braces."""
    return {name for _, name, _, _ in Formatter().parse(sentence) if name}


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_language_is_complete(language: str) -> None:
    """Guards that no key is missing or surplus in any language, and that the names fit."""
    assert differences(catalogue(language)) == []


def test_a_missing_and_a_surplus_key_are_found() -> None:
    """Guards the comparison itself with a catalogue spoilt on purpose."""
    reasons = {k: t for k, t in ENGLISH["reason"].items() if k != "blend"}
    reasons |= {"new": "New.", "freezes": "It freezes at {where}."}
    spoilt = {**ENGLISH, "reason": reasons, "odd": {}}
    assert differences(spoilt) == [
        "subject odd",
        "reason/blend missing",
        "reason/new surplus",
        "reason/freezes names",
    ]


def test_an_unknown_language_is_named() -> None:
    """Guards that a language that is not there is an error that says which are."""
    with pytest.raises(ChoiceError, match="no language is called 'xx'; expected one of en"):
        say("claim", "filled", "xx")


def test_a_missing_name_is_an_error() -> None:
    """Guards that no sentence is said with a hole in it."""
    with pytest.raises(KeyError, match="part"):
        say("step", "open tank drain")


def test_the_circumstances_choose_the_sentence() -> None:
    """Guards that the first circumstance with a sentence of its own wins, and none is no error."""
    given = {"part": "toilet", "colour": "at once", "run_on": "3 s"}
    assert "pedal" in say_best("step", "run outlet", ("tub", "gravity toilet"), **given)
    assert "pedal" not in say_best("step", "run outlet", ("tub",), **given)
