"""Where fluid comes from: tanks, hoses, pumps, filters, the city inlet."""

from dataclasses import replace

from wintertight.coach.card import Fitting
from wintertight.coach.quantity import Quantity
from wintertight.flow.coach_network import (
    Breather,
    Gate,
    Link,
    Opening,
    Outlet,
    Pool,
    Source,
)
from wintertight.flow.fittings.workbench import AIR, Workbench, height_of
from wintertight.flow.losses import (
    GALLON_PER_MINUTE,
    GRAVITY,
    WATER_DENSITY,
    emitter_resistance,
    fitting_resistance,
)
from wintertight.units import PSI_PA

USUAL_PUMP_OPEN = Quantity.known(3.0 * GALLON_PER_MINUTE, "guessed")
"""Open flow of a small demand pump [m3/s]; common practice."""

USUAL_PUMP_CUT_OFF = Quantity.known(50.0 * PSI_PA, "guessed")
"""Pressure at which a small demand pump stops [Pa]; common practice."""

CITY_HEAD_M = 40.0 * PSI_PA / (WATER_DENSITY * GRAVITY)
"""City pressure behind a regulator [m]; common practice."""

HAND_PUMP = "/hand pump"
"""Suffix of the source that a hand pump on the city inlet is."""

HAND_PUMP_HEAD_M = 20.0 * PSI_PA / (WATER_DENSITY * GRAVITY)
"""Head an arm gets out of a small hand pump [m]: 20 psi; common practice."""

HAND_PUMP_OPEN_M3_S = 1.0 * GALLON_PER_MINUTE
"""Flow of a small hand pump against nothing [m3/s]: a gallon a minute; common practice."""

TANK_LEVEL_M = 0.2
"""Height of water in a fresh tank in use, above its outlet [m]; common practice."""

TANK_HEEL = 0.02
"""Share of a tank that stays when it is drained [1]; common practice."""


def build_fresh_tank(bench: Workbench, fitting: Fitting) -> None:
    """Add a tank that feeds the pump until it is drained, and then lets air in."""
    bench.joint(fitting)
    drain = bench.control(fitting, "drain", "shut | open", "/drain")
    in_use = Gate(bench.control(fitting, "tank", "in use"), frozenset({"in use"}))
    head = height_of(fitting) + TANK_LEVEL_M
    bench.source(fitting, in_use, head, "/outlet", fitting.id)
    bench.openings.append(Opening(fitting.id, height_of(fitting), Gate(drain, frozenset({"open"}))))
    bench.pools[fitting.id] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=False, heel=TANK_HEEL
    )


def build_antifreeze_hose(bench: Workbench, fitting: Fitting) -> None:
    """Add a hose whose end goes into a jug."""
    bench.joint(fitting)
    end = bench.control(fitting, "hose", "stowed | in the jug | open to the air")
    passes = Gate(end, frozenset({"in the jug", "open to the air"}))
    bench.source(fitting, passes, height_of(fitting), "/end", fitting.id)
    hangs = Gate(end, frozenset({"open to the air"}))
    bench.openings.append(Opening(fitting.id, height_of(fitting), hangs))


def build_bowl(bench: Workbench, fitting: Fitting) -> None:
    """Add a strainer or filter housing, whose bowl comes off."""
    if fitting.kind == "filter housing":
        bench.control(fitting, "cartridge", "in | out", "/cartridge")
    bowl = bench.control(fitting, "bowl", "tight | loose | off", "/bowl")
    bench.through(fitting, Gate(bowl, frozenset({"tight", "loose"})))


def build_pump(bench: Workbench, fitting: Fitting) -> None:
    """Add a demand pump: a straight curve from open flow to cut-off, one way."""
    switch = bench.control(fitting, "switch", "off | on", "/switch")
    opened = fitting.flow or USUAL_PUMP_OPEN
    cut_off = fitting.cut_off or USUAL_PUMP_CUT_OFF
    start, end = f"{fitting.id}.in", f"{fitting.id}.out"
    bench.heights_m[start] = bench.heights_m[end] = height_of(fitting)
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


