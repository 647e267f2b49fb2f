from dataclasses import replace

import pytest

from tests.unit.procedure.demo_coach import SMALL, card, without
from wintertight.flow.actions import Action
from wintertight.flow.build import build_network
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import replay
from wintertight.flow.state import ICE, State, arriving_state
from wintertight.fluids.contents import Contents
from wintertight.procedure.hazards import HAZARDS, hazard_of, product_refused

COACH = card(SMALL)
NETWORK = build_network(COACH)
COLD = {"heater/burner": "off", "heater/element": "off"}
LET_OFF = {"kitchen.hot": "open", "kitchen.cold": "open"}
SPIRIT = Contents(ethanol=0.27)

PLUG_OUT = Action("set", "heater/plug", "out")
BOWL_OFF = Action("set", "filter/bowl", "off")
BOWL_LOOSE = Action("set", "filter/bowl", "loose")
BURNER_ON = Action("set", "heater/burner", "on")
ELEMENT_ON = Action("set", "heater/element", "on")


def stands(settings: dict[str, str], network: CoachNetwork = NETWORK) -> State:
    """Give the coach as it arrives, some controls set otherwise."""
    return replay(
        network, arriving_state(network), [Action("set", *s) for s in settings.items()]
    ).end


def asked(settings: dict[str, str], action: Action) -> str | None:
    """Give the hazard of an action while controls stand so."""
    return hazard_of(COACH, NETWORK, stands(settings), action)


@pytest.mark.parametrize(
    ("action", "hazard"),
    [
        (Action("set", "pump/switch", "on"), "pressure on ice"),
        (Action("set", "city-inlet/hose", "on"), "pressure on ice"),
        (Action("set", "city-inlet/hose", "hand pump"), "pressure on ice"),
        (Action("set", "city-inlet/hose", "air line"), "pressure on ice"),
        (Action("run", "kitchen.hot"), "pressure on ice"),
        (Action("blow", "kitchen.hot"), "pressure on ice"),
        (BURNER_ON, "heat on ice"),
        (ELEMENT_ON, "heat on ice"),
        (Action("set", "kitchen.hot", "open"), None),
        (Action("drain"), None),
    ],
)
def test_ice_is_neither_pressed_nor_heated(action: Action, hazard: str | None) -> None:
    """Guards a coach in which ice may stand, and that thawing lifts it."""
    frozen = replace(stands(COLD), marks=frozenset({ICE}))
    assert hazard_of(COACH, NETWORK, frozen, action) == hazard
    thawed = replay(NETWORK, frozen, [Action("thaw")]).end
    assert hazard_of(COACH, NETWORK, thawed, action) not in {"pressure on ice", "heat on ice"}


