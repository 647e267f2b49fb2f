"""English: the tag that hangs at the main tap."""

from collections.abc import Mapping
from types import MappingProxyType

TAG: Mapping[str, str] = MappingProxyType(
    {
        "title": "Tag {id}",
        "protected to": "Protected as recorded to",
        "void": "VOID ONCE WATER RUNS: one tap, one flush, one hose put on.",
        "not finished": "NOT FINISHED",
        "do not count on it": "Do not count on it in a frost before this is settled:",
        "and more": "And {count} more: see the winter record.",
        "speaks for": "Stopwatch, jugs or cups speak for {cause}.",
        "hold": "A freeze hold is for one cold night, not for a winter.",
        "refused": "As recorded: {hazard}",
        "not on coach": (
            "The record says it is not on this coach, the card says it is: {parts}. Put the card"
            " right."
        ),
        "heater": "Heater, as recorded",
        "heater line": "{part}: {facts}.",
        "heat off": "heat off",
        "heat not off": "heat NOT recorded as off",
        "bypassed": "bypassed",
        "empty": "empty",
        "antifreeze": "full of antifreeze",
        "plug in": "plug IN",
        "plug out": "plug OUT",
        "content unknown": "what is in it is NOT proven",
        "before water": "Before water runs",
        "thawed": "Above freezing everywhere, and nothing cracked.",
        "plug in again": "Plug back into: {parts}.",
        "lever down": "Relief lever down: {parts}.",
        "back in place": "Put back in place: {parts}.",
        "cartridge in": "Cartridge back into: {parts}.",
        "bowl tight": "Tighten the bowl: {parts}.",
        "set back": "Set back for use: {parts}.",
        "set back: bypassed": (
            "Set back for use: {parts}; those at the heater only when the lines are rinsed."
        ),
        "shut": "Shut every tap, low point and drain that stands open.",
        "rinse": "Rinse every outlet until it runs clear before anybody drinks.",
        "before heat": "Before heat is switched on",
        "full": "{parts}: full of water, and a hot tap runs solid. Never empty or bypassed.",
        "day": "Day",
        "method": "Method",
        "product": "Antifreeze",
        "no product": "none",
        "card": "Card",
        "technician": "Technician",
        "manual": "As recorded only. The coach's manual and local code come first.",
    }
)
"""Everything that is printed on it."""
