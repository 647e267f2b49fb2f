"""Ice makers, washers and what else drinks by itself."""

from wintertight.coach.card import Fitting
from wintertight.flow.coach_network import Gate, Pool
from wintertight.flow.fittings.workbench import Workbench

SUMP_M3 = {"washer": 0.5e-3, "dishwasher": 0.3e-3, "macerating toilet": 0.5e-3}
"""What stays in a sump and its drain pump once they have pumped out [m3]; common practice."""

MOULD_M3 = 0.15e-3
"""What the valve, the fill tube and the mould of an ice maker hold [m3]; common practice."""


def build_with_sump(bench: Workbench, fitting: Fitting) -> None:
    """Add a machine whose valves fill a sump, which a pump empties to the drain."""
    sump = f"{fitting.id}/sump"
    bench.pools[sump] = Pool(
        fitting.id, SUMP_M3[fitting.kind], stirred=True, drops_to=bench.pool_below(fitting)
    )
    for port in fitting.ports:
        name = bench.control(
            fitting, "valve of a machine", "shut | open", f".{port}" if port else ""
        )
        bench.outlet(fitting, port, Gate(name, frozenset({"open"})), sump)


def build_ice_maker(bench: Workbench, fitting: Fitting) -> None:
    """Add an ice maker: its line is taken off and cleared, its mould emptied by hand."""
    bench.simple_outlet(fitting, "line end", "joined | off", "off")
    bench.control(fitting, "mould", "full | emptied", "/mould")
    bench.pools[f"{fitting.id}/mould"] = Pool(fitting.id, MOULD_M3, stirred=False, heel=0.02)


def build_dispenser(bench: Workbench, fitting: Fitting) -> None:
    """Add a door dispenser: its reservoir is flushed through its lever."""
    bench.simple_outlet(fitting, "lever", "shut | open", "open")


def build_fridge_filter(bench: Workbench, fitting: Fitting) -> None:
    """Add a filter whose cartridge gives way to a plug that lets pass."""
    bench.control(fitting, "filter", "cartridge in | bypass plug in", "/filter")
    bench.through(fitting, loss="filter housing")
