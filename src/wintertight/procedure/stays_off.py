"""What must not be switched on once a coach is emptied or filled, and until when."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep

Why = Literal[
    "frozen", "bypassed", "empty", "filled", "pump", "pump frozen", "ice", "lamp", "machine", "city"
]

HALF = 0.5
"""Share of air from which a heater counts as empty [1]."""

RUNS_BY_ITSELF = ("washer", "dishwasher")
"""Kinds of machines that would run their program, and heat, by themselves."""


@dataclass(frozen=True, slots=True)
class StaysOff:
    """One thing that must not be switched on.

    Attributes:
        why: key of the reason.
        part: the part of the coach.
        heat: what heats it: burner, element, coolant, or "heat" where the card does not say.
        step: number of the step from which on it stays off.
    """

    why: Why
    part: str
    heat: tuple[str, ...] = ()
    step: int = 1


def stays_off(plan: Plan) -> tuple[StaysOff, ...]:
    """Give what must not be switched on during and after a job.

    Args:
        plan: the plan.

    Returns:
        Heaters first, then the pump, what makes ice, lamps, machines and the town's water.
    """
    return (
        *_heaters(plan),
        *_pump(plan),
        *_ice(plan),
        *_lamps(plan),
        *_machines(plan),
        *_city(plan),
    )


def _of_key(plan: Plan, *keys: str) -> list[PlannedStep]:
    return [planned for planned in plan.steps if planned.step.key in keys]


def _heaters(plan: Plan) -> Iterator[StaysOff]:
    bypassed = bool(_of_key(plan, "set bypass"))
    for planned in _of_key(plan, "heat off"):
        heater = planned.step.part
        sources = tuple(str(planned.step.params["sources"]).split(" and "))
        can_be_bypassed = plan.card.fitting[heater].kind != "hydronic coil"
        why: Why
        if plan.method == "thaw":
            why = "frozen"
        elif bypassed and can_be_bypassed:
            why = "bypassed"
        else:
            air = max((p.mean.air for p in plan.parts if p.id == heater), default=1.0)
            why = "empty" if air > HALF else "filled"
        yield StaysOff(why, heater, sources, planned.n)


def _pump(plan: Plan) -> Iterator[StaysOff]:
    pumps = [f.id for f in plan.card.fittings if f.kind == "demand pump" and f.seen == "present"]
    last = _of_key(plan, "pump off") or _of_key(plan, "run pump dry")
    for pump in pumps:
        if plan.method == "thaw":
            yield StaysOff("pump frozen", pump)
        else:
            yield StaysOff("pump", pump, step=last[-1].n if last else 1)


def _ice(plan: Plan) -> Iterator[StaysOff]:
    for planned in _of_key(plan, "clear ice maker"):
        yield StaysOff("ice", planned.step.part, step=planned.n)


def _lamps(plan: Plan) -> Iterator[StaysOff]:
    for planned in _of_key(plan, "take out"):
        if plan.card.fitting[planned.step.part].kind == "UV sleeve":
            yield StaysOff("lamp", planned.step.part, step=planned.n)


def _machines(plan: Plan) -> Iterator[StaysOff]:
    for fitting in plan.card.fittings:
        if fitting.kind in RUNS_BY_ITSELF and fitting.seen == "present":
            yield StaysOff("machine", fitting.id)


def _city(plan: Plan) -> Iterator[StaysOff]:
    for planned in _of_key(plan, "pressure off"):
        part = planned.step.part.partition("/")[0]
        if plan.card.fitting[part].kind == "city inlet":
            yield StaysOff("city", part, step=planned.n)
