import math

import pytest

from tests.conftest import Published
from tests.unit.flow.laid_coach import laid, pipe
from wintertight.flow.draining import drain_by_gravity
from wintertight.flow.falling import HANGING_BORE_M, UNVENTED_BORE_M
from wintertight.flow.state import arriving_state

SURFACE_TENSION_N_M = 0.0742
"""Of water at 10 degC."""


def test_the_bore_in_which_no_bubble_rises(published: Published) -> None:
    """Guards the bore under which water hangs in a tube for good."""
    bond = 999.7 * 9.80665 * (HANGING_BORE_M / 2.0) ** 2 / SURFACE_TENSION_N_M
    what = "rho g r2 / sigma of water at 10 degC in the widest tube that never drains [1]"
    why = "the bore is a whole millimetre: half of one is a fifth of the number"
    published("bretherton", what, "0.842", bond, tolerance=0.17, why=why, place="abstract")
    widest_m = 2.0 * math.sqrt(0.842 * SURFACE_TENSION_N_M / (999.7 * 9.80665))
    assert widest_m == pytest.approx(HANGING_BORE_M, abs=5e-5)


def test_the_mouth_from_which_water_falls_out(published: Published) -> None:
    """Guards the mouth from which a tube open below only is taken to drain: the safe end."""
    what = "widest mouth of a tube that is open below only and holds its water [mm]"
    published("extrand", what, "15", UNVENTED_BORE_M * 1e3, place="abstract: 10-15 mm for water")


@pytest.mark.parametrize(
    ("bore_m", "capped", "vented"),
    [
        (0.0043, "trapped", "trapped"),  # quarter-inch tube of an ice maker
        (0.0089, "uncertain", "drained"),  # 3/8 in
        (0.0121, "uncertain", "drained"),  # 1/2 in
        (0.0170, "uncertain", "drained"),  # 3/4 in: its fittings are narrower than 15 mm
        (0.0219, "drained", "drained"),  # 1 in
    ],
)
def test_a_riser_that_is_open_below_only(bore_m: float, capped: str, vented: str) -> None:
    """Guards the published limits where they count: a riser over a tee that has run empty."""
    coach = laid(
        [
            pipe("drop", "tap", "tee"),
            pipe("stub", "tee", "foot"),
            pipe("riser", "top", "tee", bore_m=bore_m),
        ],
        heights_m={"tap": 1.0, "tee": 0.3, "top": 1.0},
        openings=[("foot", "low point"), ("tap", "tap"), ("top", "cap")],
    )
    state = arriving_state(coach).with_settings({"low point": "open", "tap": "open"})
    assert drain_by_gravity(coach, state).drainage["riser"] == capped
    uncapped = state.with_setting("cap", "open")
    assert drain_by_gravity(coach, uncapped).drainage["riser"] == vented


@pytest.mark.parametrize("bore_m", [0.0089, 0.0121, 0.0170, 0.0219])
def test_nobody_knows_how_wide_a_mouth_is(bore_m: float) -> None:
    """Guards a tube whose only way to the air is a low point: its valve may be any width."""
    coach = laid(
        [pipe("riser", "top", "foot", bore_m=bore_m)],
        heights_m={"top": 1.0},
        openings=[("foot", "low point")],
    )
    state = arriving_state(coach).with_setting("low point", "open")
    assert drain_by_gravity(coach, state).drainage == {"riser": "uncertain"}
