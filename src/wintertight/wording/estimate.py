"""An estimate in words: its lines, its taxes, and what declined work leaves open."""

import math
from collections.abc import Iterator

from wintertight.procedure.estimate import A_DROP, Estimate, OptionLine, PriceLine, TaxLine
from wintertight.procedure.plan import Plan
from wintertight.procedure.priced_job import left_open
from wintertight.units import GALLON_M3, LITRE_M3, System, in_words
from wintertight.wording.catalogue import say, say_best
from wintertight.wording.money import money, percent
from wintertight.wording.names import part_name
from wintertight.wording.plans import verdict_of_plan
from wintertight.wording.spoken import begun, some_of
from wintertight.wording.steps import hazard

NAMED = 4
"""So many parts are named, the rest is counted."""


def line_name(
    found: Estimate, line: PriceLine, plan: Plan, language: str = "en", system: System = "us"
) -> str:
    """Give what one line of an estimate is for."""
    included = in_words(found.tier.included_m3, "volume", system)
    if line.key == "tier" and found.tier.included_m3:
        return say("estimate", "included", language, tier=line.name, included=included)
    if line.key in {"tier", "extra"}:
        return line.name
    size = in_words(plan.product.container_m3, "volume", system)
    circumstance = () if found.tier.included_m3 else ("all",)
    return say_best("estimate", line.key, circumstance, language, included=included, size=size)


def tax_name(found: Estimate, line: TaxLine, language: str = "en") -> str:
    """Give what one tax is, at which rate, and on how much."""
    return say(
        "estimate",
        "compound" if line.tax.compound else "tax",
        language,
        name=line.tax.name,
        rate=percent(line.tax.rate),
        base=money(line.base, found.prices.currency, language),
    )


def terms(
    found: Estimate, plan: Plan, language: str = "en", system: System = "us"
) -> Iterator[str]:
    """Give what holds for an estimate as a whole."""
    currency, limit = found.prices.currency, found.prices.approval_limit
    if found.open_ended:
        yield say("estimate", "open-ended", language)
    rises = found.at_most > found.total
    if plan.buy.count:
        yield say(
            "estimate",
            "at most" if rises else "steady",
            language,
            volume=_begun(plan.antifreeze.p50, system),
            most=_begun(plan.antifreeze.p95, system),
            amount=money(found.at_most, currency, language),
        )
    if limit is not None:
        key = "above limit" if found.needs_approval else "limit"
        yield say("estimate", key, language, amount=money(limit, currency, language))
    if found.taxes:
        yield say("estimate", f"rounding: {found.prices.rounding}", language)
    states = {option.state for option in found.options if option.extra.fitting}
    if "declined" in states:
        yield say("estimate", "no claim", language)
    else:
        key = "claim with options" if "undecided" in states else "claim"
        yield say("estimate", key, language, verdict=verdict_of_plan(plan, language, system))


def _begun(volume_m3: float, system: System) -> str:
    """Give a volume to a tenth, rounded up, as what is charged: what is begun counts."""
    unit_m3 = GALLON_M3 if system == "us" else LITRE_M3
    tenths = math.ceil(10.0 * volume_m3 / unit_m3 - A_DROP)
    return in_words(tenths * unit_m3 / 10.0, "volume", system)


def option_line(found: Estimate, option: OptionLine, language: str = "en") -> str:
    """Give an option and its price."""
    return say(
        "estimate",
        "one option",
        language,
        option=option.extra.name,
        amount=money(option.amount, found.prices.currency, language),
    )


def without_it(option: OptionLine, plan: Plan, language: str = "en") -> str:
    """Give what an option of which nothing was said would leave open if it were not done."""
    return say("estimate", "without it", language, left=leaves_open(option, plan, language))


def declined_line(found: Estimate, option: OptionLine, language: str = "en") -> str:
    """Give what a customer signs who declines an option."""
    return say(
        "estimate",
        "i decline",
        language,
        option=option.extra.name,
        amount=money(option.amount, found.prices.currency, language),
    )


def leaves_open(option: OptionLine, plan: Plan, language: str = "en") -> str:
    """Give what declining an option leaves open, from what missed steps of the plan would do."""
    if option.extra.fitting is None:
        return say("estimate", "no fitting", language)
    left = left_open(plan, option.extra.fitting)
    if not left.steps:
        return say("estimate", "no step", language)
    said = [hazard(key, language) for key in left.hazards]
    for key, parts in (("names", left.gaps), ("doubtful", left.unproven)):
        if parts:
            names = some_of([part_name(plan.card, p, language) for p in parts], NAMED, language)
            said.append(begun(say("estimate", key, language, names=names)))
    if not left.asked:
        said.append(say("estimate", "not asked", language))
    return " ".join(said) or say("estimate", "nothing known", language)
