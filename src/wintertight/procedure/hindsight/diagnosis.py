"""Which explanation fits what was observed: likelihoods, by the scatter of what each foresees.

What was timed, counted and read is compared at once, as all of it hangs on the same coach: each
explanation foresees a cloud of values, taken as a multivariate Student distribution so that one
slip of the stopwatch does not decide. What came at once, came, or did not come at all is compared
by its chance.
"""

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from wintertight.procedure.chances import (
    NOR_THE_NEXT,
    NOT_TIMED,
    NOT_TIMED_IF_FORGOTTEN,
    SLIP,
    TICKED_WITHOUT,
    UNKNOWN,
)
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.hindsight.foreseen import Foreseen
from wintertight.procedure.hindsight.observed import JUG, Observed
from wintertight.procedure.samples import likelihood_pink
from wintertight.procedure.steps import part_of

Array = npt.NDArray[np.float64]

FREEDOM = 12.0
"""Degrees of freedom of the Student distribution [1]: tails for slips; common practice."""

TIME_WITHIN = 0.10
"""Standard deviation of what the engine says of a time, relative [1]; common practice."""

VOLUME_WITHIN = 0.025
"""Standard deviation of what it says of a volume, relative [1]; common practice."""

SHARE_WITHIN = 0.02
"""Standard deviation of what it says of a share [1]; common practice."""

MIXED_WITHIN = 0.2
"""What it may be off besides, as a share of what is lacking in a mixture [1]: how a flow divides
hangs on valves; common practice."""

SEVERAL_WAYS = 0.2
"""... of a share where several ways feed the outlet at once, and one may not be filled yet [1];
common practice."""

AT_ONCE = (0.7, 0.4)
"""Colour that shows within so many seconds is written down as at once, and how sharp that line is
[s]; common practice."""

ODD = 2e-3
"""Chance that a colour is written down as at once or as missing, or the other way round, for no
reason [1]; common practice."""

LOGISTIC = 1.702
"""Slope with which a logistic curve comes nearest to a normal one [1]."""

FEWEST = 25
"""Fewest draws of which a cloud is made [1]."""

LONGEST_S = 60.0
"""Times for which nothing speaks lie anywhere up to this [s]."""

STRETCHED = 0.15
"""Standard deviation of the share of a jug that was stretched, or of another product [1]; common
practice."""

ANY_SHARE = (0.5, 0.35)
"""Mean and standard deviation of a strength of which nothing is known, over that of the jug [1]."""

BROAD = 3.0
"""How many times as wide as usual the cloud of no known cause is [1]."""

NO_KNOWN_CAUSE = 0.2
"""Chance that an outlet misses its colour or its time for no known cause [1]."""


@dataclass(frozen=True, slots=True)
class Weighed:
    """One explanation, weighed.

    Attributes:
        explanation: what may have happened.
        fits: how likely it is after what was observed [1].
    """

    explanation: Explanation
    fits: float


def weigh(foreseen: Sequence[Foreseen], observed: Observed) -> tuple[Weighed, ...]:
    """Weigh explanations by what was observed.

    Args:
        foreseen: what each lets one expect.
        observed: what was observed.

    Returns:
        The explanations, the likeliest first; what they fit adds up to 1.
    """
    logs = np.array(
        [math.log(each.explanation.chance) + log_likelihood(each, observed) for each in foreseen]
    )
    odds = np.exp(logs - logs.max())
    fits = odds / odds.sum()
    order = np.argsort(-fits, kind="stable")
    return tuple(Weighed(foreseen[i].explanation, float(fits[i])) for i in order)


def log_likelihood(foreseen: Foreseen, observed: Observed) -> float:
    """Give how likely what was observed is under one explanation, as a logarithm.

    Args:
        foreseen: what the explanation lets one expect.
        observed: what was observed.

    Returns:
        The logarithm; up to a constant that is the same for all explanations.
    """
    return (
        sum(_log_came(foreseen, observed))
        + sum(_log_written(foreseen, observed))
        + _log_cloud(foreseen, observed)
    )


