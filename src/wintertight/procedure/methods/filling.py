"""Antifreeze one outlet at a time, whatever pushes it: run-on, cups, and mending both."""

import operator
from collections.abc import Mapping
from dataclasses import dataclass

from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import State
from wintertight.flow.until import Until
from wintertight.procedure.drawn import Array
from wintertight.procedure.held_in import HeldIn, held_in, with_scatter
from wintertight.procedure.job import Job
from wintertight.procedure.methods.cups import cups_needed
from wintertight.procedure.methods.mending import MORE_ROUNDS, stronger_by
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.phases.filling import fill_outlet
from wintertight.procedure.phases.finishing import finish
from wintertight.procedure.run_on import OutletPlan, plan_run_ons
from wintertight.procedure.steps import Step
from wintertight.procedure.walking import walking_order
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts


def work_out_filling(
    asked: Asked, job: Job, early: tuple[Step, ...], only: frozenset[str] | None = None
) -> Worked:
    """Work out a job that fills a coach with antifreeze.

    Args:
        asked: the coach, the antifreeze and the cold.
        job: what pushes the antifreeze in, and where.
        early: the steps up to the first outlet.
        only: controls of the outlets that are run; all that can be reached where None.

    Returns:
        The job, mended where too few draws held.
    """
    filling = _Filling.begun(job, asked, early, only)
    filled, parts, held = _mended(filling, asked)
    return Worked(filled.steps, filled.outlets, filled.trace, parts, held)


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
        self, asked: Asked, known: Mapping[str, Array] | None = None
    ) -> tuple[tuple[PartProof, ...], HeldIn]:
        """Prove each part on the careful side, and in enough of the draws."""
        parts = prove_parts(self.bench)
        held = held_in(
            asked.drawn,
            self.bench,
            self.trace,
            asked.best,
            parts,
            known=known,
            before=asked.before,
        )
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
    def begun(
        cls, job: Job, asked: Asked, early: tuple[Step, ...], only: frozenset[str] | None
    ) -> "_Filling":
        """Do what comes before the filling, and find the order of the outlets."""
        network, enters = job.network, job.enters_by
        set_up = replay(network, asked.arrives(network), actions_of(early))
        order = walking_order(network, set_up.end, network.sources[enters.source].node)
        through = network.controls[enters.control].part
        order = tuple(
            o for o in order if network.controls[o].part != through and (only is None or o in only)
        )
        return cls(job, asked.low_degC, early, set_up, order)

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
        cups = cups_needed(self.bench(state), job.product, stronger)
        late = tuple(finish(job, cups))
        end = replay(job.network, state, actions_of(late))
        moments = (*self.set_up.moments, *(o.moment for o in outlets), *end.moments)
        trace = Trace(job.network, arrived, moments)
        return _Filled(
            self.bench(trace.end), (*self.early, *fills, *late), outlets, trace, stronger
        )


def _mended(filling: _Filling, asked: Asked) -> tuple[_Filled, tuple[PartProof, ...], HeldIn]:
    """Fill a coach, run on longer where too few draws hold, and keep what lacks least."""
    filled = filling.filled({})
    best_of = found = (filled, *filled.proven(asked))
    for _ in range(MORE_ROUNDS):
        before, _, held = found
        if not held.short:
            break
        filled = filling.filled(stronger_by(before.stronger, held), before.outlets)
        same = all(map(operator.is_, filled.outlets, before.outlets))
        found = (filled, *filled.proven(asked, held.shares if same else None))
        best_of = min(best_of, found, key=lambda each: each[2].lacking)
    return best_of
