"""The French catalogue: every sentence by subject and key.

Work sheets speak in infinitives, the talk that describes a coach says "vous". The tables hold
plain blanks and apostrophes; the signs of French print are set here, once for all of them.
"""

from collections.abc import Mapping
from types import MappingProxyType

from wintertight.wording.french import (
    card_changes,
    cautions,
    choices,
    coach,
    coach_questions,
    comparing,
    drawing,
    fleet,
    hindsight,
    incidents,
    intake,
    intake_talk,
    mistakes,
    paper,
    places,
    proofs,
    settings,
    steps,
    wear,
)
from wintertight.wording.french.typography import typeset

_TABLES: Mapping[str, Mapping[str, str]] = MappingProxyType(
    {
        "step": steps.STEPS,
        "why": steps.WHY,
        "caution": cautions.CAUTIONS,
        "how to open": steps.HOW_TO_OPEN,
        "hazard": cautions.HAZARDS,
        "phase": steps.PHASES,
        "method": settings.METHODS,
        "thing": settings.THINGS,
        "setting": settings.SETTINGS,
        "phrase": steps.PHRASES,
        "claim": proofs.CLAIMS,
        "drawing": drawing.DRAWING,
        "reason": proofs.REASONS,
        "settle": proofs.SETTLE,
        "evidence": proofs.EVIDENCE,
        "kind of evidence": proofs.KINDS_OF_EVIDENCE,
        "pocket": proofs.POCKETS,
        "verdict": proofs.VERDICTS,
        "outcome": proofs.OUTCOMES,
        "null": proofs.NULLS,
        "kind": coach.KINDS,
        "role": coach.ROLES,
        "name": coach.NAMES,
        "heat": coach.SOURCES_OF_HEAT,
        "card change": card_changes.CHANGES,
        "card subject": card_changes.SUBJECTS,
        "card field": card_changes.FIELDS,
        "known": card_changes.WAYS,
        "finding": coach.FINDINGS,
        "finding question": coach_questions.QUESTIONS,
        "where to look": coach_questions.WHERE,
        "sister coach": coach_questions.SISTER,
        "card history": coach_questions.HISTORY,
        "label": paper.LABELS,
        "fleet": fleet.FLEET,
        "mistake": mistakes.MISTAKES,
        "mistake outcome": mistakes.OUTCOMES,
        "mistake settle": mistakes.SETTLE,
        "mistake piece": mistakes.PIECES,
        "sign": mistakes.SIGNS,
        "cause": hindsight.CAUSES,
        "cause in passing": hindsight.SHORT,
        "sight": hindsight.SIGHTS,
        "hindsight": hindsight.PIECES,
        "no hindsight": hindsight.WHY_NONE,
        "comparison": comparing.COMPARISON,
        "hindrance": places.HINDRANCES,
        "precondition": places.PRECONDITIONS,
        "place": places.PLACES,
        "antifreeze": choices.ANTIFREEZE,
        "buying": choices.BUYING,
        "order": choices.ORDERS,
        "stop rule": choices.STOP_RULES,
        "burst cause": incidents.CAUSES,
        "burst settle": incidents.SETTLE,
        "burst look": incidents.LOOK,
        "incident": incidents.INCIDENT,
        "anode": wear.ANODES,
        "no anode": wear.NO_ANODES,
        "wear": wear.WEAR_PHRASES,
        "question": intake.QUESTIONS,
        "where": intake.WHERE,
        "why asked": intake.WHY,
        "asked about": intake.SUBJECTS,
        "choice": intake_talk.CHOICES,
        "not understood": intake_talk.NOT_UNDERSTOOD,
        "talk": intake_talk.TALK,
        "typed": intake_talk.TYPED,
    }
)

FRENCH: Mapping[str, Mapping[str, str]] = MappingProxyType(
    {subject: typeset(table) for subject, table in _TABLES.items()}
)
"""Sentences by subject and key, as `wintertight.wording.catalogue` asks for them."""
