"""``wintertight methods``: every method on one coach, side by side."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import (
    AsJson,
    CardFile,
    Language,
    Low,
    PlaceName,
    ProductName,
    Regulator,
    ScreenUnits,
    ShopFile,
)
from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import air_of, list_notes, place_named, product_for, shop_list

SCHEMA = "wintertight/methods/1"


def methods(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    low: Low = None,
    product: ProductName = None,
    shop: ShopFile = None,
    place: PlaceName = None,
    regulator: Regulator = None,
    language: Language = "en",
    units: ScreenUnits = "us",
    as_json: AsJson = False,
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
    notes = list_notes(list_file, spoken, "bundled list")
    return Answer("\n".join([said.rstrip("\n"), *notes]))
