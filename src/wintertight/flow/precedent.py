"""A run that was worked out before, and holds for another coach state too.

When a job is done over with one thing different, most runs meet the same contents on their way, and
what came of such a run can be taken over: contents, books and what was seen. The same means within
``WITHIN``: an outlet more or less before it hardly changes a trunk that many gallons have flushed.
What little differs is booked as having gone out.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from wintertight.flow.actions import Action, Done
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.held import Held
from wintertight.flow.hydraulics import half_turned, passes
from wintertight.flow.state import WATER, Books, State, five, in_doubt, with_outlet_open

Array = npt.NDArray[np.float64]

WITHIN = 0.005
"""Shares closer than this are the same [1]: a quarter of what a run-on leaves to spare."""


@dataclass(frozen=True, slots=True, eq=False)
class Precedent:
    """An action that was done, the state before it, and what came of it.

    Attributes:
        before: the state before the action.
        action: what was done.
        done: the state after it, and what was seen.
        moved: links whose content it changed.
        touched: pools whose content it changed.
    """

    before: State
    action: Action
    done: Done
    moved: frozenset[str]
    touched: frozenset[str]

    @classmethod
    def of(cls, before: State, action: Action, done: Done) -> "Precedent":
        """Keep what was done."""
        after, _ = done
        moved, touched = _changed(before.held, after.held), _changed(before.pools, after.pools)
        return cls(before, action, done, moved, touched)

    def holds(self, network: CoachNetwork, state: State, action: Action) -> bool:
        """Tell whether a run from another state comes out the same.

        Args:
            network: the coach.
            state: the other state, before the action.
            action: what is to be done in it.

        Returns:
            True only for a run whose every link holds the same, fed with the same, through gates
            that stand alike.
        """
        before, (_, outcome) = self.before, self.done
        if action.verb != "run" or action != self.action or outcome.run is None:
            return False
        way = outcome.run.way
        breathe = {breather.pool for breather in network.breathers}
        return (
            all(
                state.feeds[name] == before.feeds[name]
                for name, source in network.sources.items()
                if source.link in way
            )
            and _open_alike(network, state, before, action)
            and all(self._pool_alike(network, state, k) for k in self.touched | breathe)
            and all(
                _alike(_begun(network, state, k), _begun(network, before, k)) for k in self.moved
            )
        )

    def _pool_alike(self, network: CoachNetwork, state: State, pool: str) -> bool:
        """Tell whether a pool takes in the same: a trap that holds the same, a tank with room."""
        mine, before = state.pools[pool], self.before.pools[pool]
        if network.pools[pool].stirred:
            return bool(np.abs(mine - before).max() <= WITHIN * network.pools[pool].volume_m3)
        after = self.done[0].pools[pool]
        return bool(after[-1] > 0.0 and mine[-1] > before[-1] - after[-1])

    def taken_over(self, network: CoachNetwork, state: State) -> Done:
        """Give what comes of the run in the other state.

        Args:
            network: the coach.
            state: a state for which it ``holds``.

        Returns:
            The state after the run, and what was seen.
        """
        before, (after, outcome) = self.before, self.done
        held, pools, treated = dict(state.held), dict(state.pools), dict(state.treated)
        differ = np.zeros_like(state.books.start)
        for k in self.moved:
            size = held[k].volume_m3
            differ += five((held[k].mean() - before.held[k].mean()) * size, 0.0)
            held[k], treated[k] = after.held[k], after.treated[k]
        for k in self.touched:
            if network.pools[k].stirred:
                differ += pools[k] - before.pools[k]
                pools[k] = after.pools[k]
            else:
                pools[k] = pools[k] + (after.pools[k] - before.pools[k])
        came = after.books.came_in - before.books.came_in + np.maximum(-differ, 0.0)
        went = after.books.went_out - before.books.went_out + np.maximum(differ, 0.0)
        books = Books(state.books.start, state.books.came_in + came, state.books.went_out + went)
        then = replace(
            state,
            held=MappingProxyType(held),
            pools=MappingProxyType(pools),
            treated=MappingProxyType(treated),
            books=books,
        )
        return then, outcome


def _changed(before: Mapping[str, object], after: Mapping[str, object]) -> frozenset[str]:
    """Give the keys under which something else stands now."""
    return frozenset(k for k, thing in after.items() if before[k] is not thing)


def _alike(one: Held, other: Held) -> bool:
    """Tell whether two contents are the same, in every section that is judged."""
    if one is other:
        return True
    if np.abs(one.about() - other.about()).max() > WITHIN:
        return False
    a, b = one.sections(), other.sections()
    return (
        one.forward == other.forward and a.shape == b.shape and bool(np.abs(a - b).max() <= WITHIN)
    )


def _begun(network: CoachNetwork, state: State, link: str) -> Held:
    """Give what a link holds when fluid first moves in it."""
    held = state.held[link]
    if in_doubt(network, state, link):
        held = held.copy()
        held.reset(WATER)
    return held


def _open_alike(network: CoachNetwork, state: State, before: State, action: Action) -> bool:
    """Tell whether every gate stands alike while the outlet runs."""
    one, other = (with_outlet_open(network, some, action.part) for some in (state, before))
    return bool(np.array_equal(passes(network, one), passes(network, other))) and (
        half_turned(network, one) == half_turned(network, other)
    )
