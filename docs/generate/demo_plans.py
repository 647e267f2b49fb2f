"""The plans of the demo's coaches that several generated pages are made from."""

from functools import cache
from pathlib import Path

import wintertight
from wintertight.coach.load import load_card
from wintertight.coach.shop import find_product, load_shop
from wintertight.procedure.plan import Plan, plan_coach

DEMO = Path(wintertight.__file__).parent / "demo"


@cache
def demo_plans(method: str = "pump", *, with_missed_steps: bool = False) -> tuple[Plan, ...]:
    """Plan every coach of the demo, each step left out once if asked, which takes long."""
    shop = load_shop(DEMO / "shop.toml")
    found = []
    for path in sorted((DEMO / "cards").glob("*.toml")):
        card = load_card(path)
        low = card.site.design_low_degC if card.site else None
        product = card.antifreeze.product if card.antifreeze else shop.products[0].name
        found.append(
            plan_coach(
                card,
                find_product(shop, product),
                -20.0 if low is None else low,
                method,
                with_missed_steps=with_missed_steps,
            )
        )
    return tuple(found)
