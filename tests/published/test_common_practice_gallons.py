"""Gallons against what the trade says: common practice, no source."""

import pytest

from tests.unit.procedure.demo_coach import GALLON_M3, SMALL, planned


def test_the_demo_takes_gallons_a_technician_would_believe() -> None:
    """Guards the gallons of a middle trailer, bypassed: the trade says 2 to 3 (common practice)."""
    # Between 1 and 4 is believed; what lies outside 2 to 3 must be explained on docs/gallons.md.
    band = planned().antifreeze
    assert 1.0 < band.p50 / GALLON_M3 < 4.0


@pytest.mark.parametrize(("degF", "product"), [(-10.0, "blue"), (0.0, "pink"), (20.0, "pink")])
def test_a_usual_job_lands_where_the_trade_says(degF: float, product: str) -> None:
    """Guards that with a strong product, or a mild winter, gallons are the trade's 2 to 3."""
    gallons = planned(degF, product).antifreeze.p50 / GALLON_M3
    assert 2.0 <= gallons <= 3.0


def test_a_smaller_coach_takes_less() -> None:
    """Guards that a coach with a galley only takes well under the gallons of a whole one."""
    assert planned(text=SMALL).antifreeze.p50 < 0.7 * planned().antifreeze.p50
