"""The outlets that are timed, against the best that full clouds of every explanation allow.

The plan chooses them by rules that cost nothing. Here the information that times carry of what went
wrong is worked out from what the engine foresees of every explanation, and the plan's choice is
compared with the outlets that tell most, chosen one after another.
"""

from collections.abc import Sequence
from pathlib import Path

import numpy as np
import numpy.typing as npt
import pytest

from tests.hindsight.bay_day import Bay
from wintertight.procedure.hindsight.diagnosis import cloud_of
from wintertight.procedure.hindsight.foreseen import Foreseen
from wintertight.procedure.telling import SHORTEST_S

Array = npt.NDArray[np.float64]

SAMPLES = 60
TIMED_SD_S, COUNTED_SD_M3 = 1.0, 0.38e-3
NEVER = -50.0


def nats(foreseen: Sequence[Foreseen], outlets: Sequence[str]) -> float:
    """Work out what times at some outlets, with the jugs, tell of the cause [nat].

    Samples of what each explanation foresees are weighed against all of them; outlets at which one
    explanation lets no colour come are told from others by that alone.
    """
    rng = np.random.default_rng(3)
    jugs = ((0, len(foreseen[0].step_m3) - 1),)
    rows = (*(("colour", outlet) for outlet in outlets), ("jugs", "0"))
    causes = np.array([f.explanation.cause for f in foreseen])
    chances = np.array([f.explanation.chance for f in foreseen])
    clouds = []
    for each in foreseen:
        cloud = cloud_of(each, rows, jugs)
        noise = [TIMED_SD_S if what == "colour" else COUNTED_SD_M3 for what, _ in cloud.rows]
        clouds.append((cloud.rows, cloud.mean, cloud.covariance + np.diag(np.square(noise))))
    told = 0.0
    for i, (known, mean, covariance) in enumerate(clouds):
        sample = rng.multivariate_normal(mean, covariance, SAMPLES)
        logs = np.full((len(clouds), SAMPLES), NEVER)
        for j, (theirs, centre, spread) in enumerate(clouds):
            if theirs == known:
                logs[j] = log_normal(sample - centre, spread)
        weights = np.exp(logs - logs.max(axis=0)) * chances[:, None]
        mine = causes == causes[i]
        after = weights[mine].sum(axis=0) / weights.sum(axis=0)
        told += chances[i] * float(np.mean(np.log(after / chances[mine].sum())))
    return told


def log_normal(off: Array, covariance: Array) -> Array:
    """Give the logarithm of a normal density up to a constant, shape (samples,)."""
    squared = np.einsum("ni,ij,nj->n", off, np.linalg.inv(covariance), off)
    return np.asarray(-0.5 * squared - 0.5 * np.linalg.slogdet(covariance)[1])


@pytest.mark.parametrize("coach", ["small-trailer", "middle-travel-trailer"])
def test_the_choice_tells_nearly_as_much_as_the_best(coach: str, tmp_path: Path) -> None:
    """Guards that the timed outlets carry 80 % of what the most telling ones would."""
    bay = Bay(coach, tmp_path)
    chosen = [p.step.outlet for p in bay.plan.steps if p.telling and p.step.outlet]
    due_s = {p.step.outlet: p.run.first_colour_s or 0.0 for p in bay.plan.steps if p.run}
    timed = [tap for tap in bay.taps if due_s[tap] >= SHORTEST_S]
    best: list[str] = []
    while len(best) < len(chosen):
        gains = {tap: nats(bay.foreseen, [*best, tap]) for tap in timed if tap not in best}
        best.append(max(gains, key=lambda tap: gains[tap]))
    ours, most = nats(bay.foreseen, chosen), nats(bay.foreseen, best)
    assert ours >= 0.8 * most
    assert ours > 1.1 * nats(bay.foreseen, [])
