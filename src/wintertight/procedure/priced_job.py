"""What of a plan a price hangs on, and what is left open where work is declined."""

from collections import Counter
from dataclasses import dataclass
from types import MappingProxyType

from wintertight.procedure.estimate import PricedJob
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import part_of


def priced_job(plan: Plan) -> PricedJob:
    """Give what of a plan a price hangs on."""
    card = plan.card
    present = Counter(f.kind for f in card.fittings if f.seen == "present")
    return PricedJob(
        kind=card.coach.kind,
        method=plan.method,
        length_m=card.coach.length.value if card.coach.length else None,
        outlets=len(plan.careful.network.outlets),
        fittings=MappingProxyType(dict(present)),
        antifreeze_m3=plan.antifreeze.p50,
        at_most_m3=plan.antifreeze.p95,
        container_m3=plan.product.container_m3,
        container_price=plan.product.price,
    )


@dataclass(frozen=True, slots=True)
class LeftOpen:
    """What comes of leaving out the steps at all fittings of one kind, each for itself.

    Attributes:
        steps: their numbers; none where the plan does nothing there.
        gaps: parts that would burst.
        unproven: parts that nobody could vouch for.
        hazards: keys of hazards that would be met.
        asked: whether it was worked out what comes of leaving steps out.
    """

    steps: tuple[int, ...]
    gaps: tuple[str, ...] = ()
    unproven: tuple[str, ...] = ()
    hazards: tuple[str, ...] = ()
    asked: bool = True


def left_open(plan: Plan, kind: str) -> LeftOpen:
    """Give what is left open where the work at fittings of a kind is declined.

    The plan leaves each step out once, alone; several left out together may leave more open.

    Args:
        plan: the plan, with what comes of missed steps.
        kind: kind of fitting.

    Returns:
        What is left open; a part that would burst counts as that only.
    """
    there = {f.id for f in plan.card.fittings if f.kind == kind and f.seen == "present"}
    steps = [s for s in plan.steps if s.step.part and part_of(s.step.part) in there]
    missed = [s.if_missed for s in steps if s.if_missed is not None]
    gaps = dict.fromkeys(p for m in missed if m.outcome == "gap" for p in m.parts)
    doubtful = dict.fromkeys(p for m in missed if m.outcome != "gap" for p in m.parts)
    return LeftOpen(
        steps=tuple(s.n for s in steps),
        gaps=tuple(gaps),
        unproven=tuple(part for part in doubtful if part not in gaps),
        hazards=tuple(dict.fromkeys(m.hazard for m in missed if m.hazard)),
        asked=len(missed) == len(steps),
    )
