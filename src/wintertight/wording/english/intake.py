"""English: what is asked about a coach, where to look, and why it matters."""

from collections.abc import Mapping
from types import MappingProxyType

QUESTIONS: Mapping[str, str] = MappingProxyType(
    {
        "shape": "What kind of coach is it?",
        "length": "How long is it, bumper to hitch?",
        "design low": "How cold does it get where it stands?",
        "heater": "What heats the water?",
        "bypass": "Which valves are on the water heater?",
        "baths": "How many baths?",
        "appliances": "Which of these run on water?",
        "outside": "What runs water on the outside?",
        "antifreeze inlet": "How does antifreeze get to the pump?",
        "water treatment": "What filters or treats the water?",
        "toilet": "What kind of toilet?",
        "tub": "Is there a tub?",
        "sprayer": "Is there a hand sprayer at the toilet?",
        "dead ends": "Are there lines that lead nowhere?",
        "mixing": "Does anything mix hot and cold before the taps?",
        "waste side": "What is on the waste tanks?",
        "fridge filter": "Is there a filter for the water at the fridge?",
        "accumulator": "Is there an accumulator at the pump?",
        "branches": "How do the lines part?",
        "low points": "Which low-point drains are there?",
        "city inlet": "Is there a city water inlet?",
        "outside shut-off": "Does the outside shower have a shut-off of its own?",
        "fridge shut-off": "Does the line to the fridge have a shut-off of its own?",
        "galley slide": "Does the kitchen ride on a slide-out?",
        "belly": "What is under the floor?",
        "pipe": "What are the water lines made of?",
        "heater tank": "What is the heater's tank made of?",
        "on the hose": "What is left on the supply hose?",
        "fresh tank": "How much does the fresh tank hold?",
        "go on": "That is all for the phone. Go on with the walk around the coach now?",
        "write": "Write the card like this?",
        "write: again": "Write {file} anew? What was measured there, and every note, is kept.",
    }
)
"""What is asked, and what is asked at the two crossroads."""

WHERE: Mapping[str, str] = MappingProxyType(
    {
        "shape": "Ask for the one that looks most like it; the brochure's name does not matter.",
        "length": "The title or the sticker by the door says it. Close will do: 27 ft.",
        "design low": "The coldest night to be ready for, not the usual one: -20F.",
        "heater": "The door with the vent on the outside wall: a sticker inside tells the gallons.",
        "bypass": "Open the panel behind the heater, often under a bed or a kitchen drawer.",
        "baths": "Count rooms with a washbasin. A toilet with a basin and no shower is a half.",
        "appliances": "Open the freezer: is there an ice tray with a hose? Look beside the sink.",
        "outside": "Small doors in the outside wall, behind the rear wheels or by the awning.",
        "antifreeze inlet": "At the pump: follow the line on its tank side, with the fresh tank.",
        "water treatment": "Under the sink, by the pump, and in the bay where the hose goes in.",
        "toilet": "Step on the pedal: does it drop, suck, or hum? A cassette has its own hatch.",
        "tub": "Look in the shower. A whirlpool has jets in its wall and a pump behind a panel.",
        "sprayer": "On the wall at the toilet: a short hose with a trigger.",
        "dead ends": "Behind cupboards, where a washer could go, and under each sink.",
        "mixing": "Under the shower and behind the heater: a knob with a scale, or a button.",
        "waste side": "By the dump valves: a hose inlet marked for flushing, or a pump.",
        "fridge filter": "A cartridge in the fridge, behind its grille, or in the line behind it.",
        "accumulator": "A small steel or plastic tank next to the pump, no bigger than a loaf.",
        "branches": "Open the bay by the pump: many lines on one block, or one line that splits?",
        "low points": "Under the frame: short pipes with caps or valves, often one red, one blue.",
        "city inlet": "Outside, mostly on the road side: where the hose screws on.",
        "outside shut-off": "Follow the lines behind the shower box inside: under a bed or seat.",
        "fridge shut-off": "A small valve behind the fridge's outside vent, or under the sink.",
        "galley slide": "Does the sink move when the slide goes out?",
        "belly": "Lie down and look: a sheet all over, or pipes in sight? Warm air in it?",
        "pipe": "Under the sink: what is printed on the tube? Gray may be PB, and PEX too.",
        "heater tank": "The plug at the bottom: a long rod hangs on it in a steel tank.",
        "on the hose": "In the hose bay and at the inlet.",
        "fresh tank": "On the tank or the papers: 40 gal.",
        "go on": "Stopping is fine: what nobody has looked at stays open.",
        "write": "< goes back to the last question.",
    }
)
"""Where to look, in one line."""

