"""Every test says what it guards, stands in the right folder, and is not silently left out."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from tests.architecture.docstring_reader import read
from tests.architecture.tree import TESTS, files, functions_that_test, parsed, shown
from tests.budgets import budgets, overdrawn

ENGINES = frozenset({"CoolProp", "epanet", "fluids"})
ENGINE_KEY = re.compile(r"^(coolprop|epanet|fluids)\b(?!-manual)")
_SENTENCE_END = re.compile(r"(?<!\be\.g)(?<!\bi\.e)(?<!\bvs)(?<!\bNo)(?<!\bEq)[.!?]\s+[A-Z]")


def modules() -> Iterator[tuple[Path, ast.Module]]:
    """Give every Python file below tests/ with its syntax tree."""
    for path in files(".py", under=TESTS):
        yield path, parsed(path)


def one_sentence(docstring: str | None) -> bool:
    """Say whether a docstring is one sentence and nothing else."""
    text = " ".join((docstring or "").split())
    one_paragraph = read(docstring).summary == text
    return one_paragraph and text.endswith((".", "?")) and not _SENTENCE_END.search(text)


def imported(module: ast.Module) -> set[str]:
    """Give the top-level names of what a module imports, anywhere in it."""
    found: set[str] = set()
    for node in ast.walk(module):
        if isinstance(node, ast.Import):
            found |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            found.add(node.module.split(".")[0])
    return found


def compared_with(module: ast.Module) -> set[str]:
    """Give the source keys that a module compares with through `published`, where written out."""
    return {
        node.args[0].value
        for node in ast.walk(module)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id == "published"
        and node.args
        and isinstance(node.args[0], ast.Constant)
        and isinstance(node.args[0].value, str)
    }


def left_out_without_reason(module: ast.Module) -> list[int]:
    """Give the lines of skips and expected failures that carry no reason."""
    lines = []
    for node in ast.walk(module):
        called = node.func if isinstance(node, ast.Call) else node
        if not isinstance(called, ast.Attribute):
            continue
        owner = ast.unparse(called.value)
        if owner not in {"pytest", "pytest.mark"} or called.attr not in {
            "skip",
            "skipif",
            "xfail",
            "importorskip",
        }:
            continue
        if isinstance(node, ast.Call) and not _has_reason(node, called.attr):
            lines.append(node.lineno)
    called_lines = {id(n.func) for n in ast.walk(module) if isinstance(n, ast.Call)}
    bare = [
        n.lineno
        for n in ast.walk(module)
        if isinstance(n, ast.Attribute)
        and id(n) not in called_lines
        and ast.unparse(n) in {"pytest.mark.skip", "pytest.mark.xfail"}
    ]
    return sorted([*lines, *bare])


def _has_reason(call: ast.Call, what: str) -> bool:
    """Say whether a skip is given words: by keyword, or first where that is the reason."""
    given = [k.value for k in call.keywords if k.arg == "reason"]
    if what in {"skip", "xfail"}:
        given += call.args[:1]
    return any(not (isinstance(g, ast.Constant) and not g.value) for g in given)


def test_each_test_says_what_it_guards() -> None:
    """Guards that every test function has a docstring of one sentence."""
    wrong = [
        f"{shown(path)}:{node.lineno} {node.name}"
        for path, module in modules()
        for node in functions_that_test(module)
        if not one_sentence(ast.get_docstring(node, clean=False))
    ]
    assert not wrong, "one sentence, ending in a full stop:\n" + "\n".join(wrong)


def test_other_engines_stay_in_their_folder() -> None:
    """Guards that only tests/engines asks another engine, so printed values stay apart."""
    wrong = [
        f"{shown(path)} imports {', '.join(sorted(imported(module) & ENGINES))}"
        for path, module in modules()
        if imported(module) & ENGINES and path.relative_to(TESTS).parts[0] != "engines"
    ]
    assert not wrong, "\n".join(wrong)


def test_printed_values_and_other_engines_share_no_file() -> None:
    """Guards that a file compares with print or with engines, never with both."""
    wrong = []
    for path, module in modules():
        engine = {key for key in compared_with(module) if ENGINE_KEY.match(key)}
        printed = compared_with(module) - engine
        if printed and (engine or imported(module) & ENGINES):
            wrong.append(f"{shown(path)}: {sorted(printed)} beside an engine")
        if path.relative_to(TESTS).parts[0] == "published" and engine:
            wrong.append(f"{shown(path)}: {sorted(engine)} is not print")
    assert not wrong, "\n".join(wrong)


def test_nothing_is_left_out_without_a_reason() -> None:
    """Guards that a skip or an expected failure says why."""
    wrong = [
        f"{shown(path)}:{line}"
        for path, module in modules()
        for line in left_out_without_reason(module)
    ]
    assert not wrong, "\n".join(wrong)


def test_each_folder_has_a_budget() -> None:
    """Guards that folders of tests and lines of the budget are the same."""
    folders = {
        p.relative_to(TESTS).parts[0] for p in files(".py", under=TESTS) if p.parent != TESTS
    }
    assert folders <= set(budgets())


def test_a_folder_over_its_budget_is_named() -> None:
    """Guards that the budget notices a slow folder and one that has no line."""
    said = overdrawn({"unit": 91.0, "laws": 1.0, "new": 0.1}, {"unit": 90.0, "laws": 2.0})
    assert said == ["tests/new has no budget in pyproject.toml", "tests/unit took 91.0 s of 90 s"]


def test_the_checks_find_what_they_look_for() -> None:
    """Guards the checks themselves with a module written wrong on purpose."""
    module = ast.parse(
        "import CoolProp.CoolProp\n"
        "@pytest.mark.skip\n"
        "def test_a():\n    published('crc', 'x', '1', 1)\n"
        "def test_b():\n    '''One. Two.'''\n    pytest.skip()\n    pytest.skip('why')\n"
    )
    assert imported(module) & ENGINES == {"CoolProp"}
    assert compared_with(module) == {"crc"}
    assert left_out_without_reason(module) == [2, 7]
    assert [one_sentence(ast.get_docstring(f)) for f in functions_that_test(module)] == [False] * 2
    assert one_sentence("Guards e.g. Bernoulli's equation.")
