import math

import pytest

from wintertight.cold.cooling import (
    CONDUCTIVITY_FOAM,
    STILL_AIR,
    coefficient_at_bore,
    cooling_s,
    insulation_resistance,
    wind_coefficient,
)


def test_a_bare_tube_without_wall_has_the_coefficient_of_its_air() -> None:
    """Guards the loss at the bore: still air, and wind where it takes more."""
    assert coefficient_at_bore(0.02, 0.02, 0.0, 0.0) == pytest.approx(STILL_AIR)
    assert coefficient_at_bore(0.02, 0.02, 0.0, 5.0) == pytest.approx(wind_coefficient(5.0, 0.02))
    assert coefficient_at_bore(0.02, 0.02, 0.0, 0.01) == pytest.approx(STILL_AIR)


def test_a_larger_outside_loses_more() -> None:
    """Guards that the air takes heat from the outside of a tube, not from its bore."""
    assert coefficient_at_bore(0.02, 0.03, 0.0, 0.0) == pytest.approx(1.5 * STILL_AIR)


def test_a_sleeve_stands_in_series_with_the_air() -> None:
    """Guards sleeve and air by hand, for each metre of tube."""
    inner, outer = 0.02, 0.046
    each_metre = insulation_resistance(inner, outer, CONDUCTIVITY_FOAM)
    each_metre += 1.0 / (STILL_AIR * math.pi * outer)
    ours = coefficient_at_bore(0.02, inner, 0.013, 0.0)
    assert ours == pytest.approx(1.0 / (each_metre * math.pi * 0.02), rel=1e-12)


def test_cooling_ends_at_once_or_never() -> None:
    """Guards the ends: as cold already, and air that is no colder."""
    assert cooling_s(100.0, 0.0, -5.0, 0.0) == 0.0
    assert cooling_s(100.0, 5.0, 0.0, 0.0) == math.inf
