"""How long a tank keeps an outlet blowing, how long it takes to come back, and in how many bursts.

The tank is taken as isothermal: V dp/dt = R T (m_in - m_out). Over the half minute to two minutes
of a burst steel gives the air most of its heat back; without it the pressure would fall a little
faster at first and recover when the outlet is shut.
"""

import math
from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from wintertight.flow.air.supply import AirSupply

REGAIN_S: Final = 3.0
"""Seconds at the start of each burst after the first in which air only wins back what ran back in
between [s]; common practice."""

MOST_BURSTS: Final = 100
"""Bursts after which an outlet is given up [1]."""

CURVE_SHARES: Final = (1.0, 0.85, 0.7, 0.55, 0.4, 0.25)
"""Shares of the regulator's pressure at which the flow through an outlet is worked out [1]."""

_ALIKE: Final = 1e-12


@dataclass(frozen=True, slots=True)
class AirCurve:
    """Air through one outlet against the pressure in the line, straight between its points.

    Attributes:
        gauge_Pa: gauge pressures, highest first: the regulator's [Pa].
        mass_kg_s: mass flow at each [kg/s].
        lowest_Pa: gauge pressure down to which lines keep being swept [Pa], within the curve.
    """

    gauge_Pa: tuple[float, ...]
    mass_kg_s: tuple[float, ...]
    lowest_Pa: float


@dataclass(frozen=True, slots=True)
class Burst:
    """One blow from a tank, until it is too weak.

    Attributes:
        holds_s: seconds the regulator holds its pressure [s]; infinite if the compressor keeps up.
        lasts_s: seconds until the line falls below what sweeps, or below a quarter of the
            regulator's pressure, to which the curve is worked out [s], or infinite.
        end_Pa: gauge pressure in the tank then [Pa].
        recovery_s: seconds from there back to cut-out, outlet shut [s]; 0 if it lasts for ever.
    """

    holds_s: float
    lasts_s: float
    end_Pa: float
    recovery_s: float


def curve_of(flow_at: Callable[[float], tuple[float, float]], regulator_Pa: float) -> AirCurve:
    """Work out an outlet's flow downwards from the regulator's pressure.

    Args:
        flow_at: gives mass flow [kg/s] and weakest margin [1] at a gauge pressure [Pa]; a line
            stops being swept where the margin falls to 1.
        regulator_Pa: gauge pressure behind the regulator [Pa], above 0.

    Returns:
        The curve: pressures [Pa], flows [kg/s], down to the first that sweeps no more.
    """
    pressures: list[float] = []
    flows: list[float] = []
    margin_before = math.inf
    lowest = regulator_Pa
    for share in CURVE_SHARES:
        flow, margin = flow_at(share * regulator_Pa)
        if pressures and margin < 1.0:
            part = (1.0 - margin) / max(margin_before - margin, _ALIKE)
            step = pressures[-1] - share * regulator_Pa
            lowest = min(share * regulator_Pa + part * step, pressures[-1])
        pressures.append(share * regulator_Pa)
        flows.append(flow)
        if margin < 1.0:
            break
        margin_before, lowest = margin, pressures[-1]
    return AirCurve(tuple(pressures), tuple(flows), lowest)


def burst(supply: AirSupply, curve: AirCurve, start_Pa: float | None = None) -> Burst:
    """Blow a tank down through an outlet while the compressor delivers.

    t = V/(R T) integral of dp / (m_out(p) - m_in): m_out constant while the regulator holds, then
    following the curve, piece by piece in closed form.

    Args:
        supply: tank, compressor and regulator.
        curve: flow through the outlet.
        start_Pa: gauge pressure in the tank at the start [Pa]; cut-out where None.

    Returns:
        Times [s] and the last pressure [Pa].

    Sources: calculated.
    """
    start = supply.cut_out_Pa if start_Pa is None else start_Pa
    full = curve.gauge_Pa[0]
    holds = _seconds(supply, max(start - full, 0.0), curve.mass_kg_s[0], curve.mass_kg_s[0])
    lasts = holds
    for (high, more), (low, less) in pairwise(zip(curve.gauge_Pa, curve.mass_kg_s, strict=True)):
        top, bottom = min(high, start), max(low, curve.lowest_Pa)
        if bottom < top and math.isfinite(lasts):
            slope = (more - less) / (high - low)
            lasts += _seconds(
                supply, top - bottom, less + slope * (top - low), less + slope * (bottom - low)
            )
    end = min(start, curve.lowest_Pa) if math.isfinite(lasts) else start
    return Burst(holds, lasts, end, recovery_s(supply, end) if math.isfinite(lasts) else 0.0)


