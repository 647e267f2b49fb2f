import json
from pathlib import Path
from typing import Any

import pytest

from tests.doors.door import CARD, Door

RECORDS = CARD.parents[1] / "records"
FALL, FOUND = RECORDS / "incident-fall.json", RECORDS / "incident-found.json"


def found_file(tmp_path: Path, **more: Any) -> Path:
    """Write a file of what was found."""
    usual = {"schema": "wintertight/found/1", "found": "2026-04-11", "burst": [{"part": "pump"}]}
    file = tmp_path / "found.json"
    file.write_text(json.dumps({**usual, **more}), encoding="utf-8")
    return file


def test_the_keys_are_those_of_the_contract(door: Door) -> None:
    """Guards the object, and that what is null says why."""
    found = door("incident", CARD, "--done", FALL, "--found", FOUND, "--json").object()
    assert found["schema"] == "wintertight/incident/1"
    assert found["fall"]["verdict"] == "gap"
    assert [part["supported"] for part in found["parts"]] == [
        ["missed"], ["used"], ["colder"], ["older"],
    ]  # fmt: skip
    for part in found["parts"]:
        assert [c["cause"] for c in part["causes"]] == ["missed", "used", "older", "colder", "wear"]
        assert all(("settle" in c) == (c["weight"] == "open") for c in part["causes"])
        nulls = {key for key, value in part.items() if value is None}
        assert nulls == set(part.get("why_null", {}))


def test_the_screen_says_what_was_missed(door: Door) -> None:
    """Guards the words of the screen, in lines that fit it."""
    done = door("incident", CARD, "--done", FALL, "--found", FOUND, "--units", "metric")
    assert done.status == 0
    assert "Outside hot: one cause is supported, missed in the fall." in done.out
    assert "skipped in line b17" in " ".join(done.out.split())
    assert "-27.8 °C" in done.out
    assert max(map(len, done.out.splitlines())) <= 92


def test_nothing_known_is_told_as_open(door: Door, tmp_path: Path) -> None:
    """Guards that silence supports nothing."""
    empty = tmp_path / "empty.json"
    empty.write_text('{"schema": "wintertight/record/1", "events": []}', encoding="utf-8")
    bare = found_file(tmp_path)
    found = door("incident", CARD, "--done", empty, "--found", bare, "--json").object()
    (part,) = found["parts"]
    assert {cause["weight"] for cause in part["causes"]} == {"open"}
    assert found["why_null"].keys() == {"lowest_degC", "water_since"}


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"burst": [{"part": "boiler"}]}, ("found.json burst[1].part: ", "'boiler'")),
        ({"water_since": ["well"]}, ("found.json water_since[1]: ", "'well'")),
        ({"heated": ["attic"]}, ("found.json heated[1]: ", "'attic'")),
        ({"lowest": "-18 psi"}, ("found.json lowest: ", "a temperature")),
        ({"found": "2025-04-11"}, ("found.json found: ", "2025-10-18")),
    ],
)
def test_a_wrong_file_is_one_line(
    door: Door, tmp_path: Path, more: dict[str, Any], words: tuple[str, ...]
) -> None:
    """Guards that the line names file and field."""
    wrong = found_file(tmp_path, **more)
    door("incident", CARD, "--done", FALL, "--found", wrong).refused("WT-130", *words)


def test_the_design_low_may_be_another(door: Door, tmp_path: Path) -> None:
    """Guards that the cold a coach was meant for is the one that is asked for."""
    at = found_file(tmp_path, lowest="-11 degF", water_since=[])
    words = ("incident", CARD, "--done", FALL, "--found", at, "--json")
    weights = [
        {c["cause"]: c["key"] for c in door(*words, *more).object()["parts"][0]["causes"]}["colder"]
        for more in ((), ("--low=-11F",))
    ]
    assert weights == ["colder: held", "colder: not colder"]
