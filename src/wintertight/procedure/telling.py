"""The few outlets whose first colour says most about all the rest.

They are chosen by expected information, one after another, each for what it adds to those chosen
before. A time may tell of a mistake: of hot and cold that run together through a fitting, whose
second side then has colour at once; of a heater that is not bypassed, when the first hot side
behind it comes late; of a fitting that was forgotten, when there is no time at all. And it tells of
the coach: how much its lines hold, and with them how many gallons it takes. Information is counted
in nats: for a mistake by how often it is met and by how far its times lie from the usual ones, for
the coach by how much narrower the times let its gallons be.
"""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from wintertight.coach.card import Card
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace
from wintertight.procedure.chances import (
    CHANCE,
    CROSSES,
    NOT_TIMED,
    NOT_TIMED_IF_FORGOTTEN,
    TIMED_WITHIN_S,
    forgotten_chances,
)
from wintertight.procedure.drawn import Drawn
from wintertight.procedure.ran import DrawnRun, Sizes, drawn_runs

Array = npt.NDArray[np.float64]

MOST = 4
"""Most outlets that are timed [1]; common practice."""

SHORTEST_S = 2.0
"""First colour that can be timed by hand takes at least this long [s]; common practice."""

MUCH_LATER_S = 10.0
"""By how much the first hot outlet behind a heater that is not bypassed is late [s]: the engine
says from ten seconds to never."""


@dataclass(frozen=True, eq=False, slots=True)
class _Mistake:
    """A mistake that times tell of: its chance, and how far it moves each outlet's time [1]."""

    chance: float
    moves: Mapping[str, float]


def telling_outlets(
    card: Card, network: CoachNetwork, trace: Trace, drawn: Drawn, strength: float
) -> frozenset[str]:
    """Give the outlets worth a stopwatch.

    Args:
        card: the coach's card.
        network: the coach at best values.
        trace: a replay in which each outlet ran.
        drawn: what each draw takes.
        strength: share of antifreeze in the undiluted product [1].

    Returns:
        Controls of at most four outlets; none where no colour takes long enough to be timed.
    """
    runs = drawn_runs(Sizes(drawn, network, network, strength), trace)
    taps = [
        run
        for run in runs
        if run.ran is not None and network.controls[run.seen.outlet].thing == "tap"
    ]
    timed = {
        run.seen.outlet: run.ran.colour_s
        for run in taps
        if run.ran is not None and (run.seen.first_colour_s or 0.0) >= SHORTEST_S
    }
    gallons = sum((r.passed_m3[:-1] for r in runs), np.zeros(len(drawn.pump)))
    spread_s = {o: math.hypot(TIMED_WITHIN_S, float(np.std(s))) for o, s in timed.items()}
    mistakes = [
        *_crossings(card, network, taps, spread_s),
        *_bypass(network, taps, spread_s),
    ]
    forgotten = forgotten_chances(card, {network.controls[r.seen.outlet].part for r in taps})
    part = {o: network.controls[o].part for o in timed}

    def nats(chosen: Sequence[str]) -> float:
        by_mistakes = sum(
            told(m.chance, math.sqrt(sum(m.moves.get(o, 0.0) ** 2 for o in chosen)))
            for m in mistakes
        )
        by_missing = sum(_told_by_missing(forgotten[p]) for p in {part[o] for o in chosen})
        return by_mistakes + by_missing + _narrowed(gallons, [timed[o] for o in chosen])

    chosen: list[str] = []
    while len(chosen) < MOST and len(chosen) < len(timed):
        told_with = {o: nats([*chosen, o]) for o in timed if o not in chosen}
        chosen.append(max(told_with, key=lambda o: (told_with[o], o)))
    return frozenset(chosen)


def _crossings(
    card: Card, network: CoachNetwork, taps: Sequence[DrawnRun], spread_s: Mapping[str, float]
) -> list[_Mistake]:
    """Give the fittings through which hot and cold may run together: the second side is early."""
    sides: dict[str, list[DrawnRun]] = {}
    for run in taps:
        sides.setdefault(network.controls[run.seen.outlet].part, []).append(run)
    crossing = [
        runs[1]
        for part, runs in sides.items()
        if card.fitting[part].kind in CROSSES and len(runs) > 1
    ]
    return [
        _Mistake(
            CHANCE["crossover"] / len(crossing),
            {o: (run.seen.first_colour_s or 0.0) / spread_s[o]},
        )
        for run in crossing
        if (o := run.seen.outlet) in spread_s
    ]


def _bypass(
    network: CoachNetwork, taps: Sequence[DrawnRun], spread_s: Mapping[str, float]
) -> list[_Mistake]:
    """Give the heater that may not be bypassed: the first outlet run on its hot side tells."""
    if not network.heater_ports:
        return []
    hot = [r.seen.outlet for r in taps if r.seen.outlet.endswith(".hot")]
    moves = {o: MUCH_LATER_S / spread_s[o] for o in hot[:1] if o in spread_s}
    return [_Mistake(CHANCE["wrong bypass"], moves)]


def _told_by_missing(chance: float) -> float:
    """Give what it tells whether a time was written down at all [1]."""
    return _between(chance, NOT_TIMED, NOT_TIMED_IF_FORGOTTEN)


def _between(chance: float, usually: float, then: float) -> float:
    """Give what a yes or no tells of a thing that changes how often it is yes [1]."""
    yes = (1.0 - chance) * usually + chance * then
    whole = _entropy(yes)
    return whole - (1.0 - chance) * _entropy(usually) - chance * _entropy(then)


def _entropy(chance: float) -> float:
    inside = 0.0 < chance < 1.0
    return -chance * math.log(chance) - (1.0 - chance) * math.log1p(-chance) if inside else 0.0


@lru_cache(maxsize=4096)
def told(chance: float, apart: float) -> float:
    """Give what a value tells of a mistake that moves it.

    Args:
        chance: how often the mistake is met [1].
        apart: by how many standard deviations it moves the value [1].

    Returns:
        Mutual information [1], in nats: from 0 up to the entropy of the mistake.

    Example:
        >>> round(told(0.5, 100.0), 3)  # a fair coin, seen plainly: ln 2
        0.693
        >>> told(0.02, 0.0)
        0.0
    """
    if apart == 0.0:
        return 0.0
    x = np.linspace(-9.0, apart + 9.0, 1801)
    usual, moved = (np.exp(-0.5 * (x - at) ** 2) / math.sqrt(2.0 * math.pi) for at in (0.0, apart))
    both = (1.0 - chance) * usual + chance * moved
    tells = (1.0 - chance) * _times_log(usual, both) + chance * _times_log(moved, both)
    return float(tells.sum() * (x[1] - x[0]))  # both ends are nought


def _times_log(some: Array, both: Array) -> Array:
    tiny = np.finfo(float).tiny
    return np.asarray(some * (np.log(np.maximum(some, tiny)) - np.log(np.maximum(both, tiny))))


def _narrowed(gallons: Array, times_s: Sequence[Array]) -> float:
    """Give what times tell of the gallons, both taken as normal [1]."""
    if not times_s:
        return 0.0
    seen = np.array(times_s)
    cov = np.atleast_2d(np.cov(seen)) + TIMED_WITHIN_S**2 * np.eye(len(seen))
    with_gallons = np.array([np.cov(row, gallons)[0, 1] for row in seen])
    explained = float(with_gallons @ np.linalg.solve(cov, with_gallons)) / float(np.var(gallons))
    return -0.5 * math.log1p(-min(explained, 1.0 - 1e-9))
