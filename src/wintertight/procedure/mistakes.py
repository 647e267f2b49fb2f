"""What can go wrong at a coach beside a step left out: handles set wrongly, and the coach itself.

A mistake says which controls stand wrongly from the setting of the handles on, and which steps were
not done; what else is wrong with it (the jug, the pump's suction, a worn valve) follows from its
key, in `wintertight.procedure.mistaken`. Only mistakes that a coach can have are listed for it.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from wintertight.procedure.plan import Plan
from wintertight.procedure.roles import Roles

MISTAKES: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "heater left open": ("full", "drained", "plug out"),
        "bypass shut": ("full", "drained", "plug out"),
        "inlet half open": ("alone", "tank valve too"),
        "tank valve half open": ("full", "empty"),
        "shower crossing": (),
        "pause button": (),
        "tempering valve one-sided": (),
        "diverter left off": (),
        "low point left open": (),
        "suction leak": ("some air", "too much air"),
        "jug ran dry": ("run on", "left so"),
        "weak product": (),
        "wrong product": (),
        "cartridge left in": (),
        "branch left shut": (),
        "failed check": (),
    }
)
"""Key of each mistake, and the circumstances in which it is looked at, if it has several."""

LEAKS: Mapping[str, float] = MappingProxyType({"some air": 0.2, "too much air": 0.6})
"""Shares of air in what a leaky suction draws that are looked at [1]; common practice."""

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
        circumstance: what else stands so that it matters; "" where nothing does.
        params: ``share`` of air or water in what is drawn [1]; ``seconds`` of air [s] and
            ``after_m3``, what an outlet has let out by then [m3]; ``hole``, the heater whose plug
            hole lets out what reaches it.
        sets: how controls stand, whatever the steps say, once the handles have been set.
        skips: ids of steps that were not done.
    """

    key: str
    part: str
    circumstance: str = ""
    params: Mapping[str, float | str] = field(default_factory=lambda: NOTHING)
    sets: Mapping[str, str] = field(default_factory=lambda: AS_PLANNED)
    skips: tuple[str, ...] = ()

    @property
    def hole(self) -> str | None:
        """The heater whose open plug hole lets out what reaches it."""
        return str(self.params["hole"]) if "hole" in self.params else None


def possible_mistakes(plan: Plan) -> tuple[Mistake, ...]:
    """Give the mistakes that can be made at a coach.

    Args:
        plan: the plan of its job.

    Returns:
        The mistakes, in the order of ``MISTAKES``; none where the coach's own pump fills nothing.
    """
    if not any(s.step.key == "draw from jug" for s in plan.steps):
        return ()
    roles = Roles(plan.card, plan.careful.network)
    found = (
        *_at_the_heater(roles),
        *_at_the_suction(roles),
        *_crossings(roles),
        *_left_open_or_shut(roles),
        *_in_the_jug(plan, roles),
        *_at_fault(plan, roles),
    )
    order = list(MISTAKES)
    return tuple(sorted(found, key=lambda m: order.index(m.key)))


def _at_the_heater(roles: Roles) -> Iterator[Mistake]:
    """Give the heater's valves open beside the bypass, and open with the bypass shut."""
    bypasses = {valve.id: "across" for valve in roles.valves("heater bypass")}
    beside = {
        valve.id: "along" for role in ("heater cold", "heater hot") for valve in roles.valves(role)
    }
    named = _positions_in_use(roles)
    for heater in roles.of_kind("tank heater"):
        closed = {f"{heater.id}/plug": "in", f"{heater.id}/relief": "shut"}
        undone = (f"open-relief:{heater.id}", f"plug-out:{heater.id}")
        hole = MappingProxyType({"hole": heater.id})
        for how, more, skips, params in (
            ("full", {}, undone, NOTHING),
            ("drained", closed, (), NOTHING),
            ("plug out", {}, (), hole),
        ):
            if bypasses and beside:
                sets = MappingProxyType({**beside, **more})
                yield Mistake("heater left open", heater.id, how, params, sets, skips)
            if bypasses or named:
                sets = MappingProxyType({**bypasses, **beside, **named, **more})
                part = next(iter((*bypasses, *named)))
                yield Mistake("bypass shut", part, how, params, sets, skips)


def _positions_in_use(roles: Roles) -> dict[str, str]:
    """Give the position in which a many-way valve at a heater lets water through the heater."""
    return {
        valve.id: position.name
        for valve, _ in roles.positions("heater bypass")
        for position in valve.positions
        if position.use == "normal"
    }


def _at_the_suction(roles: Roles) -> Iterator[Mistake]:
    """Give valves half way between jug, tank and pump, and joints that let air in."""
    tanks = roles.of_kind("fresh tank")
    undrained = tuple(f"open-tank-drain:{tank.id}" for tank in tanks[:1])
    to_tank = {v.id: "half" for v in roles.valves("tank suction")} if tanks else {}
    for valve in roles.valves("antifreeze inlet"):
        half = {valve.id: "half"}
        yield Mistake("inlet half open", valve.id, "alone", sets=MappingProxyType(half))
        if to_tank:
            sets = MappingProxyType({**half, **to_tank})
            how = "tank valve too"
            yield Mistake("inlet half open", valve.id, how, sets=sets, skips=undrained)
    for name in to_tank:
        sets = MappingProxyType({name: "half"})
        yield Mistake("tank valve half open", name, "full", sets=sets, skips=undrained)
        yield Mistake("tank valve half open", name, "empty", sets=sets)
    for pump in roles.of_kind("demand pump")[:1]:
        for how, share in LEAKS.items():
            yield Mistake("suction leak", pump.id, how, MappingProxyType({"share": share}))


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


def _in_the_jug(plan: Plan, roles: Roles) -> Iterator[Mistake]:
    """Give what can be wrong with the antifreeze itself."""
    for pump in roles.of_kind("demand pump")[:1]:
        share = MappingProxyType({"share": WEAK_SHARE})
        yield Mistake("weak product", pump.id, params=share)
        if plan.product.contents().rated < 1.0:  # else nobody knows what is in it anyway
            yield Mistake("wrong product", pump.id)
    taps = set(roles.controls("tap"))
    ran = {o: s.run for s in plan.steps if (o := s.step.outlet) and o in taps and s.run}
    dry = {"seconds": DRY_S}
    for tap in [*ran][:1]:
        halfway = MappingProxyType({**dry, "after_m3": ran[tap].volume_m3 / 2.0})
        yield Mistake("jug ran dry", tap, "run on", halfway)
    for tap in dict.fromkeys((*[*ran][:1], *[*ran][-1:])):
        yield Mistake("jug ran dry", tap, "left so", MappingProxyType(dry))


def _at_fault(plan: Plan, roles: Roles) -> Iterator[Mistake]:
    """Give valves that do not do what they are for."""
    for valve in roles.of_kind("tempering valve"):
        yield Mistake("tempering valve one-sided", valve.id)
    # Where there is no bypass, the plug is back in before the coach is filled.
    bypassed = any(s.step.key == "set bypass" for s in plan.steps)
    heaters = roles.of_kind("tank heater") if bypassed else ()
    hole = MappingProxyType({"hole": heaters[0].id}) if heaters else NOTHING
    for check in roles.of_kind("check valve"):
        yield Mistake("failed check", check.id, params=hole)
