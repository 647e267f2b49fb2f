from pathlib import Path

import pytest

from tests.doors.door import CARD, Door
from wintertight.errors import InputError

RECORDS = CARD.parents[1] / "records"
YEARS = [RECORDS / f"{name}.json" for name in ("anode-2023", "anode-2024", "incident-fall")]
DONE = [word for record in YEARS for word in ("--done", record)]


def test_the_keys_are_those_of_the_contract(door: Door) -> None:
    """Guards the object: coach, looks, bands, answer."""
    found = door("wear", CARD, *DONE, "--json").object()
    assert found["schema"] == "wintertight/wear/1"
    assert found["coach"]["id"] == "HL-204"
    (anode,) = found["anodes"]
    assert [look["date"] for look in anode["readings"]] == [
        "2023-10-14",
        "2024-10-12",
        "2025-10-18",
    ]
    assert anode["share_now"].keys() == anode["seasons_left"].keys() == {"p05", "p50", "p95"}
    assert anode["replace"] == "now"
    assert anode["text"] in found["text"]
    assert "why_null" not in found


def test_nothing_known_is_null_with_its_reason(door: Door, tmp_path: Path) -> None:
    """Guards that a coach nobody has looked at gets no number."""
    empty = tmp_path / "empty.json"
    empty.write_text('{"schema": "wintertight/record/1", "events": []}', encoding="utf-8")
    found = door("wear", CARD, "--done", empty, "--json").object()
    (anode,) = found["anodes"]
    assert anode["replace"] == "unknown"
    nulls = {key for key, value in anode.items() if value is None}
    assert (
        nulls == set(anode["why_null"]) == {"share_now", "seasons_left", "half_before_next_autumn"}
    )
    assert found["why_null"].keys() == {"on"}
    assert "nothing is known" in door("wear", CARD, "--done", empty).out


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("full-fifth-wheel", "Water heater: its tank is of aluminum and has no anode."),
        ("on-demand-van", "it has no tank, and so no anode."),
    ],
)
def test_no_anode_is_one_clear_sentence(door: Door, tmp_path: Path, name: str, said: str) -> None:
    """Guards the words for a heater without an anode, on the screen and for programs."""
    empty = tmp_path / "empty.json"
    empty.write_text('{"schema": "wintertight/record/1", "events": []}', encoding="utf-8")
    card = CARD.with_name(f"{name}.toml")
    assert said in door("wear", card, "--done", empty).out
    found = door("wear", card, "--done", empty, "--json").object()
    assert found["anodes"] == []
    assert said in found["text"]


@pytest.mark.parametrize(
    ("day", "says"),
    [("2025-10-17", "on or after the last reading, 2025-10-18"), ("fall", "not 'fall'")],
)
def test_a_wrong_day_is_one_line(door: Door, day: str, says: str) -> None:
    """Guards the words for a day before a reading, or that is none."""
    door("wear", CARD, *DONE, "--on", day).refused("WT-140", "--on", says)


def test_a_wrong_record_is_named(door: Door, tmp_path: Path) -> None:
    """Guards that of several records the one at fault is named."""
    wrong = tmp_path / "wrong.json"
    wrong.write_text('{"schema": "x/1"}', encoding="utf-8")
    door("wear", CARD, *DONE, "--done", wrong).refused("WT-130", "wrong.json schema")
    door("wear", CARD).refused(InputError.code, "--done")
