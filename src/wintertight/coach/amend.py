"""Put right single fields of a card, and leave the rest of its text as somebody wrote it."""

import tomllib
from collections.abc import Mapping, Sequence
from copy import deepcopy
from dataclasses import dataclass
from typing import Any

from pydantic import ValidationError

from wintertight.coach.card import Card, Coach, Compartment, Fitting, Line, Site, nearest
from wintertight.coach.faults import faults_of, printable
from wintertight.coach.load import read_card
from wintertight.coach.locate import Path
from wintertight.coach.plumbing import plumbing_faults
from wintertight.coach.read_toml import Document, read_toml
from wintertight.coach.written import card_text, quoted
from wintertight.errors import CardError, ChoiceError, InputError, Place

TABLES = {"coach": Coach, "site": Site}
"""Tables that a card has once, by the word that names them."""

ARRAYS = {"fitting": Fitting, "line": Line, "compartment": Compartment}
"""Tables that a card has for each of its parts."""

QUANTITIES = frozenset({"volume", "flow", "cut_off", "length", "bore"})
"""Fields of parts for which a card says how they are known."""


@dataclass(frozen=True, slots=True)
class Amended:
    """A card put right.

    Attributes:
        text: its new TOML text.
        before: the card as it was.
        card: the card that it is.
        rewritten: whether the whole text had to be written anew, without its comments.
    """

    text: str
    before: Card
    card: Card
    rewritten: bool


def amend(text: str, name: str, part: str, fields: Mapping[str, str], *, measured: bool) -> Amended:
    """Set fields of one part of a card.

    Args:
        text: TOML text of the card.
        name: name of its file, for messages.
        part: id of a fitting, line or compartment; or ``coach``, ``site``.
        fields: by the name of each field, as a card spells it, its value: a text without quotes, or
            a TOML value; an empty one takes the field away.
        measured: whether a length, volume, flow, pressure or bore that is given was measured.

    Returns:
        The new text. Only the lines of these fields differ from the old one, if that is possible;
        else it is written anew, and comments are lost.

    Raises:
        ChoiceError: the card has no such part.
        InputError: the card cannot be used as it is, or could not be with these fields.
    """
    before = read_card(text, name)
    document = read_toml(text, name)
    table = _table(document, part)
    data = deepcopy(document.data)
    inside: Any = data
    for step in table:
        inside = inside.setdefault(step, {}) if isinstance(step, str) else inside[step]
    values = {key: _value(key, raw, measured=measured) for key, raw in fields.items()}
    for key, value in values.items():
        if value is None:
            inside.pop(key, None)
        else:
            inside[key] = value
    card = _checked(data, table, values)
    patched = _patched(document, text, table, values)
    if patched is not None and _says(patched, card):
        return Amended(patched, before, card, rewritten=False)
    head = [line[1:].strip() for line in _head(text)]
    return Amended(card_text(card, head), before, card, rewritten=True)


def _table(document: Document, part: str) -> Path:
    if part in TABLES:
        return (part,)
    ids: dict[str, Path] = {}
    for array in ARRAYS:
        for place, one in enumerate(document.data.get(array, [])):
            ids.setdefault(one["id"], (array, place))
    if part not in ids:
        message = f"this card has no part '{part}'{nearest(part, frozenset({*ids, *TABLES}))}"
        raise ChoiceError(printable(message), Place(field="PART"))
    return ids[part]


def _value(key: str, raw: str, *, measured: bool) -> object:
    if not raw.strip():
        return None
    value: object = raw.strip()
    try:
        read = tomllib.loads(f"value = {raw}")
        value = read["value"] if set(read) == {"value"} else value
    except (ValueError, RecursionError):
        pass  # a text without its quotes
    if measured and key in QUANTITIES and isinstance(value, str):
        return {"measured": value}
    return value


def _checked(data: dict[str, Any], table: Path, values: Mapping[str, object]) -> Card:
    """Read the card as it would be; what is wrong with it is the fault of what was given."""
    try:
        card = Card.model_validate(data)
    except ValidationError as error:
        fault = faults_of(error, Card)[0]
        own = [str(step) for step in fault.path[len(table) :] if step in values]
        place = Place(field=printable(own[0] if own else "FIELD"))
        raise CardError(printable(fault.message), place) from None
    tangles = plumbing_faults(card)
    if tangles:
        raise CardError(printable(tangles[0].message), Place(field=next(iter(values), "FIELD")))
    return card


def _says(text: str, card: Card) -> bool:
    """Tell whether a text is this very card, notes and all."""
    try:
        return read_card(text) == card
    except InputError:
        return False


def _patched(
    document: Document, text: str, table: Path, values: Mapping[str, object]
) -> str | None:
    """Change single lines of a text; None where it has no line for the table."""
    rows = text.splitlines(keepends=True)
    at = document.lines.get(table)
    if at is None:
        return None
    added = []
    for key, value in values.items():
        line = document.lines.get((*table, key))
        new = "" if value is None else f"{key} = {_written(value)}"
        if line is None:
            added += [f"{new}\n"] if new else []
        else:
            old = rows[line - 1]
            comment = _comment(old)
            rows[line - 1] = f"{new}{comment}\n" if new else comment.lstrip() and f"{comment}\n"
    # After the table's first lines: its id or name stands first.
    rows.insert(_after_first(rows, at), "".join(added))
    return "".join(rows)


def _after_first(rows: Sequence[str], at: int) -> int:
    return at + 1 if at < len(rows) and "=" in rows[at] else at


def _comment(row: str) -> str:
    """Give what stands behind a value as a comment, if that is certain."""
    before, sign, after = row.partition("#")
    certain = sign and before.count('"') % 2 == 0 and '"' not in after and "'" not in row
    return f"  #{after.rstrip()}" if certain else ""


def _written(value: object) -> str:
    if isinstance(value, dict):
        return "{ " + ", ".join(f"{key} = {_written(v)}" for key, v in value.items()) + " }"
    if isinstance(value, list):
        return f"[{', '.join(map(_written, value))}]"
    if isinstance(value, bool):
        return str(value).lower()
    return str(value) if isinstance(value, int | float) else quoted(str(value))


def _head(text: str) -> list[str]:
    head = []
    for row in text.splitlines():
        if not row.startswith("#"):
            break
        head.append(row)
    return head
