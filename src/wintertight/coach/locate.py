"""Find the line of a TOML file on which a field stands.

`tomllib` gives values without their places, so the text is read a second time: only its keys,
brackets and quotes matter here. A path names a field as it stands in the parsed file:
``("line", 7, "length", "spread")`` is the spread of the length of the eighth ``[[line]]``.

Rules of the reading:
  a table or an element of an array of tables stands on the line of its own header;
  a table without a header of its own stands where it is first mentioned;
  an element of an array stands where its first character stands;
  what cannot be read ends the reading: what came before keeps its line, the rest has none.
"""

import re
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass, field

Path = tuple[str | int, ...]

DEEPEST = 32
"""Keys and brackets may be nested this deep."""


class TooDeep(Exception):  # noqa: N818 - an answer of this file, never seen outside the layer
    """Something is nested deeper than `DEEPEST`."""

    def __init__(self, line: int) -> None:
        """Carry the line on which that happens."""
        super().__init__(line)
        self.line = line


class _LostError(Exception):
    """The text is not what this reader expects."""


def lines_of(text: str) -> Mapping[Path, int]:
    """Give the line, counted from one, of every field that can be found.

    Raises:
        TooDeep: keys or brackets are nested too deep.
    """
    reader = _Reader(text)
    # Once lost, nothing is certain; nothing further is told.
    with suppress(_LostError, IndexError):
        reader.document()
    return reader.lines


def locate(text: str, path: Path) -> int | None:
    """Give the line of one field, or None if it is not in the text or not certain."""
    try:
        return lines_of(text).get(path)
    except TooDeep:
        return None


def nearest_line(lines: Mapping[Path, int], path: Path) -> int | None:
    """Give the line of a field or, if it is missing, of the innermost table it should be in."""
    for length in range(len(path), 0, -1):
        if path[:length] in lines:
            return lines[path[:length]]
    return None


_BLANK = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
_SPACE = re.compile(r"[ \t]*")
_BARE = re.compile(r"[A-Za-z0-9_-]+")
_SCALAR = re.compile(r"[^,\]}#\r\n]+")
_BASIC = re.compile(r'"((?:[^"\\\n]|\\[^\n])*)"')
_LITERAL = re.compile(r"'([^'\n]*)'")
_LONG_BASIC = re.compile(r'"""(?:[^"\\]|\\.|"(?!""))*"{3,5}', re.DOTALL)
_LONG_LITERAL = re.compile(r"'''(?:[^']|'(?!''))*'{3,5}")
_ESCAPE = re.compile(r"\\(?:u([0-9A-Fa-f]{4})|U([0-9A-Fa-f]{8})|(.))")
_ESCAPED = {"b": "\b", "t": "\t", "n": "\n", "f": "\f", "r": "\r", '"': '"', "\\": "\\"}


