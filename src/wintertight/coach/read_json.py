"""Read JSON that a program or the bay wrote, and say plainly what is wrong with it."""

import json

from wintertight.coach.locate import DEEPEST
from wintertight.errors import Place, SyntaxFault, UnreadableFile


def read_json(text: str, name: str) -> object:
    """Parse JSON; what no JSON may hold, and what is nested too deep, is refused.

    Args:
        text: the text; a byte-order mark in front is passed over.
        name: name of the file, for messages.

    Returns:
        What it says.

    Raises:
        UnreadableFile: it is nested too deep.
        SyntaxFault: it is not JSON; the place carries the line where it is known.
    """
    deep = UnreadableFile(f"nested too deep; expected at most {DEEPEST} levels", Place(name))
    try:
        raw = json.loads(text.removeprefix("\ufeff"), parse_constant=_no_number)
    except json.JSONDecodeError as error:
        message = f"not JSON: {error.msg.lower()}"
        raise SyntaxFault(message, Place(name, error.lineno)) from error
    except ValueError as error:
        # Not a fault of syntax: a number that is none, or of thousands of digits.
        message = "not JSON: a number is not finite, or has thousands of digits"
        raise SyntaxFault(message, Place(name)) from error
    except RecursionError as error:
        raise deep from error
    if _depth(raw) > DEEPEST:
        raise deep
    return raw


def _no_number(word: str) -> object:
    raise ValueError(word)


def _depth(raw: object) -> int:
    """Give how deep lists and objects are nested, without recursion."""
    deepest, level = 0, [raw]
    while level:
        deepest += 1
        level = [
            inner
            for outer in level
            if isinstance(outer, dict | list)
            for inner in (outer.values() if isinstance(outer, dict) else outer)
        ]
    return deepest - 1
