"""The estimate: one page that a customer reads and signs."""

from typing import Any

import wintertight
from wintertight.documents.card_digits import card_digits
from wintertight.documents.typeset import checked_paper, typeset
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
from wintertight.wording.spoken import begun

Plain = dict[str, Any]

LABELS = (
    "heading", "work", "count", "each", "amount", "net", "total", "options", "accept", "decline",
    "declined", "signature", "date", "agreed",
)  # fmt: skip


def estimate_pdf(  # noqa: PLR0913, PLR0917 - an estimate and how to say it
    found: Estimate,
    plan: Plan,
    shop: str,
    language: str = "en",
    paper: str = "us-letter",
    system: System = "us",
) -> bytes:
    """Give an estimate as a PDF/UA-1 file.

    Args:
        found: the estimate.
        plan: the plan it is for, with what comes of missed steps where work may be declined.
        shop: name of the shop.
        language: two letters.
        paper: "us-letter" or "a4".
        system: "us" or "metric".

    Returns:
        The bytes; the same estimate gives the same bytes.

    Raises:
        ChoiceError: there is no such paper or language.
    """
    checked = checked_paper(paper)
    return typeset("estimate", estimate_content(found, plan, shop, language, checked, system))


def estimate_content(  # noqa: PLR0913, PLR0917 - an estimate and how to say it
    found: Estimate, plan: Plan, shop: str, language: str, paper: str, system: System
) -> Plain:
    """Give everything that stands on an estimate, as plain data for its template."""
    currency = found.prices.currency
    digits = card_digits(plan.card)
    return {
        "lang": language,
        "colon": say("label", "colon", language),
        "paper": paper,
        "labels": {key: say("estimate", key, language) for key in LABELS},
        "title": say("estimate", "title", language, id=plan.card.id),
        "shop": shop,
        "coach": f"{plan.card.id}  {plan.card.name}",
        "fields": [
            [say("estimate", "method", language), begun(say("method", plan.method, language))],
            [say("estimate", "dated", language), found.dated.isoformat()],
            [say("estimate", "valid", language), found.valid_until.isoformat()],
        ],
        "lines": [
            {
                "name": line_name(found, line, plan, language, system),
                "of": say("estimate", line.of, language),
                "count": str(line.count),
                "each": money(line.price, currency, language),
                "amount": money(line.amount, currency, language),
            }
            for line in found.lines
        ],
        "net": money(found.net, currency, language),
        "taxes": [
            [tax_name(found, line, language), money(line.amount, currency, language)]
            for line in found.taxes
        ],
        "total": money(found.total, currency, language),
        "terms": list(terms(found, plan, language, system)),
        "open": [
            [option_line(found, option, language), without_it(option, plan, language)]
            for option in found.options
            if option.state == "undecided"
        ],
        "declined": [
            [declined_line(found, option, language), leaves_open(option, plan, language)]
            for option in found.options
            if option.state == "declined"
        ],
        "engine": say("label", "engine", language, version=wintertight.__version__),
        "card": f"{say('label', 'card', language)} {digits}",
        "page_of": say("label", "page", language, page="<", pages=">"),
    }
