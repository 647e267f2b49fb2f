"""Amounts of money as people write them in a language."""

import re
from collections.abc import Mapping
from decimal import Decimal
from types import MappingProxyType

NO_BREAK = "\u00a0"

_LETTERS_MEET_DIGITS = re.compile(r"(?<=[A-Z])(?=\d)|(?<=\d)(?=[A-Z])")
"""Where Unicode's CLDR asks for a blank (``alphaNextToNumber``), which the library leaves out."""

LOCALES: Mapping[str, str] = MappingProxyType({"en": "en_US", "es": "es_MX", "fr": "fr_CA"})
"""The place whose way of writing amounts is taken for each language."""


def money(amount: Decimal, currency: str, language: str = "en") -> str:
    r"""Give an amount with its currency.

    Args:
        amount: the amount; it is not rounded beyond the smallest coin of its currency.
        currency: three letters of ISO 4217.
        language: two letters; one of which nothing is known is written as English is.

    Returns:
        The words; what must not be parted has blanks that do not break.

    Example:
        >>> money(Decimal("1234.5"), "USD"), money(Decimal(90), "JPY")
        ('$1,234.50', '¥90')
        >>> money(Decimal(149), "USD", "es")
        'USD\xa0149.00'
    """
    from babel.numbers import format_currency  # noqa: PLC0415 - only where there is money

    locale = LOCALES.get(language, LOCALES["en"])
    return _LETTERS_MEET_DIGITS.sub(NO_BREAK, format_currency(amount, currency, locale=locale))


def percent(rate: Decimal) -> str:
    """Give a rate exactly.

    Example:
        >>> percent(Decimal("0.0625")), percent(Decimal("0.06"))
        ('6.25 %', '6 %')
    """
    text = f"{rate * 100:f}"
    return f"{text.rstrip('0').rstrip('.') if '.' in text else text} %"
