"""The blanks and apostrophes of French print, set over sentences written with plain ones."""

import re
from collections.abc import Mapping
from types import MappingProxyType

NARROW = "\N{NARROW NO-BREAK SPACE}"
APOSTROPHE = "\N{RIGHT SINGLE QUOTATION MARK}"

_BEFORE = re.compile(r"(?<!\s) (?=[:;?!%»])")
_AFTER = re.compile(r"(?<=«) ")


def typeset(table: Mapping[str, str]) -> Mapping[str, str]:
    """Set the sentences of a table in French print.

    Args:
        table: sentences by key, with plain blanks and apostrophes.

    Returns:
        The same keys: a narrow blank that does not break stands before : ; ? ! % and inside
        guillemets, and apostrophes are curved. A row of blanks stays as it is.

    Example:
        >>> typeset({"a": "Où est l'eau ?"})["a"] == f"Où est l{APOSTROPHE}eau{NARROW}?"
        True
    """
    return MappingProxyType({key: _set(sentence) for key, sentence in table.items()})


def _set(sentence: str) -> str:
    spaced = _AFTER.sub(NARROW, _BEFORE.sub(NARROW, sentence))
    return spaced.replace("'", APOSTROPHE)
