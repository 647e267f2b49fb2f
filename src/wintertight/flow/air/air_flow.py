"""Steady air through the open way, and the water it pushes ahead of it at first.

The solver of steady flow does the work, with H = p^2 R T / (2 g p0^2) for head and the volume at
1 atm for flow: on these, air in a line obeys the law of water with the same friction factor, as
the Reynolds number of a mass flow does not know pressure. What air loses beyond that (``laws``)
depends on the pressures and is found by repetition.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final

import numpy as np

from wintertight.errors import NoSteadyFlow
from wintertight.flow.air.gas import ATMOSPHERE_PA, free_air, specific_energy, viscosity_air
from wintertight.flow.air.laws import CRITICAL_RATIO, choked_ratio, line_extra, opening_factor
from wintertight.flow.air.open_way import OpenWay
from wintertight.flow.hydraulics import BAY_DEGC
from wintertight.flow.losses import GRAVITY, WATER_DENSITY
from wintertight.flow.steady import LinkKind, friction_factor_churchill, solve_steady
from wintertight.flow.steady.network import Bools, Floats
from wintertight.fluids.transport import kinematic_viscosity

_SAME: Final = 1e-8
_MOST_ROUNDS: Final = 200
_LEAST_FLOW_M3_S: Final = 1e-12
_CHOKED: Final = 1e-6


@dataclass(frozen=True, slots=True)
class LinkAir:
    """Air in one link, in the direction in which it moves.

    Attributes:
        forward: whether it moves from the link's start to its end.
        mass_kg_s: mass flow [kg/s].
        upstream_Pa, downstream_Pa: absolute pressures [Pa]; behind a choked end, that outside.
        upstream_m_s, downstream_m_s: superficial velocities in a line [m/s]; 0 in a fitting.
        choked: whether it carries all it can.
    """

    forward: bool
    mass_kg_s: float
    upstream_Pa: float
    downstream_Pa: float
    upstream_m_s: float
    downstream_m_s: float
    choked: bool


@dataclass(frozen=True, slots=True)
class AirFlow:
    """Steady air through a coach.

    Attributes:
        inlet_Pa: absolute pressure behind the regulator [Pa].
        mass_kg_s: mass flow in all [kg/s].
        free_air_m3_s: the same at 1 atm and 15 degC [m3/s].
        links: what moves in each link that carries.
    """

    inlet_Pa: float
    mass_kg_s: float
    free_air_m3_s: float
    links: Mapping[str, LinkAir]


NO_AIR: Final = AirFlow(ATMOSPHERE_PA, 0.0, 0.0, MappingProxyType({}))
"""Nothing moves."""


def air_flow(way: OpenWay, gauge_Pa: float, temperature_degC: float = BAY_DEGC) -> AirFlow:
    """Solve the isothermal flow of air through an open way.

    Lines by p1^2 - p2^2 = R T (m/A)^2 (f L/D + K + 2 ln(p1/p2)); fittings and outlets as openings
    of the area that their loss with water tells, A = 1/sqrt(2 g r), choked where they must be.

    Args:
        way: the open way.
        gauge_Pa: pressure behind the regulator, above the atmosphere [Pa], 0 to 5e5.
        temperature_degC: temperature of air and lines [degC], -40 to 60.

    Returns:
        Mass flow [kg/s], and pressures [Pa] and velocities [m/s] along the way.

    Raises:
        NoSteadyFlow: the flow could not be found.

    Sources: white (ch. 9, isothermal flow with friction and isentropic flow through a throat);
        churchill.
    """
    if not gauge_Pa > 0.0:
        return NO_AIR
    energy = specific_energy(temperature_degC)
    density = ATMOSPHERE_PA / energy
    head_per_square = energy / (2.0 * GRAVITY * ATMOSPHERE_PA**2)
    inlet_Pa = ATMOSPHERE_PA + gauge_Pa
    pipes = replace(
        way.pipes,
        fixed_head_m=way.held_at(head_per_square * inlet_Pa**2, head_per_square * ATMOSPHERE_PA**2),
    )
    viscosity = viscosity_air(temperature_degC) / density
    is_pipe = pipes.kind == LinkKind.PIPE
    minor, loss = pipes.minor_loss, pipes.loss_coefficient
    everything = np.ones(len(way.links), dtype=np.bool_)
    flow: Floats | None = None
    for _ in range(_MOST_ROUNDS):
        adapted = replace(pipes, minor_loss=minor, loss_coefficient=loss)
        steady = solve_steady(adapted, everything, viscosity, start_flows=flow)
        before, flow = flow, steady.flow_m3_s
        square = np.maximum(steady.head_m / head_per_square, 0.0)
        high, low = _ends(way, square, flow)
        change = np.inf if before is None else float(np.abs(flow - before).max())
        if change <= _SAME * float(np.abs(flow).max()):
            choked = _choked(way, flow, high, low, viscosity)
            return _result(way, flow * density, (high, low), choked, energy, inlet_Pa)
        moves = np.abs(flow) > _LEAST_FLOW_M3_S
        extra = line_extra(high, low, _resistance(way, flow, viscosity))
        minor = np.where(is_pipe & moves, pipes.minor_loss + extra, pipes.minor_loss)
        factor = np.where(moves & ~is_pipe, opening_factor(low / high), 1.0)
        loss = pipes.loss_coefficient * factor
    message = "the flow of air does not settle"
    raise NoSteadyFlow(message, _MOST_ROUNDS, change)


def pushed_water(way: OpenWay, gauge_Pa: float, temperature_degC: float = BAY_DEGC) -> Floats:
    """Give the flow of water while air pushes it out of an open way that is still full.

    The nose of air moves as fast as the water ahead of it. With the whole way full the water is
    slowest, so this is the careful side.

    Args:
        way: the open way.
        gauge_Pa: pressure of the air behind the water, above the atmosphere [Pa], 0 to 5e5.
        temperature_degC: temperature of the water [degC], 0 to 40.

    Returns:
        Flow of each link, positive from start to end [m3/s].

    Raises:
        NoSteadyFlow: the flow could not be found.

    Sources: todini-pilati; churchill.
    """
    heights = way.pipes.elevation_m
    inlet = float(heights[way.inlet]) + gauge_Pa / (WATER_DENSITY * GRAVITY)
    pipes = replace(way.pipes, fixed_head_m=way.held_at(inlet, heights[way.ends]))
    everything = np.ones(len(way.links), dtype=np.bool_)
    viscosity = float(kinematic_viscosity(np.zeros(1), temperature_degC)[0])
    return solve_steady(pipes, everything, viscosity).flow_m3_s


def _ends(way: OpenWay, square: Floats, flow: Floats) -> tuple[Floats, Floats]:
    """Give the pressures at the upstream and the downstream end of each link [Pa]."""
    pressure = np.sqrt(square)
    start, end = pressure[way.pipes.start], pressure[way.pipes.end]
    high, low = np.where(flow >= 0.0, start, end), np.where(flow >= 0.0, end, start)
    return high, np.minimum(low, high)


def _resistance(way: OpenWay, flow: Floats, viscosity: float) -> Floats:
    """Give f L/D + K of each line at a flow; 1 for what is no line."""
    pipes = way.pipes
    is_pipe = pipes.kind == LinkKind.PIPE
    bore = np.where(is_pipe, pipes.bore_m, 1.0)
    reynolds = np.maximum(4.0 * np.abs(flow) / (np.pi * bore * viscosity), 1.0)
    friction = friction_factor_churchill(reynolds, pipes.roughness_m / bore)
    return np.where(is_pipe, friction * pipes.length_m / bore + pipes.minor_loss, 1.0)


def _choked(way: OpenWay, flow: Floats, high: Floats, low: Floats, viscosity: float) -> Bools:
    """Tell which links carry all they can."""
    is_pipe = way.pipes.kind == LinkKind.PIPE
    line = choked_ratio(_resistance(way, flow, viscosity))
    least = np.where(is_pipe, line, CRITICAL_RATIO)
    return np.asarray(low / high <= least * (1.0 + _CHOKED), dtype=np.bool_)


def _result(  # noqa: PLR0913, PLR0917 - one solved flow in all its parts
    way: OpenWay,
    mass: Floats,
    ends: tuple[Floats, Floats],
    choked: Bools,
    energy: float,
    inlet_Pa: float,
) -> AirFlow:
    high, low = ends
    found: dict[str, LinkAir] = {}
    total = 0.0
    for i, link in enumerate(way.links):
        size = abs(float(mass[i]))
        if size <= _LEAST_FLOW_M3_S:
            continue
        per_pressure = size * energy / (np.pi / 4.0 * link.bore_m**2) if link.way == "pipe" else 0.0
        found[link.id] = LinkAir(
            forward=bool(mass[i] > 0.0),
            mass_kg_s=size,
            upstream_Pa=float(high[i]),
            downstream_Pa=float(low[i]),
            upstream_m_s=float(per_pressure / high[i]),
            downstream_m_s=float(per_pressure / low[i]),
            choked=bool(choked[i]),
        )
        total += size if link.is_outlet else 0.0
    return AirFlow(inlet_Pa, total, free_air(total), MappingProxyType(found))
