from collections.abc import Callable

import pytest

from wintertight.fluids.water import FULLEST_CLOSED_CAVITY, GROWTH_ON_FREEZING, viscosity_water


def test_water_grows_on_freezing(published: Callable[..., None]) -> None:
    """Guards the growth of water on freezing, and how full a closed cavity may be."""
    published("crc", "growth of water on freezing [%]", "9.07", 100.0 * GROWTH_ON_FREEZING)
    published(
        "crc",
        "fullest closed cavity that survives freezing [%]",
        "91.7",
        100 * FULLEST_CLOSED_CAVITY,
    )


@pytest.mark.parametrize(("temperature", "printed"), [(0, "1.792"), (20, "1.0016"), (40, "0.6527")])
def test_viscosity_of_water(published: Callable[..., None], temperature: int, printed: str) -> None:
    """Guards the viscosity of water against the handbook's table."""
    why = "the handbook takes its value at 0.1 MPa from another edition of the formula"
    published(
        "crc",
        f"viscosity of water at {temperature} degC [mPa s]",
        printed,
        1000.0 * viscosity_water(temperature),
        0.0005 if temperature == 0 else None,
        why if temperature == 0 else "",
        place="viscosity of liquid water (from memory)",
    )
