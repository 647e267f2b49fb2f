"""How long the anode rod of a heater lasts: readings of several years, and a band for what is left.

The share of a rod that is eaten grows evenly with the seasons, a season being a year of use, and
never shrinks. One heater eats every rod at the same rate, for its water and its use stay the same.
What is known of the rate before any reading is common practice: a rod lasts one to five years. A
rod that was not new when it was first looked at may have been eaten to any share.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Literal

import numpy as np
import numpy.typing as npt

from wintertight.coach.card import Card, Fitting
from wintertight.coach.faults import printable
from wintertight.errors import ChoiceError, Place, RecordError
from wintertight.procedure.bands import Band
from wintertight.procedure.instruments import check_reading, share_eaten
from wintertight.procedure.record import REPLACE_ANODE, Event, Record

Array = npt.NDArray[np.float64]
When = Literal["now", "next autumn", "not yet", "unknown"]
WearKey = Literal["at half", "half before autumn", "half after autumn", "lasts", "no reading",
                  "no reading: tank not said", "goes down"]  # fmt: skip
NoAnodeKey = Literal[
    "aluminum", "stainless steel", "on-demand heater", "hydronic coil", "not looked at", "no heater"
]

WORN_OUT = 0.5
"""Share eaten at which a rod is replaced [1]; common practice."""

SHORTEST, LONGEST = 1.0, 5.0
"""Seasons that a rod lasts; common practice. One in ten goes faster, one in ten lasts longer."""

TENTH = 1.2815515655446004
"""Standard deviations from the middle of a normal law to its outer tenth [1]."""

LEAST_SD = 0.02
"""No eye, rule or scale tells the share of a pitted rod closer than this [1]; common practice."""

TOO_LOW = 2.0
"""A reading so many standard deviations below an earlier one is of another rod, or wrong [1]."""

TINY = 1e-300
YEAR_DAYS = 365.25
PLUG_OUT = "plug-out:"
"""In front of the heater in the id of the step at which a rod comes out."""

LEAST_RATE, MOST_RATE = 0.01, 6.0
"""Shares eaten in a season between which a rate is looked for [1]."""

POINTS = 150
"""First shares, and rates, that are told apart in each of two looks, the second a closer one."""

NOTHING = 1e-7
"""Weight beside the largest from which on a first share or a rate is left out [1]."""


@dataclass(frozen=True, slots=True)
class RodReading:
    """One look at an anode rod.

    Attributes:
        on: the day.
        share: share eaten [1].
        sd: its standard deviation [1].
        new: whether a new rod stood in the heater from then on.
    """

    on: date
    share: float
    sd: float
    new: bool = False


Rod = tuple[RodReading, ...]
"""The looks at one rod, in order; the first may be the day it was put in."""


@dataclass(frozen=True, slots=True)
class Anode:
    """What is known of the anode of one heater.

    Attributes:
        part: id of the heater.
        readings: all looks at its rods, in order.
        share_now: band of the share eaten [1]; None where nothing is known.
        seasons_left: band of seasons until half is eaten [1]; None where nothing is known.
        chance: chance that half is eaten a season from now [1]; None where nothing is known.
        replace: when to replace it.
        why: key of the sentence.
    """

    part: str
    readings: tuple[RodReading, ...]
    share_now: Band | None
    seasons_left: Band | None
    chance: float | None
    replace: When
    why: WearKey


@dataclass(frozen=True, slots=True)
class Wear:
    """The anodes of a coach.

    Attributes:
        on: the day of which it speaks; None where no record gives one.
        anodes: one for each heater that has, or may have, an anode.
        without: heaters that have none, "" where the coach has no heater at all, and why.
    """

    on: date | None
    anodes: tuple[Anode, ...]
    without: tuple[tuple[str, NoAnodeKey], ...]


def wear_of(card: Card, records: Sequence[tuple[str, Record]], on: date | None = None) -> Wear:
    """Work out how much of each anode is eaten, and how long it lasts.

    Args:
        card: the coach's card.
        records: names of the records' files, and what they say; of any year, of any state of the
            card.
        on: the day of which to speak; that of the last record where None.

    Returns:
        The anodes.

    Raises:
        RecordError: a reading of no heater with an anode, without its day, or that cannot be.
        ChoiceError: the day is before a reading.
    """
    looks: dict[str, list[RodReading]] = {}
    for part, reading in _looks(card, records):
        looks.setdefault(part, []).append(reading)
    days = [r.started.date() for _, r in records if r.started is not None]
    now = on or max(days, default=None)
    last = max((look.on for some in looks.values() for look in some), default=None)
    if now is not None and last is not None and now < last:
        message = f"expected a day on or after the last reading, {last.isoformat()}"
        raise ChoiceError(message)
    anodes = tuple(
        anode_of(heater.id, tuple(sorted(looks.get(heater.id, ()), key=lambda k: k.on)), now,
                 said=heater.tank is not None)
        for heater in card.fittings
        if may_have_anode(heater)
    )  # fmt: skip
    return Wear(now, anodes, tuple(_without(card)))


def may_have_anode(fitting: Fitting) -> bool:
    """Tell whether a fitting is a tank heater that has an anode, or of which the card is silent."""
    tank = fitting.kind == "tank heater" and fitting.seen == "present"
    return tank and fitting.tank in {"steel with anode", None}


def _without(card: Card) -> Iterator[tuple[str, NoAnodeKey]]:
    """Give the heaters without an anode, and why."""
    heaters = [
        f
        for f in card.fittings
        if f.seen != "absent" and f.kind in {"tank heater", "on-demand heater", "hydronic coil"}
    ]
    if not heaters:
        yield "", "no heater"
    for heater in heaters:
        if heater.seen == "not looked at":
            yield heater.id, "not looked at"
        elif heater.kind == "on-demand heater":
            yield heater.id, "on-demand heater"
        elif heater.kind == "hydronic coil":
            yield heater.id, "hydronic coil"
        elif heater.tank == "aluminum":
            yield heater.id, "aluminum"
        elif heater.tank == "stainless steel":
            yield heater.id, "stainless steel"


# ---- what the records say ------------------------------------------------------------------


def _looks(card: Card, records: Sequence[tuple[str, Record]]) -> Iterator[tuple[str, RodReading]]:
    """Give every look at a rod; a record that is given twice counts once."""
    seen: list[tuple[object, Event]] = []
    for name, record in records:
        for event in record.in_order():
            if event.result != "done" or (record.started, event) in seen:
                continue
            check_reading(event, name)
            eaten = share_eaten(event.reading) if event.reading is not None else None
            replaced = event.action == REPLACE_ANODE
            if eaten is None and not replaced:
                continue
            seen.append((record.started, event))
            part = _heater_of(card, event, name)
            if record.started is None:
                message = "expected the day of the record, for it has a reading of an anode"
                raise RecordError(message, Place(name, None, "started"))
            on = record.started.date()
            if eaten is not None and eaten[0] > 0.0:
                yield part, RodReading(on, eaten[0], max(LEAST_SD, eaten[1]))
            if replaced or (eaten is not None and eaten[0] == 0.0):
                yield part, RodReading(on, 0.0, 0.0, new=True)


def _heater_of(card: Card, event: Event, name: str) -> str:
    """Give the heater of whose rod an event speaks: its part, its step's, or the only one."""
    having = [f.id for f in card.fittings if may_have_anode(f)]
    field, part = "part", event.part
    if part is None and event.step is not None and event.step.startswith(PLUG_OUT):
        field, part = "step", event.step.removeprefix(PLUG_OUT)
    if part is None and len(having) == 1:
        return having[0]
    if part in having:
        return str(part)
    there = f"expected {' or '.join(having)}" if having else "by the card no heater here has one"
    message = f"no anode is known at '{part or 'nothing'}'; {there}"
    where = f"events[{event.id}].{field}"
    raise RecordError(printable(message), Place(name, None, printable(where)))


