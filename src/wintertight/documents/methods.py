"""Methods side by side, for a screen and for programs."""

import math
from collections.abc import Sequence
from typing import Any

from wintertight.coach.card import Card
from wintertight.documents.plan_json import band_object
from wintertight.documents.screen_blocks import joined, wrapped
from wintertight.fluids.product import Product
from wintertight.procedure.comparing import Compared
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.comparing import method_name, verdict_word, why_method, work_in_words

Plain = dict[str, Any]

GAP = "  "


def methods_list(
    found: Sequence[Compared], card: Card, currency: str, language: str = "en"
) -> list[Plain]:
    """Give methods as plain data, best first, ready for `json.dumps`.

    Args:
        found: the methods, best first.
        card: the coach's card.
        currency: three letters.
        language: two letters; only texts depend on it.

    Returns:
        One object a method.
    """
    return [_method(one, found[0], card, currency, language) for one in found]


def _method(one: Compared, best: Compared, card: Card, currency: str, language: str) -> Plain:
    values: Plain = {
        "method": one.method,
        "name": method_name(one.method, language),
        "verdict": one.verdict,
        "can_be_done": one.can_be_done,
        "antifreeze_m3": band_object(one.antifreeze) if one.antifreeze else None,
        "duration_s": band_object(one.duration) if one.duration else None,
        "cost": None if one.cost is None else {"amount": str(one.cost), "currency": currency},
        "containers": one.jugs,
        "steps": one.steps,
        **({} if one.holds_s is None else {"holds_s": _finite(one.holds_s)}),
        "gaps": list(one.gaps),
        "unproven": list(one.unproven),
        "why": why_method(one, best, card, language),
    }
    missing = {
        key: one.why_not or say("comparison", "no price", language)
        for key in ("verdict", "antifreeze_m3", "duration_s", "cost")
        if values[key] is None
    }
    return {**values, "why_null": missing} if missing else values


def _finite(seconds: float) -> float | None:
    return seconds if math.isfinite(seconds) else None


def methods_screen(  # noqa: PLR0913, PLR0917 - a comparison and how to say it
    found: Sequence[Compared],
    card: Card,
    product: Product,
    low_degC: float,
    currency: str,
    language: str = "en",
    system: System = "us",
) -> str:
    """Give methods as text, best first.

    Args:
        found: the methods, best first.
        card: the coach's card.
        product: the antifreeze.
        low_degC: design low [degC].
        currency: three letters.
        language: two letters.
        system: "us" or "metric".

    Returns:
        A table and a sentence for each, with a line feed at the end.
    """
    heading = say(
        "comparison",
        "heading",
        language,
        coach=card.name,
        low=in_words(low_degC, "temperature", system),
        product=product.name,
    )
    columns = ("method", "verdict", "antifreeze", "work", "price")
    head = tuple(say("comparison", column, language) for column in columns)
    rows = [_row(one, currency, language, system) for one in found]
    widths = [max(map(len, column)) for column in zip(head, *rows, strict=True)]
    blocks = [[_laid(head, widths)]]
    for one, row in zip(found, rows, strict=True):
        blocks.append(
            [_laid(row, widths), wrapped(why_method(one, found[0], card, language), "    ")]
        )
    last = wrapped(say("comparison", "in words", language))
    return joined([[wrapped(heading)], *blocks, [last]])


def _row(one: Compared, currency: str, language: str, system: System) -> tuple[str, ...]:
    used = in_words(one.antifreeze.p50, "volume", system) if one.antifreeze else ""
    cost = f"{one.cost} {currency}" if one.cost is not None else ""
    name, verdict = method_name(one.method, language), verdict_word(one, language)
    return name, verdict, used, work_in_words(one), cost


def _laid(row: tuple[str, ...], widths: list[int]) -> str:
    cells = [cell.ljust(width) for cell, width in zip(row, widths, strict=True)]
    return GAP.join(cells).rstrip()
