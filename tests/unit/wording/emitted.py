"""Which keys the lower layers can emit: read from their tables, and from their source text."""

import ast
from collections.abc import Iterator
from pathlib import Path

import wintertight
from tests.architecture.tree import files, parsed

PACKAGE = Path(wintertight.__file__).parent


def calls(folder: str, *names: str) -> Iterator[ast.Call]:
    """Give every call of some functions, or methods, in a layer."""
    for path in files(".py", under=PACKAGE / folder):
        for node in ast.walk(parsed(path)):
            if isinstance(node, ast.Call):
                called = node.func
                name = called.attr if isinstance(called, ast.Attribute) else None
                name = called.id if isinstance(called, ast.Name) else name
                if name in names:
                    yield node


def literals(node: ast.AST | None) -> set[str]:
    """Give every text that an expression can be, tests of conditions left out."""
    if isinstance(node, ast.Constant):
        return {node.value} if isinstance(node.value, str) else set()
    if isinstance(node, ast.IfExp):
        return literals(node.body) | literals(node.orelse)
    if isinstance(node, ast.Tuple | ast.List | ast.Set):
        return set[str]().union(*(literals(e) for e in node.elts))
    if isinstance(node, ast.Dict):
        return set[str]().union(*(literals(v) for v in node.values))
    return set()


def keyword(call: ast.Call, name: str) -> ast.AST | None:
    """Give the value of a keyword argument, if it is there."""
    return next((k.value for k in call.keywords if k.arg == name), None)


def argument(folder: str, function: str, place: int) -> set[str]:
    """Give every literal that stands at one place of the calls of a function."""
    found: set[str] = set()
    for call in calls(folder, function):
        if len(call.args) > place:
            found |= literals(call.args[place])
    return found


def keywords(folder: str, function: str, name: str) -> set[str]:
    """Give every literal given to a keyword of a function."""
    return set[str]().union(*(literals(keyword(c, name)) for c in calls(folder, function)))


def assigned(folder: str, name: str) -> set[str]:
    """Give every literal assigned to a local name."""
    found: set[str] = set()
    for path in files(".py", under=PACKAGE / folder):
        for node in ast.walk(parsed(path)):
            if isinstance(node, ast.Assign) and any(
                isinstance(t, ast.Name) and t.id == name for t in node.targets
            ):
                found |= literals(node.value)
    return found


def step_parameters() -> dict[str, set[str]]:
    """Give the parameters each step's sentence is given by its planner, by key."""
    found: dict[str, set[str]] = {}
    usual = {"part", "setting", "cautions"}
    for call in calls("procedure", "step"):
        for key in literals(call.args[0]):
            given = {k.arg for k in call.keywords if k.arg} - usual
            found[key] = found.get(key, given) & given
    return found


def returned(folder: str, function: str) -> set[str]:
    """Give every literal that a function can return."""
    found: set[str] = set()
    for path in files(".py", under=PACKAGE / folder):
        for node in ast.walk(parsed(path)):
            if isinstance(node, ast.FunctionDef) and node.name == function:
                for inner in ast.walk(node):
                    if isinstance(inner, ast.Return):
                        found |= literals(inner.value)
    return found
