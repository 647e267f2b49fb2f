"""English: what is said of the anode rods of heaters."""

from collections.abc import Mapping
from types import MappingProxyType

ANODES: Mapping[str, str] = MappingProxyType(
    {
        "at half": (
            "{part}: {share} of the anode rod is eaten ({share_low} to {share_high}). A rod is"
            " replaced at half: replace it now."
        ),
        "half before autumn": (
            "{part}: {share} of the anode rod is eaten ({share_low} to {share_high}). Half is"
            " reached in {left} seasons ({left_low} to {left_high}), as likely as not before the"
            " next autumn: replace it now."
        ),
        "half after autumn": (
            "{part}: {share} of the anode rod is eaten ({share_low} to {share_high}). Half is"
            " reached in {left} seasons ({left_low} to {left_high}): replace it next autumn."
        ),
        "lasts": (
            "{part}: {share} of the anode rod is eaten ({share_low} to {share_high}). Half is"
            " reached in {left} seasons ({left_low} to {left_high}): look again next autumn."
        ),
        "no reading": (
            "{part}: nothing is known of its anode rod. Look at it when the plug is out, and write"
            " down how much is eaten."
        ),
        "no reading: tank not said": (
            "{part}: the card does not say whether it has an anode. Look when the plug is out, and"
            " enter on the card what its tank is made of."
        ),
        "goes down": (
            "{part}: a later reading says that less of the anode rod is eaten than an earlier one."
            " Either one of them is wrong, or nobody wrote down that the rod was replaced: look at"
            " it again."
        ),
    }
)
"""What is said of one anode, by key."""

NO_ANODES: Mapping[str, str] = MappingProxyType(
    {
        "aluminum": "{part}: its tank is of aluminum and has no anode.",
        "stainless steel": "{part}: its tank is of stainless steel and has no anode.",
        "on-demand heater": "{part}: it has no tank, and so no anode.",
        "hydronic coil": "{part}: it has no tank, and so no anode.",
        "not looked at": "{part}: nobody has looked at it, so nothing is known of an anode.",
        "no heater": "By the card this coach has no heater, and so no anode.",
    }
)
"""Why a heater has no anode that could be looked at."""

WEAR_PHRASES: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Anode rods of {coach}, as of {day}",
        "heading without day": "Anode rods of {coach}",
        "assumed": (
            "Before any reading a rod is taken to last one to five seasons, a season being a year"
            " of use; common practice. A season eats {rate_low} to {rate_high}."
        ),
        "looks": "Looked at: {looks}.",
        "look": "{day} {share}",
        "new rod": "{day} new",
        "nothing known": "nobody has written down a reading",
        "no day": "no record gives a day",
        "contradiction": "the readings contradict each other",
    }
)
"""Headings and pieces."""