@pytest.mark.parametrize(
    ("settings", "action", "hazard"),
    [
        ({**COLD, **LET_OFF}, PLUG_OUT, None),
        (COLD, PLUG_OUT, "plug under pressure"),
        ({**COLD, "heater/relief": "open"}, PLUG_OUT, None),
        ({**COLD, **LET_OFF, "pump/switch": "on"}, PLUG_OUT, "plug under pressure"),
        ({**COLD, **LET_OFF, "city-inlet/hose": "on"}, PLUG_OUT, "plug under pressure"),
        ({**COLD, **LET_OFF, "city-inlet/hose": "hand pump"}, PLUG_OUT, "plug under pressure"),
        ({**COLD, **LET_OFF, "city-inlet/hose": "air line"}, PLUG_OUT, "plug under pressure"),
        ({**COLD, "low-hot": "open"}, PLUG_OUT, None),
        (
            {**COLD, **LET_OFF, "heater-cold-valve": "across", "heater-hot-valve": "across"},
            PLUG_OUT,
            "plug under pressure",
        ),
        (LET_OFF, PLUG_OUT, "plug while hot"),
        ({**COLD, **LET_OFF, "heater/element": "on"}, PLUG_OUT, "plug while hot"),
        ({**COLD, "heater/plug": "out"}, BURNER_ON, "heat without water"),
        ({**COLD, "heater/plug": "out"}, ELEMENT_ON, "heat without water"),
        (COLD, ELEMENT_ON, None),
        (
            {**COLD, "heater-cold-valve": "across", "heater-hot-valve": "across"},
            ELEMENT_ON,
            "heat without water",
        ),
        ({**COLD, "heater-cold-valve": "across"}, ELEMENT_ON, "heat without water"),
        ({**COLD, "heater-hot-valve": "across"}, ELEMENT_ON, None),
        ({"heater/plug": "out"}, Action("drain"), "heater drained while heated"),
        ({**COLD, "heater/plug": "out"}, Action("drain"), None),
        ({}, Action("drain"), None),
        ({}, Action("feed", "jug-hose", contents=SPIRIT), "spirit by a flame"),
        (COLD, Action("feed", "jug-hose", contents=SPIRIT), None),
        ({}, Action("feed", "jug-hose", contents=Contents(glycol=0.35)), None),
        ({}, BOWL_OFF, "bowl under pressure"),
        ({}, BOWL_LOOSE, "bowl under pressure"),
        ({}, Action("set", "filter/bowl", "tight"), None),
        (LET_OFF, BOWL_OFF, None),
        ({**LET_OFF, "pump/switch": "on"}, BOWL_OFF, "bowl under pressure"),
        ({}, Action("set", "strainer/bowl", "loose"), None),
    ],
)
def test_each_order_is_refused_where_it_must_be(
    settings: dict[str, str], action: Action, hazard: str | None
) -> None:
    """Guards each refused order both ways: when it hurts, and when it does not."""
    assert asked(settings, action) == hazard


def test_every_hazard_is_tried() -> None:
    """Guards that no row of the table of hazards goes untested."""
    marks = test_each_order_is_refused_where_it_must_be.pytestmark  # type: ignore[attr-defined]
    tried = {row[2] for mark in marks for row in mark.args[1]}
    on_ice = {"pressure on ice", "heat on ice"}
    assert {hazard.key for hazard in HAZARDS} <= tried | on_ice


def test_heat_is_refused_on_a_heater_that_drained() -> None:
    """Guards that an empty heater with its plug back in is still empty."""
    dry = [
        *(Action("set", name, "off") for name in COLD),
        Action("set", "heater/relief", "open"),
        PLUG_OUT,
        Action("drain"),
        Action("set", "heater/plug", "in"),
    ]
    state = replay(NETWORK, arriving_state(NETWORK), dry).end
    assert hazard_of(COACH, NETWORK, state, ELEMENT_ON) == "heat without water"


def test_a_coach_without_a_heater_has_no_hazards_of_one() -> None:
    """Guards that the rules ask for nothing that is not there."""
    parts = ("heater", "heater-cold-valve", "heater-hot-valve", "heater-cold-a", "heater-cold-b")
    bare = card(without(*parts, "heater-hot-a", "heater-hot-b", text=SMALL))
    network = build_network(bare)
    state = stands({}, network)
    assert hazard_of(bare, network, state, Action("drain")) is None
    assert hazard_of(bare, network, state, BOWL_OFF) == "bowl under pressure"


@pytest.mark.parametrize(
    ("name", "refused"),
    [
        ("Ethylene glycol 50/50", True),
        ("ETHYLENE-GLYCOL", True),
        ("mono ethylene  glycol", True),
        ("propylene glycol", False),
        ("Propylene-Glycol, no ethylene glycol", False),
        ("Heron pink -50", False),
    ],
)
def test_poison_is_refused_by_its_name(name: str, refused: bool) -> None:  # noqa: FBT001 - a column
    """Guards that ethylene glycol is refused and propylene glycol is not."""
    assert product_refused(name) is refused
