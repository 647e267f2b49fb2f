"""What if a step is left out? Each is, once, and the rest of the job goes on as planned.

The technician who has forgotten a step does not know it: taps still run until colour and then on by
the count on the sheet. The engine starts from the state before the missed step, so what came before
is not worked out again. All of this is done in larger strides than the plan, the plan itself
included: what is compared was worked out alike. And it is judged without the verdict's margin: a
step matters if missing it lets something burst at the design low itself.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate

from wintertight.coach.card import Card
from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.precedent import Precedent
from wintertight.flow.replay import Moment, Trace, replay
from wintertight.flow.state import State
from wintertight.procedure.hazards import hazard_of
from wintertight.procedure.methods.worked import Asked
from wintertight.procedure.plug_holes import with_plug_holes
from wintertight.procedure.side_by_side import side_by_side
from wintertight.procedure.steps import Missed, PlannedStep, Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts

RANK = {False: 0, None: 1, True: 2}

STRIDE_M3 = 0.4e-3
"""Volume moved between two looks at the flow [m3]; it grows while the flow stays."""

LONGEST_STRIDE_M3 = 4.0e-3
"""What that may grow to [m3]."""

PARCEL_M3 = 25e-6
"""Parcel in which laminar lines are fed [m3]."""


def in_strides(network: CoachNetwork) -> CoachNetwork:
    """Give a coach on which runs are worked out in larger strides."""
    case = replace(
        network.case,
        chunk_m3=STRIDE_M3,
        longest_chunk_m3=LONGEST_STRIDE_M3,
        parcel_m3=PARCEL_M3,
    )
    return replace(network, case=case)


def missed_steps(
    asked: Asked, steps: tuple[Step, ...], marks: frozenset[str] = frozenset()
) -> tuple[Missed, ...]:
    """Leave each step out once.

    Args:
        asked: the coach, what it is filled with, and the cold.
        steps: the steps, in order.
        marks: what is known of the coach as it arrives, such as that ice may stand in it.

    Returns:
        What comes of it, one entry a step.
    """
    card, network, product = asked.card, asked.careful, asked.product
    low_degC = asked.low_degC + VERDICT_MARGIN_K
    striding = with_plug_holes(in_strides(network))
    before = replace(asked.arrives(striding), marks=marks)
    trace = replay(striding, before, [a for step in steps for a in step.actions])
    usual = _Usual(
        parts=prove_parts(Bench(card, striding, trace.end, low_degC, product)),
        hazards=hazards_met(card, striding, before, trace),
        dry=_colourless(trace),
    )
    precedents = trace.precedents
    states = (before, *(moment.state for moment in trace.moments))
    ends = list(accumulate(len(step.actions) for step in steps))

    def without(i: int) -> Missed:
        actions = len(steps[i].actions)
        if not actions:
            return Missed("same")
        bench = Bench(card, striding, states[ends[i] - actions], low_degC, product)
        rest = [_expecting(moment) for moment in trace.moments[ends[i] :]]
        return _without(bench, rest, precedents[ends[i] :], usual)

    return tuple(side_by_side(without, len(steps)))


def _expecting(moment: Moment) -> Action:
    """Give the action of a moment, with where colour showed when it was done."""
    run, until = moment.outcome.run, moment.action.until
    if run is None or until is None:
        return moment.action
    return replace(moment.action, until=replace(until, expect_m3=run.first_colour_m3))


def matter_most(steps: Iterable[PlannedStep], count: int = 3) -> tuple[int, ...]:
    """Give the steps whose loss nobody would notice and most parts would suffer from.

    Args:
        steps: planned steps, with what comes of leaving each out.
        count: how many to give at most [1].

    Returns:
        Their numbers, worst first; none where missed steps were not worked out.
    """
    silent = [
        (len(missed.parts), missed.water_m3, -step.n)
        for step in steps
        if (missed := step.if_missed) and missed.outcome in {"gap", "unproven"}
        if not missed.noticed
    ]
    return tuple(-n for _, _, n in sorted(silent, reverse=True)[:count])


def _colourless(trace: Trace) -> frozenset[str]:
    """Give the outlets that were run for colour and showed none."""
    return frozenset(
        m.outcome.run.outlet
        for m in trace.moments
        if m.outcome.run and m.outcome.run.first_colour_s is None
        if m.action.until and m.action.until.run_on_s is not None
    )


@dataclass(frozen=True, slots=True)
class _Usual:
    """What comes of the job with every step done: parts, hazards, outlets that show no colour."""

    parts: tuple[PartProof, ...]
    hazards: frozenset[str]
    dry: frozenset[str]


def _without(
    bench: Bench, rest: Iterable[Action], precedents: Sequence[Precedent], usual: _Usual
) -> Missed:
    trace = replay(bench.network, bench.state, rest, precedents)
    hazards = hazards_met(bench.card, bench.network, bench.state, trace) - usual.hazards
    after = prove_parts(Bench(bench.card, bench.network, trace.end, bench.low_degC, bench.product))
    was = {part.id: part.safe for part in usual.parts}
    worse = [p for p in after if RANK[p.safe] < RANK[was[p.id]]]
    names = tuple(p.id for p in worse)
    water = sum(p.water_m3 for p in worse)
    noticed = bool(_colourless(trace) - usual.dry)
    if hazards:
        return Missed("hazard", names, water, min(hazards), noticed)
    if not worse:
        return Missed("same")
    gap = any(p.safe is False for p in worse)
    return Missed("gap" if gap else "unproven", names, water, noticed=noticed)


def hazards_met(card: Card, network: CoachNetwork, state: State, trace: Trace) -> frozenset[str]:
    """Give the keys of the hazards met on the way, from the state before the first action."""
    met = set()
    for moment in trace.moments:
        hazard = hazard_of(card, network, state, moment.action)
        if hazard:
            met.add(hazard)
        state = moment.state
    return frozenset(met)
