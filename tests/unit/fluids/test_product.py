from decimal import Decimal

import pytest

from wintertight.errors import OutOfRange
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product


def test_unknown_composition_is_rated() -> None:
    """Guards that a label without a composition gives contents known by rating only."""
    product = Product("pink", None, None, -45.6, -12.2, 0.003785, Decimal("4.50"))
    assert product.contents() == Contents(rated=1.0)


def test_a_share_that_is_known_is_used() -> None:
    """Guards that a printed glycol share is the glycol of the contents."""
    assert Product("forty", 0.4, None, None, None, 0.003785).contents() == Contents(glycol=0.4)


def test_a_label_counts_ethanol_after_mixing() -> None:
    """Guards that a label's ethanol, counted in the shrunken mixture, is not overrated."""
    contents = Product("spirit", None, 0.4, None, None, 0.003785).contents()
    assert 0.38 < contents.ethanol < 0.395
    rich = Product("spirit", None, 0.99, None, None, 0.003785).contents()
    assert 0.9 < rich.ethanol < 0.99


def test_refuses_impossible_products() -> None:
    """Guards that shares above 1, an empty container and less than no stock are refused."""
    with pytest.raises(OutOfRange):
        Product("x", 0.7, 0.5, None, None, 0.003785)
    with pytest.raises(OutOfRange):
        Product("x", 0.7, None, None, None, 0.0)
    with pytest.raises(OutOfRange):
        Product("x", 0.7, None, None, None, 0.003785, stock=-1)


def test_forty_by_volume_is_a_third_by_mass() -> None:
    """Guards the alcoholometer's pair of 40 % by volume and 33.3 % by mass at 20 degC."""
    # The pair and both densities are those of the alcoholometric tables, from memory.
    mass_share, ethanol, water = 0.333, 789.24, 998.2
    parts = mass_share / ethanol, (1.0 - mass_share) / water
    before = Product("spirit", None, 0.40, None, None, 0.003785).contents().ethanol
    assert before == pytest.approx(parts[0] / sum(parts), abs=5e-4)
    assert Product("water", 0.0, None, None, None, 0.003785).contents() == Contents()


def test_an_empty_container_is_named() -> None:
    """Guards the message: it says which product holds nothing."""
    with pytest.raises(OutOfRange, match="container of pink must hold something"):
        Product("pink", 0.4, None, None, None, -1.0)
