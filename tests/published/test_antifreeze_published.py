"""Which label suits, against the printed need of glycol: math-for-hvacr, page 97."""

import pytest

from wintertight.coach.kinds import Pocket
from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.fluids.product import Product
from wintertight.procedure.antifreeze import judge_product
from wintertight.units import fahrenheit_to_celsius

# Temperature [degF], glycol for freeze protection, glycol for burst protection [% of the volume].
ROWS = [
    (20, "18", "12"),
    (10, "29", "20"),
    (0, "36", "24"),
    (-10, "42", "28"),
    (-20, "46", "31"),
    (-30, "50", "33"),
    (-40, "54", "35"),
]
ONE_PERCENT = 1
"""The columns are printed in whole per cent, and not from the handbook's own freezing curve."""


@pytest.mark.parametrize(
    ("degrees", "pocket", "printed"),
    [(row[0], "sealed", row[1]) for row in ROWS] + [(row[0], "open", row[2]) for row in ROWS],
)
def test_a_label_suits_down_to_the_printed_temperature(
    degrees: int, pocket: Pocket, printed: str
) -> None:
    """Guards that one per cent above the printed need suits there, and one below does not."""
    low = fahrenheit_to_celsius(degrees) + VERDICT_MARGIN_K
    answers = []
    for percent in (int(printed) - ONE_PERCENT, int(printed) + ONE_PERCENT):
        product = Product("as printed", percent / 100, None, None, None, 0.003785)
        answers.append(judge_product(product, low, [pocket])[0])
    assert answers == ["does not suit", "suits"]
