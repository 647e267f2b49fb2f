"""What visits teach about a coach and its technician: lines, pump and habits, and next time's use.

Before a visit all that the card leaves open is a cloud of draws, and the engine says for each of
them what would be timed, counted and used. What was really timed and counted narrows it: all of it
is taken as jointly normal, and each draw is moved by what it misses (the update of an ensemble
Kalman filter with perturbed observations). What lies far off all the rest is given less weight, so
that one slip does not teach nonsense. Several visits are taken together: the coach is the same in
all of them.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.procedure.bands import Band
from wintertight.procedure.hindsight.diagnosis import TIME_WITHIN, VOLUME_WITHIN
from wintertight.procedure.hindsight.foreseen import Foreseen
from wintertight.procedure.hindsight.observed import Observed

Array = npt.NDArray[np.float64]

SEED = 20_261_127

FAR_OFF = 2.5
"""Standard deviations from which an observation is given less weight [1]; common practice."""

ROUNDS = 6
"""How often weights are found anew [1]."""

OWN_WITHIN = {"colour": TIME_WITHIN, "run on": 0.0, "jugs": VOLUME_WITHIN}
"""What teaches, and what the engine may be off there, relative [1]."""

MOSTLY_THERE = 0.9
"""Share of draws in which colour must come for its time to teach anything [1]."""


@dataclass(frozen=True, slots=True)
class Visit:
    """One visit: what was observed, and what the job as recorded lets one expect.

    Attributes:
        observed: what was observed.
        foreseen: what is expected, in draws that are the same coach in every visit.
    """

    observed: Observed
    foreseen: Foreseen


@dataclass(frozen=True, slots=True)
class Narrowed:
    """A quantity before and after the visits."""

    before: Band
    after: Band

    @property
    def width(self) -> float:
        """How wide the band is now, over what it was [1]."""
        was = self.before.p95 - self.before.p05
        return (self.after.p95 - self.after.p05) / was if was else 1.0


@dataclass(frozen=True, eq=False)
class Learned:
    """What visits have taught.

    Attributes:
        quantities: each quantity that was asked for, before and after.
        far_off: observations that were given less weight, by visit from 0 on and name.
        visits: how many there were [1].
    """

    quantities: Mapping[str, Narrowed]
    far_off: tuple[tuple[int, tuple[str, str]], ...]
    visits: int


@dataclass(frozen=True, eq=False, slots=True)
class _Row:
    """One observation: what the draws say of it, what it was, and how sure that is."""

    place: tuple[int, tuple[str, str]]
    draws: Array
    value: float
    sd: float


def learn(visits: Sequence[Visit], quantities: Mapping[str, Array]) -> Learned | None:
    """Learn from visits.

    Args:
        visits: the visits, each with what was expected of it in the same draws.
        quantities: what is to be learned, by name, shape (draws,) each.

    Returns:
        Each quantity before and after; None where nothing was observed that teaches anything.

    Sources: burgers-1998
    """
    rows = [row for number, visit in enumerate(visits) for row in _rows(number, visit)]
    if not rows:
        return None
    seen = np.array([row.draws for row in rows])
    value, sd = (np.array([getattr(row, n) for row in rows]) for n in ("value", "sd"))
    weights = _weights(seen, value, sd)
    sd = sd / np.sqrt(weights)
    gain = np.linalg.inv(np.atleast_2d(np.cov(seen)) + np.diag(sd**2))
    noise = np.random.default_rng(SEED).standard_normal(seen.shape) * sd[:, None]
    missed = gain @ (value[:, None] + noise - seen)
    return Learned(
        {name: _narrowed(draws, seen, missed) for name, draws in quantities.items()},
        tuple(row.place for row, w in zip(rows, weights, strict=True) if w < 1.0),
        len(visits),
    )


def _rows(number: int, visit: Visit) -> list[_Row]:
    """Give what one visit observed that the job as recorded foresees."""
    foreseen, found = visit.foreseen, []
    for (what, where), (value, sd) in visit.observed.measured.items():
        if what not in OWN_WITHIN:
            continue
        draws = foreseen.draws_of(what, where, visit.observed.counts)
        own = OWN_WITHIN[what]
        if draws is None or np.isfinite(draws).mean() < MOSTLY_THERE:
            continue
        mean = float(np.nanmean(draws))
        full = np.where(np.isfinite(draws), draws, mean)
        found.append(_Row((number, (what, where)), full, value, float(np.hypot(sd, own * mean))))
    return found


def _weights(seen: Array, value: Array, sd: Array) -> Array:
    """Give less weight to observations far from what all others let one expect, shape (rows,)."""
    weights = np.ones(len(value))
    covariance, mean = np.atleast_2d(np.cov(seen)), seen.mean(axis=1)
    for _ in range(ROUNDS):
        noise = np.diag(sd**2 / weights)
        inverse = np.linalg.inv(covariance + noise)
        # What each would be by all the others, and how sure that is.
        missed = inverse @ (value - mean) / np.diag(inverse)
        off = np.abs(missed) / np.sqrt(1.0 / np.diag(inverse) - np.diag(noise) + sd**2)
        weights = np.where(off > FAR_OFF, (FAR_OFF / np.maximum(off, FAR_OFF)) ** 4, 1.0)
    return weights


def _narrowed(draws: Array, seen: Array, missed: Array) -> Narrowed:
    """Move the draws of one quantity by what each misses."""
    off = seen - seen.mean(axis=1, keepdims=True)
    with_seen = off @ (draws - draws.mean()) / (len(draws) - 1)
    return Narrowed(Band.of(draws), Band.of(draws + with_seen @ missed))
