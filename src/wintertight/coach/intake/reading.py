"""What somebody typed, read as the answer to a question."""

import re
import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from wintertight.coach.faults import printable
from wintertight.coach.intake.answers import Answer
from wintertight.coach.intake.questions import Question
from wintertight.errors import QuantityError
from wintertight.units import Dimension, parse_quantity

Misread = Literal[
    "nothing typed",
    "no such number",
    "no such choice",
    "several fit",
    "number or size",
    "one only",
    "none or some",
    "yes or no",
    "unit missing",
    "no quantity",
    "outside",
    "no way back",
    "cannot stay open",
]


@dataclass(frozen=True, slots=True)
class Words:
    """What people type in a language, as `plain` gives it.

    Attributes:
        yes: "yes", and shorter.
        no: "no", and shorter.
        none: none of several choices.
        unseen: nobody has looked.
        between: what may stand between two choices instead of a comma.
        names: by question, what each choice is called by its key; a question that is not there is
            answered by the keys themselves.
    """

    yes: frozenset[str]
    no: frozenset[str]
    none: frozenset[str]
    unseen: frozenset[str]
    between: frozenset[str]
    names: Mapping[str, Mapping[str, str]] = field(default_factory=dict)

    def called(self, question: Question) -> Mapping[str, str]:
        """Give what each choice of a question is called, in the order in which they are offered."""
        names = self.names.get(question.key, {})
        return {choice: plain(names.get(choice, choice)) for choice in question.choices}


def plain(text: str) -> str:
    """Give a text in small letters, without accents, curved apostrophes and surplus blanks.

    Example:
        >>> plain(" Sí,  PEX ")
        'si, pex'
    """
    apart = unicodedata.normalize("NFD", " ".join(text.split()).casefold())
    bare = "".join(letter for letter in apart if not unicodedata.combining(letter))
    return bare.replace("\N{RIGHT SINGLE QUOTATION MARK}", "'")


IN_ENGLISH = Words(
    yes=frozenset({"yes", "y"}),
    no=frozenset({"no", "n"}),
    none=frozenset({"none", "no", "n", "nothing", "0"}),
    unseen=frozenset({"-", "not looked at"}),
    between=frozenset({"and"}),
)
"""The words of files of answers, and of a talk in English: choices go by their keys."""

_BARE_NUMBER = re.compile(r"[+-]?\s*(?:\d+(?:\.\d*)?|\.\d+)")
_DIGITS = re.compile(r"[0-9]{1,3}")
_SLACK = 1e-9
"""Limits are in feet and gallons, and count as reached in whatever unit they are said."""


class NotUnderstood(Exception):  # noqa: N818 - reads as what it is
    """What was typed is no answer to the question; the sentence is made where words are.

    Attributes:
        key: what is wrong.
        typed: what was typed, fit to print on one line.
        choices: keys of the choices that are meant by it, or that there are.
        dimension: of the quantity that was expected.
        within: least and most that is believed of it [SI unit].
    """

    def __init__(
        self,
        typed: str,
        key: Misread,
        choices: Sequence[str] = (),
        dimension: Dimension | None = None,
        within: tuple[float, float] = (0.0, 0.0),
    ) -> None:
        """Keep what is wrong."""
        super().__init__(typed, key)
        self.key, self.typed, self.choices = key, printable(typed), tuple(choices)
        self.dimension, self.within = dimension, within


def read_answer(question: Question, text: str, words: Words = IN_ENGLISH) -> Answer:
    """Read what was typed.

    A choice is named by its number, its name, or the beginning of its name or of a word in it, in
    capitals or not, as long as only one choice begins so. Several are parted by commas or blanks;
    "none" is none of them. A quantity carries its unit.

    Args:
        question: what was asked.
        text: one line.
        words: what is typed in the language of the talk.

    Returns:
        The answer: the key of a choice, keys in the order of the question, "yes" or "no", or the
        quantity as it was said.

    Raises:
        NotUnderstood: it is no answer to this question.

    Example:
        >>> from wintertight.coach.intake.questions import QUESTIONS
        >>> read_answer(QUESTIONS["appliances"], "4, ice")
        ('ice maker', 'washer')
    """
    line = " ".join(text.split())
    if not line:
        raise NotUnderstood(line, "nothing typed")
    if question.form == "quantity":
        return _quantity(question, line)
    if question.form == "yes or no":
        return read_yes(line, words)
    called = words.called(question)
    return _one(called, line) if question.form == "one" else _several(called, line, words)


