"""One coach as a network: links that hold fluid, controls that open and shut them, sources, pools.

Nothing here changes: what changes is a `wintertight.flow.state.State`.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from types import MappingProxyType
from typing import Literal

from wintertight.flow.case import Case
from wintertight.flow.tilt import Tilt

Way = Literal["pipe", "pump", "loss"]
Holding = Literal["nothing", "plug", "runs", "vessel"]


@dataclass(frozen=True, slots=True)
class Gate:
    """A link passes only while a control stands at one of some settings."""

    control: str
    passes: frozenset[str]
    half: str | None = None


@dataclass(frozen=True, slots=True)
class Link:
    """A stretch through which fluid can move, from one node to another.

    Attributes:
        id: unique name.
        part: id of the line or fitting of the card to which it belongs.
        start, end: nodes; the direction start to end counts as forward.
        way: pipe (friction), pump (curve), or loss (a fixed coefficient).
        length_m, bore_m, roughness_m: of a pipe [m].
        bends_loss: loss coefficient of the bends on the velocity head [1].
        resistance_s2_m5: of a loss, h = r q |q| [s2/m5].
        pump_open_m3_s, pump_cut_off_m: of a pump: open flow [m3/s], head at which it stops [m].
        one_way: a check valve: flow only from start to end.
        holding: how its content takes up what flows through.
        volume_m3: its content [m3].
        runs: laminar runs in series, where it holds as runs [1].
        gate: what opens and shuts it; None is always open.
        drops_to: pool into which an outlet lets its fluid fall; "" is the ground or a bucket.
        lowest_m, highest_m: heights along it [m] where they lie outside those of its ends.
        start_m, end_m: heights of its ends [m] where they are not those of its nodes.
    """

    id: str
    part: str
    start: str
    end: str
    way: Way = "loss"
    length_m: float = 0.0
    bore_m: float = 0.0
    roughness_m: float = 0.0
    bends_loss: float = 0.0
    resistance_s2_m5: float = 0.0
    pump_open_m3_s: float = 0.0
    pump_cut_off_m: float = 0.0
    one_way: bool = False
    holding: Holding = "nothing"
    volume_m3: float = 0.0
    runs: int = 1
    gate: Gate | None = None
    drops_to: str | None = None
    lowest_m: float | None = None
    highest_m: float | None = None
    start_m: float | None = None
    end_m: float | None = None

    @property
    def is_outlet(self) -> bool:
        """Does it end in the open air?"""
        return self.drops_to is not None


@dataclass(frozen=True, slots=True)
class Control:
    """Something a hand can set: a handle, a tap, a plug, a cartridge, a switch.

    Attributes:
        id: unique name: the fitting's id, "fitting.port" or "fitting/thing".
        part: id of the fitting.
        thing: what is set: handle, tap, plug, cartridge, bowl, switch, hose, ...
        settings: what it can be set to.
        as_found: how it is taken to stand when the coach arrives.
    """

    id: str
    part: str
    thing: str
    settings: tuple[str, ...]
    as_found: str


@dataclass(frozen=True, slots=True)
class Outlet:
    """A way for fluid out into the open, by the control that is worked for it.

    Attributes:
        control: the control that opens it.
        opens: every control that must stand so while it runs, and how.
        link: the link whose end is in the open air.
        node: where its line arrives.
    """

    control: str
    opens: tuple[tuple[str, str], ...]
    link: str
    node: str


@dataclass(frozen=True, slots=True)
class Source:
    """A place from which fluid enters: a jug, a tank, a town main.

    Attributes:
        id: unique name, that of the fitting.
        node: node of fixed head.
        link: link by which it joins the coach.
        head_m: its head [m] above the coach's floor.
    """

    id: str
    node: str
    link: str
    head_m: float


@dataclass(frozen=True, slots=True)
class Opening:
    """A place where water can fall out or air come in when a control is set so.

    Attributes:
        node: node at which it is.
        height_m: its height above the floor [m].
        gate: the control and the settings at which it is open.
    """

    node: str
    height_m: float
    gate: Gate


@dataclass(frozen=True, slots=True)
class Pool:
    """Open water that is not in a line: a tank, a trap.

    Attributes:
        part: id of the fitting.
        volume_m3: what it holds when full [m3].
        stirred: True for a trap that is always full; False for a tank that fills and is emptied.
        drops_to: pool into which it overflows, if any.
        heel: share that stays when it is drained [1].
    """

    part: str
    volume_m3: float
    stirred: bool
    drops_to: str = ""
    heel: float = 0.0


@dataclass(frozen=True, slots=True)
class Breather:
    """A vessel under pressure that takes in and gives out through one line at each use of a tap.

    Attributes:
        pool: the pool it is.
        line: the line through which it breathes.
        share: share of its content that changes at each use [1]; common practice.
    """

    pool: str
    line: str
    share: float = 0.4


@dataclass(frozen=True, eq=False)
class CoachNetwork:
    """All of one coach's plumbing, as one case takes it.

    Attributes:
        links, controls, sources, openings, pools: by id.
        outlets: by the control that opens them.
        heights_m: height of each node above the floor [m].
        unmodelled: ids of fittings for which there is no model yet.
        case: which side of what is uncertain was taken.
        tilts: slopes of the floor that draining is judged for; level where there are none.
        places_m: where each fitting stands [m]: from the front, from the road side.
    """

    links: Mapping[str, Link]
    controls: Mapping[str, Control]
    sources: Mapping[str, Source]
    outlets: Mapping[str, Outlet]
    openings: tuple[Opening, ...]
    pools: Mapping[str, Pool]
    heights_m: Mapping[str, float]
    unmodelled: tuple[str, ...]
    case: Case
    heater_ports: Mapping[str, tuple[str, str]] = field(
        default_factory=lambda: MappingProxyType({})
    )
    breathers: tuple[Breather, ...] = ()
    tilts: tuple[Tilt, ...] = ()
    places_m: Mapping[str, tuple[float, float]] = field(
        default_factory=lambda: MappingProxyType({})
    )

    @cached_property
    def links_of(self) -> Mapping[str, tuple[Link, ...]]:
        """Links of each part that hold anything."""
        found: dict[str, list[Link]] = {}
        for link in self.links.values():
            if link.holding != "nothing":
                found.setdefault(link.part, []).append(link)
        return MappingProxyType({part: tuple(links) for part, links in found.items()})

    @cached_property
    def volume_m3(self) -> float:
        """What all links hold [m3]."""
        return sum(k.volume_m3 for k in self.links.values() if k.holding != "nothing")
