"""Places of work and what comes before the slot, as sentences."""

from collections.abc import Iterable

from wintertight.coach.card import Card
from wintertight.coach.place import Place
from wintertight.procedure.place import Hindrance, is_possible, takes_more_s
from wintertight.procedure.preconditions import Precondition
from wintertight.units import System
from wintertight.wording.catalogue import say, say_best
from wintertight.wording.names import part_name
from wintertight.wording.plans import to_five_minutes
from wintertight.wording.spoken import spoken


def hindrance_text(found: Hindrance, language: str = "en", system: System = "us") -> str:
    """Give one thing that stands in the way at a place, or takes longer there."""
    return say("hindrance", found.key, language, **spoken(found.params, language, system))


def place_text(
    place: Place, found: Iterable[Hindrance], language: str = "en", system: System = "us"
) -> str:
    """Give what a place means for a method: whether it is possible, and what takes longer.

    Args:
        place: the place.
        found: what stands in the way, and what costs.
        language: two letters.
        system: "us" or "metric".

    Returns:
        A few sentences.
    """
    some = tuple(found)
    told = some
    key, more = "at", to_five_minutes(takes_more_s(some)) if some else ""
    if not is_possible(some):
        key, told = "not at", tuple(h for h in some if h.effect == "hinders")
    elif not some:
        key = "at, no longer"
    texts = [hindrance_text(h, language, system) for h in told]
    if any(h.assumed for h in told):
        texts.append(say("place", "assumed", language))
    name = place_name(place, language)
    return say("place", key, language, place=name, more=more, told=" ".join(texts))


def place_name(place: Place, language: str = "en") -> str:
    """Give what a place is called: by its name, or by its kind where it has no other."""
    return say("place", place.kind, language) if place.name == place.kind else place.name


def precondition_text(
    found: Precondition, card: Card, language: str = "en", system: System = "us"
) -> str:
    """Give one thing that is looked at or put right before the slot."""
    params = {
        **spoken(found.params, language, system),
        "part": part_name(card, found.part, language) if found.part else "",
    }
    circumstance = ("wrong",) if found.found == "wrong" else ()
    said = [say_best("precondition", found.key, circumstance, language, **params)]
    if found.waits_s:
        said.append(say("place", "waits", language, time=to_five_minutes(found.waits_s)))
    if found.weight == "advises":
        said.append(say("place", "advised", language))
    return " ".join(said)
