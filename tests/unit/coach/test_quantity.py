from typing import Any

import pytest
from pydantic_core import PydanticCustomError

from wintertight.coach.quantity import USUAL_SPREAD, Quantity, read_quantity


@pytest.mark.parametrize(
    ("raw", "expected"),
    [
        ("10 ft", Quantity(3.048, "told", 0.10)),
        ({"told": "10 ft"}, Quantity(3.048, "told", 0.10)),
        ({"measured": "10 ft"}, Quantity(3.048, "measured", 0.02)),
        ({"guessed": "10 ft"}, Quantity(3.048, "guessed", 0.25)),
        ({"guessed": "10 ft", "spread": "40 %"}, Quantity(3.048, "guessed", 0.40)),
        ({"measured": "10 ft", "spread": "0 %"}, Quantity(3.048, "measured", 0.0)),
    ],
)
def test_both_ways_of_writing_a_quantity(raw: object, expected: Quantity) -> None:
    """Guards that text is told, and that each way of knowing brings its usual spread."""
    read = read_quantity(raw, "length")
    assert read.how == expected.how
    assert read.value == pytest.approx(expected.value, rel=1e-12)
    assert read.spread == pytest.approx(expected.spread, rel=1e-12)


def test_a_measured_value_is_known_better_than_a_told_one() -> None:
    """Guards the order of the usual spreads: measured, told, guessed."""
    assert USUAL_SPREAD["measured"] < USUAL_SPREAD["told"] < USUAL_SPREAD["guessed"]


def test_the_band_lies_around_the_value() -> None:
    """Guards low and high ends of the band."""
    quantity = Quantity(2.0, "guessed", 0.25)
    assert (quantity.low, quantity.high) == (1.5, 2.5)


@pytest.mark.parametrize(
    ("raw", "within"),
    [
        (27, ""), (27.0, ""), (True, ""), (None, ""), ([], ""), ({}, ""), ("27", ""), ("", ""),
        ("-3 ft", ""), ("0 ft", ""), ("nan ft", ""), ("inf ft", ""), ("27 psi", ""),
        ({"spread": "20 %"}, ""), ({"told": "1 ft", "measured": "1 ft"}, ""),
        ({"told": 1}, "told"), ({"told": "1 ft", "spread": "-1 %"}, "spread"),
        ({"told": "1 ft", "spread": "100 %"}, "spread"), ({"told": "1 ft", "by": "me"}, "by"),
    ],
)  # fmt: skip
def test_what_is_no_quantity_is_refused_at_its_key(raw: Any, within: str) -> None:
    """Guards that nothing without unit, sign or sense becomes a quantity."""
    with pytest.raises(PydanticCustomError) as caught:
        read_quantity(raw, "length")
    assert caught.value.context is not None
    assert caught.value.context["within"] == within
