"""English: what a command adds to its screen: files written, and where its list is from."""

from collections.abc import Mapping
from types import MappingProxyType

WRITTEN: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Job sheet: {file}",
        "guide": "Owner's guide: {file}",
        "drawing": "Drawing: {file}",
        "record": "Winter record: {file}",
        "tag": "Hang tag: {file}",
        "estimate": "Estimate: {file}",
        "card holds": "{coach}: {fittings} fittings and {lines} lines, and they hold together.",
        "bundled list": "Antifreeze from the bundled example list; give yours with --shop FILE.",
        "bundled prices": (
            "Prices from the bundled example list are invented; give yours with --shop FILE."
        ),
        "no prices": "No estimate: the shop's list has no price table.",
        "not recorded": "The record does not speak of: {steps}.",
        "no time": "at a time that it does not name",
        "signed, believed": (
            "Signed by {by}, {at} by the signer's own clock; nothing was changed or added since."
        ),
        "signed, by somebody": (
            "Signed by {by}, {at} by the signer's own clock; nothing was changed or added"
            " since. Who that is, is not proven: give the signer's certificate with --trust."
        ),
    }
)
"""By what was written, or noted."""
