"""English: titles, legends and labels of drawings."""

from collections.abc import Mapping
from types import MappingProxyType

DRAWING: Mapping[str, str] = MappingProxyType(
    {
        "whole coach": "Pipe drawing: {coach}",
        "whole coach words": (
            "Lines and fittings from the curb side, front at the left, with these names: {parts}."
        ),
        "pattern cold": "cold",
        "pattern hot": "hot",
        "pattern neither": "hot and cold, or neither",
        "pattern antifreeze": "antifreeze",
        "pattern mixed": "weak",
        "pattern water": "water",
        "pattern air": "empty",
        "pattern unproven": "unproven",
        "pattern gap": "would burst",
        "stands": "{part}:\n{setting}",
        "then back": "{setting}, then {back}",
        "stands along": "ALONG the pipe",
        "stands across": "ACROSS the pipe",
        "seen isometric": "Seen from the curb side, front at the left.",
        "seen plan": "Seen from above, front at the left.",
        "seen side": "Seen from the curb side, level, front at the left.",
        "pictures": "Drawings",
        "step": "Step {n}: {text}",
        "front at": "Step {n}: where the antifreeze is when colour shows at: {part}",
        "colour here": "colour here",
        "end": "How it ends: {coach}",
        "claimed": "{part}: {claim}",
        "claim filled": "filled",
        "claim drained": "drained",
        "claim swept": "swept",
        "claim kept warm": "kept warm",
        "claim removed": "removed",
        "front": "front",
        "rear": "rear",
    }
)
