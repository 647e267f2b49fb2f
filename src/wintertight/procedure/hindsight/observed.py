"""What the bay wrote down that tells of more than itself: stopwatch, jugs, and strengths read."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property

from wintertight.procedure.chances import COUNTED_WITHIN_M3, TIMED_WITHIN_S
from wintertight.procedure.handling import HANDLING_S
from wintertight.procedure.record import Event
from wintertight.procedure.steps import PlannedStep, Step

JUG = "jug"
"""Where a cup from the fresh jug comes from."""


@dataclass(frozen=True, slots=True)
class Strength:
    """What was read in a cup.

    Attributes:
        outlet: where it came from, an outlet or ``JUG``.
        share: share of what the jug should hold, or of what a cup from the jug showed [1].
        sd: its standard deviation [1].
        beside_jug: whether it was compared with a cup from the jug.
    """

    outlet: str
    share: float
    sd: float
    beside_jug: bool = False


@dataclass(frozen=True, slots=True)
class Jugs:
    """What was taken from the jugs between two counts.

    Attributes:
        first, last: places of the first and the last step in between among the ticked ones.
        volume_m3: what was taken [m3].
        sd_m3: its standard deviation [m3].
    """

    first: int
    last: int
    volume_m3: float
    sd_m3: float


@dataclass(frozen=True)
class Observed:
    """What was observed at a job.

    Attributes:
        colour_s: first colour at each outlet that was timed [s]; 0 is at once.
        run_on_s: how long each of them ran on after it [s], where that was written down.
        colourless: outlets at which none came before they were given up.
        coloured: outlets that were ticked without a time: colour came.
        untimed: those of them at which a time was asked for.
        jugs: what was taken from the jugs.
        strengths: what was read.
        pink: whether a cup from an outlet looked pink.
    """

    colour_s: Mapping[str, float]
    run_on_s: Mapping[str, float] = field(default_factory=dict)
    colourless: frozenset[str] = frozenset()
    coloured: frozenset[str] = frozenset()
    untimed: frozenset[str] = frozenset()
    jugs: tuple[Jugs, ...] = ()
    strengths: tuple[Strength, ...] = ()
    pink: Mapping[str, bool] = field(default_factory=dict)

    @cached_property
    def measured(self) -> Mapping[tuple[str, str], tuple[float, float]]:
        """What was measured and where, with its standard deviation; jugs by their place."""
        found: dict[tuple[str, str], tuple[float, float]] = {}
        for outlet, seconds in self.colour_s.items():
            if seconds > 0.0:
                found["colour", outlet] = (seconds, TIMED_WITHIN_S)
        for outlet, seconds in self.run_on_s.items():
            found["run on", outlet] = (seconds, TIMED_WITHIN_S)
        for place, jugs in enumerate(self.jugs):
            found["jugs", str(place)] = (jugs.volume_m3, jugs.sd_m3)
        for read in self.strengths:
            what = "beside the jug" if read.beside_jug else "strength"
            found[what, read.outlet] = (read.share, read.sd)
        return found

    @property
    def counts(self) -> tuple[tuple[int, int], ...]:
        """First and last step between each two counts of jugs."""
        return tuple((jugs.first, jugs.last) for jugs in self.jugs)

    @property
    def seen(self) -> Mapping[tuple[str, str], tuple[float, float]]:
        """What was measured, and what came at once, with standard deviations."""
        at_once = {("colour", o): (0.0, TIMED_WITHIN_S) for o, s in self.colour_s.items() if not s}
        return {**self.measured, **at_once}

    @property
    def is_something(self) -> bool:
        """Was anything timed, counted, read, or found without colour?"""
        return bool(self.colour_s or self.colourless or self.jugs or self.strengths or self.pink)


def ticked_steps(
    events: Sequence[tuple[Event, Step]], planned: Mapping[str, PlannedStep]
) -> tuple[PlannedStep, ...]:
    """Give the steps that were done, or tried, in the order of the record.

    Args:
        events: every event, with its step as recorded.
        planned: the planned steps, by id.

    Returns:
        The steps that were done, and the outlets at which no colour came.
    """
    return tuple(
        _as_ticked(planned.get(step.id), event, step)
        for event, step in events
        if _tried(event, step)
    )


def observe(
    events: Sequence[tuple[Event, Step]],
    planned: Mapping[str, PlannedStep],
    container_m3: float,
    cups: tuple[Sequence[Strength], Mapping[str, bool]] = ((), {}),
) -> Observed:
    """Collect what a record tells beside what was ticked.

    Args:
        events: every event, with its step as recorded, in order.
        planned: the planned steps, by id.
        container_m3: what a full jug holds [m3].
        cups: what was read in cups, and which of them looked pink.

    Returns:
        The observations. Two counts of jugs make one observation: what was taken in between.
    """
    runs = [(event, step) for event, step in events if step.outlet]
    done = [(event, step) for event, step in runs if event.result == "done"]
    asked = {p.step.outlet for p in planned.values() if p.telling}
    timed = {
        o: e.first_colour_s for e, s in done if (o := s.outlet) and e.first_colour_s is not None
    }
    ticked = {o for _, s in done if (o := s.outlet)} - set(timed)
    colourless = frozenset(o for e, s in runs if e.result == "failed" and (o := s.outlet))
    return Observed(
        colour_s=timed,
        run_on_s={o: e.run_on_s for e, s in done if (o := s.outlet) and e.run_on_s is not None},
        colourless=colourless,
        coloured=frozenset(ticked - colourless),
        untimed=frozenset(o for o in ticked - colourless if timed and o in asked),
        jugs=_jugs(events, container_m3),
        strengths=tuple(cups[0]),
        pink=cups[1],
    )


def _tried(event: Event, step: Step) -> bool:
    return event.result == "done" or (event.result == "failed" and step.outlet is not None)


def _as_ticked(planned: PlannedStep | None, event: Event, step: Step) -> PlannedStep:
    if planned is None:
        return PlannedStep(0, step, handling_s=HANDLING_S[step.key])
    run_on_s = planned.run_on_s if event.run_on_s is None else event.run_on_s
    return PlannedStep(
        n=planned.n,
        step=step,
        run=planned.run,
        run_on_s=run_on_s,
        handling_s=planned.handling_s,
        telling=planned.telling,
    )


def _jugs(events: Sequence[tuple[Event, Step]], container_m3: float) -> tuple[Jugs, ...]:
    """Give what was taken between each count of jugs and the next.

    The count of an event is taken when its step is done.
    """
    found, place = [], -1
    before: tuple[int, float] | None = None
    for event, step in events:
        place += _tried(event, step)
        if event.jugs_left is None:
            continue
        if before is not None and place > before[0]:
            taken_m3 = (before[1] - event.jugs_left) * container_m3
            if taken_m3 >= 0.0:  # else more were brought, and nobody wrote how many
                found.append(Jugs(before[0] + 1, place, taken_m3, COUNTED_WITHIN_M3))
        before = (place, event.jugs_left)
    return tuple(found)
