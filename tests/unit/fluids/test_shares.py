import pytest

from wintertight.errors import OutOfRange
from wintertight.fluids import ethanol, glycol


def test_shares_go_there_and_back() -> None:
    """Guards that mass and volume shares are each other's inverse, for both antifreezes."""
    for k in range(101):
        share = k / 100
        assert glycol.mass_share_glycol(glycol.volume_share_glycol(share)) == pytest.approx(share)
        back = ethanol.mass_share_ethanol(ethanol.volume_share_ethanol(share))
        assert back == pytest.approx(share)


def test_liquidus_is_the_inverse_of_the_freezing_point() -> None:
    """Guards that the liquidus share freezes at the temperature asked for."""
    for t in (-0.1, -3.0, -12.0, -28.7):
        assert glycol.freezing_point_glycol(glycol.liquidus_glycol(t)) == pytest.approx(t)
        assert ethanol.freezing_point_ethanol(ethanol.liquidus_ethanol(t)) == pytest.approx(t)


def test_nothing_is_claimed_beyond_the_tables() -> None:
    """Guards that shares and temperatures without a printed value are refused."""
    for beyond in (0.61, -0.01, float("nan")):
        with pytest.raises(OutOfRange):
            glycol.freezing_point_glycol(beyond)
    for beyond in (0.40, -0.01, float("nan")):
        with pytest.raises(OutOfRange):
            ethanol.freezing_point_ethanol(beyond)
    for t in (0.1, -51.2, float("nan")):
        with pytest.raises(OutOfRange):
            glycol.liquidus_glycol(t)
        with pytest.raises(OutOfRange):
            ethanol.liquidus_ethanol(t)
