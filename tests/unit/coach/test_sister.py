"""A sister coach, and a card made anew that keeps what was known."""

from pathlib import Path

import pytest

from wintertight.coach.card import Card, Fitting, Line
from wintertight.coach.compare import differences
from wintertight.coach.edit import changed, without_fitting
from wintertight.coach.known import with_known
from wintertight.coach.load import load_card, read_card
from wintertight.coach.plumbing import plumbing_faults
from wintertight.coach.position import Position
from wintertight.coach.quantity import Quantity
from wintertight.coach.sister import QUESTIONS, sister_card, what_differs
from wintertight.coach.written import card_text
from wintertight.errors import CardError

CARDS = sorted((Path(__file__).parents[3] / "src/wintertight/demo/cards").glob("*.toml"))
SMALL = load_card(next(path for path in CARDS if path.stem == "small-trailer"))


def edited(card: Card, part: str, **changes: object) -> Card:
    """Give a card with some fields of one fitting or line changed."""
    fittings = tuple(changed(f, **changes) if f.id == part else f for f in card.fittings)
    lines = tuple(changed(n, **changes) if n.id == part else n for n in card.lines)
    return changed(card, fittings=fittings, lines=lines)


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_a_sister_is_a_good_card(path: Path) -> None:
    """Guards that the copy holds together, reads back, and differs in numbers only by spread."""
    card = load_card(path)
    sister = sister_card(card, "HL-900", "Her sister")
    assert plumbing_faults(sister) == ()
    assert read_card(card_text(sister)).card_hash == sister.card_hash
    for found in differences(card, sister):
        before, after = found.params.get("before"), found.params.get("after")
        if isinstance(before, Quantity) and isinstance(after, Quantity):
            assert after.value == before.value
            assert after.spread > before.spread


def test_what_belongs_to_one_coach_is_dropped() -> None:
    """Guards vehicle number and notes of coach and site, and that the rest of them stays."""
    assert SMALL.site is not None
    card = changed(
        SMALL,
        coach=changed(SMALL.coach, vin="HL-1", note="dent at the door"),
        site=changed(SMALL.site, note="third row"),
    )
    sister = sister_card(card, "HL-900")
    assert (sister.coach.vin, sister.coach.note, sister.coach.year) == (None, None, 2019)
    assert sister.site is not None
    assert (sister.site.note, sister.site.name) == (None, SMALL.site.name)
    assert (sister.id, sister.name) == ("HL-900", SMALL.name)


def test_how_one_gets_at_a_part_travels_along() -> None:
    """Guards panel, screws, picture and minutes, on a sister, on paper and on a card made anew."""
    reach = {"panel": "drawer front", "screws": 6, "photo": "drawer.jpg", "opening_s": 240.0}
    card = edited(SMALL, "bypass-valve", **reach)
    for there in (
        sister_card(card, "HL-900"),
        read_card(card_text(card)),
        with_known(SMALL, card),
    ):
        found = there.fitting["bypass-valve"]
        assert {name: getattr(found, name) for name in reach} == reach


def test_what_was_measured_is_known_less_surely() -> None:
    """Guards each rule: floor plan, learned volume, another make, told and guessed."""
    card = edited(SMALL, "heater", volume=Quantity(0.0227, "measured", 0.01), note="behind the bed")
    card = edited(card, "tank-stub", volume=Quantity(1e-4, "measured", 0.02), access="sealed")
    card = edited(card, "pump", flow=Quantity(2e-4, "measured", 0.3))
    sister = sister_card(card, "HL-900")
    assert sister.line["low-cold-stub"].length == Quantity(
        SMALL.line["low-cold-stub"].length.value, "measured", 0.05
    )
    assert sister.line["tank-stub"].volume == Quantity(1e-4, "measured", 0.05)
    assert sister.line["tank-stub"].access == "sealed"
    assert sister.line["tank-stub"].length == SMALL.line["tank-stub"].length
    assert sister.fitting["heater"].volume == Quantity(0.0227, "told", 0.1)
    assert sister.fitting["heater"].note == "behind the bed"
    assert sister.fitting["pump"].flow == Quantity(2e-4, "told", 0.3)
    assert sister.fitting["pump"].cut_off == SMALL.fitting["pump"].cut_off


@pytest.mark.parametrize("number", ["", "two words", SMALL.id])
def test_a_wrong_number_is_refused(number: str) -> None:
    """Guards that the sister gets a number of its own that a card can have."""
    with pytest.raises(CardError):
        sister_card(SMALL, number)


