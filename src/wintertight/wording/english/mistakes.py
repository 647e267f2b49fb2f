"""English: what can stand wrongly at a coach, what is seen of it, and what settles it.

Pieces of one sentence: none begins with a capital letter or ends in a stop.
"""

from collections.abc import Mapping
from types import MappingProxyType

MISTAKES: Mapping[str, str] = MappingProxyType(
    {
        "heater left open: full": (
            "the valves of the {heater} left open beside the bypass, and the heater still full:"
            " part of the flow goes through it and pushes its water into the hot side"
        ),
        "heater left open: drained": (
            "the valves of the {heater} left open beside the bypass, its plug back in: part of the"
            " flow goes into the empty heater and pushes its air into the hot side"
        ),
        "heater left open: plug out": (
            "the valves of the {heater} left open and its plug out: the antifreeze runs to the"
            " ground there instead of reaching the taps"
        ),
        "bypass shut: full": (
            "the {part} left as in summer, and the heater still full: everything for the"
            " hot side goes through the heater and comes out as its water"
        ),
        "bypass shut: drained": (
            "the {part} left as in summer, the heater's plug back in: the heater is filled"
            " before anything comes at a hot tap"
        ),
        "bypass shut: plug out": (
            "the {part} left as in summer and the heater's plug out: the antifreeze runs to"
            " the ground there instead of reaching the hot side"
        ),
        "inlet half open: alone": (
            "the {part} only half way along the pipe: the pump pulls harder and still draws"
            " nothing but antifreeze"
        ),
        "inlet half open: tank valve too": (
            "the {part} and the valve from the tank both half way, and the tank still full: the"
            " pump draws antifreeze and water at once"
        ),
        "tank valve half open: full": (
            "the {part} not quite shut, and the tank still full: the pump draws water along with"
            " the antifreeze"
        ),
        "tank valve half open: empty": (
            "the {part} not quite shut, and the tank empty: air comes in there so easily that the"
            " pump lifts no antifreeze"
        ),
        "shower crossing": (
            "both handles of the {part} left open and its head shut: hot and cold run together"
            " through it while another tap is open"
        ),
        "pause button": (
            "both handles of the {part} left open and its pause button pressed: hot and cold run"
            " together through it while another tap is open"
        ),
        "tempering valve one-sided": (
            "the {part} fed with nothing warm: it stands on full hot, and no antifreeze comes"
            " through its cold side"
        ),
        "diverter left off": (
            "the {part} not set to send water round: the lines to it and from it keep their water"
        ),
        "low point left open": (
            "the {part} left open: part of what the pump gives runs out there, and every tap gets"
            " less in the same seconds"
        ),
        "suction leak: some air": (
            "a loose joint between jug and pump: {share} of what the pump draws is air, and every"
            " tap gets less antifreeze in the same seconds"
        ),
        "suction leak: too much air": (
            "a joint off between jug and pump: more than half of what the pump draws is air, and"
            " it lifts no antifreeze"
        ),
        "jug ran dry: run on": (
            "the jug empty in the middle of the run at the {part}: the pump draws air for"
            " {seconds} until the next jug is there, and then the tap is run as the sheet says"
        ),
        "jug ran dry: left so": (
            "the jug empty at the end of the run at the {part}: the pump draws air for {seconds}"
            " until the next jug is there, and nobody runs that tap again"
        ),
        "weak product": (
            "a jug stretched until {share} of it is water: every part gets the weaker mixture"
        ),
        "wrong product": (
            "another antifreeze with the same rating on its label: nobody knows what is in it, so"
            " no part that still holds some water can be worked out"
        ),
        "cartridge left in": (
            "the cartridge left in the {part}: what it has soaked up is not flushed out"
        ),
        "branch left shut": ("the {part} left shut: nothing behind it is drained or filled"),
        "failed check": "the {part} no longer shuts: what is behind it can come back",
        "failed check: hole": (
            "the {part} no longer shuts: antifreeze comes back through it into the heater and out"
            " of the plug's hole"
        ),
    }
)
"""What stands wrongly, and what that does inside the walls."""

