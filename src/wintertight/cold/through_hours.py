"""Water that cools and freezes in a room that follows the cold from hour to hour.

While the cold stays as it is, room and water are sums of exponentials, and so exact:

    the room's air     Ta = To + A exp(-t/r)                            A = Ta0 - To
    the water          T = To + (T0 - To) exp(-t/w) + A m(t)
                       m = (exp(-t/r) - exp(-t/w)) r/(r - w)

with r and w how slowly room and water follow. The water turns round at most once in each span,
where it is as cold as the air; so its first time at a temperature is found between such points.

Freezing pays a debt of kelvin below freezing times time. Careful: air above freezing gives nothing
back, and water that came down to freezing does not warm again.
"""

import math
from collections.abc import Callable
from itertools import pairwise

from wintertight.cold.outdoors import Outdoors

_HALVINGS = 80
_NO_DIFFERENCE = 1e-12


def water_degC(
    seconds: float, air_at_first: float, water_at_first: float, outdoor: float, slow: "Slow"
) -> float:
    """Give the temperature of water in a room, some time after the cold changed.

    Args:
        seconds: since the cold changed [s], 0 and up.
        air_at_first: the room's air then [degC].
        water_at_first: the water then [degC].
        outdoor: the cold [degC].
        slow: how slowly room and water follow [s].

    Returns:
        Temperature of the water [degC].

    Example:
        >>> round(water_degC(3600.0, 10.0, 10.0, -10.0, (1800.0, 600.0)), 3)
        -5.965

    Sources: calculated (the two balances, solved)
    """
    room_s, water_s = slow
    apart = water_at_first - outdoor
    if water_s == 0.0:
        return air_degC(seconds, air_at_first, outdoor, room_s)
    cooled = outdoor + apart * math.exp(-seconds / water_s)
    if room_s == 0.0:
        return cooled
    # Written so that equal rates give no division by nothing, and long times no overflow.
    faster = abs(1.0 / water_s - 1.0 / room_s)
    spread = (
        -math.expm1(-seconds * faster) / faster if faster * seconds > _NO_DIFFERENCE else seconds
    )
    share = math.exp(-seconds / max(room_s, water_s)) * spread / water_s
    return cooled + (air_at_first - outdoor) * share


def air_degC(seconds: float, air_at_first: float, outdoor: float, room_s: float) -> float:
    """Give the temperature of a room's air, some time after the cold changed.

    Args:
        seconds: since the cold changed [s], 0 and up.
        air_at_first: the room's air then [degC].
        outdoor: the cold [degC].
        room_s: how slowly the room follows [s], 0 and up.

    Returns:
        Temperature of the air [degC].
    """
    follows = math.exp(-seconds / room_s) if room_s > 0.0 else 0.0
    return outdoor + (air_at_first - outdoor) * follows


def seconds_to_cool(
    slow: "Slow", start_degC: float, outdoors: Outdoors, wall_share: float = 0.0
) -> tuple[float, float]:
    """Give when water is down to freezing, or its wall is.

    Args:
        slow: how slowly room and water follow [s], 0 and up.
        start_degC: temperature of room and water at first [degC].
        outdoors: the cold.
        wall_share: how much warmer than freezing the water still is when its wall freezes, for each
            kelvin that the air is below freezing [1]; 0 for the water itself.

    Returns:
        Time [s], infinite where it never is; and the room's air then [degC].
    """
    air = water = start_degC
    for begin, length, outdoor in outdoors.spans():
        coldest = min(outdoor, air if slow[0] > 0.0 else outdoor)
        end = -min(coldest, 0.0) * wall_share

        def warmth(t: float, a: float = air, w: float = water, o: float = outdoor) -> float:
            return water_degC(t, a, w, o, slow)

        def ahead(t: float, a: float = air, w: float = water, o: float = outdoor) -> float:
            return air_degC(t, a, o, slow[0]) - water_degC(t, a, w, o, slow)

        if coldest < 0.0:
            after = 0.0 if water <= end else _first_time(warmth, ahead, end, length, sum(slow))
            if after is not None:
                return begin + after, air_degC(after, air, outdoor, slow[0])
        if math.isfinite(length):
            air, water = air_degC(length, air, outdoor, slow[0]), warmth(length)
    return math.inf, air


def _first_time(
    warmth: Callable[[float], float],
    ahead: Callable[[float], float],
    end: float,
    length: float,
    longest_s: float,
) -> float | None:
    """Give when water is first down to a temperature within a span [s]."""
    if math.isinf(length):
        length = max(longest_s, 1.0)
        while warmth(length) > end:
            length *= 2.0
    points = [0.0, length]
    if ahead(0.0) * ahead(length) < 0.0:
        up = ahead(0.0) > 0.0
        points.insert(1, halved(0.0, length, lambda t: (ahead(t) > 0.0) is up))
    for low, high in pairwise(points):
        if warmth(high) <= end:
            return halved(low, high, lambda t: warmth(t) > end)
    return None


def halved(low: float, high: float, before: Callable[[float], bool]) -> float:
    """Give where something changes between two places, by halving.

    Args:
        low: a place before the change.
        high: a place behind it.
        before: says whether a place is before it.

    Returns:
        The place, in the unit of the two.
    """
    for _ in range(_HALVINGS):
        middle = (low + high) / 2.0
        low, high = (middle, high) if before(middle) else (low, middle)
    return low


def seconds_to_pay(
    debt: float, since_s: float, air_at_first: float, room_s: float, outdoors: Outdoors
) -> float:
    """Give when a room's air has been below freezing for long enough to pay a debt of cold.

    Args:
        debt: kelvin below freezing times time [K s], 0 and up.
        since_s: when it begins to pay [s].
        air_at_first: the room's air then [degC].
        room_s: how slowly the room follows the cold [s], 0 and up.
        outdoors: the cold.

    Returns:
        Time from the beginning of the cold [s]; infinite where it is never paid.
    """
    air, left = air_at_first, debt
    for begin, length, outdoor in outdoors.spans():
        if begin + length <= since_s:
            continue
        skipped = max(0.0, since_s - begin)
        span = length - skipped

        def paid(t: float, a: float = air, o: float = outdoor) -> float:
            return _paid(t, a, o, room_s)

        if math.isinf(span):
            if outdoor >= 0.0:
                return math.inf
            span = room_s + left / -outdoor
            while paid(span) < left:
                span *= 2.0
        if paid(span) >= left:
            return begin + skipped + halved(0.0, span, lambda t: paid(t) < left)  # noqa: B023 - used at once
        left -= paid(span)
        air = air_degC(span, air, outdoor, room_s)
    return math.inf


def _paid(seconds: float, air: float, outdoor: float, room_s: float) -> float:
    """Give the kelvin below freezing times time that a room pays within a span [K s]."""
    first = air if room_s > 0.0 else outdoor
    begin, end = 0.0, seconds
    if first >= 0.0 and outdoor >= 0.0:
        return 0.0
    if first >= 0.0:
        begin = min(seconds, room_s * math.log((first - outdoor) / -outdoor))
    elif outdoor > 0.0:
        end = min(seconds, room_s * math.log((outdoor - first) / outdoor))
    lag = 0.0
    if room_s > 0.0:
        lag = room_s * (math.exp(-begin / room_s) - math.exp(-end / room_s))
    return max(0.0, -outdoor * (end - begin) - (first - outdoor) * lag)


Slow = tuple[float, float]
"""How slowly the room's air follows the cold, and the water the air [s]."""
