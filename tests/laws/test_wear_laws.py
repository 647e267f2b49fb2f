"""Laws of a worn rod: sharp readings give the straight line through them, bands hold the truth."""

from collections.abc import Callable
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from wintertight.procedure.wear import YEAR_DAYS, Anode, RodReading, anode_of

START = date(2021, 10, 1)
RANK = {"unknown": 0, "now": 1, "next autumn": 2, "not yet": 3}


def day(seasons: float) -> date:
    """Give the day so many seasons after the start."""
    return START + timedelta(days=round(seasons * YEAR_DAYS))


def from_new(*looks: tuple[float, float], sd: float = 0.1) -> Anode:
    """Work out a rod that was new at the start, from looks after some seasons."""
    some = tuple(RodReading(day(after), share, sd) for after, share in looks)
    return anode_of("heater", (RodReading(START, 0.0, 0.0, new=True), *some), some[-1].on)


@pytest.mark.parametrize("rate", [0.06, 0.09, 0.12])
def test_many_sharp_looks_give_least_squares(rate: float) -> None:
    """Guards the linear Gaussian case: mean and deviation of the slope as in closed form."""
    rng = np.random.default_rng(7)
    seasons = np.repeat([1.0, 2.0, 3.0, 4.0], 8)
    shares = rate * seasons + rng.normal(0.0, 0.02, seasons.size)
    found = from_new(*zip(seasons, shares.clip(1e-9), strict=True), sd=0.02)
    slope = float(seasons @ shares / (seasons @ seasons))
    deviation = 0.02 / float(np.sqrt(seasons @ seasons))
    assert found.share_now is not None
    # With the prior's bend at this rate, less than a tenth of a standard deviation.
    assert found.share_now.p50 == pytest.approx(4.0 * slope, abs=0.15 * 4.0 * deviation)
    width = found.share_now.p95 - found.share_now.p05
    assert width == pytest.approx(2 * 1.6449 * 4.0 * deviation, rel=0.05)


@given(
    first=st.floats(0.02, 0.9),
    more=st.floats(0.01, 0.3),
    seasons=st.floats(0.5, 4.0),
    sd=st.floats(0.03, 0.2),
)
def test_more_eaten_is_never_replaced_later(
    first: float, more: float, seasons: float, sd: float
) -> None:
    """Guards the law: a look that shows more eaten brings the day of replacing no farther off."""
    less, worse = (from_new((seasons, s), sd=sd) for s in (first, min(1.0, first + more)))
    assert less.share_now is not None
    assert worse.share_now is not None
    assert less.seasons_left is not None
    assert worse.seasons_left is not None
    assert worse.share_now.p50 >= less.share_now.p50 - 1e-4
    assert worse.seasons_left.p50 <= less.seasons_left.p50 + 1e-4
    assert RANK[worse.replace] <= RANK[less.replace]


@given(first=st.floats(0.0, 1.0), later=st.floats(0.0, 1.0), seasons=st.floats(0.1, 5.0))
def test_bands_are_in_order(first: float, later: float, seasons: float) -> None:
    """Guards that a band never turns over, whatever was read, and that shares stay shares."""
    looks = (RodReading(START, first, 0.1), RodReading(day(seasons), later, 0.1))
    found = anode_of("heater", looks, looks[-1].on)
    if found.share_now is None:
        assert found.replace == "unknown"
        assert later < first
        return
    assert found.seasons_left is not None
    for band in (found.share_now, found.seasons_left):
        assert 0.0 <= band.p05 <= band.p50 <= band.p95
    assert found.share_now.p95 <= 1.0


def invented(rng: np.random.Generator, rate: float, *, known: bool) -> tuple[Anode, float, float]:
    """Invent a heater that eyes have looked at; give its anode, the true share and what is left."""
    start = 0.0 if known else float(rng.uniform(0.0, 0.4))
    looks = [RodReading(START, 0.0, 0.0, new=True)] if known else []
    share, on = start, START
    for n in range(int(rng.integers(1, 4))):
        on = day(n + known)
        share = min(1.0, start + rate * (on - START).days / YEAR_DAYS)
        looks.append(RodReading(on, float(np.clip(rng.normal(share, 0.1), 0.0, 1.0)), 0.1))
    return anode_of("heater", tuple(looks), on), share, max(0.0, (0.5 - share) / rate)


def missed(
    count: int, seed: int, rate: Callable[[np.random.Generator], float]
) -> tuple[float, float, float]:
    """Give how often the true share is outside its band, and what is left below or above its."""
    rng = np.random.default_rng(seed)
    out = np.zeros(3)
    told = 0
    for n in range(count):
        found, share, left = invented(rng, rate(rng), known=n % 2 == 0)
        if found.share_now is None or found.seasons_left is None:
            continue
        told += 1
        out += (
            not found.share_now.p05 - 1e-3 <= share <= found.share_now.p95 + 1e-3,
            left < found.seasons_left.p05 - 1e-3,
            left > found.seasons_left.p95 + 1e-3,
        )
    assert told > 0.95 * count
    share, below, above = out / told
    return float(share), float(below), float(above)


def test_nine_bands_in_ten_hold_the_truth() -> None:
    """Guards the bands on 2,000 invented heaters whose rates are even, from a tenth to nine."""
    share, below, above = missed(2000, 11, lambda rng: float(rng.uniform(0.1, 0.9)))
    # Nine in ten by name; two per cent is three standard deviations of so many heaters.
    assert share < 0.12
    assert below + above < 0.12


def test_rods_that_hardly_wear_are_taken_out_too_soon_and_not_too_late() -> None:
    """Guards the side of the error where the prior is wrong: rods of five to twenty years."""
    _, below, above = missed(400, 5, lambda rng: float(rng.uniform(0.05, 0.2)))
    assert below < 0.05
    assert above > 0.1
