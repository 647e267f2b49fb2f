from collections.abc import Callable
from math import pi

import pytest

from wintertight.coach.tubing import bore
from wintertight.units import FOOT_M, GALLON_M3, INCH_M

LISTED = [("3/8", "0.50", "0.350"), ("1/2", "0.92", "0.475"), ("3/4", "1.83", "0.671")]
WHY_VOLUME = "makers round the listed volume of 100 ft, by up to one in its last digit"


@pytest.mark.parametrize(("size", "volume", "inside"), [*LISTED, ("1", "3.03", "0.862")])
def test_listed_volume_of_pex(
    published: Callable[..., None], size: str, volume: str, inside: str
) -> None:
    """Guards that the bore at the middle wall gives the volume that makers list."""
    tube = bore(size)
    gallons = pi / 4.0 * tube.middle_bore_m**2 * 100.0 * FOOT_M / GALLON_M3
    published(
        "pex-loss-table",
        f"volume of 100 ft of {size} in PEX [gal]",
        volume,
        gallons,
        0.01,
        WHY_VOLUME,
    )
    published(
        "pex-loss-table",
        f"inside of {size} in PEX, middle wall [in]",
        inside,
        tube.middle_bore_m / INCH_M,
    )


@pytest.mark.parametrize(
    ("size", "inside"), [("3/8", "0.360"), ("1/2", "0.485"), ("3/4", "0.681"), ("1", "0.875")]
)
def test_inside_of_pex_at_the_thinnest_wall(
    published: Callable[..., None], size: str, inside: str
) -> None:
    """Guards that the largest bore is the one the standard's thinnest wall leaves."""
    published(
        "astm-f876",
        f"inside of {size} in PEX, thinnest wall [in]",
        inside,
        bore(size).largest_bore_m / INCH_M,
    )
