"""What is different between two cards, in words."""

from wintertight.coach.card import Card
from wintertight.coach.compare import Difference, Value
from wintertight.coach.faults import printable
from wintertight.coach.history import EarlierCard
from wintertight.coach.measured_fields import FIELD_DIMENSION
from wintertight.coach.position import Position
from wintertight.coach.quantity import Quantity
from wintertight.units import (
    FOOT_M,
    GALLON_M3,
    LITRE_M3,
    PSI_PA,
    Dimension,
    System,
    celsius_to_fahrenheit,
)
from wintertight.wording.catalogue import catalogue, say
from wintertight.wording.names import kind_name, part_name
from wintertight.wording.spoken import begun, listed

_UNIT: dict[tuple[str, System], tuple[float, str]] = {
    ("length", "us"): (FOOT_M, "ft"),
    ("length", "metric"): (1.0, "m"),
    ("volume", "us"): (GALLON_M3, "gal"),
    ("volume", "metric"): (LITRE_M3, "L"),
    ("flow", "us"): (GALLON_M3 / 60, "gal/min"),
    ("flow", "metric"): (LITRE_M3 / 60, "L/min"),
    ("pressure", "us"): (PSI_PA, "psi"),
    ("pressure", "metric"): (1e3, "kPa"),
    ("time", "us"): (60.0, "min"),
    ("time", "metric"): (60.0, "min"),
    ("share", "us"): (0.01, "%"),
    ("share", "metric"): (0.01, "%"),
}
_FREE_TEXT = frozenset({"name", "note", "product", "makers_steps", "vin", "panel", "photo"})
"""Fields in the words of whoever wrote the card."""

_DIGITS, _ALL_DIGITS = 4, 9
"""Digits of a number; all that count are given where fewer would show no difference."""


def difference_text(
    difference: Difference, before: Card, after: Card, language: str = "en", system: System = "us"
) -> str:
    """Give one difference in a sentence.

    Args:
        difference: the difference.
        before: the earlier card.
        after: the later one.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The sentence.
    """
    key = difference.key
    part = begun(_part(difference, before, after, language))
    if key in {"added", "removed"}:
        kind = str(difference.params["kind"])
        said = kind_name(kind, language) if kind else ""
        return say("card change", f"{key}: {difference.subject}", language, part=part, kind=said)
    field = str(difference.params["field"])
    values = _values(difference, language, system, _DIGITS)
    if len(values) > len(set(values.values())):
        values = _values(difference, language, system, _ALL_DIGITS)
    called = say("card field", field, language)
    return say("card change", key, language, part=part, field=called, **values)


def _values(difference: Difference, language: str, system: System, digits: int) -> dict[str, str]:
    field = str(difference.params["field"])
    given = {name: value for name, value in difference.params.items() if name != "field"}
    return {name: _said(field, v, language, system, digits) for name, v in given.items()}


def change_count(count: int, language: str = "en") -> str:
    """Give how many differences there are: "no difference", "1 difference", "4 differences"."""
    number = {0: "none", 1: "one"}.get(count, "many")
    return say("card change", number, language, count=str(count))


def changes_heading(before: Card, after: Card, count: int, language: str = "en") -> str:
    """Give which two cards were compared, and how many differences there are."""
    names = {"coach": before.name, "other": after.name}
    return say("card change", "heading", language, count=change_count(count, language), **names)


def changes_since_heading(entry: EarlierCard, card: Card, count: int, language: str = "en") -> str:
    """Give with which earlier self a card was compared, and how many differences there are."""
    return say(
        "card change",
        "heading with earlier",
        language,
        coach=card.name,
        count=change_count(count, language),
        day=moment(entry),
        why=printable(entry.why),
    )


def amended_text(file: str, count: int, language: str = "en", *, rewritten: bool = False) -> str:
    """Give what was done to a card that was put right."""
    key = "amended nothing" if not count else "amended anew" if rewritten else "amended"
    return say("card change", key, language, file=file, count=change_count(count, language))


def moment(entry: EarlierCard) -> str:
    """Give when a card was replaced, to the minute."""
    return f"{entry.at:%Y-%m-%d %H:%M}"


def history_heading(name: str, count: int, language: str = "en", *, damaged: bool = False) -> str:
    """Give whose earlier cards they are, and how many; damaged lines may have been more."""
    none = "none readable" if damaged else "none"
    key = {0: none, 1: "heading one"}.get(count, "heading many")
    return say("card history", key, language, coach=name, count=str(count))


def entry_text(entry: EarlierCard, count: int | None, language: str = "en") -> str:
    """Give one earlier card; `count` differences to the next, None where one cannot be read."""
    key = "entry" if count is not None else "unreadable"
    said = change_count(count or 0, language)
    day, why = moment(entry), printable(entry.why)
    return say("card history", key, language, day=day, why=why, count=said)


def damaged_text(lines: tuple[int, ...], file: str, language: str = "en") -> str:
    """Give which lines of a history cannot be read."""
    names = listed((str(line) for line in lines), language)
    return say("card history", "damaged", language, lines=names, file=file)


def _part(difference: Difference, before: Card, after: Card, language: str) -> str:
    subject, part = difference.subject, difference.part
    if subject == "looked for":
        return kind_name(part, language)
    if subject == "compartment":
        room = after.compartment.get(part) or before.compartment.get(part)
        return room.name if room is not None and room.name else part
    if subject in {"fitting", "line"}:
        known = part in after.fitting or part in after.line
        return part_name(after if known else before, part, language)
    return say("card subject", subject, language)


def _said(field: str, value: Value, language: str, system: System, digits: int) -> str:
    dimension = FIELD_DIMENSION.get(field)
    if isinstance(value, bool):
        return say("known", "yes" if value else "no", language)
    if isinstance(value, Quantity) and dimension is not None:
        return say(
            "known",
            "quantity",
            language,
            value=_figure(value.value, dimension, system, digits),
            how=say("known", value.how, language),
            spread=_figure(value.spread, "share", system, digits),
        )
    if isinstance(value, Position):
        axes = (value.along_m, value.across_m, value.height_m)
        return ", ".join(_figure(axis, "length", system, digits) for axis in axes)
    if isinstance(value, float) and dimension is not None:
        return _figure(value, dimension, system, digits)
    text = "; ".join(value) if isinstance(value, tuple) else str(value)
    if field == "kind" and text in catalogue(language)["kind"]:
        return kind_name(text, language)
    return say("known", "text", language, text=text) if field in _FREE_TEXT else text


def _figure(value: float, dimension: Dimension, system: System, digits: int) -> str:
    if dimension == "temperature":
        us = system == "us"
        return f"{celsius_to_fahrenheit(value) if us else value:.{digits}g} °{'F' if us else 'C'}"
    factor, unit = _UNIT[dimension, system]
    return f"{value / factor:.{digits}g} {unit}"
