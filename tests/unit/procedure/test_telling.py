import math

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.stats import norm

from tests.unit.procedure.demo_coach import planned
from wintertight.procedure.telling import MOST, SHORTEST_S, told


@pytest.mark.parametrize(("chance", "apart"), [(0.02, 0.5), (0.02, 3.0), (0.3, 1.5), (0.5, 6.0)])
def test_what_a_value_tells_is_its_mutual_information(chance: float, apart: float) -> None:
    """Guards the sum on a grid against an adaptive integral of the textbook's formula."""

    def tells(x: float) -> float:
        usual, moved = norm.pdf(x), norm.pdf(x, loc=apart)
        both = (1.0 - chance) * usual + chance * moved
        return float(
            (1.0 - chance) * usual * math.log(usual / both)
            + chance * moved * math.log(moved / both)
        )

    exact, _ = quad(tells, -12.0, apart + 12.0, limit=200)
    assert told(chance, apart) == pytest.approx(exact, abs=1e-7)


def test_nothing_tells_more_than_there_is_to_know() -> None:
    """Guards the bounds: nothing at no distance, the entropy of the mistake far away."""
    apart = np.linspace(0.0, 30.0, 31)
    tells = [told(0.1, float(x)) for x in apart]
    entropy = -0.1 * math.log(0.1) - 0.9 * math.log(0.9)
    assert tells[0] == 0.0
    assert np.all(np.diff(tells) >= -1e-12)
    assert tells[-1] == pytest.approx(entropy, rel=1e-6)


def test_the_telling_outlets_can_be_timed() -> None:
    """Guards the few outlets worth a stopwatch: taps, each seconds away from its colour."""
    plan = planned()
    telling = [s for s in plan.steps if s.telling]
    assert 2 <= len(telling) <= MOST
    for step in telling:
        assert step.run is not None
        assert plan.best.network.controls[step.run.outlet].thing == "tap"
        assert (step.run.first_colour_s or 0.0) >= SHORTEST_S


def test_where_hot_and_cold_may_cross_the_second_side_is_timed() -> None:
    """Guards the outlets by which a crossing shows: their colour then comes at once."""
    telling = {s.step.outlet for s in planned().steps if s.telling}
    assert {"outside-shower.hot", "shower.hot"} <= telling
