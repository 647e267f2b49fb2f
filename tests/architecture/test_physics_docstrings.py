"""Docstrings of the physics layers say what the signatures, the units and the sources say."""

import ast
import re
from collections.abc import Iterator

from tests.architecture.docstring_reader import Docstring, read, units_in
from tests.architecture.tree import PACKAGE, Function, files, parsed, public_functions, shown

LAYERS = ("fluids", "flow", "cold", "proof")
_NUMBER = re.compile(r"\b(float|complex|ndarray|NDArray|ArrayLike|\w*Array|Floats?)\b")


def physics() -> Iterator[tuple[str, Function, Docstring]]:
    """Give every public function of the physics layers with its docstring."""
    for layer in LAYERS:
        for path in files(".py", under=PACKAGE / layer):
            for name, node in public_functions(parsed(path)):
                yield f"{shown(path)}:{node.lineno} {name}", node, read(ast.get_docstring(node))


def every_docstring() -> Iterator[tuple[str, Docstring]]:
    """Give every docstring of the package: of modules, classes and functions."""
    for path in files(".py", under=PACKAGE):
        for node in ast.walk(parsed(path)):
            if isinstance(node, ast.Module | ast.ClassDef | Function):
                name = getattr(node, "name", "module")
                yield f"{shown(path)} {name}", read(ast.get_docstring(node))


def parameters(node: Function) -> list[str]:
    """Give the names in a signature, without self and cls."""
    given = node.args
    named = [*given.posonlyargs, *given.args, *([given.vararg] if given.vararg else [])]
    named += [*given.kwonlyargs, *([given.kwarg] if given.kwarg else [])]
    return [a.arg for a in named if a.arg not in {"self", "cls"}]


def gives_a_number(node: Function) -> bool:
    """Say whether a function gives a float or an array, alone or in a container."""
    return node.returns is not None and bool(_NUMBER.search(ast.unparse(node.returns)))


def without_unit(where: str, node: Function, docstring: Docstring) -> bool:
    """Say whether a function gives a number whose unit nobody says.

    A function says it under Returns. A method may say it in its one sentence, as a field does; one
    that works in any unit, such as a curve, says "in the unit of" something.
    """
    if not gives_a_number(node):
        return False
    returns = [line for s in ("Returns", "Yields") for line in docstring.sections.get(s, ())]
    is_method = "." in where.rsplit(maxsplit=1)[-1]
    text = "\n".join([*returns, docstring.summary if is_method else ""])
    return not units_in(text) and "in the unit of" not in text


def test_args_are_the_parameters() -> None:
    """Guards that Args lists exactly the parameters of the signature, in their order."""
    wrong = [
        f"{where}: Args has {list(d.entries('Args'))}, signature has {parameters(node)}"
        for where, node, d in physics()
        if "Args" in d.sections and list(d.entries("Args")) != parameters(node)
    ]
    assert not wrong, "\n".join(wrong)


def test_numbers_come_with_their_unit() -> None:
    """Guards that a physics function that gives a number names its unit under Returns."""
    wrong = [where for where, node, d in physics() if without_unit(where, node, d)]
    assert not wrong, "no [unit] in Returns:\n" + "\n".join(wrong)


def test_units_are_known() -> None:
    """Guards that each [unit] in a docstring of the package is one the package knows."""
    from wintertight.units import KNOWN_UNITS  # noqa: PLC0415 - a missing layer fails one test

    wrong = [
        f"{where}: [{unit}] in {section}"
        for where, d in every_docstring()
        for section in ("Args", "Returns", "Yields", "Attributes")
        for unit in d.units(section)
        if unit not in KNOWN_UNITS
    ]
    assert not wrong, "not in KNOWN_UNITS:\n" + "\n".join(wrong)


def test_sources_are_in_the_bibliography() -> None:
    """Guards that each key under Sources stands in the bibliography."""
    from wintertight.sources import SOURCES  # noqa: PLC0415 - a missing layer fails one test

    wrong = [
        f"{where}: {key}"
        for where, d in every_docstring()
        for key in d.source_keys()
        if key not in SOURCES
    ]
    assert not wrong, "not in SOURCES:\n" + "\n".join(wrong)


def test_the_check_finds_a_missing_unit_and_a_wrong_parameter() -> None:
    """Guards the check itself: a function written wrong on purpose does not pass."""
    node = ast.parse(
        'def loss(a: float, *, b: int) -> float:\n    """Give.\n\n    Args:\n'
        '        a: x [m].\n\n    Returns:\n        The loss.\n    """\n'
    ).body[0]
    assert isinstance(node, Function)
    docstring = read(ast.get_docstring(node))
    assert parameters(node) == ["a", "b"] != list(docstring.entries("Args"))
    assert without_unit("a.py:1 loss", node, docstring)
    known = Docstring("Give.", {"Returns": ("Loss [Pa].",)})
    assert not without_unit("a.py:1 loss", node, known)
    assert without_unit("a.py:1 loss", node, Docstring("Give the loss [Pa]."))
    assert not without_unit("a.py:1 Line.loss", node, Docstring("Give the loss [Pa]."))
