"""Gallons and minutes with their bands, for many coaches that fit the same card.

Each draw is one coach the card could mean: its lines are longer or shorter, its pump weaker or
stronger, the technician counts faster or slower. All draws are worked at once: the volume at which
colour shows at an outlet grows with the volume of what still had to be filled on its way, and what
runs after it with the flow. The engine gives both at best values; a test compares draws with
full replays of networks built from the drawn lengths.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.coach.card import Card
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace
from wintertight.flow.state import State
from wintertight.flow.stream import AIR
from wintertight.procedure.handling import HANDLING_SPREAD
from wintertight.procedure.steps import PlannedStep

Array = npt.NDArray[np.float64]

DRAWS = 4000
SEED = 20_240_901

COUNTING_SPREAD = 0.15
"""Standard deviation of how a technician counts run-on, relative [1]; common practice."""

SEEING_S = (1.0, 1.0)
"""Mean and standard deviation of the time until colour is seen and the count begins [s]."""

PUMP_SPREAD = 0.075
"""Standard deviation of a pump's flow, relative [1]; common practice."""

HALF = 0.5
"""A spread is two standard deviations."""


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
class Drawn:
    """Relative sizes in each draw: 1 is the card's best value.

    Attributes:
        lines: factor on the volume of each line and hollow, by part; shape (draws,) each.
        pump: factor on the flow, shape (draws,).
        counting: factor on run-on, shape (draws,).
        seeing_s: delay before the count begins [s], shape (draws,).
    """

    lines: Mapping[str, Array]
    pump: Array
    counting: Array
    seeing_s: Array


def draw(card: Card, draws: int = DRAWS, seed: int = SEED) -> Drawn:
    """Draw coaches that fit a card.

    Args:
        card: the card; each length and volume scatters by its own spread.
        draws: how many [1].
        seed: of the random numbers; the same seed gives the same draws.

    Returns:
        Relative sizes.
    """
    rng = np.random.default_rng(seed)
    spreads = {line.id: line.length.spread for line in card.lines}
    for fitting in card.fittings:
        spreads[fitting.id] = fitting.volume.spread if fitting.volume else 0.25
    return Drawn(
        lines={
            part: np.clip(1.0 + HALF * spread * rng.standard_normal(draws), 0.2, 3.0)
            for part, spread in sorted(spreads.items())
        },
        pump=np.clip(1.0 + PUMP_SPREAD * rng.standard_normal(draws), 0.5, 1.5),
        counting=np.clip(1.0 + COUNTING_SPREAD * rng.standard_normal(draws), 0.5, 2.0),
        seeing_s=np.clip(SEEING_S[0] + SEEING_S[1] * rng.standard_normal(draws), 0.0, 5.0),
    )


@dataclass(frozen=True, eq=False)
class FillDraws:
    """What each draw uses: antifreeze [m3] and seconds of running [s], shape (draws,)."""

    antifreeze_m3: Array
    running_s: Array


def fill_draws(drawn: Drawn, trace: Trace, strength: float) -> FillDraws:
    """Work out what the filling takes in each draw.

    Args:
        drawn: relative sizes.
        trace: the replay at best values; its runs give volumes, flows and run-on.
        strength: share of antifreeze in the undiluted product [1].

    Returns:
        Antifreeze [m3] and seconds of running [s].
    """
    draws = len(drawn.pump)
    volume, seconds = np.zeros(draws), np.zeros(draws)
    before = trace.start
    for moment in trace.moments:
        seen, until = moment.outcome.run, moment.action.until
        if seen is not None and until is not None and until.volume_m3 is not None:
            # What was measured is what was used, whatever the lines are.
            volume += _drawn_in_m3(before, moment.state, strength)
            seconds += seen.seconds / drawn.pump
        elif seen is not None and until is not None and seen.first_colour_m3 is not None:
            longer = _longer(drawn, trace.network, before, seen.way, strength)
            colour_s = (seen.first_colour_s or 0.0) * longer / drawn.pump
            on_s = (until.run_on_s or 0.0) * drawn.counting + drawn.seeing_s
            volume += seen.first_colour_m3 * longer + on_s * drawn.pump * seen.flow_m3_s
            seconds += colour_s + on_s
        if moment.action.verb == "pour":
            volume += moment.action.volume_m3
        before = moment.state
    return FillDraws(volume, seconds)


def _drawn_in_m3(before: State, after: State, strength: float) -> float:
    """Give how much product came in between two states [m3]."""
    came = after.books.came_in - before.books.came_in
    return float(came[1:-1].sum()) / strength


def _longer(
    drawn: Drawn, network: CoachNetwork, before: State, way: tuple[str, ...], strength: float
) -> Array:
    """Give the factor on the volume that has to be filled on the way to an outlet."""
    total, best = np.zeros(len(drawn.pump)), 0.0
    for link in way:
        held = before.held.get(link)
        if held is None:
            continue
        shares = held.mean()
        still_to_fill = held.volume_m3 * max(0.0, 1.0 - float(shares[:AIR].sum()) / strength)
        best += still_to_fill
        total += still_to_fill * drawn.lines[network.links[link].part]
    return np.asarray(total / best) if best > 0.0 else np.ones(len(drawn.pump))


def handling_draws(steps: tuple[PlannedStep, ...], draws: int = DRAWS, seed: int = SEED) -> Array:
    """Draw the hands-on time of all steps [s], shape (draws,)."""
    rng = np.random.default_rng(seed + 1)
    best = np.array([s.handling_s for s in steps])
    factors = np.exp(HANDLING_SPREAD * rng.standard_normal((draws, len(best))))
    return np.asarray(factors @ best)