def _log_came(foreseen: Foreseen, observed: Observed) -> Iterator[float]:
    """Give the logarithms of the chances of what came and what did not."""
    unknown = foreseen.explanation.cause == UNKNOWN
    for outlet in observed.colourless:
        missing = 0.0 if _forgot(foreseen, outlet) else _missing(foreseen, outlet)
        yield math.log(NO_KNOWN_CAUSE if unknown else max(ODD, missing * (1.0 - SLIP)))
    for outlet in observed.coloured:
        if not _forgot(foreseen, outlet):
            missing = _missing(foreseen, outlet)
            yield math.log((1.0 - SLIP) * (1.0 - missing) + TICKED_WITHOUT * missing)
    for outlet, is_pink in observed.pink.items():
        share = float(np.mean(foreseen.strength.get(outlet, np.zeros(1))))
        pink = likelihood_pink(ANY_SHARE[0] if _any_share(foreseen, outlet) else share)
        yield math.log(pink if is_pink else 1.0 - pink)
    for outlet, seconds in observed.colour_s.items():
        at_once = _at_once(foreseen, outlet)
        yield math.log(max(ODD, at_once if seconds == 0.0 else 1.0 - at_once))


def _log_written(foreseen: Foreseen, observed: Observed) -> Iterator[float]:
    """Give the logarithms of the chances of times that were, or were not, written down."""
    unknown = foreseen.explanation.cause == UNKNOWN
    for part in {part_of(outlet) for outlet in observed.untimed}:
        theirs = [outlet for outlet in observed.untimed if part_of(outlet) == part]
        forgot = any(_forgot(foreseen, outlet) for outlet in theirs)
        usual = NO_KNOWN_CAUSE if unknown else NOT_TIMED
        also = 1.0 if forgot else NOR_THE_NEXT ** (len(theirs) - 1)
        yield math.log((NOT_TIMED_IF_FORGOTTEN if forgot else usual) * also)
    for part in {part_of(outlet) for outlet in observed.colour_s}:
        forgot = any(_forgot(foreseen, o) for o in observed.colour_s if part_of(o) == part)
        yield math.log(1.0 - (NOT_TIMED_IF_FORGOTTEN if forgot else NOT_TIMED))


def _forgot(foreseen: Foreseen, outlet: str) -> bool:
    return any(step.endswith(f":{outlet}") for step in foreseen.explanation.skips)


def _missing(foreseen: Foreseen, outlet: str) -> float:
    """Give the chance that no colour comes at an outlet in time [1]."""
    colour_s = foreseen.colour_s.get(outlet)
    return 1.0 if colour_s is None else float(np.isnan(colour_s).mean())


def _at_once(foreseen: Foreseen, outlet: str) -> float:
    """Give the chance that colour at an outlet is written down as at once [1]."""
    colour_s = foreseen.colour_s.get(outlet)
    return 0.0 if colour_s is None else _called_at_once(foreseen, outlet)


@lru_cache(maxsize=65536)
def _called_at_once(foreseen: Foreseen, outlet: str) -> float:
    colour_s = foreseen.colour_s[outlet]
    within_s, sharp_s = AT_ONCE
    off = np.where(np.isnan(colour_s), np.inf, (colour_s - within_s) / sharp_s)
    return float(np.mean(1.0 / (1.0 + np.exp(np.clip(LOGISTIC * off, -50.0, 50.0)))))


Row = tuple[str, str]
"""What was measured, as ``Observed.measured`` names it; and where."""


@dataclass(frozen=True, eq=False, slots=True)
class Cloud:
    """What an explanation foresees of some values, as a normal distribution.

    Attributes:
        rows: the values that it foresees at all.
        mean: their means, shape (rows,).
        covariance: by the draws, and by what the engine may be off, shape (rows, rows).
        log_is_so: logarithm of the chance that there is something to measure in all of them.
    """

    rows: tuple[Row, ...]
    mean: Array
    covariance: Array
    log_is_so: float


