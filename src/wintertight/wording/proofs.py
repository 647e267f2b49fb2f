"""The proof as sentences: claim, reason, evidence, what would settle it, and the verdict."""

from collections.abc import Collection

from wintertight.coach.card import Card
from wintertight.proof.claims import Evidence, PartProof, verdict_of
from wintertight.units import System, in_words
from wintertight.wording.catalogue import say, say_best
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, counted, listed, spoken

NAMED = 3
"""How many parts a verdict names before it says "among them"."""

NEARLY_ALL = 0.99
"""Share of water in a liquid from which it is called plain water [1]."""

PLAIN_WATER = "plain water"

_AS_FOUND = "content as found"


def reason(part: PartProof, language: str = "en", system: System = "us") -> str:
    """Give why a part is proven, or is not."""
    params = spoken(part.params, language, system)
    given = () if "burst_limit_degC" in params else tuple(params)
    return begun(say_best("reason", part.reason, (*_plain_water(part), *given), language, **params))


def settle(part: PartProof, language: str = "en", *, too_weak: Collection[str] = ()) -> str | None:
    """Give what would settle a part that is not proven.

    Args:
        part: the part.
        language: two letters.
        too_weak: pockets for which not even the undiluted product suffices.

    Returns:
        What to do; None where the part is proven.
    """
    if part.safe is True:
        return None
    bursts = part.safe is False
    if bursts and any(e.key == _AS_FOUND for e in part.evidence):
        return say("settle", "not reached", language)
    hopeless = is_too_weak(part, too_weak)
    circumstances = (*_plain_water(part), *(["too weak"] if hopeless else []))
    return say_best("settle", part.reason, circumstances, language)


def _plain_water(part: PartProof) -> tuple[str, ...]:
    """Give the circumstance that no antifreeze worth the name has come to a part."""
    wet = 1.0 - part.worst.air
    return (PLAIN_WATER,) if wet > 0.0 and part.worst.water >= NEARLY_ALL * wet else ()


def is_too_weak(part: PartProof, too_weak: Collection[str]) -> bool:
    """Tell whether not even the undiluted product suffices for a part."""
    shut = part.pocket == "sealed" or (part.pocket == "relieved" and not part.relieved)
    return ("sealed" if shut else "open") in too_weak


def evidence_text(evidence: Evidence, language: str = "en", system: System = "us") -> str:
    """Give one thing a claim stands on."""
    return say("evidence", evidence.key, language, **spoken(evidence.params, language, system))


def claim_name(claim: str, language: str = "en") -> str:
    """Give how a part is protected, in a word or two."""
    return say("claim", claim, language)


def verdict_line(  # noqa: PLR0913 - coach, proof and cold, and how to say it
    card: Card,
    parts: tuple[PartProof, ...],
    low_degC: float,
    language: str = "en",
    system: System = "us",
    *,
    recorded: bool = False,
) -> str:
    """Give the verdict on a coach as one sentence.

    Args:
        card: the coach's card.
        parts: all its parts.
        low_degC: design low [degC].
        language: two letters.
        system: "us" or "metric".
        recorded: whether it speaks of what was done, not of what is planned.

    Returns:
        The sentence; never a bare "safe".
    """
    verdict = verdict_of(parts)
    low = in_words(low_degC, "temperature", system)
    if verdict == "safe":
        return say("verdict", "safe as recorded" if recorded else "safe", language, low=low)
    bad = [p for p in parts if p.safe is (False if verdict == "gap" else None)]
    return say(
        "verdict",
        f"{verdict} and more" if len(bad) > NAMED else verdict,
        language,
        low=low,
        count=counted(len(bad), "parts", language),
        parts=listed((part_name(card, p.id, language) for p in bad[:NAMED]), language),
    )
