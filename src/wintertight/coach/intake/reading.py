"""What somebody typed, read as the answer to a question."""

import re
from collections.abc import Iterator, Sequence
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

NONE = frozenset({"none", "no", "n", "nothing", "0"})
YES, NO = frozenset({"yes", "y"}), frozenset({"no", "n"})

_BETWEEN = re.compile(r"[,;+&]|\band\b")
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


def read_answer(question: Question, text: str) -> Answer:
    """Read what was typed.

    A choice is named by its number, its key, or the beginning of its key or of a word in it, in
    capitals or not, as long as only one choice begins so. Several are parted by commas or blanks;
    "none" is none of them. A quantity carries its unit.

    Args:
        question: what was asked.
        text: one line.

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
    plain = " ".join(text.split())
    if not plain:
        raise NotUnderstood(plain, "nothing typed")
    if question.form == "quantity":
        return _quantity(question, plain)
    if question.form == "yes or no":
        return read_yes(plain)
    if question.form == "one":
        return _one(question.choices, plain)
    return _several(question.choices, plain)


def read_yes(text: str) -> str:
    """Read "yes" or "no", or their first letter; anything else is not understood."""
    word = text.strip().casefold()
    if word in YES | NO:
        return "yes" if word in YES else "no"
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


def _one(choices: Sequence[str], text: str) -> str:
    if _DIGITS.fullmatch(text):
        return _numbered(choices, text)
    found = _meant(choices, text)
    if len(found) == 1:
        return found[0]
    if found:
        raise NotUnderstood(text, "several fit", found)
    parts = [part for part in re.split(r"[,;\s]+", text) if part]
    if len(parts) > 1 and all(_meant(choices, p) or _has_number(choices, p) for p in parts):
        raise NotUnderstood(text, "one only")
    raise NotUnderstood(text, "no such choice", choices)


def _several(choices: Sequence[str], text: str) -> tuple[str, ...]:
    found: set[str] = set()
    if text.casefold() in NONE:
        return ()
    for part in _BETWEEN.split(text.casefold()):
        found |= set(_in_a_row(choices, part.split()))
    if not found:
        raise NotUnderstood(text, "no such choice", choices)
    return tuple(choice for choice in choices if choice in found)


def _in_a_row(choices: Sequence[str], words: Sequence[str]) -> Iterator[str]:
    """Give the choices that stand in a row without commas, each as long as it can be read."""
    here = 0
    while here < len(words):
        for end in range(len(words), here, -1):
            piece = " ".join(words[here:end])
            if len(_meant(choices, piece)) == 1 or _has_number(choices, piece):
                break
        else:
            end = here + 1
        piece = " ".join(words[here:end])
        if piece in NONE:
            raise NotUnderstood(" ".join(words), "none or some")
        yield _one(choices, piece)
        here = end


def _numbered(choices: Sequence[str], text: str) -> str:
    """Give a choice by its number, unless the number is also the size of another one."""
    sizes = [choice for choice in choices if text in choice.split()]
    if not _has_number(choices, text):
        if len(sizes) == 1:
            return sizes[0]
        raise NotUnderstood(text, "no such number", choices)
    numbered = choices[int(text) - 1]
    if sizes and numbered not in sizes:
        raise NotUnderstood(text, "number or size", (numbered, *sizes))
    return numbered


def _has_number(choices: Sequence[str], text: str) -> bool:
    return bool(_DIGITS.fullmatch(text)) and 1 <= int(text) <= len(choices)


def _meant(choices: Sequence[str], text: str) -> list[str]:
    """Give the choices that a text can mean: the whole key, else its beginning, else a word's."""
    word = text.casefold()
    keys = {choice: choice.casefold() for choice in choices}
    whole = [choice for choice, key in keys.items() if key == word]
    beginning = [choice for choice, key in keys.items() if key.startswith(word)]
    inside = [choice for choice, key in keys.items() if f" {word}" in key]
    return whole or beginning or inside


EXAMPLES = MappingProxyType({"length": "27 ft", "temperature": "-20F", "volume": "40 gal"})
"""A quantity of each dimension that is asked for, as it is typed."""
