"""The cold outside, from hour to hour."""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Self

from wintertight.errors import OutOfRange
from wintertight.units import ZERO_CELSIUS_K

HOUR_S = 3600.0
"""One hour [s]."""


@dataclass(frozen=True, slots=True)
class Outdoors:
    """Temperatures outside, each for a step; behind the last one the coldest of them stays.

    Attributes:
        degC: temperature of each step [degC].
        step_s: how long each lasts [s]; infinite for a cold that stays.
    """

    degC: tuple[float, ...]
    step_s: float = HOUR_S

    def __post_init__(self) -> None:
        """Refuse what is no temperature: unknown is never mild."""
        if not self.degC or not self.step_s > 0.0:
            message = "a night needs a temperature, and steps that last"
            raise OutOfRange(message)
        for degrees in self.degC:
            if not (math.isfinite(degrees) and degrees >= -ZERO_CELSIUS_K):
                message = f"{degrees} degC is no temperature of a night"
                raise OutOfRange(message)

    @classmethod
    def staying(cls, outdoor_degC: float) -> Self:
        """Give a cold that is there from the first minute and stays."""
        return cls((outdoor_degC,), math.inf)

    @property
    def coldest_degC(self) -> float:
        """Coldest of all [degC]."""
        return min(self.degC)

    @property
    def known_s(self) -> float:
        """How far it is known [s]."""
        return len(self.degC) * self.step_s

    def colder_by(self, margin_K: float) -> Self:
        """Give the same hours, each colder by a margin [K], but not below absolute zero."""
        floor = -ZERO_CELSIUS_K
        return type(self)(tuple(max(t - margin_K, floor) for t in self.degC), self.step_s)

    def spans(self) -> Iterator[tuple[float, float, float]]:
        """Give each span: its begin [s], how long it is [s], its temperature [degC]."""
        if math.isfinite(self.step_s):
            for k, degrees in enumerate(self.degC):
                yield k * self.step_s, self.step_s, degrees
            yield self.known_s, math.inf, self.coldest_degC
        else:
            yield 0.0, math.inf, self.degC[0]
