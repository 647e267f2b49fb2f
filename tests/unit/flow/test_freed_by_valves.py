"""A valve between a line and the low point is one of the things that can be opened."""

import pytest

from tests.unit.flow.laid_coach import laid, pipe, valve
from wintertight.flow.freed import freed_by
from wintertight.flow.state import arriving_state

LITRE = 1e-3


@pytest.mark.parametrize(
    ("thing", "freed"), [("handle", 0.2), ("named handle", 0.2), ("switch", 0.0)]
)
def test_a_valve_frees_the_line_that_stands_on_it(thing: str, freed: float) -> None:
    """Guards a tap open at 2 m, its line of 0.2 L down to a shut valve, and a low point open."""
    coach = laid(
        [
            pipe("above", "tap", "over", 2.0),
            valve("valve", "over", "under"),
            pipe("below", "under", "low", 1.0),
        ],
        heights_m={"tap": 3.0, "over": 1.0, "under": 1.0, "low": 0.0},
        openings=[("tap", "tap"), ("low", "low point")],
        things={"valve": thing},
    )
    state = arriving_state(coach).with_settings({"tap": "open", "low point": "open"})
    found = {f.control: f for f in freed_by(coach, state)}
    # The line below hangs until air comes in at the tap through the valve: both come out.
    hanging = 0.1 if freed else 0.0
    assert set(found) == ({"valve"} if freed else set())
    if freed:
        assert found["valve"].setting == "open"
        assert set(found["valve"].links) == {"above", "below"}
        assert found["valve"].volume_m3 == pytest.approx((freed + hanging) * LITRE)
