"""Aiming at more of the product where a plan holds in too few of the drawn coaches."""

from collections.abc import Mapping

from wintertight.procedure.held_in import HeldIn

MORE_ROUNDS = 4
"""How often a plan is worked out again where too few draws hold [1]."""

A_LITTLE = 0.003
"""Share of the product aimed at beyond what too few draws lack [1]: else it comes near for ever."""

MOST_AT_ONCE = 1.05
"""Factor by which a round aims at more at most [1]: what lacks more than that lacks no run-on."""


def stronger_by(before: Mapping[str, float], held: HeldIn) -> Mapping[str, float]:
    """Aim at more of the product where too few draws hold: by what the weak ones lack, and half.

    Args:
        before: by link and trap, the factor by which more was aimed at until now [1].
        held: in how many draws each part held.

    Returns:
        The factors for the next round [1].
    """
    more = {
        place: before.get(place, 1.0)
        * min(1.0 + 1.5 * (1.0 / point - 1.0) + A_LITTLE, MOST_AT_ONCE)
        for place, point in held.short.items()
    }
    return {**before, **more}
