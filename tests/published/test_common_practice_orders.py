"""Nearest first, against what the trade says of it: common practice, no source."""

import pytest

from tests.unit.procedure.demo_coach import GALLON_M3, celsius
from tests.unit.procedure.ready_coach import ready
from wintertight.procedure.orders import compare_orders


@pytest.mark.parametrize("name", ["small-trailer", "middle-travel-trailer", "on-demand-van"])
def test_no_order_found_saves_a_quart_over_nearest_first(name: str) -> None:
    """Guards the trade's nearest first (common practice) on coaches that all clear well."""
    # It is not the best: on the no-bypass trailer and the large motorhome, with much more to fill,
    # farthest first takes less, and better orders save a third of a jug and more.
    found = compare_orders(ready(name), most_runs=60)
    assert found.nearest.short == ()
    assert found.saving_m3 < 0.25 * GALLON_M3


def test_nearest_first_is_not_the_best_there_is() -> None:
    """Guards that the search can speak against common practice: here farthest first takes less."""
    found = compare_orders(ready("large-motorhome", celsius(0.0)), most_runs=0)
    assert found.farthest.volume_m3 < found.nearest.volume_m3
    assert found.better > 0
