"""What a card leaves open."""

from pathlib import Path

import pytest

from wintertight.coach.findings import findings
from wintertight.coach.left_open import LEFT_OPEN, asked
from wintertight.coach.load import load_card, read_card

CARDS = sorted((Path(__file__).parents[3] / "src/wintertight/demo/cards").glob("*.toml"))
TEXTS = {path.stem: path.read_text("utf-8") for path in CARDS}
SMALL, FULL = TEXTS["small-trailer"], TEXTS["full-fifth-wheel"]


def open_ones(text: str) -> set[tuple[str, str]]:
    """Give key and part of what is only asked."""
    return {(one.key, one.part) for one in asked(read_card(text)) if one.key in LEFT_OPEN}


NO_STRAINER = SMALL.replace('kind = "strainer"', 'kind = "filter housing"')


@pytest.mark.parametrize(
    ("text", "old", "new", "key", "part"),
    [
        (SMALL, 'drains_to = "kitchen-trap"\n', "", "trap without a sink", "kitchen-trap"),
        (SMALL, 'drains_to = "black-tank"\n', "", "toilet without a tank", "toilet"),
        (SMALL, 'tank = "steel with anode"\n', "", "tank not known", "heater"),
        (SMALL, 'kind = "strainer"', 'kind = "filter housing"', "no strainer", "pump"),
        (FULL, '"shut-off of the ice maker"', '"valve"', "", ""),
        (
            FULL,
            'role = "branch shut-off"\nname = "shut-off of the ice maker"\n',
            "",
            "no ice maker shut-off",
            "ice-maker",
        ),
        (NO_STRAINER, "absent = [", 'absent = [ "strainer",', "", ""),
    ],
)
def test_each_question_comes_from_its_change(
    text: str, old: str, new: str, key: str, part: str
) -> None:
    """Guards each rule, and that what was looked for and not found is not asked."""
    assert old in text
    assert open_ones(text.replace(old, new, 1)) == ({(key, part)} if key else set())


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_a_full_card_is_not_nagged_about(path: Path) -> None:
    """Guards the bundled coaches: nothing more is asked of them than their plans say."""
    card = load_card(path)
    more = [(one.key, one.part) for one in asked(card)[len(findings(card)) :]]
    assert more == []
    assert asked(card)[: len(findings(card))] == findings(card)
