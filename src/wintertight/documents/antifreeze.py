"""Which antifreeze suits a coach, for a screen and for programs."""

from collections.abc import Sequence
from typing import Any

from wintertight.coach.card import Card
from wintertight.documents.screen_blocks import joined, wrapped
from wintertight.procedure.antifreeze import ProductChoice
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.choices import none_suits, product_line

Plain = dict[str, Any]


def antifreeze_list(
    found: Sequence[ProductChoice],
    low_degC: float,
    currency: str,
    language: str = "en",
    system: System = "us",
) -> list[Plain]:
    """Give the products as plain data, best first, ready for `json.dumps`.

    Args:
        found: what is said of each.
        low_degC: design low [degC].
        currency: three letters.
        language: two letters; only texts depend on it.
        system: units inside texts.

    Returns:
        One object a product.
    """
    return [_product(one, low_degC, currency, language, system) for one in found]


def _product(
    one: ProductChoice, low_degC: float, currency: str, language: str, system: System
) -> Plain:
    values: Plain = {
        "product": one.product.name,
        "answer": one.answer,
        "least_share": one.share,
        "count": one.count,
        "cost": None if one.cost is None else {"amount": str(one.cost), "currency": currency},
        "enough": one.enough,
        "text": product_line(one, low_degC, currency, language, system),
    }
    unused = "not to be used" if one.share is None else "not known"
    keys = {"least_share": unused, "count": unused, "cost": unused, "enough": unused}
    missing = {k: say("null", why, language) for k, why in keys.items() if values[k] is None}
    return {**values, "why_null": missing} if missing else values


def antifreeze_screen(  # noqa: PLR0913, PLR0917 - a choice and how to say it
    found: Sequence[ProductChoice],
    card: Card,
    low_degC: float,
    currency: str,
    language: str = "en",
    system: System = "us",
) -> str:
    """Give the products as text, best first.

    Args:
        found: what is said of each.
        card: the coach's card.
        low_degC: design low [degC].
        currency: three letters.
        language: two letters.
        system: "us" or "metric".

    Returns:
        A heading and a paragraph a product, with a line feed at the end.
    """
    low = in_words(low_degC, "temperature", system)
    heading = say("comparison", "antifreeze heading", language, coach=card.name, low=low)
    lines = (product_line(one, low_degC, currency, language, system) for one in found)
    none = (wrapped(text) for text in none_suits(found, low_degC, language, system))
    return joined([[wrapped(heading)], none, [wrapped(line, "  -  ") for line in lines]])
