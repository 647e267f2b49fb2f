"""What each kind of fitting adds to a network, as one table of builders."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from wintertight.coach.card import Card, Fitting
from wintertight.coach.kinds import KINDS
from wintertight.coach.quantity import Quantity
from wintertight.flow.case import Case
from wintertight.flow.coach_network import Control, Gate, Holding, Link, Opening, Pool, Source
from wintertight.flow.losses import (
    GALLON_PER_MINUTE,
    GRAVITY,
    PSI,
    WATER_DENSITY,
    emitter_resistance,
    fitting_resistance,
)

USUAL_PUMP_OPEN = Quantity.known(3.0 * GALLON_PER_MINUTE, "guessed")
"""Open flow of a small demand pump [m3/s]; common practice."""

USUAL_PUMP_CUT_OFF = Quantity.known(50.0 * PSI, "guessed")
"""Pressure at which a small demand pump stops [Pa]; common practice."""

CITY_HEAD_M = 40.0 * PSI / (WATER_DENSITY * GRAVITY)
"""Town pressure behind a regulator [m]; common practice."""

TANK_LEVEL_M = 0.2
"""Height of water in a fresh tank in use, above its outlet [m]; common practice."""

HEATER_COLD_PORT_M, HEATER_HOT_PORT_M, HEATER_RELIEF_M = 0.10, 0.30, 0.33
"""Heights of the ports of a tank heater above its bottom [m]; common practice."""

HEATER_HEEL = 0.042
"""Share of a heater that stays below its plug: one quart in six gallons [1]; common practice."""

TANK_HEEL = 0.02
"""Share of a tank that stays when it is drained [1]; common practice."""

AIR = "(air)"
"""Suffix of the node of open air behind an outlet."""


@dataclass(slots=True)
class Workbench:
    """What is being built."""

    card: Card
    case: Case
    links: dict[str, Link] = field(default_factory=dict)
    controls: dict[str, Control] = field(default_factory=dict)
    sources: dict[str, Source] = field(default_factory=dict)
    openings: list[Opening] = field(default_factory=list)
    pools: dict[str, Pool] = field(default_factory=dict)
    heights_m: dict[str, float] = field(default_factory=dict)
    heater_ports: dict[str, tuple[str, str]] = field(default_factory=dict)
    unmodelled: list[str] = field(default_factory=list)

    def control(self, fitting: Fitting, thing: str, settings: str, suffix: str = "") -> str:
        """Add a control; the first of its settings is how it is found; give its id."""
        name = fitting.id + suffix
        some = tuple(settings.split(" | "))
        self.controls[name] = Control(name, fitting.id, thing, some, some[0])
        return name

    def hollow_m3(self, fitting: Fitting) -> float:
        """Give what a fitting holds [m3]: the card's value, or the usual one of its kind."""
        usual = Quantity.known(KINDS[fitting.kind].hollow_m3, "guessed")
        return self.case.volume_m3(fitting.volume or usual)

    def holding(self, fitting: Fitting) -> Holding:
        """Give how a flow-through fitting holds its content."""
        mixing = KINDS[fitting.kind].mixing
        if mixing == "none":
            return "nothing"
        return "plug" if mixing == "displaced" or self.case.mixing == "plug" else "vessel"


Builder = Callable[[Workbench, Fitting], None]


def _height(fitting: Fitting) -> float:
    return fitting.at.height_m if fitting.at else 0.0


def _joint(bench: Workbench, fitting: Fitting) -> None:
    bench.heights_m[fitting.id] = _height(fitting)


def _through(bench: Workbench, fitting: Fitting, gate: Gate | None, *, one_way: bool) -> None:
    """Add the one link of a fitting with two ports."""
    first, second = fitting.ports
    start, end = f"{fitting.id}.{first}", f"{fitting.id}.{second}"
    bench.heights_m[start] = bench.heights_m[end] = _height(fitting)
    bench.links[fitting.id] = Link(
        id=fitting.id,
        part=fitting.id,
        start=start,
        end=end,
        resistance_s2_m5=fitting_resistance(fitting.kind),
        one_way=one_way,
        holding=bench.holding(fitting),
        volume_m3=bench.hollow_m3(fitting),
        gate=gate,
    )


def _ball_valve(bench: Workbench, fitting: Fitting) -> None:
    shut_at_first = fitting.role in {"antifreeze inlet", "heater bypass"}
    order = "across | along | half" if shut_at_first else "along | across | half"
    name = bench.control(fitting, "handle", order)
    _through(bench, fitting, Gate(name, frozenset({"along", "half"}), "half"), one_way=False)


