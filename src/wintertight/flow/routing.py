"""Which way fluid goes through a coach: the links that flow, each after all that feed it."""

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import accumulate
from weakref import WeakKeyDictionary

import numpy as np
import numpy.typing as npt

from wintertight.errors import BooksDoNotClose
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.hydraulics import STILL_M3_S
from wintertight.flow.kernels.carrying import NO_HOLLOW, order_legs

Array = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Leg:
    """One link on the way, in the direction in which it flows."""

    link: Link
    forward: bool

    @property
    def upstream(self) -> str:
        """Node the fluid comes from."""
        return self.link.start if self.forward else self.link.end

    @property
    def downstream(self) -> str:
        """Node the fluid goes to."""
        return self.link.end if self.forward else self.link.start


@dataclass(frozen=True, slots=True, eq=False)
class Route:
    """The links that flow, each after all that feed it.

    Attributes:
        legs: the links, upstream first.
        index: place of each among all links, shape (legs,).
        sign: 1 where it flows from start to end, else -1, shape (legs,).
        nodes: names of the nodes they touch.
        up, down: node each leg comes from and goes to, by its place in ``nodes``, shape (legs,).
        hollows: links that hold something.
        hollow: for each leg its place in ``hollows``, shape (legs,).
        outs: places of legs that end in the open air.
    """

    legs: tuple[Leg, ...]
    index: Ints
    sign: Array
    nodes: tuple[str, ...]
    up: Ints
    down: Ints
    hollows: tuple[str, ...]
    hollow: Ints
    outs: Ints

    @classmethod
    def of(cls, legs: tuple[tuple[int, Leg], ...]) -> "Route":
        """Number nodes and hollows of legs that stand in order, each with its place."""
        place: dict[str, int] = {}
        for _, leg in legs:
            place.setdefault(leg.upstream, len(place))
            place.setdefault(_reached(leg), len(place))
        hollows = tuple(leg.link.id for _, leg in legs if leg.link.holding != "nothing")
        at = {link: i for i, link in enumerate(hollows)}
        return cls(
            legs=tuple(leg for _, leg in legs),
            index=row_of(i for i, _ in legs),
            sign=np.array([1.0 if leg.forward else -1.0 for _, leg in legs]),
            nodes=tuple(place),
            up=row_of(place[leg.upstream] for _, leg in legs),
            down=row_of(place[_reached(leg)] for _, leg in legs),
            hollows=hollows,
            hollow=row_of(at.get(leg.link.id, NO_HOLLOW) for _, leg in legs),
            outs=row_of(i for i, (_, leg) in enumerate(legs) if leg.link.is_outlet),
        )


def row_of(numbers: Iterable[int]) -> Ints:
    """Give whole numbers as a row."""
    return np.array(list(numbers), dtype=np.int64)


def edges_of(sizes: Iterable[int]) -> Ints:
    """Give where things of these sizes begin when they lie one behind another, and the end."""
    return row_of(accumulate(sizes, initial=0))


def _reached(leg: Leg) -> str:
    """Name where a leg ends: outlets may end in one open air, each in a place of its own."""
    return f"out of {leg.link.id}" if leg.link.is_outlet else leg.downstream


NOWHERE = Route.of(())
"""Where nothing flows."""

_routes: WeakKeyDictionary[CoachNetwork, dict[bytes, Route]] = WeakKeyDictionary()


def directions(flows_m3_s: Array) -> Ints:
    """Tell which way links flow: 1 from start to end, -1 the other way, 0 too little to count.

    Args:
        flows_m3_s: flow through each link [m3/s].

    Returns:
        Directions [1], of the same shape.
    """
    ways = np.sign(flows_m3_s).astype(np.int64)
    ways[np.abs(flows_m3_s) <= STILL_M3_S] = 0
    return ways


def route(network: CoachNetwork, flows_m3_s: Array) -> Route:
    """Put the links that flow in an order in which each comes after all that feed it.

    Args:
        network: the coach.
        flows_m3_s: flow through each link [m3/s], in the order of ``network.links``.

    Returns:
        The route; kept for the next flow in the same directions.

    Raises:
        BooksDoNotClose: fluid would run in a circle, which no steady flow does.
    """
    ways = directions(flows_m3_s)
    kept, key = _routes.setdefault(network, {}), ways.tobytes()
    found = kept.get(key)
    if found is None:
        found = kept[key] = _route(network, ways)
    return found


def _route(network: CoachNetwork, ways: Ints) -> Route:
    links = tuple(network.links.values())
    legs = [(int(i), Leg(links[i], bool(ways[i] > 0))) for i in np.flatnonzero(ways)]
    some = _leading_on(legs)
    unordered = Route.of(tuple(some))
    order = order_legs(unordered.up, unordered.down, len(unordered.nodes))
    if len(order) != len(some):
        message = "the flow runs in a circle"
        raise BooksDoNotClose(message, relative_error=1.0)
    return Route.of(tuple(some[i] for i in order))


def _leading_on(legs: list[tuple[int, Leg]]) -> list[tuple[int, Leg]]:
    """Leave out what ends where all that flows on is too little to count: it would be lost."""
    while True:
        on = {leg.upstream for _, leg in legs}
        kept = [(i, leg) for i, leg in legs if leg.link.is_outlet or leg.downstream in on]
        if len(kept) == len(legs):
            return legs
        legs = kept
