"""The parts that are not proven, put together where one reason and one remedy serve them all."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from wintertight.procedure.plan import Plan
from wintertight.proof.claims import PartProof
from wintertight.units import System
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.proofs import is_too_weak, reason, settle
from wintertight.wording.spoken import begun, listed, some_of

TO_SEE = frozenset({"nobody has looked", "not looked at"})
"""Reasons that eyes alone settle, whatever kind of part it is."""

UNDONE = "undone"
"""Stands for the remedy of parts at which a step was not done, until its number is known."""


@dataclass(frozen=True, slots=True)
class OpenGroup:
    """Parts that are not proven for the same reason.

    Attributes:
        names: what they are called.
        word: whether they would burst or are not proven.
        reason: why, with the numbers of the part with most water in it.
        settle: what would settle it.
        each: whether every name must be read, as with what is to be looked for.
    """

    names: tuple[str, ...]
    word: str
    reason: str
    settle: str
    each: bool = False

    def named(self, most: int, language: str = "en") -> str:
        """Give the names, at most so many where not each one must be read."""
        return begun(some_of(self.names, len(self.names) if self.each else most, language))


def open_groups(
    plan: Plan,
    language: str = "en",
    system: System = "us",
    *,
    undone: Mapping[str, tuple[int, ...]] = MappingProxyType({}),
) -> tuple[OpenGroup, ...]:
    """Give the groups of parts that are not proven: those that would burst first.

    Args:
        plan: the plan, or the proof of what was done.
        language: two letters.
        system: "us" or "metric".
        undone: by part, the numbers of the steps that were not done there.

    Returns:
        The groups; to do what was not done is the remedy where anything is gained by it.
    """
    found: dict[tuple[bool, str, str], list[PartProof]] = {}
    for part in plan.parts:
        if part.safe is not True:
            gained = part.id in undone and not is_too_weak(part, plan.too_weak)
            remedy = UNDONE if gained else settle(part, language, too_weak=plan.too_weak) or ""
            of_one_kind = part.safe is None and part.reason not in TO_SEE
            about_kind = str(part.params.get("kind", "")) if of_one_kind else ""
            found.setdefault((part.safe is None, part.reason + about_kind, remedy), []).append(part)
    return tuple(
        _group(plan, parts, _remedy(parts, remedy, undone, language), language, system)
        for (_, _, remedy), parts in _in_order(found)
    )


def _remedy(
    parts: list[PartProof], remedy: str, undone: Mapping[str, tuple[int, ...]], language: str
) -> str:
    if remedy != UNDONE:
        return remedy
    numbers = sorted({n for part in parts for n in undone[part.id]})
    key = "not done one" if len(numbers) == 1 else "not done many"
    return say("phrase", key, language, steps=listed(map(str, numbers), language))


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
        each=worst.reason in TO_SEE,
    )
