"""What is different between two cards of a coach: what is only on one, and what changed.

Two numbers are the same where they agree to the nine digits that count for `Card.card_hash`, so two
cards with the same hash differ at most in their notes and in the order of their parts.
"""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal

from wintertight.coach.card import (
    Card,
    Compartment,
    End,
    Fitting,
    Line,
    NamedPosition,
    Part,
    meaning,
)
from wintertight.coach.position import Position
from wintertight.coach.quantity import Quantity

Subject = Literal[
    "card", "coach", "site", "antifreeze", "looked for", "compartment", "fitting", "line"
]
Change = Literal["added", "removed", "given", "changed", "no longer given"]
Value = str | float | bool | Quantity | Position | tuple[str, ...]

KEYS: Mapping[Change, tuple[str, ...]] = MappingProxyType(
    {
        "added": ("kind",),
        "removed": ("kind",),
        "given": ("field", "after"),
        "changed": ("field", "before", "after"),
        "no longer given": ("field", "before"),
    }
)
"""Every key of a difference, and the names of its parameters."""


@dataclass(frozen=True, slots=True)
class Difference:
    """One thing that is not the same on two cards.

    Attributes:
        key: one of `KEYS`; "added" and "removed" are of whole parts, the others of fields.
        subject: what part of the card it concerns.
        part: id of the compartment, fitting or line, or the kind looked for; else "".
        params: ``kind`` of a fitting that came or went ("" of anything else), the ``field`` by its
            name inside, and its value ``before`` and ``after``, in SI.
    """

    key: Change
    subject: Subject
    part: str = ""
    params: Mapping[str, Value] = field(default_factory=lambda: MappingProxyType({}))


def differences(before: Card, after: Card) -> tuple[Difference, ...]:
    """Give all that is different between two cards.

    Args:
        before: the earlier card.
        after: the later one.

    Returns:
        The differences by subject: card, coach, site, antifreeze, what was looked for,
        compartments, fittings, lines; within a subject in the order of the earlier card, then of
        the later one.
    """
    return (
        *_fields("card", "", before, after, ("id", "name")),
        *_fields("coach", "", before.coach, after.coach),
        *_fields("site", "", before.site, after.site),
        *_fields("antifreeze", "", before.antifreeze, after.antifreeze),
        *_looked_for(before, after),
        *_parts("compartment", before.compartment, after.compartment),
        *_parts("fitting", before.fitting, after.fitting),
        *_parts("line", before.line, after.line),
    )


def _looked_for(before: Card, after: Card) -> Iterator[Difference]:
    was, now = before.looked_for.absent, after.looked_for.absent
    for kind in dict.fromkeys([*was, *now]):
        if (kind in was) != (kind in now):
            yield _whole("added" if kind in now else "removed", "looked for", kind, kind)


def _parts(
    subject: Subject,
    before: Mapping[str, Compartment] | Mapping[str, Fitting] | Mapping[str, Line],
    after: Mapping[str, Compartment] | Mapping[str, Fitting] | Mapping[str, Line],
) -> Iterator[Difference]:
    for name in dict.fromkeys([*before, *after]):
        was, now = before.get(name), after.get(name)
        if was is not None and now is not None:
            yield from _fields(subject, name, was, now)
            continue
        only = was or now
        kind = only.kind if isinstance(only, Fitting) else ""
        yield _whole("added" if was is None else "removed", subject, name, kind)


def _whole(key: Change, subject: Subject, part: str, kind: str) -> Difference:
    return Difference(key, subject, part, MappingProxyType({"kind": kind}))


def _fields(
    subject: Subject,
    part: str,
    before: Part | None,
    after: Part | None,
    names: Iterable[str] | None = None,
) -> Iterator[Difference]:
    """Compare field by field; a table that is not there has no field."""
    table = before or after
    if table is None:
        return
    for name in names or type(table).model_fields:
        was, now = getattr(before, name, None), getattr(after, name, None)
        if _same(was, now, name):
            continue
        params: dict[str, Value] = {"field": name}
        key: Change = "changed"
        if _said(was):
            params["before"] = _value(was)
        else:
            key = "given"
        if _said(now):
            params["after"] = _value(now)
        else:
            key = "no longer given"
        yield Difference(key, subject, part, MappingProxyType(params))


def _said(value: object) -> bool:
    return value is not None and value != ()


def _same(was: object, now: object, name: str) -> bool:
    return meaning(was, name) == meaning(now, name)


def _value(value: object) -> Value:
    """Give a field as what can be shown: whatever is no number and no place is text."""
    if isinstance(value, str | bool | int | float | Quantity | Position):
        return value
    if isinstance(value, tuple):
        return tuple(_item(item) for item in value)
    return str(value) if isinstance(value, End) else repr(value)


def _item(item: object) -> str:
    if isinstance(item, str):
        return item
    if not isinstance(item, NamedPosition):
        return str(item)
    use = f" ({item.use})" if item.use else ""
    return f"{item.name}{use}: {', '.join('-'.join(pair) for pair in item.joins)}"
