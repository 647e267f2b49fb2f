"""The builder of each kind of fitting, as one table."""

from collections.abc import Callable, Mapping
from types import MappingProxyType

from wintertight.coach.card import Fitting
from wintertight.flow.fittings import appliances, fixtures, heat, supply, valves, waste
from wintertight.flow.fittings.workbench import Workbench

Builder = Callable[[Workbench, Fitting], None]

BUILDERS: Mapping[str, Builder] = MappingProxyType(
    {
        "tee": Workbench.joint,
        "manifold": Workbench.joint,
        "capped tee": valves.build_dead_end,
        "prepared stub": valves.build_dead_end,
        "fresh tank": supply.build_fresh_tank,
        "antifreeze hose": supply.build_antifreeze_hose,
        "strainer": supply.build_bowl,
        "filter housing": supply.build_bowl,
        "demand pump": supply.build_pump,
        "city inlet": supply.build_city_inlet,
        "accumulator": supply.build_accumulator,
        "softener": supply.build_removed,
        "UV sleeve": supply.build_removed,
        "membrane filter": supply.build_membrane,
        "pressure regulator": supply.build_loose,
        "supply hose": supply.build_loose,
        "outside filter": supply.build_loose,
        "ball valve": valves.build_ball_valve,
        "check valve": valves.build_check_valve,
        "three-way valve": valves.build_many_way,
        "service panel": valves.build_many_way,
        "tempering valve": valves.build_tempering_valve,
        "recirculating diverter": valves.build_diverter,
        "low point": valves.build_low_point,
        "tank heater": heat.build_tank_heater,
        "on-demand heater": heat.build_on_demand_heater,
        "hydronic coil": heat.build_hydronic_coil,
        "kitchen tap": fixtures.build_tap,
        "lavatory tap": fixtures.build_tap,
        "tub": fixtures.build_tap,
        "whirlpool": fixtures.build_whirlpool,
        "shower": fixtures.build_shower,
        "outside shower": fixtures.build_shower,
        "outside kitchen": fixtures.build_shower,
        "spray port": fixtures.build_spray,
        "bidet sprayer": fixtures.build_spray,
        "gravity toilet": fixtures.build_tap,
        "vacuum toilet": fixtures.build_tap,
        "cassette toilet": fixtures.build_tap,
        "macerating toilet": appliances.build_with_sump,
        "ice maker": appliances.build_ice_maker,
        "door dispenser": appliances.build_dispenser,
        "fridge filter": appliances.build_fridge_filter,
        "washer": appliances.build_with_sump,
        "dishwasher": appliances.build_with_sump,
        "trap": waste.build_trap,
        "gray tank": waste.build_waste_tank,
        "black tank": waste.build_waste_tank,
        "tank rinse": waste.build_tank_rinse,
        "macerator": waste.build_macerator,
    }
)
"""Builder of each kind."""
