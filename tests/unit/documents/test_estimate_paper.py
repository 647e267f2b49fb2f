"""The estimate on paper and as data: every amount, what is declined, and who signs."""

import io
import re
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from decimal import Decimal
from functools import cache
from typing import Any

import pytest
from pypdf import PdfReader

from tests.unit.documents.demo_plans import DEMO, demo_plan, plan_of
from wintertight.coach.prices import Prices
from wintertight.coach.shop import load_shop
from wintertight.documents.estimate_json import estimate_object
from wintertight.documents.estimate_paper import estimate_pdf
from wintertight.documents.estimate_screen import estimate_screen
from wintertight.documents.screen_blocks import WIDTH
from wintertight.documents.typeset import PAPERS, Paper
from wintertight.errors import ChoiceError
from wintertight.procedure.estimate import Estimate, estimate_job
from wintertight.procedure.plan import Plan
from wintertight.procedure.priced_job import priced_job
from wintertight.procedure.steps import Missed
from wintertight.units import System
from wintertight.wording.money import money, percent

pytestmark = pytest.mark.long

DAY = date(2026, 10, 15)
SHOP = "Heron Lake Coach Care"


def demo_prices() -> Prices:
    """Give the price table of the invented shop."""
    prices = load_shop(DEMO / "shop.toml").prices
    assert prices is not None
    return prices


@cache
def with_missed() -> Plan:
    """Give the large motorhome's plan, its ice maker's steps left out for the sake of example."""
    plan = demo_plan("large-motorhome")
    burst = Missed("gap", ("ice-maker/mould", "ice-maker"), 1e-4)
    steps = tuple(
        replace(s, if_missed=burst if s.step.part.startswith("ice-maker") else Missed("same"))
        for s in plan.steps
    )
    return replace(plan, steps=steps)


def made(plan: Plan, **said: Any) -> Estimate:
    """Give an estimate by the demo's prices."""
    return estimate_job(priced_job(plan), demo_prices(), DAY, **said)


def words(pdf: bytes) -> str:
    """Give all text of a paper, blanks and line ends made one."""
    pages = PdfReader(io.BytesIO(pdf), strict=True).pages
    return " ".join(" ".join(page.extract_text() for page in pages).split())


def amounts_in(found: Estimate) -> Iterator[Decimal]:
    """Give every amount that must stand on the paper."""
    for line in found.lines:
        yield line.price
        yield line.amount
    for tax in found.taxes:
        yield tax.base
        yield tax.amount
    yield from (found.net, found.total, found.at_most)


@pytest.mark.parametrize("paper", PAPERS)
def test_every_amount_stands_on_it(paper: Paper) -> None:
    """Guards lines, taxes with their base, total and limit, on one page of either paper."""
    plan = with_missed()
    found = made(plan, accepted=["ice maker"])
    pdf = estimate_pdf(found, plan, SHOP, paper=paper)
    text = words(pdf)
    for amount in amounts_in(found):
        assert money(amount, "USD") in text
    assert "The shop calls before the bill goes above $400.00" in text
    assert "Dated: 2026-10-15" in text
    assert "Valid until: 2026-11-14" in text
    assert SHOP in text
    (page,) = PdfReader(io.BytesIO(pdf)).pages
    assert round(float(page.mediabox.width)) == {"us-letter": 612, "a4": 595}[paper]


def test_declined_work_is_signed_for() -> None:
    """Guards that what declining leaves open is told in words above a line to sign on."""
    plan = with_missed()
    text = words(estimate_pdf(made(plan, declined=["ice maker"]), plan, SHOP))
    told = text[text.index("Declined work") :]
    assert "I decline: Ice maker ($18.00 before tax)." in told
    assert "Mould of the ice maker and ice maker would not be protected" in told
    assert told.count("Signature") == 2
    assert "what the plan says of the coach does not hold" in text
    assert "Protected as planned" not in text
    plain = words(estimate_pdf(made(plan), plan, SHOP))
    assert "I decline" not in plain
    assert plain.count("Signature") == 1


def test_options_that_are_open_are_not_in_the_total() -> None:
    """Guards that an open option is told with its price, what it is for, and both boxes."""
    plan = with_missed()
    text = words(estimate_pdf(made(plan), plan, SHOP))
    assert "Options that are open, not in the total" in text
    assert "Ice maker: $18.00 before tax. Without it: Mould of the ice maker" in text
    assert "Battery taken in and kept charged: $35.00 before tax. Without it: No part" in text
    assert "with every option done: Protected as planned" in text


def test_what_nobody_worked_out_is_told_so() -> None:
    """Guards that a plan which left no step out makes nobody believe that declining is harmless."""
    plan = demo_plan("large-motorhome")
    found = made(plan, declined=["ice maker", "outside shower"])
    assert "What that leaves open was not worked out" in words(estimate_pdf(found, plan, SHOP))
    same = tuple(replace(s, if_missed=Missed("same")) for s in plan.steps)
    text = words(estimate_pdf(found, replace(plan, steps=same), SHOP))
    assert "left out together, nobody has worked it out" in text


