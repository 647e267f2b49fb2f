"""What a record tells beyond what it says, as sentences."""

from collections.abc import Iterator

from wintertight.coach.card import Card
from wintertight.procedure.chances import AS_RECORDED
from wintertight.procedure.hindsight.learning import Learned, Narrowed
from wintertight.procedure.hindsight.look_back import (
    COUNTING,
    NEXT_TIME,
    Cause,
    Hindsight,
    Sight,
)
from wintertight.procedure.hindsight.observed import JUG
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say, say_best
from wintertight.wording.mistakes import circumstances_of
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, share_in_words, spoken

TOLD_FITS = 0.05
"""A second cause is told from this likelihood on [1]."""

MOST_SIGHTS = 3
"""How many observations are told."""

STRANGE = 1.5
"""Standard deviations from which an observation is called strange [1]."""

SURE = 0.99
"""Likelihoods above this are told as more than it [1]."""

NARROWER = 0.8
"""A line is told of whose band is narrower than this share of what it was [1]."""

HABIT = 0.07
"""A habit is told that is at least so far off what the sheet asks [1]."""


def cause_text(cause: Cause, card: Card, language: str = "en", system: System = "us") -> str:
    """Give what may have happened as a piece of a sentence.

    Args:
        cause: the cause.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The piece.
    """
    explanation = cause.explanation
    part = part_name(card, explanation.part, language) if explanation.part else ""
    mistake = explanation.mistake
    if mistake is None:
        return say("cause", explanation.cause, language, part=part)
    params = {**spoken(mistake.params, language, system), "part": part, "heater": part}
    return say_best("mistake", mistake.key, circumstances_of(mistake), language, **params)


def cure_text(cause: Cause, language: str = "en") -> str:
    """Give what to do if a cause is true; "" for a job that went as recorded."""
    explanation, mistake = cause.explanation, cause.explanation.mistake
    if explanation.cause == AS_RECORDED:
        return ""
    settle = ""
    if mistake is not None:
        settle = say_best("mistake settle", mistake.key, circumstances_of(mistake), language)
    return say_best("hindsight", "cure", (explanation.cause,), language, settle=settle)


def diagnosis_lines(
    found: Hindsight, card: Card, language: str = "en", system: System = "us"
) -> Iterator[str]:
    """Give what probably happened, what is strange, and what would tell.

    Args:
        found: what a record tells.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".

    Yields:
        Sentences.
    """
    first, second = found.causes[:2]
    as_recorded = first.explanation.cause == AS_RECORDED
    yield say(
        "hindsight",
        "fits" if as_recorded else "speaks for",
        language,
        cause=cause_text(first, card, language, system),
        fits=likelihood(first.fits, language),
    )
    if not as_recorded:
        strange = [s for s in found.sights if s.off >= STRANGE][:MOST_SIGHTS]
        told = [sight_text(s, card, language, system) for s in strange or found.sights[:1]]
        yield say(
            "hindsight", "strange", language, sights=say("phrase", "semicolon", language).join(told)
        )
        yield cure_text(first, language)
    if second.fits >= TOLD_FITS:
        yield say(
            "hindsight",
            "then",
            language,
            cause=cause_text(second, card, language, system),
            fits=likelihood(second.fits, language),
        )
    if not as_recorded:
        yield separating_text(found, card, language)


def separating_text(found: Hindsight, card: Card, language: str = "en") -> str:
    """Give what would tell the two likeliest causes apart."""
    tells = found.separates
    if tells is None:
        return say("hindsight", "eyes", language)
    if tells.outlet:
        return say(
            "hindsight",
            "cup",
            language,
            outlet=_cup_from(tells.outlet, card, language),
            here=share_in_words(tells.here, language),
            there=share_in_words(tells.there, language),
        )
    return say("hindsight", "look", language, part=part_name(card, tells.part, language))


def sight_text(sight: Sight, card: Card, language: str = "en", system: System = "us") -> str:
    """Give one observation, and what was to be expected."""
    value, expected, if_so = (
        _valued(sight.what, v, language, system)
        for v in (sight.value, sight.as_recorded, sight.if_so)
    )
    outlet = "" if sight.what == "jugs" else _cup_from(sight.where, card, language)
    seen = say_best("sight", sight.what, (sight.where,), language, outlet=outlet, value=value)
    if sight.what == "untimed":
        return seen
    if sight.as_recorded is None:
        return say("sight", "nothing expected", language, seen=seen)
    same = sight.if_so == sight.as_recorded
    key = "as recorded" if same else "and if so"
    return say("sight", key, language, seen=seen, expected=expected, if_so=if_so)


def learned_lines(
    found: Hindsight, card: Card, language: str = "en", system: System = "us"
) -> Iterator[str]:
    """Give what visits have taught.

    Args:
        found: what a record tells.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".

    Yields:
        Sentences; none where nothing was learned.
    """
    if found.learned is None:
        return
    quantities = found.learned.quantities
    yield _narrowed("next time", quantities[NEXT_TIME], "", language, system)
    habit = quantities[COUNTING].after.p50
    if abs(habit - 1.0) >= HABIT:
        yield say("hindsight", "habit", language, percent=share_in_words(habit, language))
    for line in card.lines:
        learned = quantities[line.id]
        if learned.width < NARROWER:
            part = part_name(card, line.id, language)
            yield _narrowed("line", learned, part, language, system)
    last = found.learned.visits - 1
    off = {place for visit, place in found.learned.far_off if visit == last}
    told = [sight_text(s, card, language, system) for s in found.sights if (s.what, s.where) in off]
    if told:
        yield say(
            "hindsight",
            "given less weight",
            language,
            sights=say("phrase", "semicolon", language).join(told),
        )


def taught_text(learned: Learned | None, language: str = "en", system: System = "us") -> str:
    """Give what earlier visits say of the gallons of a plan."""
    if learned is None:
        return say("hindsight", "not taught", language)
    return _narrowed("taught", learned.quantities[NEXT_TIME], "", language, system)


def likelihood(fits: float, language: str = "en") -> str:
    """Give how likely a cause is, in per cent; never as certain."""
    return share_in_words(min(fits, SURE), language)


def _narrowed(key: str, learned: Narrowed, part: str, language: str, system: System) -> str:
    low, high, was_low, was_high = (
        in_words(v, "volume", system)
        for v in (
            learned.after.p05,
            learned.after.p95,
            learned.before.p05,
            learned.before.p95,
        )
    )
    was = say("hindsight", "range", language, low=was_low, high=was_high)
    return begun(say("hindsight", key, language, part=part, low=low, high=high, was=was))


def _cup_from(outlet: str, card: Card, language: str) -> str:
    return say("name", "jug", language) if outlet == JUG else part_name(card, outlet, language)


def _valued(what: str, value: float | None, language: str, system: System) -> str:
    """Give a value in the unit of what was observed."""
    if value is None:
        return say("sight", "none expected", language)
    if what in {"colour", "none"}:
        if value < 0.5:  # noqa: PLR2004 - nobody can time it
            return say("sight", "at once", language)
        return say("sight", "after", language, time=in_words(round(value), "time", "metric"))
    if what in {"run on", "untimed"}:
        return in_words(round(value), "time", "metric")
    return in_words(value, "volume", system) if what == "jugs" else share_in_words(value, language)
