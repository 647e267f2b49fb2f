"""How often what goes wrong is met, and how well a bay times and counts: all common practice.

There is no published figure for any of these. They decide only between explanations that fit alike.
"""

from collections.abc import Iterable, Mapping
from types import MappingProxyType

from wintertight.coach.card import Card
from wintertight.units import GALLON_M3

AS_RECORDED = "as recorded"
FORGOTTEN = "forgotten outlet"
LINE = "longer line"
RUN_SINCE = "water run since"
UNKNOWN = "something else"

CHANCE: Mapping[str, float] = MappingProxyType(
    {
        "wrong bypass": 0.03,
        "inlet half open": 0.02,
        "crossover": 0.03,
        "low point open": 0.02,
        "suction leak": 0.005,
        "jug dry": 0.005,
        "weak product": 0.015,
        "filter left in": 0.005,
        "branch shut": 0.01,
        "failed check": 0.003,
        FORGOTTEN: 0.002,
        LINE: 0.02,
        RUN_SINCE: 0.002,
        UNKNOWN: 0.005,
    }
)
"""How often each cause is met in jobs whose steps are all ticked [1], and how often one fitting
indoors is forgotten; common practice."""

CROSSES = ("outside shower", "outside kitchen", "shower")
"""Kinds of fittings through which hot and cold run together while a head or a button is shut."""

OUT_OF_SIGHT: Mapping[str, float] = MappingProxyType(
    {"outside shower": 25.0, "outside kitchen": 12.0, "spray port": 25.0}
)
"""How many times as often as a tap indoors a fitting of a kind is forgotten [1]; common
practice."""

TIMED_WITHIN_S = 1.0
"""Standard deviation of a first colour timed by hand [s]; common practice."""

COUNTED_WITHIN_M3 = 0.1 * GALLON_M3
"""Standard deviation of what is left in the jugs, judged by eye [m3]: a tenth of a gallon; common
practice."""

NOT_TIMED = 0.01
"""Chance that a time that was asked for is not written down although the outlet ran [1]; common
practice."""

NOR_THE_NEXT = 0.5
"""Chance that the other side of a fitting is not timed either, where the first was not [1]; common
practice."""

NOT_TIMED_IF_FORGOTTEN = 0.95
"""... and if it did not run [1]; common practice."""

SLIP = 0.02
"""Chance that what came is recorded as missing [1]; common practice."""

TICKED_WITHOUT = 0.10
"""Chance that an outlet at which no colour came is ticked all the same [1]; common practice."""


def forgotten_chances(card: Card, parts: Iterable[str]) -> Mapping[str, float]:
    """Give how often each of some fittings is forgotten.

    Args:
        card: the coach's card.
        parts: ids of the fittings that are run.

    Returns:
        Chances [1], by id.
    """
    return {
        part: CHANCE[FORGOTTEN] * OUT_OF_SIGHT.get(card.fitting[part].kind, 1.0)
        for part in sorted(parts)
    }
