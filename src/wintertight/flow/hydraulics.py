"""Which way, and how fast: the steady flow of a coach as it stands."""

from collections.abc import Mapping
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held
from wintertight.flow.losses import COEFFICIENTS
from wintertight.flow.state import State
from wintertight.flow.steady.builder import NetworkBuilder
from wintertight.flow.steady.friction import FrictionLaw
from wintertight.flow.steady.gradient import Steady, solve_steady
from wintertight.flow.steady.network import PipeNetwork
from wintertight.fluids.transport import kinematic_viscosity

Array = npt.NDArray[np.float64]

BAY_DEGC = 10.0
"""Temperature of the fluid while it is moved [degC]; common practice: an autumn bay or yard."""

STILL_M3_S = 1e-9
"""A flow below this [m3/s] moves nothing: 4 millilitres an hour."""


def passes(network: CoachNetwork, state: State) -> npt.NDArray[np.bool_]:
    """Tell which links can pass as the controls stand.

    Args:
        network: the coach.
        state: how its controls stand.

    Returns:
        True or False for each link, in the order of ``network.links`` [1].
    """
    return np.array(
        [
            link.gate is None or state.settings[link.gate.control] in link.gate.passes
            for link in network.links.values()
        ]
    )


def pipe_network(network: CoachNetwork, half: frozenset[str] = frozenset()) -> PipeNetwork:
    """Give the coach as the plain network of the solver, valves in ``half`` half turned."""
    return _pipe_network(network, half)


@lru_cache(maxsize=64)
def _pipe_network(network: CoachNetwork, half: frozenset[str]) -> PipeNetwork:
    build = NetworkBuilder()
    heads = {s.node: s.head_m for s in network.sources.values()}
    outlet_ends = {k.end for k in network.links.values() if k.is_outlet}
    named = dict.fromkeys(n for k in network.links.values() for n in (k.start, k.end))
    for node in named:
        height = network.heights_m[node]
        head = heads.get(node, height if node in outlet_ends else None)
        build.node(node, elevation_m=height, fixed_head_m=head)
    for link in network.links.values():
        _add(build, link, half)
    return build.build()


def _add(build: NetworkBuilder, link: Link, half: frozenset[str]) -> None:
    if link.way == "pipe":
        build.pipe(
            link.id,
            link.start,
            link.end,
            length_m=link.length_m,
            bore_m=link.bore_m,
            roughness_m=link.roughness_m,
            minor_loss=link.bends_loss,
            one_way=link.one_way,
        )
    elif link.way == "pump":
        build.pump(
            link.id,
            link.start,
            link.end,
            shutoff_m=link.pump_cut_off_m,
            coefficient=link.pump_cut_off_m / link.pump_open_m3_s,
            exponent=1.0,
        )
    else:
        worse = COEFFICIENTS["half-turned valve"] / COEFFICIENTS["ball valve"]
        factor = worse if link.gate and link.gate.control in half else 1.0
        build.loss(
            link.id,
            link.start,
            link.end,
            coefficient=link.resistance_s2_m5 * factor,
            one_way=link.one_way,
        )


def half_turned(network: CoachNetwork, state: State) -> frozenset[str]:
    """Give the controls that stand half way."""
    return frozenset(
        k.gate.control
        for k in network.links.values()
        if k.gate and k.gate.half and state.settings[k.gate.control] == k.gate.half
    )


def glycol_shares(network: CoachNetwork, held: Mapping[str, Held]) -> Array:
    """Give the share of glycol in each pipe; 0 elsewhere, where no friction asks for it.

    Only glycol counts. Air is taken as water: while a line fills, its minutes are those of water.
    Ethanol and products of unknown composition are taken as water too: thinner than they are,
    which makes minutes too few and leaves volumes as they are.

    Args:
        network: the coach.
        held: what its links hold.

    Returns:
        Share of glycol by volume [1], in the order of ``network.links``.
    """
    shares = np.zeros(len(network.links))
    for link, place in pipe_places(network).items():
        if link in held:
            shares[place] = held[link].glycol_about()
    return shares


@lru_cache(maxsize=64)
def pipe_places(network: CoachNetwork) -> Mapping[str, int]:
    """Give the place of each pipe in ``network.links``."""
    return {link.id: i for i, link in enumerate(network.links.values()) if link.way == "pipe"}


def steady_flow(
    network: CoachNetwork,
    state: State,
    *,
    friction: FrictionLaw = "churchill",
    viscosity_m2_s: float | Array | None = None,
    start_flows: Array | None = None,
) -> Steady:
    """Solve the flow of a coach as its controls stand and with what its lines hold.

    Args:
        network: the coach.
        state: how its controls stand and what its lines hold.
        friction: friction law.
        viscosity_m2_s: one viscosity for all [m2/s], one each, or None: from the contents at
            ``BAY_DEGC``.
        start_flows: flows to start from [m3/s], in the order of the links.

    Returns:
        Flows and heads, in the order of ``network.links``.

    Raises:
        NoSteadyFlow: the solver did not converge.

    Sources:
        todini-pilati
    """
    nu = viscosity_m2_s
    if nu is None:
        nu = kinematic_viscosity(glycol_shares(network, state.held), BAY_DEGC)
    pipes = pipe_network(network, half_turned(network, state))
    return solve_steady(
        pipes, passes(network, state), nu, friction=friction, start_flows=start_flows
    )
