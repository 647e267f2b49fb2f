"""Lines laid by hand for blowing out: an inlet, a trunk, and what hangs on it."""

import math
from collections.abc import Mapping
from types import MappingProxyType

from tests.unit.flow.laid_coach import laid, outlet, pipe
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import SweepResult, sweep
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.losses import emitter_resistance
from wintertight.flow.state import State, arriving_state
from wintertight.units import INCH_M

KITCHEN = emitter_resistance("kitchen tap")
ICE_MAKER = emitter_resistance("ice maker")
QUARTER_INCH_M = 0.170 * INCH_M
HALF_INCH_M = 0.485 * INCH_M
THREE_QUARTER_INCH_M = 0.681 * INCH_M


def tube(name: str, start: str, end: str, length_m: float, bore_m: float, **more: object) -> Link:
    """Lay a line of any bore, with the volume that goes with it."""
    volume = math.pi / 4.0 * bore_m**2 * length_m
    return pipe(name, start, end, length_m, bore_m=bore_m, volume_m3=volume, **more)


def trunk_and_taps(
    *more: Link,
    trunk_bore_m: float = HALF_INCH_M,
    riser_m: float = 2.0,
    heights_m: Mapping[str, float] = MappingProxyType({}),
) -> CoachNetwork:
    """Lay inlet - trunk - tee, and from the tee a tap 1 m up and an ice maker on a small tube."""
    return laid(
        [
            tube("trunk", "in", "tee", 4.0, trunk_bore_m),
            tube("riser", "tee", "tap", riser_m, HALF_INCH_M),
            outlet("kitchen", "tap", resistance=KITCHEN),
            tube("ice-tube", "tee", "ice", 3.0, QUARTER_INCH_M),
            outlet("ice-maker", "ice", resistance=ICE_MAKER),
            *more,
        ],
        sources={"hose": ("in", 0.0)},
        heights_m={"tap": 1.0, "ice": 0.8, **heights_m},
    )


def blown(
    coach: CoachNetwork,
    outlet_name: str,
    supply: AirSupply | None = None,
    *opened: str,
    state: State | None = None,
) -> SweepResult:
    """Blow one outlet of a full coach out, with some controls open."""
    now = state or arriving_state(coach)
    for control in opened:
        now = now.with_setting(control, "open")
    return sweep(coach, now, "hose", outlet_name, supply or AirSupply())
