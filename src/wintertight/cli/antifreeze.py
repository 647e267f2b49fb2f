"""``wintertight antifreeze``: which product of the shop's list suits one coach."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from typing import TYPE_CHECKING

from wintertight.cli.answer import Answer, json_text
from wintertight.cli.asked import language_named, system_named
from wintertight.cli.options import AsJson, CardFile, Language, Low, ScreenUnits, ShopFile
from wintertight.cli.plan import design_low_degC
from wintertight.cli.stock import list_notes, shop_list

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.coach.shop import Shop
    from wintertight.procedure.antifreeze import ProductChoice

SCHEMA = "wintertight/antifreeze/1"

LITRE_M3 = 1e-3
"""Volume by which products are counted where none is of any use [m3]."""


def antifreeze(  # noqa: PLR0913 - one parameter for each option
    *,
    card: CardFile,
    low: Low = None,
    shop: ShopFile = None,
    language: Language = "en",
    units: ScreenUnits = "us",
    as_json: AsJson = False,
) -> Answer:
    """Tell which antifreeze of the list suits, how strong it must come out, and what it costs."""
    from wintertight.coach.load import load_card
    from wintertight.documents.antifreeze import antifreeze_list, antifreeze_screen

    spoken, system = language_named(language), system_named(units)
    read = load_card(card)
    low_degC = design_low_degC(read, card, low)
    sold, list_file = shop_list(shop, card)
    found = _choices(read, sold, low_degC)
    if as_json:
        content = {
            "card_hash": read.card_hash,
            "coach": {"id": read.id, "name": read.name},
            "design_low_degC": low_degC,
            "shop": {"name": sold.name, "list": list_file},
            "products": antifreeze_list(found, low_degC, sold.currency, spoken, system),
        }
        return Answer(json_text(SCHEMA, content))
    said = antifreeze_screen(found, read, low_degC, sold.currency, spoken, system)
    notes = list_notes(list_file, spoken, "bundled list")
    return Answer("\n".join([said.rstrip("\n"), *notes]))


def _choices(card: "Card", sold: "Shop", low_degC: float) -> "tuple[ProductChoice, ...]":
    """Judge the list; what suits is planned with, for the gallons of each are its own."""
    from wintertight.procedure.antifreeze import choose_antifreeze, judge_product, pockets_of
    from wintertight.procedure.plan import plan_coach

    pockets = pockets_of(card)
    answers = {p.name: judge_product(p, low_degC, pockets)[0] for p in sold.products}
    needed = {
        p.name: plan_coach(card, p, low_degC).antifreeze.p50
        for p in sold.products
        if answers[p.name] in {"suits", "unproven"}
    }
    most_m3 = max(needed.values(), default=LITRE_M3)
    return tuple(choose_antifreeze(sold.products, low_degC, pockets, most_m3, needed_of_m3=needed))
