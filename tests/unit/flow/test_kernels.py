"""The arithmetic by itself, each function by hand or against another way to the same number."""

import math

import numpy as np
import pytest

from tests.unit.flow.test_strides import coach, ready
from wintertight.flow.actions import Action
from wintertight.flow.case import BEST, PLUG
from wintertight.flow.course import lay_course, rules_for
from wintertight.flow.held import PlugHeld, VesselHeld
from wintertight.flow.kernels.filling import has_room
from wintertight.flow.kernels.holding import RUNS
from wintertight.flow.kernels.parcels import put
from wintertight.flow.kernels.runs import (
    _overlap_by_sum,
)
from wintertight.flow.kernels.vessel import push_each, push_vessel
from wintertight.flow.kernels.watching import SEEN, sample, seconds_left, watch
from wintertight.flow.replay import replay
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

WATER = np.zeros(4)
PRODUCT = np.array([0.0, 0.0, 1.0, 0.0])
NAN = float("nan")


def pushed(held: np.ndarray, *parcels: tuple[float, np.ndarray]) -> tuple[np.ndarray, np.ndarray]:
    """Push parcels through a vessel of one; give what it holds, and what left in all."""
    volumes = np.array([volume for volume, _ in parcels])
    shares = np.array([share for _, share in parcels])
    after, (gone, gone_shares) = push_vessel(1.0, held, volumes, shares)
    assert gone.sum() == pytest.approx(volumes.sum())
    assert gone.min() > 0.0
    came, went = volumes @ shares, gone @ gone_shares
    assert held + came == pytest.approx(after + went, abs=1e-12)
    return after, went


def test_a_vessel_lets_its_air_out_first() -> None:
    """Guards a vessel two fifths full of air: air leaves, then it is stirred, by hand."""
    after, went = pushed(np.array([0.0, 0.0, 0.0, 0.4]), (1.0, PRODUCT))
    assert after[2] == pytest.approx(1.0 - 0.6 * math.exp(-0.6))
    assert after[3] == 0.0
    assert went[3] == pytest.approx(0.4)
    part, _ = pushed(np.array([0.0, 0.0, 0.0, 0.4]), (0.3, PRODUCT))
    assert part == pytest.approx([0.0, 0.0, 0.3, 0.1])


def test_air_only_passes_a_full_vessel() -> None:
    """Guards a feed with bubbles: they leave with their parcel, the liquid is stirred, by hand."""
    feed = np.array([0.0, 0.0, 0.8, 0.2])
    after, went = pushed(WATER, (0.2, feed), (0.1, feed))
    assert went[3] == pytest.approx(0.06)
    assert after[2] == pytest.approx(1.0 - math.exp(-0.24))
    assert after[3] == 0.0
    dry, gone = pushed(WATER, (0.5, np.array([0.0, 0.0, 0.0, 1.0])))
    assert dry == pytest.approx(WATER)
    assert gone[3] == pytest.approx(0.5)


def test_a_vessel_takes_many_times_what_it_holds() -> None:
    """Guards long pushes: the exponential far out, and parcels after it."""
    after, _ = pushed(WATER, (5.0, PRODUCT))
    assert 1.0 - after[2] == pytest.approx(math.exp(-5.0), rel=1e-9)
    far, _ = pushed(WATER, (40.0, PRODUCT), (0.25, WATER))
    assert far[2] == pytest.approx(math.exp(-0.25), rel=1e-9)
    mixed, _ = pushed(np.array([0.0, 0.0, 0.0, 0.9]), (0.5, PRODUCT), (3.0, WATER))
    assert mixed[3] == 0.0


@pytest.mark.parametrize(("long", "short"), [(7, 3), (7, 7), (40, 12), (3, 1)])
def test_products_summed_in_a_loop_are_the_convolution(long: int, short: int) -> None:
    """Guards the loop that compiled programs take, zeros in the short row included."""
    lots = np.random.default_rng(5)
    a, b = lots.random(long), lots.random(short)
    b[0] = 0.0
    assert _overlap_by_sum(a, b) == pytest.approx(np.convolve(a, b, "valid"), abs=1e-14)


def test_only_parcels_alike_in_everything_are_joined() -> None:
    """Guards each of the four shares."""
    same = np.array([0.1, 0.2, 0.3, 0.4])
    for c in range(4):
        volumes, shares = np.empty(3), np.empty((3, 4))
        other = same.copy()
        other[c] += 0.05
        count = put(volumes, shares, 0, 1.0, same)
        count = put(volumes, shares, count, 2.0, same)
        assert (count, volumes[0]) == (1, 3.0)
        assert put(volumes, shares, count, 1.0, other) == 2
        assert shares[1].tolist() == other.tolist()


@pytest.mark.parametrize("component", [0, 1, 2])
@pytest.mark.parametrize("turns", [1e-13, 0.1, 3.0, 40.0])
def test_one_antifreeze_in_plain_numbers_is_what_is_compiled(turns: float, component: int) -> None:
    """Guards the way that Python takes through a vessel against the loop for all components."""
    rng = np.random.default_rng(7)
    volumes = rng.uniform(0.0, 1.0, 30) * turns / 30 * 0.4
    feed, held = np.zeros((30, 4)), np.zeros(4)
    feed[:, component], held[component] = rng.uniform(0.0, 0.5, 30), 0.3
    feed[20:, component] = 0.3  # hardly changes it any more
    after, (gone, gone_shares) = push_vessel(0.2, held, volumes, feed)
    by_all, (each, each_shares) = push_each(0.2, held, volumes, feed)
    assert after.tolist() == by_all.tolist()
    assert gone.tolist() == each.tolist()
    assert gone_shares.tolist() == each_shares.tolist()


