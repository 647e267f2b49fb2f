import random
import tomllib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.card import Card, End
from wintertight.coach.joints import joined_ends
from wintertight.coach.load import load_card, read_card

FILE = Path(__file__).parents[3] / "src/wintertight/demo/cards/middle-travel-trailer.toml"
TEXT = FILE.read_text("utf-8")
CARD = load_card(FILE)


def test_the_first_card_reads_as_written() -> None:
    """Guards values, units and ways of knowing of a few fields, worked out by hand."""
    pump, line = CARD.fitting["pump"], CARD.line["pump-out"]
    assert pump.cut_off is not None
    assert pump.at is not None
    assert pump.cut_off.value == pytest.approx(55 * 6894.757, rel=1e-6)
    assert pump.at.height_m == pytest.approx(0.4 * 0.3048)
    assert (line.start, line.end) == (End("pump", "out"), End("filter", "in"))
    assert (line.length.how, line.length.spread) == ("guessed", 0.20)
    assert line.length.value == pytest.approx(1.5 * 0.3048)
    assert (line.bends, line.size, line.material) == (2, "1/2", "PEX")
    assert CARD.site is not None
    assert CARD.site.design_low_degC == pytest.approx((-10 - 32) / 1.8)


def test_bores_come_from_the_tube_or_from_the_card() -> None:
    """Guards that a bore on the card outranks the tables: a hose has no standard."""
    assert CARD.line["hose"].largest_bore_m == pytest.approx(0.485 * 0.0254)
    changed = TEXT.replace('id = "hose"', 'id = "hose"\nmaterial = "vinyl"\nbore = "1/2 in"')
    hose = read_card(changed).line["hose"]
    assert hose.middle_bore_m == pytest.approx(0.5 * 0.0254)
    assert hose.largest_bore_m == pytest.approx(1.1 * 0.5 * 0.0254)


@given(st.randoms(use_true_random=False))
def test_order_does_not_change_the_hash(chance: random.Random) -> None:
    """Guards that a card which lists its parts in another order is the same card."""
    raw = tomllib.loads(TEXT)
    for key in ("fitting", "line", "compartment"):
        chance.shuffle(raw[key])
    chance.shuffle(raw["looked_for"]["absent"])
    shuffled = Card.model_validate(raw)
    assert shuffled.card_hash == CARD.card_hash
    assert joined_ends(shuffled) == joined_ends(CARD)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('"27 ft"', '"8.2296 m"'),
        ('"27 ft"', '{ told = "324 in" }'),
        ('"-10F"', '"-10 degF"'),
        ('size = "1/2 in"', "size = '1/2'"),
        ("bends = 1\n", "bends = 1 # an elbow\n"),
        ('name = "bypass valve"', 'name = "bypass valve"\nnote = "stiff"'),
        ('seen = "present"', 'seen = "present"'),
    ],
)
def test_spelling_does_not_change_the_hash(old: str, new: str) -> None:
    """Guards that units, comments and notes leave the hash alone."""
    assert read_card(TEXT.replace(old, new, 1)).card_hash == CARD.card_hash


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('"27 ft"', '"27.01 ft"'),
        ('"27 ft"', '{ measured = "27 ft" }'),
        ("bends = 1", "bends = 2"),
        ('volume = "6 gal"', 'volume = "10 gal"'),
        ('"whirlpool",', ""),
        ('"-10F"', '"-11F"'),
        ('"burner", "element"', '"burner"'),
    ],
)
def test_meaning_changes_the_hash(old: str, new: str) -> None:
    """Guards that a plan made for one meaning is never taken for another."""
    assert read_card(TEXT.replace(old, new, 1)).card_hash != CARD.card_hash


def test_the_hash_has_its_form() -> None:
    """Guards the form that plans and records carry."""
    kind, _, digits = CARD.card_hash.partition(":")
    assert kind == "sha256"
    assert len(bytes.fromhex(digits)) == 32


def test_sides_of_a_valve_are_filled_in() -> None:
    """Guards that the line into a two-way valve gets a, the line out of it b."""
    ends = joined_ends(CARD)
    assert ends["tank-stub"] == (End("fresh-tank"), End("tank-valve", "a"))
    assert ends["suction-a"] == (End("tank-valve", "b"), End("suction-tee"))
    joined = [end for pair in ends.values() for end in pair if end.port]
    assert len(joined) == len(set(joined))