def read_yes(text: str, words: Words = IN_ENGLISH) -> str:
    """Read "yes" or "no", or their first letter; anything else is not understood."""
    word = plain(text)
    if word in words.yes | words.no:
        return "yes" if word in words.yes else "no"
    raise NotUnderstood(text, "yes or no" if word else "nothing typed")


def _quantity(question: Question, text: str) -> str:
    dimension, (least, most) = question.dimension, question.within
    if dimension is None:
        message = f"the question '{question.key}' has no dimension"
        raise ValueError(message)
    if _BARE_NUMBER.fullmatch(text):
        raise NotUnderstood(text, "unit missing", dimension=dimension)
    try:
        value = parse_quantity(text, dimension)
    except QuantityError:
        raise NotUnderstood(text, "no quantity", dimension=dimension) from None
    slack = _SLACK * max(abs(least), abs(most))
    if not least - slack <= value <= most + slack:
        raise NotUnderstood(text, "outside", dimension=dimension, within=question.within)
    return text


def _one(called: Mapping[str, str], text: str) -> str:
    if _DIGITS.fullmatch(text):
        return _numbered(called, text)
    found = _meant(called, text)
    if len(found) == 1:
        return found[0]
    if found:
        raise NotUnderstood(text, "several fit", found)
    parts = [part for part in re.split(r"[,;\s]+", text) if part]
    if len(parts) > 1 and all(_meant(called, p) or _has_number(called, p) for p in parts):
        raise NotUnderstood(text, "one only")
    raise NotUnderstood(text, "no such choice", tuple(called))


def _several(called: Mapping[str, str], text: str, words: Words) -> tuple[str, ...]:
    found: set[str] = set()
    if plain(text) in words.none:
        return ()
    ands = "|".join(map(re.escape, sorted(words.between)))
    for part in re.split(rf"[,;+&]|\b(?:{ands})\b", text.casefold()):
        found |= set(_in_a_row(called, part.split(), words))
    if not found:
        raise NotUnderstood(text, "no such choice", tuple(called))
    return tuple(choice for choice in called if choice in found)


def _in_a_row(called: Mapping[str, str], typed: Sequence[str], words: Words) -> Iterator[str]:
    """Give the choices that stand in a row without commas, each as long as it can be read."""
    here = 0
    while here < len(typed):
        for end in range(len(typed), here, -1):
            piece = " ".join(typed[here:end])
            if len(_meant(called, piece)) == 1 or _has_number(called, piece):
                break
        else:
            end = here + 1
        piece = " ".join(typed[here:end])
        if plain(piece) in words.none:
            raise NotUnderstood(" ".join(typed), "none or some")
        yield _one(called, piece)
        here = end


def _numbered(called: Mapping[str, str], text: str) -> str:
    """Give a choice by its number, unless the number is also the size of another one."""
    sizes = [choice for choice, name in called.items() if text in name.split()]
    if not _has_number(called, text):
        if len(sizes) == 1:
            return sizes[0]
        raise NotUnderstood(text, "no such number", tuple(called))
    numbered = tuple(called)[int(text) - 1]
    if sizes and numbered not in sizes:
        raise NotUnderstood(text, "number or size", (numbered, *sizes))
    return numbered


def _has_number(called: Mapping[str, str], text: str) -> bool:
    return bool(_DIGITS.fullmatch(text)) and 1 <= int(text) <= len(called)


def _meant(called: Mapping[str, str], text: str) -> list[str]:
    """Give the choices that a text can mean: the whole name, else its beginning, else a word's."""
    word = plain(text)
    whole = [choice for choice, name in called.items() if name == word]
    beginning = [choice for choice, name in called.items() if name.startswith(word)]
    inside = [choice for choice, name in called.items() if f" {word}" in name]
    return whole or beginning or inside


EXAMPLES = MappingProxyType({"length": "27 ft", "temperature": "-20F", "volume": "40 gal"})
"""A quantity of each dimension that is asked for, as it is typed."""
