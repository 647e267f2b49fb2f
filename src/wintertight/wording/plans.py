"""A plan as sentences: what to bring, how long it takes, what else is worth knowing."""

from collections.abc import Iterator

from wintertight.coach.card import Card
from wintertight.coach.findings import Finding
from wintertight.procedure.plan import Plan, Purchase
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.proofs import verdict_line
from wintertight.wording.spoken import begun, counted, listed, spoken
from wintertight.wording.steps import hazard

TOLD_AS_PARTS = frozenset({"nobody has looked", "not looked at", "kind not modelled"})
"""Findings that come again as parts that are not proven."""

FIVE_MINUTES_S = 300.0
"""A job is told to five minutes [s]."""


def verdict_of_plan(
    plan: Plan, language: str = "en", system: System = "us", *, recorded: bool = False
) -> str:
    """Give the verdict of a plan as one sentence."""
    return verdict_line(plan.card, plan.parts, plan.low_degC, language, system, recorded=recorded)


def bring_line(buy: Purchase, language: str = "en", system: System = "us") -> str:
    """Give what to bring: "Bring 4 jugs of ..., have one more"."""
    key = {0: "bring", 1: "bring and have one"}.get(buy.spare, "bring and have more")
    return say(
        "phrase",
        key,
        language,
        jugs=counted(buy.count, "jugs", language),
        product=buy.product,
        size=in_words(buy.container_m3, "volume", system),
        spare=str(buy.spare),
    )


def minutes_line(duration_s: float, language: str = "en") -> str:
    """Give how long the job takes, to five minutes."""
    rounded = max(1, round(duration_s / FIVE_MINUTES_S)) * FIVE_MINUTES_S
    return say("phrase", "minutes", language, time=in_words(rounded, "time", "metric"))


def finding_text(finding: Finding, card: Card, language: str = "en", system: System = "us") -> str:
    """Give what about a card deserves a word."""
    params = spoken(finding.params, language, system)
    part = part_name(card, finding.part, language) if finding.part else ""
    return begun(say("finding", finding.key, language, part=part, **params))


def notes(plan: Plan, language: str = "en", system: System = "us") -> Iterator[str]:
    """Give warnings, then findings; a part that is not proven is told elsewhere, not twice."""
    yield from warnings(plan, language, system)
    for finding in plan.findings:
        if finding.key not in TOLD_AS_PARTS:
            yield finding_text(finding, plan.card, language, system)


def warnings(plan: Plan, language: str = "en", system: System = "us") -> Iterator[str]:
    """Give what weighs more than a finding: refused orders, weak product, no colour."""
    steps = {s.step.id: s for s in plan.steps}
    for refused in plan.refused:
        step = str(steps[refused.step].n) if refused.step in steps else refused.step
        text = hazard(refused.hazard, language)
        yield say("verdict", "refused", language, step=step, hazard=text)
    if any(p.pocket in plan.too_weak and p.safe is not True for p in plan.parts):
        low = in_words(plan.low_degC, "temperature", system)
        yield say("verdict", "too weak", language, product=plan.product.name, low=low)
    if plan.never_clear:
        names = listed((part_name(plan.card, o, language) for o in plan.never_clear), language)
        yield say("verdict", "never clear", language, parts=names)
