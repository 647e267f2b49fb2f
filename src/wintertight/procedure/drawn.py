"""Coaches that fit the same card: what it leaves open, drawn four thousand times.

Lengths and hollows scatter by the spread the card gives each of them. A tube's wall lies anywhere
within the tolerance of its standard; lines of one size and material come from one roll and share
it. Nobody knows how well fittings mix what flows through them: the number of laminar runs lies
between half of them and all. A label's share of antifreeze is right to two hundredths.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.coach.card import Card
from wintertight.coach.tubing import bore

Array = npt.NDArray[np.float64]

DRAWS = 4000
SEED = 20_240_901

COUNTING_SPREAD = 0.15
"""Standard deviation of how a technician counts run-on, relative [1]; common practice."""

SEEING_S = (1.0, 1.0)
"""Mean and standard deviation of the time until colour is seen and the count begins [s]."""

PUMP_SPREAD = 0.075
"""Standard deviation of a pump's flow, relative [1]; common practice."""

PRINTED_WITHIN = 0.02
"""How far a printed share of antifreeze may be off: two standard deviations, as a share of the
volume [1]; common practice."""

HALF = 0.5
"""A spread is two standard deviations."""


@dataclass(frozen=True, eq=False)
class Drawn:
    """What each draw takes; 1 is the card's best value at the largest bore.

    Attributes:
        lines: factor on the volume of each line and hollow, by part; shape (draws,) each.
        bores_m: bore of each line [m], by part; shape (draws,) each.
        mixing: place of the number of laminar runs between half of the fittings (0) and all of
            them (1), shape (draws,).
        pump: factor on the flow, shape (draws,).
        counting: factor on run-on, shape (draws,).
        seeing_s: delay before the count begins [s], shape (draws,).
        product: antifreeze in the product, beyond what is printed, as a share of the volume [1],
            shape (draws,).
    """

    lines: Mapping[str, Array]
    bores_m: Mapping[str, Array]
    mixing: Array
    pump: Array
    counting: Array
    seeing_s: Array
    product: Array


def draw(card: Card, draws: int = DRAWS, seed: int = SEED) -> Drawn:
    """Draw coaches that fit a card.

    Args:
        card: the card; each length, bore and volume scatters by its own spread.
        draws: how many [1].
        seed: of the random numbers; the same seed gives the same draws.

    Returns:
        What each draw takes.

    Sources: astm-f876; astm-b88-type-l; astm-b88-type-m; astm-d3309 (the walls); common-practice
    """
    rng = np.random.default_rng(seed)
    spreads = {line.id: (line.volume or line.length).spread for line in card.lines}
    for fitting in card.fittings:
        spreads[fitting.id] = fitting.volume.spread if fitting.volume else 0.25
    sizes = {part: _factor(spread, rng, draws) for part, spread in sorted(spreads.items())}
    pump = np.clip(1.0 + PUMP_SPREAD * rng.standard_normal(draws), 0.5, 1.5)
    counting = np.clip(1.0 + COUNTING_SPREAD * rng.standard_normal(draws), 0.5, 2.0)
    seeing_s = np.clip(SEEING_S[0] + SEEING_S[1] * rng.standard_normal(draws), 0.0, 5.0)
    bores_m = _bores_m(card, rng, draws)
    for line in card.lines:
        if line.volume is None:
            sizes[line.id] = sizes[line.id] * (bores_m[line.id] / line.largest_bore_m) ** 2
    off = HALF * PRINTED_WITHIN * rng.standard_normal(draws)
    mixing = rng.uniform(0.0, 1.0, draws)
    return Drawn(sizes, bores_m, mixing, pump, counting, seeing_s, np.asarray(off))


def _bores_m(card: Card, rng: np.random.Generator, draws: int) -> dict[str, Array]:
    """Draw the bore of each line [m]: from its tube's wall, or by the spread of its own value."""
    walls: dict[tuple[str, str], Array] = {}
    for key in sorted({(line.size, line.material) for line in card.lines if line.bore is None}):
        tube = bore(*key)
        wall_m = rng.uniform(tube.thinnest_wall_m, tube.thickest_wall_m, draws)
        walls[key] = np.asarray(tube.outside_m - 2.0 * wall_m)
    return {
        line.id: (
            line.bore.value * _factor(line.bore.spread, rng, draws)
            if line.bore
            else walls[line.size, line.material]
        )
        for line in sorted(card.lines, key=lambda line: line.id)
    }


def _factor(spread: float, rng: np.random.Generator, draws: int) -> Array:
    """Draw a factor about 1 by a spread of two standard deviations [1], shape (draws,)."""
    return np.clip(1.0 + HALF * spread * rng.standard_normal(draws), 0.2, 3.0)
