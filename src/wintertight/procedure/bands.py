"""Gallons and minutes with their bands, for many coaches that fit the same card.

The engine gives volumes and seconds at best values; each draw, worked out with all others at once,
makes more or less of them (see ``drawn`` and ``ran``). A test compares draws with full replays of
networks built from the drawn values.
"""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.flow.replay import Trace
from wintertight.procedure.drawn import DRAWS, SEED, Drawn
from wintertight.procedure.handling import HANDLING_SPREAD
from wintertight.procedure.ran import Sizes, ran
from wintertight.procedure.steps import PlannedStep

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Band:
    """Five, fifty and ninety-five per cent points of a quantity."""

    p05: float
    p50: float
    p95: float

    @classmethod
    def of(cls, draws: Array) -> "Band":
        """Give the band of some draws."""
        low, middle, high = np.quantile(draws, [0.05, 0.5, 0.95])
        return cls(float(low), float(middle), float(high))


@dataclass(frozen=True, eq=False)
class FillDraws:
    """What each draw uses: antifreeze [m3] and seconds of running [s], shape (draws,)."""

    antifreeze_m3: Array
    running_s: Array


def fill_draws(drawn: Drawn, trace: Trace, strength: float) -> FillDraws:
    """Work out what the filling takes in each draw.

    Args:
        drawn: what each draw takes.
        trace: the replay at best values; its runs give volumes, flows and run-on.
        strength: share of antifreeze in the undiluted product [1].

    Returns:
        Antifreeze [m3] and seconds of running [s].
    """
    sizes = Sizes(drawn, trace.network, trace.network, strength)
    volume, seconds = np.zeros(len(drawn.pump)), np.zeros(len(drawn.pump))
    before = trace.start
    for moment in trace.moments:
        seen, until = moment.outcome.run, moment.action.until
        if seen is not None and until is not None and until.volume_m3 is not None:
            # What was measured is what was used, whatever the lines are.
            volume += seen.given_m3 / strength
            seconds += seen.seconds / sizes.flow(seen.flow_m3_s)
        found = ran(sizes, moment, before)
        if found is not None:
            volume += found.colour_m3 + found.on_m3
            seconds += found.seconds
        if moment.action.verb == "pour":
            volume += moment.action.volume_m3
        before = moment.state
    return FillDraws(volume, seconds)


def handling_draws(steps: tuple[PlannedStep, ...], draws: int = DRAWS, seed: int = SEED) -> Array:
    """Draw the hands-on time of all steps [s], shape (draws,)."""
    rng = np.random.default_rng(seed + 1)
    best = np.array([s.handling_s for s in steps])
    factors = np.exp(HANDLING_SPREAD * rng.standard_normal((draws, len(best))))
    return np.asarray(factors @ best)
