"""What can go wrong at a coach beside a step left out: handles set wrongly, and the coach itself.

A mistake says which controls stand wrongly from the setting of the handles on, and which steps were
not done; what else is wrong with it (the jug, the pump's suction, a worn valve) follows from its
key, in `wintertight.procedure.mistaken`. Only mistakes that a coach can have are listed for it.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from wintertight.coach.card import Card, Fitting
from wintertight.flow.coach_network import CoachNetwork
from wintertight.procedure.roles import Roles

MISTAKES = (
    "heater left open",
    "bypass shut",
    "inlet half open",
    "tank valve half open",
    "shower crossing",
    "pause button",
    "tempering valve one-sided",
    "diverter left off",
    "low point left open",
    "suction leak",
    "jug ran dry",
    "weak product",
    "wrong product",
    "cartridge left in",
    "branch left shut",
    "failed check",
)
"""Key of each mistake."""

LEAKS = (0.2, 0.6)
"""Shares of air in what a leaky suction draws that are looked at [1]: some, and too much."""

DRY_S = 10.0
"""How long a pump draws air before the next jug is there [s]; common practice."""

WEAK_SHARE = 0.25
"""Share of water in a jug that was stretched [1]; common practice."""

NOTHING: Mapping[str, float | str] = MappingProxyType({})
AS_PLANNED: Mapping[str, str] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Mistake:
    """One thing that is wrong.

    Attributes:
        key: one of ``MISTAKES``.
        part: the part of the coach that is set wrongly or at fault.
        params: what else has to be known of it.
        sets: how controls stand, whatever the steps say, once the handles have been set.
        skips: ids of steps that were not done.
    """

    key: str
    part: str
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)
    sets: Mapping[str, str] = field(default_factory=lambda: AS_PLANNED)
    skips: tuple[str, ...] = ()


def possible_mistakes(card: Card, network: CoachNetwork) -> tuple[Mistake, ...]:
    """Give the mistakes that can be made at a coach.

    Args:
        card: the coach's card.
        network: the coach.

    Returns:
        The mistakes, in the order of ``MISTAKES``.
    """
    roles = Roles(card, network)
    found = (
        *_at_the_heater(roles),
        *_at_the_suction(roles),
        *_crossings(roles),
        *_left_open_or_shut(roles),
        *_in_the_jug(roles),
        *_at_fault(roles),
    )
    return tuple(sorted(found, key=lambda m: MISTAKES.index(m.key)))


def _at_the_heater(roles: Roles) -> Iterator[Mistake]:
    """Give the heater's valves open beside the bypass, and open with the bypass shut."""
    bypasses = {valve.id: "across" for valve in roles.valves("heater bypass")}
    beside = {
        valve.id: "along" for role in ("heater cold", "heater hot") for valve in roles.valves(role)
    }
    named = _positions_in_use(roles)
    for heater in roles.of_kind("tank heater"):
        plug = {f"{heater.id}/plug": "in", f"{heater.id}/relief": "shut"}
        undone = (f"open-relief:{heater.id}", f"plug-out:{heater.id}")
        for how, more, skips in (("full", {}, undone), ("drained", plug, ()), ("plug out", {}, ())):
            params = MappingProxyType({"heater": how})
            if bypasses and beside:
                sets = MappingProxyType({**beside, **more})
                yield Mistake("heater left open", heater.id, params, sets, skips)
            if bypasses or named:
                sets = MappingProxyType({**bypasses, **beside, **named, **more})
                part = next(iter((*bypasses, *named)))
                params = MappingProxyType({"heater": how, "hole": heater.id})
                yield Mistake("bypass shut", part, params, sets, skips)


def _positions_in_use(roles: Roles) -> dict[str, str]:
    """Give the position in which a many-way valve at a heater lets water through the heater."""
    return {
        valve.id: position.name
        for valve, _ in roles.positions("heater bypass")
        for position in valve.positions
        if position.use == "normal"
    }


def _at_the_suction(roles: Roles) -> Iterator[Mistake]:
    for valve in roles.valves("antifreeze inlet"):
        yield Mistake("inlet half open", valve.id, sets=MappingProxyType({valve.id: "half"}))
    tanks = roles.of_kind("fresh tank")
    for valve in roles.valves("tank suction") if tanks else ():
        for how, skips in (("full", (f"open-tank-drain:{tanks[0].id}",)), ("empty", ())):
            yield Mistake(
                "tank valve half open",
                valve.id,
                MappingProxyType({"tank": how}),
                MappingProxyType({valve.id: "half"}),
                skips,
            )
    for pump in roles.of_kind("demand pump"):
        for share in LEAKS:
            yield Mistake("suction leak", pump.id, MappingProxyType({"share": share}))


def _crossings(roles: Roles) -> Iterator[Mistake]:
    """Give what joins hot and cold where nobody looks, or keeps them from being joined."""
    for shower in roles.of_kind("outside shower", "outside kitchen", "shower"):
        handles = {f"{shower.id}.{port}": "open" for port in shower.ports}
        if len(handles) > 1:
            key = "pause button" if shower.kind == "shower" else "shower crossing"
            sets = MappingProxyType({**handles, f"{shower.id}/head": "shut"})
            yield Mistake(key, shower.id, sets=sets)
    for diverter in roles.controls("diverter"):
        yield Mistake("diverter left off", diverter, sets=MappingProxyType({diverter: "off"}))


def _left_open_or_shut(roles: Roles) -> Iterator[Mistake]:
    for low in roles.low_points:
        yield Mistake("low point left open", low, sets=MappingProxyType({low: "open"}))
    for valve in roles.valves("branch shut-off"):
        yield Mistake("branch left shut", valve.id, sets=MappingProxyType({valve.id: "across"}))
    for bowl in roles.of_kind("filter housing"):
        yield Mistake("cartridge left in", bowl.id, skips=(f"cartridge-out:{bowl.id}",))


def _in_the_jug(roles: Roles) -> Iterator[Mistake]:
    for pump in roles.of_kind("demand pump")[:1]:
        yield Mistake("weak product", pump.id, MappingProxyType({"share": WEAK_SHARE}))
        yield Mistake("wrong product", pump.id)
    taps = list(roles.controls("tap"))
    for tap in dict.fromkeys((*taps[:1], *taps[-1:])):
        yield Mistake("jug ran dry", tap, MappingProxyType({"seconds": DRY_S}))


def _at_fault(roles: Roles) -> Iterator[Mistake]:
    for valve in roles.of_kind("tempering valve"):
        yield Mistake("tempering valve one-sided", valve.id)
    for check in roles.of_kind("check valve"):
        yield Mistake("failed check", check.id, _hole_of(roles.of_kind("tank heater")))


def _hole_of(heaters: tuple[Fitting, ...]) -> Mapping[str, float | str]:
    """Name the heater whose plug hole lets out what flows back to it."""
    return MappingProxyType({"hole": heaters[0].id}) if heaters else NOTHING
