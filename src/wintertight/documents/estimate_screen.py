"""An estimate as plain text for a screen."""

from collections.abc import Iterator

from wintertight.documents.screen_blocks import joined, wrapped
from wintertight.procedure.estimate import Estimate
from wintertight.procedure.plan import Plan
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.estimate import (
    declined_line,
    leaves_open,
    line_name,
    option_line,
    tax_name,
    terms,
    without_it,
)
from wintertight.wording.money import money

NAME_WIDTH = 64
AMOUNT_WIDTH = 14


def estimate_screen(
    found: Estimate, plan: Plan, shop: str, language: str = "en", system: System = "us"
) -> str:
    """Give an estimate as text.

    Args:
        found: the estimate.
        plan: the plan it is for.
        shop: name of the shop.
        language: two letters.
        system: "us" or "metric".

    Returns:
        Lines, with a line feed at the end.
    """
    return joined(
        (
            _head(found, plan, shop, language),
            _lines(found, plan, language, system),
            (wrapped(term) for term in terms(found, plan, language, system)),
            _options(found, plan, language),
        )
    )


def _head(found: Estimate, plan: Plan, shop: str, language: str) -> Iterator[str]:
    yield say("estimate", "from", language, shop=shop)
    yield f"{plan.card.id}  {plan.card.name}"
    valid = say("estimate", "valid", language)
    yield (
        f"{say('estimate', 'dated', language)} {found.dated.isoformat()}"
        f"   {valid} {found.valid_until.isoformat()}"
    )


def _lines(found: Estimate, plan: Plan, language: str, system: System) -> Iterator[str]:
    currency = found.prices.currency
    for line in found.lines:
        name = line_name(found, line, plan, language, system)
        yield _row(f"{line.count} x {name}", money(line.amount, currency, language))
    yield _row(say("estimate", "net", language), money(found.net, currency, language))
    for tax in found.taxes:
        yield _row(tax_name(found, tax, language), money(tax.amount, currency, language))
    yield _row(say("estimate", "total", language), money(found.total, currency, language))


def _row(name: str, amount: str) -> str:
    """Put an amount to the right; a name that is too long has a line of its own."""
    if len(name) > NAME_WIDTH:
        return f"{wrapped(name)}\n{amount:>{NAME_WIDTH + AMOUNT_WIDTH}}"
    return f"{name:<{NAME_WIDTH}}{amount:>{AMOUNT_WIDTH}}"


def _options(found: Estimate, plan: Plan, language: str) -> Iterator[str]:
    for state, heading in (("undecided", "options"), ("declined", "declined")):
        some = [option for option in found.options if option.state == state]
        if some:
            yield say("estimate", heading, language)
        for option in some:
            if state == "undecided":
                told = option_line(found, option, language)
                left = without_it(option, plan, language)
            else:
                told = declined_line(found, option, language)
                left = leaves_open(option, plan, language)
            yield wrapped(f"{told} {left}", "  -  ")
