"""What has to be at hand follows the steps; which tool a step takes is common practice."""

import pytest

from tests.unit.documents.demo_plans import demo_plan, plan_of
from wintertight.procedure.tools import SPARES, TOOLS, Thing, spares_of, tools_of

pytestmark = pytest.mark.long


def keyed(things: tuple[Thing, ...]) -> dict[str, Thing]:
    """Give things by key, and guard that none comes twice."""
    found = {thing.key: thing for thing in things}
    assert len(found) == len(things)
    return found


def test_a_tool_says_what_it_is_for() -> None:
    """Guards that the wrench is named for the heater's plug, which is under pressure until then."""
    tools = keyed(tools_of(plan_of()))
    assert tools["plug wrench"].parts == ("heater",)
    assert list(tools) == [key for key in TOOLS if key in tools]


@pytest.mark.parametrize(
    ("card", "rod"), [("middle-travel-trailer", True), ("full-fifth-wheel", False)]
)
def test_an_anode_rod_is_brought_where_there_is_one(card: str, *, rod: bool) -> None:
    """Guards that a rod is brought for a steel tank with an anode, and not for an aluminum one."""
    spares = keyed(spares_of(demo_plan(card)))
    assert ("anode rod" in spares) is rod
    assert "thread tape" in spares
    assert list(spares) == [key for key in SPARES if key in spares]


def test_nothing_is_brought_for_what_stays_shut() -> None:
    """Guards that a van whose heater has no plug asks for neither tape nor rod."""
    assert not keyed(spares_of(demo_plan("on-demand-van"))).keys() & {"thread tape", "anode rod"}
