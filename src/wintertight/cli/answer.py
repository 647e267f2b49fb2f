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

    Plain ASCII, so that the code page of no console can spoil it. Numbers are given to as many
    digits as no rounding in the engine's sums reaches: there the last digit of a number may hang on
    where in memory a column happened to lie, and the same input is to give the same text.

    Args:
        schema: name and number of the format.
        content: the rest; its own ``schema`` and ``engine``, if any, are replaced.

    Returns:
        The text.

    Raises:
        ValueError: a number in it is not finite.
    """
    rest = {key: value for key, value in content.items() if key not in {"schema", "engine"}}
    whole = {"schema": schema, "engine": __version__, **rest}
    return json.dumps(_settled(whole), allow_nan=False, indent=1)


DIGITS = 12
"""Significant digits of every number in a JSON object."""


def _settled(value: Any) -> Any:
    """Round every number in plain data."""
    if isinstance(value, float):
        return float(f"{value:.{DIGITS}g}")
    if isinstance(value, Mapping):
        return {key: _settled(inner) for key, inner in value.items()}
    if isinstance(value, list | tuple):
        return [_settled(inner) for inner in value]
    return value


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