# ---- how long a rod lasts ------------------------------------------------------------------


def anode_of(
    part: str, readings: tuple[RodReading, ...], now: date | None, *, said: bool = True
) -> Anode:
    """Work out one anode from the looks at its rods.

    Args:
        part: id of the heater.
        readings: all looks, in order of time.
        now: the day of which to speak, not before the last look.
        said: whether the card says that the heater has an anode.

    Returns:
        The anode. Nothing is said of a rod nobody has looked at, nor of one that seems to grow.
    """
    if not readings or now is None:
        why: WearKey = "no reading" if said else "no reading: tank not said"
        return Anode(part, readings, None, None, None, "unknown", why)
    *earlier, present = _rods(readings)
    if _goes_down(present):
        return Anode(part, readings, None, None, None, "unknown", "goes down")
    known = _posterior(present, [rod for rod in earlier if not _goes_down(rod)])
    rates, weights = known.rates, known.weights
    share = np.minimum(1.0, known.starts[:, None] + rates * _seasons(present[0].on, now))
    left = np.maximum(0.0, (WORN_OUT - share) / rates)
    chance, after = (float(weights[share + n * rates >= WORN_OUT].sum()) for n in (1.0, 2.0))
    share_now = _band(share, weights)
    at_half = max(share_now.p50, present[-1].share) >= WORN_OUT
    replace, why = _when(chance, after, at_half=at_half)
    return Anode(part, readings, share_now, _band(left, weights), chance, replace, why)


