"""What a place of work means for a method."""

from dataclasses import replace

import pytest

from tests.methods.every_plan import CARDS
from wintertight.coach.place import PLACE_KINDS, Place, usual_place
from wintertight.coach.quantity import Quantity
from wintertight.errors import ChoiceError
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.place import (
    COSTS_S,
    KEYS,
    is_possible,
    possible,
    takes_more_s,
    tilts,
)

CARD = CARDS["middle-travel-trailer"]
BAY, YARD = usual_place("bay"), usual_place("yard")


def keys(place: Place, method: str, *, charged: bool | None = None) -> dict[str, str]:
    """Give what is found, by key, with its effect."""
    return {h.key: h.effect for h in possible(place, CARD, method, battery_charged=charged)}


@pytest.mark.parametrize("method", METHODS)
def test_everything_is_possible_in_a_usual_bay(method: str) -> None:
    """Guards that a bay with everything hinders nothing."""
    assert is_possible(possible(BAY, CARD, method))


@pytest.mark.parametrize(
    ("place", "method", "charged", "hinders"),
    [
        (YARD, "air", None, {"no compressor", "no power for the compressor"}),
        (YARD, "pump", None, set()),
        (YARD, "pump", False, {"no 12 volts"}),
        (YARD, "hand-pump", False, set()),
        (YARD, "thaw", None, {"no warmth"}),
        (YARD, "drain", False, set()),
        (replace(YARD, power="generator"), "pump", False, set()),
        (replace(YARD, power="generator", compressor=True), "air", None, set()),
        (replace(BAY, compressor=False), "air-then-pump", None, {"no compressor"}),
        (replace(BAY, lets_water_out=False), "hold", None, {"water has nowhere to go"}),
        (usual_place("driveway"), "pump", False, set()),
    ],
)
def test_what_hinders(place: Place, method: str, charged: bool | None, hinders: set[str]) -> None:  # noqa: FBT001 - one row of a table
    """Guards power, air, water and warmth: what each method cannot do without."""
    found = keys(place, method, charged=charged)
    assert {k for k, effect in found.items() if effect == "hinders"} == hinders


@pytest.mark.parametrize(
    ("height_m", "door_m", "said"),
    [
        (3.0, 4.0, None),
        (3.95, 4.0, "costs"),
        (4.5, 4.0, "hinders"),
        (None, 4.0, "costs"),
        (3.0, None, "costs"),
    ],
)
def test_the_door(height_m: float | None, door_m: float | None, said: str | None) -> None:
    """Guards the door of a bay: too low hinders, unknown is measured first."""
    height = None if height_m is None else Quantity.known(height_m, "measured")
    card = CARD.model_copy(update={"coach": CARD.coach.model_copy(update={"height": height})})
    found = {h.key: h.effect for h in possible(replace(BAY, door_height_m=door_m), card, "pump")}
    door = {k: e for k, e in found.items() if k.startswith("door")}
    assert set(door.values()) == ({said} if said else set())


def test_what_costs_adds_up() -> None:
    """Guards the time of a place: every cost of the table once, nothing for what hinders."""
    found = possible(YARD, CARD, "drain")
    assert takes_more_s(found) == sum(COSTS_S[h.key] for h in found if h.effect == "costs")
    assert takes_more_s(found) > takes_more_s(possible(BAY, CARD, "drain"))


def test_every_key_is_met_somewhere() -> None:
    """Guards the table of hindrances: none is left that no place and method bring up."""
    places = [
        *(usual_place(kind) for kind in PLACE_KINDS),
        replace(BAY, door_height_m=1.0),
        replace(BAY, lets_water_out=False, power="generator", heated=False),
        replace(YARD, power="none"),
    ]
    tall = CARD.coach.model_copy(update={"height": Quantity.known(3.5, "measured")})
    cards = [CARD, CARD.model_copy(update={"coach": tall})]
    met = {
        h.key
        for place in places
        for card in cards
        for method in METHODS
        for charged in (None, True, False)
        for h in possible(place, card, method, battery_charged=charged)
    }
    assert met == set(KEYS)
    assert set(COSTS_S) <= set(KEYS)


@pytest.mark.parametrize(
    ("along", "across"), [(0.01, 0.0), (None, 0.0), (0.01, None), (None, None)]
)
def test_what_nobody_measured_is_tried_both_ways(along: float | None, across: float | None) -> None:
    """Guards slopes: measured ones stand alone, unknown ones go both ways round, level included."""
    found = tilts(replace(YARD, slope_along=along, slope_across=across))
    for given, way in ((along, {t.along for t in found}), (across, {t.across for t in found})):
        if given is not None:
            assert way == {given}
        else:
            assert {0.0, 0.05, -0.05} <= way
            assert all(-x in way for x in way)


def test_no_such_method() -> None:
    """Guards the words for a method that is none."""
    with pytest.raises(ChoiceError, match="no method is called 'prayer'"):
        possible(BAY, CARD, "prayer")
