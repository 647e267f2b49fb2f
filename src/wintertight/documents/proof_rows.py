"""The proof of every part as rows of a table, in groups by how each part is protected."""

from collections.abc import Iterator
from typing import Any

from wintertight.procedure.plan import Plan
from wintertight.proof.claims import PartProof
from wintertight.units import System, in_words
from wintertight.wording.catalogue import catalogue, say
from wintertight.wording.names import part_name
from wintertight.wording.proofs import claim_name, reason
from wintertight.wording.spoken import begun, spoken

GROUPS = ("gap", "unproven", "filled", "drained", "swept", "kept warm", "removed")
"""The groups, what is open first; what would burst is a group of its own."""

KINDS = ("computed", "measured", "attested", "assumed")
"""Kinds of evidence, in the order in which they are named."""


def group_of(part: PartProof) -> str:
    """Give the group of ``GROUPS`` a part belongs to: whatever is not proven is never elsewhere."""
    if part.safe is False:
        return "gap"
    return part.claim if part.safe is True else "unproven"


def proof_groups(plan: Plan, language: str, system: System) -> list[dict[str, Any]]:
    """Give the groups that have parts: heading, whether they are open, and a row for each part.

    A row names the part, the kinds of evidence, and the freezing point of its weakest stretch, or
    what is left in it; the reason, where it is not proven.
    """
    found: dict[str, list[PartProof]] = {group: [] for group in GROUPS}
    for part in plan.parts:
        found[group_of(part)].append(part)
    return [_group(plan, g, parts, language, system) for g, parts in found.items() if parts]


def _group(
    plan: Plan, group: str, parts: list[PartProof], language: str, system: System
) -> dict[str, Any]:
    claim, count = _named(group, language), str(len(parts))
    is_open = group in {"gap", "unproven"}
    column = "why" if is_open else "freezes at" if group == "filled" else "is left"
    rows = [_row(plan, part, language, system) for part in parts]
    return {
        "heading": say("winter record", "group", language, claim=claim, count=count),
        "open": is_open,
        "column": say("winter record", column, language),
        "rows": _said_once(rows, language) if is_open else rows,
    }


def _said_once(rows: list[list[str]], language: str) -> list[list[str]]:
    """Put rows with one reason below each other, and give the reason in the first of them."""
    order = list(dict.fromkeys(why for _, _, why in rows))
    same = say("winter record", "as above", language)
    found: list[list[str]] = []
    for reason_given in order:
        some = [[name, evidence] for name, evidence, why in rows if why == reason_given]
        found += [[*row, reason_given if n == 0 else same] for n, row in enumerate(some)]
    return found


def _named(group: str, language: str) -> str:
    name = say("label", "gap", language) if group == "gap" else claim_name(group, language)
    return begun(name)


def _row(plan: Plan, part: PartProof, language: str, system: System) -> list[str]:
    return [
        begun(part_name(plan.card, part.id, language)),
        ", ".join(_evidence(part, language)),
        _why(part, language, system),
    ]


def _evidence(part: PartProof, language: str) -> Iterator[str]:
    kinds = {evidence.kind for evidence in part.evidence}
    return (say("evidence in a word", kind, language) for kind in KINDS if kind in kinds)


def _why(part: PartProof, language: str, system: System) -> str:
    if part.safe is not True:
        return reason(part, language, system)
    if part.claim == "filled" and part.freezing_point_degC is not None:
        return in_words(part.freezing_point_degC, "temperature", system)
    if part.reason in catalogue(language)["left"]:
        return say("left", part.reason, language, **spoken(part.params, language, system))
    return reason(part, language, system)