@lru_cache(maxsize=4096)
def cloud_of(
    foreseen: Foreseen,
    rows: tuple[Row, ...],
    jugs: tuple[tuple[int, int], ...],
    colourless: frozenset[str] = frozenset(),
) -> Cloud:
    """Give what an explanation foresees of what was measured.

    Args:
        foreseen: what it lets one expect.
        rows: what was measured; jugs are named by their place in ``jugs``.
        jugs: first and last step between each two counts of jugs.
        colourless: outlets at which no colour came; draws in which it does not are preferred.

    Returns:
        The cloud. A time to a colour that hardly ever comes is not in it.
    """
    known, draws, off = [], list[Array](), list[float]()
    for what, where in rows:
        found = _draws_of(foreseen, what, where, jugs)
        if found is None or np.isfinite(found).sum() < FEWEST:
            continue
        known.append((what, where))
        draws.append(found)
        off.append(_own(foreseen, what, where, float(np.nanmean(found))))
    if not known:
        return Cloud((), np.zeros(0), np.zeros((0, 0)), 0.0)
    cloud = np.array(draws)
    whole = np.isfinite(cloud).all(axis=0)
    for outlet in colourless & foreseen.colour_s.keys():
        also = whole & np.isnan(foreseen.colour_s[outlet])
        whole = also if also.sum() >= FEWEST else whole
    share = float(np.isfinite(cloud).all(axis=0).mean())
    cloud = cloud[:, whole] if whole.sum() >= FEWEST else np.nan_to_num(cloud, nan=0.0)
    covariance = np.atleast_2d(np.cov(cloud)) + np.diag(np.square(off))
    return Cloud(tuple(known), cloud.mean(axis=1), covariance, math.log(max(share, ODD)))


def _draws_of(
    foreseen: Foreseen, what: str, where: str, jugs: tuple[tuple[int, int], ...]
) -> Array | None:
    """Give what an explanation foresees of one value, shape (draws,)."""
    draws = foreseen.draws_of(what, where, jugs)
    if what in {"colour", "run on", "jugs"}:
        return draws
    shares = np.zeros(len(foreseen.step_m3[0])) if draws is None else draws
    if _any_share(foreseen, where):
        return np.full(len(shares), ANY_SHARE[0])
    if what == "beside the jug":
        return np.asarray(shares / np.maximum(foreseen.strength[JUG], SHARE_WITHIN))
    return shares


def _any_share(foreseen: Foreseen, where: str) -> bool:
    explanation = foreseen.explanation
    return explanation.cause == UNKNOWN or explanation.outlet == where


def _own(foreseen: Foreseen, what: str, where: str, mean: float) -> float:
    """Give what the engine may be off, in the unit of the value."""
    if what == "colour":
        return TIME_WITHIN * mean
    if what == "jugs":
        return VOLUME_WITHIN * mean
    if what == "run on":
        return 0.0
    if _any_share(foreseen, where):
        return ANY_SHARE[1]
    if where in foreseen.mixed:
        return SEVERAL_WAYS
    stretched = foreseen.explanation.cause == "weak product" and what == "strength"
    return STRETCHED if stretched else SHARE_WITHIN + MIXED_WITHIN * abs(1.0 - mean)


def _log_cloud(foreseen: Foreseen, observed: Observed) -> float:
    """Give the logarithm of the density of all that was measured, taken together."""
    measured = observed.measured
    rows = tuple(measured)
    cloud = cloud_of(foreseen, rows, observed.counts, observed.colourless)
    strange = sum(what == "colour" for what, _ in rows if (what, _) not in cloud.rows)
    log = cloud.log_is_so + strange * math.log(SLIP / LONGEST_S)
    if not cloud.rows:
        return log
    value, sd = np.array([measured[row] for row in cloud.rows]).T
    broad = BROAD**2 if foreseen.explanation.cause == UNKNOWN else 1.0
    covariance = broad * (cloud.covariance + np.diag(np.square(sd)))
    return log + _log_student(value - cloud.mean, covariance)


def _log_student(off: Array, covariance: Array) -> float:
    """Give the logarithm of a multivariate Student density with this covariance."""
    size = len(off)
    scale = covariance * ((FREEDOM - 2.0) / FREEDOM)
    squared = float(off @ np.linalg.solve(scale, off))
    log_det = float(np.linalg.slogdet(scale)[1])
    whole = FREEDOM + size
    return (
        math.lgamma(whole / 2.0)
        - math.lgamma(FREEDOM / 2.0)
        - 0.5 * size * math.log(FREEDOM * math.pi)
        - 0.5 * log_det
        - 0.5 * whole * math.log1p(squared / FREEDOM)
    )
