from typing import Any

import pytest

from tests.architecture.markdown import blocks
from tests.architecture.tree import ROOT
from wintertight.errors import RecordError
from wintertight.procedure.instruments import check_reading, glycol_share, weakest_share
from wintertight.procedure.record import Event, Reading, read_record


@pytest.mark.parametrize(
    ("reading", "field"),
    [
        (Reading(kind="freezing point", value=15.0, unit="fahrenheit"), "unit"),
        (Reading(kind="freezing point", value=15.0, unit="K"), "unit"),
        (Reading(kind="freezing point", value=20.0), "value"),
        (Reading(kind="freezing point", value=-300.0), "value"),
        (Reading(kind="freezing point", value=True), "value"),
        (Reading(kind="glycol share", value=33.0), "value"),
        (Reading(kind="glycol share", value=-0.1), "value"),
        (Reading(kind="glycol share", value=0.3, unit="brix"), "unit"),
        (Reading(kind="looks pink", value=1.0), "value"),
    ],
)
def test_a_reading_that_cannot_be_is_refused(reading: Reading, field: str) -> None:
    """Guards that a missing or foreign unit is never guessed."""
    event = Event(id="a", seq=1, step="x", result="done", reading=reading)
    with pytest.raises(RecordError) as caught:
        check_reading(event)
    assert caught.value.place.field == f"events[a].reading.{field}"


@pytest.mark.parametrize("unit", ["degF", "F", "°F", " degf"])
def test_fahrenheit_and_celsius_are_the_same_reading(unit: str) -> None:
    """Guards the units of a freezing point."""
    warm = Reading(kind="freezing point", value=-6.0, unit=unit)
    same = Reading(kind="freezing point", value=(-6.0 - 32.0) / 1.8, unit="degC")
    assert glycol_share(warm) == pytest.approx(glycol_share(same))


def test_colder_than_the_table_counts_as_its_end() -> None:
    """Guards that a very cold reading is no fault."""
    coldest = glycol_share(Reading(kind="freezing point", value=-100.0))
    assert coldest == glycol_share(Reading(kind="freezing point", value=-51.0))


@pytest.mark.parametrize(
    ("fields", "field", "says"),
    [
        ({"kind": "glycol share", "value": 0.3, "instrument": "gauge"}, "instrument", "hydrometer"),
        ({"kind": "pressure", "value": 40.0, "instrument": "eye"}, "instrument", "expected gauge"),
        ({"kind": "freeze sample", "value": -18.0, "unit": "degC"}, "looked", "slush or solid"),
        ({"kind": "freeze sample", "looked": "solid"}, "value", "temperature of the freezer"),
        ({"kind": "freeze sample", "looked": "slush", "value": -18.0}, "unit", "degC or degF"),
        (
            {"kind": "freeze sample", "looked": "solid", "value": 5.0, "unit": "degC"},
            "value",
            "is its unit degF?",
        ),
        (
            {"kind": "temperature", "value": -18.0, "unit": "degC", "looked": "solid"},
            "looked",
            "only a",
        ),
        ({"kind": "pressure", "value": 45.0}, "unit", "psi, kPa, bar or Pa"),
        ({"kind": "pressure", "value": 45.0, "unit": "furlong"}, "unit", "psi"),
        ({"kind": "pressure", "value": 45.0, "unit": "bar"}, "value", "300 psi"),
        ({"kind": "pressure", "value": -30.0, "unit": "psi"}, "value", "vacuum"),
        ({"kind": "temperature", "value": 20.0}, "unit", "degC or degF"),
        ({"kind": "temperature", "value": 200.0, "unit": "degC"}, "value", "is its unit degF?"),
    ],
)
def test_what_does_not_go_together_is_refused(
    fields: dict[str, Any], field: str, says: str
) -> None:
    """Guards that each fault names its field and what was expected."""
    reading = Reading.model_validate(fields)
    with pytest.raises(RecordError, match=says) as caught:
        check_reading(Event(id="a", seq=1, step="x", result="done", reading=reading))
    assert caught.value.place.field == f"events[a].reading.{field}"
    assert "\n" not in str(caught.value)


def test_a_form_left_empty_is_no_fault() -> None:
    """Guards that a reading nobody took yet passes."""
    empty = Reading(kind="pressure", value=None)
    check_reading(Event(id="a", seq=1, step="x", result="done", reading=empty))


@pytest.mark.parametrize(
    ("instrument", "zeroed", "off"),
    [
        ("refractometer", True, 0.01),
        ("refractometer", None, (0.01**2 + 0.01**2) ** 0.5),
        ("refractometer", False, (0.01**2 + 0.03**2) ** 0.5),
        ("hydrometer", None, 0.03),
        ("test strip", None, 0.05),
    ],
)
def test_each_instrument_has_its_usual_uncertainty(
    instrument: str,
    zeroed: bool | None,  # noqa: FBT001 - a column
    off: float,
) -> None:
    """Guards the usual standard deviations against those of common practice."""
    fields = {"kind": "glycol share", "value": 35.0, "unit": "%"}
    reading = Reading.model_validate({**fields, "instrument": instrument, "zeroed": zeroed})
    assert weakest_share(reading) == pytest.approx(0.35 - 2.0 * off)


def test_an_error_of_zero_comes_on_top_of_the_given_uncertainty() -> None:
    """Guards that a given standard deviation does not excuse a refractometer nobody zeroed."""
    given = {"kind": "glycol share", "value": 0.35, "sd": 0.004, "instrument": "refractometer"}
    dry = Reading.model_validate({**given, "zeroed": False})
    assert weakest_share(dry) == pytest.approx(0.35 - 2.0 * (0.004**2 + 0.03**2) ** 0.5)


@pytest.mark.parametrize(
    ("degF", "printed"), [(26.1, 0.096), (19.2, 0.194), (9.2, 0.294), (-6.0, 0.396), (-42.8, 0.55)]
)
def test_a_freezing_point_is_the_share_of_the_printed_table(degF: float, printed: float) -> None:
    """Guards readings in degF against rows of the handbook's table, typed from it."""
    reading = Reading(kind="freezing point", value=degF, unit="degF")
    # Half of the last digit of the share, and of the temperature where the table is steepest.
    assert glycol_share(reading) == pytest.approx(printed, abs=0.0005 + 0.0001)


def test_the_manual_shows_readings_that_are_taken() -> None:
    """Guards the records shown in the manual: each can be read, and its readings can be."""
    page = (ROOT / "docs" / "manual.md").read_text(encoding="utf-8")
    records = [b.text for b in blocks(page) if "wintertight/record/1" in b.text]
    events = [event for text in records for event in read_record(text).events]
    for event in events:
        check_reading(event)
    kinds = {event.reading.kind for event in events if event.reading}
    assert kinds >= {"glycol share", "freeze sample"}
