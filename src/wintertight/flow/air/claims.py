"""What one blow through one way claims for each link of a coach: swept, doubtful, or not swept.

Never how much is left: only whether air moved as fast as published criteria ask, judged where it is
slowest, at the upstream end of each line, where the pressure is highest.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final, Literal

import numpy as np

from wintertight.flow.air.air_flow import AirFlow, LinkAir
from wintertight.flow.air.criteria import (
    LAYER_SWEPT,
    LEVEL_DOUBTFUL,
    RISER_DOUBTFUL,
    RISER_SWEPT,
    film_share,
    nose_velocity,
    wallis_number,
)
from wintertight.flow.air.gas import density_air
from wintertight.flow.coach_network import CoachNetwork, Link, Source
from wintertight.flow.falling import HANGING_BORE_M
from wintertight.flow.hydraulics import BAY_DEGC
from wintertight.flow.slopes import LEAST_FALL_M, LEAST_SLOPE

Claim = Literal["swept", "doubtful", "not swept"]

Reason = Literal[
    "carried up",
    "pushed along",
    "with its line",
    "nearly carried up",
    "nearly pushed along",
    "bursts too short",
    "behind a full heater",
    "wide body",
    "too slow to carry up",
    "too slow to push along",
    "off the way",
    "small tube",
    "pump head",
    "check valve",
    "bowl",
    "heater",
    "hollow",
    "standing water",
]
"""Why a link has its claim: a key, the sentence for it is made elsewhere."""

ORDER: Final[Mapping[Claim, int]] = {"not swept": 0, "doubtful": 1, "swept": 2}
"""Claims from worst to best."""

BODY_M3: Final = 0.05e-3
"""Largest body of a tap or valve that is taken to be swept with the line that feeds it [m3]; common
practice."""

WIDE_BODY_M3: Final = 0.2e-3
"""Largest one that may be [m3], such as a shower's hose or a toilet's valve: in doubt at best;
common practice. A wider hollow lets air pass over its water."""


@dataclass(frozen=True, slots=True)
class LinkSweep:
    """What a blow claims for one link, and on what figures.

    Attributes:
        link: id of the link, or of the pool of open water.
        part: id of the line or fitting it belongs to.
        claim: swept, doubtful, or not swept.
        reason: why.
        rises_m: how far the air has to carry water up in it [m]; 0 in a level or falling
            line.
        push_m_s: speed of the water ahead of the first air [m/s].
        nose_m_s: speed it needs to leave the whole bore at once [m/s].
        film: share of the bore the first push leaves on the wall [1].
        wallis: Wallis number at its upstream end [1].
        upstream_m_s, downstream_m_s: superficial velocity of the air at its ends [m/s].
        margin: the number that decided over what it should be [1]; 0 where none did.
    """

    link: str
    part: str
    claim: Claim
    reason: Reason
    rises_m: float = 0.0
    push_m_s: float = 0.0
    nose_m_s: float = 0.0
    film: float = 0.0
    wallis: float = 0.0
    upstream_m_s: float = 0.0
    downstream_m_s: float = 0.0
    margin: float = 0.0


def claims_of(
    network: CoachNetwork,
    inlet: Source,
    pushed_m3_s: Mapping[str, float],
    air: AirFlow,
    temperature_degC: float = BAY_DEGC,
) -> dict[str, LinkSweep]:
    """Judge every link that holds something, and every pool, for one blow.

    Args:
        network: the coach.
        inlet: where the air comes in.
        pushed_m3_s: flow of the water first pushed out, by link [m3/s].
        air: the air in them.
        temperature_degC: temperature of the air [degC], -40 to 60.

    Returns:
        What is claimed, by link or pool; numbers in it are speeds [m/s] and ratios [1].

    Sources: wallis; wallis-dobson; benjamin; aussillous-quere; bretherton (small tubes);
        common-practice (what air never clears).
    """
    found: dict[str, LinkSweep] = {}
    bodies: list[Link] = []
    for link in network.links.values():
        if link.holding == "nothing":
            continue
        never = never_swept(network, link, inlet.link)
        moving = air.links.get(link.id)
        if never:
            found[link.id] = LinkSweep(link.id, link.part, "not swept", never)
        elif moving is None:
            found[link.id] = LinkSweep(link.id, link.part, "not swept", "off the way")
        elif link.way == "pipe":
            push = pushed_m3_s[link.id]
            found[link.id] = line_claim(network, link, moving, push, temperature_degC)
        else:
            bodies.append(link)
    feeding = _Feeding([network.links[k] for k in air.links], air, found)
    for link in bodies:
        worst = feeding.worst_before(link)
        body = LinkSweep(link.id, link.part, worst, "with its line")
        found[link.id] = body if link.volume_m3 <= BODY_M3 else doubted(body, "wide body")
    for name, pool in network.pools.items():
        found[name] = LinkSweep(name, pool.part, "not swept", "standing water")
    return found


def never_swept(network: CoachNetwork, link: Link, inlet_link: str) -> Reason | None:
    """Tell why air never clears a link, whatever its speed; None where it may."""
    if link.way == "pipe":
        return "small tube" if link.bore_m < HANGING_BORE_M else None
    at_inlet = link.part == network.links[inlet_link].part
    tests: tuple[tuple[Reason, bool], ...] = (
        ("pump head", link.way == "pump"),
        ("heater", link.id in network.heater_ports),
        ("bowl", link.gate is not None and network.controls[link.gate.control].thing == "bowl"),
        ("check valve", at_inlet or (link.one_way and not link.is_outlet)),
        ("hollow", link.holding == "vessel" or link.volume_m3 > WIDE_BODY_M3),
    )
    return next((reason for reason, holds in tests if holds), None)


def line_claim(
    network: CoachNetwork,
    link: Link,
    moving: LinkAir,
    pushed_m3_s: float,
    temperature_degC: float = BAY_DEGC,
) -> LinkSweep:
    """Judge one line on the way, at its upstream end.

    A riser by the Wallis number that carries water up. A level or falling line by the speed at
    which the first push leaves its whole bore, and by the Wallis number that drives on the layer to
    which its film gathers; a steep one would not need the second, but few coaches stand level.

    Args:
        network: the coach, for its heights.
        link: the line.
        moving: the air in it.
        pushed_m3_s: flow of the water first pushed through it [m3/s], 0 and up.
        temperature_degC: temperature of the air [degC], -40 to 60.

    Returns:
        What is claimed; speeds [m/s] and ratios [1].

    Sources: wallis; wallis-dobson; benjamin; aussillous-quere.
    """
    push = pushed_m3_s / (np.pi / 4.0 * link.bore_m**2)
    density = density_air(moving.upstream_Pa, temperature_degC)
    rises = rise_m(network, link, forward=moving.forward)
    number = wallis_number(moving.upstream_m_s, density, link.bore_m)
    nose = nose_velocity(link.bore_m)
    if rises:
        margin, doubtful = number / RISER_SWEPT, RISER_DOUBTFUL / RISER_SWEPT
    else:
        margin, doubtful = min(push / nose, number / LAYER_SWEPT), LEVEL_DOUBTFUL
    claim, reason = _graded(margin, doubtful, rises=bool(rises))
    return LinkSweep(
        link=link.id,
        part=link.part,
        claim=claim,
        reason=reason,
        rises_m=rises,
        push_m_s=float(push),
        nose_m_s=nose,
        film=film_share(float(push)),
        wallis=number,
        upstream_m_s=moving.upstream_m_s,
        downstream_m_s=moving.downstream_m_s,
        margin=float(margin),
    )


def rise_m(network: CoachNetwork, link: Link, *, forward: bool) -> float:
    """Give how far a line climbs on the way of the air, from its lowest place to any that follows.

    Where a line has both, its sag is taken to come before its hump: that is the longest climb.

    Args:
        network: the coach, for its heights.
        link: the line.
        forward: whether the air moves from its start to its end.

    Returns:
        Climb [m]; 0 where it falls, or is as level as lines are laid.
    """
    ends = [network.heights_m[link.start], link.start_m], [link.end_m, network.heights_m[link.end]]
    first, last = ends if forward else (ends[1][::-1], ends[0][::-1])
    along = [*first, link.lowest_m, link.highest_m, *last]
    heights = [height for height in along if height is not None]
    climb = max(later - one for i, one in enumerate(heights) for later in heights[i + 1 :])
    level = max(LEAST_FALL_M, LEAST_SLOPE * link.length_m)
    return climb if climb > level else 0.0


def _graded(margin: float, doubtful: float, *, rises: bool) -> tuple[Claim, Reason]:
    if margin >= 1.0:
        return "swept", "carried up" if rises else "pushed along"
    if margin >= doubtful:
        return "doubtful", "nearly carried up" if rises else "nearly pushed along"
    return "not swept", "too slow to carry up" if rises else "too slow to push along"


@dataclass(frozen=True, slots=True)
class _Feeding:
    """The lines through which air comes to a fitting."""

    links: Sequence[Link]
    air: AirFlow
    found: Mapping[str, LinkSweep]

    def worst_before(self, link: Link) -> Claim:
        """Give the worst claim among the nearest lines before a link."""
        moving = self.air.links[link.id]
        node = link.start if moving.forward else link.end
        claims: list[Claim] = []
        for other in self.links:
            if node != (other.end if self.air.links[other.id].forward else other.start):
                continue
            if other.way == "pipe":
                claims.append(self.found[other.id].claim)
            else:
                claims.append(self.worst_before(other))
        return min(claims, key=ORDER.__getitem__, default="swept")


def doubted(sweep: LinkSweep, reason: Reason) -> LinkSweep:
    """Give a claim that is at best doubtful, for a reason."""
    if sweep.claim != "swept":
        return sweep
    return replace(sweep, claim="doubtful", reason=reason)
