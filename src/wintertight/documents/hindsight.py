"""What a record tells beyond what it says: as JSON, and as blocks of text for a screen."""

from collections.abc import Iterator
from typing import Any

from wintertight.coach.card import Card
from wintertight.documents.screen_blocks import wrapped
from wintertight.procedure.bands import Band
from wintertight.procedure.hindsight.learning import Narrowed
from wintertight.procedure.hindsight.look_back import (
    COUNTING,
    NEXT_TIME,
    PUMP,
    SEEING,
    Hindsight,
)
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.hindsight import (
    cause_text,
    cure_text,
    diagnosis_lines,
    learned_lines,
    separating_text,
    sight_text,
)
from wintertight.wording.spoken import begun


def hindsight_object(
    found: Hindsight | None,
    card: Card,
    language: str = "en",
    system: System = "us",
    *,
    left_out: bool = False,
) -> dict[str, Any]:
    """Give what a record tells as JSON.

    Args:
        found: what it tells; None where nothing was observed.
        card: the coach's card.
        language: two letters.
        system: "us" or "metric".
        left_out: whether nobody asked what it tells.

    Returns:
        Keys ``diagnosis`` and ``learned`` as the contract has them, ``separates``, ``observed``,
        ``habits`` and ``next_visit``; null where a thing cannot be said, and ``why_null``.
    """
    keys = ("diagnosis", "learned", "separates", "observed", "habits", "next_visit")
    if found is None:
        why = say("no hindsight", "left out" if left_out else "nothing observed", language)
        return {**dict.fromkeys(keys), "why_null": dict.fromkeys(keys, why)}
    learned = _learned(found, card)
    missing = {key for key, value in learned.items() if value is None}
    why = say("no hindsight", "not as recorded", language)
    return {
        "diagnosis": [
            {
                "what": cause.explanation.cause,
                "part": cause.explanation.part or None,
                "fits": cause.fits,
                "text": begun(cause_text(cause, card, language, system)) + ".",
                "cure": cure_text(cause, language),
            }
            for cause in found.causes
        ],
        "separates": separating_text(found, card, language),
        "observed": [
            {
                "what": sight.what,
                "where": sight.where,
                "value": sight.value,
                "expected_as_recorded": sight.as_recorded,
                "expected_if_so": sight.if_so,
                "text": sight_text(sight, card, language, system),
            }
            for sight in found.sights
        ],
        **learned,
        "why_null": dict.fromkeys(missing, why),
    }


def hindsight_block(
    found: Hindsight | None, card: Card, language: str = "en", system: System = "us"
) -> Iterator[str]:
    """Give what a record tells as lines for a screen; none where nothing was observed."""
    if found is None:
        return
    yield say("hindsight", "heading", language)
    for line in diagnosis_lines(found, card, language, system):
        yield wrapped(line, "  -  ")
    learned = list(learned_lines(found, card, language, system))
    if found.learned is not None and learned:
        yield ""
        many = found.learned.visits > 1
        heading = "learned heading many" if many else "learned heading"
        yield say("hindsight", heading, language, count=str(found.learned.visits))
        for line in learned:
            yield wrapped(line, "  -  ")


def _learned(found: Hindsight, card: Card) -> dict[str, Any]:
    if found.learned is None:
        return dict.fromkeys(("learned", "habits", "next_visit"))
    quantities = found.learned.quantities
    return {
        "learned": {
            line.id: {
                "volume_m3": _band(quantities[line.id].after),
                "before_m3": _band(quantities[line.id].before),
                "width": quantities[line.id].width,
            }
            for line in card.lines
        },
        "habits": {
            "pump": _both(quantities[PUMP]),
            "counting": _both(quantities[COUNTING]),
            "seeing_s": _both(quantities[SEEING]),
        },
        "next_visit": {"antifreeze_m3": _both(quantities[NEXT_TIME])},
    }


def _both(learned: Narrowed) -> dict[str, Any]:
    return {**_band(learned.after), "before": _band(learned.before)}


def _band(band: Band) -> dict[str, float]:
    return {"p05": band.p05, "p50": band.p50, "p95": band.p95}
