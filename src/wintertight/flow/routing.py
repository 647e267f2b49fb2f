"""Carrying fluid through a coach for a while: in at the sources, out at the outlets."""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.errors import BooksDoNotClose
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held
from wintertight.flow.hydraulics import STILL_M3_S
from wintertight.flow.stream import Stream, mixed

Array = npt.NDArray[np.float64]


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


def route(network: CoachNetwork, flows_m3_s: Array) -> tuple[Leg, ...]:
    """Put the links that flow in an order in which each comes after all that feed it.

    Args:
        network: the coach.
        flows_m3_s: flow through each link [m3/s], in the order of ``network.links``.

    Returns:
        The legs, upstream first.

    Raises:
        BooksDoNotClose: fluid would run in a circle, which no steady flow does.
    """
    legs = [
        Leg(link, bool(q > 0.0), abs(float(q)))
        for link, q in zip(network.links.values(), flows_m3_s, strict=True)
        if abs(q) > STILL_M3_S
    ]
    legs = _leading_on(legs)
    waiting: dict[str, int] = {}
    for leg in legs:
        waiting[leg.downstream] = waiting.get(leg.downstream, 0) + 1
    leaving: dict[str, list[Leg]] = {}
    for leg in legs:
        leaving.setdefault(leg.upstream, []).append(leg)
    ready = sorted(node for node in leaving if node not in waiting)
    order: list[Leg] = []
    while ready:
        for leg in leaving.get(ready.pop(0), ()):
            order.append(leg)
            waiting[leg.downstream] -= 1
            if not waiting[leg.downstream]:
                ready.append(leg.downstream)
    if len(order) != len(legs):
        message = "the flow runs in a circle"
        raise BooksDoNotClose(message, relative_error=1.0)
    return tuple(order)


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
    legs: tuple[Leg, ...],
    held: Mapping[str, Held],
    feeds: Mapping[str, Array],
    seconds: float,
    *,
    eased: bool = False,
) -> Carried:
    """Move fluid along a route for some seconds.

    Args:
        legs: the route, upstream first.
        held: what each link holds; changed in place.
        feeds: shares of what each source node gives, shape (4,) each.
        seconds: how long [s].
        eased: whether parcels nearly alike are joined where they are many.

    Returns:
        What came in and what fell out.
    """
    arrived: dict[str, list[Stream]] = {}
    at_node: dict[str, Stream] = {}
    leaving: dict[str, float] = {}
    for leg in legs:
        leaving[leg.upstream] = leaving.get(leg.upstream, 0.0) + leg.flow_m3_s
    came_in: dict[str, Stream] = {}
    fell_out: dict[str, Stream] = {}
    for leg in legs:
        node = leg.upstream
        if node not in at_node:
            if node in feeds:
                at_node[node] = Stream.of(leaving[node] * seconds, feeds[node])
                came_in[node] = at_node[node]
            else:
                at_node[node] = mixed(arrived.get(node, ()))
        share = leg.flow_m3_s / leaving[node]
        stream = at_node[node] if share == 1.0 else at_node[node].scaled(share)
        if leg.link.holding != "nothing" and len(stream.volumes):
            stream = held[leg.link.id].push(stream, forward=leg.forward)
            stream = stream.eased() if eased else stream
        if leg.link.is_outlet:
            fell_out[leg.link.id] = stream
        else:
            arrived.setdefault(leg.downstream, []).append(stream)
    return Carried(came_in, fell_out)
