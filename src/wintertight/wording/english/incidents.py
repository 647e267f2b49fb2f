"""English: what burst in spring, and what the record of the fall has to say of it."""

from collections.abc import Mapping
from types import MappingProxyType

CAUSES: Mapping[str, str] = MappingProxyType(
    {
        "missed: skipped": (
            "Not proven to {low_degC} by the record, and done there was not: {steps}."
        ),
        "missed: not recorded": (
            "Not proven to {low_degC} by the record, which does not speak of: {steps}. What is not"
            " recorded counts as not done."
        ),
        "missed: elsewhere": (
            "By the record it was left to burst at {low_degC}. {reason} No step at the part itself"
            " is missing; not done elsewhere: {steps}."
        ),
        "missed: gap": (
            "By the record it was left to burst at {low_degC}, though no step is missing. {reason}"
        ),
        "missed: as planned": (
            "By the record, and by the plan itself, it was left to burst at {low_degC}. {reason}"
        ),
        "missed: proven": "By the record it was proven to {low_degC}.",
        "missed: unproven": (
            "Nobody could vouch for it at {low_degC}, and no step there is missing from the"
            " record. {reason}"
        ),
        "missed: observed": (
            "Times, jugs or cups of that day speak for {cause}: then it was not proven to"
            " {low_degC}."
        ),
        "missed: mild": (
            "Not proven to {low_degC} by the record, but {lowest_degC}, the lowest the coach saw,"
            " would have burst nothing in it."
        ),
        "missed: nothing recorded": "The record speaks of no step at all.",
        "missed: no proof": "There is no calculation for such a part.",
        "used: touched": (
            "Water ran at {outlets} after the coach was winterized, and came through it."
        ),
        "used: none": "Somebody asked, and no water has run since the coach was winterized.",
        "used: untouched": (
            "Water ran at {outlets} after the coach was winterized, and did not come here."
        ),
        "used: pumped": (
            "Water ran at {outlets}. From the city inlet it did not come here; from the fresh tank"
            " it would have."
        ),
        "used: below": "Water that ran at {outlets} drained into it; how much is not known.",
        "used: shut": (
            "Water ran at {outlets} and did not come here, but with the taps shut after it this"
            " part holds no longer."
        ),
        "used: no frost": (
            "Water ran at {outlets} and came through it, but at {lowest_degC}, the lowest the coach"
            " saw, not even water freezes."
        ),
        "used: not known": "Nobody has said whether water ran after the coach was winterized.",
        "older: limed": "Scale or stain lies in the crack: it was there before this winter.",
        "older: fresh": "The crack is fresh.",
        "older: not known": "Nobody has said how the crack looks inside.",
        "colder: burst": (
            "Proven to {low_degC}; the coach saw {lowest_degC}, and worked out for that it bursts."
        ),
        "colder: not colder": (
            "The coach saw no less than {lowest_degC}; it was to hold to {low_degC}."
        ),
        "colder: held": "The coach saw {lowest_degC}, and it is proven to that as well.",
        "colder: margin": (
            "The coach saw {lowest_degC}; at that it would burst only within the margin that every"
            " verdict keeps."
        ),
        "colder: unproven": (
            "Proven to {low_degC}; at {lowest_degC}, which the coach saw, nobody can vouch for it,"
            " and it is not shown to burst."
        ),
        "colder: already open": (
            "It got colder than the design low, to {lowest_degC}, but the part was not proven to"
            " {low_degC} in the first place."
        ),
        "colder: heated": (
            "The coach saw {lowest_degC}, but the part lies in a room that is said to have stayed"
            " heated."
        ),
        "colder: not known": "Nobody has said how cold it got.",
        "colder: no proof": (
            "It got colder than {low_degC}, to {lowest_degC}; there is no calculation for such a"
            " part."
        ),
        "wear: worn": "It was found brittle, corroded or worn through.",
        "wear: sound": "It was looked at and is not worn.",
        "wear: not known": "Nobody has said whether it was worn.",
    }
)
"""What is found on each cause, by key."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "missed: unproven": "Whoever did the job may know what is not in the record.",
        "missed: mild": "Read how cold it got at the part itself.",
        "missed: nothing recorded": "Find the record of the job, or the job sheet as filled in.",
        "missed: no proof": "Find out by hand what was left in it.",
        "used: pumped": "Ask whether the water came from the fresh tank or from the hose.",
        "used: shut": "Ask whether the taps were left shut or open.",
        "used: below": "Ask how much water ran, and see how full it was.",
        "used: no frost": "Read how cold it got at the part itself.",
        "used: not known": "Ask whoever had the coach which taps were opened.",
        "older: not known": "Cut it out and look into the crack: bare, or scaled and stained?",
        "colder: margin": "Find a reading of the lowest temperature closer to the coach.",
        "colder: unproven": "Measure what is still in the parts beside it.",
        "colder: already open": "Settle first what was missed.",
        "colder: heated": "Read how cold that room got, or whether its heat failed.",
        "colder: not known": "Take the lowest of the winter from the nearest weather station.",
        "colder: no proof": "Find out by hand what was left in it.",
        "wear: not known": "Look at the part: brittle, corroded, thin?",
    }
)
"""What would settle a cause that is open."""

LOOK: Mapping[str, str] = MappingProxyType(
    {
        "not relieved": "It is rigid, and nothing had opened it: what froze had no room.",
        "sealed": "It is rigid and closed: what froze in it had no room.",
        "assumed": "Its claim rests on what was assumed. {assumed}",
        "attested": "That it was done rests on a tick in the record.",
        "no reading": "No reading was taken of what was in it.",
        "computed": (
            "What was in it is worked out from the card: compare lengths, heights and fittings with"
            " the coach."
        ),
        "worn": "Nobody has said whether it was worn: look.",
    }
)
"""What a claim rests on that somebody can still look at."""

INCIDENT: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Burst at {coach}, found {day}",
        "fall": "The fall, as recorded: {verdict}",
        "cause missed": "missed in the fall",
        "cause used": "used since",
        "cause older": "an older crack",
        "cause colder": "colder than the design low",
        "cause wear": "wear",
        "weight supported": "supported",
        "weight against": "against",
        "weight open": "open",
        "line": "{cause}, {weight}: {text}",
        "supported one": "{part}: one cause is supported, {causes}.",
        "supported many": "{part}: {causes} are supported; which of them it was is not said.",
        "open": "{part}: no cause is supported; open: {causes}.",
        "not explained": "{part}: the record does not explain it. What to look at:",
        "step said": "step {n} ({step}), {result} in line {event}",
        "step unsaid": "step {n} ({step})",
        "result skipped": "skipped",
        "result failed": "failed",
        "result not on this coach": "called not on this coach",
        "limits": (
            "What is supported is not proven, and no cause is a person. The record says what was"
            " done, and the engine what that leaves."
        ),
        "no proof": "there is no calculation for such a part",
        "not said": "nobody has said so, or otherwise",
        "lowest not known": "nobody has said how cold it got",
        "water not known": "nobody has said whether water ran since",
    }
)
"""Headings and pieces."""
