"""``wintertight methods``: every method on one coach, side by side."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import Annotated

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import BUNDLED, BUNDLED_NOTE, air_of, place_named, product_for, shop_list

SCHEMA = "wintertight/methods/1"


def methods(  # noqa: PLR0913 - one parameter for each option
    *,
    card: Annotated[str, typer.Argument(metavar="CARD.toml", help="the coach's card")],
    low: Annotated[
        str | None,
        typer.Option("--low", metavar="T", help="design low, such as -20F; else the card's"),
    ] = None,
    product: Annotated[
        str | None,
        typer.Option("--product", metavar="NAME", help="antifreeze of the list; else the card's"),
    ] = None,
    shop: Annotated[
        str | None,
        typer.Option("--shop", metavar="FILE", help="the shop's list; else shop.toml by the card"),
    ] = None,
    place: Annotated[
        str | None,
        typer.Option("--place", metavar="NAME", help="of the list, or bay, lot, yard, driveway"),
    ] = None,
    regulator: Annotated[
        str | None,
        typer.Option("--regulator", metavar="P", help="air pressure, at most 50 psi"),
    ] = None,
    language: Annotated[
        str, typer.Option("--language", metavar="en|es|fr", help="language of every sentence")
    ] = "en",
    units: Annotated[
        str, typer.Option("--units", metavar="us|metric", help="units of the screen")
    ] = "us",
    as_json: Annotated[bool, typer.Option("--json", help="print one JSON object")] = False,
) -> Answer:
    """Compare every method on one coach: verdict, gallons, minutes, price, what each leaves."""
    from wintertight.coach.load import load_card
    from wintertight.documents.methods import methods_list, methods_screen
    from wintertight.procedure.comparing import compare_methods

    spoken, system = language_named(language), system_named(units)
    read = load_card(card)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    poured = product_for(read, card, product, sold)
    found = compare_methods(
        read, poured, low_degC, air=air_of(sold, regulator), place=place_named(sold, place)
    )
    if as_json:
        content = {
            "card_hash": read.card_hash,
            "coach": {"id": read.id, "name": read.name},
            "design_low_degC": low_degC,
            "product": poured.name,
            "shop": {"name": sold.name, "list": list_file},
            "methods": methods_list(found, read, sold.currency, spoken),
        }
        return Answer(json_text(SCHEMA, content))
    said = methods_screen(found, read, poured, low_degC, sold.currency, spoken, system)
    note = f"\n{BUNDLED_NOTE}" if list_file == BUNDLED else ""
    return Answer(said.rstrip("\n") + note)
