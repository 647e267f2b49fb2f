"""``wintertight wear``: how much of a heater's anode rod is eaten, and how long it lasts."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from datetime import date
from typing import Annotated

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named
from wintertight.cli.options import AsJson, CardFile, Language
from wintertight.errors import ChoiceError, Place

SCHEMA = "wintertight/wear/1"
BY_DAY = Place(field="--on")


def wear(
    *,
    card: CardFile,
    done: Annotated[
        list[str],
        typer.Option("--done", metavar="RECORD.json", help="a record; again for another year"),
    ],
    on: Annotated[
        str | None,
        typer.Option("--on", metavar="DAY", help="such as 2025-10-04; else that of the last"),
    ] = None,
    language: Language = "en",
    as_json: AsJson = False,
) -> Answer:
    """Tell how much of a heater's anode rod is eaten, and when to replace it."""
    from wintertight.coach.load import load_card
    from wintertight.documents.wear import wear_object, wear_screen
    from wintertight.procedure.record import load_record
    from wintertight.procedure.wear import wear_of

    spoken, day = language_named(language), _day(on)
    read = load_card(card)
    records = [(name, load_record(name)) for name in done]
    try:
        found = wear_of(read, records, day)
    except ChoiceError as error:
        raise ChoiceError(error.message, BY_DAY) from None
    if as_json:
        return Answer(json_text(SCHEMA, wear_object(found, read, spoken)))
    return Answer(wear_screen(found, read, spoken).rstrip("\n"))


def _day(text: str | None) -> date | None:
    if text is None:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError:
        message = f"expected a day such as 2025-10-04, not '{text}'"
        raise ChoiceError(message, BY_DAY) from None
