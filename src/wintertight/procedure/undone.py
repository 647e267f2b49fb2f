"""What a plan asked for and a record does not show, and which parts that concerns."""

from collections.abc import Mapping

import numpy as np

from wintertight.flow.state import State
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import PlannedStep

MOVED = 1e-3
"""Share of a content that must change for a step to count as done to it [1]."""


def undone_steps(done: Plan, planned: Plan) -> tuple[PlannedStep, ...]:
    """Give the steps of a plan that were not done, with their numbers in the plan."""
    seen = {s.step.id for s in done.steps}
    return tuple(s for s in planned.steps if s.step.id not in seen)


def undone_at(done: Plan, planned: Plan) -> Mapping[str, tuple[int, ...]]:
    """Give the steps that were not done, by the parts they are done to.

    A step is done to the fitting it names, and to whatever changes its content in the plan.

    Args:
        done: what was done.
        planned: the plan it was done by.

    Returns:
        Numbers of the plan's steps by part; only parts with such steps.
    """
    missing = {s.step.id for s in undone_steps(done, planned)}
    moments = iter(planned.careful.moments)
    before = planned.careful.start
    found: dict[str, list[int]] = {}
    for step in planned.steps:
        after = before
        for _ in step.step.actions:
            after = next(moments).state
        if step.step.id in missing:
            for part in {_fitting(step.step.part), *_moved(planned, before, after)} - {""}:
                found.setdefault(part, []).append(step.n)
        before = after
    return {part: tuple(numbers) for part, numbers in found.items()}


def _moved(plan: Plan, before: State, after: State) -> set[str]:
    """Give the parts whose content is another one after than before."""
    lines = {
        plan.careful.network.links[link].part
        for link, held in after.held.items()
        if held is not before.held[link]
        and np.abs(held.mean() - before.held[link].mean()).max() > MOVED
    }
    pools = {
        pool
        for pool, volumes in after.pools.items()
        if np.abs(volumes - before.pools[pool]).max() > MOVED * volumes.sum()
    }
    return lines | pools


def _fitting(control: str) -> str:
    return control.partition("/")[0].partition(".")[0]
