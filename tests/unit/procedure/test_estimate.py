"""What a job costs: one example worked by hand, and each rule of the price table."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from tests.unit.documents.demo_plans import demo_plan
from wintertight.coach.prices import Extra, Further, Prices, Tax, Tier
from wintertight.errors import ChoiceError, OutOfRange
from wintertight.procedure.estimate import Estimate, PricedJob, estimate_job
from wintertight.procedure.priced_job import left_open, priced_job
from wintertight.procedure.steps import Missed
from wintertight.units import FOOT_M, GALLON_M3

pytestmark = pytest.mark.long

DAY = date(2026, 10, 15)

TABLE = Prices(
    currency="USD",
    decimals=2,
    rounding="half-up",
    tiers=(
        Tier("Thaw", Decimal("180.00"), methods=("thaw",)),
        Tier("Van", Decimal("99.00"), kinds=("camper van",), included_m3=GALLON_M3),
        Tier("Up to 20 ft", Decimal("119.00"), length_up_to_m=20 * FOOT_M, outlets_up_to=16),
        Tier(
            "Up to 30 ft", Decimal("149.00"), length_up_to_m=30 * FOOT_M, included_m3=3 * GALLON_M3
        ),
        Tier("Large", Decimal("229.00")),
    ),
    further=Further("container", Decimal("6.50")),
    extras=(
        Extra("Dishwasher", Decimal("20.00"), "dishwasher"),
        Extra("Ice maker", Decimal("18.00"), "ice maker", optional=True),
        Extra("Battery care", Decimal("35.00"), optional=True),
    ),
    taxes=(
        Tax("State", Decimal("0.06"), ("material",)),
        Tax("County", Decimal("0.0125"), ("labour", "material"), compound=True),
    ),
    approval_limit=Decimal("400.00"),
    valid_days=30,
)

JOB = PricedJob(
    kind="travel trailer",
    method="pump",
    length_m=27 * FOOT_M,
    outlets=14,
    fittings={"dishwasher": 1, "ice maker": 1},
    antifreeze_m3=4.2 * GALLON_M3,
    at_most_m3=5.1 * GALLON_M3,
    container_m3=GALLON_M3,
)


def made(table: Prices = TABLE, job: PricedJob = JOB, **said: Any) -> Estimate:
    """Give the estimate of a job."""
    return estimate_job(job, table, DAY, **said)


def test_the_example_worked_by_hand() -> None:
    """Guards every amount of one estimate against a sum on paper."""
    found = made(accepted=["ice maker"])
    # A trailer of 27 ft: more than 20 ft, not more than 30 ft                  149.00  labour
    # 4.2 gal - 3 gal included = 1.2 gal: 2 containers of 1 gal, 2 x 6.50 =      13.00  material
    # one dishwasher                                                             20.00  labour
    # one ice maker, accepted                                                    18.00  labour
    assert [str(line.amount) for line in found.lines] == ["149.00", "13.00", "20.00", "18.00"]
    # 149.00 + 13.00 + 20.00 + 18.00 =                                          200.00
    assert str(found.net) == "200.00"
    # State:  6 % of 13.00 = 0.78
    # County: 1.25 % of (200.00 + 0.78) = 1.25 % of 200.78 = 2.50975, up to       2.51
    assert [(str(t.base), str(t.amount)) for t in found.taxes] == [
        ("13.00", "0.78"),
        ("200.78", "2.51"),
    ]
    # 200.00 + 0.78 + 2.51 =                                                    203.29
    assert str(found.total) == "203.29"
    # 5.1 gal - 3 gal = 2.1 gal: 3 containers, 19.50; net 206.50; State 6 % of 19.50 = 1.17;
    # County 1.25 % of 207.67 = 2.595875, up to 2.60; 206.50 + 1.17 + 2.60 =    210.27
    assert str(found.at_most) == "210.27"
    # 15 October and 30 days: 16 days are left of October, and 14 of November.
    assert (found.dated, found.valid_until) == (DAY, date(2026, 11, 14))
    assert (found.needs_approval, found.open_ended) == (False, False)


@pytest.mark.parametrize(
    ("changes", "tier"),
    [
        ({"length_m": 20 * FOOT_M}, "Up to 20 ft"),
        ({"length_m": 20.1 * FOOT_M}, "Up to 30 ft"),
        ({"length_m": 18 * FOOT_M, "outlets": 17}, "Up to 30 ft"),
        ({"length_m": 42 * FOOT_M}, "Large"),
        ({"length_m": None}, "Large"),
        ({"kind": "camper van", "length_m": None}, "Van"),
        ({"method": "thaw"}, "Thaw"),
    ],
)
def test_the_first_tier_that_fits_is_taken(changes: Mapping[str, Any], tier: str) -> None:
    """Guards limits of length, outlets, kind and method, and that unknown is within no limit."""
    assert made(job=replace(JOB, **changes)).tier.name == tier


def test_no_tier_is_an_error() -> None:
    """Guards that a coach which no tier takes is told with what the table would need."""
    table = replace(TABLE, tiers=TABLE.tiers[:3])
    with pytest.raises(ChoiceError, match=r"travel trailer 8\.2 m long with 14 outlets"):
        made(table)
    with pytest.raises(ChoiceError, match="of unknown length"):
        made(table, replace(JOB, length_m=None))


@pytest.mark.parametrize(
    ("gallons", "per", "count"),
    [(3.0, "container", 0), (3.01, "gallon", 1), (4.0, "gallon", 1), (13.0, "container", 2)],
)
def test_further_antifreeze_is_counted_whole(gallons: float, per: Any, count: int) -> None:
    """Guards that what is included costs nothing, and what is begun costs whole."""
    table = replace(TABLE, further=Further(per, Decimal("5.00")))
    job = replace(JOB, antifreeze_m3=gallons * GALLON_M3, container_m3=5 * GALLON_M3)
    assert sum(line.count for line in made(table, job).lines if line.of == "material") == count


def test_a_container_may_take_its_price_from_the_list() -> None:
    """Guards the product's own price, and that without any price there is no estimate."""
    table = replace(TABLE, further=Further("container"))
    priced = made(table, replace(JOB, container_price=Decimal("4.25")))
    assert str(priced.lines[1].amount) == "8.50"
    with pytest.raises(ChoiceError, match=r"expected prices\.further\.price"):
        made(table)
    free = made(replace(TABLE, further=None))
    assert not [line for line in free.lines if line.of == "material"]


