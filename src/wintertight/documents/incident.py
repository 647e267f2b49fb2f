"""What burst and the causes of it, for a screen and for programs."""

from typing import Any

from wintertight.documents.screen_blocks import joined, wrapped
from wintertight.procedure.causes import Cause
from wintertight.procedure.incident import BurstPart, Incident
from wintertight.proof.claims import PartProof
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.incidents import (
    cause_line,
    cause_text,
    look_text,
    part_text,
    settle_text,
)
from wintertight.wording.names import part_name
from wintertight.wording.plans import verdict_of_plan
from wintertight.wording.proofs import evidence_text, reason

Plain = dict[str, Any]


def incident_object(incident: Incident, language: str = "en", system: System = "us") -> Plain:
    """Give an incident as plain data, ready for `json.dumps`.

    Args:
        incident: what burst, and its causes.
        language: two letters; only texts depend on it.
        system: units inside texts.

    Returns:
        The object without its schema.
    """
    plan, found = incident.done.plan, incident.found
    values: Plain = {
        "card_hash": plan.card.card_hash,
        "coach": {"id": plan.card.id, "name": plan.card.name},
        "found": found.found.isoformat(),
        "design_low_degC": float(plan.low_degC),
        "lowest_degC": found.lowest_degC,
        "water_since": None if found.water_since is None else list(found.water_since),
        "fall": {
            "verdict": plan.verdict,
            "text": verdict_of_plan(plan, language, system, recorded=True),
            "not_recorded": list(incident.done.unknown),
        },
        "parts": [_part(part, incident, language, system) for part in incident.parts],
        "limits": say("incident", "limits", language),
    }
    why = {"lowest_degC": "lowest not known", "water_since": "water not known"}
    return _with_reasons(values, why, language)


def _with_reasons(values: Plain, why: dict[str, str], language: str) -> Plain:
    missing = {k: say("incident", key, language) for k, key in why.items() if values[k] is None}
    return {**values, "why_null": missing} if missing else values


def _part(part: BurstPart, incident: Incident, language: str, system: System) -> Plain:
    has_lowest = incident.found.lowest_degC is not None
    values: Plain = {
        "part": part.burst.part,
        "name": part_name(incident.done.plan.card, part.burst.part, language),
        "crack": part.burst.crack,
        "worn": part.burst.worn,
        "note": part.burst.note,
        "fall": _proof(part.fall, language, system),
        "at_lowest": _proof(part.at_lowest, language, system),
        "explained": part.explained,
        "supported": list(part.supported),
        "causes": [_cause(cause, part, incident, language, system) for cause in part.causes],
        "look_at": [
            {"key": key, "text": look_text(key, part, language, system)} for key in part.look_at
        ],
        "text": part_text(part, incident, language),
    }
    why = {
        "worn": "not said",
        "note": "not said",
        "fall": "no proof",
        "at_lowest": "no proof" if has_lowest else "lowest not known",
    }
    return _with_reasons(values, why, language)


def _proof(part: PartProof | None, language: str, system: System) -> Plain | None:
    if part is None:
        return None
    return {
        "part": part.id,
        "verdict": {True: "safe", False: "gap", None: "unproven"}[part.safe],
        "claim": part.claim,
        "reason": reason(part, language, system),
        "relieved": bool(part.relieved),
        "evidence": [
            {"kind": e.kind, "text": evidence_text(e, language, system)} for e in part.evidence
        ],
    }


def _cause(
    cause: Cause, part: BurstPart, incident: Incident, language: str, system: System
) -> Plain:
    settled = settle_text(cause, language)
    return {
        "cause": cause.name,
        "weight": cause.weight,
        "key": cause.key,
        "text": cause_text(cause, part, incident, language, system),
        **({} if settled is None else {"settle": settled}),
        **(
            {
                "steps": [
                    {"n": s.n, "step": s.step, "recorded": s.result or "nothing", **_line(s.event)}
                    for s in cause.steps
                ]
            }
            if cause.steps
            else {}
        ),
    }


def _line(event: str | None) -> Plain:
    return {} if event is None else {"event": event}


def incident_screen(incident: Incident, language: str = "en", system: System = "us") -> str:
    """Give an incident as text.

    Args:
        incident: what burst, and its causes.
        language: two letters.
        system: "us" or "metric".

    Returns:
        A heading, a paragraph a part with its five causes, and what this is not, with a line feed
        at the end.
    """
    plan = incident.done.plan
    day = incident.found.found.isoformat()
    verdict = verdict_of_plan(plan, language, system, recorded=True)
    head = [
        wrapped(say("incident", "heading", language, coach=plan.card.name, day=day)),
        wrapped(say("incident", "fall", language, verdict=verdict)),
    ]
    parts = [list(_lines(part, incident, language, system)) for part in incident.parts]
    return joined([head, *parts, [wrapped(say("incident", "limits", language))]])


def _lines(part: BurstPart, incident: Incident, language: str, system: System) -> list[str]:
    causes = (cause_line(c, part, incident, language, system) for c in part.causes)
    looks = (look_text(key, part, language, system) for key in part.look_at)
    return [
        wrapped(part_text(part, incident, language)),
        *(wrapped(text, "  *  ") for text in looks),
        *(wrapped(text, "  -  ") for text in causes),
    ]