def _check_valve(bench: Workbench, fitting: Fitting) -> None:
    _through(bench, fitting, None, one_way=True)


def _bowl(bench: Workbench, fitting: Fitting) -> None:
    if fitting.kind == "filter housing":
        bench.control(fitting, "cartridge", "in | out", "/cartridge")
    bowl = bench.control(fitting, "bowl", "tight | loose | off", "/bowl")
    _through(bench, fitting, Gate(bowl, frozenset({"tight", "loose"})), one_way=False)


def _pump(bench: Workbench, fitting: Fitting) -> None:
    switch = bench.control(fitting, "switch", "off | on", "/switch")
    opened = fitting.flow or USUAL_PUMP_OPEN
    cut_off = fitting.cut_off or USUAL_PUMP_CUT_OFF
    start, end = f"{fitting.id}.in", f"{fitting.id}.out"
    bench.heights_m[start] = bench.heights_m[end] = _height(fitting)
    bench.links[fitting.id] = Link(
        id=fitting.id,
        part=fitting.id,
        start=start,
        end=end,
        way="pump",
        pump_open_m3_s=opened.value,
        pump_cut_off_m=cut_off.value / (WATER_DENSITY * GRAVITY),
        one_way=True,
        holding=bench.holding(fitting),
        volume_m3=bench.hollow_m3(fitting),
        gate=Gate(switch, frozenset({"on"})),
    )


def _source(bench: Workbench, fitting: Fitting, gate: Gate, head_m: float, suffix: str) -> None:
    """Join a node of fixed head to a fitting's node."""
    node, link = f"{fitting.id}(source)", f"{fitting.id}{suffix}"
    bench.heights_m[node] = _height(fitting)
    bench.links[link] = Link(
        id=link,
        part=fitting.id,
        start=node,
        end=fitting.id,
        resistance_s2_m5=fitting_resistance("source"),
        one_way=True,
        gate=gate,
    )
    bench.sources[fitting.id] = Source(fitting.id, node, link, head_m)


def add_suction_hose(bench: Workbench, pump: Fitting) -> None:
    """Let a hose be put on a pump's suction in place of the line from the tank.

    It goes on the strainer where one sits before the pump.
    """
    node = f"{pump.id}.in"
    before = [k for k in bench.links.values() if node in {k.start, k.end}]
    for line in [k for k in before if k.way == "pipe"]:
        other = line.start if line.end == node else line.end
        fitting = bench.card.fitting.get(other.partition(".")[0])
        if fitting and fitting.kind == "strainer":
            node = f"{fitting.id}.in"
    hose = bench.control(pump, "hose", "tank line | in the jug | open to the air", "/suction")
    for line in list(bench.links.values()):
        if line.way == "pipe" and node in {line.start, line.end}:
            bench.links[line.id] = replace(line, gate=Gate(hose, frozenset({"tank line"})))
    source, link = f"{hose}(source)", f"{hose}/end"
    height = bench.heights_m[node]
    bench.heights_m[source] = height
    bench.links[link] = Link(
        id=link,
        part=pump.id,
        start=source,
        end=node,
        resistance_s2_m5=fitting_resistance("source"),
        one_way=True,
        gate=Gate(hose, frozenset({"in the jug", "open to the air"})),
    )
    bench.sources[hose] = Source(hose, source, link, height)


def _fresh_tank(bench: Workbench, fitting: Fitting) -> None:
    _joint(bench, fitting)
    drain = bench.control(fitting, "drain", "shut | open", "/drain")
    _source(
        bench,
        fitting,
        Gate(fitting.id, frozenset({"in use"})),
        _height(fitting) + TANK_LEVEL_M,
        "/outlet",
    )
    bench.control(fitting, "tank", "in use")
    bench.openings.append(Opening(fitting.id, _height(fitting), Gate(drain, frozenset({"open"}))))
    bench.pools[fitting.id] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=False, heel=TANK_HEEL
    )


def _antifreeze_hose(bench: Workbench, fitting: Fitting) -> None:
    _joint(bench, fitting)
    end = bench.control(fitting, "hose", "stowed | in the jug | open to the air")
    passes = Gate(end, frozenset({"in the jug", "open to the air"}))
    _source(bench, fitting, passes, _height(fitting), "/end")


