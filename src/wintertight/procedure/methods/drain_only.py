"""Drain only: everything open, nothing filled but the traps."""

from wintertight.flow.replay import Trace, replay
from wintertight.procedure.held_in import held_in, with_scatter
from wintertight.procedure.job import Job, own_pump
from wintertight.procedure.methods.cups import NOTHING, cups_needed
from wintertight.procedure.methods.mending import MORE_ROUNDS, stronger_by
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.phases.emptying import empty_out
from wintertight.procedure.phases.finishing import finish_empty, pour_only
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.steps import Step
from wintertight.proof.judge import prove_parts


def work_out(asked: Asked) -> Worked:
    """Work out a job that only drains.

    Args:
        asked: the coach, the antifreeze for its traps, and the cold.

    Returns:
        The job.
    """
    pump = own_pump(asked.card, asked.careful)
    job = Job(asked.card, asked.careful, asked.product, pump)
    return work_out_emptying(asked, job, (*make_safe(job), *empty_out(job)))


def work_out_emptying(
    asked: Asked, job: Job, early: tuple[Step, ...], *, only_pour: bool = False
) -> Worked:
    """Work out a job that ends with everything empty and open.

    Args:
        asked: the coach, the antifreeze for its traps, and the cold.
        job: the coach's own pump.
        early: the steps up to the last water out.
        only_pour: leave out everything after them but the cups and the tag.

    Returns:
        The job.
    """
    network = asked.careful
    emptied = replay(network, asked.arrives(network), actions_of(early))
    stronger = NOTHING
    found: list[Worked] = []
    for _ in range(1 + MORE_ROUNDS):
        cups = cups_needed(asked.bench(emptied.end), asked.product, stronger)
        late = tuple((pour_only if only_pour else finish_empty)(job, cups))
        end = replay(network, emptied.end, actions_of(late))
        trace = Trace(network, emptied.start, (*emptied.moments, *end.moments))
        bench = asked.bench(trace.end)
        parts = prove_parts(bench)
        held = held_in(asked.drawn, bench, trace, asked.best, parts, before=asked.before)
        found.append(Worked((*early, *late), (), trace, with_scatter(parts, held), held))
        if not held.short:
            break
        stronger = stronger_by(stronger, held)
    return min(found, key=lambda worked: worked.held_in.lacking)
