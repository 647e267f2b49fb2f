"""A tank that blows down, against scipy's integration of the same balance, written anew."""

import math
from itertools import pairwise

import pytest
from scipy.integrate import solve_ivp

from wintertight.flow.air.gas import (
    CUBIC_FOOT_PER_MINUTE,
    FREE_AIR_DEGC,
    GAS_CONSTANT_AIR,
)
from wintertight.flow.air.receiver import AirCurve, burst, recovery_s
from wintertight.flow.air.supply import AirSupply
from wintertight.units import GALLON_M3, PSI_PA

FREE_DENSITY = 101_325.0 / (GAS_CONSTANT_AIR * (FREE_AIR_DEGC + 273.15))
CURVE = AirCurve(
    tuple(p * PSI_PA for p in (40.0, 30.0, 18.0, 10.0)), (4.3e-3, 3.45e-3, 2.5e-3, 1.7e-3), 75e3
)


def flow_kg_s(line_Pa: float) -> float:
    """Give the flow at a gauge pressure by looking the curve up, piece by piece."""
    points = sorted(zip(CURVE.gauge_Pa, CURVE.mass_kg_s, strict=True))
    for (low, less), (high, more) in pairwise(points):
        if line_Pa <= high:
            return less + (more - less) * (line_Pa - low) / (high - low)
    return points[-1][1]


def time_to_fall(supply: AirSupply, to_Pa: float) -> float:
    """Integrate dp/dt = R T (m_in - m_out)/V from cut-out until the tank is down to a pressure."""
    energy = GAS_CONSTANT_AIR * (supply.temperature_degC + 273.15)
    delivery = supply.delivery_m3_s * FREE_DENSITY

    def rate(_: float, tank: list[float]) -> list[float]:
        draw = flow_kg_s(min(tank[0], supply.regulator_Pa))
        return [energy * (delivery - draw) / supply.receiver_m3]

    def down(_: float, tank: list[float]) -> float:
        return tank[0] - to_Pa

    down.terminal = True  # type: ignore[attr-defined]
    run = solve_ivp(
        rate, (0.0, 1e5), [supply.cut_out_Pa], events=down, rtol=1e-10, atol=1e-6, max_step=2.0
    )
    return float(run.t_events[0][0])


@pytest.mark.parametrize("gallons", [1.0, 6.0, 30.0])
@pytest.mark.parametrize("cfm", [0.0, 0.5, 2.0])
def test_a_burst_agrees(gallons: float, cfm: float) -> None:
    """Guards how long the regulator holds and how long the line keeps sweeping."""
    supply = AirSupply(gallons * GALLON_M3, cfm * CUBIC_FOOT_PER_MINUTE)
    ours = burst(supply, CURVE)
    assert ours.holds_s == pytest.approx(time_to_fall(supply, supply.regulator_Pa), rel=1e-6)
    assert ours.lasts_s == pytest.approx(time_to_fall(supply, CURVE.lowest_Pa), rel=1e-6)
    assert ours.end_Pa == CURVE.lowest_Pa


def test_a_recovery_by_hand() -> None:
    """Guards the way back: V dp / (R T m) for a steady delivery."""
    supply = AirSupply(6.0 * GALLON_M3, 2.5 * CUBIC_FOOT_PER_MINUTE, temperature_degC=15.0)
    air_m3 = supply.receiver_m3 * (supply.cut_out_Pa - 2e5) / 101_325.0
    assert recovery_s(supply, 2e5) == pytest.approx(air_m3 / supply.delivery_m3_s, rel=1e-12)
    assert recovery_s(AirSupply(delivery_m3_s=0.0), 2e5) == math.inf
