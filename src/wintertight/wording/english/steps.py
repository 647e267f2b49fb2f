"""English: what the technician is told to do, why, and what to mind."""

from collections.abc import Mapping
from types import MappingProxyType

STEPS: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "Turn off the heat of the {part}: {sources}. Let it cool.",
        "pressure off": "Take the city water hose off the {part} and switch the pump off.",
        "pressure off: demand pump": "Switch the {part} off.",
        "open shut-off": "Open the {part}: handle along the pipe.",
        "open bypass to drain": "Open the {part} while it drains: handle along the pipe.",
        "open taps": "Open every tap, hot and cold: {parts}.",
        "open tank drain": "Open the drain of the {part}.",
        "open handles": "Set these handles along the pipe (open): {parts}.",
        "open handles: hose": (
            "Set these handles along the pipe (open), and let the end of the antifreeze hose hang"
            " free: {parts}."
        ),
        "caps off": "Take off caps and ends of lines, buckets under them: {parts}.",
        "caps on": "Put caps and ends of lines back on: {parts}.",
        "hold open": "{part} ({how}): until nothing runs.",
        "hold open: city inlet": (
            "{part}: take the screen out, press the check in with a blunt tool until nothing runs,"
            " put the screen back."
        ),
        "work positions": (
            "Turn the {part} to each of its positions in turn ({positions}), wait until nothing"
            " runs, and set it back to {back}."
        ),
        "work positions: pressed": (
            "Turn the {part} to each of its positions in turn ({positions}), wait until nothing"
            " runs, the check of the city inlet pressed in with a blunt tool meanwhile, and set it"
            " back to {back}."
        ),
        "empty bowl": "Take the bowl of the {part} off, empty it and screw it back on loosely.",
        "open low points": "Open the low points: {parts}.",
        "open relief": "Lift the relief lever of the {part} and leave it up.",
        "plug out": "Take the drain plug out of the {part} and leave it out.",
        "plug out: anode": (
            "Take the plug with the anode rod out of the {part} and leave it out. Look at what is"
            " left of the rod."
        ),
        "let it drain": "Let everything drain until nothing drips, about {handling}.",
        "drain panel": (
            "Set the {part} to {position}, press the check of its city inlet in with a blunt tool"
            " until nothing runs, and set it back to {back}."
        ),
        "cartridge out": (
            "Take the cartridge out of the {part}, empty the bowl and screw it back on without the"
            " cartridge."
        ),
        "open rinse inlet": "Open the inlet of the {part} and let it run out.",
        "take out": "Take the {part} off the coach, empty it and store it where it is warm.",
        "take out: bridged": (
            "Take the {part} out, empty it, and bridge its place with a short hose."
        ),
        "take out: membrane filter": (
            "Take the {part} out, empty its tank and store both where it is warm."
        ),
        "carry in": "Empty these and carry them in where it is warm: {parts}.",
        "fridge filter out": "Take the cartridge out of the {part} and put its bypass plug in.",
        "clear ice maker": (
            "At the {part}: take its line off, let its valve and fill tube run out, and empty the"
            " mould by hand. It is not to harvest antifreeze."
        ),
        "maker's steps": "{part}, by its maker's own steps: {steps}.",
        "run pump dry": (
            "Open the {outlet}, run the {part} for {seconds} on the empty tank, switch it off."
        ),
        "empty waste tanks": "At a dump: empty, rinse and shut again: {parts}.",
        "shut everything": "Shut every tap and low point: {parts}.",
        "set bypass": "Bypass the heater. {handles}",
        "close heater": (
            "There is no bypass: put the plug back into the {part} and let the relief lever down."
            " It stays empty."
        ),
        "close heater: filled": (
            "There is no bypass: put the plug back into the {part} and let the relief lever down."
            " It will be filled."
        ),
        "air on": (
            "{handles} Put the air line on the {part}, its regulator set to {regulator_Pa}, no"
            " more."
        ),
        "blow outlet": "{part}: open, blow {blow_s} until only mist comes, shut.",
        "blow outlet: its own way": "{part} ({how}): blow {blow_s} until only mist comes, stop.",
        "blow outlet: never done": (
            "{part}: open it. By the calculation this compressor cannot clear it; count it as not"
            " blown out."
        ),
        "air off": "Shut the air, open a tap until it is still, take the line off the {part}.",
        "draw from jug": "{handles} Put the antifreeze hose into a full jug of {product}.",
        "draw from jug: city inlet": (
            "{handles} Put a short hose on the {part} and its end into a full jug of {product}."
        ),
        "draw from jug: demand pump": (
            "{handles} Take the tank line off the inlet of the {part}, put a short hose on it and"
            " the end of the hose into a full jug of {product}."
        ),
        "draw from jug: strainer": (
            "{handles} Take the tank line off the inlet of the {part}, before the pump; put a"
            " short hose on it and the end of the hose into a full jug of {product}."
        ),
        "open diverter": "Set the {part} to send water round, not out.",
        "close diverter": "Set the {part} back.",
        "pump on": "Switch the {part} on; never let a jug run empty.",
        "hand pump on": (
            "{handles} Put the hand pump on the {part} and its hose into a full jug of {product}."
        ),
        "run outlet": "{part}: open, run until colour stays ({colour}), run on {run_on}, shut.",
        "run outlet: its own way": (
            "{part} ({how}): run until colour stays ({colour}), run on {run_on}, stop."
        ),
        "run outlet: gravity toilet": (
            "{part}: hold the pedal down until colour stays ({colour}), run on {run_on}, let go."
        ),
        "run outlet: city inlet": (
            "{part}: take the screen out, press the check in with a blunt tool until colour stays"
            " ({colour}), run on {run_on}, let go, put the screen back."
        ),
        "run outlet: low point": (
            "{part}: bucket under it, open, run until colour stays ({colour}), run on {run_on},"
            " shut."
        ),
        "run outlet: no colour": (
            "{part}: open it. By the calculation no colour comes within {volume}. If none does,"
            " shut it and count it as not filled."
        ),
        "pump off": "Switch the {part} off.",
        "hand pump off": "Take the hand pump off the {part}.",
        "leave taps open": "Open the taps once more and leave them open: {parts}.",
        "work pedal": "Work the pedal of the {part} once.",
        "work pedal: macerating toilet": "Flush the {part} once.",
        "work pedal: cassette toilet": "Flush the {part} once.",
        "loosen bowl": "Turn the bowl of the {part} a quarter turn loose.",
        "pour a cup": "Pour {cups} of antifreeze into the {part}.",
        "warm it": (
            "Put the coach where it is warm, or warm it with air, cabinets and hatches open, for a"
            " day or two: until the coldest corner has been well above freezing for hours."
        ),
        "let it thaw out": "Let what thaws run out, about {handling}.",
        "look for cracks": (
            "Look at every fitting, valve, tap, bowl and tank, the pump and the heater: cracks,"
            " bulges, drops. Mark what is cracked; it is not to see any pressure."
        ),
        "test trunk": (
            "Shut every tap and every shut-off. At the {part}: water at {pressure_Pa}, no more,"
            " for {seconds}; look at every fitting; take the pressure off again."
        ),
        "test branch": (
            "Open the {part}; water at {pressure_Pa} for {seconds}, look at all behind it, take the"
            " pressure off again."
        ),
        "plan anew": (
            "Mend what is cracked, then plan the coach anew. What that takes is open until then."
        ),
        "take reading": (
            "Read a cup from the jug and one from the farthest hot tap with one instrument made"
            " for this product."
        ),
        "hang tag for the night": "Hang the tag at the main tap: for this cold night only.",
        "hang tag": "Hang the tag at the main tap: void once water runs.",
        "added setting": "{part} set otherwise, beside what the sheet asks.",
        "added run": "{part} run once more, beside what the sheet asks.",
        "added pour": "More antifreeze poured into the {part}.",
    }
)
"""By key of the step; "key: word" is said where the word fits: a kind, a circumstance."""

