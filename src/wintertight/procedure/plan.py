"""The plan of one coach: method, steps, gallons, minutes, and the proof of what is left."""

from collections.abc import Iterable
from dataclasses import dataclass, replace

import numpy as np

from wintertight.coach.card import Card
from wintertight.coach.findings import Finding, findings
from wintertight.coach.place import Place
from wintertight.cold.hold import HeldFor
from wintertight.errors import ChoiceError
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Balance, Trace, replay
from wintertight.flow.state import ICE, State
from wintertight.flow.tilt import Tilt
from wintertight.fluids.product import Product
from wintertight.procedure.bands import Band, fill_draws, handling_draws
from wintertight.procedure.handling import HANDLING_S
from wintertight.procedure.hazards import hazard_of, product_refused
from wintertight.procedure.held_in import HeldIn
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.missed import missed_steps
from wintertight.procedure.orders import OrdersCompared
from wintertight.procedure.place import Hindrance
from wintertight.procedure.preconditions import Precondition
from wintertight.procedure.run_on import OutletPlan, share_needed
from wintertight.procedure.steps import PlannedStep, Step
from wintertight.procedure.stop_rules import RuleOutcome
from wintertight.procedure.telling import telling_outlets
from wintertight.proof.claims import PartProof, Verdict, verdict_of


@dataclass(frozen=True, slots=True)
class Refused:
    """An order that was refused: the step it belongs to, and the key of the hazard."""

    step: str
    hazard: str


@dataclass(frozen=True, slots=True)
class Purchase:
    """What to bring.

    Attributes:
        product: what it is called.
        container_m3: content of one container [m3].
        count: how many to bring.
        spare: how many more to have at hand.
    """

    product: str
    container_m3: float
    count: int
    spare: int


@dataclass(frozen=True, eq=False)
class Plan:
    """Everything that is known before the coach comes in.

    Attributes:
        card: the coach.
        method: how it is winterized.
        product: what it is filled with.
        low_degC: design low [degC].
        verdict: safe, gap or unproven, on the careful side of everything uncertain.
        steps: the steps with their numbers.
        parts: the proof of each part.
        antifreeze: band of antifreeze used [m3].
        duration: band of the whole job [s].
        buy: what to bring.
        refused: orders that were refused.
        findings: what about the card deserves a word.
        too_weak: pockets for which not even the undiluted product suffices.
        never_clear: outlets that do not clear within the limit.
        balance: the books of the careful replay.
        careful, best: the replays on the careful side and at best values.
        held_in: in how many drawn coaches each part is safe.
        hold: when the claim of a freeze hold expires.
        orders, stop_rules: the order of the outlets and the rule for shutting a tap against
            others, where that was asked for.
        place, hindrances: where it is carried out, and what stands in the way there.
        preconditions: what is looked at, or put right, before the slot.
    """

    card: Card
    method: str
    product: Product
    low_degC: float
    verdict: Verdict
    steps: tuple[PlannedStep, ...]
    parts: tuple[PartProof, ...]
    antifreeze: Band
    duration: Band
    buy: Purchase
    refused: tuple[Refused, ...]
    findings: tuple[Finding, ...]
    too_weak: tuple[str, ...]
    never_clear: tuple[str, ...]
    balance: Balance
    careful: Trace
    best: Trace
    held_in: HeldIn
    hold: HeldFor | None = None
    orders: OrdersCompared | None = None
    stop_rules: tuple[RuleOutcome, ...] = ()
    place: Place | None = None
    hindrances: tuple[Hindrance, ...] = ()
    preconditions: tuple[Precondition, ...] = ()


def plan_coach(  # noqa: PLR0913 - a coach and all that is at hand
    card: Card,
    product: Product,
    low_degC: float,
    method: str = "pump",
    *,
    air: AirSupply | None = None,
    start_degC: float | None = None,
    tilts: tuple[Tilt, ...] = (),
    with_missed_steps: bool = False,
) -> Plan:
    """Plan one coach.

    Args:
        card: the coach's card.
        product: what it is filled with.
        low_degC: design low of its storage site [degC].
        method: one of ``METHODS``.
        air: the compressor at hand; a small one where None.
        start_degC: temperature of the coach when the cold comes, for a freeze hold [degC]; that of
            an autumn evening where None.
        tilts: slopes of the floor on which it may stand; level where there are none.
        with_missed_steps: also leave each step out once; takes some seconds.

    Returns:
        The plan. An unsafe coach is a verdict, not an exception.

    Raises:
        ChoiceError: the method cannot be planned, the product must never be used, or the coach
            lacks what the method needs.
    """
    check_choice(method, product)
    asked = Asked.of(card, product, low_degC, air, tilts)
    if start_degC is not None:
        asked = replace(asked, start_degC=start_degC)
    return planned_as(method, asked, METHODS[method](asked), with_missed_steps=with_missed_steps)


