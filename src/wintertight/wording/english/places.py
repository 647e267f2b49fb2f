"""English: what stands in the way of a method at a place, and what is looked at on the lot."""

from collections.abc import Mapping
from types import MappingProxyType

HINDRANCES: Mapping[str, str] = MappingProxyType(
    {
        "door too low": "The door is {door_m} high, the coach {coach_m}.",
        "door may be too low": "Measure door and coach: it may not fit.",
        "water has nowhere to go": "Water may not run off there.",
        "no compressor": "There is no compressor.",
        "no power for the compressor": "There is no power for the compressor.",
        "no 12 volts": "The battery is flat and there is no power: the pump does not run.",
        "pump cannot run dry": "The pump cannot run dry: take its line off and let it run out.",
        "plug in": "Plug the coach in.",
        "check battery": "See that the battery carries the pump.",
        "set up generator": "Set up the generator.",
        "generator outside": "The generator stays outside: no engine runs indoors.",
        "no warmth": "There is no power to warm it with.",
        "bring warm air": "Bring heaters and fans.",
        "dump elsewhere": "The waste tanks are emptied somewhere else.",
        "carry water": "Carry water to rinse or to test with.",
        "bring basins": "Bring basins for the antifreeze that drips.",
        "measure slope": "Put a level on the floor, both ways.",
    }
)
"""By key of the hindrance."""

PRECONDITIONS: Mapping[str, str] = MappingProxyType(
    {
        "already frozen": "Look whether anything has frozen already: then it is thawed first.",
        "already frozen: wrong": "It has frozen: thaw it first, with neither pump nor air.",
        "keys": "See that all keys are there.",
        "keys: wrong": "Get the missing keys.",
        "slides": "See that the slides are out: panels lie behind them. Slides and steps pinch.",
        "slides: wrong": "Run the slides out: panels lie behind them. Slides and steps pinch.",
        "battery": "See that the battery holds its charge.",
        "battery: wrong": "The battery is flat: charge it, or plug the coach in.",
        "battery frozen": (
            "A flat battery with liquid acid freezes near {freezes_degC}: look before it is charged"
            " or jumped."
        ),
        "waste tanks": "See that the waste tanks are empty.",
        "waste tanks: wrong": "Empty the waste tanks at a dump.",
        "heater hot": "Turn the {part} off now: it cools for hours before it is opened.",
        "heater hot: wrong": "The {part} is still hot: it is not opened before it is cool.",
        "fresh tank": "Drain the {part} now: {volume_m3} take a while.",
        "fresh tank: wrong": "The {part} still holds water: drain it now.",
        "appliance": "See that the {part} is empty of what people put in.",
        "appliance: wrong": "Take clothes, dishes or ice out of the {part}.",
    }
)
"""By key of the precondition; "key: wrong" where it was looked at and found so."""

PLACES: Mapping[str, str] = MappingProxyType(
    {
        "at": "At {place}: {more} longer than in a bay with everything. {told}",
        "at, no longer": "At {place}.",
        "not at": "Not possible at {place}. {told}",
        "bay": "bay",
        "lot": "lot",
        "yard": "yard",
        "driveway": "driveway",
        "before": "Before the slot, on the lot",
        "waits": "Up to {time} by itself.",
        "advised": "Advised only.",
        "assumed": "What nobody has written down is taken as such a place usually is.",
    }
)
"""What is said of a place as a whole."""
