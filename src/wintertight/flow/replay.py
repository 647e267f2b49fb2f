"""The one engine: a list of actions goes in, what everything holds after each comes out.

A plan, a plan with a step left out, a job as it was done and the spring return differ only in the
actions they give to ``replay``.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import zip_longest

import numpy as np
import numpy.typing as npt

from wintertight.errors import BooksDoNotClose
from wintertight.flow.actions import VERBS, Action, Outcome
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.precedent import Precedent
from wintertight.flow.state import State, all_held

CLOSED = 1e-9
"""Relative error up to which the books count as closed [1]."""


@dataclass(frozen=True, slots=True)
class Moment:
    """One action, what was seen while it was done, and the state after it."""

    action: Action
    outcome: Outcome
    state: State


@dataclass(frozen=True, slots=True)
class Balance:
    """The books of a whole replay: liquid and air, everything that moved [m3].

    Attributes:
        in_m3: what came in [m3].
        out_m3: what went out [m3].
        held_m3: what is held more than at the start [m3].
        relative_error: largest error of any component over the largest entry [1].
    """

    in_m3: float
    out_m3: float
    held_m3: float
    relative_error: float


@dataclass(frozen=True, eq=False)
class Trace:
    """All moments of a replay.

    Attributes:
        network: the coach.
        start: the state before the first action.
        moments: what happened, in order.
    """

    network: CoachNetwork
    start: State
    moments: tuple[Moment, ...]

    @cached_property
    def precedents(self) -> tuple[Precedent, ...]:
        """What was done, to be taken over by a job that is done over with something different."""
        states = (self.start, *(moment.state for moment in self.moments))
        return tuple(
            Precedent.of(before, m.action, (m.state, m.outcome))
            for before, m in zip(states, self.moments, strict=False)
        )

    @property
    def end(self) -> State:
        """The state after the last action."""
        return self.moments[-1].state if self.moments else self.start

    @cached_property
    def balance(self) -> Balance:
        """Close the books: start + in = out + held, for each component."""
        return balance_of(self.end)


def balance_of(state: State) -> Balance:
    """Close the books of a state.

    Args:
        state: any state.

    Returns:
        The balance; every component is compared by itself.
    """
    books = state.books
    held = all_held(state)
    error = books.start + books.came_in - books.went_out - held
    scale = float(max(books.start.sum(), books.came_in.sum(), books.went_out.sum(), held.sum()))
    return Balance(
        in_m3=float(books.came_in.sum()),
        out_m3=float(books.went_out.sum()),
        held_m3=float((held - books.start).sum()),
        relative_error=float(np.abs(error).max()) / scale,
    )


def replay(
    network: CoachNetwork,
    state: State,
    actions: Iterable[Action],
    precedents: Sequence[Precedent | None] = (),
) -> Trace:
    """Do actions one after another.

    Args:
        network: the coach.
        state: the coach before the first action.
        actions: what is done.
        precedents: for each of the first actions, one that was done before on this network, taken
            over where it holds.

    Returns:
        The trace; its end is the state after the last action.

    Raises:
        ChoiceError: an action names a control, source or outlet the coach does not have.
        NoSteadyFlow: the flow could not be solved.
        BooksDoNotClose: fluid was lost or made by more than ``CLOSED``.
    """
    moments: list[Moment] = []
    now = state
    for action, precedent in zip_longest(actions, precedents):
        if precedent and precedent.holds(network, now, action):
            now, outcome = precedent.taken_over(network, now)
        else:
            now, outcome = VERBS[action.verb](network, now, action)
        moments.append(Moment(action, outcome, now))
    trace = Trace(network, state, tuple(moments))
    error = trace.balance.relative_error
    if not error < CLOSED:
        message = "the books of the replay do not close"
        raise BooksDoNotClose(message, error)
    return trace


Array = npt.NDArray[np.float64]
