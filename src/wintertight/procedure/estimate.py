"""What winterizing one coach costs by a shop's own price table.

Every line is a whole number of things at a listed price, and so exact; only taxes are rounded, each
once, to the smallest coin of the currency and as the table says. A compound tax is on its lines and
on the rounded taxes before it, so that the printed amounts can be added up by hand.
"""

import math
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from typing import Literal

from wintertight.coach.prices import Extra, Prices, Tax, Tier, Work
from wintertight.errors import ChoiceError, OutOfRange
from wintertight.units import GALLON_M3

LineKey = Literal["tier", "further gallon", "further container", "extra"]
State = Literal["accepted", "declined", "undecided"]

ROUNDINGS: Mapping[str, str] = {"half-even": ROUND_HALF_EVEN, "half-up": ROUND_HALF_UP}

A_DROP = 1e-9
"""Part of a gallon or container that is not worth another one [1]: rounding."""


@dataclass(frozen=True, slots=True)
class PricedJob:
    """What of a job a price hangs on.

    Attributes:
        kind: kind of coach.
        method: how it is winterized.
        length_m: length over all [m]; None where the card does not say.
        outlets: its outlets [1], each side of a tap for itself.
        fittings: how many it has of each kind of fitting [1].
        antifreeze_m3: antifreeze the job takes [m3].
        at_most_m3: what it may take [m3], where the card leaves that open.
        container_m3: content of one container [m3].
        container_price: price of one container; None where it is not listed.
    """

    kind: str
    method: str
    length_m: float | None
    outlets: int
    fittings: Mapping[str, int]
    antifreeze_m3: float
    at_most_m3: float
    container_m3: float
    container_price: Decimal | None = None


@dataclass(frozen=True, slots=True)
class PriceLine:
    """One line of an estimate.

    Attributes:
        key: what sort of line it is.
        name: what the shop calls it; "" for antifreeze.
        count: how many [1].
        price: of one.
        of: labour or material.
    """

    key: LineKey
    name: str
    count: int
    price: Decimal
    of: Work

    @property
    def amount(self) -> Decimal:
        """Price of all of them."""
        return self.price * self.count


@dataclass(frozen=True, slots=True)
class TaxLine:
    """One tax of an estimate: what it is on, and what it comes to."""

    tax: Tax
    base: Decimal
    amount: Decimal


@dataclass(frozen=True, slots=True)
class OptionLine:
    """Work that a customer may decline.

    Attributes:
        extra: what is offered.
        count: how many [1].
        state: accepted, declined or undecided.
    """

    extra: Extra
    count: int
    state: State

    @property
    def amount(self) -> Decimal:
        """Price of all of them, before tax."""
        return self.extra.price * self.count


@dataclass(frozen=True, slots=True)
class Estimate:
    """What one job costs.

    Attributes:
        prices: the price table it was made from.
        tier: the flat price that was taken.
        lines: what is charged.
        taxes: what is added.
        options: what is offered, and what was said to it.
        total: all lines and taxes.
        at_most: the total where the job takes as much antifreeze as it may.
        dated, valid_until: first and last day on which it holds.
        open_ended: whether what comes after the job is open.
    """

    prices: Prices
    tier: Tier
    lines: tuple[PriceLine, ...]
    taxes: tuple[TaxLine, ...]
    options: tuple[OptionLine, ...]
    total: Decimal
    at_most: Decimal
    dated: date
    valid_until: date
    open_ended: bool

    @property
    def net(self) -> Decimal:
        """All lines, before tax."""
        return sum((line.amount for line in self.lines), Decimal(0))

    @property
    def needs_approval(self) -> bool:
        """Whether the shop calls before it begins: the total is above the table's limit."""
        limit = self.prices.approval_limit
        return limit is not None and self.total > limit


def estimate_job(
    job: PricedJob,
    prices: Prices,
    dated: date,
    accepted: Collection[str] = (),
    declined: Collection[str] = (),
) -> Estimate:
    """Give what a job costs.

    Args:
        job: the job.
        prices: the shop's price table.
        dated: the day from which it is valid.
        accepted: names of options that were accepted; small and capital letters are alike.
        declined: names of options that were declined.

    Returns:
        The estimate; options of which nothing was said are not in its total.

    Raises:
        ChoiceError: no tier takes the coach, there is no such option at it, one was both accepted
            and declined, or it takes antifreeze that has no price.
        OutOfRange: the antifreeze is no volume, or the last day is beyond the calendar.
    """
    options = options_for(job, prices, accepted, declined)
    tier = tier_for(job, prices)
    lines = tuple(_lines(job, prices, tier, options, job.antifreeze_m3))
    taxes = taxes_on(lines, prices)
    more = tuple(_lines(job, prices, tier, options, max(job.antifreeze_m3, job.at_most_m3)))
    try:
        valid_until = dated + timedelta(days=prices.valid_days)
    except OverflowError:
        message = f"an estimate of {dated} would be valid beyond the calendar"
        raise OutOfRange(message) from None
    return Estimate(
        prices=prices,
        tier=tier,
        lines=lines,
        taxes=taxes,
        options=options,
        total=_total(lines, taxes),
        at_most=_total(more, taxes_on(more, prices)),
        dated=dated,
        valid_until=valid_until,
        open_ended=job.method == "thaw",
    )


