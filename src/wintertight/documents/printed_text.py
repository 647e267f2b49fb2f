"""Text as it is printed: a minus nobody overlooks, and no line end between number and unit."""

import re
from collections.abc import Callable, Mapping
from typing import Any

MINUS = "\u2013"
"""The font of our papers has no minus sign; its en dash has the length and height of one."""

NO_BREAK = "\u00a0"

_BELOW_NAUGHT = re.compile(r"(?<![\w-])-(?=\d[\d.,]*\s?°)")
_UNITS = r"(?:°[CF]|gal|fl oz|mL|L|psi|kPa|min|s|h|%|ft|in|mm|m)(?!\w)"
_UNIT = re.compile(rf"(?<=\d) (?={_UNITS})")

_POINT = re.compile(rf"(?<=\d)\.(?=\d+[ \u00a0\u202f]?{_UNITS})")
COMMAS = frozenset({"fr"})
"""Languages that part the whole from its tenths by a comma; amounts of money come so already."""


def printed(value: Any) -> Any:
    """Give plain data with every text in it as it is printed; nothing else is changed.

    Example:
        >>> printed(["to -10 °F", 3]) == ["to \u201310\u00a0°F", 3]
        True
        >>> printed("Heron pink -50")
        'Heron pink -50'
    """
    return _everywhere(value, lambda text: _UNIT.sub(NO_BREAK, _BELOW_NAUGHT.sub(MINUS, text)))


def numbers_as_written(value: Any, language: str) -> Any:
    """Give plain data with quantities written as a language writes them; the rest is unchanged.

    Example:
        >>> numbers_as_written(["1.4 gal, card 5.2e1"], "fr")
        ['1,4 gal, card 5.2e1']
        >>> numbers_as_written(["1.4 gal"], "es")
        ['1.4 gal']
    """
    if language not in COMMAS:
        return value
    return _everywhere(value, lambda text: _POINT.sub(",", text))


def _everywhere(value: Any, change: Callable[[str], str]) -> Any:
    if isinstance(value, str):
        return change(value)
    if isinstance(value, Mapping):
        return {key: _everywhere(inner, change) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [_everywhere(inner, change) for inner in value]
    return value
