"""Heaters."""

from wintertight.coach.card import Fitting
from wintertight.flow.coach_network import Gate, Link, Opening
from wintertight.flow.fittings.workbench import Workbench, height_of
from wintertight.flow.losses import fitting_resistance

COLD_PORT_M, HOT_PORT_M, RELIEF_M = 0.10, 0.30, 0.33
"""Heights of the ports of a tank heater above its bottom [m]; common practice."""


def _heat_sources(bench: Workbench, fitting: Fitting) -> None:
    for source in fitting.heat:
        bench.control(fitting, source, "on | off", f"/{source}")


def build_tank_heater(bench: Workbench, fitting: Fitting) -> None:
    """Add a heater with a tank, a plug at its bottom and a relief valve at its top."""
    base = height_of(fitting)
    cold, hot = f"{fitting.id}.cold", f"{fitting.id}.hot"
    bench.heights_m[cold] = base + COLD_PORT_M
    bench.heights_m[hot] = base + HOT_PORT_M
    _heat_sources(bench, fitting)
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
    bench.heights_m[bottom], bench.heights_m[top] = base, base + RELIEF_M
    bench.openings.append(Opening(bottom, base, Gate(plug, frozenset({"out"}))))
    bench.openings.append(Opening(top, base + RELIEF_M, Gate(relief, frozenset({"open"}))))
    bench.heater_ports[fitting.id] = (bottom, top)


def build_on_demand_heater(bench: Workbench, fitting: Fitting) -> None:
    """Add a heater without a tank; its two drain plugs come out together."""
    _heat_sources(bench, fitting)
    plug = bench.control(fitting, "plug", "in | out", "/plug")
    bench.through(fitting, Gate(plug, frozenset({"in"})), loss="on-demand heater")
    base = height_of(fitting)
    bottom, top = f"{fitting.id}/plug", f"{fitting.id}/inlet plug"
    bench.heights_m[bottom], bench.heights_m[top] = base - 0.01, base
    out = Gate(plug, frozenset({"out"}))
    bench.openings.append(Opening(bottom, base - 0.01, out))
    bench.openings.append(Opening(top, base, out))
    bench.heater_ports[fitting.id] = (bottom, top)


def build_hydronic_coil(bench: Workbench, fitting: Fitting) -> None:
    """Add the coil of a hydronic heater: what flows through it fills it."""
    _heat_sources(bench, fitting)
    bench.through(fitting, loss="on-demand heater")
