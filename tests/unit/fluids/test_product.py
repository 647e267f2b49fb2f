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
    """Guards that shares above 1 and an empty container are refused."""
    with pytest.raises(OutOfRange):
        Product("x", 0.7, 0.5, None, None, 0.003785)
    with pytest.raises(OutOfRange):
        Product("x", 0.7, None, None, None, 0.0)
