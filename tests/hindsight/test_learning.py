"""What visits teach, against the closed form and against coaches that EPANET fills."""

from pathlib import Path

import numpy as np
import pytest
from scipy.stats import binom

from tests.hindsight.bay_day import Bay, teach
from wintertight.procedure.chances import AS_RECORDED
from wintertight.procedure.hindsight.diagnosis import VOLUME_WITHIN
from wintertight.procedure.hindsight.explanations import Explanation
from wintertight.procedure.hindsight.foreseen import Foreseen
from wintertight.procedure.hindsight.learning import Visit, learn
from wintertight.procedure.hindsight.observed import Jugs, Observed

COACHES = 100


def linear(draws: int = 40_000) -> tuple[Foreseen, dict[str, np.ndarray]]:
    """Give a job whose time and jugs hang linearly on two normal unknowns."""
    rng = np.random.default_rng(4)
    a, b = rng.normal(20.0, 4.0, draws), rng.normal(10.0, 2.0, draws)
    jugs = (2.0 * a + b) * 1e-3
    usual = Foreseen(Explanation(AS_RECORDED, chance=1.0), {"x": a}, {"x": a}, {}, (jugs,), {})
    return usual, {"a": a, "b": b}


def test_it_is_the_posterior_of_the_linear_case() -> None:
    """Guards the update against the normal posterior in closed form, means and bands."""
    usual, unknown = linear()
    observed = Observed({"x": 24.0}, jugs=(Jugs(0, 0, 60e-3, 1e-3),))
    learned = learn([Visit(observed, usual)], unknown)
    assert learned is not None
    prior = np.diag([4.0**2, 2.0**2])
    seen = np.array([[1.0, 0.0], [2e-3, 1e-3]])
    sds = np.array([np.hypot(1.0, 0.1 * 20.0), np.hypot(1e-3, VOLUME_WITHIN * 50e-3)])
    gain = prior @ seen.T @ np.linalg.inv(seen @ prior @ seen.T + np.diag(sds**2))
    mean = np.array([20.0, 10.0]) + gain @ (np.array([24.0, 60e-3]) - seen @ [20.0, 10.0])
    covariance = prior - gain @ seen @ prior
    for i, name in enumerate("ab"):
        after, sd = learned.quantities[name].after, np.sqrt(covariance[i, i])
        assert after.p50 == pytest.approx(mean[i], abs=0.05)
        assert after.p95 - after.p05 == pytest.approx(2 * 1.645 * sd, rel=0.03)


def test_a_slip_of_the_stopwatch_does_not_teach_nonsense() -> None:
    """Guards that one time far off all the rest moves what is learned by less than it says."""
    usual, unknown = linear()
    jugs = (Jugs(0, 0, 50e-3, 1e-3),)
    fair = learn([Visit(Observed({"x": 20.0}, jugs=jugs), usual)], unknown)
    slip = learn([Visit(Observed({"x": 60.0}, jugs=jugs), usual)], unknown)
    assert fair is not None
    assert slip is not None
    assert slip.far_off == ((0, ("colour", "x")),)
    moved = slip.quantities["a"].after.p50 - fair.quantities["a"].after.p50
    assert abs(moved) < 2.0  # half a standard deviation of what was not known before
    assert slip.quantities["a"].width > fair.quantities["a"].width


def test_nothing_observed_teaches_nothing() -> None:
    """Guards that no band narrows by itself."""
    usual, unknown = linear(100)
    assert learn([Visit(Observed({}), usual)], unknown) is None


def test_visits_narrow_gallons_and_the_band_holds(tmp_path: Path) -> None:
    """Guards width after one and three visits, and that a 90 % band holds 9 times in ten."""
    taught = teach(Bay("middle-travel-trailer", tmp_path), COACHES)
    assert taught[1][0] <= 0.7
    assert taught[3][0] <= 0.5
    assert taught[3][0] < taught[1][0]
    # So few coaches cannot tell 87 from 93 %: refused is what either of them makes unlikely. The
    # thousand coaches are `make soak`'s.
    for _, hits in taught.values():
        assert binom.ppf(0.005, COACHES, 0.87) <= hits <= binom.ppf(0.995, COACHES, 0.93)


def test_a_job_gone_otherwise_is_no_teacher(tmp_path: Path) -> None:
    """Guards that a visit which does not fit the record leaves the coach's bands alone."""
    bay = Bay("middle-travel-trailer", tmp_path)
    low_point = next(m for m in bay.made() if m.cause == "low point open")
    observed = next(bay.days(low_point, np.random.default_rng(1)))
    first = bay.causes(observed)[0]
    assert first.explanation.cause == "low point open"
    assert first.fits > 0.5
