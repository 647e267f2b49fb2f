from collections.abc import Callable
from math import pi

import pytest

from wintertight.coach.tubing import bore
from wintertight.flow.steady.friction import friction_factor_colebrook
from wintertight.fluids.water import density_water, viscosity_water
from wintertight.units import FOOT_M, GALLON_M3, INCH_M, PSI_PA

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
    # 0.0005 in: the middle of the tolerance of 1 in tube falls between two thousandths.
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


def test_loss_in_half_inch_pex(published: Callable[..., None]) -> None:
    """Guards the pressure lost in 100 ft of 1/2 in tube against a maker's loss table."""
    inside = bore("1/2").largest_bore_m
    speed = 3.0 * GALLON_M3 / 60.0 / (pi / 4.0 * inside**2)
    rho, mu = density_water(20.0), viscosity_water(20.0)
    factor = float(friction_factor_colebrook(rho * speed * inside / mu, 1.5e-6 / inside))
    loss = factor * 100.0 * FOOT_M / inside * 0.5 * rho * speed**2
    published(
        "pex-loss-table",
        "loss in 100 ft of 1/2 in PEX, 3 gal/min of water at 20 degC [psi]",
        "11.0",
        loss / PSI_PA,
        1.1,
        "loss tables are made with a rounded formula; 10 % covers the tables seen",
    )
