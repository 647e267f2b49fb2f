"""``wintertight coach amend``: put right what a card says of one part."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from datetime import UTC, datetime
from typing import Annotated

import typer

from wintertight.cli.answer import Answer
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import CardFile, Language, ScreenUnits
from wintertight.errors import ChoiceError, InputError, Place


def amend(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    part: Annotated[str, typer.Argument(metavar="PART", help="id of a part; or coach, site")],
    fields: Annotated[
        list[str],
        typer.Argument(metavar="FIELD=VALUE", help='"length=9 ft"; "note=" takes it away'),
    ],
    why: Annotated[
        str, typer.Option("--why", metavar="TEXT", help="who saw it, and how: it stays in history")
    ],
    measured: Annotated[
        bool, typer.Option("--measured", help="what is given was measured, not told")
    ] = False,
    language: Language = "en",
    units: ScreenUnits = "us",
) -> Answer:
    """Set fields of one part of a card; the card as it was stays in its history."""
    from wintertight.coach.amend import amend as amend_text
    from wintertight.coach.compare import differences
    from wintertight.coach.history import replace_card
    from wintertight.coach.read_toml import read_file
    from wintertight.wording.card_changes import amended_text, difference_text

    spoken, system = language_named(language), system_named(units)
    text, given = read_file(card), _fields(fields)
    if not why.strip():
        message = "expected who saw it, and how"
        raise InputError(message, Place(field="--why"))
    amended = amend_text(text, card, part, given, measured=measured)
    found = differences(amended.before, amended.card)
    head = amended_text(card, len(found), spoken, rewritten=amended.rewritten)
    if found:
        replace_card(card, amended.text, why.strip(), datetime.now(UTC).astimezone())
    changes = [difference_text(one, amended.before, amended.card, spoken, system) for one in found]
    return Answer("\n".join([head, *(f"- {change}" for change in changes)]))


def _fields(given: list[str]) -> dict[str, str]:
    found: dict[str, str] = {}
    for one in given:
        key, sign, value = one.partition("=")
        if not sign or not key.strip():
            message = f'expected a field and its value, like "length=9 ft", not "{one}"'
            raise ChoiceError(message, Place(field="FIELD=VALUE"))
        if key.strip() in found:
            message = "this field stands here twice"
            raise ChoiceError(message, Place(field=key.strip()))
        found[key.strip()] = value
    return found
