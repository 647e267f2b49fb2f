"""Read a TOML file that somebody wrote by hand, and say plainly what is wrong with it."""

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from os import PathLike
from pathlib import Path as FilePath
from typing import Any

from wintertight.coach.faults import printable
from wintertight.coach.locate import DEEPEST, Path, TooDeep, lines_of
from wintertight.errors import Place, SyntaxFault, UnreadableFile

LARGEST = 4_000_000
"""Most bytes of a file that is read."""

_DEEP_MESSAGE = f"nested too deep; expected at most {DEEPEST} levels"


@dataclass(frozen=True, slots=True)
class Document:
    """A TOML file as data, with the line of each field.

    Attributes:
        name: name of the file, for messages.
        data: the file as parsed.
        lines: line of each field, counted from one.
    """

    name: str
    data: dict[str, Any]
    lines: Mapping[Path, int]


def read_file(path: str | PathLike[str]) -> str:
    """Read a text file.

    Args:
        path: the file.

    Returns:
        Its text.

    Raises:
        UnreadableFile: it is missing, a folder, too large, or not UTF-8.
    """
    file = FilePath(path)
    place = Place(str(path))
    try:
        with file.open("rb") as stream:
            content = stream.read(LARGEST + 1)
    except (OSError, ValueError) as error:
        reason = _why_not(file, error)
        raise UnreadableFile(reason, place) from error
    if len(content) > LARGEST:
        message = "larger than 4 MB; expected a card or list of a few thousand lines"
        raise UnreadableFile(message, place)
    try:
        return content.decode("utf-8")
    except UnicodeDecodeError as error:
        line = content.count(b"\n", 0, error.start) + 1
        message = "not UTF-8 text; save the file as UTF-8"
        raise UnreadableFile(message, Place(str(path), line)) from error


def _why_not(file: FilePath, error: OSError | ValueError) -> str:
    if isinstance(error, FileNotFoundError):
        return "no such file"
    if isinstance(error, IsADirectoryError) or _is_folder(file):
        return "a folder, not a file"
    if isinstance(error, PermissionError):
        return "may not be read; its owner has not given leave"
    return "cannot be opened"


def _is_folder(file: FilePath) -> bool:
    try:
        return file.is_dir()
    except (OSError, ValueError):
        return False


def read_toml(text: str, name: str) -> Document:
    """Read TOML text.

    Args:
        text: the text; a byte-order mark in front is passed over.
        name: name of the file, for messages.

    Returns:
        Data and lines.

    Raises:
        UnreadableFile: it is too large or nested too deep.
        SyntaxFault: it is not TOML; the place carries the line.
    """
    plain = text.removeprefix("\ufeff")
    if len(plain) > LARGEST or len(plain.encode("utf-8", "replace")) > LARGEST:
        message = "larger than 4 MB; expected a card or list of a few thousand lines"
        raise UnreadableFile(message, Place(name))
    try:
        # Before the parser: it goes deeper than its own stack, and slows down with long keys.
        lines = lines_of(plain)
    except TooDeep as deep:
        raise UnreadableFile(_DEEP_MESSAGE, Place(name, deep.line)) from deep
    try:
        data = tomllib.loads(plain)
    except RecursionError as deep:
        raise UnreadableFile(_DEEP_MESSAGE, Place(name)) from deep
    except ValueError as error:
        raise _syntax_fault(error, plain, name) from error
    return Document(name, data, lines)


def _syntax_fault(error: ValueError, text: str, name: str) -> SyntaxFault:
    words = re.sub(_AT, "", str(error))
    found = re.search(_AT, str(error))
    if found and found[1]:
        line = int(found[1])
    elif found:
        line = text.rstrip().count("\n") + 1
    else:
        # Python refuses to read a number of thousands of digits, and does not say where.
        words = "a number is too long"
        long = re.search(r"\d[\d_]{4000,}", text)
        line = text.count("\n", 0, long.start()) + 1 if long else 1
    return SyntaxFault(printable(f"not TOML: {_plainly(words)}"), Place(name, line))


_AT = r"\s*\(at (?:line (\d+), column \d+|end of document)\)"


def _plainly(words: str) -> str:
    for pattern, plain in _PLAIN:
        if found := re.match(pattern, words):
            return found.expand(plain)
    return words[:1].lower() + words[1:]


_PLAIN = (
    (r"Cannot declare \((.*?),?\) twice", r"\1 stands here a second time"),
    (r"Cannot overwrite a value", "this field stands here a second time"),
    (r"Cannot mutate immutable namespace .*", "this field was already given in full"),
    (r"Expected '=' after a key .*", "expected: field = value"),
    (r"Invalid value", "expected a value: text in quotes, a number, true, false or a list"),
    (r"Invalid statement", "expected a field, a [table] or a comment"),
    (r"Expected newline or end of document after a statement",
     "expected nothing more on this line"),
    (r"Unclosed array", "a list was opened and not closed: ] is missing"),
    (r"Unclosed inline table", "a table was opened and not closed: } is missing"),
    (r"Unterminated string", 'a text was opened and not closed: " is missing'),
    (r"Illegal character '\\n'", 'a text was opened and not closed on its line: " is missing'),
    (r"Duplicate inline table key (.*)", r"\1 stands here a second time"),
)  # fmt: skip