@pytest.mark.parametrize(
    ("rounding", "rate", "tax"),
    [("half-even", "0.0825", 82), ("half-up", "0.0825", 83), ("half-even", "0.0835", 84)],
)
def test_a_half_is_rounded_as_the_table_says(rounding: Any, rate: str, tax: int) -> None:
    """Guards both roundings at a half, in a currency without smaller coins."""
    # 8.25 % of 1000 is 82.5: to the even 82, or up to 83; 8.35 % is 83.5: to the even 84.
    table = replace(
        TABLE,
        currency="JPY",
        decimals=0,
        rounding=rounding,
        tiers=(Tier("All", Decimal(1000)),),
        further=None,
        extras=(),
        taxes=(Tax("Tax", Decimal(rate), ("labour",)),),
    )
    assert made(table).total == 1000 + tax


def test_a_compound_tax_is_on_the_taxes_before_it_only() -> None:
    """Guards that one tax is on the other and not the other way round, and plain ones on none."""
    first, second = Tax("A", Decimal("0.05"), ("labour",)), Tax("B", Decimal("0.10"), ("labour",))
    plain = replace(TABLE, tiers=(Tier("All", Decimal(100)),), further=None, extras=())
    for taxes, amounts in (
        ((first, second), ["5.00", "10.00"]),
        ((first, replace(second, compound=True)), ["5.00", "10.50"]),
        ((replace(first, compound=True), second), ["5.00", "10.00"]),
        ((replace(first, on=("material",)), replace(second, compound=True)), ["0.00", "10.00"]),
    ):
        found = made(replace(plain, taxes=taxes))
        assert [str(t.amount) for t in found.taxes] == amounts


