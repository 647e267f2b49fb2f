"""What a command gives back: the text for standard output, and the exit status."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from wintertight import __version__

SAFE_TO_LEAVE, NOT_SAFE = 0, 3
"""Exit statuses of a command that did its work; NOT_SAFE only where ``--strict`` was given."""


@dataclass(frozen=True, slots=True)
class Answer:
    """What a command has to say.

    Attributes:
        text: all of standard output.
        status: the exit status.
    """

    text: str
    status: int = SAFE_TO_LEAVE


def json_text(schema: str, content: Mapping[str, Any]) -> str:
    """Give one JSON object with its schema and the engine that made it in front.

    Plain ASCII, so that the code page of no console can spoil it.

    Args:
        schema: name and number of the format.
        content: the rest; its own ``schema`` and ``engine``, if any, are replaced.

    Returns:
        The text.

    Raises:
        ValueError: a number in it is not finite.
    """
    rest = {key: value for key, value in content.items() if key not in {"schema", "engine"}}
    return json.dumps({"schema": schema, "engine": __version__, **rest}, allow_nan=False, indent=1)


def columns(rows: Sequence[tuple[str, ...]]) -> str:
    """Lay rows out in columns: the first to the left, the others to the right.

    Example:
        >>> print(columns([("a", "1.5 L"), ("long name", "12 L")]))
        a          1.5 L
        long name   12 L
    """
    widths = [max(len(cell) for cell in column) for column in zip(*rows, strict=True)]
    lines = (
        "  ".join(
            cell.rjust(width) if place else cell.ljust(width)
            for place, (cell, width) in enumerate(zip(row, widths, strict=True))
        )
        for row in rows
    )
    return "\n".join(line.rstrip() for line in lines)
