import numpy as np
import pytest

from wintertight.errors import OutOfRange
from wintertight.fluids.contents import Contents
from wintertight.fluids.transport import kinematic_viscosity, transport
from wintertight.fluids.water import density_water, viscosity_water


def test_the_fast_way_agrees_with_the_plain_way() -> None:
    """Guards that the ladder of viscosities gives what the correlation gives."""
    shares = np.linspace(0.0, 0.60, 97)
    fast = kinematic_viscosity(shares, 7.5)
    for share, nu in zip(shares, fast, strict=True):
        plain = transport(Contents(glycol=float(share)), 7.5)
        assert plain.viscosity_Pa_s is not None
        assert plain.density_kg_m3 is not None
        assert nu == pytest.approx(plain.viscosity_Pa_s / plain.density_kg_m3, rel=1e-5)


def test_no_antifreeze_is_pure_water() -> None:
    """Guards that the mixtures meet pure water exactly at no antifreeze."""
    for t in (0.0, 5.0, 20.0, 40.0):
        water = transport(Contents(), t)
        assert water.density_kg_m3 == pytest.approx(density_water(t), rel=1e-12)
        assert water.viscosity_Pa_s == pytest.approx(viscosity_water(t), rel=1e-12)
        nearly = transport(Contents(ethanol=1e-9), t)
        assert nearly.viscosity_Pa_s == pytest.approx(viscosity_water(t), rel=1e-6)


def test_viscosity_rises_with_glycol_and_with_cold() -> None:
    """Guards that more glycol and colder both flow slower."""
    shares = np.linspace(0.0, 0.60, 121)
    for t in (0.0, 5.0, 10.0, 20.0, 30.0, 40.0):
        assert (np.diff(kinematic_viscosity(shares, t)) > 0.0).all()
    warm, cold = kinematic_viscosity(shares, 20.0), kinematic_viscosity(shares, 10.0)
    assert (cold > warm).all()


@pytest.mark.parametrize(
    ("contents", "temperature", "why"),
    [
        (Contents(), -1.0, "frozen"),
        (Contents(glycol=0.3), -20.0, "frozen"),
        (Contents(rated=1.0), 10.0, "product unknown"),
        (Contents(glycol=0.2, ethanol=0.2), 10.0, "blend"),
        (Contents(air=0.1), 10.0, "air"),
        (Contents(glycol=0.7), 10.0, "too rich"),
        (Contents(ethanol=0.5), -30.0, "freezing point unknown"),
    ],
)
def test_says_why_there_is_no_value(contents: Contents, temperature: float, why: str) -> None:
    """Guards that undefined density and viscosity are None with the reason."""
    found = transport(contents, temperature)
    assert (found.density_kg_m3, found.viscosity_Pa_s, found.why_null) == (None, None, why)


def test_refuses_what_does_not_flow() -> None:
    """Guards that the fast way refuses frozen, too rich and undefined shares."""
    for shares, t in (([0.2], -20.0), ([0.61], 10.0), ([float("nan")], 10.0), ([0.1], 41.0)):
        with pytest.raises(OutOfRange):
            kinematic_viscosity(np.array(shares), t)
    with pytest.raises(OutOfRange):
        transport(Contents(), -36.0)
    with pytest.raises(OutOfRange):
        density_water(float("nan"))
