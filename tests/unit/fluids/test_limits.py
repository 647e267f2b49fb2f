"""What is said at the ends of the tables, and just beyond them."""

from collections.abc import Callable

import numpy as np
import pytest

from wintertight.errors import OutOfRange
from wintertight.fluids import ethanol, glycol
from wintertight.fluids.contents import Contents
from wintertight.fluids.curve import MonotoneCurve
from wintertight.fluids.slush import freezing_point, ice_fraction
from wintertight.fluids.transport import kinematic_viscosity, transport, viscosity_ladder
from wintertight.fluids.water import density_water, viscosity_water

Share = Callable[[float], float]


@pytest.mark.parametrize(
    ("convert", "what", "highest"),
    [
        (glycol.mass_share_glycol, "a share of the volume", "1"),
        (glycol.volume_share_glycol, "a share of the mass", "1"),
        (ethanol.mass_share_ethanol, "a share of the volume", "1"),
        (ethanol.volume_share_ethanol, "a share of the mass", "1"),
        (glycol.freezing_point_glycol, "glycol's share of the mass", "0.6"),
        (ethanol.freezing_point_ethanol, "ethanol's share of the mass", "0.39"),
    ],
)
def test_a_share_that_cannot_be_is_named(convert: Share, what: str, highest: str) -> None:
    """Guards that a share beyond what is known is refused, with what it is and how far it goes."""
    said = rf"^WT-200 {what} must lie between 0 and {highest}, not 1.2$"
    with pytest.raises(OutOfRange, match=said):
        convert(1.2)


@pytest.mark.parametrize(
    ("liquidus", "said"),
    [
        (
            glycol.liquidus_glycol,
            r"^WT-200 glycol's freezing points are printed from 0 to -51.1 degC$",
        ),
        (
            ethanol.liquidus_ethanol,
            r"^WT-200 ethanol's freezing points are printed from 0 to -28.7 degC$",
        ),
    ],
)
def test_the_range_of_the_ice_line_is_named(liquidus: Share, said: str) -> None:
    """Guards that beyond the ice line the last printed row is named; at 0 degC water is enough."""
    with pytest.raises(OutOfRange, match=said):
        liquidus(-52.0)
    assert liquidus(0.0) == 0.0


def test_pure_antifreeze_is_pure_either_way() -> None:
    """Guards that nothing and everything are the same share by volume and by mass."""
    for convert in (
        glycol.mass_share_glycol,
        glycol.volume_share_glycol,
        ethanol.mass_share_ethanol,
        ethanol.volume_share_ethanol,
    ):
        assert (convert(0.0), convert(1.0)) == (0.0, 1.0)


@pytest.mark.parametrize("rich", [Contents(glycol=0.8), Contents(ethanol=0.6)])
def test_a_mixture_beyond_the_table_says_so(rich: Contents) -> None:
    """Guards the reason that goes with a bound instead of a freezing point."""
    assert freezing_point(rich).why_null == "beyond the table"
    assert freezing_point(rich).point_degC is None


@pytest.mark.parametrize(
    ("more", "less"),
    [(Contents(glycol=0.3, ethanol=0.002), "glycol"), (Contents(0.002, 0.3), "ethanol")],
)
def test_a_trace_is_water_whichever_it_is(more: Contents, less: str) -> None:
    """Guards that of two antifreezes the trace is dropped and the other one counts."""
    alone = Contents(glycol=0.3) if less == "glycol" else Contents(ethanol=0.3)
    assert freezing_point(more) == freezing_point(alone)


def test_a_little_more_than_a_trace_is_a_blend() -> None:
    """Guards that one part in fifty of the other antifreeze is no trace."""
    assert freezing_point(Contents(glycol=0.3, ethanol=0.006)).why_null == "blend"
    assert freezing_point(Contents(glycol=0.006, ethanol=0.3)).why_null == "blend"


def test_all_ice_is_known_as_such() -> None:
    """Guards that frozen water's bound is its share: all of it."""
    assert ice_fraction(Contents(), -5.0).at_least == 1.0


def test_the_ladder_is_water_at_its_foot() -> None:
    """Guards the ladder by water in print: 1.0034e-6 m2/s at 20 degC, 1.787e-6 at 0 degC."""
    # Both from tables of the viscosity of water, 1.0016 and 1.792 mPa s, over its density.
    for temperature, printed in ((20.0, 1.0016e-3 / 998.2), (0.0, 1.792e-3 / 999.84)):
        shares, logs = viscosity_ladder(temperature)
        assert (shares[0], shares[-1]) == (0.0, 0.6)
        assert np.exp(logs[0]) == pytest.approx(printed, rel=2e-3)
        middle = 0.5 * (shares[200] + shares[201])
        read = np.exp(np.interp(middle, shares, logs))
        assert kinematic_viscosity(np.array([middle]), temperature)[0] == read


def test_there_is_no_ladder_below_freezing() -> None:
    """Guards that a ladder from no antifreeze upwards is refused where water is ice."""
    with pytest.raises(OutOfRange, match=r"^WT-200 below freezing not every mixture flows$"):
        viscosity_ladder(-0.1)


def test_what_cannot_flow_is_named() -> None:
    """Guards that a refusal says at which temperature, and from which share on glycol flows."""
    # At -12.67 degC the table's row of 30 % of the mass freezes: 29.4 % of the volume.
    said = r"^WT-200 glycol flows at -12.6667 degC from 0.294 to 0.6 of the volume$"
    with pytest.raises(OutOfRange, match=said):
        kinematic_viscosity(np.array([0.29]), (9.2 - 32.0) / 1.8)
    assert kinematic_viscosity(np.array([0.295]), (9.2 - 32.0) / 1.8)[0] > 0.0
    assert kinematic_viscosity(np.array([]), 20.0).shape == (0,)
    with pytest.raises(
        OutOfRange, match=r"^WT-200 density and viscosity are known here from -35 to 40"
    ):
        transport(Contents(), 41.0)


def test_the_coldest_that_flows_is_the_table_s_coldest() -> None:
    """Guards that the ends of the range belong to it."""
    assert transport(Contents(glycol=0.55), -35.0).viscosity_Pa_s is not None
    assert transport(Contents(glycol=0.55), 40.0).viscosity_Pa_s is not None


@pytest.mark.parametrize("of_water", [density_water, viscosity_water])
def test_water_is_known_from_undercooled_to_boiling(of_water: Share) -> None:
    """Guards that both ends are known and nothing beyond them, and that the range is named."""
    said = "^WT-200 water's properties are known here from -20 to 100 degC$"
    for beyond in (-20.1, 100.1, float("inf")):
        with pytest.raises(OutOfRange, match=said):
            of_water(beyond)
    assert of_water(-20.0) > of_water(100.0) > 0.0


@pytest.mark.parametrize("y", [(0.0, 0.5, 0.3), (0.0, -0.5, -0.3), (0.0, -0.5, -0.5)])
def test_a_curve_that_turns_a_little_is_refused(y: tuple[float, ...]) -> None:
    """Guards that a small turn or rest among printed points is refused like a large one."""
    with pytest.raises(ValueError, match=r"^points must rise in x and strictly rise or fall in y$"):
        MonotoneCurve((0.0, 1.0, 2.0), y)
