"""What is seen while an outlet runs, and when a run stops, each by hand."""

import math
from dataclasses import replace
from types import MappingProxyType

import numpy as np
import pytest

from tests.unit.flow.laid_coach import LITRE, laid, outlet, pipe
from wintertight.flow.coach_network import CoachNetwork, Pool
from wintertight.flow.hydraulics import BAY_DEGC, glycol_shares, steady_flow
from wintertight.flow.kernels.runs import LONG, overlap
from wintertight.flow.kernels.watching import AN_INSTANT_S, seconds_left
from wintertight.flow.replay import CLOSED, balance_of
from wintertight.flow.running import Running, run_until
from wintertight.flow.state import State, arriving_state
from wintertight.flow.stream import Stream, contents_of, mixed
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.fluids.transport import kinematic_viscosity

WATERY = Contents(rated=1.0)


def coach(litres: float = 0.5) -> CoachNetwork:
    """Lay a jug, a line of displaced tube, a tap, and a tank below it."""
    return laid(
        [pipe("line", "a", "b", 10.0 * litres), outlet("tap", "b", pool="tank")],
        sources={"jug": ("a", 10.0)},
        pools=[Pool("tank", 2.0 * LITRE, stirred=False)],
    )


def holding(network: CoachNetwork, *parcels: tuple[float, Contents]) -> State:
    """Give it open, its line holding parcels of so many litres, the first at the tap."""
    state = arriving_state(network).with_feed("jug", WATERY).with_setting("tap", "open")
    held = state.held["line"].copy()
    for litres, contents in parcels:
        shares = np.array([[contents.glycol, contents.ethanol, contents.rated, contents.air]])
        held.push(Stream(np.array([litres * LITRE]), shares), forward=True)
    gained = held.mean() * held.volume_m3
    gained = np.concatenate(([-gained.sum()], gained))
    books = replace(state.books, start=state.books.start + gained)
    return replace(state, held=MappingProxyType({**state.held, "line": held}), books=books)


def test_only_colour_that_stays_counts() -> None:
    """Guards a hose's old colour: it shows, it goes, and the count begins when it comes back."""
    network = coach()
    state = holding(network, (0.1, WATERY), (0.3, Contents()), (0.1, Contents(rated=0.05)))
    after, seen = run_until(network, state, "tap", Until(volume_m3=0.8 * LITRE))
    flow = seen.volume_m3 / seen.seconds
    assert seen.first_colour_m3 == pytest.approx(0.5 * LITRE, rel=1e-6)
    assert seen.first_colour_s == pytest.approx(0.5 * LITRE / flow, rel=1e-6)
    assert seen.strength == pytest.approx(1.0)
    assert balance_of(after).relative_error < CLOSED


def test_colour_that_was_there_from_the_start() -> None:
    """Guards a line that holds the product already: colour at once, at the first drop."""
    network = coach()
    state = holding(network, (0.5, WATERY))
    _, seen = run_until(network, state, "tap", Until(run_on_s=2.0))
    assert (seen.first_colour_s, seen.first_colour_m3) == (0.0, 0.0)
    assert seen.seconds == pytest.approx(2.0)


def test_air_that_comes_out_is_measured() -> None:
    """Guards the volume of air in what came out, and that air is no colourless liquid."""
    network = coach()
    state = holding(network, (0.2, WATERY), (0.2, Contents(air=1.0)), (0.1, Contents(air=0.3)))
    _, seen = run_until(network, state, "tap", Until(volume_m3=0.6 * LITRE))
    assert seen.air_m3 == pytest.approx(0.23 * LITRE)
    assert seen.first_colour_m3 == pytest.approx(0.5 * LITRE, rel=1e-6)


def test_the_flow_follows_what_the_lines_hold() -> None:
    """Guards the viscosity within one run: the last flow is that of the contents at the end."""
    network = coach(litres=2.0)
    state = arriving_state(network).with_feed("jug", Contents(glycol=0.5))
    state = state.with_setting("tap", "open")
    after, seen = run_until(network, state, "tap", Until(volume_m3=2.5 * LITRE))
    nu = kinematic_viscosity(glycol_shares(network, after.held), BAY_DEGC)
    flow = steady_flow(network, after, viscosity_m2_s=nu).flow_m3_s
    assert seen.flow_m3_s == pytest.approx(flow.max(), rel=1e-6)
    assert seen.flow_m3_s < 0.97 * steady_flow(network, state).flow_m3_s.max()
    assert seen.seconds > 2.5 * LITRE / steady_flow(network, state).flow_m3_s.max()


