"""The plan of one coach: method, steps, gallons, minutes, and the proof of what is left."""

import operator
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

import numpy as np

from wintertight.coach.card import Card
from wintertight.coach.findings import Finding, findings
from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST, CAREFUL
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Balance, Trace, replay
from wintertight.flow.state import State, arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.product import Product
from wintertight.procedure.bands import Band, fill_draws, handling_draws
from wintertight.procedure.drawn import Array, Drawn, draw
from wintertight.procedure.handling import HANDLING_S
from wintertight.procedure.hazards import hazard_of, product_refused
from wintertight.procedure.held_in import HeldIn, held_in, with_scatter
from wintertight.procedure.job import Job
from wintertight.procedure.missed import missed_steps
from wintertight.procedure.phases.filling import fill_outlet
from wintertight.procedure.phases.finishing import CUP_M3
from wintertight.procedure.pump_method import pump_job, steps_after_filling, steps_before_filling
from wintertight.procedure.run_on import OutletPlan, plan_run_ons, share_needed
from wintertight.procedure.steps import PlannedStep, Step
from wintertight.procedure.telling import telling_outlets
from wintertight.procedure.walking import walking_order
from wintertight.proof.claims import PartProof, Verdict, verdict_of
from wintertight.proof.judge import Bench, prove_parts

MOST_CUPS = 8
"""Most cups that are poured into one trap [1]; more is a sign that the product is too weak."""

MORE_ROUNDS = 3
"""How often a plan is worked out again where too few draws hold [1]."""

A_LITTLE = 0.003
"""Share of the product aimed at beyond what too few draws lack [1]: else it comes near for ever."""

MOST_AT_ONCE = 1.05
"""Factor by which a round aims at more at most [1]: what lacks more than that lacks no run-on."""

METHODS = ("pump", "hand-pump", "air", "air-then-pump", "drain", "hold")
"""Every method that has a name here; only the first has a planner so far."""


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


def plan_coach(
    card: Card,
    product: Product,
    low_degC: float,
    method: str = "pump",
    *,
    with_missed_steps: bool = False,
) -> Plan:
    """Plan one coach.

    Args:
        card: the coach's card.
        product: what it is filled with.
        low_degC: design low of its storage site [degC].
        method: one of ``METHODS``; only ``pump`` has a planner.
        with_missed_steps: also leave each step out once; takes some seconds.

    Returns:
        The plan. An unsafe coach is a verdict, not an exception.

    Raises:
        ChoiceError: the method has no planner, the product must never be used, or the coach has
            no pump.
    """
    _check_choice(method, product)
    careful, best_network = build_network(card, CAREFUL), build_network(card, BEST)
    drawn = draw(card)
    filling = _Filling.begun(pump_job(card, careful, product), low_degC)
    filled, parts, held = _mended(filling, drawn, best_network)
    steps, trace, outlets = filled.steps, filled.trace, filled.outlets
    best = replay(best_network, arriving_state(best_network), _actions(steps))
    planned = _with_numbers(card, steps, best, outlets, best_network)
    if with_missed_steps:
        outcomes = missed_steps(card, careful, product, low_degC, steps)
        planned = tuple(
            replace(step, if_missed=missed) for step, missed in zip(planned, outcomes, strict=True)
        )
    strength = 1.0 - product.contents().water
    used = fill_draws(drawn, best, strength)
    antifreeze = Band.of(used.antifreeze_m3)
    return Plan(
        card=card,
        method=method,
        product=product,
        low_degC=low_degC,
        verdict=verdict_of(parts),
        steps=planned,
        parts=parts,
        antifreeze=antifreeze,
        duration=Band.of(used.running_s + handling_draws(planned)),
        buy=_purchase(product, antifreeze),
        refused=refused_orders(card, careful, trace.start, steps),
        findings=findings(card),
        too_weak=tuple(p for p in ("open", "sealed") if share_needed(low_degC, p, product) is None),
        never_clear=tuple(o.outlet for o in outlets if not o.clears),
        balance=trace.balance,
        careful=trace,
        best=best,
        held_in=held,
    )


@dataclass(frozen=True, eq=False, slots=True)
class _Filled:
    """A job that was worked out to its end.

    Attributes:
        bench: the coach on the careful side at its end.
        steps, outlets, trace: what is done, and what was found.
        stronger: by link and trap, the factor by which more of the product was aimed at [1].
    """

    bench: Bench
    steps: tuple[Step, ...]
    outlets: tuple[OutletPlan, ...]
    trace: Trace
    stronger: Mapping[str, float]

    def proven(
        self, drawn: Drawn, best: CoachNetwork, known: Mapping[str, Array] | None = None
    ) -> tuple[tuple[PartProof, ...], HeldIn]:
        """Prove each part on the careful side, and in enough of the draws."""
        parts = prove_parts(self.bench)
        held = held_in(drawn, self.bench, self.trace, best, parts, known=known)
        return with_scatter(parts, held), held


