import re
from dataclasses import replace
from decimal import Decimal

import pytest

from tests.unit.procedure.demo_coach import PINK, PRODUCTS
from wintertight.fluids.product import Product
from wintertight.procedure.antifreeze import ProductChoice, choose_antifreeze
from wintertight.procedure.orders import OrdersCompared
from wintertight.procedure.stop_rules import RuleKey, RuleOutcome
from wintertight.procedure.walk import Walk
from wintertight.wording.choices import (
    none_suits,
    order_and_stop_line,
    orders_line,
    product_line,
    stop_rule_line,
)

GALLON_M3 = 231 * 0.0254**3
LOW = -23.3

POISON = "ethylene glycol is a poison and never goes into a water line."


def choices(
    *products: Product, low_degC: float = LOW, flame: bool = False
) -> tuple[ProductChoice, ...]:
    """Choose for a job of 2.6 gallons."""
    return choose_antifreeze(products, low_degC, ["open"], 2.6 * GALLON_M3, flame=flame)


def line(product: Product, low_degC: float = LOW, *, flame: bool = False) -> str:
    """Give what is said of one product."""
    (choice,) = choices(product, low_degC=low_degC, flame=flame)
    return product_line(choice, low_degC, "USD")


def walk(gallons: float, *short: str) -> Walk:
    """Give an order that takes so many gallons."""
    return Walk(("a", "b"), (3.0, 3.0), short, gallons * GALLON_M3, 60.0)


def compared(nearest: Walk, best: Walk, worst: Walk) -> OrdersCompared:
    """Give a comparison with made-up ends."""
    return OrdersCompared(nearest, worst, best, worst, 44, 7, 5, all_tried=False)


USUAL = compared(walk(2.6), walk(2.5), walk(3.9))
COLOUR = RuleOutcome("first colour", 0.004, 52.0, "gap", ("trunk", "tub", "tee"), ("stub",))


def test_a_product_that_suits_is_told_with_jugs_and_money() -> None:
    """Guards the whole line: strength rounded up, never down, jugs, price and shelf."""
    assert line(replace(PINK, stock=5)) == (
        "Heron pink -50 suits: at least 82 % of what leaves each outlet must be product."
        " Take 3 jugs of 1 gal, 12.75 USD; the shelf has 5."
    )
    assert line(replace(PINK, stock=2)).endswith("; the shelf has only 2.")
    assert line(replace(PINK, price=None)).endswith(
        "Take 3 jugs of 1 gal, price not listed; nobody has counted the shelf."
    )


def test_a_rating_is_told_to_be_measured() -> None:
    """Guards that a product known by its rating only is never told to suit."""
    said = line(PRODUCTS["thrift"], flame=True)
    assert said.startswith("Heron thrift -50 is not proven: only its rating is known")
    assert "measure it" in said
    assert "may catch fire" in said


@pytest.mark.parametrize(
    ("product", "low_degC", "said"),
    [
        (PINK, -40.0, "Heron pink -50 does not suit: even undiluted it is too weak for -40 °F."),
        (
            PRODUCTS["thrift"],
            -50.0,
            "Heron thrift -50 does not suit: its rating is too warm for -58 °F.",
        ),
        (
            Product("grey", None, None, None, None, GALLON_M3),
            LOW,
            "grey is not proven: nothing on its label settles it. Do not use it unmeasured.",
        ),
        (
            Product("ethylene glycol", 0.5, None, -50.0, None, GALLON_M3, Decimal(3)),
            LOW,
            f"ethylene glycol is refused: {POISON}",
        ),
    ],
)
def test_what_is_not_to_be_used_has_no_price(product: Product, low_degC: float, said: str) -> None:
    """Guards that nobody is sent to buy what does not suit, and that the reason is told."""
    assert line(product, low_degC) == said


def test_a_list_without_a_suitable_product_is_told() -> None:
    """Guards that it is said when nothing on the shelf is shown to suit."""
    assert list(none_suits(choices(PINK), LOW)) == []
    told = list(none_suits(choices(PINK, PRODUCTS["thrift"], low_degC=-40.0), -40.0))
    assert told == ["No antifreeze of the list is shown to suit -40 °F."]


def test_spirit_by_a_flame_is_told() -> None:
    """Guards that a product that burns is told with no flame near it."""
    said = line(PRODUCTS["spirit"], -6.0, flame=True)
    assert said.endswith("It can catch fire: no flame and no pilot light while it is used.")


def test_the_line_of_the_job_sheet() -> None:
    """Guards the one line: the three orders, and what first colour would leave."""
    rules = [RuleOutcome("as planned", 0.01, 121.0, "safe"), COLOUR]
    assert order_and_stop_line(USUAL, rules) == (
        "Nearest first takes 2.6 gal on the careful side; of 44 orders tried the best takes"
        " 2.5 gal, the worst 3.9 gal. Stopping at first colour would leave 3 parts to burst,"
        " and 1 part that nobody could vouch for."
    )


def test_another_order_is_told_by_what_it_saves() -> None:
    """Guards the other sentences on orders, and that gallons do not hide an outlet left short."""
    saves = compared(walk(9.0), walk(8.0), walk(8.5, "tub"))
    assert orders_line(saves) == (
        "Nearest first takes 9 gal on the careful side; of 44 orders tried the best would save"
        " 1 gal, the worst takes 8.5 gal and still leaves 1 that never clear."
    )
    clears = compared(walk(2.0, "tub", "sink"), walk(3.0, "tub"), walk(2.0, "tub", "sink"))
    assert orders_line(clears) == (
        "Nearest first leaves 2 outlets that never clear; the best of 44 orders tried leaves 1."
    )


@pytest.mark.parametrize("rule", ["as planned", "first colour", "ten seconds"])
@pytest.mark.parametrize(("bursting", "doubtful"), [((), ()), ((), ("a",)), (("b",), ("a",))])
def test_every_stop_rule_can_be_said(
    rule: RuleKey, bursting: tuple[str, ...], doubtful: tuple[str, ...]
) -> None:
    """Guards that each outcome of each rule is one whole sentence, in both systems."""
    outcome = replace(COLOUR, rule=rule, bursting=bursting, doubtful=doubtful)
    said = stop_rule_line(outcome)
    for one in (said, stop_rule_line(outcome, system="metric")):
        assert re.fullmatch(r"[A-Z][^{}]*\.", one)
    assert ("burst" in said) == (bool(bursting) and rule != "as planned")
