import pytest

from wintertight.coach.kinds import Pocket
from wintertight.cold.burst import burst_limit_degC, glycol_needed, survives
from wintertight.errors import OutOfRange
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product

# ruff: noqa: FBT001 - values of a table or of a strategy are given by name

PINK = Product("pink", None, None, -45.6, -12.2, 0.003785)
NO_PROMISE = Product("plain", None, None, None, None, 0.003785)


@pytest.mark.parametrize(
    ("contents", "low", "pocket", "relieved", "safe", "key"),
    [
        (Contents(), 1.5, "sealed", False, True, "does not freeze"),
        (Contents(), 0.5, "sealed", False, False, "freezes"),
        (Contents(), -5.0, "open", False, False, "slush bursts"),
        (Contents.all_air(), -60.0, "sealed", False, True, "nothing there"),
        (Contents(air=0.0832), -60.0, "sealed", False, True, "room in the air"),
        (Contents(air=0.0831), -60.0, "sealed", False, False, "freezes"),
        (Contents(glycol=0.35), -28.9, "open", False, True, "slush is harmless"),
        (Contents(glycol=0.35), -28.9, "relieved", True, True, "slush is harmless"),
        (Contents(glycol=0.35), -28.9, "relieved", False, False, "freezes"),
        (Contents(glycol=0.35), -28.9, "sealed", True, False, "freezes"),
        (Contents(glycol=0.55), -28.9, "sealed", False, True, "does not freeze"),
        (Contents(glycol=0.5), -55.0, "open", False, None, "beyond the table"),
        (Contents(glycol=0.3), -55.0, "open", False, False, "slush bursts"),
        (Contents(glycol=0.7), -55.0, "sealed", False, None, "beyond the table"),
        (Contents(ethanol=0.4), -20.0, "sealed", False, True, "does not freeze"),
        (Contents(ethanol=0.3), -20.0, "open", False, None, "no burst curve"),
        (Contents(ethanol=0.1), -20.0, "open", False, False, "slush bursts"),
        (Contents(ethanol=0.3), -20.0, "sealed", False, False, "freezes"),
        (Contents(glycol=0.2, ethanol=0.2), -20.0, "open", False, None, "blend"),
        (Contents(glycol=0.01, ethanol=0.01), -20.0, "open", False, False, "blend"),
    ],
)
def test_judges_a_pocket(  # noqa: PLR0913, PLR0917 - one row of the table
    contents: Contents,
    low: float,
    pocket: Pocket,
    relieved: bool,
    safe: bool | None,
    key: str,
) -> None:
    """Guards the judgement of each kind of pocket and content."""
    judged = survives(contents, low, pocket, relieved=relieved)
    assert (judged.safe, judged.reason_key) == (safe, key)


@pytest.mark.parametrize(
    ("share", "low", "pocket", "product", "safe", "key"),
    [
        (1.0, -40.0, "open", PINK, True, "rating holds"),
        (1.0, -44.6, "open", PINK, True, "rating holds"),
        (1.0, -45.0, "open", PINK, False, "rating is too warm"),
        (1.0, -11.0, "sealed", PINK, True, "rating holds"),
        (1.0, -12.0, "sealed", PINK, False, "rating is too warm"),
        (1.0, -5.0, "open", NO_PROMISE, None, "no rating"),
        (1.0, -5.0, "open", None, None, "no rating"),
        (0.98, -5.0, "open", PINK, None, "diluted product"),
        (0.98, -45.0, "open", PINK, False, "diluted product"),
        (0.02, -25.0, "open", PINK, False, "diluted product"),
    ],
)
def test_unknown_product_is_judged_by_its_rating(  # noqa: PLR0913, PLR0917 - one row of the table
    share: float,
    low: float,
    pocket: Pocket,
    product: Product | None,
    safe: bool | None,
    key: str,
) -> None:
    """Guards that an unknown product is judged undiluted, by its printed rating, 1 K colder."""
    judged = survives(Contents(rated=share), low, pocket, relieved=False, product=product)
    assert (judged.safe, judged.reason_key) == (safe, key)
    assert judged.freezing_point_degC is None
    assert judged.ice_fraction is None


def test_only_glycol_has_a_burst_limit() -> None:
    """Guards that a burst limit is given for water and glycol alone, else a reason."""
    assert burst_limit_degC(Contents()) == (0.0, None)
    assert burst_limit_degC(Contents(ethanol=0.3)) == (None, "no burst curve")
    assert burst_limit_degC(Contents(rated=1.0)) == (None, "product unknown")
    assert burst_limit_degC(Contents(glycol=0.2, ethanol=0.2)) == (None, "blend")
    assert burst_limit_degC(Contents.all_air()) == (None, "no liquid")


@pytest.mark.parametrize(
    ("pocket", "relieved"), [("open", False), ("relieved", True), ("sealed", False)]
)
@pytest.mark.parametrize("low", [1.5, 0.5, -3.0, -12.0, -28.9, -40.0, -50.0])
def test_the_glycol_needed_is_just_enough(pocket: Pocket, relieved: bool, low: float) -> None:
    """Guards that the share asked for is safe, and that a little less is not."""
    need = glycol_needed(low, pocket, relieved=relieved)
    assert survives(Contents(glycol=need), low, pocket, relieved=relieved).safe is True
    if need > 0.0:
        less = Contents(glycol=need - 1e-4)
        assert survives(less, low, pocket, relieved=relieved).safe is not True


def test_refuses_a_low_beyond_the_tables() -> None:
    """Guards that no share is promised for a cold no table reaches."""
    for pocket in ("open", "sealed"):
        with pytest.raises(OutOfRange):
            glycol_needed(-51.0, pocket, relieved=False)
