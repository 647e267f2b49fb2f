"""Every method on every coach of the demo, each planned once."""

from functools import cache

from tests.unit.procedure.demo_coach import DEMO
from wintertight.coach.card import Card
from wintertight.coach.load import load_card
from wintertight.coach.shop import find_product, load_shop
from wintertight.fluids.product import Product
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.plan import Plan, plan_coach

CARDS = {path.stem: load_card(path) for path in sorted((DEMO / "cards").glob("*.toml"))}
SHOP = load_shop(DEMO / "shop.toml")
EVERY = [(name, method) for name in CARDS for method in METHODS]


def product_of(card: Card) -> Product:
    """Give the antifreeze a card names."""
    assert card.antifreeze is not None
    assert card.antifreeze.product is not None
    return find_product(SHOP, card.antifreeze.product)


def low_of(card: Card) -> float:
    """Give the design low of a card's site [degC]."""
    assert card.site is not None
    assert card.site.design_low_degC is not None
    return card.site.design_low_degC


@cache
def plan_of(name: str, method: str) -> Plan:
    """Plan one coach of the demo by one method."""
    card = CARDS[name]
    return plan_coach(card, product_of(card), low_of(card), method)


def gaps(plan: Plan) -> set[str]:
    """Give the parts that would burst."""
    return {part.id for part in plan.parts if part.safe is False}


def of_kind(plan: Plan, kind: str) -> set[str]:
    """Give the parts of one kind."""
    return {part.id for part in plan.parts if part.kind == kind}