def tier_for(job: PricedJob, prices: Prices) -> Tier:
    """Give the first tier that takes a job; a length nobody knows is within no limit.

    Raises:
        ChoiceError: there is none.
    """
    for tier in prices.tiers:
        too_long = tier.length_up_to_m is not None and not (
            job.length_m is not None and job.length_m <= tier.length_up_to_m + A_DROP
        )
        too_many = tier.outlets_up_to is not None and job.outlets > tier.outlets_up_to
        other = (tier.kinds and job.kind not in tier.kinds) or (
            tier.methods and job.method not in tier.methods
        )
        if not (too_long or too_many or other):
            return tier
    length = "of unknown length" if job.length_m is None else f"{job.length_m:.1f} m long"
    message = (
        f"no tier of the price table takes a {job.kind} {length} with {job.outlets} outlets by"
        f" '{job.method}'; expected a last tier without limits"
    )
    raise ChoiceError(message)


def options_for(
    job: PricedJob, prices: Prices, accepted: Collection[str], declined: Collection[str]
) -> tuple[OptionLine, ...]:
    """Give the options of a coach with what was said to each; errors as in `estimate_job`."""
    yes, no = ({name.strip().lower() for name in some} for some in (accepted, declined))
    there = {
        extra.name.lower(): (extra, count)
        for extra in prices.extras
        if extra.optional and (count := _count(job, extra))
    }
    for name in sorted(yes | no):
        if name not in there:
            known = ", ".join(extra.name for extra, _ in there.values()) or "none"
            message = f"this coach has no option '{name}'; there is {known}"
            raise ChoiceError(message)
        if name in yes & no:
            message = f"'{there[name][0].name}' was both accepted and declined"
            raise ChoiceError(message)
    return tuple(
        OptionLine(
            extra, count, "accepted" if name in yes else "declined" if name in no else "undecided"
        )
        for name, (extra, count) in there.items()
    )


def _count(job: PricedJob, extra: Extra) -> int:
    return 1 if extra.fitting is None else job.fittings.get(extra.fitting, 0)


def _lines(
    job: PricedJob,
    prices: Prices,
    tier: Tier,
    options: tuple[OptionLine, ...],
    antifreeze_m3: float,
) -> Iterator[PriceLine]:
    yield PriceLine("tier", tier.name, 1, tier.price, "labour")
    yield from _further(job, prices, antifreeze_m3 - tier.included_m3)
    for extra in prices.extras:
        count = _count(job, extra)
        if count and not extra.optional:
            yield PriceLine("extra", extra.name, count, extra.price, extra.of)
    for option in options:
        if option.state == "accepted":
            extra = option.extra
            yield PriceLine("extra", extra.name, option.count, extra.price, extra.of)


def _further(job: PricedJob, prices: Prices, further_m3: float) -> Iterator[PriceLine]:
    """Give the antifreeze that is not included, in whole gallons or containers."""
    if not math.isfinite(further_m3):
        message = f"a job takes a volume, not {further_m3} m3"
        raise OutOfRange(message)
    if prices.further is None:
        return
    by_gallon = prices.further.per == "gallon"
    count = math.ceil(further_m3 / (GALLON_M3 if by_gallon else job.container_m3) - A_DROP)
    if count <= 0:
        return
    price = prices.further.price
    if price is None and not by_gallon:
        price = job.container_price
    if price is None:
        message = "antifreeze beyond what is included has no price; expected prices.further.price"
        raise ChoiceError(message)
    key: LineKey = "further gallon" if by_gallon else "further container"
    yield PriceLine(key, "", count, price, "material")


def taxes_on(lines: Collection[PriceLine], prices: Prices) -> tuple[TaxLine, ...]:
    """Give each tax on some lines, rounded once, in the order of the table."""
    coin = Decimal(1).scaleb(-prices.decimals)
    found: list[TaxLine] = []
    for tax in prices.taxes:
        base = sum((line.amount for line in lines if line.of in tax.on), Decimal(0))
        if tax.compound:
            below = (t.amount for t in found if set(t.tax.on) <= set(tax.on))
            base += sum(below, Decimal(0))
        amount = (base * tax.rate).quantize(coin, ROUNDINGS[prices.rounding])
        found.append(TaxLine(tax, base, amount))
    return tuple(found)


def _total(lines: Collection[PriceLine], taxes: Collection[TaxLine]) -> Decimal:
    net = sum((line.amount for line in lines), Decimal(0))
    return net + sum((tax.amount for tax in taxes), Decimal(0))
