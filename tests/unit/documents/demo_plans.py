"""Plans of the invented coach that several tests look at, each worked out once."""

import json
import tomllib
from functools import cache
from pathlib import Path

import wintertight
from wintertight.coach.card import Card
from wintertight.coach.load import load_card, read_card
from wintertight.coach.shop import find_product, load_shop
from wintertight.procedure.as_done import AsDone, prove_record
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.record import read_record

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


LONG_NAME = "tap of the second bath, behind the tall cupboard on the road side, by the window"


@cache
def long_named_card() -> Card:
    """Give the bundled coach with a lavatory tap under a long name."""
    lavatory = 'id = "lavatory"\n'
    assert CARD_TEXT.count(lavatory) == 1
    return read_card(CARD_TEXT.replace(lavatory, f'{lavatory}name = "{LONG_NAME}"\n'))


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


@cache
def demo_plan(card: str) -> Plan:
    """Give the plan of another bundled coach, with its own antifreeze and design low."""
    read = load_card(DEMO / "cards" / f"{card}.toml")
    assert read.antifreeze is not None
    assert read.site is not None
    assert read.site.design_low_degC is not None
    found = find_product(load_shop(DEMO / "shop.toml"), read.antifreeze.product)
    return plan_coach(read, found, read.site.design_low_degC)


@cache
def recorded_without(*left_out: str) -> AsDone:
    """Give the proof of the bundled coach's job with some steps left out, by how they begin."""
    events = [
        {"id": f"e{s.n}", "seq": s.n, "step": s.step.id, "result": "done"}
        for s in plan_of().steps
        if not s.step.id.startswith(left_out)
    ]
    record = read_record(json.dumps({"schema": "wintertight/record/1", "events": events}))
    return prove_record(demo_card(), record, plan_of().product, WARM)
