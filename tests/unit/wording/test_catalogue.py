"""Every language says the same things."""

import re
import subprocess
import sys
from collections.abc import Mapping
from string import Formatter
from types import MappingProxyType

import pytest

from wintertight.errors import ChoiceError
from wintertight.wording.catalogue import LANGUAGES, Catalogue, catalogue, say, say_best
from wintertight.wording.english import ENGLISH

OTHERS = [language for language in LANGUAGES if language != "en"]

SAME: Mapping[str, frozenset[str]] = MappingProxyType(
    {
        "es": frozenset({"Total", "material", "no", "no, n", "{middle} min ({low}-{high})"}),
        "fr": frozenset(
            {
                "Date",
                "Signature",
                "Signatures",
                "Total",
                "Verdict",
                "volume",
                "{middle} min ({low}-{high})",
            }
        ),
    }
)
"""What is said in a language just as in English."""

AS_IT_IS = re.compile(r"Wintertight|--[a-z]+=\S+|[\W\d_]")
"""The name of the program, an option, and signs: the same in every language."""

PAIRS = ("()", "[]", "«»", "¿?", "¡!")
SIGNS = {"talk": frozenset({"keys"})}
"""Sentences that speak of the signs themselves."""


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


def without_names(sentence: str) -> str:
    """Give a sentence without the names in braces, and without what every language shares."""
    return AS_IT_IS.sub("", re.sub(r"\{\w+\}", "", sentence))


@pytest.mark.parametrize("language", OTHERS)
def test_nothing_is_left_in_english(language: str) -> None:
    """Guards that no sentence is a copy of the English one, but for a short list of words."""
    told = catalogue(language)
    copied = {
        sentence
        for subject, sentences in ENGLISH.items()
        for key, sentence in sentences.items()
        if told[subject][key] == sentence and without_names(sentence)
    }
    assert copied == SAME[language]


@pytest.mark.parametrize("language", LANGUAGES)
def test_sentences_are_clean(language: str) -> None:
    """Guards against sentences that are empty, and marks that open and do not close."""
    wrong = []
    for subject, sentences in catalogue(language).items():
        for key, sentence in sentences.items():
            pairs = [pair for pair in PAIRS if language == "es" or pair not in {"¿?", "¡!"}]
            open_marks = any(sentence.count(p[0]) != sentence.count(p[1]) for p in pairs)
            signs = key in SIGNS.get(subject, ())
            if not sentence.strip(" ,") and key not in {"comma", "thousands"}:
                wrong.append((subject, key))
            if (open_marks and not signs) or sentence.count('"') % 2 or ".." in sentence:
                wrong.append((subject, key))
    assert wrong == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_language_is_read_when_it_is_asked_for(language: str) -> None:
    """Guards that the command line does not read catalogues that nobody asked for."""
    module, _ = LANGUAGES[language]
    lines = (
        "import sys",
        "from wintertight.wording.catalogue import say",
        "say('claim', 'filled')",
        f"assert {module!r} not in sys.modules",
        f"say('claim', 'filled', {language!r})",
        f"assert {module!r} in sys.modules",
    )
    subprocess.run([sys.executable, "-c", "\n".join(lines)], check=True)  # noqa: S603 - ours


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
