"""Numbers, lists and names as they are said."""

import pytest

from tests.unit.documents.demo_plans import demo_card, doubtful_card
from wintertight.wording.names import part_name
from wintertight.wording.spoken import about, begun, counted, listed, share_in_words, spoken


def test_the_ending_tells_the_unit() -> None:
    """Guards that a parameter is said in the unit that ends its name, in both systems."""
    params: dict[str, float | str] = {
        "freezing_point_degC": -40.0,
        "lowest_m": 0.3048,
        "kind": "trap",
        "count": 2.0,
    }
    us = {"freezing_point_degC": "-40 °F", "lowest_m": "1 ft", "kind": "trap", "count": "2"}
    assert spoken(params) == us
    assert spoken(params, system="metric")["freezing_point_degC"] == "-40 °C"
    assert spoken(params, system="metric")["lowest_m"] == "305 mm"


def test_a_share_of_product_is_never_told_too_high() -> None:
    """Guards that a product one part in a thousand short is not called whole."""
    assert spoken({"product": 0.9985, "weakest": 0.299})["product"] == "99 %"
    assert share_in_words(0.004) == "under 1 %"


@pytest.mark.parametrize(
    ("seconds", "said"),
    [(None, "none expected"), (0.4, "at once"), (3.0, "about 3 s"), (63.0, "about 1 min 5 s")],
)
def test_colour_is_told_roughly(seconds: float | None, said: str) -> None:
    """Guards that a time to colour is told as closely as it can be seen."""
    assert about(seconds) == said


def test_lists_and_counts() -> None:
    """Guards commas, the last "and", doubles, and one against many."""
    assert listed([]) == ""
    assert listed(["tap", "tap"]) == "tap"
    assert listed(["a", "b", "c"]) == "a, b and c"
    assert counted(1, "parts") == "1 part"
    assert counted(0, "parts") == "0 parts"
    assert begun(" shower, cold side") == "Shower, cold side"


@pytest.mark.parametrize(
    ("last", "said"),
    [
        ("inodoro", "ducha e inodoro"),
        ("Inodoro del baño", "ducha e Inodoro del baño"),
        ("hilo", "ducha e hilo"),
        ("hielera", "ducha y hielera"),
        ("lavadora", "ducha y lavadora"),
    ],
)
def test_a_spanish_and_gives_way(last: str, said: str) -> None:
    """Guards that "y" becomes "e" before the sound of an i, and not before "hie"."""
    assert listed(["ducha", last], "es") == said


@pytest.mark.parametrize(
    ("part", "name"),
    [
        ("kitchen.hot", "kitchen tap, hot side"),
        ("cold-trunk-2", "cold trunk 2"),
        ("tank-valve", "valve from the fresh tank"),
        ("low-cold", "cold low point"),
        ("heater/plug", "water heater"),
        ("suction-tee", "tee (suction tee)"),
        ("any ice maker", "any ice maker"),
    ],
)
def test_parts_are_called_what_people_call_them(part: str, name: str) -> None:
    """Guards names: the card's own, else the kind, and the id only where it is needed."""
    assert part_name(demo_card(), part) == name


def test_a_line_with_a_bare_number_is_called_a_line() -> None:
    """Guards that an id which is no word gets the word "line" in front."""
    assert part_name(doubtful_card(), "L9") == "line L9"