WHY: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "An empty heater with its heat on is ruined.",
        "pressure off": "Nothing may push water into lines that are being emptied.",
        "open shut-off": "What is shut off is not filled.",
        "open bypass to drain": (
            "The hot side has no low point of its own: it drains through the bypass."
        ),
        "open taps": "Water runs out only where air can come in.",
        "open tank drain": "Water left in the tank finds its way to the pump.",
        "open handles": "A handle across its pipe holds water behind it, and in its own ball.",
        "caps off": "Behind a cap stands water that no tap lets out.",
        "caps on": "Nothing may crawl in during winter.",
        "hold open": "Nothing else opens the end of its line.",
        "work positions": "Each position cuts another line off, with its water in it.",
        "empty bowl": "Whatever runs or blows through leaves a bowl its water.",
        "open low points": "What runs out here by itself need not be pushed out later.",
        "open relief": "Air comes in at the top, so the heater empties at the bottom.",
        "open relief: finish": "An open lever gives what may freeze room to grow.",
        "plug out": "The heater is emptied and bypassed: no antifreeze is spent on it.",
        "plug out: filled": "It will be filled: emptied first, it takes no more than it holds.",
        "let it drain": "Water left behind thins the antifreeze.",
        "drain panel": "Any other position cuts the line from the inlet off, with its water in it.",
        "cartridge out": "A cartridge holds water, and antifreeze spoils it.",
        "open rinse inlet": "It drains by itself once its inlet is open.",
        "take out": "It cannot be filled, and what stays in it freezes.",
        "carry in": "What hangs outside freezes first.",
        "fridge filter out": "A cartridge holds water, and antifreeze spoils it.",
        "clear ice maker": "An ice maker gives what is in it to drink.",
        "maker's steps": "Its maker knows what is inside.",
        "run pump dry": "The line from the tank has no other way to empty.",
        "empty waste tanks": "What stays in a tank freezes against its valve.",
        "shut everything": "The pump fills one outlet at a time.",
        "set bypass": "Otherwise the heater swallows the antifreeze for the hot side.",
        "close heater": "Otherwise all comes out of its open plug.",
        "close heater: filled": "Otherwise the antifreeze runs out of it.",
        "air on": "Air pushes out what gravity leaves.",
        "blow outlet": "Only the way to the one open outlet gets air fast enough to carry water.",
        "air off": "Nothing may stand under pressure when bowls are opened.",
        "draw from jug": "The pump must draw from the jug and from nowhere else.",
        "open diverter": "Its own two short lines fill only while it is open.",
        "close diverter": "As it is used.",
        "pump on": "It fills the lines, and holds pressure from one outlet to the next.",
        "hand pump on": "It pushes antifreeze to every outlet, where the coach's pump cannot run.",
        "run outlet": "First colour is still weak; the run-on makes the line strong enough.",
        "pump off": "The taps are opened next; nothing should follow.",
        "hand pump off": "The taps are opened next; nothing should follow.",
        "leave taps open": "An open tap leaves slush room to grow.",
        "work pedal": "It lets the pressure out of the valve, which springs shut by itself.",
        "loosen bowl": "A loose bowl leaves its content room to grow.",
        "pour a cup": "What ran in from the taps is too thin to rely on.",
        "warm it": "Pressure on ice bursts what the ice has not.",
        "let it thaw out": "What has thawed must not freeze again.",
        "look for cracks": "A crack shows dry what it shows wet too late.",
        "test trunk": "A little pressure finds a crack; full pressure makes it a flood.",
        "test branch": "One section at a time tells where it leaks.",
        "plan anew": "Nobody can vouch for a coach that has frozen before it has held.",
        "take reading": "A number says more than a colour.",
        "hang tag for the night": "A hold expires; whoever comes next must know when.",
        "hang tag": "Whoever opens a tap in winter must know what it undoes.",
        "added setting": "Done in the bay; the proof counts it.",
        "added run": "Done in the bay; the proof counts it.",
        "added pour": "Done in the bay; the proof counts it.",
    }
)
"""By key of the step: one short sentence."""

