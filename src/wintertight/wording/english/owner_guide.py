"""English: the guide for an owner who does the whole job alone."""

from collections.abc import Mapping
from types import MappingProxyType

GUIDE: Mapping[str, str] = MappingProxyType(
    {
        "title": "Owner's guide {id}",
        "heading": "Owner's guide",
        "how": "How: {method}",
        "buy": "Buy and have ready",
        "check": "Check first",
        "off": "Do not switch on",
        "never": "When a tap never clears",
        "never: blow": "When an outlet never blows clear",
        "never: drain": "When it does not run empty",
        "never: thaw": "When a section does not hold",
        "open": "Not proven, and what would settle it",
        "shop": "Stop and call a shop",
        "void": "When this is void",
        "spring": "In spring, before any heat goes on",
        "spring: hold": "When the cold is over, before any heat goes on",
        "spring: thaw": "After that",
        "mind": "Mind",
        "tap": "Tap or outlet",
        "colour": "Colour comes",
        "count": "Then count",
        "blow": "Blow for",
        "first": "First tap: {tap}.",
        "first: blow": "First outlet: {tap}.",
        "rounds": (
            "One at a time, in this order: open it, wait for colour that stays, count on for the"
            " time in the last column, shut it. Never two at once."
        ),
        "rounds: blow": (
            "One at a time, in this order: open it, blow until only mist comes and for the time in"
            " the last column, shut it. Never two at once."
        ),
        "not cleared": "this compressor cannot clear it: count it as not blown out",
        "no colour": "no colour is expected: shut it after {volume}, count it as not filled",
        "weak here": "never reaches full strength by the calculation: see what is not proven",
        "handle": "{name}:",
        "set to": "set to {position}",
        "antifreeze": "antifreeze",
        "limits": (
            "Worked out from the coach's card by {engine}; it holds for that coach and for what was"
            " really done. The coach's manual and local code come before this guide."
        ),
        "bypass picture": "The bypass as it must stand for the winter",
        "way in picture": "The way in for the antifreeze",
    }
)
"""Headings, columns, and what is said once."""

STEPS: Mapping[str, str] = MappingProxyType(
    {
        "open handles": "Set these handles, so that nothing is cut off:",
        "open shut-off": "Open this shut-off, so that what is behind it is reached:",
        "set bypass": "Bypass the heater. Set these handles:",
        "draw from jug": "Set these handles:",
        "hand pump on": "Set these handles:",
        "air on": "Set these handles:",
        "test trunk": "Set these handles:",
        "test branch": "Set these handles:",
        "hose": "Let the end of the antifreeze hose hang free.",
    }
)
"""What stands above handles that are set in a step."""

GROUPS: Mapping[str, str] = MappingProxyType(
    {
        "pour a cup": "Pour in antifreeze: {items}.",
        "pour a cup item": "{cups} into the {part}",
        "hold open": "One after another, each until nothing runs: {items}.",
        "hold open item": "{part} ({how})",
        "loosen bowl": "Turn these bowls a quarter turn loose: {items}.",
        "loosen bowl item": "{part}",
        "empty bowl": "Take these bowls off, empty them and screw them back on loosely: {items}.",
        "empty bowl item": "{part}",
        "take out": "Take these off the coach, empty them and store them warm: {items}.",
        "take out item": "{part}",
        "then hot": "then its hot side",
        "then cold": "then its cold side",
        "numbers": "{first}\u2013{last}",
        "between": "; ",
    }
)
"""Steps of one kind put together where there is no room for each, and one item of them."""

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "heat stays off": (
            "Never switch it on again, burner or element, while it is empty or bypassed: that ruins"
            " it. Not before the last steps of this guide."
        ),
        "not into": "Antifreeze must not get into {places}.",
        "tank": "the fresh tank",
        "bypassed": "the heater that is bypassed ({parts})",
        "cartridge": "a cartridge ({parts})",
        "taken out": "what is taken out ({parts})",
        "drinking": "anything that is drunk, ice too",
        "ground": "the ground or a storm drain",
    }
)
"""What an owner must mind besides what the job sheet says, at the step where it matters."""

