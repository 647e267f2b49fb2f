"""``wintertight coach sister``: the card of another coach of the same floor plan."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import os
from contextlib import suppress
from pathlib import Path
from typing import Annotated

import typer

from wintertight.cli.answer import Answer
from wintertight.cli.asked import language_named
from wintertight.cli.options import CardFile, Language
from wintertight.coach.write_file import reason_of
from wintertight.errors import CardError, InputError, Place

THERE = "this file is there already and is not written over; name another one"


def sister(
    *,
    card: CardFile,
    file: Annotated[str, typer.Argument(metavar="FILE", help="the new card; none may be there")],
    number: Annotated[str, typer.Option("--id", metavar="ID", help="the shop's number of it")],
    name: Annotated[
        str | None, typer.Option("--name", metavar="NAME", help="what it is called; else the same")
    ] = None,
    language: Language = "en",
) -> Answer:
    """Write the card of a coach of the same floor plan, and tell what to ask of it."""
    from wintertight.coach.intake.kept import beside, kept_text, load_kept
    from wintertight.coach.load import load_card
    from wintertight.coach.sister import sister_card
    from wintertight.coach.written import card_text
    from wintertight.wording.card_questions import sister_head, sister_written

    spoken, known = language_named(language), load_card(card)
    try:
        made = sister_card(known, number, name)
    except CardError as error:
        raise CardError(error.message, Place(field=f"--{error.place.field}")) from None
    answers, there = beside(Path(card)), beside(Path(file))
    talk = kept_text(load_kept(answers)) if answers.is_file() else None
    if talk is not None and there.exists() and not Path(file).exists():
        raise InputError(THERE, Place(str(there)))
    _write_new(file, card_text(made, sister_head(known, made, spoken)))
    if talk is not None:
        _write_new(str(there), talk)
    return Answer(sister_written(known, made, file, spoken))


def _write_new(file: str, text: str) -> None:
    """Write a file where none is; a file that is there is never touched."""
    place = Place(file)
    target, ours = Path(file), False
    try:
        with target.open("xb") as stream:
            ours = True
            stream.write(text.encode("utf-8"))
            stream.flush()
            os.fsync(stream.fileno())
    except FileExistsError:
        raise InputError(THERE, place) from None
    except (OSError, ValueError) as error:
        if ours:
            with suppress(OSError):
                target.unlink()
        message = f"cannot be written: {reason_of(error)}"
        raise InputError(message, place) from error
