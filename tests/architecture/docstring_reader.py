"""Reads a google-style docstring: its summary, and its sections entry by entry."""

import inspect
import re
from collections.abc import Mapping
from dataclasses import dataclass, field

SECTIONS = frozenset(
    {"Args", "Attributes", "Example", "Examples", "Note", "Notes", "Raises", "Returns"}
    | {"Sources", "Yields"}
)
_HEADING = re.compile(r"^(?P<name>[A-Z][a-z]+):(?:\s+(?P<rest>\S.*))?$")
_ENTRY = re.compile(r"^(?P<name>\*{0,2}\w+)(?:\s*\([^)]*\))?:(?:\s|$)")
# A unit stands alone: `x [m]`, not `list[float]`; an interval such as [0, 60] is no unit.
_UNIT = re.compile(r"(?<![^\s(])\[([^\[\],]+)\](?![\w(\[])")
_REMARK = re.compile(r"\([^()]*\)?")
_KEY = re.compile(r"^[`\"']*([A-Za-z0-9][\w.-]*\w|\w)")


@dataclass(frozen=True, slots=True)
class Docstring:
    """What a docstring says.

    Attributes:
        summary: its first paragraph, as one line.
        sections: text lines of each section, shifted so that an entry starts at the margin.
    """

    summary: str
    sections: Mapping[str, tuple[str, ...]] = field(default_factory=dict)

    def entries(self, section: str) -> dict[str, str]:
        """Give name -> text of each entry of a section such as Args, in order."""
        found: dict[str, str] = {}
        name = ""
        for line in self.sections.get(section, ()):
            match = _ENTRY.match(line)
            if match:
                name = match["name"].lstrip("*")
                found[name] = line[match.end() :].strip()
            elif name:
                found[name] = f"{found[name]} {line.strip()}".strip()
        return found

    def units(self, section: str) -> list[str]:
        """Give every unit in brackets in a section, in order."""
        return units_in("\n".join(self.sections.get(section, ())))

    def source_keys(self) -> list[str]:
        """Give the key at the start of each source.

        Each line starts with a key. Behind a semicolon a small letter starts another key; a
        capital starts a remark. What stands in parentheses is a remark too.
        """
        keys = []
        for line in self.sections.get("Sources", ()):
            if line[:1].isspace():
                continue
            first, *later = (piece.strip() for piece in _REMARK.sub("", line).split(";"))
            for piece in [first, *(piece for piece in later if piece[:1].islower())]:
                match = _KEY.match(piece)
                keys.append(match[1] if match else piece)
        return keys


def units_in(text: str) -> list[str]:
    """Give every unit that stands in brackets in a text.

    >>> units_in("speed [m/s], in [0, 60]; kept in list[float]; share (of 1) [1]")
    ['m/s', '1']
    """
    return [unit.strip() for unit in _UNIT.findall(text)]


def read(docstring: str | None) -> Docstring:
    r"""Read a docstring as it stands in the source.

    >>> read("Give it.\n\n    Args:\n        x_m: length [m].\n    ").entries("Args")
    {'x_m': 'length [m].'}
    """
    lines = inspect.cleandoc(docstring or "").splitlines()
    summary = " ".join(" ".join(lines).split()) if "" not in lines else ""
    if "" in lines:
        summary = " ".join(" ".join(lines[: lines.index("")]).split())
    sections: dict[str, list[str]] = {}
    current: list[str] | None = None
    for line in lines[1:]:
        match = _HEADING.match(line)
        if match and match["name"] in SECTIONS:
            current = sections.setdefault(match["name"], [])
            if match["rest"]:
                current.append(match["rest"])
        elif line[:1].strip():
            current = None
        elif current is not None and line.strip():
            current.append(line)
    return Docstring(summary, {name: _to_margin(text) for name, text in sections.items()})


def _to_margin(lines: list[str]) -> tuple[str, ...]:
    """Shift the lines of a section left by its least indentation; a heading's rest stays."""
    indents = [len(line) - len(line.lstrip()) for line in lines if line[:1].isspace()]
    least = min(indents, default=0)
    return tuple(line[least:] if line[:1].isspace() else line for line in lines)
