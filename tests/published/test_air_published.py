"""Blowing out: the criteria, and how long a receiver lasts, against figures from memory."""

import math

import pytest

from tests.conftest import Published
from tests.unit.flow.laid_coach import laid, outlet, pipe
from wintertight.flow.air.criteria import film_share, nose_velocity, riser_velocity
from wintertight.flow.air.gas import ATMOSPHERE_PA, CUBIC_FOOT_PER_MINUTE, density_air
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import sweep
from wintertight.flow.losses import GALLON_PER_MINUTE, GRAVITY, WATER_DENSITY
from wintertight.flow.state import arriving_state
from wintertight.units import GALLON_M3, INCH_M, PSI_PA

PEX_IN = {"3/8": 0.360, "1/2": 0.485, "3/4": 0.681}
"""Bore of PEX at its minimum wall [in], ASTM F876."""


@pytest.mark.parametrize(
    ("size", "speed", "cfm"), [("3/8", "7.8", "1.1"), ("1/2", "9.0", "2.3"), ("3/4", "10.7", "5.3")]
)
def test_air_that_carries_water_up(published: Published, size: str, speed: str, cfm: str) -> None:
    """Guards the Wallis velocity at a number of 0.9, in air at 1 atm and 20 degC."""
    bore = PEX_IN[size] * INCH_M
    ours = riser_velocity(bore, density_air(ATMOSPHERE_PA, 20.0), 0.9)
    flow = ours * math.pi / 4.0 * bore**2 / CUBIC_FOOT_PER_MINUTE
    published("wallis", f"air that carries water up {size} in PEX [m/s]", speed, ours)
    published("wallis", f"air that carries water up {size} in PEX [ft3/min]", cfm, flow)


@pytest.mark.parametrize(("size", "speed"), [("3/8", "0.162"), ("1/2", "0.188"), ("3/4", "0.223")])
def test_the_nose_of_air(published: Published, size: str, speed: str) -> None:
    """Guards the speed of a nose of air that empties a level tube."""
    ours = nose_velocity(PEX_IN[size] * INCH_M)
    published("benjamin", f"nose of air in level {size} in PEX [m/s]", speed, ours)


def test_the_film_of_the_first_push(published: Published) -> None:
    """Guards the film that a fast push leaves, at a capillary number of 0.0137."""
    viscosity, tension = 1.0e-3, 0.0728
    ours = 100.0 * film_share(0.0137 * tension / viscosity, viscosity, tension)
    published("aussillous-quere", "film at Ca 0.0137, share of the bore [%]", "12.5", ours)


@pytest.mark.parametrize(("gallons", "cfm", "printed"), [(6.0, 2.5, "78"), (1.0, 2.0, "11")])
def test_how_long_a_receiver_holds(
    published: Published, gallons: float, cfm: float, printed: str
) -> None:
    """Guards the receiver at 40 psi against two times noted without their assumptions."""
    # They come out for a tank at 125 psi and a tap that passes 1.8 gal/min of water at 60 psi.
    rated = 1.8 * GALLON_PER_MINUTE
    resistance = 60.0 * PSI_PA / (WATER_DENSITY * GRAVITY) / rated**2
    coach = laid(
        [pipe("line", "a", "b", 3.0), outlet("tap", "b", resistance=resistance)],
        sources={"hose": ("a", 0.0)},
    )
    supply = AirSupply(gallons * GALLON_M3, cfm * CUBIC_FOOT_PER_MINUTE)
    found = sweep(coach, arriving_state(coach), "hose", "tap", supply)
    assert found.burst is not None
    published(
        "memory",
        f"{gallons:g} gal, {cfm:g} ft3/min, 40 psi, an open kitchen tap [s]",
        printed,
        found.burst.holds_s,
        0.02 * float(printed) + 0.5,
        "half a second, and 2 % for the temperature at which free air was counted",
    )
