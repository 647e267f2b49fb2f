import pytest

from wintertight.fluids.contents import Contents
from wintertight.fluids.slush import freezing_point, ice_fraction


def test_water_is_liquid_at_zero_and_ice_below() -> None:
    """Guards that pure water freezes at exactly 0 degC, and then all of it."""
    assert freezing_point(Contents()).point_degC == 0.0
    assert ice_fraction(Contents(), 0.0).fraction == 0.0
    assert ice_fraction(Contents(), -0.01).fraction == 1.0
    assert ice_fraction(Contents(), -80.0).fraction == 1.0


def test_air_plays_no_part() -> None:
    """Guards that the liquid is judged, however much air lies above it."""
    full, half = Contents(glycol=0.4), Contents(glycol=0.2, air=0.5)
    assert freezing_point(half).point_degC == pytest.approx(freezing_point(full).point_degC)
    assert freezing_point(Contents.all_air()).why_null == "no liquid"


def test_unknown_products_and_blends_have_no_freezing_point() -> None:
    """Guards that what no published curve covers gives no number but a reason."""
    assert freezing_point(Contents(rated=0.1)).why_null == "product unknown"
    assert freezing_point(Contents(glycol=0.2, ethanol=0.2)).why_null == "blend"
    assert ice_fraction(Contents(rated=1.0), -5.0).why_null == "product unknown"
    assert ice_fraction(Contents(rated=1.0), -5.0).fraction is None


def test_a_trace_of_the_other_antifreeze_counts_as_water() -> None:
    """Guards that a rest of another product neither helps nor makes the line unknown."""
    with_trace = freezing_point(Contents(glycol=0.3, ethanol=0.002))
    assert with_trace.point_degC == freezing_point(Contents(glycol=0.3)).point_degC


def test_richer_than_the_table_gives_a_bound() -> None:
    """Guards that a mixture beyond the table has no point but freezes no warmer than its end."""
    rich = freezing_point(Contents(glycol=0.8))
    assert rich.point_degC is None
    assert rich.at_most_degC == pytest.approx((-59.9 - 32) / 1.8)
    assert freezing_point(Contents(ethanol=0.6)).at_most_degC == -28.7
    assert ice_fraction(Contents(glycol=0.8), -50.0).fraction == 0.0


def test_colder_than_the_table_gives_a_bound_on_ice() -> None:
    """Guards that below the table's end ice is known only to be no less than there."""
    colder = ice_fraction(Contents(glycol=0.3), -60.0)
    assert colder.fraction is None
    assert colder.why_null == "beyond the table"
    assert colder.at_least == pytest.approx(1.0 - 0.306 / 0.60, abs=0.002)


def test_ice_follows_the_lever_rule() -> None:
    """Guards the lever rule by a case worked by hand between two printed rows."""
    # 20 % of the mass (19.4 % of the volume) at 9.2 degF, where the liquid holds 30 %: 1 - 20/30.
    ice = ice_fraction(Contents(glycol=0.194), (9.2 - 32) / 1.8)
    assert ice.fraction == pytest.approx(1 / 3, abs=1e-9)