def test_options_are_accepted_declined_or_open() -> None:
    """Guards that only what was accepted is in the total."""
    states = {o.extra.name: o.state for o in made(declined=["ICE maker "]).options}
    assert states == {"Ice maker": "declined", "Battery care": "undecided"}
    nothing = made().total
    assert made(declined=["ice maker", "battery care"]).total == nothing
    assert made(accepted=["battery care"]).total > nothing


@pytest.mark.parametrize(
    ("said", "message"),
    [
        ({"accepted": ["piano"]}, "no option 'piano'; there is Ice maker, Battery care"),
        ({"accepted": ["dishwasher"]}, "no option 'dishwasher'"),
        ({"accepted": ["ice maker"], "declined": ["ice maker"]}, "both accepted and declined"),
    ],
)
def test_an_option_that_is_none_is_named(said: Mapping[str, Any], message: str) -> None:
    """Guards that a misspelt option, or work that is no option, is an error."""
    with pytest.raises(ChoiceError, match=message):
        made(**said)


def test_above_the_limit_the_shop_calls_first() -> None:
    """Guards the limit itself: at it nobody calls."""
    total = made().total
    assert not made(replace(TABLE, approval_limit=total)).needs_approval
    assert made(replace(TABLE, approval_limit=total - Decimal("0.01"))).needs_approval
    assert not made(replace(TABLE, approval_limit=None)).needs_approval


def test_what_may_have_frozen_is_open_ended() -> None:
    """Guards that nobody promises what a frozen coach will cost."""
    assert made(job=replace(JOB, method="thaw", antifreeze_m3=0.0)).open_ended


@pytest.mark.parametrize("volume_m3", [float("inf"), float("nan")])
def test_a_volume_that_is_none_is_refused(volume_m3: float) -> None:
    """Guards that no price is made of what is no volume."""
    with pytest.raises(OutOfRange):
        made(job=replace(JOB, antifreeze_m3=volume_m3))


def test_the_calendar_has_an_end() -> None:
    """Guards that the last day of the calendar is an error and no crash."""
    with pytest.raises(OutOfRange, match="beyond the calendar"):
        estimate_job(JOB, TABLE, date.max)


def test_a_job_is_read_off_the_plan() -> None:
    """Guards what a price hangs on: kind, length, outlets, fittings and antifreeze."""
    plan = demo_plan("large-motorhome")
    job = priced_job(plan)
    assert (job.kind, job.method) == ("motorhome", "pump")
    assert job.length_m == pytest.approx(42 * FOOT_M)
    assert job.outlets == sum(1 for s in plan.steps if s.run)
    assert (job.fittings["ice maker"], job.fittings["washer"]) == (1, 1)
    assert job.antifreeze_m3 == plan.antifreeze.p50 <= job.at_most_m3
    assert job.container_price == Decimal("4.25")


def test_what_is_left_open_is_what_missed_steps_would_do() -> None:
    """Guards that parts that would burst are told as such, and doubtful ones not twice."""
    plan = demo_plan("large-motorhome")
    own = [s for s in plan.steps if s.step.part.startswith("ice-maker")]
    assert len(own) > 1
    told = {
        own[0].n: Missed("gap", ("ice-maker/mould",), 1e-4),
        own[1].n: Missed("unproven", ("ice-maker/mould", "ice-line"), 1e-4),
    }
    steps = tuple(replace(s, if_missed=told.get(s.n, Missed("same"))) for s in plan.steps)
    left = left_open(replace(plan, steps=steps), "ice maker")
    assert left.steps == tuple(s.n for s in own)
    assert (left.gaps, left.unproven) == (("ice-maker/mould",), ("ice-line",))
    assert left.asked
    assert not left_open(plan, "ice maker").asked
    assert left_open(plan, "softener").steps == ()
