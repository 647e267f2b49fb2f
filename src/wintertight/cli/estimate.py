"""``wintertight estimate``: what winterizing one coach costs by the shop's own price table."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from datetime import date as Date  # noqa: N812 - an option is called date
from typing import TYPE_CHECKING, Annotated

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, paper_named, system_named
from wintertight.cli.options import AsJson, CardFile, Language, Low, ProductName, ShopFile
from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import air_of, list_notes, product_for, shop_list
from wintertight.cli.written import can_be_written, write_whole
from wintertight.errors import ChoiceError, Place

if TYPE_CHECKING:
    from collections.abc import Sequence

    from wintertight.coach.prices import Prices
    from wintertight.coach.shop import Shop
    from wintertight.procedure.estimate import Estimate
    from wintertight.procedure.plan import Plan

SCHEMA = "wintertight/estimate/1"


def estimate(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    shop: ShopFile = None,
    accept: Annotated[
        list[str] | None,
        typer.Option("--accept", metavar="OPTION", help="an option that is to be done"),
    ] = None,
    decline: Annotated[
        list[str] | None,
        typer.Option("--decline", metavar="OPTION", help="an option that is not to be done"),
    ] = None,
    date: Annotated[
        str | None, typer.Option("--date", metavar="YYYY-MM-DD", help="its first day; else today")
    ] = None,
    low: Low = None,
    method: Annotated[
        str, typer.Option("--method", metavar="M", help="how it is done; see methods")
    ] = "pump",
    product: ProductName = None,
    language: Language = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of screen and paper")
    ] = "us",
    paper: Annotated[
        str, typer.Option("--paper", metavar="us-letter|a4", help="paper of the estimate")
    ] = "us-letter",
    pdf: Annotated[
        str | None, typer.Option("--pdf", metavar="FILE", help="write the estimate there")
    ] = None,
    as_json: AsJson = False,
) -> Answer:
    """Say what winterizing one coach costs, and what declined work would leave open."""
    from wintertight.coach.load import load_card
    from wintertight.procedure.plan import plan_coach

    spoken, system = language_named(language), system_named(units)
    sheet = paper_named(paper)
    dated = day_named(date)
    if pdf is not None:
        can_be_written(pdf, "--pdf")
    read = load_card(card)
    sold, list_file = shop_list(shop, card)
    prices = _prices(sold, list_file)
    poured = product_for(read, card, product, sold)
    kinds = {f.kind for f in read.fittings if f.seen == "present"}
    declinable = any(extra.optional and extra.fitting in kinds for extra in prices.extras)
    plan = plan_coach(
        read,
        poured,
        design_low_degC(read, card, low),
        method,
        air=air_of(sold),
        with_missed_steps=declinable,
    )
    found = estimated(plan, prices, dated, accept or (), decline or ())
    if pdf is not None:
        from wintertight.documents.estimate_paper import estimate_pdf

        write_whole(pdf, "--pdf", estimate_pdf(found, plan, sold.name, spoken, sheet, system))
    if as_json:
        from wintertight.documents.estimate_json import estimate_object

        content = estimate_object(found, plan, sold.name, spoken, system)
        content["shop"]["list"] = list_file
        return Answer(json_text(SCHEMA, content))
    from wintertight.documents.estimate_screen import estimate_screen
    from wintertight.wording.catalogue import say

    said = [estimate_screen(found, plan, sold.name, spoken, system).rstrip("\n")]
    said += list_notes(list_file, spoken, "bundled prices")
    if pdf is not None:
        said.append(say("written", "estimate", spoken, file=pdf))
    return Answer("\n".join(said))


def day_named(written: str | None) -> Date:
    """Read a day; today where none is written."""
    if written is None:
        return Date.today()  # noqa: DTZ011 - the shop's own calendar day
    try:
        return Date.fromisoformat(written)
    except ValueError:
        message = f"expected a day as YYYY-MM-DD, such as 2026-10-15, not '{written}'"
        raise ChoiceError(message, Place(field="--date")) from None


def _prices(sold: "Shop", list_file: str) -> "Prices":
    if sold.prices is None:
        message = (
            "the list has no price table; expected [prices] with rounding, valid_days and at least"
            " one [[prices.tier]]"
        )
        raise ChoiceError(message, Place(list_file, field="prices"))
    return sold.prices


def estimated(
    plan: "Plan",
    prices: "Prices",
    dated: Date,
    accepted: "Sequence[str]" = (),
    declined: "Sequence[str]" = (),
) -> "Estimate":
    """Price a plan by a shop's table."""
    from wintertight.procedure.estimate import estimate_job
    from wintertight.procedure.priced_job import priced_job

    return estimate_job(priced_job(plan), prices, dated, accepted, declined)
