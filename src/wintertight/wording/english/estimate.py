"""English: the estimate, its options, and what declined work leaves open."""

from collections.abc import Mapping
from types import MappingProxyType

ESTIMATE: Mapping[str, str] = MappingProxyType(
    {
        "title": "Estimate {id}",
        "heading": "Estimate",
        "method": "Method",
        "dated": "Dated",
        "valid": "Valid until",
        "work": "Work",
        "count": "Count",
        "each": "Each",
        "amount": "Amount",
        "labour": "labour",
        "material": "material",
        "further gallon": "Antifreeze beyond {included}, per gallon",
        "further container": "Antifreeze beyond {included}, per container of {size}",
        "further gallon: all": "Antifreeze, per gallon",
        "further container: all": "Antifreeze, per container of {size}",
        "included": "{tier} ({included} of antifreeze included)",
        "net": "Before tax",
        "tax": "{name}, {rate} on {base}",
        "compound": "{name}, {rate} on {base}, taxes before it included",
        "total": "Total",
        "rounding: half-even": "Taxes are rounded to the smallest coin, a half to the even one.",
        "rounding: half-up": "Taxes are rounded to the smallest coin, a half upwards.",
        "at most": (
            "The coach is reckoned to take {volume} of antifreeze, and may take up to {most}: then"
            " the total is {amount}."
        ),
        "steady": "The coach is reckoned to take {volume} of antifreeze.",
        "limit": "The shop calls before the bill goes above {amount}.",
        "above limit": (
            "This is above {amount}: the shop calls and waits for a yes before it begins."
        ),
        "open-ended": (
            "This estimate is open-ended: the coach may have frozen. It is for thawing, looking and"
            " testing only; mending and winterizing are estimated anew once it is known what held."
        ),
        "options": "Options that are open, not in the total",
        "accept": "accept",
        "decline": "decline",
        "declined": "Declined work",
        "i decline": "I decline: {option} ({amount} before tax).",
        "signature": "Signature",
        "date": "Date",
        "agreed": "I have read this and ask for the work as it stands.",
        "no claim": "With that work declined, what the plan says of the coach does not hold.",
        "claim": "What the plan says: {verdict}",
        "claim with options": "What the plan says, with every option done: {verdict}",
        "without it": "Without it: {left}",
        "from": "Estimate by {shop}",
        "one option": "{option}: {amount} before tax.",
        "names": "{names} would not be protected: what is in there may freeze and burst.",
        "doubtful": "Nobody could vouch for {names}.",
        "nothing known": (
            "Left out alone, none of its steps changes what the plan shows; left out together,"
            " nobody has worked it out."
        ),
        "not asked": "What that leaves open was not worked out.",
        "no step": "The plan does nothing there, so it shows nothing of what is left open.",
        "no fitting": "No part of the coach hangs on it.",
    }
)