def test_the_quick_mean_of_segments_and_of_a_vessel() -> None:
    """Guards means that follow from what is held, way by way."""
    plug = PlugHeld(2.0, np.array([0.2, 0.1, 0.0, 0.0]))
    vessel = VesselHeld(3.0, np.array([0.3, 0.0, 0.1, 0.2]))
    for held in (plug, vessel):
        assert held.about() == pytest.approx(held.mean())
        assert held.glycol_about() == pytest.approx(held.mean()[0])


def test_colour_of_any_antifreeze_shows() -> None:
    """Guards what counts as colour: all three together, in the liquid, and only if it stays."""
    volumes = np.ones(4)
    clear, air = [0.0, 0.0, 0.0, 0.0], [0.0, 0.0, 0.0, 1.0]
    faint = [0.03, 0.03, 0.03, 0.4]
    row = np.array([NAN, NAN, 10.0, 5.0, 0.5])
    assert len(row) == SEEN
    watch(row, volumes, np.array([clear, air, faint, faint]), 0.1)
    assert row[:2].tolist() == [5.0 + 2.0 / 0.5, 12.0]
    watch(row, volumes, np.array([faint, faint, clear, air]), 0.1)
    assert math.isnan(row[0])
    half = np.array([[0.5, 0.0, 0.0, 0.5]])  # as much air as liquid: nobody takes it for either
    row = np.array([NAN, NAN, 0.0, 0.0, 1.0])
    watch(row, np.ones(1), half, 0.1)
    assert math.isnan(row[0])


def test_samples_are_taken_of_what_leaves_then() -> None:
    """Guards strengths at even times: parcels of 1.5 and 2 s at 2 a second, begun after 1 s."""
    series = np.full(6, NAN)
    row = np.array([NAN, NAN, 0.0, 1.0, 2.0])
    shares = np.array([[0.1, 0.0, 0.0, 0.0], [0.1, 0.2, 0.3, 0.0]])
    sample(series, row, 1.0, np.array([3.0, 4.0]), shares)
    assert np.isnan(series[[0, 5]]).all()
    assert series[1:5] == pytest.approx([0.1, 0.1, 0.6, 0.6])


def test_seconds_left_and_room_left() -> None:
    """Guards the rules that stop an outlet, and the parcels a response has room for."""
    row = np.array([4.0, 1.0, 3.0, 6.0, 0.5])
    assert seconds_left(row, math.inf, 5.0, NAN) == pytest.approx(4.0)
    assert seconds_left(row, 7.0, 5.0, NAN) == pytest.approx(1.0)
    assert seconds_left(row, math.inf, 50.0, 5.0) == pytest.approx(3.0)
    row[0] = NAN
    assert seconds_left(row, math.inf, 50.0, 5.0) == pytest.approx(94.0)
    hollow, way = np.array([0, -1]), np.array([RUNS])
    held = [np.zeros((5, 4))]
    coming, parcel = np.array([3.0, 100.0]), np.array([1.0])
    assert has_room(hollow, coming, way, parcel, np.array([10]), held)
    assert not has_room(hollow, coming, way, parcel, np.array([9]), held)


@pytest.mark.parametrize("case", [BEST, PLUG], ids=["laminar", "displaced"])
@pytest.mark.parametrize("feed", [Contents(glycol=0.45), Contents(rated=1.0)])
def test_a_course_does_what_a_replay_does(case: object, feed: Contents) -> None:
    """Guards a course with a loop, a vessel and two outlets, one of them run twice."""
    network = coach(case)  # type: ignore[arg-type]
    state = ready(network, feed).with_setting("spare", "open")
    outlets, on = ["left tap", "right tap", "left tap"], [3.0, 4.0, 2.0]
    actions = [
        Action("run", outlet, until=Until(run_on_s=s))
        for outlet, s in zip(outlets, on, strict=True)
    ]
    trace = replay(network, state, actions)
    seen = lay_course(network, state, outlets, "jug").run(rules_for(3, feed, run_on_s=on), 40)
    runs = [m.outcome.run for m in trace.moments if m.outcome.run]
    assert seen.volume_m3 == pytest.approx([run.volume_m3 for run in runs], rel=1e-9)
    assert seen.seconds == pytest.approx([run.seconds for run in runs], rel=1e-9)
    assert seen.colour_s == pytest.approx([run.first_colour_s for run in runs], rel=1e-9, abs=1e-9)
    assert seen.flow_m3_s == pytest.approx([run.flow_m3_s for run in runs], rel=1e-9)
    for link, mean in seen.means.items():
        assert mean == pytest.approx(trace.end.held[link].mean(), abs=1e-9)
    last = np.flatnonzero(~np.isnan(seen.series[0]))[-1]
    assert seen.series[0, 0] == 0.0
    assert last == math.ceil(seen.seconds[0] - 1e-6) - 1
    full = feed.glycol + feed.rated
    rising = seen.series[0, : last + 1]
    assert np.all(np.diff(rising) >= -1e-12)
    assert 0.5 * runs[0].strength * full < rising[-1] <= runs[0].strength * full
