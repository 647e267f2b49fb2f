"""Where the files of the project are, without asking git: a copied tree must test as well."""

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "src" / "wintertight"
TESTS = ROOT / "tests"
_NOT_OURS = frozenset({"build", "dist", "out", "node_modules"})


def files(*suffixes: str, under: Path = ROOT) -> list[Path]:
    """Give the project's own files below a folder, those with one of the suffixes if any is given.

    Caches and environments (folders that start with a dot, except ``.ci``) are passed over.
    """
    return sorted(f for f in _walk(under) if not suffixes or f.suffix in suffixes)


def _walk(folder: Path) -> Iterator[Path]:
    for entry in folder.iterdir():
        if entry.is_dir():
            hidden = entry.name.startswith(".") and entry.name != ".ci"
            made = entry.name in _NOT_OURS or entry.name == "__pycache__"
            if not hidden and not made and not entry.name.endswith(".egg-info"):
                yield from _walk(entry)
        elif not entry.name.startswith(".") or entry.name == ".gitignore":
            yield entry


def shown(path: Path) -> str:
    """Give a path as the reader of a failing test wants it."""
    return path.relative_to(ROOT).as_posix()


@cache
def parsed(path: Path) -> ast.Module:
    """Read a Python file as a syntax tree, once."""
    return ast.parse(path.read_text(encoding="utf-8"), filename=str(path))


Function = ast.FunctionDef | ast.AsyncFunctionDef


def public_functions(module: ast.Module) -> Iterator[tuple[str, Function]]:
    """Give each public function of a module, and each public method of its public classes."""
    for node in module.body:
        if isinstance(node, Function) and not node.name.startswith("_"):
            yield node.name, node
        if isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            for method in node.body:
                if isinstance(method, Function) and not method.name.startswith("_"):
                    yield f"{node.name}.{method.name}", method


def functions_that_test(module: ast.Module) -> list[Function]:
    """Give every test function of a module, those inside classes too."""
    nodes = ast.walk(module)
    return [n for n in nodes if isinstance(n, Function) and n.name.startswith("test_")]