def test_a_tank_takes_liquid_for_its_air_and_lets_the_rest_by() -> None:
    """Guards what falls into a tank that has a litre of room, air among it, then none."""
    network = coach()
    state = holding(network, (0.5, Contents(air=0.2)))
    tank = np.array([1.0, 0.0, 0.0, 0.0, 1.0]) * LITRE
    books = replace(state.books, start=state.books.start - state.pools["tank"] + tank)
    state = replace(state, pools=MappingProxyType({"tank": tank}), books=books)
    half, _ = run_until(network, state, "tap", Until(volume_m3=0.5 * LITRE))
    assert half.pools["tank"] == pytest.approx(np.array([1.4, 0, 0, 0, 0.6]) * LITRE, abs=1e-12)
    full, _ = run_until(network, half, "tap", Until(volume_m3=3.0 * LITRE))
    assert full.pools["tank"] == pytest.approx(np.array([1.4, 0, 0, 0.6, 0.0]) * LITRE, abs=1e-12)
    assert balance_of(full).relative_error < CLOSED


def test_enough_stops_a_run() -> None:
    """Guards the question that is asked after each chunk from colour on, of the run itself."""
    network = coach()
    state = holding(network, (0.15, Contents()), (0.35, WATERY))
    asked: list[float] = []

    def enough(running: Running) -> bool:
        asked.append(running.volume_m3["tap"])
        return running.volume_m3["tap"] > 0.25 * LITRE

    running = Running(network, state)
    assert running.advance("tap", Until(), enough)
    assert asked == pytest.approx([0.2 * LITRE, 0.3 * LITRE])
    assert running.drawn_m3 == pytest.approx(0.3 * LITRE)


@pytest.mark.parametrize(
    ("until", "left"),
    [
        (Until(), math.inf),
        (Until(seconds=10.0), 6.0),
        (Until(volume_m3=3e-3), 10.0),
        (Until(run_on_s=5.0), 3.0),
        (Until(seconds=10.0, volume_m3=3e-3, run_on_s=5.0), 3.0),
        (Until(seconds=4.0), 0.0),
        (Until(seconds=4.0 + AN_INSTANT_S / 2.0), 0.0),
        (Until(volume_m3=1e-3), 0.0),
    ],
)
def test_how_long_until_a_rule_says_stop(until: Until, left: float) -> None:
    """Guards each rule after 4 s, 2 L at 0.1 L/s, colour at 2 s, and the first that is met."""
    row = np.array([2.0, 1e-3, 2e-3, 4.0, 1e-4])
    assert seconds_left(row, *until.rules) == pytest.approx(left, abs=1e-9)


def test_no_rule_is_near_before_colour_and_none_by_volume_without_flow() -> None:
    """Guards the two ends: no colour yet is no end, no flow never brings a volume."""
    row = np.array([math.nan, math.nan, 0.0, 4.0, 1e-4])
    assert seconds_left(row, *Until(run_on_s=5.0).rules) == math.inf
    row[4] = 0.0
    assert seconds_left(row, *Until(volume_m3=1.0).rules) == 0.0


def test_long_convolutions_are_the_same_by_transform() -> None:
    """Guards the transform that long rows take against the sum of products."""
    lots = np.random.default_rng(3)
    short, long = lots.random(1400), lots.random(2400)
    assert len(short) * (len(long) - len(short)) > LONG
    found = overlap(long, short)
    assert found == pytest.approx(np.convolve(long, short, "valid"), abs=1e-10)
    few = overlap(long[:40], short[:30])
    assert few.tolist() == np.convolve(long[:40], short[:30], "valid").tolist()


def test_streams_are_shared_out_and_nothing_is_nothing() -> None:
    """Guards a branch's share of a stream, an empty mixture, and shares a little above one."""
    stream = Stream(np.array([1.0, 3.0]), np.array([[0.5, 0, 0, 0], [0.0, 0, 0, 1.0]]))
    branch = stream.scaled(0.25)
    assert branch.volumes.tolist() == [0.25, 0.75]
    assert branch.shares.tolist() == stream.shares.tolist()
    nothing = mixed([Stream(np.zeros(1), np.zeros((1, 4)))])
    assert (nothing.volumes.shape, nothing.shares.shape) == ((0,), (0, 4))
    over = contents_of(np.array([0.5, 0.3, 0.2, 0.2]))
    assert (over.glycol, over.ethanol) == pytest.approx((0.5 / 1.2, 0.3 / 1.2))
    assert (over.rated, over.air) == pytest.approx((0.2 / 1.2, 0.2 / 1.2))
    assert contents_of(np.array([-1e-18, 0.0, 0.0, 1.0 + 1e-15])) == Contents(air=1.0)
