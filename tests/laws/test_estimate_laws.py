"""Laws of every estimate, whatever the price table."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.prices import WORKS, Extra, Further, Prices, Tax, Tier, Work
from wintertight.procedure.estimate import Estimate, PricedJob, estimate_job
from wintertight.units import GALLON_M3

DAY = date(2026, 10, 15)
KINDS = ("ice maker", "washer", "dishwasher")

works = st.sampled_from(WORKS)
volumes = st.floats(0.0, 0.2)


@st.composite
def tables(draw: st.DrawFn) -> Prices:
    """Draw a price table."""
    decimals = draw(st.sampled_from([0, 2, 3]))
    money = st.integers(0, 500_000).map(lambda coins: Decimal(coins).scaleb(-decimals))
    extras = tuple(
        Extra(f"extra {i}", draw(money), draw(st.sampled_from([None, *KINDS])), of, optional)
        for i, (of, optional) in enumerate(
            draw(st.lists(st.tuples(works, st.booleans()), max_size=4))
        )
    )
    alone: list[tuple[Work, ...]] = [(work,) for work in WORKS]
    taxes = []
    for i in range(draw(st.integers(0, 3))):
        compound = draw(st.booleans())
        on = WORKS if compound else draw(st.sampled_from([WORKS, *alone]))
        rate = Decimal(draw(st.integers(0, 300_000))).scaleb(-6)
        taxes.append(Tax(f"tax {i}", rate, on, compound))
    return Prices(
        currency="USD",
        decimals=decimals,
        rounding=draw(st.sampled_from(["half-even", "half-up"])),
        tiers=(Tier("all", draw(money), included_m3=draw(volumes)),),
        further=draw(
            st.none() | st.builds(Further, st.sampled_from(["gallon", "container"]), money)
        ),
        extras=extras,
        taxes=tuple(taxes),
        approval_limit=draw(st.none() | money),
        valid_days=draw(st.integers(1, 366)),
    )


@st.composite
def jobs(draw: st.DrawFn) -> PricedJob:
    """Draw a job."""
    antifreeze_m3 = draw(volumes)
    return PricedJob(
        kind="travel trailer",
        method="pump",
        length_m=draw(st.none() | st.floats(3.0, 15.0)),
        outlets=draw(st.integers(1, 60)),
        fittings={kind: draw(st.integers(0, 3)) for kind in KINDS},
        antifreeze_m3=antifreeze_m3,
        at_most_m3=antifreeze_m3 * draw(st.floats(1.0, 1.5)),
        container_m3=draw(st.sampled_from([1e-3, GALLON_M3, 5 * GALLON_M3])),
    )


def offered(job: PricedJob, table: Prices) -> list[str]:
    """Give the names of the options of a job."""
    return [option.extra.name for option in estimate_job(job, table, DAY).options]


def in_coins(amount: Decimal, found: Estimate) -> bool:
    """Tell whether an amount is a whole number of the smallest coin."""
    return amount == amount.quantize(Decimal(1).scaleb(-found.prices.decimals))


@given(tables(), jobs())
def test_lines_and_taxes_add_up_exactly(table: Prices, job: PricedJob) -> None:
    """Guards that the total is the sum of what is printed, to the last coin, and none is less."""
    found = estimate_job(job, table, DAY, accepted=offered(job, table))
    printed = [line.price * line.count for line in found.lines]
    printed += [tax.amount for tax in found.taxes]
    assert found.total == sum(printed, Decimal(0))
    assert all(in_coins(amount, found) and amount >= 0 for amount in printed)
    assert found.at_most >= found.total


@given(tables(), jobs())
def test_a_tax_is_its_rate_of_its_base_within_half_a_coin(table: Prices, job: PricedJob) -> None:
    """Guards that a tax is rounded once, and to the nearest coin."""
    found = estimate_job(job, table, DAY)
    half = Decimal("0.5").scaleb(-table.decimals)
    for tax in found.taxes:
        assert abs(tax.amount - tax.base * tax.tax.rate) <= half


@given(tables(), jobs(), st.data())
def test_accepting_never_lowers_the_total(
    table: Prices, job: PricedJob, data: st.DataObject
) -> None:
    """Guards that one option more never makes the job cheaper, and declining changes nothing."""
    names = offered(job, table)
    accepted = [name for name in names if data.draw(st.booleans())]
    before = estimate_job(job, table, DAY, accepted=accepted).total
    others = [name for name in names if name not in accepted]
    assert estimate_job(job, table, DAY, accepted, others).total == before
    for name in others:
        assert estimate_job(job, table, DAY, accepted=[*accepted, name]).total >= before


@given(tables(), jobs(), volumes)
def test_more_gallons_never_cost_less(table: Prices, job: PricedJob, more_m3: float) -> None:
    """Guards that a job which takes more antifreeze is never cheaper."""
    less = estimate_job(job, table, DAY)
    greater = replace(job, antifreeze_m3=job.antifreeze_m3 + more_m3)
    assert estimate_job(greater, table, DAY).total >= less.total
    included = table.tiers[0].included_m3
    dearer = replace(table, tiers=(replace(table.tiers[0], included_m3=included / 2),))
    assert estimate_job(job, dearer, DAY).total >= less.total
