"""What would tell the two likeliest explanations apart: a cup from a tap, or a look at a handle."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from wintertight.procedure.hindsight.diagnosis import SHARE_WITHIN
from wintertight.procedure.hindsight.foreseen import Foreseen
from wintertight.procedure.hindsight.observed import JUG

READ_WITHIN = 0.03
"""Standard deviation of a strength read in a cup, over that of the jug [1]; common practice."""

PLAINLY = 3.0
"""Standard deviations by which a reading must lie apart to tell [1]."""


@dataclass(frozen=True, slots=True)
class Separating:
    """What would tell two explanations apart.

    Attributes:
        outlet: where a cup would tell, an outlet or the jug; "" where only eyes would.
        part: what to look at otherwise.
        here: strength that the likelier one lets one expect there, over that of the jug [1].
        there: that of the other [1].
    """

    outlet: str
    part: str
    here: float = 0.0
    there: float = 0.0


def what_separates(
    likelier: Foreseen, other: Foreseen, read: Sequence[str] = ()
) -> Separating | None:
    """Find what would tell two explanations apart.

    Args:
        likelier: what the likelier one lets one expect.
        other: what the other one does.
        read: where strength was read before; it would only say the same again.

    Returns:
        The cup in which they differ most, if they do so plainly; else what to look at; None where
        neither would tell.
    """
    outlets = [o for o in likelier.strength if o in other.strength and o not in read]
    apart = {o: _apart(likelier, other, o) for o in outlets}
    best = max(apart, key=lambda o: (apart[o], o == JUG, o), default="")
    if best and apart[best] >= PLAINLY:
        means = (float(np.mean(each.strength[best])) for each in (likelier, other))
        return Separating(best, "", *means)
    part = likelier.explanation.part or other.explanation.part
    return Separating("", part) if part else None


def _apart(one: Foreseen, other: Foreseen, outlet: str) -> float:
    """Give by how many standard deviations two expectations differ [1]."""
    a, b = one.strength[outlet], other.strength[outlet]
    spread = math.hypot(float(np.std(a)), float(np.std(b)), READ_WITHIN, SHARE_WITHIN)
    return abs(float(np.mean(a) - np.mean(b))) / spread