def _outlet(bench: Workbench, fitting: Fitting, port: str, gate: Gate, pool: str) -> None:
    """Add an outlet link from a fitting's node to the open air, holding the fitting's body."""
    node = f"{fitting.id}.{port}" if port else fitting.id
    bench.heights_m[node] = bench.heights_m[node + AIR] = _height(fitting)
    bench.links[node + "(outlet)"] = Link(
        id=node + "(outlet)",
        part=fitting.id,
        start=node,
        end=node + AIR,
        resistance_s2_m5=emitter_resistance(fitting.kind),
        one_way=True,
        holding="plug",
        volume_m3=bench.hollow_m3(fitting),
        gate=gate,
        drops_to=pool,
    )
    bench.openings.append(Opening(node, _height(fitting), gate))


def _tap(bench: Workbench, fitting: Fitting) -> None:
    for port in fitting.ports:
        suffix = f".{port}" if port else ""
        name = bench.control(fitting, "tap", "shut | open", suffix)
        gate = Gate(name, frozenset({"open"}))
        _outlet(bench, fitting, port, gate, fitting.drains_to or "")


def _low_point(bench: Workbench, fitting: Fitting) -> None:
    name = bench.control(fitting, "valve", "shut | open")
    _outlet(bench, fitting, "", Gate(name, frozenset({"open"})), "")


def _city_inlet(bench: Workbench, fitting: Fitting) -> None:
    hose = bench.control(fitting, "hose", "off | on", "/hose")
    check = bench.control(fitting, "check", "free | pressed")
    _outlet(bench, fitting, "", Gate(check, frozenset({"pressed"})), "")
    _source(bench, fitting, Gate(hose, frozenset({"on"})), CITY_HEAD_M, "/main")


def _tank_heater(bench: Workbench, fitting: Fitting) -> None:
    base = _height(fitting)
    cold, hot = f"{fitting.id}.cold", f"{fitting.id}.hot"
    bench.heights_m[cold] = base + HEATER_COLD_PORT_M
    bench.heights_m[hot] = base + HEATER_HOT_PORT_M
    for source in fitting.heat:
        bench.control(fitting, source, "on | off", f"/{source}")
    relief = bench.control(fitting, "relief lever", "shut | open", "/relief")
    plug = bench.control(fitting, "plug", "in | out", "/plug")
    bench.links[fitting.id] = Link(
        id=fitting.id,
        part=fitting.id,
        start=cold,
        end=hot,
        resistance_s2_m5=fitting_resistance("tank heater"),
        holding="plug" if bench.case.mixing == "plug" else "vessel",
        volume_m3=bench.hollow_m3(fitting),
        gate=Gate(plug, frozenset({"in"})),
    )
    bottom, top = f"{fitting.id}/plug", f"{fitting.id}/relief"
    bench.heights_m[bottom], bench.heights_m[top] = base, base + HEATER_RELIEF_M
    bench.openings.append(Opening(bottom, base, Gate(plug, frozenset({"out"}))))
    bench.openings.append(Opening(top, base + HEATER_RELIEF_M, Gate(relief, frozenset({"open"}))))
    bench.heater_ports[fitting.id] = (bottom, top)


def _trap(bench: Workbench, fitting: Fitting) -> None:
    bench.pools[fitting.id] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=True, drops_to=fitting.drains_to or ""
    )


def _waste_tank(bench: Workbench, fitting: Fitting) -> None:
    gate = bench.control(fitting, "gate", "shut | open", "/gate")
    _joint(bench, fitting)
    bench.openings.append(Opening(fitting.id, _height(fitting), Gate(gate, frozenset({"open"}))))
    bench.pools[fitting.id] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=False, heel=TANK_HEEL
    )


BUILDERS: Mapping[str, Builder] = MappingProxyType(
    {
        "tee": _joint,
        "fresh tank": _fresh_tank,
        "antifreeze hose": _antifreeze_hose,
        "strainer": _bowl,
        "filter housing": _bowl,
        "demand pump": _pump,
        "city inlet": _city_inlet,
        "ball valve": _ball_valve,
        "check valve": _check_valve,
        "low point": _low_point,
        "tank heater": _tank_heater,
        "kitchen tap": _tap,
        "lavatory tap": _tap,
        "shower": _tap,
        "tub": _tap,
        "outside shower": _tap,
        "gravity toilet": _tap,
        "trap": _trap,
        "gray tank": _waste_tank,
        "black tank": _waste_tank,
    }
)
"""Builder of each kind that has a model."""
