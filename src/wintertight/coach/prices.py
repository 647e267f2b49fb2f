"""What a shop takes for winterizing a coach: its own tiers, extras, options, taxes and limits.

Amounts are decimal numbers in the shop's currency, written in quotes and never rounded on the way
in; an amount finer than the smallest coin of the currency is refused.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated, Any, Literal, get_args

from pydantic import BeforeValidator, Field, StrictBool, StrictInt, StrictStr

from wintertight.coach.card import CoachKind, KindName, Part, Text, card_error
from wintertight.coach.faults import Fault, card_fault
from wintertight.coach.quantity import CubicMetres, MetresAboveZero

Work = Literal["labour", "material"]
Rounding = Literal["half-even", "half-up"]
PricedBy = Literal["gallon", "container"]

WORKS: tuple[Work, ...] = get_args(Work)

MOST_DAYS = 366
"""No estimate is valid for longer than this [1]; more is a slip of the pen."""

MOST_ENTRIES = 200
"""No list of prices has more entries than this [1]."""


@dataclass(frozen=True, slots=True)
class Tier:
    """A flat price for coaches up to a limit; what is None or empty is no limit.

    Attributes:
        name: what it is called on the estimate.
        price: the flat price.
        kinds: kinds of coach it is for.
        methods: methods it is for.
        length_up_to_m: longest coach [m].
        outlets_up_to: most outlets, hot and cold side of a tap counted as two [1].
        included_m3: antifreeze that is in the price [m3].
    """

    name: str
    price: Decimal
    kinds: tuple[str, ...] = ()
    methods: tuple[str, ...] = ()
    length_up_to_m: float | None = None
    outlets_up_to: int | None = None
    included_m3: float = 0.0


@dataclass(frozen=True, slots=True)
class Further:
    """What antifreeze costs beyond what is included.

    Attributes:
        per: whether each further gallon or each further container is charged.
        price: of one; None for a container takes the product's own price.
    """

    per: PricedBy
    price: Decimal | None = None


@dataclass(frozen=True, slots=True)
class Extra:
    """Work beyond the flat price.

    Attributes:
        name: what it is called on the estimate.
        price: of one.
        fitting: kind of fitting it is done at, once for each; None for the coach as a whole.
        of: labour or material.
        optional: whether a customer may decline it.
    """

    name: str
    price: Decimal
    fitting: str | None = None
    of: Work = "labour"
    optional: bool = False


@dataclass(frozen=True, slots=True)
class Tax:
    """A tax.

    Attributes:
        name: what it is called.
        rate: share of what it is on [1].
        on: labour, material, or both.
        compound: whether it is also on the taxes before it.
    """

    name: str
    rate: Decimal
    on: tuple[Work, ...]
    compound: bool = False


@dataclass(frozen=True, slots=True)
class Prices:
    """A shop's price table.

    Attributes:
        currency: three letters of ISO 4217.
        decimals: digits behind the point of its smallest coin [1].
        rounding: how a tax is rounded to that coin.
        tiers: flat prices; the first one that fits a coach is taken.
        further: antifreeze beyond what is included; None where none is charged.
        extras: work beyond the flat price.
        taxes: in the order in which they are added.
        approval_limit: total above which the shop calls first; None where there is none.
        valid_days: days for which an estimate is valid [1].
    """

    currency: str
    decimals: int
    rounding: Rounding
    tiers: tuple[Tier, ...]
    further: Further | None
    extras: tuple[Extra, ...]
    taxes: tuple[Tax, ...]
    approval_limit: Decimal | None
    valid_days: int


# ---- as the file writes it -----------------------------------------------------------------


def _read_money(raw: object) -> Decimal:
    if isinstance(raw, Decimal):
        return raw
    if not isinstance(raw, str) or not re.fullmatch(r"[0-9]{1,9}(\.[0-9]{1,4})?", raw):
        shown = raw if isinstance(raw, str) else "one without quotes"
        message = f"expected an amount in quotes, such as \"129.00\", not '{shown}'"
        raise card_error(message)
    return Decimal(raw)


def _read_rate(raw: object) -> Decimal:
    if isinstance(raw, Decimal):
        return raw
    found = re.fullmatch(r"([0-9]{1,3}(?:\.[0-9]{1,6})?) ?%", raw) if isinstance(raw, str) else None
    rate = Decimal(found[1]) / 100 if found else Decimal(2)
    if rate > 1:
        message = 'expected a rate in quotes up to 100 %, such as "6.25 %"'
        raise card_error(message)
    return rate


def _known_method(raw: str) -> str:
    if not re.fullmatch(r"[a-z][a-z-]{1,30}", raw):
        message = f"expected the name of a method, such as \"pump\", not '{raw}'"
        raise card_error(message)
    return raw


Money = Annotated[Decimal, BeforeValidator(_read_money)]
Rate = Annotated[Decimal, BeforeValidator(_read_rate)]
Method = Annotated[StrictStr, BeforeValidator(lambda raw: _known_method(str(raw)))]


class WrittenTier(Part):
    """A flat price as the list writes it."""

    name: Text = Field(description="what it is called on the estimate")
    price: Money = Field(description='the flat price, "129.00"')
    kinds: tuple[CoachKind, ...] = Field(default=(), description="kinds of coach it is for")
    methods: tuple[Method, ...] = Field(default=(), description="methods it is for")
    length_up_to: MetresAboveZero | None = Field(default=None, description="longest coach")
    outlets_up_to: StrictInt | None = Field(default=None, ge=1, le=500, description="most outlets")
    included: CubicMetres | None = Field(default=None, description="antifreeze in the price")


class WrittenFurther(Part):
    """The price of more antifreeze as the list writes it."""

    per: PricedBy = Field(description="gallon or container")
    price: Money | None = Field(default=None, description="price of one")


class WrittenExtra(Part):
    """Work beyond the flat price as the list writes it."""

    name: Text = Field(description="what it is called on the estimate")
    price: Money = Field(description="price of one")
    fitting: KindName | None = Field(default=None, description="kind of fitting it is done at")
    of: Work = Field(default="labour", description="labour or material")
    optional: StrictBool = Field(default=False, description="may a customer decline it")


class WrittenTax(Part):
    """A tax as the list writes it."""

    name: Text = Field(description="what the tax is called")
    rate: Rate = Field(description='its rate, "6.25 %"')
    on: tuple[Work, ...] = Field(default=WORKS, min_length=1, description="labour, material")
    compound: StrictBool = Field(default=False, description="is it also on the taxes before it")


class WrittenPrices(Part):
    """A price table as the list writes it."""

    rounding: Rounding = Field(description="half-even or half-up")
    valid_days: StrictInt = Field(ge=1, le=MOST_DAYS, description="days an estimate is valid")
    approval_limit: Money | None = Field(
        default=None, description="total above which the shop calls first"
    )
    further: WrittenFurther | None = Field(default=None, description="antifreeze not included")
    tiers: tuple[WrittenTier, ...] = Field(
        alias="tier", min_length=1, max_length=MOST_ENTRIES, description="the flat prices"
    )
    extras: tuple[WrittenExtra, ...] = Field(
        default=(), alias="extra", max_length=MOST_ENTRIES, description="work beyond them"
    )
    taxes: tuple[WrittenTax, ...] = Field(
        default=(), alias="tax", max_length=MOST_ENTRIES, description="the taxes, in order"
    )

    def prices(self, currency: str) -> Prices:
        """Give the table it describes, in a currency."""
        return Prices(
            currency=currency,
            decimals=decimals_of(currency),
            rounding=self.rounding,
            tiers=tuple(
                Tier(
                    name=tier.name,
                    price=tier.price,
                    kinds=tier.kinds,
                    methods=tier.methods,
                    length_up_to_m=tier.length_up_to,
                    outlets_up_to=tier.outlets_up_to,
                    included_m3=tier.included or 0.0,
                )
                for tier in self.tiers
            ),
            further=None if self.further is None else Further(self.further.per, self.further.price),
            extras=tuple(
                Extra(extra.name, extra.price, extra.fitting, extra.of, extra.optional)
                for extra in self.extras
            ),
            taxes=tuple(
                Tax(tax.name, tax.rate, tuple(w for w in WORKS if w in tax.on), tax.compound)
                for tax in self.taxes
            ),
            approval_limit=self.approval_limit,
            valid_days=self.valid_days,
        )


def decimals_of(currency: str) -> int:
    """Give how many digits behind the point the smallest coin of a currency has [1].

    Example:
        >>> decimals_of("USD"), decimals_of("JPY")
        (2, 0)
    """
    from babel.numbers import get_currency_precision  # noqa: PLC0415 - only where there are prices

    return int(get_currency_precision(currency))


def price_faults(written: WrittenPrices, currency: str) -> Iterator[Fault]:
    """Give what is wrong with a price table beyond its single fields.

    Args:
        written: the table.
        currency: three letters.

    Returns:
        A fault for each unknown currency, amount finer than its smallest coin, second thing of a
        name, and tax that is only in part on what the taxes before it are on.
    """
    from babel.numbers import is_currency  # noqa: PLC0415 - only where there are prices

    if not is_currency(currency):
        yield card_fault(f"'{currency}' is no currency of ISO 4217", "currency")
        return
    if written.further and written.further.per == "gallon" and written.further.price is None:
        yield card_fault("'price' is missing; expected: price of one", "prices", "further", "price")
    yield from _too_fine(written, decimals_of(currency), currency)
    for table in ("tier", "extra", "tax"):
        names = [entry.name.lower() for entry in getattr(written, _PLURAL[table])]
        for place, name in enumerate(names):
            if name in names[:place]:
                message = f"a second {table} is called '{name}'"
                yield card_fault(message, "prices", table, place, "name")
    yield from _half_compound(written)


_PLURAL = {"tier": "tiers", "extra": "extras", "tax": "taxes"}


def _amounts(written: WrittenPrices) -> Iterator[tuple[tuple[Any, ...], Decimal | None]]:
    yield ("approval_limit",), written.approval_limit
    if written.further is not None:
        yield ("further", "price"), written.further.price
    for table, entries in (("tier", written.tiers), ("extra", written.extras)):
        some: Iterable[WrittenTier | WrittenExtra] = entries
        for place, entry in enumerate(some):
            yield (table, place, "price"), entry.price


def _too_fine(written: WrittenPrices, decimals: int, currency: str) -> Iterator[Fault]:
    for path, amount in _amounts(written):
        exponent = None if amount is None else amount.as_tuple().exponent
        if isinstance(exponent, int) and -exponent > decimals:
            message = f"expected at most {decimals} digits behind the point in {currency}"
            yield card_fault(message, "prices", *path)


def _half_compound(written: WrittenPrices) -> Iterator[Fault]:
    """Refuse a tax on a tax that lies partly on what it is not on itself: nobody could check it."""
    for place, tax in enumerate(written.taxes):
        for before in written.taxes[:place] if tax.compound else ():
            shared = set(before.on) & set(tax.on)
            if shared and not set(before.on) <= set(tax.on):
                message = (
                    f"a compound tax is on all that '{before.name}' is on, or on none of it;"
                    f" expected on = {list(WORKS)}"
                )
                yield card_fault(message, "prices", "tax", place, "on")