BUY: Mapping[str, str] = MappingProxyType(
    {
        "jugs": "{jugs} of {size} antifreeze for this coach, and {spare} to spare.",
        "glycol": (
            "Its label must say: made for drinking water lines; propylene glycol, {share} by"
            " volume. Use it undiluted. A weaker one will not do."
        ),
        "ethanol": (
            "Its label must say: made for drinking water lines; ethanol, {share} by volume. Use it"
            " undiluted. A weaker one will not do."
        ),
        "both": (
            "Its label must say: made for drinking water lines; propylene glycol, {share}, and"
            " ethanol, {ethanol}, by volume. Use it undiluted. A weaker one will not do."
        ),
        "rating": (
            "Its label must say: made for drinking water lines; {ratings}, or colder. Use it"
            " undiluted. What is in it is not printed, so a part that still holds some water is"
            " not proven."
        ),
        "no rating": (
            "Its label must say: made for drinking water lines. It prints neither what is in it nor"
            " a rating: nothing that it fills is proven."
        ),
        "burst rating": "burst protection to {rating}",
        "freeze rating": "freeze protection to {rating}",
        "printed": "The one reckoned with also prints {ratings}; what is in it counts, not that.",
        "poison": "Never engine antifreeze: ethylene glycol is a poison.",
        "none": "No antifreeze is needed.",
    }
)
"""What antifreeze to buy: by what its label prints, never by a brand."""

CHECKS: Mapping[str, str] = MappingProxyType(
    {
        "frozen": (
            "Has it been below freezing with water in it? Then stop here: neither pump nor air nor"
            " heat before it has thawed and was looked at."
        ),
        "same coach": (
            "Walk around the coach with this guide and find every handle and outlet that it names."
            " One missing, or one more, such as an ice maker or an outside tap: stop and ask."
        ),
        "cold": "This guide is for {low}. Where it gets colder it does not hold.",
        "level": "Stand the coach level: what runs out by itself was worked out so.",
        "battery": "Battery charged, or the coach plugged in: the pump must not stop half way.",
        "waste": "Know where the waste tanks are emptied, and where clean water may run off.",
        "manual": "Read what the coach's manual says about winter; it comes first.",
    }
)
"""What is looked at before anything is opened; common practice."""

OFF: Mapping[str, str] = MappingProxyType(
    {
        "bypassed": "{part} ({heat}), from step {n} on: it is empty and bypassed.",
        "empty": "{part} ({heat}), from step {n} on: it is empty.",
        "filled": "{part} ({heat}), from step {n} on: it holds antifreeze, not water.",
        "frozen": "{part} ({heat}): not before it has thawed, is full of water and runs.",
        "pump": "{part}, from step {n} on: off until water goes on again.",
        "pump frozen": "{part}: not before all has thawed and was tested.",
        "ice": "{part}, from step {n} on: it must not make ice of what is in it.",
        "lamp": "{part}, from step {n} on: it is taken out.",
        "machine": "{part}: no program and no heat; only what a step says.",
        "city": "Town water at the {part}, from step {n} on.",
    }
)
"""What must not be switched on, and why."""

