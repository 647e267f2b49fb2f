"""`plan --wrong`: what can stand wrongly, for people and for programs."""

import re
from functools import cache
from typing import Any

from tests.architecture.tree import PACKAGE
from tests.doors.door import Door, as_program
from tests.doors.test_plan import unexplained

CARD = PACKAGE / "demo" / "cards" / "small-trailer.toml"
KEYS = {
    "key", "part", "outcome", "parts", "bursting", "water_m3", "signs", "noticed", "extra_jugs",
    "extra_antifreeze_m3", "crosses", "sentence",
}  # fmt: skip
OUTCOMES = ["hazard", "gap", "unproven", "same"]
LEAST = {"heater left open", "bypass shut", "shower crossing", "jug ran dry", "weak product"}


@cache
def wrong() -> dict[str, Any]:
    """Give the object of a plan with its wrong settings, asked once for all of this module."""
    return as_program("plan", CARD, "--quick", "--wrong", "--json").object()


def test_the_list_says_what_programs_need() -> None:
    """Guards the keys of a wrong setting, their kinds, and that nothing is null unexplained."""
    found = wrong()["wrong_settings"]
    assert {item["key"] for item in found} >= LEAST
    for item in found:
        assert item.keys() >= KEYS
        assert item["outcome"] in OUTCOMES
        assert item["sentence"][0].isupper()
        assert item["sentence"].endswith(".")
        assert all(sign.keys() >= {"key", "at", "text"} for sign in item["signs"])
        assert isinstance(item["extra_jugs"], int)
        assert item["water_m3"] >= 0.0
    parts = {part["id"] for part in wrong()["parts"]}
    assert {part for item in found for part in item["parts"]} <= parts
    assert list(unexplained(found)) == []


def test_the_worst_comes_first() -> None:
    """Guards the order: by what comes of it, and what nobody would notice before the rest."""
    ranks = [(OUTCOMES.index(i["outcome"]), i["noticed"]) for i in wrong()["wrong_settings"]]
    assert ranks == sorted(ranks)


def test_the_rest_of_the_plan_stays_as_it_is() -> None:
    """Guards that asking for wrong settings changes no plan, and that none are there unasked."""
    plain = as_program("plan", CARD, "--quick", "--json").object()
    assert "wrong_settings" not in plain
    assert {k: v for k, v in wrong().items() if k != "wrong_settings"} == plain


def test_the_screen_tells_them_below_the_plan(door: Door) -> None:
    """Guards the block for people, its headings and its width."""
    plain = door("plan", CARD, "--units", "metric").out
    told = door("plan", CARD, "--units", "metric", "--wrong").out
    said, note = plain.rstrip("\n").rsplit("\n", 1)
    assert told.startswith(said)
    assert told.endswith(f"\n\n{note}\n")
    block = told.removeprefix(said)
    assert "Wrong settings: something would burst, and no tap shows it" in block
    assert "to settle it" in block
    assert not re.search(r"\d gal|fl oz", block)
    assert max(map(len, block.splitlines())) <= 92
