import math

import pytest

from tests.unit.flow.air.laid_air import blown, trunk_and_taps
from wintertight.errors import ChoiceError, InputError
from wintertight.flow.air.receiver import REGAIN_S, AirCurve, burst, curve_of, work_of
from wintertight.flow.air.supply import HARD_STOP_PA, AirSupply
from wintertight.flow.air.sweep import sweep
from wintertight.flow.state import arriving_state
from wintertight.units import GALLON_M3, PSI_PA

FLAT = AirCurve((40.0 * PSI_PA, 20.0 * PSI_PA), (4e-3, 4e-3), 20.0 * PSI_PA)


@pytest.mark.parametrize(
    "wrong",
    [
        {"regulator_Pa": 50.1 * PSI_PA},
        {"regulator_Pa": 0.0},
        {"regulator_Pa": math.nan},
        {"receiver_m3": -1.0},
        {"delivery_m3_s": math.nan},
        {"cut_out_Pa": 30.0 * PSI_PA},
    ],
)
def test_what_no_coach_should_get_is_refused(wrong: dict[str, float]) -> None:
    """Guards the hard stop at 50 psi and sizes that are none."""
    with pytest.raises(InputError):
        AirSupply(**wrong)


def test_fifty_psi_is_allowed() -> None:
    """Guards that the hard stop itself is not refused for a rounding."""
    assert AirSupply(regulator_Pa=50.0 * PSI_PA).regulator_Pa == pytest.approx(HARD_STOP_PA)


def test_names_that_do_not_exist_are_refused() -> None:
    """Guards unknown inlets and outlets."""
    coach = trunk_and_taps()
    state = arriving_state(coach)
    with pytest.raises(ChoiceError, match="no outlet"):
        sweep(coach, state, "hose", "tub", AirSupply())
    with pytest.raises(ChoiceError, match="no inlet"):
        sweep(coach, state, "main", "kitchen", AirSupply())


def test_a_curve_ends_where_sweeping_does() -> None:
    """Guards by hand the pressure at which a margin that falls with it passes 1."""
    curve = curve_of(lambda p: (1e-3 * p, 2.0 * p / 100.0), 100.0)
    assert curve.lowest_Pa == pytest.approx(50.0)
    assert curve.gauge_Pa == pytest.approx((100.0, 85.0, 70.0, 55.0, 40.0))
    assert curve_of(lambda p: (p, 1.0 if p == 9.0 else 0.0), 9.0).lowest_Pa == 9.0


def test_a_burst_by_hand() -> None:
    """Guards a burst from a tank without a compressor: mass over flow."""
    supply = AirSupply(0.02, 0.0, cut_out_Pa=100.0 * PSI_PA, temperature_degC=15.0)
    per_psi = 0.02 * PSI_PA / (287.053 * 288.15)
    found = burst(supply, FLAT)
    assert found.holds_s == pytest.approx(60.0 * per_psi / 4e-3, rel=1e-5)
    assert found.lasts_s == pytest.approx(80.0 * per_psi / 4e-3, rel=1e-5)
    assert found.recovery_s == math.inf


def test_a_compressor_that_keeps_up_blows_for_ever() -> None:
    """Guards an outlet that takes no more than is delivered."""
    found = burst(AirSupply(delivery_m3_s=4e-3), FLAT)
    assert (found.holds_s, found.lasts_s, found.recovery_s) == (math.inf, math.inf, 0.0)


def test_bursts_by_hand() -> None:
    """Guards the count of bursts: each but the first loses what it takes to win back."""
    supply = AirSupply(6.0 * GALLON_M3)
    one = burst(supply, FLAT)
    lasts, waits = one.lasts_s, one.recovery_s
    assert work_of(supply, FLAT, 0.0, 0.0, 0.5 * lasts).bursts == 1
    two = work_of(supply, FLAT, 0.0, 0.0, 1.5 * lasts)
    assert two.bursts == 2
    assert two.seconds == pytest.approx(lasts + waits + 0.5 * lasts + REGAIN_S)
    assert work_of(supply, FLAT, 0.0, 0.0, 2.0 * lasts - 2.0 * REGAIN_S).bursts == 2
    assert work_of(supply, FLAT, 0.0, 0.0, 2.0 * lasts - 0.5 * REGAIN_S).bursts == 3


def test_pushing_water_uses_the_tank_too() -> None:
    """Guards that a slow push with no compressor leaves less for the blow."""
    supply = AirSupply(6.0 * GALLON_M3, 0.0)
    blow = 0.9 * burst(supply, FLAT).lasts_s
    assert work_of(supply, FLAT, 0.0, 0.0, blow).bursts == 1
    assert work_of(supply, FLAT, 60.0, 1e-3, blow).bursts == 0  # it never comes back


def test_bursts_too_short_leave_a_doubt() -> None:
    """Guards that a tank too small to win back what runs back sweeps nothing for certain."""
    found = blown(trunk_and_taps(), "kitchen", AirSupply(0.1e-3, 0.2e-3))
    assert found.work.bursts == 0
    assert found.links["riser"].claim == "doubtful"
    assert found.links["riser"].reason == "bursts too short"
