"""English: what the parts of a coach are called, and what about its card deserves a word."""

from collections.abc import Mapping
from types import MappingProxyType

KINDS: Mapping[str, str] = MappingProxyType(
    {
        "line": "line",
        "tee": "tee",
        "manifold": "manifold",
        "capped tee": "capped tee",
        "prepared stub": "stub for a later fitting",
        "fresh tank": "fresh water tank",
        "antifreeze hose": "antifreeze hose",
        "strainer": "pump strainer",
        "demand pump": "water pump",
        "filter housing": "filter housing",
        "accumulator": "accumulator",
        "pressure regulator": "pressure regulator",
        "supply hose": "supply hose",
        "outside filter": "outside water filter",
        "softener": "water softener",
        "UV sleeve": "UV lamp sleeve",
        "membrane filter": "membrane filter",
        "city inlet": "city water inlet",
        "ball valve": "valve",
        "check valve": "check valve",
        "three-way valve": "three-way valve",
        "service panel": "service panel",
        "tempering valve": "tempering valve",
        "low point": "low point",
        "tank heater": "water heater",
        "on-demand heater": "on-demand water heater",
        "hydronic coil": "hydronic coil",
        "kitchen tap": "kitchen tap",
        "lavatory tap": "lavatory tap",
        "shower": "shower",
        "tub": "tub",
        "outside shower": "outside shower",
        "outside kitchen": "outside kitchen",
        "spray port": "spray port",
        "whirlpool": "whirlpool",
        "recirculating diverter": "recirculating diverter",
        "bidet sprayer": "bidet sprayer",
        "gravity toilet": "toilet",
        "vacuum toilet": "vacuum toilet",
        "macerating toilet": "macerating toilet",
        "cassette toilet": "cassette toilet",
        "ice maker": "ice maker",
        "door dispenser": "water dispenser in the fridge door",
        "fridge filter": "fridge water filter",
        "washer": "washing machine",
        "dishwasher": "dishwasher",
        "trap": "trap",
        "gray tank": "gray tank",
        "black tank": "black tank",
        "tank rinse": "tank rinse",
        "macerator": "macerator pump",
    }
)

ROLES: Mapping[str, str] = MappingProxyType(
    {
        "tank suction": "valve from the fresh tank",
        "antifreeze inlet": "valve from the antifreeze hose",
        "heater cold": "valve into the heater",
        "heater hot": "valve out of the heater",
        "heater bypass": "bypass valve",
        "branch shut-off": "shut-off valve",
        "pump suction": "valve at the pump's inlet",
    }
)
"""What a valve is called that has no name of its own."""

NAMES: Mapping[str, str] = MappingProxyType(
    {
        "hot": "{part}, hot side",
        "cold": "{part}, cold side",
        "sump": "sump of the {part}",
        "jets": "jets of the {part}",
        "mould": "mould of the {part}",
        "inside": "tank of the {part}",
        "one of several": "{part} ({id})",
        "jug": "fresh jug",
        "line": "line {id}",
        "any": "any {part}",
    }
)
"""How a part is pointed out."""

SOURCES_OF_HEAT: Mapping[str, str] = MappingProxyType(
    {
        "burner": "burner",
        "element": "electric element",
        "coolant": "engine coolant",
        "heat": "every source of heat",
    }
)

FINDINGS: Mapping[str, str] = MappingProxyType(
    {
        "nobody has looked": "{kind}: nobody has looked whether this coach has one.",
        "not looked at": "{part}: on the card, but nobody has looked at it.",
        "no trap": "{part}: no trap is noted below it. A trap nobody knows of gets no antifreeze.",
        "no way to waste": "{part}: the card does not say which tank it runs to.",
        "no shut-off": (
            "{part}: no shut-off valve on its branch. It is often forgotten: run both its sides."
        ),
        "several heaters": "There are {count} water heaters; look whether each has its bypass.",
        "no bypass": ("{part}: no bypass. Filling it takes its whole volume in antifreeze."),
        "heater not isolated": "{part}: a bypass, but no {missing}. Antifreeze can still get in.",
        "no low point": "No low point is noted. Without one, much water stays to be pushed out.",
        "no antifreeze inlet": (
            "No antifreeze hose or inlet valve is noted: the hose goes on the pump's suction."
        ),
        "no tank suction": (
            "No valve between fresh tank and pump is noted: the pump may draw from the tank too."
        ),
        "valve without role": "{part}: the card does not say what this valve is for.",
        "no site": "The card names no storage site.",
        "design low missing": "The card gives no design low: how cold does its site get?",
        "design low implausible": "A design low of {design_low_degC}: is that a slip of the pen?",
        "design low above freezing": "A design low of {design_low_degC} is above freezing.",
        "no product": "The card names no antifreeze.",
        "heights inconsistent": (
            "{part}: its lowest ({lowest_m}) and highest place ({highest_m}) do not fit its ends."
        ),
        "sag longer than line": (
            "{part}: {length_m} long, but its heights need {needed_m}. One of them is wrong."
        ),
        "outside the coach": (
            "{part}: {along_m} from the front, and the coach is {length_m} long."
        ),
        "vin has a wrong shape": "The vehicle number {vin} has the wrong shape.",
        "vin check digit": (
            "The vehicle number {vin} has a slip: its check digit should be {expected}."
        ),
    }
)