HOW_TO_OPEN: Mapping[str, str] = MappingProxyType(
    {
        "gravity toilet": "hold the pedal down",
        "vacuum toilet": "hold the pedal down",
        "macerating toilet": "flush again and again",
        "cassette toilet": "hold the flush",
        "bidet sprayer": "hold its trigger, over the bowl",
        "spray port": "spray hose plugged in, its trigger pinned",
        "washer: hot": "run its fill, hot",
        "washer: cold": "run its fill, cold",
        "dishwasher": "run its fill",
        "ice maker": "take its line off and hold it in a cup",
        "door dispenser": "hold its lever, glass under it",
        "membrane filter": "its line off, into a bucket",
        "capped tee": "cap off, bucket under it",
        "prepared stub": "cap off, bucket under it",
        "outside shower": "head trigger pinned",
        "outside kitchen": "head trigger pinned",
        "city inlet": "screen out; press the check in with a blunt tool",
        "low point": "bucket under it",
    }
)
"""How outlets are opened that have no handle to turn, as a note in a table.

By kind; "kind: side" is said where the side needs words of its own.
"""

PHASES: Mapping[str, str] = MappingProxyType(
    {
        "make safe": "Make safe",
        "thaw": "Thaw",
        "drain": "Drain",
        "test": "Test, one section at a time",
        "set": "Set the handles",
        "blow": "Blow out, one outlet at a time",
        "fill": "Fill, one outlet at a time",
        "finish": "Finish",
    }
)

