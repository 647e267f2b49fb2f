import json
from datetime import date
from typing import Any

import pytest

from tests.unit.procedure.demo_coach import DEMO, TEXT, card, swapped
from wintertight.coach.load import load_card
from wintertight.errors import ChoiceError, RecordError
from wintertight.procedure.record import Record, read_record
from wintertight.procedure.wear import Wear, prior_rate, wear_of

LOOK = {"id": "a", "seq": 1, "step": "plug-out:heater", "result": "done"}


def record(day: str | None, *events: dict[str, Any]) -> Record:
    """Give a record of one day."""
    started = {} if day is None else {"started": f"{day}T09:00:00"}
    content = {"schema": "wintertight/record/1", **started, "events": list(events)}
    return read_record(json.dumps(content))


def eaten(value: float, unit: str = "%", **more: Any) -> dict[str, Any]:
    """Give a look at the rod."""
    return {**LOOK, "reading": {"kind": "share eaten", "value": value, "unit": unit}, **more}


def worn(*records: Record, on: date | None = None, text: str = TEXT) -> Wear:
    """Work out the demo's coach."""
    return wear_of(card(text), [(f"{n}.json", r) for n, r in enumerate(records)], on)


def test_nothing_recorded_is_nothing_known() -> None:
    """Guards that no rod is guessed at."""
    (anode,) = worn(record("2025-10-04", LOOK)).anodes
    assert (anode.replace, anode.share_now, anode.seasons_left) == ("unknown", None, None)


@pytest.mark.parametrize(
    ("looks", "replace"),
    [
        ([("2025-10-04", 60)], "now"),
        ([("2025-10-04", 45)], "now"),
        ([("2024-10-04", 0), ("2025-10-04", 15)], "next autumn"),
        ([("2022-10-04", 0), ("2024-10-04", 10), ("2025-10-04", 12)], "not yet"),
        ([("2024-10-04", 70), ("2025-10-04", 10)], "unknown"),
    ],
)
def test_when_to_replace(looks: list[tuple[str, float]], replace: str) -> None:
    """Guards the four answers, the last where a rod seems to have grown."""
    (anode,) = worn(*(record(day, eaten(share)) for day, share in looks)).anodes
    assert anode.replace == replace


def test_a_reading_at_half_is_enough() -> None:
    """Guards that no prior talks a rod that reads half eaten into another season."""
    looks = [record(f"20{y}-10-04", eaten(v)) for y, v in ((20, 0), (22, 5), (24, 10), (25, 50))]
    (anode,) = worn(*looks).anodes
    assert anode.share_now is not None
    assert anode.share_now.p50 < 0.5
    assert anode.replace == "now"


def test_a_new_rod_begins_anew() -> None:
    """Guards that a replaced rod is no rod that grew, and that the old one still tells the rate."""
    new = {"id": "n", "seq": 2, "action": "replace anode", "part": "heater", "result": "done"}
    (fast,) = worn(record("2023-10-04", eaten(0)), record("2024-10-04", eaten(90), new)).anodes
    (slow,) = worn(record("2023-10-04", eaten(0)), record("2024-10-04", eaten(15), new)).anodes
    assert fast.share_now is not None
    assert fast.share_now.p95 == 0.0
    assert fast.seasons_left is not None
    assert slow.seasons_left is not None
    assert fast.seasons_left.p50 < 0.8 * slow.seasons_left.p50


def test_percent_and_share_are_the_same() -> None:
    """Guards the units of a share eaten and of its deviation."""
    one = worn(record("2025-10-04", eaten(30, "%"))).anodes
    two = worn(record("2025-10-04", eaten(0.3, "1"))).anodes
    assert one == two
    close = eaten(30)
    close["reading"]["sd"] = 5
    (anode,) = worn(record("2025-10-04", close)).anodes
    assert anode.readings[0].sd == pytest.approx(0.05)


def test_a_record_given_twice_counts_once() -> None:
    """Guards that the same look is not two."""
    once = record("2025-10-04", eaten(30))
    assert worn(once, once) == worn(once)


