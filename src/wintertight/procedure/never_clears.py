"""A tap that never clears: how long to wait for colour, and what to look at, in which order.

What is looked at are the wrong settings that this coach can have and that a tap would show: see
`wintertight.procedure.mistakes`. The order is common practice: what is quickest to see comes first.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal, get_args

from wintertight.procedure.chances import CROSSES
from wintertight.procedure.plan import Plan
from wintertight.procedure.roles import Roles
from wintertight.procedure.steps import PlannedStep

Check = Literal[
    "jug",
    "hand pump",
    "tank",
    "bypass",
    "fills first",
    "crossover",
    "low point",
    "shut-off",
    "regulator",
    "two open",
    "still runs",
    "no air in",
    "ice left",
]

CHECKS: tuple[Check, ...] = get_args(Check)

MINUTE_S = 60.0


@dataclass(frozen=True, slots=True)
class ToCheck:
    """One thing to look at where a tap never clears.

    Attributes:
        key: one of ``CHECKS``.
        parts: the parts to look at; none where the step says it.
        step: the step that set them; None where there is none.
        seconds: time that belongs to it [s]; None where there is none.
    """

    key: Check
    parts: tuple[str, ...] = ()
    step: PlannedStep | None = None
    seconds: float | None = None


def patience_s(plan: Plan) -> float:
    """Give how much longer than shown colour may take before something is wrong.

    On the careful side of the card every outlet has its colour within that time.

    Args:
        plan: the plan.

    Returns:
        Whole minutes [s]; at least one.
    """
    careful = {
        m.outcome.run.outlet: m.outcome.run.first_colour_s
        for m in plan.careful.moments
        if m.outcome.run
    }
    late = [
        (careful.get(planned.run.outlet) or 0.0) - planned.run.first_colour_s
        for planned in plan.steps
        if planned.run and planned.run.first_colour_s is not None
    ]
    return MINUTE_S * max(1, math.ceil(max(late, default=0.0) / MINUTE_S))


def to_check(plan: Plan) -> tuple[ToCheck, ...]:
    """Give what to look at where a tap never clears, never blows clear, or never runs empty.

    Args:
        plan: the plan.

    Returns:
        The checks, in the order of ``CHECKS``.
    """
    return tuple(sorted(_found(plan), key=lambda check: CHECKS.index(check.key)))


def _found(plan: Plan) -> Iterator[ToCheck]:
    by_key = {planned.step.key: planned for planned in plan.steps}
    roles = Roles(plan.card, plan.careful.network)
    fills = any(planned.run for planned in plan.steps)
    blows = any(planned.blow for planned in plan.steps)
    if "draw from jug" in by_key:
        yield ToCheck("jug")
        drawn = by_key["draw from jug"]
        if any(plan.card.fitting.get(a.part) for a in drawn.step.actions if a.verb == "set"):
            yield ToCheck("tank", step=drawn)
    if "hand pump on" in by_key:
        yield ToCheck("hand pump", step=by_key["hand pump on"])
    if blows:
        yield ToCheck("regulator", step=by_key["air on"])
    if fills or blows:
        yield from _where_it_goes(plan, roles, by_key)
        yield ToCheck("two open")
    elif plan.method == "thaw":
        yield ToCheck("two open")
        yield ToCheck("ice left")
    else:
        yield ToCheck("still runs")
        yield ToCheck("no air in")


def _where_it_goes(plan: Plan, roles: Roles, by_key: dict[str, PlannedStep]) -> Iterator[ToCheck]:
    """Give the ways on which what is pushed in goes elsewhere."""
    if "set bypass" in by_key:
        yield ToCheck("bypass", step=by_key["set bypass"])
    if "close heater" in by_key and by_key["close heater"].step.params.get("filled") == "yes":
        first = next((p for p in plan.steps if p.run and p.step.part.endswith(".hot")), None)
        if first is not None and first.run is not None:
            yield ToCheck(
                "fills first", (by_key["close heater"].step.part,), first, first.run.first_colour_s
            )
    crossing = tuple(f.id for f in roles.of_kind(*CROSSES) if {"hot", "cold"} <= set(f.ports))
    if crossing:
        yield ToCheck("crossover", crossing)
    if roles.low_points:
        yield ToCheck("low point", roles.low_points)
    shut_offs = tuple(valve.id for valve in roles.valves("branch shut-off"))
    if shut_offs:
        yield ToCheck("shut-off", shut_offs)