def planned_as(
    method: str, asked: Asked, worked: Worked, *, with_missed_steps: bool = False
) -> Plan:
    """Put the numbers to a job that was worked out.

    Args:
        method: how it is winterized.
        asked: what it was worked out from.
        worked: the job.
        with_missed_steps: also leave each step out once; takes some seconds.

    Returns:
        The plan.
    """
    card, product, low_degC = asked.card, asked.product, asked.low_degC
    steps, trace, outlets = worked.steps, worked.trace, worked.outlets
    arrives = replace(asked.arrives(asked.best), marks=trace.start.marks)
    best = replay(asked.best, arrives, actions_of(steps))
    strength = 1.0 - product.contents().water
    telling = telling_outlets(card, asked.best, best, asked.drawn, strength)
    planned = _with_numbers(steps, best, outlets, telling)
    if with_missed_steps:
        outcomes = missed_steps(asked, steps, trace.start.marks)
        planned = tuple(
            replace(step, if_missed=missed) for step, missed in zip(planned, outcomes, strict=True)
        )
    used = fill_draws(asked.drawn, best, strength)
    blowing_s = sum(m.outcome.seconds for m in best.moments if m.action.verb == "blow")
    antifreeze = Band.of(used.antifreeze_m3)
    return Plan(
        card=card,
        method=method,
        product=product,
        low_degC=low_degC,
        verdict=verdict_of(worked.parts),
        steps=planned,
        parts=worked.parts,
        antifreeze=antifreeze,
        duration=Band.of(used.running_s + blowing_s + handling_draws(planned)),
        buy=purchase_of(product, antifreeze),
        refused=refused_orders(card, asked.careful, trace.start, steps),
        findings=findings(card),
        too_weak=tuple(p for p in ("open", "sealed") if share_needed(low_degC, p, product) is None),
        never_clear=tuple(o.outlet for o in outlets if not o.clears),
        balance=trace.balance,
        careful=trace,
        best=best,
        held_in=worked.held_in,
        hold=worked.hold,
    )


def check_choice(method: str, product: Product) -> None:
    """Refuse a method that is none, and a product that must never be used, by a ChoiceError."""
    if method not in METHODS:
        message = f"no method is called '{method}'; expected one of {', '.join(METHODS)}"
        raise ChoiceError(message)
    if product_refused(product.name):
        message = (
            f"'{product.name}' is refused: ethylene glycol is a poison and never goes into a"
            " potable line; expected propylene glycol"
        )
        raise ChoiceError(message)


def _with_numbers(
    steps: tuple[Step, ...],
    best: Trace,
    outlets: tuple[OutletPlan, ...],
    telling: frozenset[str],
) -> tuple[PlannedStep, ...]:
    seen = {m.action.part: m.outcome.run for m in best.moments if m.outcome.run}
    blows = {m.action.part: m.outcome.sweep for m in best.moments if m.outcome.sweep}
    run_on = {o.outlet: o.run_on_s for o in outlets}
    return tuple(
        PlannedStep(
            n=n,
            step=step,
            run=seen[step.outlet] if step.outlet else None,
            run_on_s=run_on[step.outlet] if step.outlet else None,
            blow=blows[step.blown] if step.blown else None,
            handling_s=HANDLING_S[step.key],
            telling=step.outlet in telling,
        )
        for n, step in enumerate(steps, start=1)
    )


def purchase_of(product: Product, antifreeze: Band) -> Purchase:
    """Give what to bring for a band of antifreeze [m3]: its middle, and a spare up to its end."""
    size = product.container_m3
    count = int(np.ceil(antifreeze.p50 / size))
    return Purchase(product.name, size, count, max(0, int(np.ceil(antifreeze.p95 / size)) - count))


def refused_orders(
    card: Card, network: CoachNetwork, state: State, steps: Iterable[Step]
) -> tuple[Refused, ...]:
    """Go through steps on controls alone and name every order that would be refused.

    Args:
        card: the coach's card.
        network: the coach.
        state: it, before the first step.
        steps: what is to be done.

    Returns:
        The refused orders, in order.
    """
    found: list[Refused] = []
    for step in steps:
        for action in step.actions:
            hazard = hazard_of(card, network, state, action)
            if hazard:
                found.append(Refused(step.id, hazard))
            if action.verb == "set":
                state = state.with_setting(action.part, action.setting)
            if action.verb == "thaw":
                state = replace(state, marks=state.marks - {ICE})
    return tuple(found)
