"""Which side of what is uncertain a calculation takes."""

from dataclasses import dataclass
from typing import Literal

from wintertight.coach.quantity import Quantity

UPPER_95 = 0.82
"""Share of a spread (two standard deviations) at the upper 95 % point: 1.645/2 [1]."""


@dataclass(frozen=True, slots=True)
class Case:
    """How a card's uncertain values are taken when its network is built.

    Attributes:
        name: for traces and reports.
        mixing: laminar runs as many as fittings ("all"), half as many ("half"), or none ("plug").
        bore: largest bore the tolerances allow, or the middle one.
        lengths: the card's best values, or their upper 95 % points.
        trusts_drains: whether a line that drains by its heights is taken to be empty when it is
            filled; if not, it is taken to be full of water still.
        chunk_m3: volume moved between two looks at the flow [m3]; it moves seconds, not shares.
        longest_chunk_m3: what it may grow to [m3] while the flow stays as it is; None is not at
            all.
        parcel_m3: largest parcel in which laminar lines are fed [m3].
        viscosity_m2_s: one viscosity for everything [m2/s]; None is that of what lines hold.
    """

    name: str
    mixing: Literal["all", "half", "plug"] = "all"
    bore: Literal["largest", "middle"] = "largest"
    lengths: Literal["best", "upper"] = "best"
    trusts_drains: bool = True
    chunk_m3: float = 0.1e-3
    longest_chunk_m3: float | None = None
    parcel_m3: float = 10e-6
    viscosity_m2_s: float | None = None

    def length_m(self, length: Quantity) -> float:
        """Give the length [m] this case takes."""
        if self.lengths == "best":
            return length.value
        return length.value * (1.0 + UPPER_95 * length.spread)

    def volume_m3(self, volume: Quantity) -> float:
        """Give the volume of a hollow [m3] this case takes."""
        return self.length_m(volume)

    def runs(self, bends: int) -> int | None:
        """Give the number of laminar runs [1] in a line with so many bends; None is plug flow."""
        if self.mixing == "plug":
            return None
        runs = bends + 1
        return runs if self.mixing == "all" else max(1, (runs + 1) // 2)


BEST = Case("best values")
CAREFUL = Case("careful side", mixing="half", lengths="upper", trusts_drains=False)
PLUG = Case("plug flow", mixing="plug")