def test_a_frozen_coach_is_open_ended() -> None:
    """Guards that an estimate for thawing says that it is no price for the winter."""
    plan = replace(plan_of(), method="thaw")
    text = words(estimate_pdf(made(plan), plan, SHOP))
    assert "This estimate is open-ended: the coach may have frozen" in text
    assert "open-ended" not in words(estimate_pdf(made(plan_of()), plan_of(), SHOP))


def test_above_the_limit_is_told() -> None:
    """Guards that a customer reads when the shop waits for a yes."""
    plan = plan_of()
    prices = replace(demo_prices(), approval_limit=Decimal("50.00"))
    found = estimate_job(priced_job(plan), prices, DAY)
    assert "waits for a yes" in words(estimate_pdf(found, plan, SHOP))


def test_it_can_be_read_aloud_and_comes_out_the_same() -> None:
    """Guards tags, title and language as PDF/UA asks, and the same bytes twice."""
    plan = plan_of()
    pdf = estimate_pdf(made(plan), plan, SHOP)
    read = PdfReader(io.BytesIO(pdf))
    assert read.metadata is not None
    assert read.metadata.title == "Estimate HL-204"
    assert str(read.root_object["/Lang"]) == "en"
    assert b"<pdfuaid:part>1</pdfuaid:part>" in pdf
    assert pdf == estimate_pdf(made(plan), plan, SHOP)


@pytest.mark.parametrize(("system", "told"), [("us", "gal"), ("metric", "L")])
def test_both_unit_systems(system: System, told: str) -> None:
    """Guards that antifreeze is told in the units asked for."""
    plan = plan_of()
    text = words(estimate_pdf(made(plan), plan, SHOP, system=system))
    assert re.search(rf"reckoned to take [\d.]+ {told} of antifreeze", text)


def test_what_is_not_there_is_named() -> None:
    """Guards that a wrong paper or language is an error that says which there are."""
    plan = plan_of()
    with pytest.raises(ChoiceError, match="expected one of us-letter, a4"):
        estimate_pdf(made(plan), plan, SHOP, paper="a3")
    with pytest.raises(ChoiceError, match="no language is called 'xx'"):
        estimate_pdf(made(plan), plan, SHOP, language="xx")


def numbers_in(value: object) -> Iterator[tuple[str, object]]:
    """Give every number of an object by its key."""
    if isinstance(value, dict):
        for key, inner in value.items():
            if isinstance(inner, int | float) and not isinstance(inner, bool):
                yield key, inner
            yield from numbers_in(inner)
    elif isinstance(value, list):
        for inner in value:
            yield from numbers_in(inner)


def test_no_amount_is_a_number() -> None:
    """Guards that money is text with its currency, and adds up as text says."""
    plan = with_missed()
    found = estimate_object(made(plan, accepted=["ice maker"]), plan, SHOP)
    assert {key for key, _ in numbers_in(found)} == {
        "count",
        "antifreeze_m3",
        "antifreeze_included_m3",
    }
    sums = [Decimal(line["amount"]["amount"]) for line in (*found["lines"], *found["taxes"])]
    assert found["total"] == {"amount": str(sum(sums)), "currency": "USD"}
    states = {option["name"]: option["state"] for option in found["options"]}
    assert states["Ice maker"] == "accepted"


def test_the_screen_is_narrow_and_whole() -> None:
    """Guards that the screen has every amount and no line beyond its width."""
    plan = with_missed()
    found = made(plan, declined=["ice maker"])
    text = estimate_screen(found, plan, SHOP)
    assert max(map(len, text.splitlines())) <= WIDTH
    for amount in (found.net, found.total, found.at_most):
        assert money(amount, "USD") in text
    assert "I decline: Ice maker" in text


@pytest.mark.parametrize(
    ("currency", "language", "told"),
    [
        ("USD", "en", "$1,234.50"),
        ("CAD", "en", "CA$1,234.50"),
        ("KWD", "en", "KWD1,234.500"),
        ("USD", "fr", "1234,50$US"),
        ("USD", "es", "USD1,234.50"),
    ],
)
def test_money_is_written_as_in_the_language(currency: str, language: str, told: str) -> None:
    """Guards sign, separators and digits of an amount, blanks apart."""
    assert "".join(money(Decimal("1234.5"), currency, language).split()) == told


@pytest.mark.parametrize(
    ("rate", "told"), [("0.06", "6 %"), ("0.1", "10 %"), ("0.09975", "9.975 %")]
)
def test_a_rate_is_written_exactly(rate: str, told: str) -> None:
    """Guards that no digit of a tax rate is lost."""
    assert percent(Decimal(rate)) == told
