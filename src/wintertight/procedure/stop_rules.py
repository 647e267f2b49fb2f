"""When to shut a tap: three rules for one round of the outlets, and what each leaves behind.

  first colour   shut it when colour shows
  as planned     run on by the seconds of ``run_on``, counted for each outlet
  ten seconds    count ten beyond colour at every outlet, whatever it is (common practice, from
                 memory)

The outlets go nearest first, the rest of the job is the plan's: the same steps after the last
outlet, the same cups. Each rule is judged part by part at the design low, margin included, on the
careful side; what is not known is never safe. A rule holds where it leaves no part worse off than
the planned run-on does; it says nothing about parts that no run-on helps.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.replay import Trace, replay
from wintertight.flow.until import Until
from wintertight.procedure.methods.cups import cups_needed
from wintertight.procedure.methods.worked import actions_of
from wintertight.procedure.missed import RANK
from wintertight.procedure.orders import Round
from wintertight.procedure.phases.finishing import finish
from wintertight.procedure.steps import Step
from wintertight.procedure.walk import Walker
from wintertight.proof.claims import PartProof, Verdict, verdict_of
from wintertight.proof.judge import prove_parts

RuleKey = Literal["first colour", "as planned", "ten seconds"]
Left = Literal["bursts", "doubtful", "holds"]

TEN_S = 10.0
"""Seconds that are counted beyond colour where nobody has worked them out [s]; common practice,
from memory."""


@dataclass(frozen=True, slots=True)
class RuleOutcome:
    """What one rule comes to.

    Attributes:
        rule: its key.
        volume_m3: what comes out of all outlets [m3].
        seconds: how long they run [s].
        verdict: of the whole coach.
        bursting: parts that would burst, and would not as planned.
        doubtful: parts nobody could vouch for, and that are better off as planned.
        no_colour: outlets that showed none.
    """

    rule: RuleKey
    volume_m3: float
    seconds: float
    verdict: Verdict
    bursting: tuple[str, ...] = ()
    doubtful: tuple[str, ...] = ()
    no_colour: tuple[str, ...] = ()

    @property
    def weak(self) -> tuple[str, ...]:
        """Parts that are left weaker than as planned, those that would burst first."""
        return (*self.bursting, *self.doubtful)

    @property
    def holds(self) -> bool:
        """Whether it leaves no part worse off than the planned run-on."""
        return not self.weak

    @property
    def key(self) -> str:
        """Key of its sentence; the planned rule has one only."""
        if self.rule == "as planned":
            return self.rule
        left: Left = "bursts" if self.bursting else "doubtful" if self.doubtful else "holds"
        return f"{self.rule}: {left}"

    @property
    def params(self) -> Mapping[str, float | str]:
        """What its sentence needs."""
        return {
            "volume_m3": self.volume_m3,
            "running_s": self.seconds,
            "bursting": float(len(self.bursting)),
            "doubtful": float(len(self.doubtful)),
            "weak": float(len(self.weak)),
        }


def compare_stop_rules(
    ready: Round, planned: Mapping[str, float] | None = None
) -> tuple[RuleOutcome, ...]:
    """Compare stopping at first colour, the planned run-on, and a count of ten.

    Args:
        ready: the coach, ready to be filled.
        planned: by outlet, the run-on that stands on the sheet [s]; worked out anew where None. An
            outlet that is missing is not run.

    Returns:
        The planned rule first, then first colour, then ten seconds.

    Raises:
        ChoiceError: a run-on is planned for what is no outlet.
    """
    order = ready.nearest
    if planned is None:
        walk = Walker(ready.bench, ready.job.product, order).walk(order)
        planned = dict(zip(walk.order, walk.run_on_s, strict=True))
    unknown = sorted(planned.keys() - set(order))
    if unknown:
        message = f"'{unknown[0]}' is no outlet that is run; expected {', '.join(order)}"
        raise ChoiceError(message)
    told = [outlet for outlet in order if outlet in planned]
    as_planned = _filled(ready, {outlet: planned[outlet] for outlet in told})
    cups = cups_needed(ready.bench_at(as_planned), ready.job.product)
    late = tuple(finish(ready.job, cups))
    usual = _finished(ready, as_planned, late)
    found = [_outcome("as planned", as_planned, usual, usual)]
    rules: tuple[tuple[RuleKey, float], ...] = (("first colour", 0.0), ("ten seconds", TEN_S))
    for rule, seconds in rules:
        filled = _filled(ready, dict.fromkeys(told, seconds))
        found.append(_outcome(rule, filled, _finished(ready, filled, late), usual))
    return tuple(found)


def _filled(ready: Round, run_on_s: Mapping[str, float]) -> Trace:
    """Run the outlets, each so many seconds beyond colour."""
    bench = ready.bench
    runs = [Action("run", o, until=Until(run_on_s=s)) for o, s in run_on_s.items()]
    return replay(bench.network, bench.state, runs)


def _finished(ready: Round, filled: Trace, late: tuple[Step, ...]) -> tuple[PartProof, ...]:
    """Do the rest of the job, and prove each part."""
    end = replay(filled.network, filled.end, actions_of(late))
    return prove_parts(ready.bench_at(end))


def _outcome(
    rule: RuleKey, filled: Trace, parts: tuple[PartProof, ...], usual: tuple[PartProof, ...]
) -> RuleOutcome:
    runs = [m.outcome.run for m in filled.moments if m.outcome.run]
    pairs = list(zip(parts, usual, strict=True))
    worse = [part for part, twin in pairs if RANK[part.safe] < RANK[twin.safe]]
    return RuleOutcome(
        rule=rule,
        volume_m3=sum(run.volume_m3 for run in runs),
        seconds=sum(run.seconds for run in runs),
        verdict=verdict_of(parts),
        bursting=tuple(part.id for part in worse if part.safe is False),
        doubtful=tuple(part.id for part in worse if part.safe is None),
        no_colour=tuple(run.outlet for run in runs if run.first_colour_s is None),
    )
