"""Blowing out through one outlet, and through all of them one at a time."""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from types import MappingProxyType
from typing import Final

from wintertight.errors import ChoiceError
from wintertight.flow.air.air_flow import NO_AIR, AirFlow, air_flow, pushed_water
from wintertight.flow.air.claims import ORDER, LinkSweep, claims_of, doubted, never_swept
from wintertight.flow.air.full_heaters import behind_full_heaters
from wintertight.flow.air.gas import ATMOSPHERE_PA, density_air
from wintertight.flow.air.open_way import OpenWay, inlet_of, open_way, with_inlet_on
from wintertight.flow.air.receiver import AirCurve, Burst, Work, burst, curve_of, work_of
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import STILL_M3_S
from wintertight.flow.state import State, arriving_state, with_outlet_open
from wintertight.flow.stream import AIR

BLOW_S: Final = 30.0
"""Seconds an outlet blows on after its water was pushed out, until nothing but mist comes [s];
common practice."""

KEEPS: Final = frozenset({"heater", "bowl"})
"""Reasons for which a hollow keeps the water that air is blown over."""


@dataclass(frozen=True, slots=True)
class SweepResult:
    """One outlet blown out.

    Attributes:
        inlet: where the air comes in.
        outlet: the control that was opened.
        links: what is claimed for each link that holds something, and each pool.
        air: the air at the regulator's pressure, along the way.
        burst: how long the tank keeps it up; None where no air moves.
        push_s: seconds to push the way's water out [s].
        blow_s: seconds it blows after that [s].
        work: bursts, and seconds in all.
    """

    inlet: str
    outlet: str
    links: Mapping[str, LinkSweep]
    air: AirFlow
    burst: Burst | None
    push_s: float
    blow_s: float
    work: Work


@dataclass(frozen=True, slots=True)
class BestSweep:
    """The best that any outlet claims for one link.

    Attributes:
        outlet: the outlet that gave it; "" where none is better than not swept.
        sweep: what it claims.
    """

    outlet: str
    sweep: LinkSweep


@dataclass(frozen=True, slots=True)
class SweepAll:
    """All outlets blown out one at a time.

    Attributes:
        outlets: the result of each.
        best: the best claim for each link, and where it comes from.
        seconds: all bursts, waits and refills between outlets [s]; outlets that cannot be finished
            are left out, and so are the technician's ways.
    """

    outlets: Mapping[str, SweepResult]
    best: Mapping[str, BestSweep]
    seconds: float


def sweep(  # noqa: PLR0913 - one blow in all its parts
    network: CoachNetwork,
    state: State,
    inlet: str,
    outlet: str,
    supply: AirSupply,
    *,
    blow_s: float = BLOW_S,
) -> SweepResult:
    """Blow one outlet out, everything else as it stands; the state itself is not changed.

    What stands open beside it takes air too.

    Args:
        network: the coach.
        state: how its controls stand, and what its lines hold.
        inlet: id of the source at which the compressor is put on.
        outlet: control of the outlet to open.
        supply: tank, compressor and regulator.
        blow_s: seconds to blow after the water is out [s], above 0.

    Returns:
        The claims, and the times [s].

    Raises:
        ChoiceError: the coach has no such inlet or outlet.
        NoSteadyFlow: the flow could not be found.

    Sources: wallis; wallis-dobson; benjamin; aussillous-quere; white; common-practice.
    """
    if outlet not in network.outlets:
        message = f"'{outlet}' is no outlet; there are: {', '.join(sorted(network.outlets))}"
        raise ChoiceError(message)
    opened = with_inlet_on(network, with_outlet_open(network, state, outlet), inlet)
    gates = {k.gate.control for k in network.links.values() if k.gate}
    settings = tuple((name, opened.settings[name]) for name in sorted(gates))
    found = _through(network, settings, (inlet, outlet), supply)
    if found is None:
        return _nothing(network, inlet, outlet, blow_s)
    way, air, pushed, curve = found.way, found.air, found.pushed_m3_s, found.curve
    links = dict(found.links)
    push_s, push_kg_s = _push(network, way, opened, pushed, supply)
    work = work_of(supply, curve, push_s, push_kg_s, blow_s)
    for name in behind_full_heaters(network, opened, air) & links.keys():
        links[name] = doubted(links[name], "behind a full heater")
    if not work.bursts:
        links = {name: doubted(claim, "bursts too short") for name, claim in links.items()}
    return SweepResult(
        inlet=inlet,
        outlet=outlet,
        links=MappingProxyType(links),
        air=air,
        burst=burst(supply, curve),
        push_s=push_s,
        blow_s=blow_s,
        work=work,
    )


