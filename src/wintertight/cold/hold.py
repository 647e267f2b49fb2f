"""How long water that could not be drained stays harmless: the clock of a freeze hold.

Each hollow that still holds water cools with the air round it and then freezes from its wall
inward. It counts as gone when so much of it is ice as bursts what has room to grow, or when its
wall is at freezing where nothing gives. Like every verdict, a claim is taken 1 K colder than what
is asked. On the careful side as well: nothing heats, walls hold no heat, water does not cool below
freezing before it freezes, what froze does not thaw again, and what stands outside stands in wind.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final, Literal

from wintertight.coach.tubing import BORES
from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.cold.cooling import (
    CONDUCTIVITY_WATER,
    HEAT_WATER,
    coefficient_at_bore,
)
from wintertight.cold.freezing import CONDUCTIVITY_ICE, freezing_debt
from wintertight.cold.glycol_need import HARMLESS_ICE
from wintertight.cold.outdoors import Outdoors
from wintertight.cold.through_hours import Slow, seconds_to_cool, seconds_to_pay
from wintertight.errors import OutOfRange
from wintertight.fluids.water import DENSITY_WATER_0

Place = Literal["indoors", "closed", "outside"]

ROOM_S: Final = {"indoors": 7200.0, "closed": 1800.0, "outside": 0.0}
"""How slowly the air of a room follows the cold, its heat off [s]: two hours for a room, half an
hour for a belly or a box behind a small door; common practice, on the short side."""

WIND_M_S: Final = 5.0
"""Wind at what stands outside [m/s]: a fresh night; common practice."""

HOLLOW_LENGTHS: Final = 4.0
"""A hollow that is no tube counts as one four radii long [1]; common practice."""

WITH_ENDS: Final = 1.0 + 1.0 / HOLLOW_LENGTHS
"""Such a hollow loses through its two ends as well: their surface and its side's, over its side's
[1]. Without them it would have less surface than a ball of as much water, which nothing has."""

HOLLOW_WALL_M: Final = 3e-3
"""Wall of a hollow that is no tube [m]; common practice, on the thick side: air takes heat from the
outside."""

OUTSIDE_OVER_BORE: Final = max(tube.outside_m / tube.largest_bore_m for tube in BORES.values())
"""How much wider a tube's outside is than its bore where nobody says [1]: as much as on that of the
tubes known whose wall is thickest for its bore."""


@dataclass(frozen=True, slots=True)
class Wet:
    """One hollow that still holds water.

    Attributes:
        part: id of the line or fitting.
        volume_m3: what it holds when full [m3], above 0.
        place: where it is.
        bore_m: bore of a tube [m]; 0 for a hollow of another shape.
        gives: whether slush in it has somewhere to grow.
        sleeve_m: thickness of a sleeve of foam round it [m]; 0 where it is bare.
    """

    part: str
    volume_m3: float
    place: Place
    bore_m: float = 0.0
    gives: bool = True
    sleeve_m: float = 0.0

    def __post_init__(self) -> None:
        """Refuse a hollow of no size: what is not known has no clock."""
        sizes = (self.volume_m3, self.bore_m, self.sleeve_m)
        if not (all(math.isfinite(size) and size >= 0.0 for size in sizes) and self.volume_m3 > 0):
            message = f"{self.part}: a hollow needs a volume, a bore and a sleeve that are known"
            raise OutOfRange(message)

    @property
    def radius_m(self) -> float:
        """Radius of the tube, or of a short one that holds as much [m]."""
        if self.bore_m > 0.0:
            return self.bore_m / 2.0
        return float((self.volume_m3 / (HOLLOW_LENGTHS * math.pi)) ** (1.0 / 3.0))

    @property
    def loses_W_m2_K(self) -> float:
        """Heat lost for each area of its inner wall [W/(m2 K)]."""
        bore_m = 2.0 * self.radius_m
        wind = WIND_M_S if self.place == "outside" else 0.0
        if self.bore_m > 0.0:
            return coefficient_at_bore(bore_m, OUTSIDE_OVER_BORE * bore_m, self.sleeve_m, wind)
        outside_m = bore_m + 2.0 * HOLLOW_WALL_M
        return WITH_ENDS * coefficient_at_bore(bore_m, outside_m, self.sleeve_m, wind)

    @property
    def slow(self) -> Slow:
        """How slowly its room follows the cold, and its water the room [s]."""
        heat = DENSITY_WATER_0 * HEAT_WATER * self.radius_m / 2.0
        return ROOM_S[self.place], heat / self.loses_W_m2_K


@dataclass(frozen=True, slots=True)
class Freezes:
    """When a hollow comes down to freezing, and what follows; infinite where it never does.

    Attributes:
        cold_s: its water is at freezing, and turns to ice from now on [s].
        gone_s: it is not harmless any more [s].
        solid_s: all of it is ice [s].
    """

    cold_s: float
    gone_s: float
    solid_s: float


@dataclass(frozen=True, slots=True)
class HeldFor:
    """How long each hollow holds.

    Attributes:
        start_degC, outdoor_degC: temperature of the coach at first, and of the coldest cold [degC].
        parts: seconds until each is gone, the first one first [s]; infinite where it never is.
        known_s: how far the cold is known [s]; no claim is made beyond.
    """

    start_degC: float
    outdoor_degC: float
    parts: tuple[tuple[str, float], ...]
    known_s: float = math.inf

    @property
    def seconds(self) -> float:
        """When the claim expires [s]; infinite where nothing is left that freezes."""
        return min(self.parts[0][1], self.known_s) if self.parts else math.inf


def held_for(wet: Iterable[Wet], start_degC: float, cold: float | Outdoors) -> HeldFor:
    """Give how long what was left in a coach stays harmless.

    Args:
        wet: the hollows that still hold water.
        start_degC: temperature of the coach and of its water at first [degC].
        cold: temperatures outside, or one [degC] that is there from the first minute and stays.

    Returns:
        The seconds of each, and of the claim, 1 K colder than asked.

    Raises:
        OutOfRange: a temperature that is none.

    Example:
        >>> night = Outdoors((2.0, 0.0, -2.0, -5.0, -6.0, -7.0, -7.0, -6.0, -3.0))
        >>> found = held_for([Wet("line", 1e-3, "closed", 0.0123)], 8.0, night)
        >>> round(found.seconds / 3600.0, 1)
        3.9
    """
    outdoors = _as_outdoors(cold)
    judged = outdoors.colder_by(VERDICT_MARGIN_K)
    gone = [(one.part, freezes(one, start_degC, judged).gone_s) for one in wet]
    parts = tuple(sorted(gone, key=lambda g: (g[1], g[0])))
    return HeldFor(start_degC, outdoors.coldest_degC, parts, outdoors.known_s)


def seconds_until_gone(wet: Wet, start_degC: float, cold: float | Outdoors) -> float:
    """Give how long one hollow stays harmless.

    Args:
        wet: the hollow.
        start_degC: temperature of room and water at first [degC].
        cold: temperatures outside, or one that stays [degC].

    Returns:
        Time [s]; infinite where the cold is not below freezing.

    Raises:
        OutOfRange: a temperature that is none.

    Sources: london-seban; churchill-bernstein; ashrae-insulation; common-practice
    """
    return freezes(wet, start_degC, cold).gone_s


def freezes(wet: Wet, start_degC: float, cold: float | Outdoors) -> Freezes:
    """Give when one hollow is at freezing, when it is gone, and when it is frozen solid.

        the room's air        follows the cold: dTa/dt = -(Ta - To) / tau_room
        the water, cooling    rho c R / (2 h) dT/dt = -(T - Ta)
        the water, freezing   integral of (0 - Ta) dt = the debt of ``freezing_debt``
        its wall, cooling     as much colder than its mean as heat flows: 0 degC when the mean is
                              at -To h R / (4 k)

    Args:
        wet: the hollow.
        start_degC: temperature of room and water at first [degC]; below freezing counts as at it.
        cold: temperatures outside, or one that stays [degC].

    Returns:
        The three times [s].

    Raises:
        OutOfRange: a temperature that is none.

    Example:
        >>> line = freezes(Wet("line", 1e-3, "closed", 0.0123), 5.0, -10.0)
        >>> [round(s / 60.0) for s in (line.cold_s, line.gone_s, line.solid_s)]
        [26, 80, 160]

    Sources: london-seban; churchill-bernstein; ashrae-insulation; common-practice
    """
    outdoors = _as_outdoors(cold)
    if not math.isfinite(start_degC):
        message = f"{start_degC} degC is no temperature of a coach"
        raise OutOfRange(message)
    start_degC = max(start_degC, 0.0)
    lost = wet.loses_W_m2_K * wet.radius_m
    cold_s, air = seconds_to_cool(wet.slow, start_degC, outdoors)
    paid = [
        seconds_to_pay(_debt(wet, lost, share), cold_s, air, wet.slow[0], outdoors)
        for share in (HARMLESS_ICE, 1.0)
    ]
    if wet.gives:
        return Freezes(cold_s, paid[0], paid[1])
    wall_share = lost / (4.0 * CONDUCTIVITY_WATER)
    return Freezes(cold_s, seconds_to_cool(wet.slow, start_degC, outdoors, wall_share)[0], paid[1])


def _debt(wet: Wet, lost: float, share: float) -> float:
    """Give the cold that a share of ice costs in a hollow [K s]."""
    return freezing_debt(wet.radius_m, lost / CONDUCTIVITY_ICE, share)


def _as_outdoors(cold: float | Outdoors) -> Outdoors:
    return cold if isinstance(cold, Outdoors) else Outdoors.staying(cold)
