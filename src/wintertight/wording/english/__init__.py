"""The English catalogue: every sentence by subject and key."""

from collections.abc import Mapping
from types import MappingProxyType

from wintertight.wording.english import (
    cautions,
    choices,
    coach,
    comparing,
    fleet,
    mistakes,
    paper,
    places,
    proofs,
    settings,
    steps,
)

ENGLISH: Mapping[str, Mapping[str, str]] = MappingProxyType(
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
        "finding": coach.FINDINGS,
        "label": paper.LABELS,
        "fleet": fleet.FLEET,
        "mistake": mistakes.MISTAKES,
        "mistake outcome": mistakes.OUTCOMES,
        "mistake settle": mistakes.SETTLE,
        "mistake piece": mistakes.PIECES,
        "sign": mistakes.SIGNS,
        "comparison": comparing.COMPARISON,
        "hindrance": places.HINDRANCES,
        "precondition": places.PRECONDITIONS,
        "place": places.PLACES,
        "antifreeze": choices.ANTIFREEZE,
        "buying": choices.BUYING,
        "order": choices.ORDERS,
        "stop rule": choices.STOP_RULES,
    }
)
