import tomllib
from pathlib import Path
from typing import Any

import pytest

from wintertight.coach.card import Card
from wintertight.coach.load import read_card
from wintertight.coach.plumbing import check_plumbing, plumbing_faults
from wintertight.errors import CardTangled

TEXT = (
    Path(__file__).parents[3] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
).read_text("utf-8")


def tee(name: str, along: str = "1 ft") -> str:
    """Write a tee of its own."""
    return f'[[fitting]]\nid = "{name}"\nkind = "tee"\nat = ["{along}", "1 ft", "0 ft"]\n'


def run(name: str, start: str, end: str) -> str:
    """Write a line of its own."""
    return (
        f'[[line]]\nid = "{name}"\nfrom = "{start}"\nto = "{end}"\n'
        'length = "2 ft"\nsize = "1/2 in"\nmaterial = "PEX"\n'
    )


def said(text: str) -> str:
    """Give what is said of a card whose plumbing is wrong."""
    with pytest.raises(CardTangled) as caught:
        read_card(text)
    return str(caught.value)


def test_a_piece_apart_is_named_with_its_place() -> None:
    """Guards that fittings which no line joins to the coach are told, at the first of them."""
    text = TEXT + tee("left") + tee("right", "2 ft") + run("between", "left", "right")
    line = text[: text.index('[[fitting]]\nid = "left"')].count("\n") + 1
    assert said(text) == (
        f"WT-121 card:{line} fitting[left]: left, right: no line leads from here "
        "to the rest of the coach"
    )


def test_a_fitting_alone_is_told() -> None:
    """Guards that a wetted fitting without any line is no part of the plumbing."""
    assert "fitting[lonely]: no line joins lonely" in said(TEXT + tee("lonely"))


def test_water_has_to_come_in() -> None:
    """Guards that a card without tank and without city inlet is refused."""
    text = TEXT.replace('kind = "fresh tank"', 'kind = "tee"').replace('volume = "40 gal"\n', "")
    assert read_card(text)
    text = text.replace('kind = "city inlet"', 'kind = "tee"')
    assert "no water comes in" in said(text)


def test_a_longer_circle_of_drains_is_found() -> None:
    """Guards that each member of a circle is told, and nothing that only leads into it."""
    old = 'compartment = "galley"\ndrains_to = "gray-tank"'
    text = TEXT.replace(old, old.replace("gray-tank", "lavatory-trap"), 1)
    old = 'compartment = "bath"\ndrains_to = "gray-tank"'
    text = text.replace(old, old.replace("gray-tank", "kitchen-trap"), 1)
    card = Card.model_validate(tomllib.loads(text))
    told = {card.fittings[int(fault.path[1])].id for fault in plumbing_faults(card)}
    assert told == {"kitchen-trap", "lavatory-trap"}


def test_a_tap_with_one_side_says_so() -> None:
    """Guards that a cold-only tap is possible, and that its other port is then gone."""
    start = TEXT.index('[[line]]\nid = "kitchen-hot"')
    end = TEXT.index("[[line]]", start + 1)
    without = TEXT[:start] + TEXT[end:]
    assert "no line joins kitchen.hot; if it has one side only" in said(without)
    only = without.replace('kind = "kitchen tap"', 'kind = "kitchen tap"\nonly = "cold"')
    assert read_card(only).fitting["kitchen"].ports == ("cold",)
    both = TEXT.replace('kind = "kitchen tap"', 'kind = "kitchen tap"\nonly = "cold"')
    assert "kitchen has no port 'hot'; expected kitchen.cold" in said(both)


def test_a_check_valve_needs_its_direction() -> None:
    """Guards that only valves whose sides are alike may leave out the port."""
    text = TEXT.replace(
        'id = "jug-valve"\nkind = "ball valve"\nrole = "antifreeze inlet"',
        'id = "jug-valve"\nkind = "check valve"',
    )
    assert "say which port of jug-valve: expected jug-valve.in or jug-valve.out" in said(text)


@pytest.mark.parametrize(("length", "fits"), [("5.9 ft", True), ("4.4 ft", False)])
def test_spreads_are_allowed_for(length: str, fits: bool) -> None:  # noqa: FBT001 - a table's column
    """Guards the least length against the arithmetic below."""
    # kitchen-cold spans (0, 5.5, 2.9) ft, 6.22 ft straight. Both ends may be off by 0.1 m, together
    # 0.14 m or 0.46 ft; a told length by 10 %: 5.9 x 1.1 = 6.49 > 5.75; 4.4 x 1.1 = 4.84 < 5.75.
    text = TEXT.replace('{ guessed = "9.4 ft", spread = "25 %" }', f'"{length}"')
    assert (not plumbing_faults(Card.model_validate(tomllib.loads(text)))) is fits


def test_a_card_made_in_python_is_checked_too() -> None:
    """Guards the check for cards that come from no file: one line, without a place in a file."""
    raw: dict[str, Any] = tomllib.loads(TEXT)
    check_plumbing(Card.model_validate(raw))
    raw["line"][0]["to"] = "nowhere"
    with pytest.raises(CardTangled, match=r"^WT-121 line\[1\]\.to: no fitting has the id"):
        check_plumbing(Card.model_validate(raw))
