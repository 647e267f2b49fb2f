"""What an explanation lets one expect: times to colour, gallons and strengths, with their scatter.

The job is done over in the engine with the explanation made true; draws of what the card leaves
open, of the pump and of the technician's habits make many coaches of it. Nobody knows how sharp a
front comes to an outlet: the engine does each job with laminar fronts and with such as displace all
before them, and what is foreseen lies anywhere between the two. A technician waits for colour until
it is long overdue, and then gives an outlet up.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
import numpy.typing as npt

from wintertight.coach.card import Card
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST, PLUG
from wintertight.flow.replay import Moment, Trace, replay
from wintertight.flow.state import State, arriving_state
from wintertight.procedure.drawn import Drawn, draw
from wintertight.procedure.hindsight.done_over import LONGER, done_over, really_done
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.hindsight.observed import JUG
from wintertight.procedure.missed import in_strides
from wintertight.procedure.mistaken import waits_s
from wintertight.procedure.ran import Sizes, branches, ran
from wintertight.procedure.steps import PlannedStep, Step

Array = npt.NDArray[np.float64]

DRAWS = 1000
"""Coaches that are drawn for each explanation [1]."""

SEED = 20_261_126

LATE_SHARE = 0.5
"""Share of the delay of seeing colour that is in a time as well [1]: the watch is started as late
as it is stopped; common practice."""


@dataclass(frozen=True, eq=False, slots=True)
class Foreseen:
    """What one explanation lets one expect; all arrays of shape (draws,).

    Attributes:
        explanation: the explanation.
        colour_s: when colour shows at each outlet [s]; nan where it does not in time.
        written_s: what a stopwatch says of it [s].
        run_on_s: how long each outlet runs on after colour [s].
        step_m3: what each ticked step takes from the jugs [m3].
        strength: share of what the jug should hold, in what leaves each outlet last [1]; at
            ``JUG`` that of the jug itself.
        mixed: outlets that several ways feed at once in the job as ticked: what leaves them last is
            what came by the way that was filled last.
    """

    explanation: Explanation
    colour_s: Mapping[str, Array]
    written_s: Mapping[str, Array]
    run_on_s: Mapping[str, Array]
    step_m3: tuple[Array, ...]
    strength: Mapping[str, Array]
    mixed: frozenset[str] = frozenset()

    def draws_of(self, what: str, where: str, jugs: Sequence[tuple[int, int]]) -> Array | None:
        """Give what is foreseen of one thing that can be measured.

        Args:
            what: the kind of thing, as ``Observed.measured`` names it.
            where: its outlet, or its place among the counts of jugs.
            jugs: first and last step between each two counts of jugs.

        Returns:
            The draws; None where nothing is foreseen there.
        """
        if what == "colour":
            return self.written_s.get(where)
        if what == "run on":
            return self.run_on_s.get(where)
        if what == "jugs":
            first, last = jugs[int(where)]
            return np.asarray(np.sum(self.step_m3[first : last + 1], axis=0))
        return self.strength.get(where)


@dataclass(frozen=True, eq=False, slots=True)
class _Fill:
    """A job as one side of what is uncertain about fronts lets one expect; as in ``Foreseen``."""

    colour_s: dict[str, Array]
    run_on_s: dict[str, Array]
    step_m3: list[Array]
    strength: dict[str, float]


@dataclass(frozen=True, eq=False)
class Rehearsal:
    """One job, to be done over with something different each time.

    Attributes:
        steps: the steps as they were ticked, with their numbers, in order.
        usual: the job done as ticked: with laminar fronts, and with sharp ones.
        drawn: what each draw takes.
        front: how far the front is from a laminar one (0) to a sharp one (1), shape (draws,).
        strength: share of antifreeze in the undiluted product [1].
    """

    steps: tuple[PlannedStep, ...]
    usual: tuple[Trace, Trace]
    drawn: Drawn
    front: Array
    strength: float

    @classmethod
    def of(cls, card: Card, steps: Sequence[PlannedStep], strength: float) -> "Rehearsal":
        """Do a job as it was ticked.

        Args:
            card: the coach's card.
            steps: the steps, with their numbers.
            strength: share of antifreeze in the undiluted product [1].

        Returns:
            The rehearsal.
        """
        waited = tuple(_given_up(step) for step in steps)
        actions = [action for each in waited for action in each.step.actions]
        networks = [in_strides(build_network(card, case)) for case in (BEST, PLUG)]
        laminar, sharp = (replay(n, arriving_state(n), actions) for n in networks)
        front = np.random.default_rng(SEED).uniform(0.0, 1.0, DRAWS)
        return cls(waited, (laminar, sharp), draw(card, DRAWS, SEED), front, strength)

    def foresee(self, explanation: Explanation) -> Foreseen:
        """Do the job over with one explanation made true.

        Args:
            explanation: what may have happened.

        Returns:
            What it lets one expect.
        """
        drawn = _lengthened(self.drawn, explanation.line)
        laminar, sharp = (self._fill(usual, explanation, drawn) for usual in self.usual)
        colour_s = {
            outlet: _in_time(
                self._between(laminar.colour_s.get(outlet), sharp.colour_s.get(outlet)),
                self.waited_s[outlet],
            )
            for outlet in {**laminar.colour_s, **sharp.colour_s}
        }
        return Foreseen(
            explanation,
            colour_s,
            {o: seconds + LATE_SHARE * drawn.seeing_s for o, seconds in colour_s.items()},
            {**sharp.run_on_s, **laminar.run_on_s},
            tuple(self._between(a, b) for a, b in zip(laminar.step_m3, sharp.step_m3, strict=True)),
            {
                o: share + self.front * (sharp.strength.get(o, 0.0) - share)
                for o, share in laminar.strength.items()
            },
            self.mixed,
        )

    @cached_property
    def waited_s(self) -> Mapping[str, float]:
        """How long anyone waits for colour at each outlet [s]."""
        return {o: waits_s(_due_s(p)) for p in self.steps if (o := p.step.outlet)}

    @cached_property
    def mixed(self) -> frozenset[str]:
        """Outlets that several ways feed at once."""
        laminar, _ = self.usual
        runs = (m.outcome.run for m in laminar.moments)
        return frozenset(r.outlet for r in runs if r and branches(laminar.network, r.way))

    def _between(self, laminar: Array | None, sharp: Array | None) -> Array:
        """Give what lies between two sides; what one of them has not comes in its draws not."""
        if laminar is not None and sharp is not None:
            return laminar + self.front * (sharp - laminar)
        is_sharp = self.front > 0.5  # noqa: PLR2004 - the nearer side
        never = np.full(len(self.front), np.nan)
        return np.where(
            is_sharp, never if sharp is None else sharp, never if laminar is None else laminar
        )

    def _fill(self, usual: Trace, explanation: Explanation, drawn: Drawn) -> _Fill:
        steps, network = really_done(self.steps, usual.network, explanation)
        trace = done_over(usual, self.steps, steps, network)
        sizes = Sizes(drawn, network, usual.network, self.strength)
        skipped = (p.step.outlet for p in self.steps if p.step.id in explanation.skips)
        found = _Fill({}, {}, [], {JUG: 0.0, **{o: 0.0 for o in skipped if o}})
        moments, before = iter(trace.moments), trace.start
        for step in steps:
            used = np.zeros(len(drawn.pump))
            for moment in (next(moments) for _ in step.actions):
                used = used + self._note(found, sizes, step, moment, before)
                before = moment.state
            found.step_m3.append(used)
        return found

    def _note(self, found: _Fill, sizes: Sizes, step: Step, moment: Moment, before: State) -> Array:
        """Note what one action lets one see; give what it takes from the jugs [m3]."""
        drawn, seen = sizes.drawn, moment.outcome.run
        if moment.action.verb == "pour":
            return np.full(len(drawn.pump), moment.action.volume_m3)
        if seen is None:
            return np.zeros(len(drawn.pump))
        given = _fed(before)
        from_jug_m3 = seen.given_m3 / given if given else 0.0
        ran_so = ran(sizes, moment, before)
        if step.outlet:
            found.strength[JUG] = max(found.strength[JUG], given / self.strength)
            found.strength[seen.outlet] = seen.strength * given / self.strength
            if ran_so is not None:
                found.colour_s[seen.outlet] = ran_so.colour_s
                found.run_on_s[seen.outlet] = ran_so.seconds - ran_so.colour_s
        if ran_so is None or seen.volume_m3 <= 0.0:
            return np.full(len(drawn.pump), from_jug_m3)
        return (ran_so.colour_m3 + ran_so.on_m3) * (from_jug_m3 / seen.volume_m3)


def _fed(state: State) -> float:
    """Give the share of antifreeze in the liquid that the strongest source gives [1]."""
    liquids = [f for f in (feed.liquid() for feed in state.feeds.values()) if f is not None]
    return max((f.glycol + f.ethanol + f.rated for f in liquids), default=0.0)


def _due_s(planned: PlannedStep) -> float:
    """Give when colour is due at an outlet [s]."""
    return (planned.run.first_colour_s or 0.0) if planned.run else 0.0


def _in_time(colour_s: Array, waited_s: float) -> Array:
    """Let colour that comes when nobody waits for it any more not come."""
    return np.where(colour_s <= waited_s, colour_s, np.nan)


def _given_up(planned: PlannedStep) -> PlannedStep:
    """Let an outlet whose colour is long overdue be given up."""
    if planned.step.outlet is None:
        return planned
    due_s = _due_s(planned)

    def waited(action: Action) -> Action:
        if action.verb != "run" or action.until is None or action.until.run_on_s is None:
            return action
        longest_s = waits_s(due_s) + action.until.run_on_s
        return replace(action, until=replace(action.until, seconds=longest_s))

    actions = tuple(waited(action) for action in planned.step.actions)
    return replace(planned, step=replace(planned.step, actions=actions))


def _lengthened(drawn: Drawn, line: str) -> Drawn:
    """Let one line be longer than its card says, nobody knows by how much."""
    if not line:
        return drawn
    least, most = LONGER
    more = 1.0 + np.linspace(least, most, len(drawn.pump))
    return replace(drawn, lines={**drawn.lines, line: drawn.lines[line] * more})
