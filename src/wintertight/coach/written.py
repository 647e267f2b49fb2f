"""Write a card as the text of a card file, which `wintertight.coach.load` reads back the same.

The standard library reads TOML and does not write it. A general writer would be one dependency
more, and would know nothing of what makes a card readable: the order of its tables, a quantity on
one line, what most lines are said once, numbers no longer than they mean. So this small writer is
for this one format.

Units are US, as in the shop. A number is written with the fewest digits that read back to the same
meaning (nine digits in SI, as `Card.card_hash` counts them). Where that takes many digits in US
units and few in metric ones, the number was metric, and it is written so.
"""

import json
import re
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from types import MappingProxyType

from wintertight.coach.card import Card, LineDefaults, NamedPosition, Part
from wintertight.coach.measured_fields import FIELD_DIMENSION
from wintertight.coach.position import Position
from wintertight.coach.quantity import USUAL_SPREAD, Quantity
from wintertight.coach.shortest import shortest, spread_text, temperature_text
from wintertight.units import Dimension

WIDEST = 100
"""Columns of a line; a list that is longer goes over several."""

ORDER: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "card": ("format", "id", "name"),
        "coach": ("kind", "length", "height", "year", "floor_above_ground", "vin", "note"),
        "site": ("name", "design_low_degC", "power", "water", "dump", "note"),
        "antifreeze": ("product",),
        "looked_for": ("absent",),
        "line_defaults": ("size", "material"),
        "compartment": ("id", "name", "heated", "closed", "note"),
        "fitting": (
            "id", "kind", "role", "name", "seen", "at", "at_within_m", "compartment", "access",
            "panel", "screws", "photo", "opening_s", "volume", "flow", "cut_off", "tank", "heat",
            "only", "drains_to", "positions", "makers_steps", "note",
        ),
        "line": (
            "id", "start", "end", "size", "material", "bore", "length", "bends", "volume",
            "compartment", "start_height_m", "end_height_m", "lowest_m", "highest_m", "access",
            "panel", "screws", "photo", "opening_s", "note",
        ),
    }
)  # fmt: skip
"""Fields of each table, by their names inside, in the order in which they are written."""

_ONE_A_LINE = frozenset({"positions", "makers_steps"})


def card_text(card: Card, head: Iterable[str] = ()) -> str:
    """Write a card as the TOML text of a card file.

    Args:
        card: the card; its plumbing was checked.
        head: lines of a comment that stands first.

    Returns:
        The text; `read_card` gives it back as a card with the same hash and the same notes.
    """
    usual = usual_line(card)
    tables = [
        _table("", _fields(card, "card")),
        _table("[coach]", _fields(card.coach, "coach")),
        _table("[site]", _fields(card.site, "site")),
        _table("[antifreeze]", _fields(card.antifreeze, "antifreeze")),
        _table("[looked_for]", _fields(card.looked_for, "looked_for")),
        *(_table("[[compartment]]", _fields(room, "compartment")) for room in card.compartments),
        *(_table("[[fitting]]", _fields(fitting, "fitting")) for fitting in card.fittings),
        _table("[line_defaults]", _fields(usual, "line_defaults")),
        *(_table("[[line]]", _fields(line, "line", usual)) for line in card.lines),
    ]
    comment = "".join(f"# {_one_line(line)}".rstrip() + "\n" for line in head)
    return comment + "\n".join(table for table in tables if table)


def usual_line(card: Card) -> LineDefaults:
    """Give the size and the material that most lines have; without lines, what the card says."""
    if not card.lines:
        return card.line_defaults
    sizes, materials = (
        Counter(line.size for line in card.lines),
        Counter(line.material for line in card.lines),
    )
    return LineDefaults.model_construct(
        size=sizes.most_common(1)[0][0], material=materials.most_common(1)[0][0]
    )


def _table(head: str, fields: Iterator[tuple[str, str]]) -> str:
    body = "".join(f"{key} = {value}\n" for key, value in fields)
    if not body:
        return ""
    return f"{head}\n{body}" if head else body


def _fields(
    part: Part | None, table: str, usual: LineDefaults | None = None
) -> Iterator[tuple[str, str]]:
    """Give the fields that say something, as key and written value."""
    if part is None:
        return
    models = type(part).model_fields
    for name in ORDER[table]:
        value, field = getattr(part, name), models[name]
        silent = None if field.is_required() else field.get_default()
        if value is None or value in (silent, ()):
            continue
        if usual is not None and name in {"size", "material"} and value == getattr(usual, name):
            continue
        key = field.alias or name
        yield key, _value(name, value, len(key))


def _value(name: str, value: object, indent: int) -> str:
    if isinstance(value, Quantity | Position | float):
        return _measured(value, FIELD_DIMENSION[name])
    if isinstance(value, bool | int):
        return str(value).lower()
    if isinstance(value, tuple):
        items = [_position(i) if isinstance(i, NamedPosition) else quoted(str(i)) for i in value]
        return _list(items, indent, one_a_line=name in _ONE_A_LINE)
    return quoted(_size(str(value)) if name == "size" else str(value))


def _measured(value: Quantity | Position | float, dimension: Dimension) -> str:
    if isinstance(value, Quantity):
        return _quantity(value, dimension)
    if isinstance(value, Position):
        places = (value.along_m, value.across_m, value.height_m)
        return f"[{', '.join(quoted(shortest(place, dimension)) for place in places)}]"
    is_temperature = dimension == "temperature"
    return quoted(temperature_text(value) if is_temperature else shortest(value, dimension))


def _size(nominal: str) -> str:
    """Give a nominal size with its inch where it is a plain number: 1/2 in."""
    return f"{nominal} in" if re.fullmatch(r"[0-9 ./-]*", nominal) else nominal


def _quantity(quantity: Quantity, dimension: Dimension) -> str:
    text = quoted(shortest(quantity.value, dimension))
    usual = f"{USUAL_SPREAD[quantity.how]:.9g}" == f"{quantity.spread:.9g}"
    if usual and quantity.how == "told":
        return text
    said = usual and quantity.how != "guessed"
    spread = "" if said else f", spread = {quoted(spread_text(quantity.spread))}"
    return f"{{ {quantity.how} = {text}{spread} }}"


def _position(position: NamedPosition) -> str:
    joins = ", ".join(f"[{quoted(a)}, {quoted(b)}]" for a, b in position.joins)
    use = f", use = {quoted(position.use)}" if position.use is not None else ""
    return f"{{ name = {quoted(position.name)}{use}, joins = [{joins}] }}"


def _list(items: list[str], indent: int, *, one_a_line: bool) -> str:
    flat = f"[{', '.join(items)}]"
    if len(flat) + indent + len(" = ") <= WIDEST and not (one_a_line and len(items) > 1):
        return flat
    rows: list[str] = []
    for item in items:
        longer = f"{rows[-1]} {item}," if rows else ""
        if rows and not one_a_line and len(longer) <= WIDEST:
            rows[-1] = longer
        else:
            rows.append(f"    {item},")
    return "\n".join(["[", *rows, "]"])


def quoted(text: str) -> str:
    r"""Write a text as a TOML basic string on one line.

    Example:
        >>> print(quoted('the 3/4" valve'))
        "the 3/4\" valve"
    """
    # JSON escapes all that TOML must have escaped, and one more sign that TOML asks for.
    return json.dumps(text, ensure_ascii=False).replace("\x7f", "\\u007F")


def _one_line(text: str) -> str:
    return " ".join("".join(c if c.isprintable() else " " for c in text).split())
