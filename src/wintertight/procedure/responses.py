"""Laminar responses as tables over volumes passed, looked up for many draws at once.

What is looked up is ``-ln`` of the share of supply, as that adds up along a way. The tables stand
over ``1/theta``: there both fall to zero smoothly, what a section lacks as ``1/(2 theta)`` and what
leaves lacks as ``1/(4 theta^2)``. They are made from the engine's own responses.
"""

from functools import cache

import numpy as np
import numpy.typing as npt

from wintertight.flow.laminar import FIRST_ARRIVAL, SeriesKernel
from wintertight.flow.until import COLOUR_SHARE

Array = npt.NDArray[np.float64]
Whole = npt.NDArray[np.int64]

NODES = 256
"""Intervals of a table [1]."""

LONGEST = 24.0
"""Line volumes passed up to which a response is worked out [1]; beyond, it goes on as it must."""

PARCEL = 0.02
"""Volume of a parcel over the volume of the line [1] while a table is made."""

NOTHING = 1e-3
"""Share of supply that counts as nothing [1]: it keeps logarithms finite."""

MOST_RUNS = 24
"""Laminar runs from which first colour is taken to come no later [1]."""


def lacking_at_end(theta: Array, runs: Whole) -> Array:
    """Give what the section at the outlet end of a line lacks.

    Args:
        theta: volume fed over volume of the line [1], shape (draws,).
        runs: laminar runs in series [1], from 1 on, shape (draws,).

    Returns:
        ``-ln`` of the share of supply [1], shape (draws,).

    Example:
        >>> end = np.exp(-lacking_at_end(np.array([2.5, 1.48]), np.array([1, 5])))
        >>> [round(float(share), 2) for share in end]
        [0.8, 0.8]

    Sources: levenspiel, 3rd ed., pp. 343-344 (the profile; the section is calculated from it)
    """
    return _looked_up(theta, runs, 0)


def lacking_after(theta: Array, runs: Whole) -> Array:
    """Give what leaves a line lacks.

    Args:
        theta: volume fed over volume of the line [1], shape (draws,).
        runs: laminar runs in series [1], from 1 on, shape (draws,).

    Returns:
        ``-ln`` of the share of supply [1], shape (draws,).

    Example:
        >>> left = np.exp(-lacking_after(np.array([1.58, 2.24]), np.array([1, 1])))
        >>> [round(float(share), 2) for share in left]
        [0.9, 0.95]

    Sources: levenspiel, 3rd ed., pp. 343-344
    """
    return _looked_up(theta, runs, 1)


def volumes_to_colour(runs: Array) -> Array:
    """Give when colour shows at the end of a line.

    Args:
        runs: laminar runs in series [1], from 1 on, not always whole: of a row of unequal lines.

    Returns:
        Volume fed over volume of the line [1], same shape.

    Example:
        >>> round(float(volumes_to_colour(np.array([1.0]))[0]), 2)  # 1/(4 theta^2) = 0.9
        0.53

    Sources: levenspiel, 3rd ed., pp. 343-344
    """
    return np.interp(runs, *_colours())


def _looked_up(theta: Array, runs: Whole, which: int) -> Array:
    table = _tables(-(-int(np.max(runs)) // 8) * 8)[which]
    x = (FIRST_ARRIVAL * NODES) / np.maximum(theta, FIRST_ARRIVAL)
    low = np.minimum(x.astype(np.int64), NODES - 1)
    at = runs * (NODES + 1) + low
    first = table[at]
    return np.asarray(first + (x - low) * (table[at + 1] - first))


@cache
def _tables(most_runs: int) -> tuple[Array, Array]:
    """Give the tables of 0 (not used) to so many runs, one after another."""
    rows = [_table(max(1, runs)) for runs in range(most_runs + 1)]
    return np.concatenate([r[0] for r in rows]), np.concatenate([r[1] for r in rows])


@cache
def _table(runs: int) -> tuple[Array, Array]:
    """Give what section and leaving lack over 1/theta from 0 to 2, shape (NODES + 1,) each."""
    parcel = min(PARCEL, FIRST_ARRIVAL / runs)
    count = int(LONGEST / parcel)
    kernel = SeriesKernel(runs, parcel)
    # A parcel's own average lies in its middle.
    theta = parcel * np.arange(1, count + 1)
    turned = _turned()
    at = 1.0 / np.maximum(turned, 1.0 / LONGEST)
    beyond = np.minimum(1.0, turned * LONGEST)
    found = []
    for response, power, late in (
        (kernel.sections(count)[-1], 1.0, 0.0),
        (kernel.leaving(count), 2.0, parcel / 2.0),
    ):
        lacks = (1.0 - np.interp(at, theta - late, np.cumsum(response))) * beyond**power
        found.append(-np.log(np.clip(1.0 - lacks, NOTHING, 1.0)))
    return found[0], found[1]


@cache
def _colours() -> tuple[Array, Array]:
    """Give volumes until colour for each number of runs."""
    runs = np.arange(1, MOST_RUNS + 1)
    seen = -np.log(COLOUR_SHARE)
    volumes = [1.0 / np.interp(seen, _table(int(n))[1], _turned()) for n in runs]
    return runs.astype(float), np.array(volumes)


def _turned() -> Array:
    return np.linspace(0.0, 1.0 / FIRST_ARRIVAL, NODES + 1)
