"""Taps, showers, toilets: what people turn."""

from wintertight.coach.card import Fitting
from wintertight.flow.coach_network import Gate, Link, Opening, Outlet, Pool
from wintertight.flow.fittings.workbench import AIR, Workbench, height_of
from wintertight.flow.losses import emitter_resistance

HOSE_M3 = 0.08e-3
"""What the hose or riser of a shower holds [m3]; common practice."""

AT_THE_HEAD = 0.3
"""Share of a shower's resistance that is in its head [1]; common practice."""

JETS_M3 = 4e-3
"""What the pump and jets of a whirlpool hold [m3]; common practice."""


def build_tap(bench: Workbench, fitting: Fitting) -> None:
    """Add a tap whose spout is always open, with a hot side, a cold side or both."""
    for port in fitting.ports:
        name = bench.control(fitting, "tap", "shut | open", f".{port}" if port else "")
        bench.outlet(fitting, port, Gate(name, frozenset({"open"})), bench.pool_below(fitting))


def build_shower(bench: Workbench, fitting: Fitting) -> None:
    """Add a mixer with a head that can be shut: both handles open, it crosses hot to cold."""
    mixer, base = f"{fitting.id}(mixer)", height_of(fitting)
    bench.heights_m[mixer] = bench.heights_m[mixer + AIR] = base
    found_shut = fitting.kind != "shower"
    head = bench.control(fitting, "head", "shut | open" if found_shut else "open | shut", "/head")
    opened = Gate(head, frozenset({"open"}))
    resistance = emitter_resistance(fitting.kind)
    spout = Link(
        id=f"{fitting.id}(outlet)",
        part=fitting.id,
        start=mixer,
        end=mixer + AIR,
        resistance_s2_m5=AT_THE_HEAD * resistance,
        one_way=True,
        holding="plug",
        volume_m3=HOSE_M3,
        gate=opened,
        drops_to=bench.pool_below(fitting),
    )
    for port in fitting.ports:
        name = bench.control(fitting, "tap", "shut | open", f".{port}")
        node = f"{fitting.id}.{port}"
        bench.heights_m[node] = base
        bench.links[f"{node}(handle)"] = Link(
            id=f"{node}(handle)",
            part=fitting.id,
            start=node,
            end=mixer,
            resistance_s2_m5=(1.0 - AT_THE_HEAD) * resistance,
            holding="plug",
            volume_m3=bench.hollow_m3(fitting),
            gate=Gate(name, frozenset({"open"})),
        )
        bench.outlets[name] = Outlet(name, ((name, "open"), (head, "open")), spout.id, node)
    bench.links[spout.id] = spout
    bench.openings.append(Opening(mixer, base, opened))


def build_spray(bench: Workbench, fitting: Fitting) -> None:
    """Add a sprayer on one line: a bidet's, or a port outside."""
    bench.simple_outlet(fitting, "tap", "shut | open", "open")


def build_whirlpool(bench: Workbench, fitting: Fitting) -> None:
    """Add a tub with jets: its taps, and the pump and jets, which only poured fluid reaches."""
    build_tap(bench, fitting)
    bench.pools[f"{fitting.id}/jets"] = Pool(
        fitting.id, JETS_M3, stirred=True, drops_to=bench.pool_below(fitting)
    )
