"""Rooms and water from hour to hour, against scipy's integration and quadrature, written anew."""

import math

import numpy as np
import pytest
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq
from scipy.special import hyp1f1

from wintertight.cold.cooling import CONDUCTIVITY_FOAM, STILL_AIR
from wintertight.cold.freezing import freezing_debt, neumann_lambda
from wintertight.cold.glycol_need import HARMLESS_ICE
from wintertight.cold.hold import ROOM_S, Freezes, Place, Wet, freezes
from wintertight.cold.outdoors import HOUR_S, Outdoors
from wintertight.cold.through_hours import seconds_to_cool, seconds_to_pay

NIGHTS = {
    "falling": (6.0, 4.0, 1.0, -1.0, -3.0, -5.0, -6.0, -7.0, -7.0),
    "twice": (-3.0, -4.0, -1.0, 3.0, 6.0, 2.0, -2.0, -5.0, -8.0, -6.0),
    "thaw between": (-9.0, -9.0, 8.0, 8.0, 8.0, -2.0, -2.0, -12.0, -12.0, -12.0),
    "warm, then cold": (15.0, 15.0, 12.0, 4.0, -15.0, -20.0),
}


def outside(night: tuple[float, ...], seconds: float) -> float:
    """Look the hour up; behind the last hour the coldest stays."""
    hour = int(seconds // HOUR_S)
    return night[hour] if hour < len(night) else min(night)


def stepped(
    night: tuple[float, ...], room_s: float, water_s: float, start: float, debt: float
) -> tuple[float, float]:
    """Integrate room, water and debt hour by hour; give when water is at 0 degC and debt paid."""
    state, cold, begin = [start, start, 0.0], math.inf, 0.0
    while begin < 400.0 * HOUR_S:
        out = outside(night, begin)

        cooling = cold == math.inf

        def rate(
            _: float, y: list[float], out: float = out, *, cooling: bool = cooling
        ) -> list[float]:
            air = y[0] if room_s else out
            room = (out - y[0]) / room_s if room_s else 0.0
            # Two phases in turn: first the water cools, then its cold is counted.
            if cooling:
                return [room, (air - y[1]) / water_s, 0.0]
            return [room, 0.0, max(0.0, -air)]

        def event(_: float, y: list[float], *, cooling: bool = cooling) -> float:
            return y[1] if cooling else y[2] - debt

        event.terminal = True  # type: ignore[attr-defined]
        end = (begin // HOUR_S + 1.0) * HOUR_S
        run = solve_ivp(
            rate, (begin, end), state, events=event, rtol=1e-9, atol=1e-9, max_step=30.0
        )
        state, begin = list(run.y[:, -1]), end
        if run.t_events[0].size:
            begin = float(run.t_events[0][0])
            if cold < math.inf:
                return cold, begin
            cold = begin
            state[1] = -1.0
    message = "nothing froze"
    raise AssertionError(message)


@pytest.mark.parametrize("night", NIGHTS)
@pytest.mark.parametrize("slow", [(7200.0, 2600.0), (1800.0, 2600.0), (0.0, 900.0)])
def test_rooms_and_water_agree(night: str, slow: tuple[float, float]) -> None:
    """Guards cooling and freezing through nights that fall, rise and fall again."""
    start, debt = 8.0, 20_000.0
    outdoors = Outdoors(NIGHTS[night])
    theirs = stepped(NIGHTS[night], slow[0], slow[1], start, debt)
    cold, air = seconds_to_cool(slow, start, outdoors)
    paid = seconds_to_pay(debt, cold, air, slow[0], outdoors)
    assert cold == pytest.approx(theirs[0], rel=1e-5)
    assert paid == pytest.approx(theirs[1], rel=1e-5)


def shown(night: tuple[float, ...], wet: Wet, loss: float, start: float) -> Freezes:
    """Work a hollow out by the integration, its loss [W/(m2 K)] given from outside."""
    water_s = 999.84 * 4190.0 * wet.radius_m / (2.0 * loss)
    biot = loss * wet.radius_m / 2.22
    times = [
        stepped(night, ROOM_S[wet.place], water_s, start, shells(wet.radius_m, biot, share))
        for share in (HARMLESS_ICE, 1.0)
    ]
    return Freezes(times[0][0], times[0][1], times[1][1])


def shells(radius: float, biot: float, share: float) -> float:
    """Add up the cold that each thin shell of ice costs, through the ice that is there."""

    def one(r: float) -> float:
        through = math.log(radius / r) / 2.22 + 1.0 / (biot * 2.22)
        return 917.0 * 333.5e3 * r * through

    return float(quad(one, radius * math.sqrt(1.0 - share), radius)[0])


@pytest.mark.parametrize("biot", [0.02, 0.3, 1.0, 20.0])
@pytest.mark.parametrize("share", [0.05, HARMLESS_ICE, 0.9, 1.0])
def test_ice_shell_by_shell(biot: float, share: float) -> None:
    """Guards the closed formula of a tube that freezes against its shells, summed."""
    assert freezing_debt(0.008, biot, share) == pytest.approx(shells(0.008, biot, share), rel=1e-7)


@pytest.mark.parametrize("place", ["indoors", "closed"])
@pytest.mark.parametrize("sleeve", [0.0, 0.013])
@pytest.mark.parametrize("night", NIGHTS)
def test_the_three_times_of_a_line(night: str, sleeve: float, place: Place) -> None:
    """Guards when a line, bare or in foam, is at freezing, gone and solid."""
    wet = Wet("line", 1e-4, place, 0.0123, sleeve_m=sleeve)
    inner = 0.0123 * 0.500 / (0.500 - 2.0 * 0.070)  # outside over bore of 3/8 in, the thickest wall
    outer = inner + 2.0 * sleeve
    resistance = 1.0 / (STILL_AIR * outer) + math.log(outer / inner) / (2.0 * CONDUCTIVITY_FOAM)
    theirs = shown(NIGHTS[night], wet, 1.0 / (resistance * 0.0123), 8.0)
    ours = freezes(wet, 8.0, Outdoors(NIGHTS[night]))
    for name in ("cold_s", "gone_s", "solid_s"):
        assert getattr(ours, name) == pytest.approx(getattr(theirs, name), rel=1e-4), name


@pytest.mark.parametrize("stefan", [1e-3, 0.06147, 0.3, 1.0, 4.0])
def test_the_root_by_another_function(stefan: float) -> None:
    """Guards Neumann's root: 2 x^2 M(1, 3/2, x^2) = Ste, by Kummer's function."""
    root = brentq(lambda x: 2.0 * x**2 * hyp1f1(1.0, 1.5, x**2) - stefan, 1e-9, 3.0, xtol=1e-14)
    assert neumann_lambda(stefan) == pytest.approx(root, rel=1e-9)


def test_the_front_keeps_the_books() -> None:
    """Guards Neumann's front: what its ice gives off leaves through the wall."""
    # Heat through the wall, integrated, against latent heat and the warmth the ice has lost.
    root = neumann_lambda(2050.0 * 10.0 / 333.5e3)
    spread = 2.22 / (917.0 * 2050.0)
    time = 3600.0
    depth = 2.0 * root * math.sqrt(spread * time)
    through = 2.0 * 2.22 * 10.0 * math.sqrt(time / (math.pi * spread)) / math.erf(root)
    x = np.linspace(0.0, depth, 4001)
    profile = np.array([math.erf(v / (2.0 * math.sqrt(spread * time))) for v in x])
    missing = 10.0 * (1.0 - profile / math.erf(root))
    held = 917.0 * (333.5e3 * depth + 2050.0 * float(np.trapezoid(missing, x)))
    assert through == pytest.approx(held, rel=1e-6)
