"""Air against CoolProp."""

import pytest
from CoolProp.CoolProp import PropsSI

from tests.conftest import Published
from wintertight.flow.air.gas import density_air, viscosity_air

WHY_IDEAL = "an ideal gas; no tap is known to a fiftieth of this"
WHY_SUTHERLAND = "Sutherland's formula of 1976 against a fit of 2004"


@pytest.mark.parametrize("pressure_kPa", [101.325, 377.0, 446.0])
@pytest.mark.parametrize("degC", [-5.0, 10.0, 35.0])
def test_air_agrees(published: Published, pressure_kPa: float, degC: float) -> None:  # noqa: N803 - kPa
    """Guards density and viscosity of air up to 50 psi, in the weather of a blow-out."""
    pressure = 1e3 * pressure_kPa
    rho = PropsSI("D", "P", pressure, "T", degC + 273.15, "Air")
    mu = PropsSI("V", "P", pressure, "T", degC + 273.15, "Air")
    at = f"of air at {pressure_kPa:g} kPa and {degC:g} degC"
    ours = density_air(pressure, degC)
    published("coolprop", f"density {at} [kg/m3]", f"{rho:.4f}", ours, 0.003 * rho, WHY_IDEAL)
    ours = 1e6 * viscosity_air(degC)
    published("coolprop", f"viscosity {at} [uPa s]", f"{1e6 * mu:.3f}", ours, 0.2, WHY_SUTHERLAND)
