"""Parts that are not proven any more, because what was observed speaks for a mistake.

A proof says what follows from the record. Where stopwatch, jugs or cups speak for something that
is not in it, parts that would then burst are unproven until somebody has looked. What was observed
never makes a part safer.
"""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.procedure.chances import AS_RECORDED, LINE, RUN_SINCE, UNKNOWN
from wintertight.procedure.hindsight.diagnosis import Weighed
from wintertight.procedure.hindsight.done_over import done_over, longer, really_done
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.missed import RANK, in_strides
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep
from wintertight.proof.claims import Evidence, PartProof
from wintertight.proof.judge import Bench, prove_parts

DOUBT = 0.2
"""How likely an explanation must be for its parts to be doubted [1]; common practice: one chance in
five is worth a look, one in twenty is what any right job shows now and then."""


def doubted_parts(
    plan: Plan, ticked: Sequence[PlannedStep], weighed: Sequence[Weighed]
) -> Mapping[str, Explanation]:
    """Give the parts that would burst, or could not be vouched for, by a likely explanation.

    Args:
        plan: the proof of what was done.
        ticked: the steps that were ticked.
        weighed: the explanations, the likeliest first.

    Returns:
        By part, the likeliest explanation that speaks against it. Only explanations for which the
        observations speak count: what was always possible doubts nothing.
    """
    doubts: dict[str, Explanation] = {}
    for explanation in spoken_for(weighed):
        for part in _worse_off(plan, ticked, explanation):
            doubts.setdefault(part, explanation)
    return doubts


def spoken_for(weighed: Sequence[Weighed]) -> tuple[Explanation, ...]:
    """Give the explanations likely enough to doubt parts by, and likelier than before."""
    return tuple(
        each.explanation
        for each in weighed
        if each.fits >= DOUBT and each.fits > each.explanation.chance
        if each.explanation.cause != AS_RECORDED
    )


def with_doubts(
    parts: Sequence[PartProof], doubts: Mapping[str, Explanation]
) -> tuple[PartProof, ...]:
    """Take the claim from parts that are doubted; a gap stays one.

    Args:
        parts: the proof of each part.
        doubts: by part, what speaks against it.

    Returns:
        The parts; those that were safe and are doubted are unproven.
    """
    found = []
    for part in parts:
        why = doubts.get(part.id)
        if why is None or part.safe is not True:
            found.append(part)
            continue
        params = {"cause": why.cause, "at": why.part}
        evidence = Evidence("computed", "observed otherwise", params)
        found.append(
            replace(
                part,
                claim="unproven",
                safe=None,
                reason="observed otherwise",
                params=params,
                evidence=(*part.evidence, evidence),
                look_at=True,
            )
        )
    return tuple(found)


def _worse_off(
    plan: Plan, ticked: Sequence[PlannedStep], explanation: Explanation
) -> tuple[str, ...]:
    """Give the parts that are worse off if an explanation is true."""
    network = in_strides(plan.careful.network)
    if explanation.cause == UNKNOWN:
        return tuple(part.id for part in plan.parts if part.claim == "filled")
    if explanation.cause == RUN_SINCE:
        runs = (m.outcome.run for m in plan.careful.moments)
        ways = (run.way for run in runs if run and run.outlet == explanation.outlet)
        return tuple({network.links[link].part: None for way in ways for link in way})
    low_degC = plan.low_degC + VERDICT_MARGIN_K
    actions = [action for each in ticked for action in each.step.actions]
    usual = replay(network, arriving_state(network), actions)
    steps, really = really_done(ticked, network, explanation)
    if explanation.cause == LINE:
        really = longer(network, explanation.line)
    trace = done_over(usual, ticked, steps, really)
    before, after = (
        prove_parts(Bench(plan.card, t.network, t.end, low_degC, plan.product))
        for t in (usual, trace)
    )
    was = {part.id: part.safe for part in before}
    return tuple(part.id for part in after if RANK[part.safe] < RANK[was[part.id]])
