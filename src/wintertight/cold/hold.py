"""How long water that could not be drained stays harmless: the clock of a freeze hold.

Each hollow that still holds water cools with the air round it and then freezes from its wall
inward. It counts as gone when so much of it is ice as bursts what has room to grow, or when its
wall is at freezing where nothing gives. Taken on the careful side: the cold is there from the first
minute and stays, nothing heats, the wall of the tube holds no heat, water does not cool below
freezing before it freezes, and what stands outside stands in wind.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final, Literal

from wintertight.cold.cooling import (
    CONDUCTIVITY_WATER,
    HEAT_WATER,
    STILL_AIR,
    cooling_s,
    wind_coefficient,
)
from wintertight.cold.freezing import CONDUCTIVITY_ICE, freezing_debt
from wintertight.cold.glycol_need import HARMLESS_ICE
from wintertight.fluids.water import DENSITY_WATER_0

Place = Literal["indoors", "closed", "outside"]

ROOM_S: Final = {"indoors": 7200.0, "closed": 1800.0, "outside": 0.0}
"""How slowly the air of a room follows the cold, its heat off [s]: two hours for a room, half an
hour for a belly or a box behind a small door; common practice, on the short side."""

WIND_M_S: Final = 5.0
"""Wind at what stands outside [m/s]: a fresh night; common practice."""

HOLLOW_LENGTHS: Final = 4.0
"""A hollow that is no tube counts as one four radii long [1]; common practice."""


@dataclass(frozen=True, slots=True)
class Wet:
    """One hollow that still holds water.

    Attributes:
        part: id of the line or fitting.
        volume_m3: what it holds when full [m3], above 0.
        place: where it is.
        bore_m: bore of a tube [m]; 0 for a hollow of another shape.
        gives: whether slush in it has somewhere to grow.
    """

    part: str
    volume_m3: float
    place: Place
    bore_m: float = 0.0
    gives: bool = True

    @property
    def radius_m(self) -> float:
        """Radius of the tube, or of a short one that holds as much [m]."""
        if self.bore_m > 0.0:
            return self.bore_m / 2.0
        return float((self.volume_m3 / (HOLLOW_LENGTHS * math.pi)) ** (1.0 / 3.0))


@dataclass(frozen=True, slots=True)
class HeldFor:
    """How long each hollow holds.

    Attributes:
        start_degC, outdoor_degC: temperature of the coach at first, and of the cold [degC].
        parts: seconds until each is gone, the first one first [s]; infinite where it never is.
    """

    start_degC: float
    outdoor_degC: float
    parts: tuple[tuple[str, float], ...]

    @property
    def seconds(self) -> float:
        """When the claim expires [s]; infinite where nothing is left that freezes."""
        return self.parts[0][1] if self.parts else math.inf


def held_for(wet: Iterable[Wet], start_degC: float, outdoor_degC: float) -> HeldFor:
    """Give how long what was left in a coach stays harmless.

    Args:
        wet: the hollows that still hold water.
        start_degC: temperature of the coach and of its water at first [degC].
        outdoor_degC: the cold [degC], from the first minute on.

    Returns:
        The seconds of each, and of the claim.
    """
    gone = [(one.part, seconds_until_gone(one, start_degC, outdoor_degC)) for one in wet]
    return HeldFor(start_degC, outdoor_degC, tuple(sorted(gone, key=lambda g: (g[1], g[0]))))


def seconds_until_gone(wet: Wet, start_degC: float, outdoor_degC: float) -> float:
    """Give how long one hollow stays harmless.

        the room's air        Ta = To + (T0 - To) exp(-t / tau_room)
        the water, cooling    rho c R / (2 h) dT/dt = -(T - Ta)
        the water, freezing   integral of (0 - Ta) dt = the debt of ``freezing_debt``
        its wall, cooling     as much colder than its mean as heat flows: 0 degC when the mean is
                              at -To h R / (4 k)

    Args:
        wet: the hollow.
        start_degC: temperature of room and water at first [degC].
        outdoor_degC: the cold [degC].

    Returns:
        Time [s]; infinite where the cold is not below freezing.

    Sources: london-seban; churchill-bernstein; ashrae-insulation; common-practice
    """
    if outdoor_degC >= 0.0:
        return math.inf
    start_degC = max(start_degC, 0.0)
    h = STILL_AIR
    if wet.place == "outside":
        h = max(STILL_AIR, wind_coefficient(WIND_M_S, 2.0 * wet.radius_m))
    tau_s = DENSITY_WATER_0 * HEAT_WATER * wet.radius_m / (2.0 * h)
    room_s = ROOM_S[wet.place]
    if not wet.gives:
        end_degC = -outdoor_degC * h * wet.radius_m / (4.0 * CONDUCTIVITY_WATER)
        return _until_cold(tau_s, room_s, start_degC, outdoor_degC, end_degC)
    debt = freezing_debt(wet.radius_m, h * wet.radius_m / CONDUCTIVITY_ICE, HARMLESS_ICE)
    cold_s = _until_cold(tau_s, room_s, start_degC, outdoor_degC)
    if room_s == 0.0:
        return cold_s + debt / -outdoor_degC
    return _until_frozen(debt, cold_s, room_s, start_degC, outdoor_degC)


def _until_cold(
    tau_s: float, room_s: float, start_degC: float, outdoor_degC: float, end_degC: float = 0.0
) -> float:
    """Give when water in a room that cools is down to a temperature [s]: by halving."""
    if room_s == 0.0 or start_degC <= end_degC:
        return cooling_s(tau_s, start_degC, outdoor_degC, end_degC)
    span = start_degC - outdoor_degC

    def water(seconds: float) -> float:
        slow, fast = math.exp(-seconds / room_s), math.exp(-seconds / tau_s)
        if abs(room_s - tau_s) < 1e-6 * room_s:
            return outdoor_degC + span * (1.0 + seconds / tau_s) * fast
        return outdoor_degC + span * (room_s * slow - tau_s * fast) / (room_s - tau_s)

    low, high = 0.0, room_s + tau_s
    while water(high) > end_degC:
        high *= 2.0
    for _ in range(80):
        middle = (low + high) / 2.0
        low, high = (middle, high) if water(middle) > end_degC else (low, middle)
    return low


def _until_frozen(
    debt: float, since_s: float, room_s: float, start_degC: float, outdoor_degC: float
) -> float:
    """Give when the cold of a room has paid a debt that it pays from some time on [s]."""
    span = start_degC - outdoor_degC

    def paid(until_s: float) -> float:
        cold = -outdoor_degC * (until_s - since_s)
        return cold - span * room_s * (math.exp(-since_s / room_s) - math.exp(-until_s / room_s))

    low, high = since_s, since_s + room_s + debt / -outdoor_degC
    while paid(high) < debt:
        high *= 2.0
    for _ in range(80):
        middle = (low + high) / 2.0
        low, high = (middle, high) if paid(middle) < debt else (low, middle)
    return low