WHY: Mapping[str, str] = MappingProxyType(
    {
        "shape": (
            "It says where tank, heater, kitchen and bath are likely to be. Without it everything"
            " is guessed for a long trailer with bunks."
        ),
        "length": "Longer lines hold more water, and take more antifreeze and longer to clear.",
        "design low": (
            "Antifreeze that holds at zero bursts pipes at thirty below. The plan is made for"
            " this night."
        ),
        "heater": (
            "A tank is drained and bypassed. An on-demand heater and a coil hold little, and have"
            " their makers' own steps."
        ),
        "bypass": (
            "With no bypass the tank fills too, and takes all its gallons in antifreeze before"
            " the first hot tap shows color."
        ),
        "baths": "Each bath is a sink, a shower, a toilet, and traps below them.",
        "appliances": "Each has a valve and a hose of its own that no tap can clear.",
        "outside": "The first to freeze, and often forgotten: nobody sees it from inside.",
        "antifreeze inlet": (
            "It says what is to be turned. Without any, the line comes off the pump and a hose goes"
            " on in its place."
        ),
        "water treatment": "A canister holds a quart of water, and soaks up antifreeze if left in.",
        "toilet": "Its valve cracks first. Each kind is flushed in another way.",
        "tub": "A whirlpool keeps water in its jets and its pump; a tub has a spout of its own.",
        "sprayer": "Its hose holds water behind a trigger that nobody thinks of.",
        "dead ends": "Nothing flows where nothing opens: what stands there stays, and bursts.",
        "mixing": "A mixer or a diverter may keep hot water back while the cold tap runs clear.",
        "waste side": "A rinse line and a macerator hold water that no tap can reach.",
        "fridge filter": "It holds water, and the cartridge must come out.",
        "accumulator": "It takes in antifreeze and gives water back later, when nobody looks.",
        "branches": "On a manifold each tap has a line of its own that is run by itself.",
        "low points": "What drains there need not be pushed out: it saves gallons.",
        "city inlet": "A check valve in it keeps a mouthful of water behind its screen.",
        "outside shut-off": "Shut, it keeps antifreeze from the shower, and keeps the water in it.",
        "fridge shut-off": "Shut, nothing reaches the ice maker however long the others run.",
        "galley slide": "Its lines hang in a loop below the floor, and a loop does not drain.",
        "belly": "It decides how long lines under the floor take to freeze.",
        "pipe": "The material sets the bore, and with it the gallons.",
        "heater tank": "A steel tank has a rod that wears, and is looked at while the plug is out.",
        "on the hose": "A regulator or a filter left outside cracks in its first cold night.",
        "fresh tank": "It says how long it drains, and what is left in it weakens antifreeze.",
        "go on": (
            "On the walk-around the rest is looked at. Until then a plan tells those parts"
            " unproven; it never takes them for absent."
        ),
        "write": (
            "The card is what every plan is made from. It can be made anew when more is known:"
            " the same command goes on from here."
        ),
    }
)
"""Why it matters, in a sentence or two."""

SUBJECTS: Mapping[str, str] = MappingProxyType(
    {
        "shape": "kind of coach",
        "length": "length",
        "design low": "coldest night",
        "heater": "water heater",
        "bypass": "heater bypass",
        "baths": "baths",
        "appliances": "appliances on water",
        "outside": "water outside",
        "antifreeze inlet": "way in for antifreeze",
        "water treatment": "water treatment",
        "toilet": "toilet",
        "tub": "tub",
        "sprayer": "sprayer at the toilet",
        "dead ends": "lines that lead nowhere",
        "mixing": "mixing of hot and cold",
        "waste side": "on the waste tanks",
        "fridge filter": "filter at the fridge",
        "accumulator": "accumulator",
        "branches": "how the lines part",
        "low points": "low-point drains",
        "city inlet": "city water inlet",
        "outside shut-off": "shut-off of the outside shower",
        "fridge shut-off": "shut-off to the fridge",
        "galley slide": "kitchen on a slide-out",
        "belly": "under the floor",
        "pipe": "material of the lines",
        "heater tank": "material of the heater's tank",
        "on the hose": "left on the hose",
        "fresh tank": "size of the fresh tank",
    }
)
"""What a question is about, in a list."""
