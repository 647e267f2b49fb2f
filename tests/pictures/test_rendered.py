"""Labels as a real browser sets them: none touches another, none leaves the paper."""

import pytest

from tests.intake.described import drawn
from tests.pictures.browser import Browser
from tests.pictures.conftest import CARDS, plan_of
from wintertight.coach.intake.made import made_card
from wintertight.documents.drawing.of_plan import plan_pictures
from wintertight.documents.drawing.picture import Label, Picture
from wintertight.documents.drawing.pictures import whole_coach
from wintertight.documents.drawing.svg_text import svg_text
from wintertight.documents.drawing.views import View

COACHES = 300


def test_labels_of_drawn_coaches_do_not_touch(page: Browser) -> None:
    """Guards the pipe drawing of three hundred coaches made from drawn answers."""
    for seed in range(COACHES):
        card = made_card(drawn(seed), f"R-{seed}", "drawn")
        assert page.rendered(svg_text(whole_coach(card))).faults() == [], seed


@pytest.mark.parametrize("card", CARDS)
def test_labels_of_every_picture_of_a_plan_do_not_touch(page: Browser, card: str) -> None:
    """Guards all pictures of the demo's plans: steps, fronts and the end."""
    pictures = [shown.picture for shown in plan_pictures(plan_of(card))]
    assert len(pictures) > 3
    for picture in pictures:
        rendered = page.rendered(svg_text(picture))
        assert rendered.boxes
        assert rendered.faults() == [], picture.name


@pytest.mark.parametrize("view", ["plan", "side"])
@pytest.mark.parametrize("card", CARDS)
def test_labels_of_other_views_do_not_touch(page: Browser, card: str, view: View) -> None:
    """Guards plan and side view of whole coaches."""
    picture = whole_coach(plan_of(card).card, view=view)
    assert page.rendered(svg_text(picture)).faults() == []


def test_touching_labels_are_found(page: Browser) -> None:
    """Guards the check itself: two labels in one place, and one over the edge, are told."""
    labels = (
        Label(("bypass valve",), 100.0, 100.0),
        Label(("water heater",), 140.0, 104.0),
        Label(("kitchen tap",), 380.0, 20.0),
    )
    edge = (0.0, 0.0, 400.0, 200.0)
    picture = Picture("x", "x", "x", 400.0, 200.0, edge, (), (), labels)
    assert page.rendered(svg_text(picture)).faults() == [
        "'bypass valve' touches 'water heater'",
        "'kitchen tap' leaves the paper",
    ]
