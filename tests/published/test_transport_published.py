import numpy as np
import pytest

from tests.conftest import Published
from wintertight.flow.laminar import (
    SeriesKernel,
    kept_share_laminar,
    leaving_share_laminar,
    outlet_section_share_laminar,
)

PLACE = "pp. 343-344"


@pytest.mark.parametrize(("theta", "share"), [("1.58", 0.90), ("2.24", 0.95), ("5.0", 0.99)])
def test_volumes_until_the_tap_is_strong(published: Published, theta: str, share: float) -> None:
    """Guards the volumes of a laminar run that pass until what leaves it has a strength."""
    found = _volumes_until(share)
    what = f"run volumes until what leaves a laminar run is {share:.0%} feed [1]"
    published("levenspiel", what, theta, found, place=PLACE)


def _volumes_until(share: float) -> float:
    """Search by halving."""
    low, high = 0.5, 100.0
    for _ in range(60):
        middle = (low + high) / 2.0
        low, high = (middle, high) if leaving_share_laminar(middle) < share else (low, middle)
    return low


@pytest.mark.parametrize("theta", [0.1, 0.5, 0.6, 1.0, 2.24, 7.0])
def test_what_stays_is_the_mean_over_the_profile(theta: float) -> None:
    """Guards mean and outlet section against streamlines of the published parabolic profile."""
    wall = (np.arange(200_000) + 0.5) / 200_000  # area share of a streamline, 0 at the axis
    filled = np.minimum(2.0 * (1.0 - wall) * theta, 1.0)
    assert float(kept_share_laminar(theta)) == pytest.approx(filled.mean(), abs=1e-5)
    section = (2.0 * (1.0 - wall) * theta >= 1.0).mean()
    assert float(outlet_section_share_laminar(theta)) == pytest.approx(section, abs=1e-5)
    leaving = (2.0 * (1.0 - wall) * (2.0 * (1.0 - wall) * theta >= 1.0)).mean()
    assert float(leaving_share_laminar(theta)) == pytest.approx(leaving, abs=1e-5)


def test_the_tap_reads_more_than_the_line_holds() -> None:
    """Guards that at 2.24 volumes tap, line and worst section read 95, 89 and 78 %."""
    read = (leaving_share_laminar, kept_share_laminar, outlet_section_share_laminar)
    assert [round(100 * float(share(2.24))) for share in read] == [95, 89, 78]


def test_a_run_lets_out_what_the_formula_says() -> None:
    """Guards the parcels in which the engine works against the published formula between them."""
    kernel = SeriesKernel(1, 0.01)
    sums = np.cumsum(kernel.leaving(1000))
    edges = 0.01 * np.arange(1, 1001)
    # A parcel leaves on the average over its own time of entering: the mean of F over it.
    fine = leaving_share_laminar(edges[:, None] + 0.01 * (np.arange(200) + 0.5) / 200 - 0.01)
    assert np.abs(sums - fine.mean(axis=1)).max() < 1e-4
