"""Text as it is printed: a minus nobody overlooks, and no line end between number and unit."""

import re
from collections.abc import Mapping
from typing import Any

MINUS = "\u2013"
"""The font of our papers has no minus sign; its en dash has the length and height of one."""

NO_BREAK = "\u00a0"

_BELOW_NAUGHT = re.compile(r"(?<![\w-])-(?=\d[\d.,]*\s?°)")
_UNIT = re.compile(r"(?<=\d) (?=(?:°[CF]|gal|fl oz|mL|L|psi|kPa|min|s|h|%|ft|in|mm|m)(?!\w))")


def printed(value: Any) -> Any:
    """Give plain data with every text in it as it is printed; nothing else is changed.

    Example:
        >>> printed(["to -10 °F", 3]) == ["to \u201310\u00a0°F", 3]
        True
        >>> printed("Heron pink -50")
        'Heron pink -50'
    """
    if isinstance(value, str):
        return _UNIT.sub(NO_BREAK, _BELOW_NAUGHT.sub(MINUS, value))
    if isinstance(value, Mapping):
        return {key: printed(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [printed(inner) for inner in value]
    return value
