"""A wrong setting as one sentence: what stands wrongly, what that does, what is seen, the cure."""

from collections.abc import Iterable, Iterator

from wintertight.coach.card import Card
from wintertight.procedure.mistake_outcome import MistakeOutcome, Sign
from wintertight.procedure.mistakes import Mistake
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say, say_best
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, counted, share_in_words, some_of, spoken
from wintertight.wording.steps import hazard

NAMED = 2
"""How many parts are named before the rest is counted."""

TOLD_M3 = 1e-3
"""Antifreeze more or less than planned that is told [m3]: about a quart."""

WET_M3 = 0.1e-3
"""Water left that is told [m3]: less than half a cup is not."""

MOST_SIGNS = 3
"""How many sorts of signs are told; what is easier to see comes first."""

BY_EASE = (
    "runs elsewhere",
    "nothing comes",
    "never clears",
    "sputters",
    "trickles",
    "late",
    "early",
    "stays pale",
)
"""Keys of signs, the one that is seen most easily first."""


def mistake_text(
    mistake: Mistake,
    outcome: MistakeOutcome,
    card: Card,
    language: str = "en",
    system: System = "us",
) -> str:
    """Give one sentence: what stands wrongly, what comes of it, what is seen, what settles it.

    Args:
        mistake: what is wrong.
        outcome: what comes of it.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".

    Returns:
        The sentence.
    """
    circumstances = circumstances_of(mistake)
    params = {
        **spoken(mistake.params, language, system),
        "part": part_name(card, mistake.part, language),
        "heater": part_name(card, mistake.part, language),
    }
    wrong = say_best("mistake", mistake.key, circumstances, language, **params)
    return begun(
        say(
            "mistake piece",
            "sentence",
            language,
            wrong=wrong,
            comes=_in_a_row(_comes(outcome, card, language, system), language),
            seen=seen_text(outcome, card, language),
            settle=say_best("mistake settle", mistake.key, circumstances, language),
        )
    )


def mistakes_heading(outcome: MistakeOutcome, language: str = "en") -> str:
    """Give the heading below which a mistake stands: what comes of it, and whether it is seen."""
    shown = "seen" if outcome.noticed else "no tap shows it"
    return say("mistake piece", f"{outcome.outcome}: {shown}", language)


def seen_text(outcome: MistakeOutcome, card: Card, language: str = "en") -> str:
    """Give what would be seen in the bay, the easiest first."""
    keys = [key for key in BY_EASE if any(s.key == key for s in outcome.signs)][:MOST_SIGNS]
    said = [sign_text([s for s in outcome.signs if s.key == key], card, language) for key in keys]
    if not said:
        return say("sign", "none", language)
    signs = _in_a_row(said, language)
    return say("sign", "seen" if outcome.noticed else "cup", language, signs=signs)


def sign_text(signs: list[Sign], card: Card, language: str = "en") -> str:
    """Give one sort of sign: where it is strongest, and at how many more outlets."""
    first, *more = sorted(signs, key=_strongest)
    outlets = part_name(card, first.at, language)
    if more:
        outlets = say("mistake piece", "and more", language, outlet=outlets, count=str(len(more)))
    return say(
        "sign",
        first.key,
        language,
        outlets=outlets,
        share="" if first.share is None else share_in_words(first.share, language),
        seconds="" if first.seconds is None else in_words(first.seconds, "time", "metric"),
    )


def _in_a_row(pieces: Iterable[str], language: str) -> str:
    return say("phrase", "comma", language).join(pieces)


def _strongest(sign: Sign) -> float:
    return sign.share if sign.share is not None else -(sign.seconds or 0.0)


def circumstances_of(mistake: Mistake) -> tuple[str, ...]:
    """Give the circumstances of a mistake that may have words of their own."""
    return (mistake.circumstance, *(["hole"] if mistake.hole else []))


def _comes(outcome: MistakeOutcome, card: Card, language: str, system: System) -> Iterator[str]:
    """Give what comes of it, and what it costs."""
    gap = outcome.outcome == "gap"
    told = outcome.bursting if gap else outcome.parts
    yield say(
        "mistake outcome",
        outcome.outcome,
        language,
        parts=some_of([part_name(card, part, language) for part in told], NAMED, language),
        hazard=hazard(outcome.hazard, language) if outcome.hazard else "",
    )
    doubtful = len(outcome.parts) - len(told)
    if doubtful:
        parts = counted(doubtful, "parts", language)
        yield say("mistake outcome", "doubtful", language, parts=parts)
    for key, volume_m3, least_m3 in (
        ("water", outcome.water_m3, WET_M3),
        ("more", outcome.more_m3, TOLD_M3),
        ("less", -outcome.more_m3, TOLD_M3),
    ):
        if volume_m3 >= least_m3:
            volume = in_words(volume_m3, "volume", system)
            yield say("mistake outcome", key, language, volume=volume)