@dataclass(slots=True)
class _Reader:
    text: str
    at: int = 0
    counted_to: int = 0
    line: int = 1
    lines: dict[Path, int] = field(default_factory=dict)
    elements: dict[Path, int] = field(default_factory=dict)

    def document(self) -> None:
        """Read headers and key-value pairs to the end."""
        table: Path = ()
        self.skip(_BLANK)
        while self.at < len(self.text):
            if self.text[self.at] == "[":
                table = self.header()
            else:
                self.pair(table)
            self.skip(_SPACE)
            if self.at < len(self.text) and self.text[self.at] not in "#\r\n":
                raise _LostError
            self.skip(_BLANK)

    def header(self) -> Path:
        """Read [table] or [[array of tables]]; give the path of what follows."""
        line = self.line_here()
        double = self.text.startswith("[[", self.at)
        self.at += 2 if double else 1
        names = self.key()
        self.expect("]]" if double else "]")
        path: Path = ()
        for name in names[:-1]:
            path = self.inside((*path, name), line)
        path = (*path, names[-1])
        if double:
            self.lines.setdefault(path, line)
            self.elements[path] = self.elements.get(path, -1) + 1
            path = (*path, self.elements[path])
        else:
            path = (*path, self.elements[path]) if path in self.elements else path
        self.lines[path] = line
        return path

    def inside(self, path: Path, line: int) -> Path:
        """Mention a table on the way to another; in an array of tables that is its last one."""
        self.lines.setdefault(path, line)
        return (*path, self.elements[path]) if path in self.elements else path

    def pair(self, table: Path) -> None:
        """Read key = value."""
        line = self.line_here()
        names = self.key()
        self.expect("=")
        for length in range(1, len(names)):
            self.lines.setdefault((*table, *names[:length]), line)
        path = (*table, *names)
        self.lines.setdefault(path, line)
        self.skip(_SPACE)
        self.value(path)

    def key(self) -> tuple[str, ...]:
        """Read a key, which may be dotted and quoted."""
        names = [self.name()]
        while self.text.startswith(".", self.at):
            self.at += 1
            names.append(self.name())
            if len(names) > DEEPEST:
                raise TooDeep(self.line_here())
        return tuple(names)

    def name(self) -> str:
        """Read one name of a key and the space around it."""
        self.skip(_SPACE)
        if found := _BARE.match(self.text, self.at):
            name = found[0]
        elif found := _BASIC.match(self.text, self.at):
            name = _ESCAPE.sub(_unescaped, found[1])
        elif found := _LITERAL.match(self.text, self.at):
            name = found[1]
        else:
            raise _LostError
        self.at = found.end()
        self.skip(_SPACE)
        return name

    def value(self, path: Path) -> None:
        """Read any value, and note what is inside it."""
        if len(path) > DEEPEST:
            raise TooDeep(self.line_here())
        first = self.text[self.at]
        if first == "[":
            self.array(path)
        elif first == "{":
            self.inline_table(path)
        elif self.text.startswith(('"""', "'''"), self.at):
            self.must(_LONG_BASIC if first == '"' else _LONG_LITERAL)
        elif first in "\"'":
            self.must(_BASIC if first == '"' else _LITERAL)
        else:
            self.must(_SCALAR)

    def array(self, path: Path) -> None:
        """Read [value, value, ...] over any number of lines."""
        self.at += 1
        self.skip(_BLANK)
        place = 0
        while self.text[self.at] != "]":
            inner = (*path, place)
            self.lines[inner] = self.line_here()
            self.value(inner)
            place += 1
            self.skip(_BLANK)
            if self.text[self.at] == ",":
                self.at += 1
                self.skip(_BLANK)
            elif self.text[self.at] != "]":
                raise _LostError
        self.at += 1

    def inline_table(self, path: Path) -> None:
        """Read { key = value, ... }; newer TOML lets it run over lines."""
        self.at += 1
        self.skip(_BLANK)
        while self.text[self.at] != "}":
            self.pair(path)
            self.skip(_BLANK)
            if self.text[self.at] == ",":
                self.at += 1
                self.skip(_BLANK)
            elif self.text[self.at] != "}":
                raise _LostError
        self.at += 1

    def skip(self, pattern: re.Pattern[str]) -> None:
        """Go past what may stand here."""
        found = pattern.match(self.text, self.at)
        self.at = found.end() if found else self.at

    def must(self, pattern: re.Pattern[str]) -> None:
        """Go past what has to stand here."""
        found = pattern.match(self.text, self.at)
        if not found:
            raise _LostError
        self.at = found.end()

    def expect(self, mark: str) -> None:
        """Go past a mark that has to stand here."""
        if not self.text.startswith(mark, self.at):
            raise _LostError
        self.at += len(mark)

    def line_here(self) -> int:
        """Count the line of the place reached."""
        self.line += self.text.count("\n", self.counted_to, self.at)
        self.counted_to = self.at
        return self.line


def _unescaped(found: re.Match[str]) -> str:
    code = found[1] or found[2]
    if code:
        try:
            return chr(int(code, 16))
        except ValueError as error:
            raise _LostError from error
    if found[3] not in _ESCAPED:
        raise _LostError
    return _ESCAPED[found[3]]
