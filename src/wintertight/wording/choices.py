"""Choices in words: which antifreeze, in which order, and when to shut a tap."""

import math
from collections.abc import Iterable, Iterator

from wintertight.procedure.antifreeze import ProductChoice
from wintertight.procedure.orders import OrdersCompared
from wintertight.procedure.stop_rules import RuleOutcome
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.spoken import counted, share_in_words, spoken


def product_line(
    choice: ProductChoice,
    low_degC: float,
    currency: str,
    language: str = "en",
    system: System = "us",
) -> str:
    """Give what is said of one product: whether it suits, how strong, how many, what they cost.

    Args:
        choice: what was found.
        low_degC: design low [degC].
        currency: three letters, as in the shop's list.
        language: two letters.
        system: "us" or "metric".

    Returns:
        One to three sentences.
    """
    judged = say(
        "antifreeze",
        choice.why,
        language,
        product=choice.product.name,
        low=in_words(low_degC, "temperature", system),
        share="" if choice.share is None else _no_weaker(choice.share, language),
    )
    cautions = (say("buying", caution, language) for caution in choice.cautions)
    return " ".join([judged, *_to_buy(choice, currency, language, system), *cautions])


def none_suits(
    choices: Iterable[ProductChoice], low_degC: float, language: str = "en", system: System = "us"
) -> Iterator[str]:
    """Say that no product of a list suits, where that is so."""
    if not any(choice.answer == "suits" for choice in choices):
        yield say("buying", "none suits", language, low=in_words(low_degC, "temperature", system))


def _no_weaker(share: float, language: str) -> str:
    """Give a share in whole per cent, never rounded down to what is too weak."""
    return share_in_words(min(1.0, math.ceil(100.0 * share - 1e-6) / 100.0), language)


def _to_buy(choice: ProductChoice, currency: str, language: str, system: System) -> Iterator[str]:
    if choice.count is None:
        return
    product = choice.product
    shelf = {True: "enough", False: "short", None: "not counted"}[choice.enough]
    price = "no price" if choice.cost is None else "cost"
    size = in_words(product.container_m3, "volume", system)
    yield (
        say("buying", "take", language, jugs=counted(choice.count, "jugs", language), size=size)
        + say("buying", price, language, cost=str(choice.cost), currency=currency)
        + say("buying", shelf, language, stock=str(product.stock))
    )


def orders_line(compared: OrdersCompared, language: str = "en", system: System = "us") -> str:
    """Give one sentence on the order of the outlets.

    Args:
        compared: what was found.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The sentence.
    """
    short = len(compared.worst.short)
    left = say("order", "worst short", language, short=str(short)) if short else ""
    params = spoken(compared.params, language, system)
    return say("order", compared.key, language, worst_short=left, **params)


def stop_rule_line(outcome: RuleOutcome, language: str = "en", system: System = "us") -> str:
    """Give one sentence on a rule for shutting a tap.

    Args:
        outcome: what it comes to.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The sentence.
    """
    params = spoken(outcome.params, language, system)
    for name, parts in (("bursting", outcome.bursting), ("doubtful", outcome.doubtful)):
        params[name] = counted(len(parts), "parts", language)
    too = say("stop rule", "doubtful too", language, **params) if outcome.doubtful else ""
    return say("stop rule", outcome.key, language, doubtful_too=too, **params)


def order_and_stop_line(
    compared: OrdersCompared,
    rules: Iterable[RuleOutcome],
    language: str = "en",
    system: System = "us",
) -> str:
    """Give the one line of the job sheet: the order, then stopping at first colour."""
    said = [stop_rule_line(r, language, system) for r in rules if r.rule == "first colour"]
    return " ".join([orders_line(compared, language, system), *said])
