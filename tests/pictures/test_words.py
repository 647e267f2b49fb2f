"""Words of a card are words only, also in a drawing."""

import xml.etree.ElementTree as ET

from tests.pictures.conftest import plan_of
from wintertight.coach.edit import changed
from wintertight.documents.drawing.pictures import whole_coach
from wintertight.documents.drawing.svg_text import svg_text


def test_a_name_with_signs_of_the_markup_is_written_as_it_is() -> None:
    """Guards that a name with angle brackets, ampersands or control signs breaks no drawing."""
    strange = 'Tap <b>&amp;"\x07'
    card = plan_of("small-trailer").card
    fittings = tuple(changed(f, name=strange) for f in card.fittings)
    text = svg_text(whole_coach(changed(card, name=strange, fittings=fittings)))
    root = ET.fromstring(text)  # noqa: S314 - our own text
    said = [entry.text for entry in root.iter("{http://www.w3.org/2000/svg}text")]
    assert 'Tap <b>&amp;"' in said
    assert 'Pipe drawing: Tap <b>&amp;"' in [entry.text for entry in root]
