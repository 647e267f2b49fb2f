"""Text as it is printed."""

import pytest

from wintertight.documents.printed_text import MINUS, NO_BREAK, printed


@pytest.mark.parametrize(
    ("text", "is_printed"),
    [
        ("to -10 °F;", f"to {MINUS}10{NO_BREAK}°F;"),
        ("(-0.5 °C)", f"({MINUS}0.5{NO_BREAK}°C)"),
        ("Heron pink -50, 3.5 gal", f"Heron pink -50, 3.5{NO_BREAK}gal"),
        ("2025-10-14, 3-way", "2025-10-14, 3-way"),
        ("1 min 20 s and 5 %", f"1{NO_BREAK}min 20{NO_BREAK}s and 5{NO_BREAK}%"),
        ("27 ft, 58 shelves, 2 hours", f"27{NO_BREAK}ft, 58 shelves, 2 hours"),
        ("ice -12", "ice -12"),
    ],
)
def test_signs_and_units(text: str, is_printed: str) -> None:
    """Guards that a temperature below zero cannot be misread, and names stay as they are."""
    assert printed(text) == is_printed


def test_everything_else_stays() -> None:
    """Guards that numbers, truths and nothing are handed on, however deep they stand."""
    content = {"a": [1, None, True, {"b": "2 L"}], "c": ("3 s",)}
    assert printed(content) == {
        "a": [1, None, True, {"b": f"2{NO_BREAK}L"}],
        "c": [f"3{NO_BREAK}s"],
    }
