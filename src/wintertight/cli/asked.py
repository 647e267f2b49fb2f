"""Reads what stands behind an option: quantities with their unit, and names among known ones."""

from collections.abc import Iterable
from difflib import get_close_matches
from typing import TYPE_CHECKING

from wintertight.errors import ChoiceError, Place, QuantityError
from wintertight.units import Dimension, System, parse_quantity

if TYPE_CHECKING:
    from wintertight.documents.typeset import Paper

MOST_NAMES = 12
"""No error lists more names than this."""


def quantity(text: str, option: str, dimension: Dimension) -> float:
    """Read a quantity.

    Args:
        text: what was written.
        option: the option behind which it stands, for the message.
        dimension: the kind of quantity due.

    Returns:
        The value in SI units; a temperature in degC.

    Raises:
        QuantityError: no unit, a wrong one, or no number; it names the option.
    """
    try:
        return parse_quantity(text, dimension)
    except QuantityError as error:
        raise QuantityError(error.message, Place(field=option)) from None


def choice(text: str, option: str, known: Iterable[str]) -> str:
    """Read one of a few words.

    Args:
        text: what was written.
        option: the option behind which it stands, for the message.
        known: the words there are.

    Returns:
        The word.

    Raises:
        ChoiceError: it is none of them.
    """
    words = tuple(known)
    if text not in words:
        message = f"expected {one_of(words)}, not '{text}'"
        raise ChoiceError(message, Place(field=option))
    return text


def one_of(words: Iterable[str]) -> str:
    """Give "a, b or c".

    Example:
        >>> one_of(["a", "b", "c"]), one_of(["a"])
        ('a, b or c', 'a')
    """
    *others, last = words
    return f"{', '.join(others)} or {last}" if others else last


def hint(name: str, known: Iterable[str]) -> str:
    """Give the names most like one that does not exist, or what there is."""
    names = list(dict.fromkeys(known))
    near = get_close_matches(name, names, n=3, cutoff=0.6)
    if near:
        return f"; did you mean {one_of(near)}?"
    shown = names[:MOST_NAMES]
    more = f" and {len(names) - len(shown)} more" if len(names) > len(shown) else ""
    return f"; there is {', '.join(shown)}{more}" if shown else "; there is none"


def language_named(text: str) -> str:
    """Read a language for which there is a catalogue; anything else is a ChoiceError."""
    from wintertight.wording.catalogue import LANGUAGES  # noqa: PLC0415 - help needs no sentence

    return choice(text, "--language", LANGUAGES)


def system_named(text: str) -> System:
    """Read the units in which people are spoken to; anything else is a ChoiceError."""
    return "metric" if choice(text, "--units", ("us", "metric")) == "metric" else "us"


def paper_named(named: str) -> "Paper":
    """Give the paper that was asked for; a ChoiceError says which there are."""
    return "a4" if choice(named, "--paper", ("us-letter", "a4")) == "a4" else "us-letter"
