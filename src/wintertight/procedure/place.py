"""Which methods are possible at a place of work, what stands in the way, what takes longer there.

Two effects are kept apart. What *hinders* makes a method impossible there as it is planned. What
*costs* makes it take longer: plugging in, carrying water, driving to a dump. Every number of
seconds here is common practice of the trade, no source.

The coach's own plumbing is no subject here: whether a coach has the inlet or the pump that a method
needs is said when the method is worked out.
"""

import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from itertools import product
from types import MappingProxyType
from typing import Literal

from wintertight.coach.card import Card
from wintertight.coach.place import Place, PlaceKind
from wintertight.errors import ChoiceError
from wintertight.flow.slopes import LEAST_SLOPE
from wintertight.flow.tilt import Tilt
from wintertight.procedure.methods.table import METHODS

Effect = Literal["hinders", "costs"]
Value = float | str

KEYS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "door too low": ("door_m", "coach_m"),
        "door may be too low": (),
        "water has nowhere to go": (),
        "no compressor": (),
        "no power for the compressor": (),
        "no 12 volts": (),
        "pump cannot run dry": (),
        "plug in": (),
        "check battery": (),
        "set up generator": (),
        "generator outside": (),
        "no warmth": (),
        "bring warm air": (),
        "dump elsewhere": (),
        "carry water": (),
        "bring basins": (),
        "measure slope": (),
    }
)
"""Every key of a hindrance, and the names of its parameters."""

COSTS_S: Mapping[str, float] = MappingProxyType(
    {
        "door may be too low": 300.0,
        "pump cannot run dry": 300.0,
        "plug in": 120.0,
        "check battery": 120.0,
        "set up generator": 600.0,
        "generator outside": 300.0,
        "bring warm air": 900.0,
        "dump elsewhere": 2400.0,
        "carry water": 600.0,
        "bring basins": 300.0,
        "measure slope": 180.0,
    }
)
"""Time each cost takes [s]; common practice."""

DOOR_CLEARANCE_M = 0.1
"""Least room above a coach in a door [m]: about four inches; common practice."""

ON_THE_PUMP = frozenset({"pump", "air-then-pump"})
"""Methods in which the coach's own pump brings the antifreeze in."""

BY_COMPRESSOR = frozenset({"air", "air-then-pump"})
FILLING = frozenset({"pump", "hand-pump", "air-then-pump"})
"""Methods in which antifreeze comes out of every outlet, some of it beside the drains."""

RUNS_DRY = frozenset({"hand-pump", "air", "drain"})
"""Methods in which the pump only runs dry for a moment, so that its line empties."""

EMPTIES_WASTE = frozenset(METHODS) - {"hold", "thaw"}
"""Methods that end with empty waste tanks. A hold is over long before they freeze."""

BY_GRAVITY = frozenset({"hand-pump", "air", "drain", "hold"})
"""Methods whose proof leans on what gravity takes out."""

STEEPEST_UNMEASURED: Mapping[PlaceKind, float] = MappingProxyType(
    {"bay": 0.02, "lot": 0.03, "yard": 0.05, "driveway": 0.08}
)
"""How far a floor may slope that nobody has measured, either way [1]; common practice."""


@dataclass(frozen=True, slots=True)
class Hindrance:
    """One thing that makes a method impossible at a place, or take longer.

    Attributes:
        key: one of `KEYS`.
        effect: hinders or costs.
        seconds: time it takes more [s]; 0 for what hinders.
        params: what the sentence needs, by the names in `KEYS`.
        assumed: does it rest on what such a place usually has, and nobody wrote down?
    """

    key: str
    effect: Effect
    seconds: float = 0.0
    params: Mapping[str, Value] = field(default_factory=lambda: MappingProxyType({}))
    assumed: bool = False


@dataclass(frozen=True, slots=True)
class _Asked:
    """A place, a coach and a method; the battery is charged, flat, or nobody knows."""

    place: Place
    card: Card
    method: str
    battery_charged: bool | None

    def hinders(self, key: str, *rests_on: str, **params: Value) -> Hindrance:
        """Give what makes the method impossible, and which fields of the place say so."""
        assumed = not self.place.assumed.isdisjoint(rests_on)
        return Hindrance(key, "hinders", 0.0, MappingProxyType(params), assumed)

    def costs(self, key: str, *rests_on: str) -> Hindrance:
        """Give what makes the method take longer, and which fields of the place say so."""
        assumed = not self.place.assumed.isdisjoint(rests_on)
        return Hindrance(key, "costs", COSTS_S[key], assumed=assumed)

    def has(self, *kinds: str) -> bool:
        """Does the coach have a fitting of one of these kinds, or may it?"""
        return any(f.kind in kinds and f.seen != "absent" for f in self.card.fittings)


def possible(
    place: Place, card: Card, method: str, *, battery_charged: bool | None = None
) -> tuple[Hindrance, ...]:
    """Say what stands in the way of a method at a place, and what makes it take longer there.

    Args:
        place: the place of work.
        card: the coach's card.
        method: one of the names in `wintertight.procedure.methods.table`.
        battery_charged: does the coach's battery hold its charge? None where nobody has looked.

    Returns:
        What hinders first, then what costs. The method is possible if nothing in it hinders.

    Raises:
        ChoiceError: no method has this name.

    Sources: common-practice.
    """
    if method not in METHODS:
        message = f"no method is called '{method}'; expected one of {', '.join(METHODS)}"
        raise ChoiceError(message)
    asked = _Asked(place, card, method, battery_charged)
    found = {h.key: h for rule in _RULES for h in rule(asked)}
    return tuple(sorted(found.values(), key=lambda h: h.effect != "hinders"))