def test_the_order_of_records_does_not_matter() -> None:
    """Guards that days decide, not the command line."""
    one, two = record("2024-10-04", eaten(10)), record("2025-10-04", eaten(30))
    assert worn(one, two).anodes == worn(two, one).anodes


def test_a_later_day_leaves_less() -> None:
    """Guards that a rod goes on being eaten after the last look."""
    look = record("2024-10-04", eaten(20))
    (then,), (later,) = worn(look).anodes, worn(look, on=date(2025, 10, 4)).anodes
    assert then.share_now is not None
    assert later.share_now is not None
    assert later.share_now.p50 > then.share_now.p50
    with pytest.raises(ChoiceError, match="on or after the last reading, 2024-10-04"):
        worn(look, on=date(2024, 10, 3))


@pytest.mark.parametrize("result", ["skipped", "failed"])
def test_what_was_not_done_is_no_look(result: str) -> None:
    """Guards that a reading of a step that was not done counts for nothing."""
    (anode,) = worn(record("2025-10-04", eaten(30, result=result))).anodes
    assert anode.readings == ()


@pytest.mark.parametrize(
    ("day", "event", "field", "says"),
    [
        (None, eaten(30), "started", "expected the day"),
        ("2025-10-04", eaten(130), "events[a].reading.value", "from 0 to 1"),
        ("2025-10-04", eaten(30, "1"), "events[a].reading.value", "is its unit %"),
        ("2025-10-04", eaten(30, "in"), "events[a].reading.unit", "expected % or 1"),
        ("2025-10-04", eaten(30, part="pump"), "events[a].part", "expected heater"),
        ("2025-10-04", eaten(30, step="plug-out:boiler"), "events[a].step", "'boiler'"),
    ],
)
def test_a_look_that_cannot_be_is_named(
    day: str | None, event: dict[str, Any], field: str, says: str
) -> None:
    """Guards that file and field are named in one line."""
    with pytest.raises(RecordError, match=says) as caught:
        worn(record(day, event))
    assert (caught.value.place.file, caught.value.place.field) == ("0.json", field)


def test_a_reading_at_the_only_heater_needs_no_part() -> None:
    """Guards that nothing is asked that can only be one thing."""
    (anode,) = worn(record("2025-10-04", eaten(30, step="take-reading"))).anodes
    assert len(anode.readings) == 1


@pytest.mark.parametrize(
    ("name", "whys"),
    [
        ("full-fifth-wheel", {"aluminum"}),
        ("on-demand-van", {"on-demand heater"}),
        ("small-trailer", set()),
    ],
)
def test_heaters_without_an_anode_are_told(name: str, whys: set[str]) -> None:
    """Guards that a heater without an anode gets its reason, and no band."""
    found = wear_of(load_card(DEMO / "cards" / f"{name}.toml"), [])
    assert {why for _, why in found.without} == whys
    assert bool(found.anodes) is not bool(whys)


def test_an_aluminum_tank_has_no_rod_to_read() -> None:
    """Guards that a reading which contradicts the card is refused."""
    text = swapped('tank = "steel with anode"', 'tank = "aluminum"')
    with pytest.raises(RecordError, match="by the card no heater here has one"):
        worn(record("2025-10-04", eaten(30)), text=text)


def test_a_card_that_is_silent_leaves_it_open() -> None:
    """Guards that a tank of unknown make is neither with nor without an anode."""
    (anode,) = worn(text=swapped('tank = "steel with anode"\n', "")).anodes
    assert anode.why == "no reading: tank not said"


def test_what_is_taken_before_any_reading() -> None:
    """Guards the prior as stated: a rod lasts one to five seasons, a tenth of them beyond each."""
    # A log-normal law from its tenths: ninety-five per cent lie 1.6449 deviations out, not 1.2816.
    width = 5.0 ** (0.5 * 1.6449 / 1.2816)
    rate = prior_rate()
    assert rate.p50 == pytest.approx(5.0**-0.5, rel=0.01)
    assert rate.p05 == pytest.approx(5.0**-0.5 / width, rel=0.02)
    assert rate.p95 == pytest.approx(5.0**-0.5 * width, rel=0.02)
