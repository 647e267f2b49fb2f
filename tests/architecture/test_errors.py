"""The exception tree, the picture of it, and its manual page are one and the same."""

import inspect
import re

from tests.architecture.tree import ROOT
from wintertight import errors

_ROW = re.compile(r"^ {4}( *)(\w+)(?: \((\w+)\))?\s+(WT-\d{3})\b", re.MULTILINE)
_SECTION = re.compile(r"^## (WT-\d{3}) (\w+)\n(.*?)(?=^## |\Z)", re.MULTILINE | re.DOTALL)


def classes() -> dict[str, type[errors.WintertightError]]:
    """Give every exception of the module by name."""
    found = inspect.getmembers(errors, inspect.isclass)
    return {name: c for name, c in found if issubclass(c, errors.WintertightError)}


def codes() -> dict[str, str]:
    """Give code by class name."""
    return {name: c.code for name, c in classes().items()}


def test_each_class_has_a_code_of_its_own() -> None:
    """Guards that no class inherits or repeats a code."""
    assert all("code" in vars(c) for c in classes().values())
    assert len(set(codes().values())) == len(codes())


def test_the_tree_in_the_docstring_is_the_tree() -> None:
    """Guards that the picture shows each class with code, parent and built-in, and no other."""
    drawn: dict[str, tuple[str, str | None, str | None]] = {}
    above: list[str] = []
    for indent, name, builtin, code in _ROW.findall(errors.__doc__ or ""):
        depth = len(indent) // 2
        above[depth:] = [name]
        drawn[name] = (code, above[depth - 1] if depth else None, builtin or None)
    real = {}
    for name, c in classes().items():
        ours = [b.__name__ for b in c.__bases__ if b.__name__ in classes()]
        builtins = [b.__name__ for b in c.__bases__ if b.__module__ == "builtins"]
        root = c is errors.WintertightError
        real[name] = (
            c.code,
            None if root else ours[0],
            None if root else next(iter(builtins), None),
        )
    assert drawn == real


def test_each_code_has_its_section() -> None:
    """Guards that docs/errors.md has a section for every code, and for no code that is gone."""
    page = (ROOT / "docs" / "errors.md").read_text(encoding="utf-8")
    sections = {name: code for code, name, _ in _SECTION.findall(page)}
    assert sections == codes()


def test_each_section_says_what_happened_and_what_to_do() -> None:
    """Guards that a section is a paragraph with both halves."""
    page = (ROOT / "docs" / "errors.md").read_text(encoding="utf-8")
    for code, _, text in _SECTION.findall(page):
        assert "**What happened.**" in text, code
        assert "**What to do.**" in text, code
