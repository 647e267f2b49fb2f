"""Every finding on what burst, and on an anode, has its sentence, and none is left over."""

from string import Formatter
from typing import get_args

import pytest

from wintertight.procedure.causes import WEIGHTS
from wintertight.procedure.incident import Explained, LookKey
from wintertight.procedure.record import Result
from wintertight.procedure.wear import NoAnodeKey, WearKey
from wintertight.wording.english import ENGLISH

OPEN = {key for key, weight in WEIGHTS.items() if weight == "open"}


@pytest.mark.parametrize(
    ("subject", "keys"),
    [
        ("burst cause", set(WEIGHTS)),
        ("burst settle", OPEN),
        ("burst look", set(get_args(LookKey))),
        ("anode", set(get_args(WearKey))),
        ("no anode", set(get_args(NoAnodeKey))),
    ],
)
def test_keys_and_sentences_are_the_same(subject: str, keys: set[str]) -> None:
    """Guards that nothing emitted is without words, and that what is open can be settled."""
    assert set(ENGLISH[subject]) == keys


def test_pieces_of_an_incident_are_there() -> None:
    """Guards the pieces that are put together from a name and a word."""
    names = {f"cause {key.partition(': ')[0]}" for key in WEIGHTS}
    weights = {f"weight {weight}" for weight in WEIGHTS.values()}
    results = {f"result {result}" for result in get_args(Result) if result != "done"}
    explained = set(get_args(Explained)) - {"supported"} | {"supported one", "supported many"}
    assert names | weights | results | explained <= set(ENGLISH["incident"])


@pytest.mark.parametrize("key", sorted(WEIGHTS))
def test_a_finding_names_only_what_it_is_given(key: str) -> None:
    """Guards that no name in braces is left unfilled."""
    usual = {"steps", "outlets", "reason", "low_degC", "lowest_degC", "cause"}
    given = {name for _, name, _, _ in Formatter().parse(ENGLISH["burst cause"][key]) if name}
    assert given <= usual


def test_nobody_is_blamed() -> None:
    """Guards that what is found names no one who did the work."""
    said = " ".join(ENGLISH["burst cause"].values()).lower()
    assert not [word for word in ("technician", "fault of", "careless", "blame") if word in said]
