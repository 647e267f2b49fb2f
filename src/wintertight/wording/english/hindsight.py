"""English: what a record tells beyond what it says, and how sure that is.

Pieces of sentences do not begin with a capital letter or end in a stop; ``PIECES`` puts them
together.
"""

from collections.abc import Mapping
from types import MappingProxyType

CAUSES: Mapping[str, str] = MappingProxyType(
    {
        "as recorded": "what was timed, counted and read fits the job as recorded",
        "forgotten outlet": "the {part} ticked, and probably never run",
        "longer line": (
            "the line {part} holding more than the card says: half as much again, or up to more"
            " than twice as much"
        ),
        "water run since": "water run at the {part} since it was filled",
        "something else": "something that is not known here: no cause on the list fits",
    }
)
"""What probably happened, where no wrong setting has words for it."""

SHORT: Mapping[str, str] = MappingProxyType(
    {
        "as recorded": "the job as recorded",
        "wrong bypass": "a heater that is not bypassed",
        "inlet half open": "water drawn along with the antifreeze",
        "crossover": "hot and cold running together",
        "low point open": "a low point left open",
        "suction leak": "air drawn by the pump",
        "jug dry": "a jug that ran dry",
        "weak product": "weak or wrong antifreeze",
        "filter left in": "a cartridge left in",
        "branch shut": "a branch left shut",
        "failed check": "a check valve that lets water back",
        "forgotten outlet": "an outlet ticked and not run",
        "longer line": "a line longer than the card says",
        "water run since": "water run since",
        "something else": "something not known here",
    }
)
"""What each cause is called in passing."""

SIGHTS: Mapping[str, str] = MappingProxyType(
    {
        "colour": "colour at the {outlet} {value}",
        "run on": "the {outlet} run on for {value}",
        "jugs": "{value} gone from the jugs",
        "strength": "{value} of what the label says in a cup from the {outlet}",
        "beside the jug": "{value} of the jug's strength in a cup from the {outlet}",
        "strength: jug": "{value} of what the label says in the jug itself",
        "none": "no colour at the {outlet}",
        "untimed": "no time written down at the {outlet}, where one was asked for",
        "as recorded": "{seen}; as recorded {expected}",
        "and if so": "{seen}; as recorded {expected}, and {if_so} if so",
        "nothing expected": "{seen}; as recorded none",
        "after": "after {time}",
        "at once": "at once",
        "none expected": "none",
    }
)
"""What was observed, and what was to be expected."""

PIECES: Mapping[str, str] = MappingProxyType(
    {
        "heading": "What stopwatch, jugs and cups say",
        "fits": "It fits: {cause} ({fits}).",
        "speaks for": "They speak for {cause} ({fits}).",
        "then": "Next likeliest: {cause} ({fits}).",
        "strange": "Strange: {sights}.",
        "cup": (
            "To tell: a cup from the {outlet}. Does it hold {here} of the jug's strength, it is the"
            " first; {there}, the second."
        ),
        "look": "To tell: look at the {part}.",
        "eyes": "To tell: nothing that can still be read; go over the coach step by step.",
        "cure": "If so: {settle}.",
        "cure: weak product": (
            "If so: run every outlet again with product that a cup from the jug was read of."
        ),
        "cure: forgotten outlet": "If so: run it as the sheet says, and those after it again.",
        "cure: longer line": "If so: run its outlets on longer, and enter its length on the card.",
        "cure: water run since": "If so: run antifreeze through it again.",
        "cure: something else": "Then take a cup from every tap, and freeze it.",
        "learned heading": "What this coach has taught",
        "learned heading many": "What this coach has taught in {count} visits",
        "next time": "Next time it takes {low} to {high} of antifreeze; the card alone said {was}.",
        "taught": (
            "By earlier visits it takes {low} to {high} of antifreeze; the card alone said {was}."
        ),
        "not taught": "Earlier visits teach nothing here: they fit no job gone as recorded.",
        "habit": "Here a tap runs on {percent} of what the sheet asks.",
        "line": "The line {part}: {low} to {high}; the card alone said {was}.",
        "range": "{low} to {high}",
        "not here": (
            "Not on this coach, as recorded: {parts}. Taken off the card for this proof; enter it"
            " there."
        ),
        "still here": (
            "The record says it is not on this coach: {parts}. Others are fed through it on the"
            " card, so it stays there, and counts as not done. Enter what is really there."
        ),
        "given less weight": "Given less weight, as it fits nothing else: {sights}.",
    }
)
"""How the pieces are put together."""

WHY_NONE: Mapping[str, str] = MappingProxyType(
    {
        "nothing observed": (
            "nothing was timed, counted or read, so the record says no more than it says"
        ),
        "left out": "it was left out, as asked",
        "not as recorded": "it does not seem to have gone as recorded, so it teaches nothing",
    }
)
"""Why nothing can be said."""