def sweep_all(  # noqa: PLR0913 - one job in all its parts
    network: CoachNetwork,
    state: State,
    inlet: str,
    supply: AirSupply,
    outlets: Iterable[str] | None = None,
    *,
    blow_s: float = BLOW_S,
) -> SweepAll:
    """Blow the outlets out one at a time, each shut again before the next.

    Args:
        network: the coach.
        state: how its controls stand between two outlets, and what its lines hold.
        inlet: id of the source at which the compressor is put on.
        supply: tank, compressor and regulator.
        outlets: controls of the outlets; all but the inlet's own where None.
        blow_s: seconds to blow after the water is out [s], above 0.

    Returns:
        The best claim for each link, and all times [s].

    Raises:
        ChoiceError: the coach has no such inlet or outlet.
        NoSteadyFlow: the flow could not be found.

    Sources: wallis; wallis-dobson; benjamin; aussillous-quere; white; common-practice.
    """
    own = network.links[inlet_of(network, inlet).link].part
    chosen = (
        outlets
        if outlets is not None
        else (name for name in network.outlets if network.controls[name].part != own)
    )
    found = {o: sweep(network, state, inlet, o, supply, blow_s=blow_s) for o in chosen}
    best = {link: BestSweep("", claim) for link, claim in _off_the_way(network, inlet).items()}
    for outlet, result in found.items():
        for link, claim in result.links.items():
            if _rank(claim) > _rank(best[link].sweep):
                best[link] = BestSweep(outlet if claim.claim != "not swept" else "", claim)
    works = [r.work for r in found.values() if r.work.bursts]
    seconds = sum(w.seconds for w in works) + sum(w.refill_s for w in works[:-1])
    return SweepAll(MappingProxyType(found), MappingProxyType(best), seconds)


def _rank(claim: LinkSweep) -> tuple[int, float]:
    return ORDER[claim.claim], claim.margin


def _off_the_way(network: CoachNetwork, inlet: str) -> dict[str, LinkSweep]:
    """Give the claims where no air moves."""
    return claims_of(network, inlet_of(network, inlet), {}, NO_AIR)


def _nothing(network: CoachNetwork, inlet: str, outlet: str, blow_s: float) -> SweepResult:
    """Give the result of an outlet that no air reaches."""
    links = MappingProxyType(_off_the_way(network, inlet))
    return SweepResult(inlet, outlet, links, NO_AIR, None, 0.0, blow_s, Work(0, math.inf, 0.0))


@dataclass(frozen=True, slots=True)
class _Blow:
    """One outlet open, at any pressure of the line."""

    network: CoachNetwork
    way: OpenWay
    supply: AirSupply

    def at(self, gauge_Pa: float) -> tuple[dict[str, LinkSweep], AirFlow, float]:
        """Give the claims, the air, and the flow of water pushed out of all ends [m3/s]."""
        degC = self.supply.temperature_degC
        air = air_flow(self.way, gauge_Pa, degC)
        flows = pushed_water(self.way, gauge_Pa)
        pushed = {k.id: abs(float(q)) for k, q in zip(self.way.links, flows, strict=True)}
        out = sum(pushed[k.id] for k in self.way.links if k.is_outlet)
        return claims_of(self.network, self.way.source, pushed, air, degC), air, out

    def curve(self, at_full: Mapping[str, LinkSweep]) -> AirCurve:
        """Give the flow at falling pressures, down to where a swept line is swept no more."""
        swept = [k for k, c in at_full.items() if c.claim == "swept" and c.margin]

        def flow_at(gauge_Pa: float) -> tuple[float, float]:
            claims, air, _ = self.at(gauge_Pa)
            none_swept = 1.0 if gauge_Pa == self.supply.regulator_Pa else 0.0
            return air.mass_kg_s, min((claims[k].margin for k in swept), default=none_swept)

        return curve_of(flow_at, self.supply.regulator_Pa)


@dataclass(frozen=True, slots=True, eq=False)
class _Through:
    """What blows through one outlet as gates stand, whatever the lines hold."""

    way: OpenWay
    links: Mapping[str, LinkSweep]
    air: AirFlow
    pushed_m3_s: float
    curve: AirCurve


@lru_cache(maxsize=512)
def _through(
    network: CoachNetwork,
    settings: tuple[tuple[str, str], ...],
    ends: tuple[str, str],
    supply: AirSupply,
) -> _Through | None:
    """Work out what blows from an inlet to an outlet; None where no air comes through."""
    inlet, outlet = ends
    way = open_way(network, arriving_state(network).with_settings(dict(settings)), inlet)
    if way is None:
        return None
    blow = _Blow(network, way, supply)
    links, air, pushed = blow.at(supply.regulator_Pa)
    if network.outlets[outlet].link not in air.links or pushed <= STILL_M3_S:
        return None
    return _Through(way, MappingProxyType(links), air, pushed, blow.curve(links))


def _push(
    network: CoachNetwork, way: OpenWay, state: State, pushed_m3_s: float, supply: AirSupply
) -> tuple[float, float]:
    """Give the seconds to push the way's liquid out [s], and the air that follows it [kg/s].

    Heaters and bowls hold theirs below their ports, and keep it.
    """
    liquid = 0.0
    for link in way.links:
        held = state.held.get(link.id)
        if held is not None and never_swept(network, link, way.source.link) not in KEEPS:
            liquid += link.volume_m3 * (1.0 - float(held.mean()[AIR]))
    density = density_air(ATMOSPHERE_PA + supply.regulator_Pa, supply.temperature_degC)
    return liquid / pushed_m3_s, pushed_m3_s * density
