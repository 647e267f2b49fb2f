"""``wintertight coach compare``: what is different between two cards."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import TYPE_CHECKING, Annotated, Any

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import AsJson, CardFile, Language, ScreenUnits
from wintertight.errors import InputError, Place

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.coach.compare import Difference, Value
    from wintertight.coach.history import EarlierCard, History

SCHEMA = "wintertight/card-changes/1"

_UNIT = {"length": "m", "volume": "m3", "flow": "m3_s", "pressure": "Pa"}


def compare(
    *,
    card: CardFile,
    other: Annotated[
        str | None,
        typer.Argument(metavar="[OTHER.toml]", help="a later card; else its own earlier self"),
    ] = None,
    language: Language = "en",
    units: ScreenUnits = "us",
    as_json: AsJson = False,
) -> Answer:
    """Tell what is different between two cards, or since a card was last replaced."""
    from wintertight.coach.compare import differences
    from wintertight.coach.history import history, history_file
    from wintertight.coach.load import load_card
    from wintertight.wording.card_changes import (
        changes_heading,
        changes_since_heading,
        damaged_text,
        difference_text,
    )

    spoken, system = language_named(language), system_named(units)
    before, tail = load_card(card), []
    if other is not None:
        after = load_card(other)
        found = differences(before, after)
        head = changes_heading(before, after, len(found), spoken)
    else:
        after, kept = before, history(card)
        entry, before = _last(kept, card)
        found = differences(before, after)
        head = changes_since_heading(entry, after, len(found), spoken)
        if kept.damaged:
            tail = [damaged_text(kept.damaged, str(history_file(card)), spoken)]
    texts = [difference_text(one, before, after, spoken, system) for one in found]
    if as_json:
        content = {
            "before": _named(before),
            "after": _named(after),
            "differences": [_object(d, text) for d, text in zip(found, texts, strict=True)],
        }
        return Answer(json_text(SCHEMA, content))
    return Answer("\n".join([head, *(f"- {text}" for text in texts), *tail]))


def _last(kept: "History", card: str) -> tuple["EarlierCard", "Card"]:
    """Give the last earlier self of a card, and it as a card."""
    from wintertight.coach.history import history_file
    from wintertight.coach.load import read_card

    if not kept.entries:
        which = "no earlier self that can be read" if kept.damaged else "no earlier self"
        message = f"this card has {which}; name another card to compare it with"
        raise InputError(message, Place(card))
    entry = kept.entries[-1]
    try:
        return entry, read_card(entry.text)
    except InputError as error:
        message = f"its last earlier self is no card that can be read: {error.message}"
        raise InputError(message, Place(str(history_file(card)))) from None


def _named(card: "Card") -> dict[str, str]:
    return {"id": card.id, "name": card.name, "card_hash": card.card_hash}


def _object(difference: "Difference", text: str) -> dict[str, Any]:
    field = difference.params.get("field")
    return {
        "key": difference.key,
        "subject": difference.subject,
        "part": difference.part or None,
        **{
            name: _plain(value, str(field)) if name in {"before", "after"} else value
            for name, value in difference.params.items()
        },
        "text": text,
    }


def _plain(value: "Value", field: str) -> object:
    """Give a value as plain data; the unit ends its key."""
    from wintertight.coach.measured_fields import FIELD_DIMENSION
    from wintertight.coach.position import Position
    from wintertight.coach.quantity import Quantity

    if isinstance(value, Quantity):
        key = f"value_{_UNIT[FIELD_DIMENSION[field]]}"
        return {key: value.value, "how": value.how, "spread": value.spread}
    if isinstance(value, Position):
        places = {"along_m": value.along_m, "across_m": value.across_m}
        return {**places, "height_m": value.height_m}
    return list(value) if isinstance(value, tuple) else value
