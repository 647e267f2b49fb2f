"""Rooms that stay heated all winter: what is in them is kept warm, as long as the heat stays on.

Nobody can vouch in autumn for heat in January: such a part is no gap, and it is not proven either.
A thermometer that is read settles it.
"""

from collections.abc import Collection
from dataclasses import replace

from wintertight.coach.card import Card
from wintertight.errors import ChoiceError
from wintertight.procedure.plan import Plan
from wintertight.proof.claims import Evidence, PartProof, verdict_of


def with_warm_rooms(plan: Plan, rooms: Collection[str]) -> Plan:
    """Give a plan for a coach some of whose rooms stay heated.

    Args:
        plan: the plan without heat.
        rooms: ids of the compartments that stay heated.

    Returns:
        The plan; what would burst in those rooms is kept warm, and unproven.

    Raises:
        ChoiceError: there is no such compartment, or nothing heats it.
    """
    for room in rooms:
        known = plan.card.compartment.get(room)
        if known is None:
            there = ", ".join(plan.card.compartment) or "none"
            message = f"the card has no compartment '{room}'; there is {there}"
            raise ChoiceError(message)
        if not known.heated:
            message = f"by the card nothing heats the compartment '{room}'"
            raise ChoiceError(message)
    parts = tuple(_kept_warm(part, plan.card, rooms) for part in plan.parts)
    return replace(plan, parts=parts, verdict=verdict_of(parts))


def _kept_warm(part: PartProof, card: Card, rooms: Collection[str]) -> PartProof:
    owner = part.id.partition("/")[0]
    where = card.line.get(owner) or card.fitting.get(owner)
    if part.safe is not False or where is None or where.compartment not in rooms:
        return part
    more = Evidence("assumed", "heat stays on")
    return replace(
        part,
        claim="kept warm",
        safe=None,
        reason="kept warm",
        params={},
        evidence=(*part.evidence, more),
    )
