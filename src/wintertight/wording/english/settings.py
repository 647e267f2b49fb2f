"""English: methods, what a hand sets, and how it can stand."""

from collections.abc import Mapping
from types import MappingProxyType

METHODS: Mapping[str, str] = MappingProxyType(
    {
        "pump": "antifreeze by the coach's own pump",
        "hand-pump": "antifreeze by hand pump",
        "air": "blow-out",
        "air-then-pump": "blow-out, then antifreeze",
        "drain": "drain only",
        "hold": "freeze hold",
        "thaw": "thaw and test first",
    }
)

THINGS: Mapping[str, str] = MappingProxyType(
    {
        "handle": "handle",
        "cartridge": "cartridge",
        "bowl": "bowl",
        "switch": "switch",
        "hose": "hose",
        "drain": "drain",
        "tank": "tank",
        "tap": "tap",
        "valve": "valve",
        "check": "check",
        "relief lever": "relief lever",
        "plug": "plug",
        "gate": "gate valve",
        "burner": "burner",
        "element": "electric element",
        "coolant": "engine coolant",
        "head": "head",
        "body": "whole piece",
        "filter": "filter",
        "line end": "end of the line",
        "lever": "lever",
        "mould": "mould",
        "cap": "cap",
        "named handle": "handle",
        "diverter": "diverter",
        "rinse inlet": "inlet",
        "valve of a machine": "fill valve",
        "maker's steps": "maker's steps",
    }
)
"""What a hand sets."""

SETTINGS: Mapping[str, str] = MappingProxyType(
    {
        "along": "along the pipe (open)",
        "across": "across the pipe (shut)",
        "half": "half way",
        "open": "open",
        "shut": "shut",
        "in": "in",
        "out": "out",
        "on": "on",
        "off": "off",
        "tight": "tight",
        "loose": "loose",
        "free": "free",
        "pressed": "pressed in",
        "in use": "in use",
        "stowed": "stowed",
        "in the jug": "in the jug",
        "hand pump": "hand pump on",
        "air line": "air line on",
        "open to the air": "open to the air",
        "tank line": "on the line from the tank",
        "relief lever open": "relief lever open",
        "plug out": "plug out",
        "cartridge out, bowl emptied and back on": "cartridge out, bowl emptied and back on",
        "on, then off": "on, then off",
        "emptied": "emptied",
        "open, then shut": "open, then shut",
        "worked once": "worked once",
        "a quarter turn loose": "a quarter turn loose",
        "poured in": "poured in",
        "in place": "in place",
        "removed": "taken out",
        "joined": "joined",
        "cartridge in": "cartridge in",
        "bypass plug in": "bypass plug in",
        "full": "full",
        "to do": "to do",
        "done": "done",
        "recirculate": "recirculating",
        "plug in, relief shut": "plug in, relief lever down",
        "reading": "reading",
        "warm": "warm",
        "looked at": "looked at",
        "tested": "tested",
        "tag at the main tap": "tag at the main tap",
    }
)
