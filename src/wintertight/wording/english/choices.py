"""English: which antifreeze, in which order, and when to shut a tap."""

from collections.abc import Mapping
from types import MappingProxyType

ANTIFREEZE: Mapping[str, str] = MappingProxyType(
    {
        "strong enough": (
            "{product} suits: at least {share} of what leaves each outlet must be product."
        ),
        "only its rating": (
            "{product} is not proven: only its rating is known, and that holds undiluted; run each"
            " outlet until nothing else comes, and measure it."
        ),
        "nothing to go by": (
            "{product} is not proven: nothing on its label settles it. Do not use it unmeasured."
        ),
        "too weak": "{product} does not suit: even undiluted it is too weak for {low}.",
        "rating too warm": "{product} does not suit: its rating is too warm for {low}.",
        "poison": (
            "{product} is refused: ethylene glycol is a poison and never goes into a water line."
        ),
    }
)
"""What is said of a product, by the key of the reason."""

BUYING: Mapping[str, str] = MappingProxyType(
    {
        "take": "Take {jugs} of {size}",
        "cost": ", {cost} {currency}",
        "no price": ", price not listed",
        "enough": "; the shelf has {stock}.",
        "short": "; the shelf has only {stock}.",
        "not counted": "; nobody has counted the shelf.",
        "burns": "It can catch fire: no flame and no pilot light while it is used.",
        "may burn": (
            "What is in it is not printed, so it may catch fire: no flame and no pilot light while"
            " it is used."
        ),
        "none suits": "No antifreeze of the list is shown to suit {low}.",
    }
)
"""How much to take, what it costs, and whether it is there."""

ORDERS: Mapping[str, str] = MappingProxyType(
    {
        "nearest first will do": (
            "Nearest first takes {nearest_m3} on the careful side; of {tried} orders tried the"
            " best takes {best_m3}, the worst {worst_m3}{worst_short}."
        ),
        "another order saves": (
            "Nearest first takes {nearest_m3} on the careful side; of {tried} orders tried the"
            " best would save {saving_m3}, the worst takes {worst_m3}{worst_short}."
        ),
        "another order clears more": (
            "Nearest first leaves {nearest_short} outlets that never clear; the best of {tried}"
            " orders tried leaves {best_short}."
        ),
        "one outlet": "There is only one outlet to run.",
        "worst short": " and still leaves {short} that never clear",
    }
)
"""Nearest first against the other orders that were tried."""

STOP_RULES: Mapping[str, str] = MappingProxyType(
    {
        "as planned": "Running on as planned takes {volume_m3} in {running_s} of running.",
        "first colour: bursts": (
            "Stopping at first colour would leave {bursting} to burst{doubtful_too}."
        ),
        "first colour: doubtful": (
            "Stopping at first colour would leave {doubtful} that nobody could vouch for."
        ),
        "first colour: holds": (
            "Stopping at first colour would do here, and nobody can tell that by looking."
        ),
        "ten seconds: bursts": (
            "Counting ten beyond colour everywhere takes {volume_m3} and would still leave"
            " {bursting} to burst{doubtful_too}."
        ),
        "ten seconds: doubtful": (
            "Counting ten beyond colour everywhere takes {volume_m3} and would leave {doubtful}"
            " that nobody could vouch for."
        ),
        "ten seconds: holds": (
            "Counting ten beyond colour everywhere would do; it takes {volume_m3}."
        ),
        "doubtful too": ", and {doubtful} that nobody could vouch for",
    }
)
"""What each rule for shutting a tap comes to."""
