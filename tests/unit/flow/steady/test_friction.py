import numpy as np
import pytest

from wintertight.flow.steady.friction import FRICTION_PRODUCTS, FrictionLaw

LAWS: tuple[FrictionLaw, ...] = ("churchill", "epanet", "colebrook")


@pytest.mark.parametrize("law", LAWS)
@pytest.mark.parametrize("roughness", [0.0, 1e-3, 0.03])
def test_slope_is_the_derivative(law: FrictionLaw, roughness: float) -> None:
    """Guards Newton's step: the slope given is that of the product, by small differences."""
    reynolds = np.geomspace(2.0, 1e7, 300)
    rough = np.full_like(reynolds, roughness)
    product, slope = FRICTION_PRODUCTS[law](reynolds, rough)
    above, _ = FRICTION_PRODUCTS[law](reynolds * (1.0 + 1e-6), rough)
    below, _ = FRICTION_PRODUCTS[law](reynolds * (1.0 - 1e-6), rough)
    assert np.abs((above - below) / 2e-6 - slope).max() < 1e-7 * product.max()


@pytest.mark.parametrize("law", LAWS)
def test_loss_rises_with_the_flow(law: FrictionLaw) -> None:
    """Guards a single solution: through the change to turbulence the loss never falls."""
    reynolds = np.geomspace(1.0, 1e6, 4000)
    for roughness in (0.0, 1e-4, 1e-2):
        product, _ = FRICTION_PRODUCTS[law](reynolds, np.full_like(reynolds, roughness))
        assert (np.diff(product * reynolds) > 0.0).all()


@pytest.mark.parametrize("law", LAWS)
def test_water_at_rest_has_a_finite_resistance(law: FrictionLaw) -> None:
    """Guards lines at rest: at Re 0 the product is 64, without a division by zero."""
    product, slope = FRICTION_PRODUCTS[law](np.zeros(1), np.full(1, 1e-4))
    assert product[0] == pytest.approx(64.0, rel=1e-9)
    assert slope[0] == pytest.approx(0.0, abs=1e-9)
