"""What is wrong with a file, gathered as data and raised as one line.

Pydantic speaks of types; people of the trade speak of quotes, lists and whole numbers. Each kind of
error pydantic may give is put in our words here.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from types import MappingProxyType
from typing import Any, get_args

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from wintertight.coach.locate import Path, nearest_line
from wintertight.errors import CardError, CardTangled, InputError, Place, QuantityError

LONGEST = 300
"""A message is cut here, whatever was written into the card."""


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing wrong with a file.

    Attributes:
        error: the exception that stands for it.
        path: path of the field, as it stands in the file.
        message: what was expected.
    """

    error: type[InputError]
    path: Path
    message: str


def card_fault(message: str, *path: str | int) -> Fault:
    """Give a fault of one field."""
    return Fault(CardError, path, message)


def tangle(message: str, *path: str | int) -> Fault:
    """Give a fault of fields that do not go together."""
    return Fault(CardTangled, path, message)


def gathered(
    faults: Iterable[Fault], file: str | None, lines: Mapping[Path, int], raw: object
) -> InputError:
    """Make one exception of all faults: the first one speaks, the others are counted.

    Args:
        faults: at least one.
        file: name of the file, for the place.
        lines: line of each field.
        raw: the file as parsed, to name a thing by its id.

    Returns:
        The exception; its `others` holds one exception for each further fault.
    """
    errors = [_error(fault, file, lines, raw) for fault in faults]
    errors.sort(key=lambda error: error.place.line or 0)
    first, *more = errors
    if more:
        text = f"{first.message} (and {len(more)} more)"
        first = type(first)(text, first.place)
    first.others = tuple(more)
    return first


def _error(fault: Fault, file: str | None, lines: Mapping[Path, int], raw: object) -> InputError:
    place = Place(file, nearest_line(lines, fault.path), printable(field_named(fault.path, raw)))
    return fault.error(printable(fault.message), place)


def printable(text: str) -> str:
    """Give text that is safe to print on one line, of bounded length."""
    plain = " ".join("".join(c if c.isprintable() else " " for c in text).split())
    return plain if len(plain) <= LONGEST else plain[: LONGEST - 3] + "..."


def field_named(path: Path, raw: object) -> str:
    """Spell a path as people do: line[pump-out].length.spread, or fitting[3].at[2].

    Things that have an id are named by it; others are counted from one.
    """
    spelled, here = "", raw
    for step in path:
        if isinstance(step, int):
            here = here[step] if isinstance(here, list) and step < len(here) else None
            name = here.get("id") if isinstance(here, dict) else None
            spelled += f"[{name if isinstance(name, str) and name else step + 1}]"
        else:
            here = here.get(step) if isinstance(here, dict) else None
            spelled += f".{step}" if spelled else step
    return spelled


def faults_of(error: ValidationError, model: type[BaseModel]) -> list[Fault]:
    """Put what pydantic found in our words."""
    return [_fault(details, model) for details in error.errors(include_url=False)]


def _fault(details: ErrorDetails, model: type[BaseModel]) -> Fault:
    path = tuple(details["loc"])
    context: Mapping[str, Any] = details.get("ctx", {})
    within = context.get("within", "")
    if within != "":
        path = (*path, within)
    kind = details["type"]
    error = QuantityError if kind == QuantityError.code else CardError
    if "text" in context:
        return Fault(error, path, str(context["text"]))
    if kind == "extra_forbidden":
        return Fault(error, path, _stranger(path, model))
    if kind == "missing":
        return Fault(error, path, _missing(path, model))
    says = _SAYS.get(kind, _cannot_read)
    return Fault(error, path, says(context, details["input"]))


def _stranger(path: Path, model: type[BaseModel]) -> str:
    known = list(_fields(_model_at(path[:-1], model)))
    near = get_close_matches(str(path[-1]), known, n=1, cutoff=0.6)
    hint = f"did you mean '{near[0]}'?" if near else f"expected one of {', '.join(known)}"
    return f"'{path[-1]}' is no field here; {hint}"


def _missing(path: Path, model: type[BaseModel]) -> str:
    name = path[-1]
    described = _fields(_model_at(path[:-1], model)).get(str(name))
    what = described.description if described is not None else None
    return f"'{name}' is missing; expected: {what}" if what else f"'{name}' is missing"


def _fields(model: type[BaseModel] | None) -> dict[str, Any]:
    fields = model.model_fields if model is not None else {}
    return {field.alias or name: field for name, field in fields.items()}


def _model_at(path: Path, model: type[BaseModel]) -> type[BaseModel] | None:
    here: type[BaseModel] | None = model
    for step in path:
        if isinstance(step, str):
            field = _fields(here).get(step)
            here = _model_in(field.annotation) if field is not None else None
    return here


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    found = (_model_in(inner) for inner in get_args(annotation))
    return next((model for model in found if model is not None), None)


def said(raw: object) -> str:
    """Name a value that was found where something else was expected."""
    if isinstance(raw, bool):
        return "true" if raw else "false"
    if isinstance(raw, str):
        return f"'{raw}'"
    if isinstance(raw, int | float):
        return str(raw) if abs(raw) < _LONG_NUMBER else "a very long number"
    names: dict[type, str] = {list: "a list", tuple: "a list", dict: "a table"}
    return names.get(type(raw), "a date or time")


_LONG_NUMBER = 1e15

Says = Callable[[Mapping[str, Any], object], str]


def _expected(what: str) -> Says:
    return lambda _context, raw: f"expected {what}, not {said(raw)}"


def _cannot_read(_context: Mapping[str, Any], raw: object) -> str:
    return f"this cannot be read: {said(raw)}"


def _one_of(context: Mapping[str, Any], raw: object) -> str:
    return f"expected {context['expected']}, not {said(raw)}"


def _limit(word: str, key: str) -> Says:
    return lambda context, raw: f"expected {word} {context[key]:g}, not {said(raw)}"


_SAYS: Mapping[str, Says] = MappingProxyType(
    {
        "literal_error": _one_of,
        "string_type": _expected("text in quotes"),
        "string_too_short": lambda _context, _raw: "expected some text, not an empty one",
        "string_too_long": lambda context, raw: (
            f"expected at most {context['max_length']} letters, not {len(str(raw))}"
        ),
        "string_pattern_mismatch": _expected("up to 64 letters, digits, - or _, without spaces"),
        "int_type": _expected("a whole number without quotes"),
        "bool_type": _expected("true or false without quotes"),
        "float_type": _expected("a number"),
        "model_type": _expected("a table"),
        "dict_type": _expected("a table"),
        "tuple_type": _expected("a list"),
        "too_long": lambda context, _raw: f"expected at most {context['max_length']} of them",
        "too_short": lambda context, _raw: f"expected at least {context['min_length']} of them",
        "greater_than_equal": _limit("at least", "ge"),
        "less_than_equal": _limit("at most", "le"),
        "int_parsing_size": _expected("a smaller number"),
    }
)