def build_city_inlet(bench: Workbench, fitting: Fitting) -> None:
    """Add the inlet for a hose: city pressure, a jug, a hand pump; its check pressed, an outlet.

    The compressor is put on in place of the main; blowing out brings its own pressure.
    """
    hose = bench.control(fitting, "hose", "off | on | in the jug | hand pump | air line", "/hose")
    check = bench.control(fitting, "check", "free | pressed")
    outside = f"{fitting.id}(outside)"
    bench.joint(fitting)
    bench.heights_m[outside] = bench.heights_m[outside + AIR] = height_of(fitting)
    bench.links[fitting.id] = Link(
        id=fitting.id,
        part=fitting.id,
        start=outside,
        end=fitting.id,
        resistance_s2_m5=fitting_resistance("check valve"),
        holding="plug",
        volume_m3=bench.hollow_m3(fitting),
    )
    pressed = Gate(check, frozenset({"pressed"}))
    spout = Link(
        id=f"{fitting.id}(outlet)",
        part=fitting.id,
        start=outside,
        end=outside + AIR,
        resistance_s2_m5=emitter_resistance(fitting.kind),
        one_way=True,
        gate=pressed,
        drops_to="",
    )
    bench.links[spout.id] = spout
    bench.outlets[check] = Outlet(check, ((check, "pressed"),), spout.id, fitting.id)
    bench.openings.append(Opening(outside, height_of(fitting), pressed))
    on, jug = Gate(hose, frozenset({"on"})), Gate(hose, frozenset({"in the jug"}))
    bench.source(fitting, on, CITY_HEAD_M, "/main", fitting.id, joins=outside)
    bench.source(fitting, jug, 0.0, "/jug", hose, joins=outside)
    by_hand = Gate(hose, frozenset({"hand pump"}))
    bench.source(
        fitting, by_hand, HAND_PUMP_HEAD_M, HAND_PUMP, fitting.id + HAND_PUMP, joins=outside
    )
    worked = fitting.id + HAND_PUMP
    bench.links[worked] = replace(
        bench.links[worked], resistance_s2_m5=HAND_PUMP_HEAD_M / HAND_PUMP_OPEN_M3_S**2
    )


def build_removed(bench: Workbench, fitting: Fitting) -> None:
    """Add what is taken out for the winter and bridged with a hose."""
    body = bench.control(fitting, "body", "in place | removed", "/body")
    link = bench.through(fitting, Gate(body, frozenset({"in place"})), loss="filter housing")
    bridge = replace(
        link,
        id=f"{fitting.id}(bridge)",
        holding="nothing",
        volume_m3=0.0,
        gate=Gate(body, frozenset({"removed"})),
    )
    bench.links[bridge.id] = bridge


def build_membrane(bench: Workbench, fitting: Fitting) -> None:
    """Add a membrane filter with its tank: taken out, its line ends in the open."""
    bench.pools[f"{fitting.id}/tank"] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=False, heel=0.0
    )
    bench.control(fitting, "body", "in place | removed", "/body")
    bench.simple_outlet(fitting, "line end", "joined | off", "off")


def build_accumulator(bench: Workbench, fitting: Fitting) -> None:
    """Add a vessel that fills and empties a little through its one line at each use of a tap."""
    bench.joint(fitting)
    bench.pools[fitting.id] = Pool(fitting.id, bench.hollow_m3(fitting), stirred=True)
    lines = [k.id for k in bench.card.lines if fitting.id in {k.start.fitting, k.end.fitting}]
    bench.breathers += [Breather(fitting.id, line) for line in lines[:1]]


def build_loose(bench: Workbench, fitting: Fitting) -> None:
    """Add a wet thing that belongs to no line: a hose, a regulator, an outside filter."""
    bench.control(fitting, "body", "in place | removed", "/body")
    bench.pools[fitting.id] = Pool(fitting.id, bench.hollow_m3(fitting), stirred=False, heel=0.0)
