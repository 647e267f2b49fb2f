"""``wintertight coach draw``: the pipe drawing of a coach."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import Annotated, get_args

import typer

from wintertight.cli.answer import Answer
from wintertight.cli.asked import language_named, one_of
from wintertight.cli.options import CardFile, Language
from wintertight.errors import ChoiceError, Place


def draw(
    *,
    card: CardFile,
    to: Annotated[
        str | None, typer.Option("--to", metavar="FILE.svg", help="where; else on the screen")
    ] = None,
    view: Annotated[
        str, typer.Option("--view", metavar="VIEW", help="isometric, plan or side")
    ] = "isometric",
    language: Language = "en",
) -> Answer:
    """Draw all lines and fittings of a coach with their names, as SVG."""
    from wintertight.cli.written import SVG, can_be_written, write_whole
    from wintertight.coach.load import load_card
    from wintertight.documents.drawing.pictures import whole_coach
    from wintertight.documents.drawing.svg_text import svg_text
    from wintertight.documents.drawing.views import View

    spoken = language_named(language)
    known: dict[str, View] = {name: name for name in get_args(View)}
    if view not in known:
        message = f"no view is called '{view}'; expected {one_of(known)}"
        raise ChoiceError(message, Place(field="--view"))
    if to is not None:
        can_be_written(to, "--to", SVG)
    text = svg_text(whole_coach(load_card(card), spoken, known[view]))
    if to is None:
        return Answer(text.rstrip("\n"))
    write_whole(to, "--to", text.encode("utf-8"), SVG)
    return Answer(to)
