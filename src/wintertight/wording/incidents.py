"""What burst, and the causes of it, in words."""

from wintertight.procedure.causes import Cause, NotDone
from wintertight.procedure.incident import BurstPart, Incident, LookKey
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.proofs import evidence_text, reason
from wintertight.wording.spoken import begun, listed, some_of, spoken

MOST_STEPS = 6
"""No more steps are named in one sentence."""


def cause_text(
    cause: Cause, part: BurstPart, incident: Incident, language: str = "en", system: System = "us"
) -> str:
    """Give what is found on a cause."""
    card = incident.done.plan.card
    water = incident.found.water_since or ()
    params = spoken(cause.params, language, system)
    params["steps"] = some_of([_step(s, language) for s in cause.steps], MOST_STEPS, language)
    params["outlets"] = listed((part_name(card, outlet, language) for outlet in water), language)
    params["reason"] = "" if part.fall is None else reason(part.fall, language, system)
    return say("burst cause", cause.key, language, **params)


def settle_text(cause: Cause, language: str = "en") -> str | None:
    """Give what would settle a cause; None where it is not open."""
    return say("burst settle", cause.key, language) if cause.weight == "open" else None


def _step(step: NotDone, language: str) -> str:
    if step.result is None:
        return say("incident", "step unsaid", language, n=str(step.n), step=step.step)
    result = say("incident", f"result {step.result}", language)
    return say(
        "incident",
        "step said",
        language,
        n=str(step.n),
        step=step.step,
        result=result,
        event=str(step.event),
    )


def cause_line(
    cause: Cause, part: BurstPart, incident: Incident, language: str = "en", system: System = "us"
) -> str:
    """Give a cause, its weight, what is found on it, and what would settle it where it is open."""
    found = cause_text(cause, part, incident, language, system)
    said = say(
        "incident",
        "line",
        language,
        cause=say("incident", f"cause {cause.name}", language),
        weight=say("incident", f"weight {cause.weight}", language),
        text=" ".join([found, *filter(None, [settle_text(cause, language)])]),
    )
    return begun(said)


def part_text(part: BurstPart, incident: Incident, language: str = "en") -> str:
    """Give what all causes of one part come to."""
    wanted = "supported" if part.explained == "supported" else "open"
    names = [
        say("incident", f"cause {cause.name}", language)
        for cause in part.causes
        if cause.weight == wanted
    ]
    key: str = part.explained
    if key == "supported":
        key = "supported one" if len(names) == 1 else "supported many"
    name = begun(part_name(incident.done.plan.card, part.burst.part, language))
    return say("incident", key, language, part=name, causes=listed(names, language))


def look_text(key: LookKey, part: BurstPart, language: str = "en", system: System = "us") -> str:
    """Give one thing to look at where the record does not explain what burst."""
    evidence = () if part.fall is None else part.fall.evidence
    assumed = [evidence_text(e, language, system) for e in evidence if e.kind == "assumed"]
    return say("burst look", key, language, assumed=" ".join(assumed))
