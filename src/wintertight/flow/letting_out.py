"""What is let out of a coach by other ways than a steady flow: by gravity, by hand, by air."""

from dataclasses import replace
from types import MappingProxyType

import numpy as np

from wintertight.flow.state import ONLY_AIR, Books, State, five
from wintertight.flow.stream import SHARES

WET_SHARE = 0.05
"""Share of water left as film and drops in what was drained or emptied by hand [1]; common
practice."""

HEATER_HEEL = 0.042
"""Share of a heater that stays below its plug: one quart in six gallons [1]; common practice."""


def left_wet(share: float) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """Give what is no water in a hollow that keeps so much of it wet.

    Args:
        share: share of water left [1].

    Returns:
        Shares of glycol, ethanol, rated product and air [1], shape (4,).
    """
    return np.asarray(ONLY_AIR * (1.0 - share))


def moved(books: Books, came: object, went: object) -> Books:
    """Give the books with what came in and went out entered [m3], shape (5,) each."""
    return Books(
        books.start,
        books.came_in + np.asarray(came),
        books.went_out + np.asarray(went),
    )


def refill(state: State, link: str, shares: object, treated: str) -> State:
    """Give the state with one link's content let out and another in its place, on the books.

    Where it already holds less liquid than ``shares`` would leave, it stays as it is.
    """
    held = state.held[link]
    new = np.asarray(shares, dtype=float)
    before = five(held.mean() * held.volume_m3, held.volume_m3)
    marked = MappingProxyType({**state.treated, link: treated})
    if before[-1] / held.volume_m3 >= new[-1]:
        return replace(state, treated=marked)
    # What is left keeps the composition of what was there.
    liquid = held.mean().copy()
    liquid[SHARES - 1] = 0.0
    wet = 1.0 - new[-1]
    full = 1.0 - held.mean()[SHARES - 1]
    new = new + liquid / full * wet
    twin = held.copy()
    twin.reset(new)
    after = five(new * held.volume_m3, held.volume_m3)
    change = after - before
    came, went = np.maximum(change, 0.0), np.maximum(-change, 0.0)
    return replace(
        state,
        held=MappingProxyType({**state.held, link: twin}),
        treated=marked,
        books=moved(state.books, came, went),
    )


def empty_tank(state: State, tank: str, heel: float) -> State:
    """Give the state with a tank drained to its heel, on the books."""
    before = state.pools[tank]
    volume = float(before.sum())
    liquid = float(before[:-1].sum())
    keep = min(liquid, heel * volume)
    after = before * (keep / liquid) if liquid else before.copy()
    after[-1] = volume - keep
    change = after - before
    return replace(
        state,
        pools=MappingProxyType({**state.pools, tank: after}),
        books=moved(state.books, np.maximum(change, 0.0), np.maximum(-change, 0.0)),
    )
