"""The anode rods of a coach in words."""

from wintertight.coach.card import Card
from wintertight.procedure.wear import Anode, NoAnodeKey, RodReading, Wear, prior_rate
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, share_in_words


def anode_text(anode: Anode, card: Card, language: str = "en") -> str:
    """Give what is said of one anode."""
    params = {"part": begun(part_name(card, anode.part, language))}
    if anode.share_now is not None and anode.seasons_left is not None:
        for name, share, left in (
            ("", anode.share_now.p50, anode.seasons_left.p50),
            ("_low", anode.share_now.p05, anode.seasons_left.p05),
            ("_high", anode.share_now.p95, anode.seasons_left.p95),
        ):
            params[f"share{name}"] = share_in_words(share, language)
            params[f"left{name}"] = f"{left:.1f}"
    return say("anode", anode.why, language, **params)


def no_anode_text(part: str, key: NoAnodeKey, card: Card, language: str = "en") -> str:
    """Give why a heater has no anode that could be looked at."""
    name = begun(part_name(card, part, language)) if part else ""
    return say("no anode", key, language, part=name)


def looks_text(readings: tuple[RodReading, ...], language: str = "en") -> str:
    """Give all looks at the rods of a heater."""
    said = [
        say(
            "wear",
            "new rod" if reading.new else "look",
            language,
            day=reading.on.isoformat(),
            share=share_in_words(reading.share, language),
        )
        for reading in readings
    ]
    return say("wear", "looks", language, looks=say("phrase", "comma", language).join(said))


def wear_heading(wear: Wear, card: Card, language: str = "en") -> str:
    """Give whose anodes they are, and on what day."""
    if wear.on is None:
        return say("wear", "heading without day", language, coach=card.name)
    return say("wear", "heading", language, coach=card.name, day=wear.on.isoformat())


def assumed_text(language: str = "en") -> str:
    """Give what is taken for granted before any reading."""
    rate = prior_rate()
    low, high = (share_in_words(min(1.0, r), language) for r in (rate.p05, rate.p95))
    return say("wear", "assumed", language, rate_low=low, rate_high=high)
