"""English: what to ask and where to look, once a card was read."""

from collections.abc import Mapping
from types import MappingProxyType

QUESTIONS: Mapping[str, str] = MappingProxyType(
    {
        "nobody has looked": "{kind}: is there one? {where}",
        "not looked at": "{part}: is it really there, and where? {where}",
        "no trap": "{part}: no trap is noted below it. Is there one? {where}",
        "no way to waste": "{part}: which tank does it run to? Follow the pipe below it.",
        "trap without a sink": "{part}: what drains into it? Look straight above it.",
        "toilet without a tank": "{part}: which tank does it flush into? Look straight below it.",
        "no shut-off": (
            "{part}: no shut-off valve on its branch. Is there one? Look behind its small door and"
            " where the branch leaves the trunk. Without one, run both its sides."
        ),
        "no ice maker shut-off": (
            "{part}: no shut-off valve on its line. Is there one? Look behind the refrigerator and"
            " under the galley sink."
        ),
        "no strainer": (
            "{part}: no strainer is noted before it. Is there one? Look at the pump's inlet: its"
            " bowl holds water."
        ),
        "tank not known": (
            "{part}: what is its tank made of, and has it an anode rod? Read its label, or look at"
            " its drain plug: a rod's hexagon is larger."
        ),
        "several heaters": (
            "There are {count} water heaters. Has each its bypass? Look at the pipes behind each."
        ),
        "no bypass": (
            "{part}: no bypass is noted. Is there one? Look behind it for a pipe from its cold to"
            " its hot side. Without one, filling it takes its whole volume in antifreeze."
        ),
        "heater not isolated": (
            "{part}: a bypass, but no {missing}. Is there one? Look at its pipes. Without it,"
            " antifreeze can still get in."
        ),
        "no low point": (
            "No low point is noted. Is there one? Look below the floor for two short tubes with"
            " caps, and beside the water heater."
        ),
        "no antifreeze inlet": (
            "No antifreeze hose or inlet valve is noted. Is there one? Look at the pump's inlet."
            " Without one, the hose goes on the pump's suction."
        ),
        "no tank suction": (
            "No valve between fresh tank and pump is noted. Is there one? Follow the pump's inlet"
            " to the tank. Without one, the pump may draw from the tank too."
        ),
        "valve without role": "{part}: what is this valve for? Follow both its pipes.",
        "no site": "Where does it spend the winter? The card names no storage site.",
        "design low missing": "How cold does its site get? The card gives no design low.",
        "design low implausible": "A design low of {design_low_degC}: is that a slip of the pen?",
        "design low above freezing": (
            "A design low of {design_low_degC} is above freezing: is it meant so?"
        ),
        "no product": "Which antifreeze is it filled with? The card names none.",
        "heights inconsistent": (
            "{part}: its lowest ({lowest_m}) and highest place ({highest_m}) do not fit its ends."
            " Which is wrong? Measure them from the floor."
        ),
        "sag longer than line": (
            "{part}: {length_m} long, but its heights need {needed_m}. Which is wrong?"
        ),
        "outside the coach": (
            "{part}: {along_m} from the front, and the coach is {length_m} long. Which is wrong?"
        ),
        "vin has a wrong shape": (
            "The vehicle number {vin} has the wrong shape. Read it again from its plate."
        ),
        "vin check digit": (
            "The vehicle number {vin} has a slip: its check digit should be {expected}. Read it"
            " again from its plate."
        ),
    }
)
"""What ``coach check`` asks; a plan says the same as a statement, in ``FINDINGS``."""

WHERE: Mapping[str, str] = MappingProxyType(
    {
        "any": "Look where its lines lead.",
        "accumulator": "Look beside the water pump for a small tank.",
        "bidet sprayer": "Look beside the toilet.",
        "capped tee": "Look along the lines for a plugged branch.",
        "city inlet": "Look on the outside wall, and in the wet bay.",
        "dishwasher": "Look in the galley for a front panel or a drawer.",
        "door dispenser": "Look at the refrigerator's door.",
        "fridge filter": "Look in the refrigerator, behind its grille, and on its line.",
        "hydronic coil": "Look in the heating bay for a coolant heater.",
        "ice maker": "Look in the freezer, and behind the refrigerator for a thin line.",
        "macerator": "Look at the waste tanks' outlet for a pump with a hose.",
        "manifold": "Look behind panels for a block with many lines and small handles.",
        "membrane filter": "Look under the galley sink for filters with a small tank.",
        "on-demand heater": "Look at the outside wall for a heater's door without a drain plug.",
        "outside kitchen": "Look behind the large doors of the outside wall.",
        "outside shower": "Look behind the small doors of the outside wall.",
        "prepared stub": "Look in the closet and behind the refrigerator for capped lines.",
        "recirculating diverter": "Look at the shower for a button that sends cool water back.",
        "service panel": "Look in the wet bay for a panel with handles and hose fittings.",
        "softener": "Look in the wet bay for a tall tank on the supply.",
        "spray port": "Look on the outside wall and at the toilet for a snap fitting.",
        "tank rinse": "Look on the outside wall for a second hose fitting, at the black tank.",
        "tempering valve": "Look at the water heater's hot outlet.",
        "three-way valve": "Look at the pump's inlet and behind the water heater.",
        "tub": "Look in each bath.",
        "UV sleeve": "Look beside the filters for a steel tube with a cable.",
        "washer": "Look in the closets for a washer, or for its two valves.",
        "whirlpool": "Look in the tub for jets.",
        "trap below kitchen tap": "Look in the cabinet below.",
        "trap below lavatory tap": "Look in the cabinet below.",
        "trap below shower": "Look below the floor, and behind a panel beside it.",
        "trap below tub": "Look behind a panel at its end, and below the floor.",
    }
)
"""Where a kind of fitting is found, as coaches are usually built; common practice."""

SISTER: Mapping[str, str] = MappingProxyType(
    {
        "written": "{file}: the card of {coach}, made from the card of {sister}.",
        "ask": "Ask or look before it is trusted:",
        "head": "Made from the card of {sister}, a coach of the same floor plan.",
        "head next": "What was measured there counts as less sure here. Ask before it is trusted:",
        "number": "Its number and name: are they right on the card?",
        "vin": "Its vehicle number: read it from the plate.",
        "year": "Its model year: is it the same? Makers move lines from year to year.",
        "site": "Its site: where does it spend the winter?",
        "design low": "Its design low: how cold does that site get?",
        "product": "Its antifreeze: is it to be filled with the same?",
        "outside shower shut-off": (
            "Its outside shower: is there a shut-off valve? Look behind its small door."
        ),
        "filters": "Filters: has somebody added one, or taken one off?",
        "heater": "Its water heater: is it the same make and size, and has it its bypass?",
        "toilet": "Its toilet: is it the same kind?",
        "appliances": "Ice maker, washer, dishwasher: are the same ones fitted?",
        "absent": "What the other coach does not have: does this one lack it too?",
    }
)
"""What is said of a sister coach's card."""

HISTORY: Mapping[str, str] = MappingProxyType(
    {
        "none": "{coach}: this card was never replaced.",
        "none readable": "{coach}: no earlier card can be read.",
        "heading one": "{coach}: 1 earlier card, oldest first.",
        "heading many": "{coach}: {count} earlier cards, oldest first.",
        "entry": "{day}  {why}: {count} to the next.",
        "unreadable": "{day}  {why}: it, or the next, is no card that can be read.",
        "damaged": (
            "Line {lines} of {file} cannot be read: a write was cut off. The others are whole."
        ),
    }
)
"""What is said of the earlier selves of a card."""
