"""What the papers of a record are made from."""

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import timedelta

from wintertight.coach.card import Card
from wintertight.procedure.as_done import AsDone
from wintertight.procedure.as_left import went_as_recorded
from wintertight.procedure.hindsight.look_back import Hindsight
from wintertight.procedure.plan import Plan
from wintertight.procedure.record import Record
from wintertight.units import (
    System,
    celsius_to_fahrenheit,
    fahrenheit_to_celsius,
    in_words,
)

NOISE = 1e-6
"""A temperature this little above a printed one counts as it: what arithmetic adds [K or degF]."""


@dataclass(frozen=True, eq=False, slots=True)
class RecordedJob:
    """A record, and all that follows from it.

    Attributes:
        card: the coach's card as it was given.
        record: the record.
        done: what it proves, less what is doubted by what was observed.
        told: what it tells beyond; None where nothing was observed.
        digest: the record's digest, 64 hexadecimal digits.
        link: address of the coach's page; "" where there is none.
    """

    card: Card
    record: Record
    done: AsDone
    told: Hindsight | None
    digest: str
    link: str = ""

    @property
    def is_finished(self) -> bool:
        """Is every part proven, and does nothing in the record speak against it?

        A hazard that was done as recorded, a card that the record contradicts, observations that
        speak for something else, and a freeze hold leave it open, even where every part is proven.
        """
        plan = self.done.plan
        proven = plan.verdict == "safe" and not plan.refused and not self.done.still_here
        return proven and plan.hold is None and went_as_recorded(self.told)

    @property
    def day(self) -> str:
        """The day on which it began, such as 2025-10-14; "" where the record names none."""
        return self.record.started.date().isoformat() if self.record.started else ""

    @property
    def devices(self) -> tuple[str, ...]:
        """The devices on which it was written down, by name."""
        return tuple(sorted({e.device for e in self.record.events if e.device}))

    def clock(self, at_s: float | None) -> str:
        """Give the time of day of an event [s]; since the beginning, where no day is known."""
        if at_s is None:
            return ""
        started = self.record.started
        if started is None:
            return in_words(60.0 * (at_s // 60.0), "time", "metric")
        return (started + timedelta(seconds=at_s)).strftime("%H:%M")

    def times(self) -> Iterator[float]:
        """Give every time in the record [s]."""
        return (event.at_s for event in self.record.events if event.at_s is not None)

    def spoken_plan(self, system: System) -> Plan:
        """Give the proof with the design low as it may be printed.

        Where every part is proven it is rounded to the warm side, so that no rounding promises
        more than is proven.
        """
        plan = self.done.plan
        if plan.verdict != "safe":
            return plan
        return replace(plan, low_degC=warm_side(plan.low_degC, system))


def warm_side(low_degC: float, system: System) -> float:
    """Give the coldest temperature that can be printed as it is and is no colder than this one.

    Args:
        low_degC: a temperature [degC].
        system: "us" prints whole degF, "metric" tenths of a degC.

    Returns:
        The temperature [degC].

    Example:
        >>> round(celsius_to_fahrenheit(warm_side(fahrenheit_to_celsius(-10.4), "us")), 6)
        -10.0
        >>> warm_side(-23.37, "metric")
        -23.3
    """
    if system == "metric":
        return math.ceil(low_degC * 10.0 - NOISE) / 10.0
    return fahrenheit_to_celsius(math.ceil(celsius_to_fahrenheit(low_degC) - NOISE))
