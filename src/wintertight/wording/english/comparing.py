"""English: methods side by side, and why each stands where it does."""

from collections.abc import Mapping
from types import MappingProxyType

COMPARISON: Mapping[str, str] = MappingProxyType(
    {
        "method": "Method",
        "verdict": "Verdict",
        "antifreeze": "Antifreeze",
        "work": "Work",
        "price": "Price",
        "safe": "protected",
        "gap": "gap",
        "unproven": "not proven",
        "not possible": "not possible",
        "no price": "no price",
        "why best": "Nothing is left that bursts, in the least time.",
        "why longer": "Nothing is left that bursts either, but it takes {more} longer.",
        "why gap": "{gaps} would freeze and burst: {parts}.",
        "why gap and more": "{gaps} would freeze and burst, among them {parts}.",
        "why unproven": "Nobody can vouch for {unproven}: {parts}.",
        "why unproven and more": "Nobody can vouch for {unproven}, among them {parts}.",
        "why holds": (
            "Buys {time} in this cold from its first minute on, and no more; {gaps} would freeze"
            " and burst after that."
        ),
        "also unproven": "Nor can anyone vouch for {unproven} besides.",
        "antifreeze heading": "{coach}, to {low}, filled by its own pump. Best first.",
        "heading": "{coach}, to {low}, with {product}. Best first.",
        "in words": (
            "Work is hands and fluid together; the price is that of the antifreeze, in whole"
            " containers."
        ),
    }
)