def recovery_s(supply: AirSupply, tank_Pa: float) -> float:
    """Give how long the compressor takes back to cut-out with the outlet shut.

    Args:
        supply: tank, compressor and regulator.
        tank_Pa: gauge pressure in the tank [Pa].

    Returns:
        Seconds [s]; infinite without a compressor.

    Sources: calculated.
    """
    missing = max(supply.cut_out_Pa - tank_Pa, 0.0)
    if not missing or not supply.receiver_m3:
        return 0.0
    if not supply.delivery_kg_s:
        return math.inf
    return missing * supply.seconds_per_pascal(supply.delivery_kg_s)


def _seconds(supply: AirSupply, drop_Pa: float, more_kg_s: float, less_kg_s: float) -> float:
    """Give how long a tank takes to fall, its draw changing straight from one flow to another."""
    first, last = more_kg_s - supply.delivery_kg_s, less_kg_s - supply.delivery_kg_s
    if drop_Pa <= 0.0:
        return 0.0 if first > 0.0 else math.inf
    if first <= 0.0 or last <= 0.0:
        return math.inf
    same = abs(first - last) <= _ALIKE * first
    mean = first if same else (first - last) / math.log(first / last)
    return drop_Pa * supply.seconds_per_pascal(mean)


@dataclass(frozen=True, slots=True)
class Work:
    """What one outlet takes.

    Attributes:
        bursts: bursts from a full tank [1]; 0 where no number of them is enough.
        seconds: from the first opening to the last shutting, waits counted [s], or infinite.
        refill_s: seconds after that until the tank is at cut-out again [s].
    """

    bursts: int
    seconds: float
    refill_s: float


def work_of(
    supply: AirSupply, curve: AirCurve, push_s: float, push_kg_s: float, blow_s: float
) -> Work:
    """Give the bursts in which an outlet is swept: first the water is pushed out, then it blows.

    Between two bursts the tank recovers to cut-out; each burst but the first then loses
    ``REGAIN_S`` of its blow to what ran back. In a burst that ends early the tank is taken to have
    fallen evenly.

    Args:
        supply: tank, compressor and regulator.
        curve: flow of air through the outlet.
        push_s: seconds to push the water out [s], 0 and up.
        push_kg_s: air that takes its place meanwhile [kg/s].
        blow_s: seconds to blow after that [s].

    Returns:
        Bursts [1] and seconds [s].

    Sources: common-practice.
    """
    pushing = AirCurve((curve.gauge_Pa[0],), (push_kg_s,), curve.gauge_Pa[0])
    seconds, to_push, to_blow = 0.0, push_s, blow_s
    for number in range(1, MOST_BURSTS + 1):
        tank = supply.cut_out_Pa
        if to_push:
            pushes = min(to_push, burst(supply, pushing).lasts_s)
            seconds += pushes
            to_push -= pushes
            tank = _tank_after(supply, tank, push_kg_s, pushes)
        if not to_push:
            lasts = burst(supply, curve, tank).lasts_s
            lost = REGAIN_S if number > 1 else 0.0
            if to_blow + lost <= lasts:
                share = (to_blow + lost) / lasts if math.isfinite(lasts) else 0.0
                tank -= share * (tank - min(tank, curve.lowest_Pa))
                return Work(number, seconds + to_blow + lost, recovery_s(supply, tank))
            seconds += lasts
            to_blow -= max(lasts - lost, 0.0)
            tank = min(tank, curve.lowest_Pa)
        waits = recovery_s(supply, tank)
        if not math.isfinite(waits):
            break
        seconds += waits
    return Work(0, math.inf, 0.0)


def _tank_after(supply: AirSupply, tank_Pa: float, draw_kg_s: float, seconds: float) -> float:
    net = draw_kg_s - supply.delivery_kg_s
    if net <= 0.0:
        return tank_Pa
    fallen = seconds / supply.seconds_per_pascal(net) if supply.receiver_m3 else math.inf
    return max(tank_Pa - fallen, supply.regulator_Pa)