OUTCOMES: Mapping[str, str] = MappingProxyType(
    {
        "same": "no part is worse off",
        "gap": "{parts} would burst",
        "unproven": "nobody could vouch for {parts}",
        "hazard": "an order that is refused comes of it ({hazard})",
        "doubtful": "nobody could vouch for {parts} more",
        "water": "{volume} of water stays behind",
        "more": "{volume} more antifreeze than planned is used",
        "less": "{volume} less antifreeze than planned leaves the jugs",
    }
)
"""What comes of it, and what it costs."""

SIGNS: Mapping[str, str] = MappingProxyType(
    {
        "nothing comes": "nothing comes at the {outlets}",
        "never clears": "no colour comes at the {outlets}",
        "stays pale": "only {share} of full strength comes at the {outlets}",
        "late": "colour comes {seconds} late at the {outlets}",
        "early": "colour comes {seconds} early at the {outlets}",
        "sputters": "it spits air at the {outlets}",
        "trickles": "it only trickles at the {outlets}",
        "runs elsewhere": "antifreeze runs out at the {outlets}",
        "seen": "to be seen: {signs}",
        "cup": "the taps show nothing, a cup held beside the jug does: {signs}",
        "none": "no tap shows it",
    }
)
"""What would be seen; "seen", "cup" and "none" begin what is said of it."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "heater left open: full": "shut them, drain the heater, and run every hot tap again",
        "heater left open: drained": "shut them, take the plug out, and run every hot tap again",
        "heater left open: plug out": "shut them and begin again at the first tap",
        "bypass shut": "set the bypass, drain the heater, and run every hot tap again",
        "bypass shut: plug out": "set the bypass and begin again at the first tap",
        "inlet half open: alone": "turn it all the way",
        "inlet half open": "shut the tank's, open the jug's, drain the tank, and begin again",
        "tank valve half open": "shut it, drain the tank, and begin again at the first tap",
        "tank valve half open: empty": "shut it all the way and begin again at the first tap",
        "shower crossing": "shut both handles, and run that shower again at the end",
        "pause button": "let the button out, shut both handles, and run every tap on again",
        "tempering valve one-sided": "loosen its cold union over a bucket until colour comes",
        "diverter left off": "set it to send water round, and run that shower again",
        "low point left open": "shut it, run every tap on again, and pour a cup into each trap",
        "suction leak": "tighten the hose until it draws no bubbles, and run every tap again",
        "jug ran dry: run on": "run that tap on until colour stays, as the sheet says",
        "jug ran dry: left so": "run that tap again until colour stays, and those after it",
        "weak product": (
            "read the strength of the jug before it is used, and of the farthest tap at the end"
        ),
        "wrong product": "read the labels of the empty jugs, and take a reading that suits it",
        "cartridge left in": "take it out, empty the bowl, and leave the bowl loose",
        "branch left shut": "open it and run every outlet behind it",
        "failed check": "shut a valve beside it, or replace it",
        "failed check: hole": "shut the heater's valve beside it, or put the plug back in",
    }
)
"""What settles it, by key; "key: circumstance" is said where that has words of its own."""

PIECES: Mapping[str, str] = MappingProxyType(
    {
        "sentence": "{wrong}; {comes}; {seen}; to settle it, {settle}.",
        "and more": "{outlet} (and {count} more)",
        "hazard: no tap shows it": "Wrong settings: refused",
        "hazard: seen": "Wrong settings: refused",
        "gap: no tap shows it": "Wrong settings: something would burst, and no tap shows it",
        "gap: seen": "Wrong settings: something would burst, and it can be seen",
        "unproven: no tap shows it": "Wrong settings: nobody could vouch, and no tap shows it",
        "unproven: seen": "Wrong settings: nobody could vouch, and it can be seen",
        "same: no tap shows it": "Wrong settings: no part worse off, and no tap shows it",
        "same: seen": "Wrong settings: no part worse off, and it can be seen",
    }
)
"""How the pieces are put together."""
