from collections.abc import Callable


def test_water_grows_on_freezing(published: Callable[..., None]) -> None:
    """Guards the growth of water on freezing against the printed densities."""
    published("crc", "growth of water on freezing [%]", "9.07", 100 * (999.84 / 916.7 - 1))
