"""Plans of the invented coach that several tests look at, each worked out once."""

import tomllib
from functools import cache
from pathlib import Path

import wintertight
from wintertight.coach.card import Card
from wintertight.coach.load import read_card
from wintertight.coach.shop import find_product, load_shop
from wintertight.procedure.plan import Plan, plan_coach

DEMO = Path(wintertight.__file__).with_name("demo")
CARD_TEXT = (DEMO / "cards" / "middle-travel-trailer.toml").read_text(encoding="utf-8")

WARM, COLD = -20.0, -35.0
"""A design low at which the usual product is enough, and one at which spirit is not [degC]."""

UNKNOWN_THINGS = """
[[fitting]]
id = "ice"
kind = "ice maker"
at = ["16 ft", "7 ft", "3 ft"]

[[line]]
id = "L9"
from = "kitchen-cold-tee"
to = "ice"
length = "12 ft"
"""


@cache
def demo_card() -> Card:
    """Give the bundled coach."""
    return read_card(CARD_TEXT)


@cache
def doubtful_card() -> Card:
    """Give the bundled coach with an ice maker, and nobody has looked for two things."""
    text = CARD_TEXT
    for looked_for in ('"ice maker", ', '"accumulator", ', '"washer",\n'):
        assert looked_for in text
        text = text.replace(looked_for, "")
    tomllib.loads(text + UNKNOWN_THINGS)
    return read_card(text + UNKNOWN_THINGS)


@cache
def plan_of(product: str = "Heron pink -50", low: float = WARM, *, missed: bool = False) -> Plan:
    """Give a plan of the bundled coach."""
    found = find_product(load_shop(DEMO / "shop.toml"), product)
    return plan_coach(demo_card(), found, low, with_missed_steps=missed)


@cache
def doubtful_plan() -> Plan:
    """Give a plan in which parts are unproven: an unknown product in a coach half looked at."""
    found = find_product(load_shop(DEMO / "shop.toml"), "Heron thrift -50")
    return plan_coach(doubtful_card(), found, WARM)
