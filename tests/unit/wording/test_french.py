"""The French catalogue: its print, its grammar around inserted names, and what stayed English."""

import re
from collections.abc import Iterator

import pytest

from wintertight.wording.english import ENGLISH
from wintertight.wording.french import FRENCH
from wintertight.wording.french.typography import APOSTROPHE, NARROW, typeset

NAMES = "part|parts|heater|outlet|outlets|kind|missing|cause|causes|kinds|choices|subjects"
"""What is inserted as a name, of which nobody knows the gender."""

BEFORE_A_NAME = re.compile(rf"(?:^|[:(,.] |\(|« |\bdont |\bpourrait être )\{{(?:{NAMES})\}}")
ANY_NAME = re.compile(rf"\{{(?:{NAMES})\}}")

SAFE = re.compile(r"\b(?:sûre?s?|sans danger|sans risque|en sécurité)\b")


def sentences() -> Iterator[tuple[str, str, str]]:
    """Give every French sentence with its subject and key."""
    for subject, table in FRENCH.items():
        for key, text in table.items():
            yield subject, key, text


@pytest.mark.parametrize(
    ("plain", "printed"),
    [
        ("Où : là ?", f"Où{NARROW}: là{NARROW}?"),
        ("« l'eau » ; 5 %", f"«{NARROW}l{APOSTROPHE}eau{NARROW}»{NARROW}; 5{NARROW}%"),
        ("?  aide   !  liste", "?  aide   !  liste"),
        (" : {part}", f"{NARROW}: {{part}}"),
    ],
)
def test_french_print(plain: str, printed: str) -> None:
    """Guards the narrow blanks and apostrophes, and that rows of blanks stay as they are."""
    assert typeset({"a": plain}) == {"a": printed.replace("'", APOSTROPHE)}


def test_all_of_it_is_set_in_french_print() -> None:
    """Guards that no sign of two parts has a blank in front that breaks, or none at all."""
    bare = re.compile(r"'|(?<=\w) [;:?!%»]|(?<=[\w}»)])[;?!»]|« ")
    assert [(s, k) for s, k, text in sentences() if bare.search(text)] == []


def test_guillemets_and_brackets_are_closed() -> None:
    """Guards that whatever is opened in a sentence is closed in it."""
    pairs = (("«", "»"), ("(", ")"), ("{", "}"))
    wrong = [(s, k) for s, k, t in sentences() if any(t.count(o) != t.count(c) for o, c in pairs)]
    assert wrong == []


def test_no_sentence_is_empty() -> None:
    """Guards that nothing is said with nothing."""
    assert [(s, k) for s, k, text in sentences() if not text.strip() and k != "thousands"] == []


def test_no_article_stands_before_a_name() -> None:
    """Guards that gender and number of an inserted name cannot go wrong in front of it."""
    wrong = [
        (subject, key)
        for subject, key, text in sentences()
        if len(ANY_NAME.findall(text)) != len(BEFORE_A_NAME.findall(text))
    ]
    assert wrong == [("mistake outcome", "doubtful")]  # a count stands there, no name


def test_nothing_is_called_safe_in_french() -> None:
    """Guards that no sentence says that something is safe; only a phase is called so."""
    assert [(s, k) for s, k, t in sentences() if SAFE.search(t)] == [("phase", "make safe")]


@pytest.mark.parametrize(
    "subject", ["step", "why", "caution", "hazard", "reason", "settle", "evidence", "finding"]
)
def test_sentences_are_whole_in_french(subject: str) -> None:
    """Guards that what is read as a sentence begins large and ends in a stop."""
    wrong = [
        key
        for key, text in FRENCH[subject].items()
        if not re.search(r"[.?!]$|\{handles\}$", text)
        or not (text.startswith(("{", "«")) or text[0].isupper())
    ]
    assert wrong == []


@pytest.mark.parametrize("subject", ["mistake", "mistake settle", "cause", "sight", "sign"])
def test_pieces_stay_pieces_in_french(subject: str) -> None:
    """Guards that what stands inside a sentence begins small and has no stop of its own."""
    said = FRENCH[subject]
    assert [key for key, text in said.items() if text[0].isupper() or text.endswith(".")] == []


def test_never_stays_never() -> None:
    """Guards that a caution or an order that says "never" in English says "jamais" in French."""
    weak = [
        (subject, key)
        for subject in ("caution", "hazard", "step", "antifreeze", "outcome")
        for key, text in ENGLISH[subject].items()
        if re.search(r"\bnever\b", text, re.IGNORECASE)
        and not re.search(r"\bjamais\b", FRENCH[subject][key], re.IGNORECASE)
    ]
    assert weak == []


def test_unproven_is_one_word_in_french() -> None:
    """Guards that "not proven" is said alike in verdicts, lists and comparisons."""
    said = (
        FRENCH["verdict"]["unproven"],
        FRENCH["claim"]["unproven"],
        FRENCH["label"]["unproven"],
        FRENCH["comparison"]["unproven"],
        FRENCH["fleet"]["all unproven"],
        FRENCH["antifreeze"]["nothing to go by"],
        FRENCH["talk"]["open kinds"],
        FRENCH["why asked"]["go on"],
    )
    assert all("sans preuve" in text.casefold() for text in said)
