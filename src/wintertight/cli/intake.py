"""``wintertight coach new``: a talk that describes a coach, and the card that comes of it."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

import sys
import textwrap
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime
from io import TextIOWrapper
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from wintertight.cli.answer import Answer
from wintertight.cli.asked import language_named
from wintertight.cli.options import Language
from wintertight.cli.outcome import print_out
from wintertight.coach.write_file import reason_of
from wintertight.errors import CardError, InputError, Place

if TYPE_CHECKING:
    from wintertight.coach.intake.answers import Answers
    from wintertight.coach.intake.talk import Reply, Talk

WIDTH = 92
"""Most letters of a printed line."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """What the command line asks for.

    Attributes:
        card: the card to write.
        kept: the file in which the answers are kept.
        card_id: the shop's number of the coach.
        name: what people call it; "" takes its shape and length.
        site: where it spends the winter.
        product: what it is to be filled with.
        language: two letters.
    """

    card: Path
    kept: Path
    card_id: str
    name: str
    site: str | None
    product: str | None
    language: str


def new(  # noqa: PLR0913 - one parameter for each option
    *,
    file: Annotated[str, typer.Argument(metavar="CARD.toml", help="the card to be written")],
    card_id: Annotated[str, typer.Option("--id", metavar="ID", help="the shop's number of it")],
    name: Annotated[
        str, typer.Option("--name", metavar="NAME", help="what people call it; else its shape")
    ] = "",
    site: Annotated[
        str | None, typer.Option("--site", metavar="NAME", help="where it spends the winter")
    ] = None,
    product: Annotated[
        str | None,
        typer.Option("--product", metavar="NAME", help="the antifreeze it is filled with"),
    ] = None,
    answers: Annotated[
        str | None,
        typer.Option("--answers", metavar="FILE.json", help="ask nothing; take these answers"),
    ] = None,
    walk_around: Annotated[
        bool, typer.Option("--walk-around", help="you stand at the coach: ask everything")
    ] = False,
    language: Language = "en",
) -> Answer:
    """Describe a coach by answering questions, and write its card.

    The answers are kept beside the card after each of them: the same command goes on from there.
    """
    from wintertight.coach.intake.kept import beside, load_kept

    spoken = language_named(language)
    card = Path(file)
    wanted = Wanted(card, beside(card), card_id, name, site, product, spoken)
    _may_be_written(wanted, again=answers is None)
    if card.exists():
        from wintertight.coach.load import load_card

        load_card(card)  # what was measured there is kept: better told now than after the talk
    if answers is not None:
        return _written(wanted, load_kept(answers).answers, Path(answers).name)
    return _talked(wanted, walk_around=walk_around)


def _may_be_written(wanted: Wanted, *, again: bool) -> None:
    """Refuse what could not be written, before anybody is asked anything."""
    from pydantic import TypeAdapter, ValidationError

    from wintertight.coach.card import Id, Text

    given = (("--id", wanted.card_id, Id), ("--name", wanted.name or None, Text))
    more = (("--site", wanted.site, Text), ("--product", wanted.product, Text))
    for option, text, kind in (*given, *more):
        try:
            if text is not None:
                TypeAdapter(kind).validate_python(text)
        except ValidationError:
            most = "letters, digits, - and _, at most 64" if kind is Id else "1 to 400 letters"
            message = f"expected {most}"
            raise CardError(message, Place(field=option)) from None
    try:
        hindrance = _hindrance(wanted, again=again)
    except (OSError, ValueError) as error:
        hindrance = f"cannot be written: {reason_of(error)}"
    if hindrance:
        raise InputError(hindrance, Place(str(wanted.card)))


def _hindrance(wanted: Wanted, *, again: bool) -> str:
    """Give why a card cannot be written where it is wanted; "" if it can."""
    card = wanted.card
    if not card.name or "\0" in str(card):
        return "expected the name of a file, and this is none"
    if not card.parent.is_dir():
        return f"there is no folder '{card.parent}'; make it first"
    if card.is_dir():
        return "a folder, not a file"
    if not card.exists() or (again and wanted.kept.is_file()):
        return ""
    there = "there is a card already, and it is not replaced"
    if not again:
        return there
    return f"{there}; the talk it came from, '{wanted.kept.name}', is not beside it"


def _talked(wanted: Wanted, *, walk_around: bool) -> Answer:
    """Talk until the card may be written, or is put off; keep the answers after each line."""
    from wintertight.coach.intake.kept import Kept, kept_text, put
    from wintertight.coach.intake.talk import said
    from wintertight.wording import intake as words

    if isinstance(sys.stdin, TextIOWrapper):
        sys.stdin.reconfigure(encoding=None if sys.stdin.isatty() else "utf-8", errors="replace")
    talk = _beginning(wanted, walk_around=walk_around)
    typed = words.answer_words(wanted.language)
    _say([words.talk_line("keys", wanted.language), ""])
    _ask(talk, wanted)
    while talk.at not in {"card", "later"}:
        before = talk
        talk, reply = said(talk, _typed(wanted), typed)
        if talk != before:
            put(wanted.kept, kept_text(Kept(talk.answers, talk.left_open, talk.stage)))
        _say(_replied(talk, reply, wanted))
        if reply.what == "asked":
            _ask(talk, wanted)
        elif reply.what != "ended":
            print_out(words.prompt(talk, wanted.language))
    if talk.at == "card":
        return _written(wanted, talk.answers, wanted.kept.name)
    file = str(wanted.kept)
    return Answer(words.talk_line("not written", wanted.language, file=file))


def _beginning(wanted: Wanted, *, walk_around: bool) -> "Talk":
    from wintertight.coach.intake.kept import load_kept
    from wintertight.coach.intake.talk import begun, resumed
    from wintertight.wording.intake import talk_line

    if not wanted.kept.exists():
        return begun("walk-around" if walk_around else "phone")
    kept = load_kept(wanted.kept)
    _say([talk_line("resumed", wanted.language, file=str(wanted.kept))])
    if walk_around and kept.stage == "phone":
        # Whoever stands at the coach can look at what was left open on the phone.
        return resumed(kept.answers, frozenset(), "walk-around")
    return resumed(kept.answers, kept.left_open, kept.stage)


def _ask(talk: "Talk", wanted: Wanted) -> None:
    """Print what is asked now; before the card is written, also all that is known."""
    from wintertight.coach.intake.questions import standing
    from wintertight.wording import intake as words

    if talk.at == "write":
        _say(words.summary_lines(talk, standing(talk.answers), str(wanted.card), wanted.language))
    again = str(wanted.card) if wanted.card.exists() else ""
    _say(words.asked_lines(talk, wanted.language, again))
    print_out(words.prompt(talk, wanted.language))


def _replied(talk: "Talk", reply: "Reply", wanted: Wanted) -> Iterable[str]:
    from wintertight.coach.intake.questions import Question, standing
    from wintertight.wording import intake as words

    if reply.noted:
        yield words.noted_line(reply.noted, reply.answer, wanted.language)
    if reply.what == "asked":
        yield ""
    if reply.what == "help":
        yield words.why_asked(talk, wanted.language)
    elif reply.what == "summary":
        yield from words.summary_lines(
            talk, standing(talk.answers), str(wanted.card), wanted.language
        )
    elif reply.why is not None:
        asked = talk.at if isinstance(talk.at, Question) else None
        yield words.misread_line(reply.why, asked, wanted.language)


def _typed(wanted: Wanted) -> str:
    """Read one line from standard input.

    Raises:
        InputError: there is no more.
    """
    from wintertight.coach.faults import printable

    line = sys.stdin.readline() if sys.stdin is not None else ""
    if not line:
        print_out("\n")
        message = "ended before a card was written"
        if wanted.kept.exists():
            message += f"; the answers are in '{wanted.kept}', and the same command goes on"
        raise InputError(message, Place("standard input"))
    if not sys.stdin.isatty():
        # On a terminal it stands there already.
        print_out(f"{printable(line)}\n")
    return line


def _say(lines: Iterable[str]) -> None:
    for line in lines:
        indent = "      " if line.startswith("  ") else ""
        print_out(
            "\n".join(textwrap.wrap(line, WIDTH, subsequent_indent=indent, break_on_hyphens=False))
            + "\n"
        )


def _written(wanted: Wanted, answers: "Answers", source: str) -> Answer:
    """Make the card and write it, whole or not at all."""
    from wintertight.coach.history import replace_card
    from wintertight.coach.intake.kept import put
    from wintertight.coach.intake.made import made_card
    from wintertight.coach.intake.questions import standing
    from wintertight.coach.known import with_known
    from wintertight.coach.load import load_card
    from wintertight.coach.written import card_text
    from wintertight.wording import intake as words

    counting = standing(answers)
    name = wanted.name or words.coach_name(counting, wanted.language) or wanted.card_id
    card = made_card(counting, wanted.card_id, name, wanted.site, wanted.product)
    again = wanted.card.exists()
    if again:
        card = with_known(card, load_card(wanted.card))
    file, text = str(wanted.card), card_text(card, words.head_lines(source, wanted.language))
    if again:
        why = words.talk_line("anew", wanted.language)
        replace_card(wanted.card, text, why, datetime.now(tz=UTC))
    else:
        put(wanted.card, text)
    return Answer(words.written_line(card, file, wanted.language))