def is_possible(found: tuple[Hindrance, ...]) -> bool:
    """Say whether nothing in an answer of `possible` hinders."""
    return all(h.effect != "hinders" for h in found)


def takes_more_s(found: tuple[Hindrance, ...]) -> float:
    """Give how much longer a method takes at a place, from an answer of `possible`.

    Args:
        found: what was found.

    Returns:
        Time of everything that costs [s].
    """
    return sum(h.seconds for h in found)


def _door(asked: _Asked) -> Iterator[Hindrance]:
    """Judge the door on both sides of what the card says of the coach's height."""
    place, height = asked.place, asked.card.coach.height
    if place.door_height_m is None:
        if place.indoors:
            yield asked.costs("door may be too low", "indoors")
        return
    if height is not None and height.low > place.door_height_m - DOOR_CLEARANCE_M:
        yield asked.hinders(
            "door too low", "door_height_m", door_m=place.door_height_m, coach_m=height.value
        )
    elif height is None or height.high > place.door_height_m - DOOR_CLEARANCE_M:
        yield asked.costs("door may be too low", "door_height_m")


def _water_out(asked: _Asked) -> Iterator[Hindrance]:
    if not asked.place.lets_water_out:
        yield asked.hinders("water has nowhere to go", "lets_water_out")


def _air(asked: _Asked) -> Iterator[Hindrance]:
    if asked.method not in BY_COMPRESSOR:
        return
    if not asked.place.compressor:
        yield asked.hinders("no compressor", "compressor")
    if asked.place.power == "none":
        yield asked.hinders("no power for the compressor", "power")
    elif asked.place.power == "generator":
        yield from _generator(asked)


def _twelve_volts(asked: _Asked) -> Iterator[Hindrance]:
    """The pump runs on the coach's battery, or on its converter where the coach is plugged in."""
    if asked.method not in ON_THE_PUMP | RUNS_DRY or not asked.has("demand pump"):
        return
    if asked.battery_charged:
        return
    if asked.place.power == "mains":
        yield asked.costs("plug in", "power")
    elif asked.battery_charged is None:
        yield asked.costs("check battery")
    elif asked.place.power == "generator":
        yield from _generator(asked)
    elif asked.method in ON_THE_PUMP:
        yield asked.hinders("no 12 volts", "power")
    else:
        yield asked.costs("pump cannot run dry", "power")


def _generator(asked: _Asked) -> Iterator[Hindrance]:
    yield asked.costs("set up generator", "power")
    if asked.place.indoors:
        yield asked.costs("generator outside", "power", "indoors")


def _warmth(asked: _Asked) -> Iterator[Hindrance]:
    if asked.method != "thaw" or asked.place.heated:
        return
    if asked.place.power == "none":
        yield asked.hinders("no warmth", "heated", "power")
        return
    yield asked.costs("bring warm air", "heated")
    if asked.place.power == "generator":
        yield from _generator(asked)


def _waste(asked: _Asked) -> Iterator[Hindrance]:
    if asked.method not in EMPTIES_WASTE or not asked.has("gray tank", "black tank"):
        return
    if not asked.place.dump:
        yield asked.costs("dump elsewhere", "dump")


def _town_water(asked: _Asked) -> Iterator[Hindrance]:
    """Rinsing a sewage tank takes water, and so does the test of a thawed coach."""
    rinses = asked.method in EMPTIES_WASTE and asked.has("black tank")
    if not asked.place.water and (rinses or asked.method == "thaw"):
        yield asked.costs("carry water", "water")


def _antifreeze_caught(asked: _Asked) -> Iterator[Hindrance]:
    if asked.method in FILLING and not asked.place.catches_antifreeze:
        yield asked.costs("bring basins", "catches_antifreeze")


def _slope(asked: _Asked) -> Iterator[Hindrance]:
    measured = None not in {asked.place.slope_along, asked.place.slope_across}
    if asked.method in BY_GRAVITY and not measured:
        yield asked.costs("measure slope")


_RULES: tuple[Callable[[_Asked], Iterator[Hindrance]], ...] = (
    _door,
    _water_out,
    _air,
    _twelve_volts,
    _warmth,
    _waste,
    _town_water,
    _antifreeze_caught,
    _slope,
)


def tilts(place: Place) -> tuple[Tilt, ...]:
    """Give the slopes of the floor that draining has to be judged for.

    A line that falls one way on one slope and the other way on another is level in between, and
    then it keeps its water. It counts as level while it falls by less than `LEAST_SLOPE` of its
    length, and it is no shorter than its run: so the slopes on which it is level are a strip at
    least twice that wide, which steps of sqrt(2) `LEAST_SLOPE` both ways cannot step over.

    Args:
        place: the place of work.

    Returns:
        The measured slope alone; where a direction was not measured, that direction in steps from
        its steepest one way to its steepest the other way.

    Example:
        >>> from wintertight.coach.place import usual_place
        >>> len(tilts(usual_place("bay")))
        25

    Sources: common-practice (how far a floor may slope); calculated (the steps).
    """
    most = STEEPEST_UNMEASURED[place.kind]
    steps = math.ceil(most / (math.sqrt(2.0) * LEAST_SLOPE))
    either = tuple(most * i / steps for i in range(-steps, steps + 1))
    along = either if place.slope_along is None else (place.slope_along,)
    across = either if place.slope_across is None else (place.slope_across,)
    return tuple(Tilt(a, b) for a, b in product(along, across))
