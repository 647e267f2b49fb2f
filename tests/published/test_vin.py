"""Check digits of identification numbers that public bodies print as examples."""

from collections.abc import Callable

import pytest

from wintertight.coach.vin import VALUES, WEIGHTS, has_right_check_digit, vin_check_digit

SOURCE = "49-cfr-565.15"

PRINTED = [
    ("1G4AH59H45G118341", "411", "4", "paragraph (c), table Calculation of a Check Digit"),
    ("1J9RP1A36A1644345", "314", "6", "Outline for New Manufacturer Information, NHTSA, p. 18"),
]
"""Number, sum of products, check digit, place."""


@pytest.mark.parametrize(("vin", "total", "digit", "place"), PRINTED)
def test_check_digit_of_a_printed_number(
    published: Callable[..., None], vin: str, total: str, digit: str, place: str
) -> None:
    """Guards weights and values of the check digit against the sums printed in the rule."""
    ours = sum(VALUES[letter] * weight for letter, weight in zip(vin, WEIGHTS, strict=True))
    published(SOURCE, "sum of products [1]", total, ours, place=place)
    published(SOURCE, "check digit [1]", digit, float(vin_check_digit(vin)), place=place)
    assert has_right_check_digit(vin)