NEVER: Mapping[str, str] = MappingProxyType(
    {
        "means": (
            "Colour that never comes, or comes and goes, means that water still gets in from"
            " somewhere or that the antifreeze runs elsewhere: that line is not protected."
        ),
        "means: blow": (
            "Water that keeps coming means that it still gets in from somewhere, or that the air"
            " runs elsewhere: that line is not blown out."
        ),
        "means: drain": (
            "Water that keeps running is fed from somewhere; a line that gives none may still be"
            " full of it: it is not drained."
        ),
        "means: thaw": (
            "A drop, a hiss or a gauge that falls means a crack: pressure off at once, and mark it."
        ),
        "wait": (
            "No colour {patience} after the time shown: shut the tap, switch the pump off, and look"
            " at these, in this order:"
        ),
        "wait: hand pump": (
            "No colour {patience} after the time shown: shut the tap, stop pumping, and look at"
            " these, in this order:"
        ),
        "wait: blow": "No mist after twice the time shown: shut the air, and look at these:",
        "wait: drain": "Look at these, in this order:",
        "wait: thaw": "The gauge falls and nothing drips? Look at these:",
        "jug": "Jug empty, or bubbles in its hose: full jug, tight joints; run this tap again.",
        "hand pump": "Jug empty, or the pump draws air: full jug, tight joints; run it again.",
        "tank": (
            "It draws water from the tank, a wrong valve is open (step {n}): {handles}. If it stood"
            " otherwise: drain the tank, begin again at the first tap."
        ),
        "bypass": (
            "Hot taps only, the way through the heater is open (step {n}): {handles}. If it stood"
            " otherwise: drain the heater, run every hot tap again. It runs out of the heater's"
            " plug hole: the same."
        ),
        "fills first": (
            "Hot taps only: the {parts} fills first, so the first one, {tap}, takes {time}. Not"
            " then either: its drain plug or relief lever is open."
        ),
        "crossover": (
            "Hot and cold run together through another fixture: both handles shut, no pause button"
            " pressed at the {parts}. Then run every tap since then again."
        ),
        "low point": "It runs out elsewhere: shut {parts}.",
        "shut-off": "A shut-off is closed on its way: {parts}: {along}.",
        "regulator": "Compressor at pressure, its line on, regulator at {regulator_Pa}, no more.",
        "two open": "Another tap or outlet is open: shut it.",
        "still runs": "It does not stop: town water off, pump off, drain of the fresh tank open.",
        "no air in": "Nothing comes: no air gets in. Open every tap, hot and cold, and wait.",
        "ice left": "Ice still stands somewhere: warm it for longer, then test again.",
        "still not": (
            "Still not: count that line as not protected, do not go on alone, call a shop."
        ),
        "still not: thaw": "Still not: leave the water off and call a shop.",
    }
)
"""What it means when an outlet never clears, and what is looked at."""

SHOP: Mapping[str, str] = MappingProxyType(
    {
        "ice": "It may have frozen, or ice is anywhere.",
        "leak": "Anything drips, bulges or is cracked.",
        "plug": "The heater's plug will not turn, or hot water comes.",
        "never": "An outlet never clears, twice.",
        "gap": "What would burst by this plan cannot be emptied as told here.",
        "open": "You cannot settle what is not proven.",
        "other": "The coach is not as this guide says.",
        "gas": "Work on LP gas or 120 V is needed: that is licensed practice.",
    }
)
"""When to stop."""

VOID: Mapping[str, str] = MappingProxyType(
    {
        "water": (
            "Void once water runs: one tap, one flush, a hose put on. All that the water came"
            " through is unprotected from then on."
        ),
        "colder": "It holds to {low} and no colder.",
        "thaw": "Nothing is protected by this: it only finds out whether the coach is whole.",
    }
)
"""When the guide's claim ends."""

SPRING: Mapping[str, str] = MappingProxyType(
    {
        "wait": "Wait until it was above freezing inside for a day. Look for cracks and drops.",
        "plug in": "Plug back into: {parts}.",
        "lever down": "Relief lever down: {parts}.",
        "back in place": "Put back in place: {parts}.",
        "cartridge in": "New cartridge into: {parts}.",
        "bowl tight": "Tighten the bowl: {parts}.",
        "by its maker": "Undo its maker's steps: {parts}.",
        "hose back: stowed": "Stow the antifreeze hose.",
        "hose back: tank line": "Put the tank line back on the inlet of the pump.",
        "hose back: off": "Take what was put on off the {parts}.",
        "shut": "Shut every tap, low point and drain.",
        "handle": "Set back: {handles}.",
        "drain heater": "Let the antifreeze out of the {parts} at the plug; plug back in.",
        "fill": "Then water on, and each outlet open until no more air comes.",
        "rinse": "Then water on, and each outlet open until it runs clear and no longer foams.",
        "rinse: bypassed": (
            "Then water on, the heater still bypassed, and each outlet open until it runs clear and"
            " no longer foams."
        ),
        "heater handle": "Set back at the heater: {handles}.",
        "solid": "Fill the heater: a hot tap runs solid, without spitting.",
        "heat": "Only then heat on: {parts}. Never while it is empty or bypassed.",
        "drink": "Disinfect the lines before anybody drinks, as the coach's manual says.",
        "thaw": "This job does not end in a winter's rest: mend, then plan the coach anew.",
    }
)
"""What is done in spring, in order."""
