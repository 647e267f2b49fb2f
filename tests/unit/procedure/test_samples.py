import pytest

from wintertight.fluids.product import Product
from wintertight.procedure.samples import likelihood_pink, strongest_with_ice

GLYCOL = Product("glycol", 0.35, None, None, None, 0.004)
SPIRIT = Product("spirit", None, 0.28, None, None, 0.004)


@pytest.mark.parametrize(("share", "likely"), [(1.0, 0.98), (0.1, 0.90), (0.0, 0.02)])
def test_pink_is_as_likely_as_the_trade_says(share: float, likely: float) -> None:
    """Guards the likelihood of colour at full strength, at a tenth and at nothing."""
    assert likelihood_pink(share) == pytest.approx(likely, abs=1e-6)


def test_colour_says_little_of_strength() -> None:
    """Guards that half strength is called pink nearly as often as all, and more never less."""
    likely = [likelihood_pink(n / 100.0) for n in range(-5, 106)]
    assert likely == sorted(likely)
    assert likelihood_pink(1.0) - likelihood_pink(0.5) < 0.01


@pytest.mark.parametrize(
    ("degF", "printed"), [(19.2, 0.194), (9.2, 0.294), (2.4, 0.344), (-28.3, 0.499)]
)
def test_slush_is_no_stronger_than_the_printed_table(degF: float, printed: float) -> None:
    """Guards the bound from a slushy glycol sample against rows of the handbook's table."""
    bound = strongest_with_ice((degF - 32.0) / 1.8, GLYCOL, solid=False)
    assert bound.glycol == pytest.approx(printed, abs=0.0006)


@pytest.mark.parametrize(("degC", "mass"), [(-10.6, 0.203), (-16.0, 0.267)])
def test_slushy_ethanol_is_no_stronger_than_its_printed_table(degC: float, mass: float) -> None:
    """Guards the bound from an ethanol sample against rows of the other table, by mass."""
    share = strongest_with_ice(degC, SPIRIT, solid=False).ethanol
    grams = 789.0 * share
    assert grams / (grams + 998.2 * (1.0 - share)) == pytest.approx(mass, abs=0.0006)


@pytest.mark.parametrize("product", [GLYCOL, SPIRIT])
def test_solid_is_weaker_than_slush(product: Product) -> None:
    """Guards the order of the two bounds, and that both end at water."""
    slush = strongest_with_ice(-18.0, product, solid=False)
    solid = strongest_with_ice(-18.0, product, solid=True)
    assert 0.0 < solid.glycol + solid.ethanol < 0.75 * (slush.glycol + slush.ethanol)
    assert strongest_with_ice(1.0, product, solid=False).water == 1.0
