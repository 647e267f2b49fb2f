"""``wintertight plan``: the steps for one coach, and the proof of what they leave."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import TYPE_CHECKING, Annotated

import typer

from wintertight.cli.answer import NOT_SAFE, SAFE_TO_LEAVE, Answer, json_text
from wintertight.cli.asked import choice, language_named, quantity, system_named
from wintertight.cli.stock import BUNDLED, BUNDLED_NOTE, product_for, shop_list
from wintertight.cli.written import can_be_written, write_whole
from wintertight.errors import Place, QuantityError

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.documents.job_sheet import Paper

SCHEMA = "wintertight/plan/1"


def plan(  # noqa: PLR0913 - one parameter for each option
    *,
    card: Annotated[str, typer.Argument(metavar="CARD.toml", help="the coach's card")],
    low: Annotated[
        str | None,
        typer.Option("--low", metavar="T", help="design low, such as -20F; else the card's"),
    ] = None,
    method: Annotated[
        str,
        typer.Option("--method", metavar="M", help="how it is done; see methods"),
    ] = "pump",
    product: Annotated[
        str | None,
        typer.Option("--product", metavar="NAME", help="antifreeze of the list; else the card's"),
    ] = None,
    shop: Annotated[
        str | None,
        typer.Option("--shop", metavar="FILE", help="the shop's list; else shop.toml by the card"),
    ] = None,
    language: Annotated[
        str, typer.Option("--language", metavar="en|es|fr", help="language of every sentence")
    ] = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of screen and job sheet")
    ] = "us",
    paper: Annotated[
        str, typer.Option("--paper", metavar="us-letter|a4", help="paper of the job sheet")
    ] = "us-letter",
    pdf: Annotated[
        str | None, typer.Option("--pdf", metavar="FILE", help="write the job sheet there")
    ] = None,
    every: Annotated[bool, typer.Option("--all", help="name every part on the screen")] = False,
    quick: Annotated[
        bool, typer.Option("--quick", help="do not work out what a missed step would do")
    ] = False,
    wrong: Annotated[
        bool, typer.Option("--wrong", help="also what can stand wrongly, and what comes of it")
    ] = False,
    strict: Annotated[
        bool, typer.Option("--strict", help="exit with 3 unless the verdict is safe")
    ] = False,
    as_json: Annotated[bool, typer.Option("--json", help="print one JSON object")] = False,
) -> Answer:
    """Plan one coach: what to do, how much antifreeze and time, and is it safe then?"""
    from wintertight.coach.load import load_card
    from wintertight.procedure.plan import plan_coach

    spoken, system = language_named(language), system_named(units)
    sheet = _paper(paper)
    if pdf is not None:
        can_be_written(pdf, "--pdf")
    read = load_card(card)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    poured = product_for(read, card, product, sold)
    missed = (as_json or pdf is not None) and not quick
    planned = plan_coach(read, poured, low_degC, method, with_missed_steps=missed)
    if pdf is not None:
        from wintertight.documents.job_sheet import job_sheet_pdf

        write_whole(pdf, "--pdf", job_sheet_pdf(planned, spoken, sheet, system))
    status = NOT_SAFE if strict and planned.verdict != "safe" else SAFE_TO_LEAVE
    if as_json:
        from wintertight.documents.plan_json import plan_object

        sold_by = {"shop": {"name": sold.name, "list": list_file}}
        content = {**plan_object(planned, spoken, system), **sold_by}
        if wrong:
            from wintertight.documents.wrong_settings import wrong_settings_list
            from wintertight.procedure.mistake_outcome import outcomes_of

            listed = wrong_settings_list(planned, outcomes_of(planned), spoken, system)
            content["wrong_settings"] = listed
        return Answer(json_text(SCHEMA, content), status)
    from wintertight.documents.screen import plan_screen

    said = [plan_screen(planned, spoken, system, all_parts=every).rstrip("\n")]
    if wrong:
        from wintertight.documents.wrong_settings import wrong_settings_none, wrong_settings_screen
        from wintertight.procedure.mistake_outcome import outcomes_of

        told = wrong_settings_screen(planned, outcomes_of(planned), spoken, system)
        said.extend(["", told or wrong_settings_none(spoken), ""])
    if list_file == BUNDLED:
        said.append(BUNDLED_NOTE)
    if pdf is not None:
        said.append(f"Job sheet: {pdf}")
    return Answer("\n".join(said), status)


def _paper(named: str) -> "Paper":
    return "a4" if choice(named, "--paper", ("us-letter", "a4")) == "a4" else "us-letter"


def design_low_degC(card: "Card", file: str, named: str | None) -> float:
    """Give the design low that is named, else the card's.

    Args:
        card: the coach.
        file: the card's file, for the message.
        named: a temperature with its unit, if one was named.

    Returns:
        Design low [degC].

    Raises:
        QuantityError: the temperature has no unit, or nobody names one.
    """
    if named is not None:
        return quantity(named, "--low", "temperature")
    low = card.site.design_low_degC if card.site is not None else None
    if low is None:
        message = (
            "the card has no design low; expected --low with the coldest temperature of its site,"
            ' such as --low "-20F"'
        )
        raise QuantityError(message, Place(file, field="site.design_low"))
    return low
