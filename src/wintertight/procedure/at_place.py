"""A plan where it is to be carried out: what stands in the way there, and what comes first."""

from dataclasses import replace

from wintertight.coach.place import Place
from wintertight.procedure.bands import Band
from wintertight.procedure.place import possible, takes_more_s
from wintertight.procedure.plan import Plan
from wintertight.procedure.preconditions import preconditions


def at_place(plan: Plan, place: Place | None) -> Plan:
    """Give a plan with what its place means for it, and with what is looked at before the slot.

    Args:
        plan: the plan, worked out on the slopes of the place.
        place: the place of work; None where that is not known yet.

    Returns:
        The plan; what takes longer at the place is in its time.
    """
    before = preconditions(plan.card, plan.method, place=place)
    if place is None:
        return replace(plan, preconditions=before)
    found = possible(place, plan.card, plan.method)
    more_s, band = takes_more_s(found), plan.duration
    return replace(
        plan,
        duration=Band(band.p05 + more_s, band.p50 + more_s, band.p95 + more_s),
        place=place,
        hindrances=found,
        preconditions=before,
    )
