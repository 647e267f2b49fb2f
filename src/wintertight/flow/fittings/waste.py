"""Below the drains: traps, tanks, and what is fixed to them."""

from wintertight.coach.card import Fitting
from wintertight.flow.coach_network import Gate, Opening, Pool
from wintertight.flow.fittings.supply import TANK_HEEL
from wintertight.flow.fittings.workbench import Workbench, height_of


def build_trap(bench: Workbench, fitting: Fitting) -> None:
    """Add a trap: always full, stirred by what runs through it."""
    bench.pools[fitting.id] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=True, drops_to=bench.pool_below(fitting)
    )


def build_waste_tank(bench: Workbench, fitting: Fitting) -> None:
    """Add a waste tank with its gate valve."""
    _drained_pool(bench, fitting, "gate", "shut | open", "/gate")


def build_tank_rinse(bench: Workbench, fitting: Fitting) -> None:
    """Add the rinse of a black tank: with its inlet open it drains below its vacuum breaker."""
    _drained_pool(bench, fitting, "rinse inlet", "shut | open", "/inlet")


def _drained_pool(
    bench: Workbench, fitting: Fitting, thing: str, settings: str, suffix: str
) -> None:
    gate = bench.control(fitting, thing, settings, suffix)
    bench.joint(fitting)
    bench.openings.append(Opening(fitting.id, height_of(fitting), Gate(gate, frozenset({"open"}))))
    bench.pools[fitting.id] = Pool(
        fitting.id, bench.hollow_m3(fitting), stirred=False, heel=TANK_HEEL
    )


def build_macerator(bench: Workbench, fitting: Fitting) -> None:
    """Add a macerator pump: what is poured in at the end is what it holds."""
    bench.pools[fitting.id] = Pool(fitting.id, bench.hollow_m3(fitting), stirred=True)
