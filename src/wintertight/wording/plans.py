"""A plan as sentences: what to bring, how long it takes, what else is worth knowing."""

import math
from collections.abc import Iterator

from wintertight.coach.card import Card
from wintertight.coach.findings import COLDEST_DEGC, WARMEST_DEGC, Finding
from wintertight.procedure.plan import Plan, Purchase
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say, say_best
from wintertight.wording.choices import order_and_stop_line
from wintertight.wording.names import part_name
from wintertight.wording.proofs import verdict_line
from wintertight.wording.spoken import begun, counted, in_thousands, listed, spoken
from wintertight.wording.steps import hazard, step_text

TOLD_AS_PARTS = frozenset({"nobody has looked", "not looked at"})
"""Findings that come again as parts that are not proven."""

TOLD_OF_THE_LOW = frozenset({"design low implausible", "design low above freezing"})
"""Findings about the card's design low; what is told is about the one in use."""

A_LONG_HOLD_S = 7200.0
"""A hold from here on is told to a quarter of an hour [s]."""

FIVE_MINUTES_S = 300.0
"""A job is told to five minutes [s]."""


def verdict_of_plan(
    plan: Plan, language: str = "en", system: System = "us", *, recorded: bool = False
) -> str:
    """Give the verdict of a plan as one sentence."""
    return verdict_line(plan.card, plan.parts, plan.low_degC, language, system, recorded=recorded)


def bring_line(buy: Purchase, language: str = "en", system: System = "us") -> str:
    """Give what to bring: "Bring 4 jugs of ..., have one more"."""
    if not buy.count:
        return say("phrase", "bring nothing", language)
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


def minutes_line(duration_s: float, language: str = "en", method: str = "") -> str:
    """Give how long a job takes, to five minutes."""
    time = to_five_minutes(duration_s)
    return say_best("phrase", "minutes", (method,), language, time=time)


def hold_line(plan: Plan, language: str = "en", system: System = "us") -> str | None:
    """Give how long a freeze hold lasts; None for any other plan."""
    hold = plan.hold
    if hold is None:
        return None
    low = in_words(hold.outdoor_degC, "temperature", system)
    if not math.isfinite(hold.seconds):
        return say("phrase", "holds on", language, low=low)
    return say(
        "phrase",
        "holds",
        language,
        time=hold_in_words(hold.seconds, language),
        low=low,
        start=in_words(hold.start_degC, "temperature", system),
        part=part_name(plan.card, hold.parts[0][0], language),
    )


def hold_in_words(seconds: float, language: str = "en") -> str:
    """Give how long a hold lasts, rounded down: to five minutes, beyond two hours to a quarter.

    Example:
        >>> hold_in_words(3272.0), hold_in_words(8900.0), hold_in_words(120.0)
        ('50 min', '2 h 15 min', 'under 5 min')
    """
    step_s = 3.0 * FIVE_MINUTES_S if seconds >= A_LONG_HOLD_S else FIVE_MINUTES_S
    whole_s = math.floor(seconds / step_s) * step_s
    if not whole_s:
        least = in_words(FIVE_MINUTES_S, "time", "metric")
        return say("phrase", "share under", language, share=least)
    return in_words(whole_s, "time", "metric")


def held_line(plan: Plan, language: str = "en") -> str | None:
    """Give in how many draws a plan holds; None where nothing in it is shown to be safe."""
    held = plan.held_in
    if not held.weakest:
        return None
    return say(
        "phrase",
        "held in",
        language,
        held=in_thousands(held.coach, language),
        draws=in_thousands(held.draws, language),
        part=part_name(plan.card, held.weakest, language),
        share=spoken({"held_in": held.parts[held.weakest]}, language)["held_in"],
    )


def used_line(plan: Plan, language: str = "en", system: System = "us") -> str:
    """Give the antifreeze and the time that a recorded job took by the calculation."""
    return say(
        "phrase",
        "used",
        language,
        volume=in_words(plan.antifreeze.p50, "volume", system),
        product=plan.product.name,
        time=to_five_minutes(plan.duration.p50),
    )


def finding_text(finding: Finding, card: Card, language: str = "en", system: System = "us") -> str:
    """Give what about a card deserves a word."""
    params = spoken(finding.params, language, system)
    part = part_name(card, finding.part, language) if finding.part else ""
    return begun(say("finding", finding.key, language, part=part, **params))


def notes(
    plan: Plan, language: str = "en", system: System = "us", *, recorded: bool = False
) -> Iterator[str]:
    """Give warnings, then findings; a part that is not proven is told elsewhere, not twice."""
    yield from warnings(plan, language, system, recorded=recorded)
    if plan.orders is not None:
        yield order_and_stop_line(plan.orders, plan.stop_rules, language, system)
    for finding in plan.findings:
        if finding.key not in TOLD_AS_PARTS | TOLD_OF_THE_LOW:
            yield finding_text(finding, plan.card, language, system)


def warnings(
    plan: Plan, language: str = "en", system: System = "us", *, recorded: bool = False
) -> Iterator[str]:
    """Give what weighs more than a finding: odd cold, refused orders, weak product, no colour."""
    yield from _odd_low(plan, language, system)
    steps = {s.step.id: s for s in plan.steps}
    for refused in plan.refused:
        known = steps.get(refused.step)
        text = hazard(refused.hazard, language)
        if recorded:
            done = step_text(known, plan.card, language, system) if known else refused.step
            yield say("verdict", "refused as recorded", language, step=done, hazard=text)
        else:
            step = str(known.n) if known else refused.step
            yield say("verdict", "refused", language, step=step, hazard=text)
    if any(p.pocket in plan.too_weak and p.safe is not True for p in plan.parts):
        low = in_words(plan.low_degC, "temperature", system)
        yield say("verdict", "too weak", language, product=plan.product.name, low=low)
    if plan.never_clear:
        names = listed((part_name(plan.card, o, language) for o in plan.never_clear), language)
        yield say("verdict", "never clear", language, parts=names)


def _odd_low(plan: Plan, language: str, system: System) -> Iterator[str]:
    """Doubt the design low in use, wherever it comes from."""
    low = plan.low_degC
    key = "implausible" if not COLDEST_DEGC <= low <= WARMEST_DEGC else "above freezing"
    if key == "implausible" or low > 0.0:
        odd = Finding(f"design low {key}", params={"design_low_degC": low})
        yield finding_text(odd, plan.card, language, system)


def five_minutes_s(duration_s: float) -> float:
    """Give a time as a job is told, to five minutes and never none [s].

    Example:
        >>> five_minutes_s(40.0), five_minutes_s(2210.0)
        (300.0, 2100.0)
    """
    return max(1, round(duration_s / FIVE_MINUTES_S)) * FIVE_MINUTES_S


def to_five_minutes(duration_s: float) -> str:
    """Give how long a job takes in words, to five minutes."""
    return in_words(five_minutes_s(duration_s), "time", "metric")
