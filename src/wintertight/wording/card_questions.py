"""What is to be asked at a coach, in words: of its card, and of a sister coach."""

from wintertight.coach.card import Card
from wintertight.coach.findings import Finding
from wintertight.coach.sister import what_differs
from wintertight.units import System
from wintertight.wording.catalogue import catalogue, say
from wintertight.wording.names import part_name
from wintertight.wording.spoken import begun, spoken

_TRAP = "no trap"


def finding_question(
    finding: Finding, card: Card, language: str = "en", system: System = "us"
) -> str:
    """Give what about a card deserves a word as a question, and where to look.

    Args:
        finding: what is open, by a key of `wintertight.coach.left_open.ASKED`.
        card: the card.
        language: two letters.
        system: "us" or "metric".

    Returns:
        One to three short sentences.
    """
    params = spoken(finding.params, language, system)
    part = part_name(card, finding.part, language) if finding.part else ""
    kind = str(finding.params.get("kind", ""))
    place = f"trap below {kind}" if finding.key == _TRAP else kind
    known = catalogue(language)["where to look"]
    where = say("where to look", place if place in known else "any", language)
    text = say("finding question", finding.key, language, part=part, where=where, **params)
    return begun(text)


def sister_questions(card: Card, language: str = "en") -> tuple[str, ...]:
    """Give what to ask of a sister coach before its card is trusted."""
    return tuple(say("sister coach", key, language) for key in what_differs(card))


def sister_head(card: Card, sister: Card, language: str = "en") -> tuple[str, ...]:
    """Give the comment that stands first in the card of a sister coach.

    Args:
        card: the card it was made from.
        sister: the card of the sister coach.
        language: two letters.
    """
    made = say("sister coach", "head", language, sister=card.id)
    ask = say("sister coach", "head next", language)
    return (made, ask, *(f"- {text}" for text in sister_questions(sister, language)))


def sister_written(card: Card, sister: Card, file: str, language: str = "en") -> str:
    """Give what was written, and what to ask next."""
    names = {"coach": sister.id, "sister": card.id, "file": file}
    first = say("sister coach", "written", language, **names)
    ask = say("sister coach", "ask", language)
    return "\n".join([first, ask, *(f"- {text}" for text in sister_questions(sister, language))])