PHRASES: Mapping[str, str] = MappingProxyType(
    {
        "handles across": "Handle across the pipe (shut): {parts}.",
        "handles along": "Handle along the pipe (open): {parts}.",
        "left full": (
            "There is no bypass: left full it would take about {left_full_m3} of antifreeze and"
            " still hold {share} water; emptied it takes its own {own_m3}."
        ),
        "shared hose": "count only colour that stays",
        "note": "({note})",
        "reach": "{part}: {how}",
        "behind": "behind {panel}",
        "picture": "see {photo}",
        "screws one": "1 screw",
        "screws many": "{count} screws",
        "notes": "{first}; {last}",
        "colour at once": "at once",
        "colour about": "about {time}",
        "never": "none expected",
        "share under": "under {share}",
        "per cent": "{number} %",
        "thousands": ",",
        "and": "{first} and {last}",
        "and: i": "{first} and {last}",
        "and: hi": "{first} and {last}",
        "and: hie": "{first} and {last}",
        "comma": ", ",
        "semicolon": "; ",
        "more": "{parts}, and {count} more",
        "cups one": "1 cup",
        "cups many": "{count} cups",
        "handles named": "Set the {part} to {position}.",
        "jugs one": "1 jug",
        "jugs many": "{count} jugs",
        "parts one": "1 part",
        "parts many": "{count} parts",
        "water ran at": "Water has run since at: {parts}.",
        "water stands in": "Water has been poured since into: {parts}.",
        "void are": "Void is what was said of {count}.",
        "as it stands": "As it stands: {verdict} The plan below makes that good again.",
        "holds": (
            "Holds for {time} at {low} from the first minute on, begun at {start}, and no longer."
            " First to go: {part}."
        ),
        "holds on": "Nothing is left that freezes harmfully at {low}: this hold has no end.",
        "bring nothing": "No antifreeze is needed.",
        "bring": "Bring {jugs} of {product} ({size} each).",
        "bring and have one": "Bring {jugs} of {product} ({size} each), have one more.",
        "bring and have more": "Bring {jugs} of {product} ({size} each), have {spare} more.",
        "minutes": "About {time} of work.",
        "minutes: thaw": (
            "A day or two to thaw, and about {time} of work; what comes after that is open."
        ),
        "held in": (
            "Held in {held} of {draws} draws of what the card leaves open; weakest: {part}, in"
            " {share}."
        ),
        "used": "About {volume} of {product} and {time} of work, worked out from the record.",
        "not done one": "Step {steps} was not done: do it now, then prove again.",
        "not done many": "Steps {steps} were not done: do them now, then prove again.",
        "some done": "{done} of {all}",
    }
)
"""Pieces of sentences, and ways to count."""
