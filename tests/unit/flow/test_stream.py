import numpy as np
import pytest

from wintertight.flow.kernels.parcels import MANY, eased
from wintertight.flow.stream import Stream, contents_of, mixed, shares_of
from wintertight.fluids.contents import Contents


def parcels(*some: tuple[float, float]) -> Stream:
    """Lay parcels of (volume, share of glycol)."""
    shares = np.zeros((len(some), 4))
    shares[:, 0] = [g for _, g in some]
    return Stream(np.array([v for v, _ in some]), shares)


def test_contents_go_there_and_back() -> None:
    """Guards the order of the four shares."""
    contents = Contents(glycol=0.1, ethanol=0.2, rated=0.3, air=0.4)
    assert shares_of(contents).tolist() == [0.1, 0.2, 0.3, 0.4]
    assert contents_of(shares_of(contents)) == contents


def test_rounding_dust_is_taken_off() -> None:
    """Guards shares that rounding has put outside 0 to 1."""
    assert contents_of(np.array([1.0 + 1e-12, -1e-15, 0.0, 0.0])) == Contents(glycol=1.0)


def test_streams_that_meet_are_mixed_by_their_rates() -> None:
    """Guards mixing by hand: 4 L with a change after 1 L meets 2 L with one after 1 L."""
    met = mixed([parcels((1.0, 0.8), (3.0, 0.0)), parcels((1.0, 0.2), (1.0, 0.6))])
    # Both last as long: cut at 1/4 and 1/2. (0.8 + 0.5 x 0.2)/1.5, 0.5 x 0.2/1.5, 1 x 0.6/3
    assert met.volumes == pytest.approx([1.5, 1.5, 3.0])
    assert met.shares[:, 0] == pytest.approx([0.6, 0.1 / 1.5, 0.2])


def test_one_stream_and_no_stream() -> None:
    """Guards the two ends: a single stream passes as it is, none gives an empty one."""
    alone = parcels((1.0, 0.5))
    assert mixed([alone, parcels((0.0, 1.0))]) is alone
    assert mixed([]).volume_m3 == 0.0


def test_neighbours_nearly_alike_are_joined_in_a_long_stream() -> None:
    """Guards that joining keeps volumes, components and order, and leaves short streams alone."""
    short = parcels((1.0, 0.5), (2.0, 0.50001), (1.0, 0.0))
    assert eased(short.volumes, short.shares)[0] is short.volumes
    tail = [(1.0, 0.5 + 1e-7 * i) for i in range(MANY)]
    long = parcels((2.0, 0.25), *tail, (3.0, 0.75))
    joined = Stream(*eased(long.volumes, long.shares))
    assert joined.volumes.tolist() == [2.0, float(MANY), 3.0]
    assert joined.shares[[0, 2], 0].tolist() == [0.25, 0.75]
    assert joined.component_volumes == pytest.approx(long.component_volumes, rel=1e-12)
