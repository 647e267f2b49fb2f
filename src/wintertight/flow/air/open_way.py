"""The part of a coach that air can pass as it stands: from one inlet to every open outlet.

Air goes no way that ends in a closed tap, and none back through a check valve or a pump. A side way
carries some only where it joins the way again or ends in the open.
"""

from dataclasses import dataclass, replace

import numpy as np

from wintertight.errors import ChoiceError
from wintertight.flow.coach_network import CoachNetwork, Link, Source
from wintertight.flow.hydraulics import half_turned, passes, pipe_network
from wintertight.flow.state import State
from wintertight.flow.steady.carrying import carrying_links
from wintertight.flow.steady.network import Bools, Floats, Ints, LinkKind, PipeNetwork


@dataclass(frozen=True, eq=False, slots=True)
class OpenWay:
    """What air can pass.

    Attributes:
        source: the inlet.
        links: the links, in the order of ``pipes``.
        pipes: the same as a plain network, nothing held yet.
        inlet: index of the inlet's node.
        ends: indexes of the nodes of open air.
    """

    source: Source
    links: tuple[Link, ...]
    pipes: PipeNetwork
    inlet: int
    ends: Ints

    def held_at(self, inlet_head_m: float, end_heads_m: Floats | float) -> Floats:
        """Give the heads held at its nodes [m]: inlet and ends, nan elsewhere."""
        heads = np.full(len(self.pipes.node_ids), np.nan)
        heads[self.ends] = end_heads_m
        heads[self.inlet] = inlet_head_m
        return heads


def inlet_of(network: CoachNetwork, inlet: str) -> Source:
    """Give the source at which the compressor's hose is put on.

    Args:
        network: the coach.
        inlet: id of the source, such as that of the city inlet.

    Returns:
        The source.

    Raises:
        ChoiceError: the coach has no such source.
    """
    source = network.sources.get(inlet)
    if source is None:
        message = f"'{inlet}' is no inlet; there are: {', '.join(sorted(network.sources))}"
        raise ChoiceError(message)
    return source


def with_inlet_on(network: CoachNetwork, state: State, inlet: str) -> State:
    """Give the state with the inlet's own control set so that it feeds."""
    gate = network.links[inlet_of(network, inlet).link].gate
    if gate is None or state.settings[gate.control] in gate.passes:
        return state
    return state.with_setting(gate.control, min(gate.passes))


def open_way(network: CoachNetwork, state: State, inlet: str) -> OpenWay | None:
    """Find what air can pass as the controls stand.

    Args:
        network: the coach.
        state: how its controls stand; the inlet's own control counts as on.
        inlet: id of the source at which the air comes in.

    Returns:
        The open way, or None where no outlet is open that air could reach.

    Raises:
        ChoiceError: the coach has no such source.
    """
    source = inlet_of(network, inlet)
    state = with_inlet_on(network, state, inlet)
    whole = pipe_network(network, half_turned(network, state))
    links = list(network.links.values())
    others = {s.link for s in network.sources.values() if s.link != source.link}
    out = np.array([k.is_outlet for k in links])
    mask = passes(network, state) & (whole.kind != LinkKind.PUMP)
    mask &= np.array([k.id not in others for k in links])
    held = np.full(len(whole.node_ids), np.nan)
    held[whole.end[mask & out]] = 0.0
    held[whole.node_ids.index(source.node)] = 0.0
    carrying = carrying_links(replace(whole, fixed_head_m=held), mask)
    if not (carrying & out).any():
        return None
    pipes = _cut_out(whole, carrying)
    kept = tuple(k for k, on in zip(links, carrying, strict=True) if on)
    ends = np.unique(pipes.end[[k.is_outlet for k in kept]])
    return OpenWay(source, kept, pipes, pipes.node_ids.index(source.node), ends)


def _cut_out(whole: PipeNetwork, kept: Bools) -> PipeNetwork:
    """Give the network of some links alone, no head held."""
    nodes = np.unique(np.concatenate((whole.start[kept], whole.end[kept])))
    place = np.full(len(whole.node_ids), -1, dtype=np.int64)
    place[nodes] = np.arange(nodes.size)
    return PipeNetwork(
        node_ids=tuple(whole.node_ids[i] for i in nodes),
        elevation_m=whole.elevation_m[nodes],
        fixed_head_m=np.full(nodes.size, np.nan),
        demand_m3_s=np.zeros(nodes.size),
        link_ids=tuple(whole.link_ids[i] for i in np.flatnonzero(kept)),
        start=place[whole.start[kept]],
        end=place[whole.end[kept]],
        kind=whole.kind[kept],
        length_m=whole.length_m[kept],
        bore_m=whole.bore_m[kept],
        roughness_m=whole.roughness_m[kept],
        minor_loss=whole.minor_loss[kept],
        loss_coefficient=whole.loss_coefficient[kept],
        one_way=whole.one_way[kept],
        pump_shutoff_m=whole.pump_shutoff_m[kept],
        pump_coefficient=whole.pump_coefficient[kept],
        pump_exponent=whole.pump_exponent[kept],
    )
