import numpy as np
import pytest

from tests.unit.flow.laid_coach import LITRE, laid, outlet, pipe
from wintertight.errors import BooksDoNotClose
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Gate, Link, Pool
from wintertight.flow.hydraulics import steady_flow
from wintertight.flow.replay import replay
from wintertight.flow.routing import route
from wintertight.flow.running import Running, run_until
from wintertight.flow.state import State, arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

PINK = Contents(rated=1.0)  # moves as water does, so that flows stay as they are


def fed(coach: CoachNetwork, *opened: str) -> State:
    """Give a coach full of water whose jug holds the product."""
    state = arriving_state(coach).with_feed("jug", PINK)
    for control in opened:
        state = state.with_setting(control, "open")
    return state


def one_line(litres: float = 0.5) -> CoachNetwork:
    """Lay a jug, a line and a tap."""
    return laid(
        [pipe("line", "a", "b", 10.0 * litres), outlet("tap", "b")], sources={"jug": ("a", 10.0)}
    )


def two_lines() -> CoachNetwork:
    """Lay a jug and a tee with two lines to two taps."""
    return laid(
        [
            pipe("trunk", "a", "tee", 2.0),
            pipe("left", "tee", "l"),
            pipe("right", "tee", "r"),
            outlet("left tap", "l"),
            outlet("right tap", "r"),
        ],
        sources={"jug": ("a", 10.0)},
    )


def test_colour_shows_after_the_volume_of_the_line() -> None:
    """Guards first colour in displaced flow: half a litre, and half a litre over the flow."""
    coach = one_line()
    after, seen = run_until(coach, fed(coach, "tap"), "tap", Until(run_on_s=4.0))
    assert seen.first_colour_m3 == pytest.approx(0.5 * LITRE)
    assert seen.first_colour_s == pytest.approx(0.5 * LITRE / seen.flow_m3_s, rel=1e-6)
    assert seen.seconds == pytest.approx(0.5 * LITRE / seen.flow_m3_s + 4.0, rel=1e-6)
    assert seen.strength == pytest.approx(1.0)
    assert after.mean("line") == PINK
    assert after.treated["line"] == "flowed"
    assert not seen.given_up


@pytest.mark.parametrize(
    ("until", "litres"),
    [
        (Until(volume_m3=0.25 * LITRE), 0.25),
        (Until(volume_m3=2.0 * LITRE), 2.0),
        (Until(volume_m3=9.0 * LITRE, limit_m3=1.0 * LITRE), 1.5),  # its way holds 0.5
    ],
)
def test_a_run_stops_by_volume(until: Until, litres: float) -> None:
    """Guards a run by volume, and the limit that stops every run."""
    coach = one_line()
    _, seen = run_until(coach, fed(coach, "tap"), "tap", until)
    assert seen.volume_m3 == pytest.approx(litres * LITRE)
    assert seen.given_up == (until.limit_m3 == LITRE)


def test_a_run_stops_by_the_clock() -> None:
    """Guards a run by seconds."""
    coach = one_line()
    _, seen = run_until(coach, fed(coach, "tap"), "tap", Until(seconds=7.5))
    assert seen.seconds == pytest.approx(7.5)
    assert seen.volume_m3 == pytest.approx(7.5 * seen.flow_m3_s, rel=1e-9)


def test_a_dry_outlet_is_given_up_while_another_runs() -> None:
    """Guards against waiting for ever at an outlet that is shut off while another stands open."""
    coach = two_lines()
    trace = replay(coach, fed(coach, "left tap"), [Action("set", "right tap", "shut")])
    running = Running(coach, trace.end)
    assert not running.advance("right tap", Until(run_on_s=5.0))
    assert running.seconds == 0.0
    assert running.advance("right tap", Until(seconds=5.0))
    assert running.volume_m3["left tap"] > 0.0


def test_nothing_runs_where_all_is_shut() -> None:
    """Guards a run with no open outlet: nothing moves, nothing is marked."""
    coach = one_line()
    state = fed(coach)
    after, seen = run_until(coach, state, "tap", Until())
    assert (seen.volume_m3, seen.seconds, seen.given_up, seen.way) == (0.0, 0.0, True, ())
    assert after.treated["line"] == "as found"
    assert after.held["line"] is state.held["line"]


