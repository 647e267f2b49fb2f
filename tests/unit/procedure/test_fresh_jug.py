from typing import Any

import numpy as np
import pytest

from wintertight.fluids.product import Product
from wintertight.procedure.fresh_jug import product_as_read, relative_strength
from wintertight.procedure.record import Reading

GLYCOL = Product("glycol", 0.35, None, None, None, 0.004)
SPIRIT = Product("spirit", None, 0.28, None, None, 0.004)
BLEND = Product("blend", 0.2, 0.1, None, None, 0.004)
RATED = Product("rated", None, None, -45.6, -12.0, 0.004)


def cup(value: float, **more: Any) -> Reading:
    """Give a reading as a share, its uncertainty 0.01 unless it is given."""
    return Reading.model_validate({"kind": "glycol share", "value": value, "sd": 0.01, **more})


def frozen(degC: float, looked: str) -> Reading:
    """Give a sample of the jug from a freezer known to half a degree."""
    fields = {"kind": "freeze sample", "value": degC, "unit": "degC", "sd": 0.5, "looked": looked}
    return Reading.model_validate({**fields, "of": "jug"})


@pytest.mark.parametrize(
    ("shown", "glycol"), [(0.40, 0.35), (0.35, 0.35), (0.34, 0.35), (0.32, 0.30), (0.20, 0.18)]
)
def test_a_jug_weaker_than_its_label_is_a_weaker_product(shown: float, glycol: float) -> None:
    """Guards that a reading beyond two standard deviations counts, on its doubtful side."""
    assert product_as_read(GLYCOL, [cup(shown)]).glycol == pytest.approx(glycol)


def test_the_weakest_jug_counts() -> None:
    """Guards that a good jug does not excuse a bad one."""
    assert product_as_read(GLYCOL, [cup(0.30), cup(0.36), cup(0.25)]).glycol == pytest.approx(0.23)


@pytest.mark.parametrize("product", [SPIRIT, BLEND, RATED])
def test_a_glycol_scale_says_nothing_of_another_jug(product: Product) -> None:
    """Guards that ethanol, blends and rated products are not taken for weak glycol."""
    degrees = Reading(kind="freezing point", value=-2.0, instrument="refractometer")
    assert product_as_read(product, [cup(0.05), degrees]) == product


def test_a_frozen_sample_of_the_jug_counts_for_any_product() -> None:
    """Guards that shares and ratings are taken back as far as a freezer contradicts them."""
    slush, solid = frozen(-10.0, "slush"), frozen(-10.0, "solid")
    assert (product_as_read(GLYCOL, [slush]).glycol or 1.0) < 0.26
    assert (product_as_read(SPIRIT, [slush]).ethanol or 1.0) < 0.25
    assert (product_as_read(GLYCOL, [solid]).glycol or 1.0) < 0.18
    rated = product_as_read(RATED, [slush])
    assert (rated.burst_rating_degC, rated.freeze_rating_degC) == (-45.6, -9.0)
    assert product_as_read(RATED, [solid]).burst_rating_degC == -9.0
    for product in (GLYCOL, SPIRIT, RATED):
        assert product_as_read(product, [frozen(-10.0, "liquid")]) == product
        assert product_as_read(product, [frozen(-40.0, "slush")]) == product


def test_the_ratio_and_its_uncertainty() -> None:
    """Guards the propagated uncertainty against the sum of variances, done by hand."""
    found = relative_strength(cup(0.24, sd=0.006), cup(0.30, sd=0.006))
    assert found is not None
    assert found.strength == pytest.approx(0.8)
    # sqrt(0.006^2 + 0.8^2 0.006^2) / 0.30
    assert found.sd == pytest.approx(0.0256125, abs=1e-7)


def test_an_error_of_zero_is_common_to_both() -> None:
    """Guards that two equal cups are alike however badly the refractometer was zeroed."""
    dry = {"instrument": "refractometer", "zeroed": False}
    alike = relative_strength(cup(0.30, **dry), cup(0.30, **dry))
    apart = relative_strength(cup(0.15, **dry), cup(0.30, **dry))
    between = relative_strength(cup(0.30, **dry), cup(0.30, **{**dry, "zeroed": True}))
    assert alike is not None
    assert apart is not None
    assert between is not None
    assert alike.sd == pytest.approx(2.0**0.5 * 0.01 / 0.30)
    assert apart.sd == pytest.approx((0.01**2 * 1.25 + (0.5 * 0.03) ** 2) ** 0.5 / 0.30)
    assert between.sd == pytest.approx((2.0 * 0.01**2 + 0.03**2) ** 0.5 / 0.30)


def test_the_spread_of_the_ratio_is_that_of_many_readings() -> None:
    """Guards the propagated uncertainty against readings drawn at random."""
    rng = np.random.default_rng(7)
    zero, one, full = 0.03, 0.20, 0.30
    off = zero * rng.standard_normal(200_000)
    drawn = (one + off + 0.004 * rng.standard_normal(off.size)) / (
        full + off + 0.004 * rng.standard_normal(off.size)
    )
    dry = {"instrument": "refractometer", "zeroed": False, "sd": 0.004}
    found = relative_strength(cup(one, **dry), cup(full, **dry))
    assert found is not None
    # First order in the errors; a tenth of the jug's reading is no small error, hence 5 %.
    assert found.sd == pytest.approx(float(np.std(drawn)), rel=0.05)


def test_a_jug_that_shows_nothing_leaves_nothing() -> None:
    """Guards that a scale which does not answer to the product proves no outlet."""
    found = relative_strength(cup(0.1), cup(0.0))
    assert found is not None
    assert found.weakest == 0.0


@pytest.mark.parametrize(
    ("outlet", "jug"),
    [
        (cup(0.3, instrument="hydrometer"), cup(0.3, instrument="refractometer")),
        (cup(0.3, instrument="hydrometer"), cup(0.3)),
        (Reading(kind="looks pink", value=True), cup(0.3)),
        (cup(0.3), frozen(-18.0, "slush")),
        (
            Reading(kind="freezing point", value=-18.0, instrument="freezer"),
            Reading(kind="freezing point", value=-18.0, instrument="freezer"),
        ),
    ],
)
def test_only_one_scale_read_twice_is_compared(outlet: Reading, jug: Reading) -> None:
    """Guards that nothing else gives a ratio."""
    assert relative_strength(outlet, jug) is None


def test_a_vague_reading_of_a_weak_jug_is_no_excuse() -> None:
    """Guards that a jug read weaker counts for less, not for more, where the reading is vague."""
    assert product_as_read(GLYCOL, [cup(0.30, sd=0.05)]).glycol == pytest.approx(0.20)
