from tests.unit.procedure.demo_coach import SMALL, card, planned
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.replay import replay
from wintertight.flow.state import State, arriving_state
from wintertight.procedure.walking import distances_m3, walking_order

NETWORK = build_network(card(SMALL))


def stands(**settings: str) -> State:
    """Give the small coach ready to fill, some handles set otherwise."""
    usual = {
        "jug-hose": "in the jug",
        "jug-valve": "along",
        "tank-valve": "across",
        "bypass-valve": "along",
        "heater-cold-valve": "across",
        "heater-hot-valve": "across",
        "pump/switch": "on",
    }
    named = {name.replace("_", "-"): setting for name, setting in settings.items()}
    actions = [Action("set", *s) for s in {**usual, **named}.items()]
    return replay(NETWORK, arriving_state(NETWORK), actions).end


def order(state: State) -> tuple[str, ...]:
    """Give the walking order from the jug."""
    return walking_order(NETWORK, state, NETWORK.sources["jug-hose"].node)


def test_taps_come_first_and_stubs_last() -> None:
    """Guards that what only needs a few spoonfuls is run when all that feeds it is strong."""
    found = order(stands())
    assert found == ("kitchen.cold", "kitchen.hot", "low-cold", "city-inlet", "low-hot")


def test_what_lies_behind_a_shut_valve_is_not_walked_to() -> None:
    """Guards that no step runs an outlet which nothing can reach."""
    assert order(stands(bypass_valve="across")) == ("kitchen.cold", "low-cold", "city-inlet")
    assert order(stands(jug_valve="across")) == ()


def test_both_sides_of_a_fixture_are_done_together() -> None:
    """Guards that a technician goes to each fixture once."""
    fixtures = [s.step.outlet.partition(".")[0] for s in planned().steps if s.step.outlet]
    visits = [f for n, f in enumerate(fixtures) if n == 0 or fixtures[n - 1] != f]
    assert len(visits) == len(set(visits))


def test_the_farther_bath_comes_after_the_nearer_one() -> None:
    """Guards that the walk goes from the pump outwards, along the pipes."""
    fixtures = [s.step.outlet for s in planned().steps if s.step.outlet]
    assert fixtures.index("kitchen.cold") < fixtures.index("lavatory.cold")
    assert fixtures.index("lavatory.cold") < fixtures.index("shower.cold")


def test_distance_is_the_volume_of_pipe_on_the_way() -> None:
    """Guards the distance by adding up by hand the way to the city tee."""
    state = stands()
    far = distances_m3(NETWORK, state, NETWORK.sources["jug-hose"].node)
    suction = ("hose", "jug-valve", "suction-b", "suction-c", "strainer", "suction-d")
    way = (*suction, "pump", "pump-out", "filter", "filter-out")
    by_hand = sum(NETWORK.links[name].volume_m3 for name in way)
    assert abs(far["city-tee"] - by_hand) < 1e-12


def test_a_check_is_no_way_back() -> None:
    """Guards that nothing is reached backwards through the pump."""
    far = distances_m3(NETWORK, stands(), "kitchen.cold")
    assert "pump.in" not in far
    assert "city-tee" in far
