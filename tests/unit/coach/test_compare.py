"""What differs between two cards."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.card import Card, LookedFor
from wintertight.coach.compare import KEYS, Difference, Value, differences
from wintertight.coach.edit import changed, without_fitting
from wintertight.coach.load import load_card
from wintertight.coach.quantity import Quantity

FOLDER = Path(__file__).parents[3] / "src/wintertight/demo/cards"
SMALL = load_card(FOLDER / "small-trailer.toml")
OTHERS = [load_card(path) for path in sorted(FOLDER.glob("*.toml"))]


def longer(card: Card, line: str, length: Quantity) -> Card:
    """Give the card with one line of another length."""
    lines = [changed(one, length=length) if one.id == line else one for one in card.lines]
    return changed(card, lines=tuple(lines))


def test_a_card_does_not_differ_from_itself() -> None:
    """Guards that the order of parts is no difference."""
    turned = changed(SMALL, fittings=SMALL.fittings[::-1], lines=SMALL.lines[::-1])
    assert differences(SMALL, turned) == ()
    assert turned.card_hash == SMALL.card_hash


@pytest.mark.parametrize(
    "length",
    [Quantity(1.0, "guessed", 0.25), Quantity(0.85344, "measured", 0.25),
     Quantity(0.85344, "guessed", 0.2)],
)  # fmt: skip
def test_a_length_differs_in_value_way_and_spread(length: Quantity) -> None:
    """Guards that each of the three alone is a difference, told with both values."""
    found = differences(SMALL, longer(SMALL, "tank-stub", length))
    before = SMALL.line["tank-stub"].length
    params: dict[str, Value] = {"field": "length", "before": before, "after": length}
    assert found == (Difference("changed", "line", "tank-stub", params),)


def test_what_is_on_one_card_only_is_named() -> None:
    """Guards fittings, lines and kinds that came or went, in the order of subjects."""
    without = without_fitting(SMALL, "outside-shower")
    assert without is not None
    looked = LookedFor.model_construct(absent=(*SMALL.looked_for.absent[1:], "city inlet"))
    after = changed(without, looked_for=looked, site=None)
    found = [(d.key, d.subject, d.part) for d in differences(SMALL, after)]
    assert found[:4] == [
        ("no longer given", "site", ""),
        ("no longer given", "site", ""),
        ("removed", "looked for", "accumulator"),
        ("added", "looked for", "city inlet"),
    ]
    assert ("changed", "fitting", "outside-shower") in found
    back = [(d.key, d.subject, d.part) for d in differences(after, SMALL)]
    gone = {part for key, subject, part in found if key == "removed" and subject == "line"}
    come = {part for key, subject, part in back if key == "added" and subject == "line"}
    assert gone == come != set()


@given(st.sampled_from(OTHERS), st.sampled_from(OTHERS))
def test_the_hash_tells_the_same(one: Card, other: Card) -> None:
    """Guards that cards differ in more than notes exactly where their hashes do."""
    found = [d for d in differences(one, other) if d.params.get("field") != "note"]
    assert bool(found) == (one.card_hash != other.card_hash)
    assert all(set(d.params) == set(KEYS[d.key]) for d in found)


@given(
    value=st.floats(0.1, 100.0),
    how=st.sampled_from(["measured", "told", "guessed"]),
    spread=st.floats(0.0, 0.9),
)
def test_a_changed_number_tells_the_same_as_the_hash(value: float, how: str, spread: float) -> None:
    """Guards that the comparison rounds as the hash does."""
    other = longer(SMALL, "tank-stub", Quantity(value, how, spread))  # type: ignore[arg-type]
    assert bool(differences(SMALL, other)) == (SMALL.card_hash != other.card_hash)
