"""What an adviser types, line by line, and how long it takes to type it."""

from dataclasses import dataclass
from pathlib import Path

HERE = Path(__file__).parent

QUESTION_S, KEY_S = 3.0, 1.0
"""Time to read and think at each question, and for each key with gloves on [s]; common practice,
after the keystroke-level model."""

MOST_S = 300.0
"""A coach is described in less than this [s]."""


@dataclass(frozen=True)
class Line:
    """One line that is typed, and the key of the question it answers."""

    typed: str
    to: str


def script(name: str) -> list[Line]:
    """Read what is typed for one of the coaches: on each line the keys, a tab, and to what."""
    lines = (HERE / f"{name}.keys").read_text("utf-8").splitlines()
    pairs = (line.split("\t# ") for line in lines)
    return [Line(typed, to) for typed, to in pairs]


def as_typed(lines: list[Line]) -> str:
    """Give the keys as standard input brings them."""
    return "".join(f"{line.typed}\n" for line in lines)


def seconds(lines: list[Line]) -> float:
    """Give how long a script takes [s]; each line ends in a key as well."""
    return sum(QUESTION_S + KEY_S * (len(line.typed) + 1) for line in lines)
