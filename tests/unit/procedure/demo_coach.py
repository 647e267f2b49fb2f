"""The demo's coach, a small one cut out of it, and their plans, each worked out once."""

from functools import cache
from pathlib import Path
from typing import Any

import wintertight
from wintertight.coach.card import Card
from wintertight.coach.load import read_card
from wintertight.coach.shop import load_shop
from wintertight.fluids.product import Product
from wintertight.procedure.plan import Plan, plan_coach

DEMO = Path(wintertight.__file__).parent / "demo"
TEXT = (DEMO / "cards" / "middle-travel-trailer.toml").read_text(encoding="utf-8")
PRODUCTS = {p.name.split()[1]: p for p in load_shop(DEMO / "shop.toml").products}
PINK: Product = PRODUCTS["pink"]

GALLON_M3 = 231 * 0.0254**3


def celsius(degF: float) -> float:
    """Give degrees Fahrenheit as degrees Celsius."""
    return (degF - 32.0) / 1.8


def without(*ids: str, text: str = TEXT) -> str:
    """Give a card's text without some fittings and lines."""
    gone = [f'id = "{name}"\n' for name in ids]
    return "\n\n".join(b for b in text.split("\n\n") if not any(g in b + "\n" for g in gone))


def swapped(old: str, new: str, text: str = TEXT) -> str:
    """Give a card's text with one thing in place of another, which must be there."""
    assert old in text
    return text.replace(old, new)


def with_line(name: str, line: str, text: str = TEXT) -> str:
    """Give a card's text with one more line in the table of one fitting."""
    return swapped(f'id = "{name}"\n', f'id = "{name}"\n{line}\n', text)


def absent(kind: str, text: str = TEXT) -> str:
    """Give a card's text that says one more kind was looked for and not found."""
    return swapped('"capped tee",', f'"capped tee", "{kind}",', text)


SMALL = absent(
    "outside shower",
    without(
        *("outside-cold-tee", "outside-hot-tee", "outside-shower", "outside-cold", "outside-hot"),
        *("lavatory-cold-tee", "lavatory-hot-tee", "lavatory", "lavatory-trap", "lavatory-cold"),
        *("lavatory-hot", "toilet-tee", "toilet", "toilet-line", "shower", "shower-trap"),
        *("shower-cold", "shower-hot", "cold-trunk-4", "cold-trunk-5", "cold-trunk-6"),
        *("hot-aft-1", "hot-aft-2", "black-tank"),
    ),
)
"""A coach with a galley and nothing else."""


def card(text: str = TEXT) -> Card:
    """Read a card."""
    return read_card(text)


def rebuilt(plain: Card, **changes: Any) -> Card:
    """Give a card with some fields changed, and nothing remembered of what it was."""
    fields = {name: getattr(plain, name) for name in Card.model_fields}
    return Card.model_construct(**{**fields, **changes})


@cache
def planned(degF: float = -10.0, product: str = "pink", text: str = TEXT) -> Plan:
    """Plan a coach for a design low [degF]; each is worked out once."""
    return plan_coach(card(text), PRODUCTS[product], celsius(degF))
