from collections.abc import Callable

from wintertight.fluids.water import FULLEST_CLOSED_CAVITY, GROWTH_ON_FREEZING


def test_water_grows_on_freezing(published: Callable[..., None]) -> None:
    """Guards the growth of water on freezing, and how full a closed cavity may be."""
    published("crc", "growth of water on freezing [%]", "9.07", 100.0 * GROWTH_ON_FREEZING)
    published(
        "crc",
        "fullest closed cavity that survives freezing [%]",
        "91.7",
        100 * FULLEST_CLOSED_CAVITY,
    )
