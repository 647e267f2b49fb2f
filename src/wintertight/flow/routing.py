"""Carrying fluid through a coach for a while: in at the sources, out at the outlets."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt

from wintertight.errors import BooksDoNotClose
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held
from wintertight.flow.hydraulics import STILL_M3_S
from wintertight.flow.kernels.carrying import NO_HOLLOW, carry_along, order_legs
from wintertight.flow.kernels.compiled import interpreted
from wintertight.flow.stream import SHARES, Stream

Array = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

NOTHING = np.zeros(SHARES)


@dataclass(frozen=True, slots=True)
class Leg:
    """One link on the way, in the direction in which it flows."""

    link: Link
    forward: bool
    flow_m3_s: float

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
        nodes: names of the nodes they touch.
        up, down: node each leg comes from and goes to, by its place in ``nodes``, shape (legs,).
        flow_m3_s: of each leg [m3/s], shape (legs,).
        hollows: links that hold something.
        hollow: for each leg its place in ``hollows``, shape (legs,).
    """

    legs: tuple[Leg, ...]
    nodes: tuple[str, ...]
    up: Ints
    down: Ints
    flow_m3_s: Array
    hollows: tuple[str, ...]
    hollow: Ints

    @classmethod
    def of(cls, legs: tuple[Leg, ...]) -> "Route":
        """Number nodes and hollows of legs that stand in order."""
        place: dict[str, int] = {}
        for leg in legs:
            place.setdefault(leg.upstream, len(place))
            place.setdefault(_reached(leg), len(place))
        hollows = tuple(leg.link.id for leg in legs if leg.link.holding != "nothing")
        at = {link: i for i, link in enumerate(hollows)}
        return cls(
            legs=legs,
            nodes=tuple(place),
            up=np.array([place[leg.upstream] for leg in legs], dtype=np.int64),
            down=np.array([place[_reached(leg)] for leg in legs], dtype=np.int64),
            flow_m3_s=np.array([leg.flow_m3_s for leg in legs]),
            hollows=hollows,
            hollow=np.array([at.get(leg.link.id, NO_HOLLOW) for leg in legs], dtype=np.int64),
        )

    def at_flows(self, flows_m3_s: Mapping[str, float]) -> "Route":
        """Give the same route at other flows [m3/s], by link."""
        legs = tuple(replace(k, flow_m3_s=abs(float(flows_m3_s[k.link.id]))) for k in self.legs)
        return replace(self, legs=legs, flow_m3_s=np.array([leg.flow_m3_s for leg in legs]))


def _reached(leg: Leg) -> str:
    """Name where a leg ends: outlets may end in one open air, each in a place of its own."""
    return f"out of {leg.link.id}" if leg.link.is_outlet else leg.downstream


NOWHERE = Route.of(())
"""Where nothing flows."""


def route(network: CoachNetwork, flows_m3_s: Array) -> Route:
    """Put the links that flow in an order in which each comes after all that feed it.

    Args:
        network: the coach.
        flows_m3_s: flow through each link [m3/s], in the order of ``network.links``.

    Returns:
        The route.

    Raises:
        BooksDoNotClose: fluid would run in a circle, which no steady flow does.
    """
    legs = [
        Leg(link, bool(q > 0.0), abs(float(q)))
        for link, q in zip(network.links.values(), flows_m3_s, strict=True)
        if abs(q) > STILL_M3_S
    ]
    some = Route.of(tuple(_leading_on(legs)))
    order = order_legs(some.up, some.down, len(some.nodes))
    if len(order) != len(some.legs):
        message = "the flow runs in a circle"
        raise BooksDoNotClose(message, relative_error=1.0)
    return Route.of(tuple(some.legs[i] for i in order))


def _leading_on(legs: list[Leg]) -> list[Leg]:
    """Leave out what ends where all that flows on is too little to count: it would be lost."""
    while True:
        on = {leg.upstream for leg in legs}
        kept = [leg for leg in legs if leg.link.is_outlet or leg.downstream in on]
        if len(kept) == len(legs):
            return legs
        legs = kept


@dataclass(frozen=True, slots=True)
class Carried:
    """What came in at each source node and what fell out of each outlet link."""

    came_in: Mapping[str, Stream]
    fell_out: Mapping[str, Stream]


def carry(
    route: Route,
    held: Mapping[str, Held],
    feeds: Mapping[str, Array],
    seconds: float,
    *,
    ease: bool = False,
) -> Carried:
    """Move fluid along a route for some seconds.

    Args:
        route: the route.
        held: what each link holds; changed in place.
        feeds: shares of what each source node gives, shape (4,) each.
        seconds: how long [s].
        ease: whether parcels nearly alike are joined where they are many.

    Returns:
        What came in and what fell out.
    """
    hollows = [held[link] for link in route.hollows]
    flows = {leg.link.id: leg for leg in route.legs}
    for link, hollow in zip(route.hollows, hollows, strict=True):
        hollow.turn(forward=flows[link].forward)
    volumes = [hollow.volumes for hollow in hollows]
    shares = [hollow.shares for hollow in hollows]
    part = [hollow.part for hollow in hollows]
    reached = interpreted(carry_along)(
        route.up,
        route.down,
        route.flow_m3_s,
        route.hollow,
        len(route.nodes),
        np.array([node in feeds for node in route.nodes]),
        np.array([feeds.get(node, NOTHING) for node in route.nodes]),
        seconds,
        np.array([hollow.way for hollow in hollows], dtype=np.int64),
        np.array([hollow.volume_m3 for hollow in hollows]),
        np.array([hollow.parcel_m3 for hollow in hollows]),
        [
            hollow.response(flows[link].flow_m3_s * seconds)
            for link, hollow in zip(route.hollows, hollows, strict=True)
        ],
        volumes,
        shares,
        part,
        ease,
    )
    for hollow, content in zip(hollows, zip(volumes, shares, part, strict=True), strict=True):
        hollow.put(*content)
    streams = {
        node: Stream(*parcels)
        for node, parcels in zip(route.nodes, zip(*reached, strict=True), strict=True)
    }
    ends = {leg.link.id: _reached(leg) for leg in route.legs if leg.link.is_outlet}
    first = {leg.upstream for leg in route.legs}
    return Carried(
        {node: streams[node] for node in route.nodes if node in feeds and node in first},
        {link: streams[node] for link, node in ends.items()},
    )
