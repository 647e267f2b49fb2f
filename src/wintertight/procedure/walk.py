"""What one order of going round the outlets takes.

Outlets are run one after another as in ``run_on``: each until what it alone flushes is strong
enough. Only the way there differs, so that many orders can be compared. Lines move in the large
strides of ``missed`` up to first colour, which is found within a stride; from then on the engine
looks at each whole second, the very seconds that are counted in the bay. (In large strides alone,
a run-on would end with a stride and not with a second, and cost half as much again.) A run that
meets the same contents on its way as one that was worked out before is taken over from it.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from wintertight.flow.actions import Action, Outcome
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.precedent import Precedent
from wintertight.flow.running import Running
from wintertight.flow.state import State, with_outlet_open
from wintertight.flow.until import LIMIT_M3, Until
from wintertight.fluids.product import Product
from wintertight.procedure.run_on import (
    COUNT_S,
    SHORTEST_S,
    UNKNOWN_TARGET,
    shares_wanted,
    strength_of,
    way_to,
    weakest_share,
)
from wintertight.proof.judge import Bench

LOOKS = 8
"""From so many seconds on the engine looks only each time one part in so many has passed [1]."""

MOST_KEPT = 12
"""Runs of one outlet that are kept to be taken over [1]; the oldest goes first."""


@dataclass(frozen=True, slots=True)
class Walk:
    """One order, worked out.

    Attributes:
        order: the outlets' controls, as they are run.
        run_on_s: seconds to run on after first colour, for each of them [s].
        short: those whose own lines did not get strong enough within the limit.
        volume_m3: what comes out of all of them [m3].
        seconds: how long they run, hands-on time left out [s].
        taken_over: how many of the runs were taken over from another order [1].
    """

    order: tuple[str, ...]
    run_on_s: tuple[float, ...]
    short: tuple[str, ...]
    volume_m3: float
    seconds: float
    taken_over: int = 0

    @property
    def badness(self) -> tuple[int, float]:
        """Outlets left short, then volume [m3]: gallons never make up for a line left weak."""
        return len(self.short), self.volume_m3


@dataclass(frozen=True, slots=True)
class _Run:
    """One outlet's run: how long after colour [s], whether it was enough, and what came of it."""

    run_on_s: float
    clears: bool
    precedent: Precedent

    def holds(self, network: CoachNetwork, state: State) -> bool:
        """Tell whether it comes out the same from another state."""
        return self.precedent.holds(network, state, self.precedent.action)


class Walker:
    """Goes round the outlets of one coach, in whatever order it is asked.

    Attributes:
        bench: the coach, ready to be filled.
        outlets: controls of its outlets.
        runs: how many runs of one outlet were worked out so far [1].
    """

    def __init__(self, bench: Bench, product: Product, outlets: Iterable[str]) -> None:
        """Take a coach with the pump on and every outlet shut.

        Args:
            bench: the coach on the careful side, in large strides.
            product: what it is filled with.
            outlets: controls of the outlets that may be asked for.
        """
        self.bench = bench
        self.outlets = tuple(outlets)
        self.runs = 0
        self._strength = strength_of(product)
        self._wanted = shares_wanted(bench, product)
        self._ways = {o: way_to(bench.network, bench.state, o) for o in self.outlets}
        self._known: dict[tuple[str, frozenset[str]], list[_Run]] = {}

    def walk(self, order: Iterable[str], *, anew: bool = False) -> Walk:
        """Work one order out.

        Args:
            order: some of the outlets, or all.
            anew: take no run over from another order.

        Returns:
            What it takes.
        """
        todo = tuple(order)
        network, state, runs = self.bench.network, self.bench.state, list[_Run]()
        volume, seconds, taken_over = 0.0, 0.0, 0
        for i, outlet in enumerate(todo):
            later = frozenset[str]().union(*(self._ways[o] for o in todo[i + 1 :]))
            own = frozenset(k for k in self._ways[outlet] - later if k in self._wanted)
            known = () if anew else self._known.get((outlet, own), ())
            before = next((run for run in reversed(known) if run.holds(network, state)), None)
            run = before or self._worked_out(state, outlet, own)
            if before:
                state, outcome = run.precedent.taken_over(network, state)
                taken_over += 1
            else:
                state, outcome = run.precedent.done
                self._keep((outlet, own), run)
            runs.append(run)
            if outcome.run is not None:
                volume += outcome.run.volume_m3
                seconds += outcome.run.seconds
        return Walk(
            order=todo,
            run_on_s=tuple(run.run_on_s for run in runs),
            short=tuple(o for o, run in zip(todo, runs, strict=True) if not run.clears),
            volume_m3=volume,
            seconds=seconds,
            taken_over=taken_over,
        )

    def _keep(self, key: tuple[str, frozenset[str]], run: _Run) -> None:
        kept = self._known.setdefault(key, [])
        kept.append(run)
        del kept[:-MOST_KEPT]

    def _worked_out(self, state: State, outlet: str, own: frozenset[str]) -> _Run:
        """Run one outlet second by second; what is out of reach is not waited for, as planned."""
        self.runs += 1
        aims = {link: self._wanted[link] for link in own}
        running, held_s = self._until_held(state, outlet, aims)
        clears = held_s.keys() == aims.keys() and outlet in running.colour_s
        count = max(held_s.values(), default=SHORTEST_S)
        if not clears:
            lesser = {link: min(share, UNKNOWN_TARGET) for link, share in aims.items()}
            if lesser != aims:
                _, held_s = self._until_held(state, outlet, lesser)
            count = max(held_s.values(), default=SHORTEST_S)
            running = self._opened(state, outlet)
            running.advance(outlet, Until(run_on_s=count))
        seen = running.seen(outlet, given_up=outlet not in running.colour_s)
        found = {c: state.settings[c] for c, _ in self.bench.network.outlets[outlet].opens}
        after = running.finish().with_settings(found)
        action = Action("run", outlet, until=Until(run_on_s=count))
        done = after, Outcome(seen, seconds=seen.seconds)
        return _Run(count, clears, Precedent.of(state, action, done))

    def _until_held(
        self, state: State, outlet: str, aims: Mapping[str, float]
    ) -> tuple[Running, dict[str, float]]:
        """Run until links hold their shares [1], or to the limit; give when each first did [s]."""
        running, count = self._opened(state, outlet), SHORTEST_S
        limit = LIMIT_M3 + sum(leg.link.volume_m3 for leg in running.route.legs)
        held_s: dict[str, float] = {}
        if not running.advance(outlet, Until(run_on_s=count)):
            return running, held_s
        while True:
            for link in aims.keys() - held_s.keys():
                if weakest_share(running.held[link], self._strength) >= aims[link]:
                    held_s[link] = count
            if held_s.keys() == aims.keys() or running.drawn_m3 >= limit:
                return running, held_s
            wait = COUNT_S * max(1, count // LOOKS)
            running.step(wait)
            count += wait

    def _opened(self, state: State, outlet: str) -> Running:
        return Running(self.bench.network, with_outlet_open(self.bench.network, state, outlet))
