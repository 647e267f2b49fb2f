"""The parts that are not proven, put together where one reason and one remedy serve them all."""

from collections.abc import Mapping
from dataclasses import dataclass

from wintertight.procedure.plan import Plan
from wintertight.proof.claims import PartProof
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.proofs import reason, settle


@dataclass(frozen=True, slots=True)
class OpenGroup:
    """Parts that are not proven for the same reason.

    Attributes:
        names: what they are called.
        word: whether they would burst or are not proven.
        reason: why, with the numbers of the part with most water in it.
        settle: what would settle it.
    """

    names: tuple[str, ...]
    word: str
    reason: str
    settle: str


def open_groups(plan: Plan, language: str = "en", system: System = "us") -> tuple[OpenGroup, ...]:
    """Give the groups of parts that are not proven: those that would burst first."""
    found: dict[tuple[bool, str, str], list[PartProof]] = {}
    for part in plan.parts:
        if part.safe is not True:
            remedy = settle(part, language, too_weak=plan.too_weak) or ""
            about_kind = str(part.params.get("kind", "")) if part.safe is None else ""
            found.setdefault((part.safe is None, part.reason + about_kind, remedy), []).append(part)
    return tuple(
        _group(plan, parts, remedy, language, system) for (_, _, remedy), parts in _in_order(found)
    )


def _in_order(
    found: Mapping[tuple[bool, str, str], list[PartProof]],
) -> list[tuple[tuple[bool, str, str], list[PartProof]]]:
    return sorted(found.items(), key=lambda item: item[0][0])


def _group(
    plan: Plan, parts: list[PartProof], remedy: str, language: str, system: System
) -> OpenGroup:
    worst = max(parts, key=lambda p: p.worst.water)
    return OpenGroup(
        names=tuple(part_name(plan.card, p.id, language) for p in parts),
        word=say("label", "gap" if worst.safe is False else "unproven", language),
        reason=reason(worst, language, system),
        settle=remedy,
    )
