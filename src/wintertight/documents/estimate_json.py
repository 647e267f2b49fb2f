"""An estimate as one object for programs: schema ``wintertight/estimate/1``; amounts are text."""

from decimal import Decimal
from typing import Any

from wintertight.procedure.estimate import Estimate
from wintertight.procedure.plan import Plan
from wintertight.procedure.priced_job import left_open
from wintertight.units import System
from wintertight.wording.estimate import leaves_open, line_name, terms
from wintertight.wording.plans import verdict_of_plan

SCHEMA = "wintertight/estimate/1"

Plain = dict[str, Any]


def estimate_object(
    found: Estimate, plan: Plan, shop: str, language: str = "en", system: System = "us"
) -> Plain:
    """Give an estimate as plain data, ready for `json.dumps`.

    Args:
        found: the estimate.
        plan: the plan it is for.
        shop: name of the shop.
        language: two letters; only texts depend on it.
        system: units inside texts.

    Returns:
        The object; every amount is text with its currency beside it, never a number.
    """
    limit = found.prices.approval_limit

    def amount(value: Decimal) -> Plain:
        return money_object(value, found)

    return {
        "schema": SCHEMA,
        "card_hash": plan.card.card_hash,
        "coach": {"id": plan.card.id, "name": plan.card.name},
        "shop": {"name": shop},
        "method": plan.method,
        "verdict": plan.verdict,
        "verdict_text": verdict_of_plan(plan, language, system),
        "dated": found.dated.isoformat(),
        "valid_until": found.valid_until.isoformat(),
        "open_ended": found.open_ended,
        "tier": found.tier.name,
        "antifreeze_included_m3": float(found.tier.included_m3),
        "antifreeze_m3": float(plan.antifreeze.p50),
        "lines": [
            {
                "key": line.key,
                "text": line_name(found, line, plan, language, system),
                "of": line.of,
                "count": line.count,
                "each": amount(line.price),
                "amount": amount(line.amount),
            }
            for line in found.lines
        ],
        "net": amount(found.net),
        "taxes": [
            {
                "name": line.tax.name,
                "rate": f"{line.tax.rate:f}",
                "on": list(line.tax.on),
                "compound": line.tax.compound,
                "base": amount(line.base),
                "amount": amount(line.amount),
            }
            for line in found.taxes
        ],
        "total": amount(found.total),
        "at_most": amount(found.at_most),
        "rounding": found.prices.rounding,
        "approval_limit": None if limit is None else amount(limit),
        "needs_approval": found.needs_approval,
        "options": [
            {
                "name": option.extra.name,
                "fitting": option.extra.fitting,
                "state": option.state,
                "count": option.count,
                "amount": amount(option.amount),
                "left_open": _left_open(plan, option.extra.fitting),
                "text": leaves_open(option, plan, language),
                **_no_fitting(option.extra.fitting),
            }
            for option in found.options
        ],
        "terms": list(terms(found, plan, language, system)),
        **({"why_null": {"approval_limit": "the price table has none"}} if limit is None else {}),
    }


def money_object(value: Decimal, found: Estimate) -> Plain:
    """Give an amount to the smallest coin, with its currency."""
    return {
        "amount": f"{value:.{found.prices.decimals}f}",
        "currency": found.prices.currency,
    }


def _left_open(plan: Plan, kind: str | None) -> Plain | None:
    if kind is None:
        return None
    left = left_open(plan, kind)
    return {
        "steps": list(left.steps),
        "gaps": list(left.gaps),
        "unproven": list(left.unproven),
        "hazards": list(left.hazards),
        "asked": left.asked,
    }


def _no_fitting(kind: str | None) -> Plain:
    if kind is not None:
        return {}
    why = "this option is not at a fitting of the coach"
    return {"why_null": {"fitting": why, "left_open": why}}