def test_an_empty_name_is_refused() -> None:
    """Guards the name."""
    with pytest.raises(CardError, match="name"):
        sister_card(SMALL, "HL-900", " ")


def test_only_what_the_floor_plan_has_is_asked() -> None:
    """Guards the questions against the card."""
    asked = what_differs(SMALL)
    assert set(QUESTIONS) - set(asked) == {"appliances"}
    without = without_fitting(SMALL, "outside-shower")
    assert without is not None
    assert "outside shower shut-off" not in what_differs(without)
    assert {key for path in CARDS for key in what_differs(load_card(path))} == set(QUESTIONS)


def guess(share: float, value: float = 1.0) -> Quantity:
    """Give a guess."""
    return Quantity(value, "guessed", share)


def test_a_card_made_anew_keeps_what_was_known() -> None:
    """Guards lengths measured, narrower guesses, volumes learned, notes, names and access."""
    known = edited(
        SMALL, "tank-stub", length=Quantity(0.9, "measured", 0.02), access="sealed", note="behind"
    )
    known = edited(known, "suction-d", volume=Quantity(3e-5, "measured", 0.02))
    known = edited(known, "toilet", name="the throne", makers_steps=("Push twice.",))
    again = with_known(SMALL, known)
    assert again.line["tank-stub"].length == Quantity(0.9, "measured", 0.02)
    assert (again.line["tank-stub"].access, again.line["tank-stub"].note) == ("sealed", "behind")
    assert again.line["suction-d"].volume == Quantity(3e-5, "measured", 0.02)
    assert again.fitting["toilet"].name == "the throne"
    assert again.card_hash == known.card_hash
    assert plumbing_faults(again) == ()


@pytest.mark.parametrize(
    ("fresh", "known", "taken"),
    [
        (guess(0.25), Quantity(0.9, "told", 0.5), True),
        (guess(0.25), guess(0.1, 0.9), True),
        (guess(0.25), guess(0.3, 0.9), False),
        (Quantity(1.0, "told", 0.1), Quantity(0.9, "measured", 0.02), False),
        (Quantity(1.0, "measured", 0.02), Quantity(0.9, "measured", 0.01), False),
    ],
)
def test_only_guesses_give_way(fresh: Quantity, known: Quantity, *, taken: bool) -> None:
    """Guards that what the fresh card was told or has measured stands."""
    new, old = (edited(SMALL, "tank-stub", length=length) for length in (fresh, known))
    assert with_known(new, old).line["tank-stub"].length == (known if taken else fresh)


def test_another_thing_of_the_same_name_teaches_nothing() -> None:
    """Guards ends, kind and tube: only what is the same part gives its numbers."""
    measured = Quantity(0.9, "measured", 0.02)
    known = edited(SMALL, "tank-stub", length=measured, volume=measured)
    tube = edited(SMALL, "tank-stub", size="3/8")
    assert with_known(tube, known).line["tank-stub"].length == measured
    assert with_known(tube, known).line["tank-stub"].volume is None
    line = SMALL.line["tank-stub"]
    other = edited(known, "tank-stub", end=line.start, start=SMALL.line["suction-d"].end)
    assert with_known(SMALL, other).line["tank-stub"] == line
    heater = edited(SMALL, "toilet", kind="gravity toilet", note="old")
    assert with_known(SMALL, heater).fitting["toilet"] == SMALL.fitting["toilet"]


def test_a_length_that_no_longer_reaches_is_left() -> None:
    """Guards that the card still holds together after a tank was moved."""
    known = edited(SMALL, "tank-stub", length=Quantity(0.9, "measured", 0.02), note="behind")
    far = edited(SMALL, "fresh-tank", at=Position(4.0, 0.8, -0.2))
    moved = edited(far, "tank-stub", length=guess(0.25, 4.0))
    again = with_known(moved, known)
    assert plumbing_faults(again) == ()
    assert again.line["tank-stub"].length == guess(0.25, 4.0)
    assert again.line["tank-stub"].note == "behind"


def test_only_known_parts_are_touched() -> None:
    """Guards that a part of the fresh card only stays as it is."""
    without = without_fitting(SMALL, "outside-shower")
    assert without is not None
    again = with_known(SMALL, without)
    assert again.card_hash == SMALL.card_hash
    assert all(isinstance(part, Fitting | Line) for part in (*again.fittings, *again.lines))