def test_what_is_shut_off_is_not_touched() -> None:
    """Guards the branch to a shut outlet: exactly no flow, and the very same content."""
    coach = two_lines()
    state = fed(coach, "left tap")
    flows = dict(zip(coach.links, steady_flow(coach, state).flow_m3_s.tolist(), strict=True))
    assert flows["right"] == flows["right tap(outlet)"] == 0.0
    after, _ = run_until(coach, state, "left tap", Until(volume_m3=LITRE))
    assert after.held["right"] is state.held["right"]
    assert {k: v for k, v in after.treated.items() if v == "as found"} == {"right": "as found"}


def test_links_that_flowed_are_marked_whatever_flows_at_the_end() -> None:
    """Guards marks of links that moved early in a run and not when it ended."""
    coach = two_lines()
    running = Running(coach, fed(coach, "left tap", "right tap"))
    running.step(1.0)
    running.state = running.state.with_setting("right tap", "shut")
    running.look()
    running.step(1.0)
    after = running.finish()
    assert after.treated["right"] == after.treated["left"] == "flowed"


def test_a_start_is_not_changed_by_what_follows() -> None:
    """Guards that a state is frozen: running on from it twice gives the same twice."""
    coach = two_lines()
    state = fed(coach, "left tap")
    first, _ = run_until(coach, state, "left tap", Until(volume_m3=0.15 * LITRE))
    again, _ = run_until(coach, state, "left tap", Until(volume_m3=0.15 * LITRE))
    assert state.mean("trunk") == Contents()
    assert first.mean("trunk") == again.mean("trunk") != Contents()


def test_what_falls_goes_through_the_trap_into_the_tank() -> None:
    """Guards pools: a litre through a trap of a quarter litre leaves exp(-4) of its water."""
    trap = Pool("trap", 0.25 * LITRE, stirred=True, drops_to="tank")
    tank = Pool("tank", 20.0 * LITRE, stirred=False)
    coach = laid([outlet("tap", "a", "trap")], sources={"jug": ("a", 10.0)}, pools=[trap, tank])
    state = fed(coach, "tap")
    trace = replay(coach, state, [Action("run", "tap", until=Until(volume_m3=LITRE))])
    assert trace.end.pools["trap"][0] == pytest.approx(0.25 * LITRE * np.exp(-4.0))
    assert trace.end.pools["tank"].sum() == pytest.approx(20.0 * LITRE)
    assert trace.balance.relative_error < 1e-12


def test_a_trickle_that_parts_into_nothing_is_not_lost() -> None:
    """Guards flows near nothing: what comes to a tee and is too little to go on has not come."""
    taps = [outlet(f"tap {i}", "tee", resistance=1e16) for i in range(3)]
    line = pipe("line", "a", "tee")
    coach = laid([line, *taps], sources={"jug": ("a", 0.0064)})
    state = fed(coach, "tap 0", "tap 1", "tap 2")
    flow = steady_flow(coach, state).flow_m3_s
    assert 1e-9 < flow[0] < 3e-9
    assert flow[1] < 1e-9
    trace = replay(coach, state, [Action("run", "tap 0", until=Until(seconds=3600.0))])
    assert trace.balance.in_m3 == 0.0


def test_a_flow_in_a_circle_is_refused() -> None:
    """Guards the order of links: no steady flow runs in a ring."""
    ring = [pipe("ab", "a", "b"), pipe("bc", "b", "c"), pipe("ca", "c", "a")]
    with pytest.raises(BooksDoNotClose):
        route(laid(ring), np.array([1e-4, 1e-4, 1e-4]))


def test_a_pump_stops_where_nothing_is_open_and_delivers_where_something_is() -> None:
    """Guards the demand pump by hand: h0 (1 - q/q0) = r q^2 at an outlet without a line."""
    pump = Link(
        "pump",
        "pump",
        "a",
        "b",
        way="pump",
        pump_open_m3_s=2e-4,
        pump_cut_off_m=35.0,
        one_way=True,
        gate=Gate("switch", frozenset({"open"})),
    )
    coach = laid([pump, outlet("tap", "b", resistance=3e9)], sources={"jug": ("a", 0.0)})
    assert not steady_flow(coach, fed(coach, "switch")).flow_m3_s.any()
    # 3e9 q2 + 1e6 q2 + 35/2e-4 q - 35 = 0 has the root 8.28e-5.
    flow = steady_flow(coach, fed(coach, "switch", "tap")).flow_m3_s
    root = (-1.75e5 + np.sqrt(1.75e5**2 + 4.0 * 3.001e9 * 35.0)) / (2.0 * 3.001e9)
    assert flow == pytest.approx(np.full(3, root), rel=1e-9)
