"""English: the winter record, a paper that says what was done to a coach and what that proves."""

from collections.abc import Mapping
from types import MappingProxyType

RECORD: Mapping[str, str] = MappingProxyType(
    {
        "title": "Winter record {id}",
        "heading": "Winter record",
        "as recorded": "What was done, as it was written down, and what that proves.",
        "proven but open": (
            "NOT FINISHED. By what was written down every part is proven to {low}, but something"
            " below speaks against it."
        ),
        "site": "Stored at",
        "page": "Coach's page",
        "written on": "Written down on",
        "used": "Antifreeze",
        "used text": "about {volume} of {product}, by the calculation ({low} to {high})",
        "used just": "about {volume} of {product}, by the calculation",
        "used none": "none that was pumped or poured",
        "counted": "{volume} by the jugs that were counted",
        "time": "Work",
        "about": "about {time}, by the calculation",
        "day": "Day",
        "from to": "{first} to {last}",
        "no day": "the record names none",
        "open": "Not finished: what is open, and what would settle it",
        "look": "Look here first",
        "looking": "{names}.",
        "done": "What was done",
        "number": "No.",
        "when": "Time",
        "what": "What",
        "result": "Result",
        "noted": "Written down",
        "not recorded": "not recorded",
        "not in record": (
            "The record does not speak of these; what it does not speak of counts as not done."
        ),
        "parts": "Proof of every part ({count} in all)",
        "group": "{claim} ({count})",
        "of part": "Part",
        "evidence": "Stands on",
        "why": "Why",
        "freezes at": "Freezes at",
        "is left": "Left in it",
        "as above": "as above",
        "freezing note": (
            "Freezes at: the freezing point of its weakest stretch; below it a filled part turns to"
            " slush, which by printed tables bursts nothing there down to the design low."
        ),
        "evidence note": (
            "Stands on: calc., worked out by the engine; read, by an instrument or an eye; ticked,"
            " by a person; assumed, taken as the card has it."
        ),
        "settles": "What would settle it: {how}",
        "other numbers": (
            "Numbers of steps are those of a job sheet without what is not on this coach."
        ),
        "sources": "Where the numbers come from",
        "sources note": "In brackets how far each can be trusted here.",
        "limits": "What this record is not",
        "limits text": (
            "It says what follows from what was written down, for this card and this cold. What"
            " was not written down counts as not done, and what was written down was not checked"
            " by this program. Void once water runs anywhere in the coach. The coach's manual and"
            " local code come first."
        ),
        "same record": "Which record this is",
        "same record text": (
            "SHA-256 digest of the record, as canonical JSON (RFC 8785). Whoever has the record can"
            " work it out again: wintertight digest RECORD.json --printed DIGEST"
        ),
        "card": "Card",
        "engine": "Engine",
        "signatures": "Signatures",
        "technician": "Technician: done as written down",
        "owner": "Owner: read, and told that it is void once water runs",
        "name and signature": "Name and signature",
        "date": "Date",
    }
)
"""Headings, columns, and what is said once."""

EVIDENCE: Mapping[str, str] = MappingProxyType(
    {"computed": "calc.", "measured": "read", "attested": "ticked", "assumed": "assumed"}
)
"""On what a claim stands, in a word."""

NOTED: Mapping[str, str] = MappingProxyType(
    {
        "colour": "colour after {time}",
        "colour at once": "colour at once",
        "run on": "run on {time}",
        "volume": "{volume}",
        "jugs one": "1 jug left",
        "jugs many": "{count} jugs left",
        "set": "set: {setting}",
        "why": "\u201c{why}\u201d",
        "device": "{device}",
        "between": "; ",
    }
)
"""What was written down beside a step."""

RESULTS: Mapping[str, str] = MappingProxyType(
    {
        "done": "done",
        "skipped": "SKIPPED",
        "failed": "FAILED",
        "not on this coach": "NOT ON THIS COACH",
    }
)
"""How a step ended; what was not done must not be overlooked."""

LEFT: Mapping[str, str] = MappingProxyType(
    {
        "nothing there": "empty",
        "room in the air": "{full} full",
        "rating holds": "label: {rating_degC}",
        "maker's steps": "maker's steps",
    }
)
"""By key of the reason: why a part is proven, where no freezing point says it, in a word or two."""

READINGS: Mapping[str, str] = MappingProxyType(
    {
        "glycol share": "{value} glycol",
        "freezing point": "freezes at {value}",
        "freeze sample": "sample at {value}",
        "freeze sample: liquid": "sample liquid at {value}",
        "freeze sample: slush": "sample slush at {value}",
        "freeze sample: solid": "sample solid at {value}",
        "pressure": "{value}",
        "temperature": "{value}",
        "looks pink": "looked at for colour",
        "looks pink: yes": "looks pink",
        "looks pink: no": "does not look pink",
        "share eaten": "{value} of the anode rod eaten",
        "no value": "no value",
        "of jug": "jug: {reading}",
        "how": "{reading} ({how})",
        "within": "give or take {sd}",
        "zeroed": "zeroed on water",
        "not zeroed": "not zeroed",
    }
)
"""What was read, as it was read."""

INSTRUMENTS: Mapping[str, str] = MappingProxyType(
    {
        "refractometer": "refractometer",
        "hydrometer": "hydrometer",
        "test strip": "test strip",
        "freezer": "freezer",
        "gauge": "gauge",
        "thermometer": "thermometer",
        "eye": "by eye",
    }
)
"""What it was read with."""

MARKS: Mapping[str, str] = MappingProxyType(
    {
        "published": "published",
        "reproduced": "reproduced",
        "memory": "memory",
        "common practice": "common practice",
        "calculated": "calculated",
    }
)
"""How far a source can be trusted, by its mark."""