@dataclass(frozen=True, eq=False, slots=True)
class _Filling:
    """A job that was worked out up to the filling."""

    job: Job
    low_degC: float
    early: tuple[Step, ...]
    set_up: Trace
    order: tuple[str, ...]

    @classmethod
    def begun(cls, job: Job, low_degC: float) -> "_Filling":
        """Do what comes before the filling, and find the order of the outlets."""
        network = job.network
        early = steps_before_filling(job)
        set_up = replay(network, arriving_state(network), _actions(early))
        order = walking_order(network, set_up.end, network.sources[job.hose].node)
        through = network.controls[job.hose].part
        order = tuple(o for o in order if network.controls[o].part != through)
        return cls(job, low_degC, early, set_up, order)

    def bench(self, state: State) -> Bench:
        """Give the bench for one state."""
        return Bench(self.job.card, self.job.network, state, self.low_degC, self.job.product)

    def filled(self, stronger: Mapping[str, float], known: tuple[OutletPlan, ...] = ()) -> _Filled:
        """Fill it, some links stronger than usual, and finish the job."""
        job, arrived = self.job, self.set_up.start
        bench = self.bench(self.set_up.end)
        outlets = plan_run_ons(bench, job.product, self.order, stronger, known)
        fills = tuple(fill_outlet(job, o.outlet, Until(run_on_s=o.run_on_s)) for o in outlets)
        state = outlets[-1].moment.state if outlets else self.set_up.end
        cups = _cups(self.bench(state), job.product, stronger)
        late = steps_after_filling(job, cups)
        end = replay(job.network, state, _actions(late))
        moments = (*self.set_up.moments, *(o.moment for o in outlets), *end.moments)
        trace = Trace(job.network, arrived, moments)
        return _Filled(
            self.bench(trace.end), (*self.early, *fills, *late), outlets, trace, stronger
        )


def _mended(
    filling: _Filling, drawn: Drawn, best: CoachNetwork
) -> tuple[_Filled, tuple[PartProof, ...], HeldIn]:
    """Fill a coach, run on longer where too few draws hold, and keep what lacks least."""
    filled = filling.filled({})
    best_of = found = (filled, *filled.proven(drawn, best))
    for _ in range(MORE_ROUNDS):
        before, _, held = found
        if not held.short:
            break
        filled = filling.filled(_stronger(before.stronger, held), before.outlets)
        same = all(map(operator.is_, filled.outlets, before.outlets))
        found = (filled, *filled.proven(drawn, best, held.shares if same else None))
        best_of = min(best_of, found, key=lambda each: each[2].lacking)
    return best_of


def _stronger(before: Mapping[str, float], held: HeldIn) -> Mapping[str, float]:
    """Aim at more of the product where too few draws hold: by what the weak ones lack, and half."""
    more = {
        place: before.get(place, 1.0)
        * min(1.0 + 1.5 * (1.0 / point - 1.0) + A_LITTLE, MOST_AT_ONCE)
        for place, point in held.short.items()
    }
    return {**before, **more}


def _check_choice(method: str, product: Product) -> None:
    if method not in METHODS:
        message = f"no method is called '{method}'; expected one of {', '.join(METHODS)}"
        raise ChoiceError(message)
    if method != "pump":
        message = f"the method '{method}' cannot be planned yet; expected pump"
        raise ChoiceError(message)
    if product_refused(product.name):
        message = (
            f"'{product.name}' is refused: ethylene glycol is a poison and never goes into a"
            " potable line; expected propylene glycol"
        )
        raise ChoiceError(message)


def _actions(steps: Iterable[Step]) -> list[Action]:
    return [action for step in steps for action in step.actions]


def _cups(bench: Bench, product: Product, stronger: Mapping[str, float]) -> dict[str, int]:
    """Give how many cups each trap needs that what ran through it has not made strong enough."""
    weak = {part.id for part in prove_parts(bench) if part.safe is not True or part.id in stronger}
    breathing = {b.pool for b in bench.network.breathers}
    return {
        trap: _cups_of(bench, product, trap, stronger.get(trap, 1.0))
        for trap, pool in bench.network.pools.items()
        if pool.stirred and trap in weak and trap not in breathing
    }


def _cups_of(bench: Bench, product: Product, trap: str, stronger: float) -> int:
    """Give the fewest cups after which a trap is safe; one where no number of them helps."""
    asked = (share_needed(bench.low_degC, "open", product) or 0.0) * stronger
    full = 1.0 - product.contents().water
    for cups in range(1, MOST_CUPS + 1):
        poured = Action("pour", trap, contents=product.contents(), volume_m3=cups * CUP_M3)
        state = replay(bench.network, bench.state, [poured]).end
        found = next(p for p in prove_parts(replace(bench, state=state)) if p.id == trap)
        if found.safe is True and 1.0 - found.worst.water >= asked * full:
            return cups
    return 1


def _with_numbers(
    card: Card,
    steps: tuple[Step, ...],
    best: Trace,
    outlets: tuple[OutletPlan, ...],
    network: CoachNetwork,
) -> tuple[PlannedStep, ...]:
    seen = {m.action.part: m.outcome.run for m in best.moments if m.outcome.run}
    run_on = {o.outlet: o.run_on_s for o in outlets}
    telling = telling_outlets(card, network, best)
    return tuple(
        PlannedStep(
            n=n,
            step=step,
            run=seen[step.outlet] if step.outlet else None,
            run_on_s=run_on[step.outlet] if step.outlet else None,
            handling_s=HANDLING_S[step.key],
            telling=step.outlet in telling,
        )
        for n, step in enumerate(steps, start=1)
    )


def _purchase(product: Product, antifreeze: Band) -> Purchase:
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
    return tuple(found)
