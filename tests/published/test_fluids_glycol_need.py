from collections.abc import Callable

import pytest

from wintertight.cold.glycol_need import burst_need_by_ice, freeze_need
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
    (-50, "57", None),
]
WHY_FREEZE = "whole percents, of another freezing curve than the handbook's"
WHY_BURST = (
    "one ice fraction stands for a printed column whose own runs from 0.30 to 0.35, most apart "
    "(1.06) at 10 degF; a verdict takes the larger of the two needs"
)


@pytest.mark.parametrize(("degrees", "freeze", "burst"), ROWS)
def test_glycol_for_freeze_and_burst_protection(
    published: Callable[..., None], degrees: int, freeze: str, burst: str | None
) -> None:
    """Guards the freezing curve and the one ice fraction against the printed need of glycol."""
    temperature = fahrenheit_to_celsius(degrees)
    published(
        "math-for-hvacr",
        f"glycol that keeps from freezing at {degrees} degF [% of volume]",
        freeze,
        100.0 * freeze_need(temperature),
        0.6,
        WHY_FREEZE,
        place="p. 97",
    )
    if burst is not None:
        published(
            "math-for-hvacr",
            f"glycol that keeps from bursting at {degrees} degF, by 0.334 of ice [% of volume]",
            burst,
            100.0 * burst_need_by_ice(temperature),
            1.1,
            WHY_BURST,
            place="p. 97",
        )
