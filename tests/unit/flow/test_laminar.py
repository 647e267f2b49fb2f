import numpy as np
import pytest
from scipy.stats import qmc

from wintertight.errors import OutOfRange
from wintertight.flow.laminar import SeriesKernel

LEVELS = (0.80, 0.86, 0.90, 0.95)

# Line volumes until the section at the outlet end holds these shares of the feed. One and two runs
# follow by hand and by quadrature; the others were computed twice: here, and below by streamlines.
TABLE = {
    1: (2.50, 3.57, 5.0, 10.0),
    2: (1.89, 2.47, 3.22, 5.76),
    5: (1.48, 1.76, 2.09, 3.17),
    8: (1.36, 1.56, 1.79, 2.50),
    12: (1.28, 1.43, 1.60, 2.11),
    20: (1.21, 1.32, 1.44, 1.78),
}


def volumes_until(runs: int, parcel: float) -> list[float]:
    """Give the line volumes until the outlet section holds each level."""
    kernel = SeriesKernel(runs, parcel)
    count = int(11.0 / parcel)
    share = np.cumsum(kernel.sections(count)[-1])
    return [float(np.interp(x, share, parcel * np.arange(1, count + 1))) for x in LEVELS]


@pytest.mark.parametrize("runs", TABLE)
def test_volumes_until_the_outlet_section_is_strong(runs: int) -> None:
    """Guards the volumes that lines of several runs need, to about half a printed digit."""
    assert volumes_until(runs, 0.002) == pytest.approx(TABLE[runs], abs=6e-3)


@pytest.mark.parametrize("runs", TABLE)
def test_streamlines_need_the_same_volumes(runs: int) -> None:
    """Guards the convolution against times drawn along streamlines, which know no parcels."""
    lot = qmc.Sobol(runs, seed=1).random_base2(16)
    inner = 1.0 / (2.0 * np.sqrt(1.0 - lot[:, 1:])).clip(1e-9)
    last = 1.0 / (2.0 * (1.0 - lot[:, 0])).clip(1e-9)
    volumes = np.sort((inner.sum(axis=1) + last) / runs)
    found = [float(volumes[int(x * volumes.size)]) for x in LEVELS]
    assert volumes_until(runs, 0.002) == pytest.approx(found, rel=4e-3)


@pytest.mark.parametrize("runs", [1, 2, 5, 8])
def test_the_coarsest_parcels_are_on_the_safe_side(runs: int) -> None:
    """Guards short lines, fed in the largest parcels allowed: they ask for up to 2 % more."""
    fine, coarse = volumes_until(runs, 0.002), volumes_until(runs, 0.5 / runs)
    for a, b in zip(fine, coarse, strict=True):
        assert a * (1.0 - 1e-6) <= b <= 1.02 * a


def test_many_runs_come_near_plug_flow() -> None:
    """Guards the limit: the more runs, the nearer to one line volume."""
    needed = [volumes_until(runs, 0.25 / runs)[2] for runs in (1, 2, 5, 20, 80, 200)]
    assert needed == sorted(needed, reverse=True)
    assert needed[-1] < 1.15


@pytest.mark.parametrize(("runs", "parcel"), [(20, 0.01), (12, 0.02), (5, 0.05), (3, 1 / 6)])
def test_a_kernel_that_grows_keeps_what_it_said(runs: int, parcel: float) -> None:
    """Guards against a transform whose far end comes back at the front when it is too short."""
    kernel = SeriesKernel(runs, parcel)
    before = [kernel.leaving(256).copy(), kernel.kept(256).copy(), kernel.sections(256).copy()]
    kernel.leaving(5000)
    after = [kernel.leaving(256), kernel.kept(256), kernel.sections(256)]
    for a, b in zip(before, after, strict=True):
        assert np.abs(a - b).max() < 1e-14


@pytest.mark.parametrize("runs", [1, 2, 5, 20])
def test_responses_are_shares(runs: int) -> None:
    """Guards that nothing leaves before it can, nothing is negative, and all leaves in the end."""
    kernel = SeriesKernel(runs, 0.25 / runs)
    leaving, kept = kernel.leaving(4000), kernel.kept(4000)
    assert leaving[: 2 * runs].max() == 0.0
    assert leaving.min() > -1e-15
    assert (np.diff(kept) <= 1e-15).all()
    assert -1e-12 < kept[-1] < 1e-3
    assert np.abs(kernel.sections(4000).sum(axis=1) - 1.0).max() < 1e-2


@pytest.mark.parametrize(("runs", "parcel"), [(0, 0.1), (1, 0.0), (1, 0.51), (4, 0.2)])
def test_what_cannot_be_carried_is_refused(runs: int, parcel: float) -> None:
    """Guards parcels so large that part of one would leave while it comes in."""
    with pytest.raises(OutOfRange):
        SeriesKernel(runs, parcel)
