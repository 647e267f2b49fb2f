"""Methods side by side as sentences: why each stands where it does."""

import math

from wintertight.coach.card import Card
from wintertight.procedure.comparing import Compared
from wintertight.units import in_words
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.places import hindrance_text
from wintertight.wording.plans import five_minutes_s, hold_in_words, to_five_minutes
from wintertight.wording.proofs import NAMED
from wintertight.wording.spoken import begun, counted, listed


def method_name(method: str, language: str = "en") -> str:
    """Give what a method is called."""
    return say("method", method, language)


def verdict_word(compared: Compared, language: str = "en") -> str:
    """Give the verdict on a method in a word or two."""
    verdict = compared.verdict if compared.can_be_done else None
    return say("comparison", verdict or "not possible", language)


def why_method(compared: Compared, best: Compared, card: Card, language: str = "en") -> str:
    """Give in a sentence or two why a method stands where it does.

    Args:
        compared: the method.
        best: the one that stands first.
        card: the coach's card.
        language: two letters.

    Returns:
        What it leaves, or why it cannot be done, or how much longer it takes.
    """
    if compared.verdict is None or compared.duration is None or best.duration is None:
        return f"{begun(compared.why_not)}."
    if not compared.can_be_done:
        hindering = (h for h in compared.hindrances if h.effect == "hinders")
        return " ".join(hindrance_text(h, language) for h in hindering)
    if compared.holds_s is not None and math.isfinite(compared.holds_s):
        time = hold_in_words(compared.holds_s, language)
        gaps = counted(len(compared.gaps), "parts", language)
        return say("comparison", "why holds", language, time=time, gaps=gaps)
    if compared.verdict == "safe":
        if compared is best:
            return say("comparison", "why best", language)
        more_s = five_minutes_s(compared.duration.p50) - five_minutes_s(best.duration.p50)
        more = in_words(max(more_s, 0.0), "time", "metric")
        return say("comparison", "why longer", language, more=more)
    bad = compared.gaps if compared.verdict == "gap" else compared.unproven
    many = " and more" if len(bad) > NAMED else ""
    said = say(
        "comparison",
        f"why {compared.verdict}{many}",
        language,
        gaps=counted(len(compared.gaps), "parts", language),
        unproven=counted(len(compared.unproven), "parts", language),
        parts=listed((part_name(card, p, language) for p in bad[:NAMED]), language),
    )
    if compared.verdict == "gap" and compared.unproven:
        unproven = counted(len(compared.unproven), "parts", language)
        said = f"{said} {say('comparison', 'also unproven', language, unproven=unproven)}"
    return begun(said)


def work_in_words(compared: Compared) -> str:
    """Give how long a method takes, to five minutes; "" where it cannot be done."""
    return to_five_minutes(compared.duration.p50) if compared.duration else ""