def _when(chance: float, after: float, *, at_half: bool) -> tuple[When, WearKey]:
    """Give when to replace a rod: sooner rather than later where chances are even."""
    if at_half:
        return "now", "at half"
    if chance >= 0.5:  # noqa: PLR2004 - even chances
        return "now", "half before autumn"
    if after >= 0.5:  # noqa: PLR2004 - even chances
        return "next autumn", "half after autumn"
    return "not yet", "lasts"


def _rods(readings: tuple[RodReading, ...]) -> list[Rod]:
    """Part readings into rods: a new one begins each time one was put in."""
    rods: list[Rod] = [()]
    for reading in readings:
        if reading.new and rods[-1]:
            rods.append(())
        rods[-1] += (reading,)
    return rods


def _goes_down(rod: Rod) -> bool:
    return any(
        earlier.share - later.share > TOO_LOW * float(np.hypot(earlier.sd, later.sd))
        for i, later in enumerate(rod)
        for earlier in rod[:i]
    )


def _seasons(start: date, end: date) -> float:
    return (end - start).days / YEAR_DAYS


@lru_cache(maxsize=1)
def prior_rate() -> Band:
    """Give the band of the share eaten in a season before any reading [1]; common practice."""
    rates = np.geomspace(LEAST_RATE, MOST_RATE, POINTS)
    return _band(rates, np.exp(_log_prior(rates)))


def _log_prior(rates: Array) -> Array:
    """Give the log of what is known of rates before any reading, on even steps of their log.

    A log-normal law of which a tenth lies on either side of ``SHORTEST`` and ``LONGEST``.
    """
    middle = -0.5 * (np.log(SHORTEST) + np.log(LONGEST))
    width = 0.5 * (np.log(LONGEST) - np.log(SHORTEST)) / TENTH
    return np.asarray(-0.5 * ((np.log(rates) - middle) / width) ** 2)


@dataclass(frozen=True, eq=False, slots=True)
class _Known:
    """What is known of the present rod: first shares [1], rates [1], and their weights [1]."""

    starts: Array
    rates: Array
    weights: Array


def _posterior(present: Rod, earlier: Sequence[Rod]) -> _Known:
    """Weigh first shares of the present rod and rates; earlier rods speak of the rate alone."""
    starts = _starts(present)
    rates = np.geomspace(LEAST_RATE, MOST_RATE, POINTS)
    coarse = _weights(present, earlier, starts, rates)
    starts = np.linspace(*_ends(starts, coarse.sum(axis=1)), POINTS if len(starts) > 1 else 1)
    rates = np.geomspace(*_ends(rates, coarse.sum(axis=0)), POINTS)
    return _Known(starts, rates, _weights(present, earlier, starts, rates))


def _starts(rod: Rod) -> Array:
    """Give shares that may have been eaten at the first look: none of a new rod, else any [1]."""
    return np.zeros(1) if rod[0].new else np.linspace(0.0, 1.0, POINTS)


def _ends(points: Array, weights: Array) -> tuple[float, float]:
    """Give the ends between which all weight lies, two points farther out than it seems."""
    counted = np.flatnonzero(weights > NOTHING * weights.max())
    low, high = max(0, counted[0] - 2), min(len(points) - 1, counted[-1] + 2)
    return float(points[low]), float(points[high])


def _weights(present: Rod, earlier: Sequence[Rod], starts: Array, rates: Array) -> Array:
    """Weigh first shares and rates, shape (starts, rates), adding up to 1."""
    log_rates = _log_prior(rates)
    for rod in earlier:
        past = _log_likelihood(rod, _starts(rod), rates)
        log_rates = log_rates + past.max() + np.log(np.exp(past - past.max()).mean(axis=0) + TINY)
    total = _log_likelihood(present, starts, rates) + log_rates
    weights = np.exp(total - total.max())
    return np.asarray(weights / weights.sum())


def _log_likelihood(rod: Rod, starts: Array, rates: Array) -> Array:
    """Give the log likelihood of the readings of a rod, shape (starts, rates)."""
    found = np.zeros((len(starts), len(rates)))
    for reading in rod:
        if not reading.new:
            share = np.minimum(1.0, starts[:, None] + rates * _seasons(rod[0].on, reading.on))
            found -= 0.5 * ((reading.share - share) / reading.sd) ** 2
    return found


def _band(values: Array, weights: Array) -> Band:
    """Give the band of weighted values."""
    order = np.argsort(values, axis=None)
    sorted_weights = weights.ravel()[order] / weights.sum()
    below = np.cumsum(sorted_weights) - 0.5 * sorted_weights
    low, middle, high = np.interp([0.05, 0.5, 0.95], below, values.ravel()[order])
    return Band(float(low), float(middle), float(high))
