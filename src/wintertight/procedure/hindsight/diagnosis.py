"""Which explanation fits what was observed: likelihoods, by the scatter of what each foresees.

What was timed, counted and read is compared at once, as all of it hangs on the same coach: each
explanation foresees a cloud of values, taken as a multivariate Student distribution so that one
slip of the stopwatch does not decide. What came at once, came, or did not come at all is compared
by its chance.
"""

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.procedure.chances import (
    NOT_TIMED,
    NOT_TIMED_IF_FORGOTTEN,
    SLIP,
    TICKED_WITHOUT,
    TIMED_WITHIN_S,
    UNKNOWN,
)
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.hindsight.foreseen import Foreseen
from wintertight.procedure.hindsight.observed import Observed
from wintertight.procedure.steps import part_of

Array = npt.NDArray[np.float64]

FREEDOM = 12.0
"""Degrees of freedom of the Student distribution [1]: tails for slips; common practice."""

TIME_WITHIN = 0.10
"""Standard deviation of what the engine says of a time, relative [1]; common practice."""

VOLUME_WITHIN = 0.03
"""Standard deviation of what it says of a volume, relative [1]; common practice."""

SHARE_WITHIN = 0.02
"""Standard deviation of what it says of a share [1]; common practice."""

AT_ONCE = (0.7, 0.4)
"""Colour that shows within so many seconds is written down as at once, and how sharp that line is
[s]; common practice."""

ODD = 2e-3
"""Chance that a time is written down as at once, or the other way round, for no reason [1]; common
practice."""

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
        missing = _missing(foreseen, outlet)
        yield math.log(NO_KNOWN_CAUSE if unknown else max(SLIP, missing * (1.0 - SLIP)))
    for outlet in observed.coloured:
        if not _forgot(foreseen, outlet):
            missing = _missing(foreseen, outlet)
            yield math.log((1.0 - SLIP) * (1.0 - missing) + TICKED_WITHOUT * missing)
    for outlet, seconds in observed.colour_s.items():
        at_once = _at_once(foreseen, outlet)
        yield math.log(max(ODD, at_once if seconds == 0.0 else 1.0 - at_once))


def _log_written(foreseen: Foreseen, observed: Observed) -> Iterator[float]:
    """Give the logarithms of the chances of times that were, or were not, written down."""
    unknown = foreseen.explanation.cause == UNKNOWN
    for part in {part_of(outlet) for outlet in observed.untimed}:
        forgot = any(_forgot(foreseen, o) for o in observed.untimed if part_of(o) == part)
        usual = NO_KNOWN_CAUSE if unknown else NOT_TIMED
        yield math.log(NOT_TIMED_IF_FORGOTTEN if forgot else usual)
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
    if colour_s is None:
        return 0.0
    within_s, sharp_s = AT_ONCE
    off = np.where(np.isnan(colour_s), np.inf, (colour_s - within_s) / sharp_s)
    return float(np.mean(1.0 / (1.0 + np.exp(np.clip(1.702 * off, -50.0, 50.0)))))


def _log_cloud(foreseen: Foreseen, observed: Observed) -> float:
    """Give the logarithm of the density of all that was measured, taken together."""
    unknown = foreseen.explanation.cause == UNKNOWN
    log, rows = 0.0, list[tuple[Array, float, float]]()
    for outlet, seconds in observed.colour_s.items():
        written_s = foreseen.written_s.get(outlet)
        if seconds == 0.0:
            continue
        if written_s is None or np.isfinite(written_s).sum() < FEWEST:
            log += math.log(SLIP / LONGEST_S)
            continue
        log += math.log(float(np.isfinite(written_s).mean()))
        rows.append(
            (written_s, seconds, _off(TIME_WITHIN * float(np.nanmean(written_s)), TIMED_WITHIN_S))
        )
    for outlet, seconds in observed.run_on_s.items():
        if outlet in foreseen.run_on_s:
            rows.append((foreseen.run_on_s[outlet], seconds, TIMED_WITHIN_S))
    for jugs in observed.jugs:
        used = np.sum(foreseen.step_m3[jugs.first : jugs.last + 1], axis=0)
        rows.append(
            (used, jugs.volume_m3, _off(VOLUME_WITHIN * float(np.nanmean(used)), jugs.sd_m3))
        )
    rows += _read(foreseen, observed)
    if not rows:
        return log
    cloud = np.array([row for row, _, _ in rows])
    whole = np.isfinite(cloud).all(axis=0)
    cloud = cloud[:, whole] if whole.sum() >= FEWEST else np.nan_to_num(cloud, nan=0.0)
    covariance = np.atleast_2d(np.cov(cloud)) + np.diag([sd**2 for _, _, sd in rows])
    off = np.array([value for _, value, _ in rows]) - cloud.mean(axis=1)
    return log + _log_student(off, covariance * (BROAD**2 if unknown else 1.0))


def _read(foreseen: Foreseen, observed: Observed) -> Iterator[tuple[Array, float, float]]:
    """Give what is foreseen of each reading, what was read, and how far apart they may be."""
    cause = foreseen.explanation.cause
    for read in observed.strengths:
        shares, own = foreseen.strength.get(read.outlet), SHARE_WITHIN
        if shares is None:
            shares = np.zeros(len(foreseen.step_m3[0]))
        if cause == UNKNOWN or foreseen.explanation.outlet == read.outlet:
            mean, own = ANY_SHARE
            shares = np.full(len(shares), mean)
        if cause == "weak product":
            own = STRETCHED
        yield shares, read.share, _off(own, read.sd)


def _off(*sds: float) -> float:
    return math.hypot(*sds)


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
