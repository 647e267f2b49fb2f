"""What if a step is left out? Each is, once, and the rest of the job goes on as planned.

The technician who has forgotten a step does not know it: taps still run until colour and then on by
the count on the sheet. The engine starts from the state before the missed step, so what came before
is not worked out again.
"""

from collections.abc import Iterable

from wintertight.coach.card import Card
from wintertight.fluids.product import Product
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import State
from wintertight.procedure.hazards import hazard_of
from wintertight.procedure.steps import Missed, Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts

RANK = {False: 0, None: 1, True: 2}


def missed_steps(
    card: Card,
    product: Product,
    low_degC: float,
    trace: Trace,
    steps: tuple[Step, ...],
    parts: tuple[PartProof, ...],
) -> tuple[Missed, ...]:
    """Leave each step out once.

    Args:
        card: the coach's card.
        product: what it is filled with.
        low_degC: design low [degC].
        trace: the replay of all steps.
        steps: the steps, in order; their actions are those of the trace.
        parts: the proof after all steps.

    Returns:
        What comes of it, one entry a step.
    """
    before = trace.start
    found: list[Missed] = []
    done = 0
    usual = _hazards(card, trace.network, trace.start, trace)
    for i, step in enumerate(steps):
        rest = [action for later in steps[i + 1 :] for action in later.actions]
        if step.actions:
            bench = Bench(card, trace.network, before, low_degC, product)
            found.append(_without(bench, rest, parts, usual))
        else:
            found.append(Missed("same"))
        done += len(step.actions)
        before = trace.moments[done - 1].state if done else trace.start
    return tuple(found)


def _without(
    bench: Bench, rest: Iterable[Action], parts: tuple[PartProof, ...], usual: frozenset[str]
) -> Missed:
    trace = replay(bench.network, bench.state, rest)
    hazards = _hazards(bench.card, bench.network, bench.state, trace) - usual
    after = prove_parts(Bench(bench.card, bench.network, trace.end, bench.low_degC, bench.product))
    was = {part.id: part.safe for part in parts}
    worse = [p for p in after if RANK[p.safe] < RANK[was[p.id]]]
    names = tuple(p.id for p in worse)
    water = sum(p.water_m3 for p in worse)
    if hazards:
        return Missed("hazard", names, water, min(hazards))
    if not worse:
        return Missed("same")
    outcome = "gap" if any(p.safe is False for p in worse) else "unproven"
    return Missed(outcome, names, water)  # type: ignore[arg-type] - one of the literals


def _hazards(card: Card, network: CoachNetwork, state: State, trace: Trace) -> frozenset[str]:
    """Give the hazards met on the way."""
    met = set()
    for moment in trace.moments:
        hazard = hazard_of(card, network, state, moment.action)
        if hazard:
            met.add(hazard)
        state = moment.state
    return frozenset(met)
