"""The text of a card, and the card that is read back from it."""

import re
import tomllib
from dataclasses import replace
from pathlib import Path
from typing import get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.coach.card import (
    Antifreeze,
    Card,
    Coach,
    Compartment,
    Fitting,
    Line,
    LineDefaults,
    LookedFor,
    Part,
    Site,
)
from wintertight.coach.edit import changed, without_fitting
from wintertight.coach.load import load_card, read_card
from wintertight.coach.measured_fields import FIELD_DIMENSION
from wintertight.coach.quantity import Measures, Plain, Quantity
from wintertight.coach.shortest import shortest, spread_text, temperature_text
from wintertight.coach.written import ORDER, card_text
from wintertight.units import Dimension, parse_quantity

CARDS = sorted((Path(__file__).parents[3] / "src/wintertight/demo/cards").glob("*.toml"))
SMALL = load_card(next(path for path in CARDS if path.stem == "small-trailer"))
TABLES: dict[str, type[Part]] = {
    "coach": Coach,
    "site": Site,
    "antifreeze": Antifreeze,
    "looked_for": LookedFor,
    "line_defaults": LineDefaults,
    "compartment": Compartment,
    "fitting": Fitting,
    "line": Line,
}
WORDS = st.text(st.characters(codec="utf-8"), min_size=1, max_size=60).filter(
    lambda text: bool(text.strip())
)


def read_back(card: Card) -> Card:
    """Write a card and read it again."""
    return read_card(card_text(card))


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_a_demo_card_reads_back_the_same(path: Path) -> None:
    """Guards that what is written means what the card meant, its notes with it."""
    card = load_card(path)
    again = read_back(card)
    assert again.card_hash == card.card_hash
    assert [part.note for part in again.fittings] == [part.note for part in card.fittings]
    assert [line.id for line in again.lines] == [line.id for line in card.lines]


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_a_demo_card_is_written_as_it_was(path: Path) -> None:
    """Guards that numbers come out as a person wrote them, inches apart and "told" left out."""
    text = path.read_text("utf-8")
    written, was = (set(_bare_lines(t)) for t in (card_text(load_card(path)), text))
    other = {line for line in was - written if not re.match(r'"|.*(\d in"|told =)', line)}
    assert other == set()


def _bare_lines(text: str) -> list[str]:
    return [line.strip() for line in text.splitlines() if line.strip() and line[0] != "#"]


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_a_card_with_something_taken_off_reads_back_the_same(path: Path) -> None:
    """Guards parts that are said to be absent, which have no line and drain nowhere."""
    card = load_card(path)
    edited = [e for f in card.fittings if (e := without_fitting(card, f.id)) is not None]
    assert edited
    for one in edited[::4]:
        assert read_back(one).card_hash == one.card_hash


def test_a_line_is_readable() -> None:
    """Guards the look of a quantity, a place and a comment."""
    text = card_text(SMALL, ["Made for the spring.", "Two\nlines"])
    assert text.startswith("# Made for the spring.\n# Two lines\nschema = ")
    assert 'length = { guessed = "2.8 ft", spread = "25 %" }\n' in text
    assert 'length = { measured = "0.9 ft" }\n' in text
    assert 'at = ["7 ft", "4 ft", "-0.7 ft"]\n' in text
    assert 'volume = "20 gal"\n' in text
    assert 'design_low = "-10F"\n' in text
    assert text.count('size = "1/2 in"') == 1
    assert max(map(len, text.splitlines())) <= 100


@given(name=WORDS, note=WORDS)
def test_any_words_are_kept(name: str, note: str) -> None:
    """Guards that quotes, new lines and letters of any script come back whole."""
    fittings = (changed(SMALL.fittings[0], name=name.strip(), note=note.strip()),)
    card = changed(SMALL, name=name.strip(), fittings=(*fittings, *SMALL.fittings[1:]))
    again = read_back(card)
    assert (again.name, again.fittings[0].note) == (name.strip(), note.strip())
    assert again.card_hash == card.card_hash


@given(
    value=st.floats(1e-9, 1e9),
    dimension=st.sampled_from(["length", "volume", "flow", "pressure"]),
)
def test_a_number_keeps_its_meaning(value: float, dimension: Dimension) -> None:
    """Guards that no number loses a digit that counts, whatever unit it is written in."""
    assert f"{parse_quantity(shortest(value, dimension), dimension):.9g}" == f"{value:.9g}"


@given(value=st.floats(-273.0, 500.0), spread=st.floats(0.0, 1.0, exclude_max=True))
def test_temperatures_and_spreads_keep_their_meaning(value: float, spread: float) -> None:
    """Guards that both read back to the same nine digits, and a spread stays below one."""
    degrees = parse_quantity(temperature_text(value), "temperature")
    assert f"{degrees + 0.0:.9g}" == f"{value + 0.0:.9g}"
    again = parse_quantity(spread_text(spread), "share")
    assert again < 1.0
    assert f"{again:.9g}" == f"{spread:.9g}"


def test_a_metric_number_stays_metric() -> None:
    """Guards that a round number of metres is not made a long number of feet."""
    assert shortest(3.6, "length") == "3.6 m"
    assert shortest(12.25 * 0.3048, "length") == "12.25 ft"


def test_every_field_is_written() -> None:
    """Guards that no field of a card is forgotten by the writer."""
    assert {name: set(order) for name, order in ORDER.items() if name != "card"} == {
        name: set(model.model_fields) for name, model in TABLES.items()
    }


def test_every_field_with_a_unit_is_known() -> None:
    """Guards the table of dimensions against the fields themselves."""
    marked = {
        name: mark.dimension
        for model in TABLES.values()
        for name, field in model.model_fields.items()
        for mark in (*field.metadata, *_marks(field.annotation))
        if isinstance(mark, Measures | Plain)
    }
    assert dict(FIELD_DIMENSION) == {**marked, "at": "length"}


def _marks(annotation: object) -> list[object]:
    return [mark for kind in get_args(annotation) for mark in getattr(kind, "__metadata__", ())]


def test_every_field_comes_back() -> None:
    """Guards fields no bundled card has: heights, bore, spread, access, volume and the rest."""
    long = Quantity(0.123456789, "measured", 0.031)
    line = changed(
        SMALL.lines[0],
        length=replace(SMALL.lines[0].length, how="told", spread=0.4),
        bore=long,
        size="13 mm",
        material="braided hose",
        volume=Quantity(1e-4, "measured", 0.02),
        start_height_m=0.1,
        end_height_m=-0.21,
        lowest_m=-0.3,
        highest_m=0.7,
        access="sealed",
        note='says "no"',
    )
    fitting = changed(SMALL.fittings[0], at_within_m=0.3, access="in view")
    coach = changed(SMALL.coach, vin="HL-1", note="\ttabs\x00\x7f", height=long)
    site = changed(SMALL.site, power=True, dump=False)  # type: ignore[type-var]
    card = changed(
        SMALL,
        coach=coach,
        site=site,
        fittings=(fitting, *SMALL.fittings[1:]),
        lines=(line, *SMALL.lines[1:]),
    )
    assert tomllib.loads(card_text(card))["line"][0]["low"] == "-0.3 m"
    again = read_back(card)
    assert again.card_hash == card.card_hash
    assert again.coach.note == coach.note.strip() if coach.note else False
    assert again.line[line.id].note == line.note
