"""English: what is said of many coaches at once."""

from collections.abc import Mapping
from types import MappingProxyType

FLEET: Mapping[str, str] = MappingProxyType(
    {
        "coach": "Coach",
        "antifreeze": "Antifreeze",
        "work": "Work",
        "jugs": "Jugs",
        "verdict": "Verdict",
        "band": "{middle} ({low} to {high})",
        "band in a row": "{middle} ({low}-{high})",
        "minutes in a row": "{middle} min ({low}-{high})",
        "jugs in a row": "{count}",
        "jugs and spare in a row": "{count} + {spare}",
        "safe": "protected to {low}",
        "some": "{count} {what}",
        "how to read": (
            "In brackets: 5 of 100 such coaches take less, 5 take more. Jugs: to bring, and to have"
            " besides."
        ),
        "in all": "In all ({count})",
        "all safe": "protected as planned, once every step is done; void once water runs",
        "all gap": "with a part that would burst",
        "all unproven": "with a part that is not proven, and none that would burst",
        "all failed": "without a plan: the card, or what it asks for, cannot be used",
        "all antifreeze": "Antifreeze {volume}; work {time}.",
        "separately": (
            "That is with the rest of a jug going into the next coach; {jugs} if every coach is"
            " brought its own."
        ),
        "progress": "Planning coaches",
    }
)
"""Columns and rows of a folder of cards, and what stands below them."""
