import pytest

from tests.unit.procedure.demo_coach import TEXT, card
from wintertight.coach.kinds import KINDS
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.proof.relief import is_relieved

COACH = card(TEXT)
NETWORK = build_network(COACH)


def set_to(control: str, setting: str) -> Action:
    """Give the action that sets a control."""
    return Action("set", control, setting)


@pytest.mark.parametrize(
    ("part", "actions", "relieved"),
    [
        ("kitchen", [], False),
        ("kitchen", [set_to("kitchen.hot", "open")], False),
        ("kitchen", [set_to("kitchen.hot", "open"), set_to("kitchen.cold", "open")], True),
        ("strainer", [], False),
        ("strainer", [set_to("strainer/bowl", "loose")], True),
        ("filter", [set_to("filter/bowl", "off")], True),
        ("filter", [set_to("filter/bowl", "off"), set_to("filter/bowl", "tight")], False),
        ("tank-valve", [], True),
        ("tank-valve", [set_to("tank-valve", "half")], True),
        ("tank-valve", [set_to("tank-valve", "across")], False),
        ("pump", [], False),
        ("pump", [set_to("lavatory.hot", "open")], True),
        ("pump", [set_to("lavatory.hot", "open"), set_to("pump/switch", "on")], False),
        ("pump", [set_to("low-hot", "open")], False),
        ("toilet", [], False),
        ("toilet", [Action("relieve", "toilet")], True),
        ("toilet", [Action("relieve", "toilet"), set_to("pump/switch", "on")], False),
        ("heater", [], False),
        ("heater", [set_to("heater/plug", "out")], True),
        ("heater", [set_to("heater/relief", "open")], True),
        ("city-inlet", [], False),
    ],
)
def test_a_pocket_is_relieved_by_its_own_action(
    part: str,
    actions: list[Action],
    relieved: bool,  # noqa: FBT001 - a column
) -> None:
    """Guards each relieving action, and that setting it back undoes it."""
    state = replay(NETWORK, arriving_state(NETWORK), actions).end
    assert is_relieved(COACH.fitting[part], NETWORK, state) is relieved


def test_every_relief_has_a_rule() -> None:
    """Guards that no kind names a relieving action that no rule knows."""
    named = {kind.relief for kind in KINDS.values() if kind.relief}
    known = {"leave tap open", "loosen strainer bowl", "loosen filter bowl", "half-turn valve"}
    known |= {"leave spray open", "open heater"}
    assert named == known | {"unload pump", "hold toilet pedal"}
