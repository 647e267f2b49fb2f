"""The posterior of a worn rod against adaptive quadrature of the same law."""

import math
from collections.abc import Callable
from datetime import date

import pytest
from scipy import integrate, stats

from wintertight.procedure.wear import RodReading, anode_of

MIDDLE = math.exp(-math.log(5.0) / 2.0)
WIDTH = math.log(5.0) / 2.0 / float(stats.norm.ppf(0.9))
"""One rod in ten lasts less than a season, one in ten more than five: a log-normal law."""

YEARS = (2023, 2024, 2025)
LOOKS = [(0.12, 0.2, 0.36), (0.3, 0.25, 0.45), (0.05, 0.4, 0.7)]
NOW = date(2025, 10, 1)


def seasons(year: int) -> float:
    """Give the seasons from the first look."""
    return (date(year, 10, 1) - date(YEARS[0], 10, 1)).days / 365.25


def density(start: float, rate: float, shares: tuple[float, ...]) -> float:
    """Give how likely a rate and three looks are, but for a factor."""
    found = -0.5 * (math.log(rate / MIDDLE) / WIDTH) ** 2 - math.log(rate)
    for year, share in zip(YEARS, shares, strict=True):
        found -= 0.5 * ((share - min(1.0, start + rate * seasons(year))) / 0.1) ** 2
    return math.exp(found)


def integral(of: Callable[[float, float], float], until: Callable[[float], float]) -> float:
    """Integrate over rates and first shares, up to a first share for each rate."""
    found, _ = integrate.dblquad(
        of, 0.005, 4.0, 0.0, lambda rate: min(1.0, max(0.0, until(rate))), epsabs=1e-7, epsrel=1e-5
    )
    return float(found)


@pytest.mark.parametrize("shares", LOOKS)
def test_the_chance_of_half_by_the_next_autumn(shares: tuple[float, ...]) -> None:
    """Guards the chance that decides, and the band of the share, against double integrals."""

    def below(share: float, ahead: float) -> float:
        """Give the weight of less than a share being eaten some seasons from now."""
        after = seasons(YEARS[-1]) + ahead
        return integral(lambda s, r: density(s, r, shares), lambda rate: share - rate * after)

    whole = integral(lambda s, r: density(s, r, shares), lambda _: 1.0)
    looks = tuple(
        RodReading(date(y, 10, 1), share, 0.1) for y, share in zip(YEARS, shares, strict=True)
    )
    found = anode_of("heater", looks, NOW)
    assert found.chance == pytest.approx(1.0 - below(0.5, 1.0) / whole, abs=0.01)
    assert found.share_now is not None
    for share, chance in ((found.share_now.p05, 0.05), (found.share_now.p50, 0.5)):
        assert below(share, 0.0) / whole == pytest.approx(chance, abs=0.01)
