"""``wintertight incident``: something burst, and what the record of the fall has to say of it."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import Annotated

import typer

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import AsJson, CardFile, Language, Low, ScreenUnits, ShopFile
from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import BY_OPTION, list_notes, product_for, shop_list
from wintertight.errors import Place

SCHEMA = "wintertight/incident/1"


def incident(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    done: Annotated[
        str, typer.Option("--done", metavar="RECORD.json", help="the record of the fall")
    ],
    found: Annotated[
        str, typer.Option("--found", metavar="FOUND.json", help="what was found in spring")
    ],
    low: Low = None,
    product: Annotated[
        str | None,
        typer.Option("--product", metavar="NAME", help="else the record's, else the card's"),
    ] = None,
    shop: ShopFile = None,
    language: Language = "en",
    units: ScreenUnits = "us",
    as_json: AsJson = False,
) -> Answer:
    """Weigh five causes of what burst: missed, used since, an older crack, colder, wear."""
    from wintertight.coach.load import load_card
    from wintertight.documents.incident import incident_object, incident_screen
    from wintertight.procedure.found import load_found
    from wintertight.procedure.incident import weigh_incident
    from wintertight.procedure.record import load_record

    spoken, system = language_named(language), system_named(units)
    read, record, seen = load_card(card), load_record(done), load_found(found)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    by = BY_OPTION if product is not None else Place(done, field="product")
    poured = product_for(
        read, card, product if product is not None else record.product, sold, by=by
    )
    weighed = weigh_incident(read, record, seen, poured, low_degC, done, found)
    if as_json:
        sold_by = {"shop": {"name": sold.name, "list": list_file}}
        return Answer(json_text(SCHEMA, {**incident_object(weighed, spoken, system), **sold_by}))
    notes = list_notes(list_file, spoken, "bundled list")
    return Answer("\n".join([incident_screen(weighed, spoken, system).rstrip("\n"), *notes]))
