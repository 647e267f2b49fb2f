"""A record looked back on: what probably happened, what that puts in doubt, and what it teaches."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt

from wintertight.fluids.product import Product
from wintertight.procedure.as_done import AsDone
from wintertight.procedure.chances import AS_RECORDED
from wintertight.procedure.hindsight.cups import cups_of
from wintertight.procedure.hindsight.diagnosis import VOLUME_WITHIN, Weighed, weigh
from wintertight.procedure.hindsight.doubts import doubted_parts, with_doubts
from wintertight.procedure.hindsight.explanations import Explanation, possible_explanations
from wintertight.procedure.hindsight.foreseen import SEED, Foreseen, Rehearsal
from wintertight.procedure.hindsight.learning import Learned, Visit, learn
from wintertight.procedure.hindsight.observed import JUG, Observed, observe, ticked_steps
from wintertight.procedure.hindsight.separating import Separating, what_separates
from wintertight.procedure.plan import Plan, purchase_of
from wintertight.procedure.side_by_side import side_by_side
from wintertight.proof.claims import verdict_of

Array = npt.NDArray[np.float64]

TRUSTED = 0.5
"""How likely a job must have gone as recorded to teach anything [1]."""

MISSING = 9.0
"""As how many standard deviations it counts that something did not come at all [1]."""

PUMP, COUNTING, SEEING, NEXT_TIME = "pump", "counting", "seeing", "next time"
"""Names of what is learned beside the volumes of lines."""


@dataclass(frozen=True, slots=True)
class Cause:
    """One cause, with all that may have been its circumstances taken together.

    Attributes:
        explanation: the likeliest of its circumstances.
        fits: how likely the cause is after what was observed [1].
    """

    explanation: Explanation
    fits: float


@dataclass(frozen=True, slots=True)
class Sight:
    """One thing that was observed, beside what was to be expected.

    Attributes:
        what, where: as ``Observed.measured`` names it; "none" where no colour came.
        value: what was observed; None where nothing came.
        as_recorded: what the job as recorded lets one expect; None where nothing.
        if_so: what the likeliest cause lets one expect; None where nothing.
        off: by how many standard deviations it lies off the job as recorded [1].
    """

    what: str
    where: str
    value: float | None
    as_recorded: float | None
    if_so: float | None
    off: float


@dataclass(frozen=True, eq=False)
class Hindsight:
    """What a record tells beyond what it says.

    Attributes:
        causes: what may have happened, the likeliest first.
        separates: what would tell the first two apart, where the first is not what was recorded.
        sights: what was observed, what was strange about it first.
        doubts: by part, what speaks against it.
        learned: what the visits taught; None where they taught nothing.
        observed: what was observed.
    """

    causes: tuple[Cause, ...]
    separates: Separating | None
    sights: tuple[Sight, ...]
    doubts: Mapping[str, Explanation]
    learned: Learned | None
    observed: Observed


def look_back(
    done: AsDone, product: Product, earlier: Sequence[AsDone] = ()
) -> tuple[AsDone, Hindsight | None]:
    """Look back on a record.

    Args:
        done: what the record proves.
        product: what the coach was filled with, as its label says.
        earlier: what records of earlier visits to the same coach prove; they only teach.

    Returns:
        What the record proves, less what is doubted now, and what it tells beyond. None where no
        antifreeze was pumped, or nothing was timed, counted or read.
    """
    visits = [_Visited.of(each, product) for each in (*earlier, done)]
    last = visits[-1]
    if last is None or not last.observed.is_something:
        return done, None
    foreseen = last.foresee()
    weighed = weigh(foreseen, last.observed)
    causes = by_cause(weighed)
    doubts = doubted_parts(done.plan, last.rehearsal.steps, weighed)
    parts = with_doubts(done.plan.parts, doubts)
    plan = replace(done.plan, parts=parts, verdict=verdict_of(parts))
    usual = foreseen[0]
    first, second = (_of(foreseen, cause.explanation) for cause in causes[:2])
    strange = causes[0].explanation.cause != AS_RECORDED
    read = [read.outlet for read in last.observed.strengths]
    separates = what_separates(first, second, read) if strange else None
    sights = tuple(_sights(last.observed, usual, first))
    teaching = [*_teaching(visits[:-1]), *([last] if _went_as_recorded(causes) else [])]
    learned = _learned(done.planned, teaching)
    hindsight = Hindsight(causes, separates, sights, doubts, learned, last.observed)
    return replace(done, plan=plan), hindsight


@dataclass(frozen=True, eq=False, slots=True)
class _Visited:
    """One visit, rehearsed."""

    done: AsDone
    rehearsal: Rehearsal
    observed: Observed

    @classmethod
    def of(cls, done: AsDone, product: Product) -> "_Visited | None":
        """Rehearse a visit; None where no antifreeze was pumped."""
        by_id = {p.step.id: p for p in done.planned.steps}
        ticked = ticked_steps(done.events, by_id)
        if not any(p.step.outlet for p in ticked):
            return None
        cups = cups_of(done.events, done.planned.careful.network, product)
        observed = observe(done.events, by_id, product.container_m3, cups)
        strength = 1.0 - product.contents().water
        return cls(done, Rehearsal.of(done.plan.card, ticked, strength), observed)

    def foresee(self) -> tuple[Foreseen, ...]:
        """Foresee every possible explanation, as recorded first."""
        ticked = [p.step for p in self.rehearsal.steps]
        read = [s.outlet for s in self.observed.strengths if s.outlet != JUG]
        possible = possible_explanations(self.done.planned, ticked, read)

        def nameless(number: int) -> Foreseen:
            # What an explanation is made of cannot be passed between processes.
            return replace(self.rehearsal.foresee(possible[number]), explanation=Explanation(""))

        found = side_by_side(nameless, len(possible))
        return tuple(replace(f, explanation=e) for f, e in zip(found, possible, strict=True))

    def usual(self) -> Foreseen:
        """Foresee the job as recorded."""
        return self.rehearsal.foresee(Explanation(AS_RECORDED, chance=1.0))


def as_taught(
    plan: Plan, earlier: Sequence[AsDone], product: Product
) -> tuple[Plan, Learned | None]:
    """Let earlier visits to the same coach say how much antifreeze a plan takes.

    Args:
        plan: the plan.
        earlier: what records of earlier visits prove.
        product: what the coach was filled with, as its label says.

    Returns:
        The plan with the gallons and jugs that the visits let one expect, and what they taught;
        the plan as it was, and None, where none of them went as recorded and observed something.
    """
    learned = _learned(plan, _teaching([_Visited.of(each, product) for each in earlier]))
    if learned is None:
        return plan, None
    band = learned.quantities[NEXT_TIME].after
    return replace(plan, antifreeze=band, buy=purchase_of(plan.product, band)), learned


def by_cause(weighed: Sequence[Weighed]) -> tuple[Cause, ...]:
    """Take all circumstances of a cause together.

    Args:
        weighed: explanations, the likeliest first.

    Returns:
        The causes, the likeliest first.
    """
    fits: dict[str, float] = {}
    first: dict[str, Explanation] = {}
    for each in weighed:
        cause = each.explanation.cause
        fits[cause] = fits.get(cause, 0.0) + each.fits
        first.setdefault(cause, each.explanation)
    order = sorted(fits, key=lambda cause: -fits[cause])
    return tuple(Cause(first[cause], fits[cause]) for cause in order)


def _sights(observed: Observed, usual: Foreseen, first: Foreseen) -> list[Sight]:
    """Give what was observed beside what was to be expected, the strangest first."""
    found = [
        Sight("none", o, None, _mean(usual.colour_s.get(o)), _mean(first.colour_s.get(o)), MISSING)
        for o in sorted(observed.colourless)
    ]
    found += [
        Sight("untimed", o, None, _mean(usual.written_s.get(o)), None, MISSING)
        for o in sorted(observed.untimed)
    ]
    for (what, where), (value, sd) in observed.seen.items():
        here, there = (_expected(each, observed, what, where) for each in (usual, first))
        off = abs(value - here[0]) / float(np.hypot(sd, here[1])) if here else MISSING
        usually, if_so = (each[0] if each else None for each in (here, there))
        found.append(Sight(what, where, value, usually, if_so, off))
    return sorted(found, key=lambda sight: -sight.off)


def _expected(
    foreseen: Foreseen, observed: Observed, what: str, where: str
) -> tuple[float, float] | None:
    """Give mean and standard deviation of what one explanation lets one expect."""
    draws = foreseen.draws_of(what, where, observed.counts)
    mean = _mean(draws)
    return None if mean is None or draws is None else (mean, float(np.nanstd(draws)))


def _mean(draws: Array | None) -> float | None:
    """Give the mean of draws in which there is something; None where there mostly is not."""
    if draws is None or np.isfinite(draws).mean() < 0.5:  # noqa: PLR2004 - mostly
        return None
    return float(np.nanmean(draws))


def _of(foreseen: Sequence[Foreseen], explanation: Explanation) -> Foreseen:
    return next(each for each in foreseen if each.explanation is explanation)


def _went_as_recorded(causes: Sequence[Cause]) -> bool:
    return any(c.explanation.cause == AS_RECORDED and c.fits >= TRUSTED for c in causes)


def _teaching(visits: Sequence[_Visited | None]) -> list[_Visited]:
    """Give the visits at which something was observed and that went as recorded."""
    some = [v for v in visits if v is not None and v.observed.is_something]
    return [v for v in some if _went_as_recorded(by_cause(weigh(v.foresee(), v.observed)))]


def _learned(plan: Plan, teaching: Sequence[_Visited]) -> Learned | None:
    """Learn from visits that went as recorded what a plan will take; None where there are none."""
    if not teaching:
        return None
    visits = [Visit(v.observed, v.usual()) for v in teaching]
    return learn(visits, _quantities(plan, teaching[-1].rehearsal))


def _quantities(plan: Plan, rehearsal: Rehearsal) -> dict[str, Array]:
    """Give what is to be learned: lines, the pump, habits, and what the plan takes next time."""
    best, drawn = plan.best.network, rehearsal.drawn
    lines = {
        line.id: best.links[line.id].volume_m3 * drawn.lines[line.id] for line in plan.card.lines
    }
    planned = Rehearsal.of(plan.card, plan.steps, rehearsal.strength)
    used = np.sum(planned.foresee(Explanation(AS_RECORDED, chance=1.0)).step_m3, axis=0)
    noise = np.random.default_rng(SEED + 1).standard_normal(len(used))
    return {
        **lines,
        PUMP: drawn.pump,
        COUNTING: drawn.counting,
        SEEING: drawn.seeing_s,
        NEXT_TIME: used * (1.0 + VOLUME_WITHIN * noise),
    }
