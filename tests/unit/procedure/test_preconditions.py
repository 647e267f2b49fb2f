"""What is looked at on the lot before a coach gets its slot."""

import math
from dataclasses import replace

import pytest

from tests.methods.every_plan import CARDS
from wintertight.coach.place import usual_place
from wintertight.errors import ChoiceError
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.preconditions import (
    CHECK_S,
    COOLED_THROUGH_S,
    COOLS_S,
    KEYS,
    MEND_S,
    AsArrived,
    Precondition,
    preconditions,
    slot_waits_s,
    thaw_is_due,
)

CARD = CARDS["full-fifth-wheel"]
READY = AsArrived(
    keys=True,
    slides="out",
    battery_charged=True,
    waste_share=0.0,
    heat_off_s=math.inf,
    fresh_share=0.0,
    appliances_empty=True,
    coldest_degC=5.0,
    frozen=False,
)


def found(arrived: AsArrived, method: str = "pump", place: str = "bay") -> list[Precondition]:
    """Give what is not right yet of the fifth wheel."""
    return list(preconditions(CARD, method, arrived, usual_place(place)))  # type: ignore[arg-type]


@pytest.mark.parametrize("method", METHODS)
def test_a_coach_that_is_ready_waits_for_nothing(method: str) -> None:
    """Guards that what was found right is not told."""
    assert found(READY, method) == []
    assert slot_waits_s(found(READY, method)) == 0.0


@pytest.mark.parametrize(
    ("wrong", "key", "weight"),
    [
        ({"keys": False}, "keys", "blocks"),
        ({"slides": "in"}, "slides", "blocks"),
        ({"battery_charged": False}, "battery", "advises"),
        ({"waste_share": 0.8}, "waste tanks", "blocks"),
        ({"heat_off_s": 600.0}, "heater hot", "blocks"),
        ({"fresh_share": 0.5}, "fresh tank", "blocks"),
        ({"appliances_empty": False}, "appliance", "blocks"),
        ({"frozen": True}, "already frozen", "blocks"),
        ({"keys": None}, "keys", "blocks"),
        ({"frozen": None, "coldest_degC": -3.0}, "already frozen", "blocks"),
        ({"frozen": None, "coldest_degC": None}, "already frozen", "advises"),
    ],
)
def test_what_is_wrong_or_unknown_is_told(wrong: dict[str, object], key: str, weight: str) -> None:
    """Guards each thing by itself: found wrong, or not looked at, it is told with its weight."""
    told = found(replace(READY, **wrong))  # type: ignore[arg-type]
    assert {p.key for p in told} == {key}
    assert weight in {p.weight for p in told}
    unknown = None in wrong.values()
    assert {p.found for p in told} == {"to check" if unknown else "wrong"}
    assert all(p.hands_s == (CHECK_S if unknown else MEND_S)[key] for p in told)


def test_the_pump_hangs_on_the_battery_where_there_is_no_power() -> None:
    """Guards the flat battery: it blocks the pump in a yard, and only there."""
    flat = replace(READY, battery_charged=False)
    weight = {
        (place, method): {p.weight for p in found(flat, method, place) if p.key == "battery"}
        for place in ("bay", "yard")
        for method in ("pump", "hand-pump")
    }
    assert weight["yard", "pump"] == {"blocks"}
    assert weight["bay", "pump"] == weight["yard", "hand-pump"] == {"advises"}


def test_a_flat_battery_in_deep_cold_is_looked_at_first() -> None:
    """Guards common practice: a discharged flooded battery freezes near +20 degF."""
    for degC, frozen in ((-6.0, False), (-7.0, True)):
        cold = replace(READY, battery_charged=False, coldest_degC=degC)
        assert any(p.key == "battery frozen" for p in found(cold)) is frozen
    sealed = replace(READY, battery_charged=False, coldest_degC=-20.0, battery_flooded=False)
    assert all(p.key != "battery frozen" for p in found(sealed))


def test_a_hot_heater_waits_less_where_water_runs_through_it() -> None:
    """Guards the wait for a heater: hours by itself, a quarter of an hour with town water."""
    hot = replace(READY, heat_off_s=0.0)
    waits = {place: slot_waits_s(found(hot, place=place)) for place in ("bay", "yard")}
    assert waits["bay"] == pytest.approx(COOLED_THROUGH_S + MEND_S["heater hot"])
    assert waits["yard"] == pytest.approx(COOLS_S + MEND_S["heater hot"])
    half = replace(READY, heat_off_s=COOLS_S - 60.0)
    assert slot_waits_s(found(half, place="yard")) == pytest.approx(60.0 + MEND_S["heater hot"])


def test_a_frozen_coach_is_thawed_first() -> None:
    """Guards that ice that was seen makes the thaw due, and that the thaw asks no more."""
    frozen = replace(READY, frozen=True)
    assert thaw_is_due(found(frozen))
    assert not thaw_is_due(found(replace(READY, frozen=None, coldest_degC=-5.0)))
    assert all(p.key != "already frozen" for p in found(frozen, "thaw"))


def test_every_key_is_met_somewhere() -> None:
    """Guards the tables: each key is brought up by a coach at which nobody has looked in frost."""
    cold = AsArrived(coldest_degC=-20.0)
    assert {p.key for p in found(cold)} == set(KEYS) == set(CHECK_S) == set(MEND_S)


def test_no_such_method() -> None:
    """Guards the words for a method that is none."""
    with pytest.raises(ChoiceError, match="no method is called 'prayer'"):
        preconditions(CARD, "prayer")
