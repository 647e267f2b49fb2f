"""Long strides and runs taken over: the same as looked at closely, for less work."""

from dataclasses import replace
from types import MappingProxyType
from typing import Any

import numpy as np
import pytest

from tests.unit.flow.laid_coach import LITRE, laid, outlet, pipe, valve
from wintertight.flow.actions import Action
from wintertight.flow.case import BEST, CAREFUL, Case
from wintertight.flow.coach_network import Breather, CoachNetwork, Link, Pool
from wintertight.flow.kernels.striding import BEYOND_M3
from wintertight.flow.precedent import WITHIN, Precedent
from wintertight.flow.replay import CLOSED, balance_of, replay
from wintertight.flow.running import run_until
from wintertight.flow.state import State, arriving_state, in_doubt
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

PINK = Contents(glycol=0.499)
STRIDES = replace(BEST, chunk_m3=0.4e-3, longest_chunk_m3=4e-3, parcel_m3=25e-6)
STIRRED: Any = {"holding": "vessel", "volume_m3": 2e-4}
CLOSE = replace(BEST, chunk_m3=0.02e-3)


def coach(case: Case = BEST) -> CoachNetwork:
    """Lay a jug, a trunk, a bowl, and two branches of laminar tube with a tap and a trap each."""
    return laid(
        [
            pipe("trunk", "a", "b", 3.0, holding="runs", runs=3),
            Link(
                "bowl", "bowl", "b", "tee", resistance_s2_m5=1e6, holding="vessel", volume_m3=2e-4
            ),
            pipe("left", "tee", "l", 2.0, holding="runs", runs=2),
            pipe("right", "tee", "r", 4.0, holding="runs", runs=4),
            valve("spare", "tee", "r", holding="plug", volume_m3=5e-6),
            outlet("left tap", "l", pool="trap"),
            outlet("right tap", "r"),
        ],
        sources={"jug": ("a", 12.0)},
        pools=[
            Pool("trap", 0.25 * LITRE, stirred=True, drops_to="tank"),
            Pool("tank", 0.02, stirred=False),
        ],
        case=case,
    )


def ready(network: CoachNetwork, contents: Contents = PINK) -> State:
    """Give it full of water, the jug filled, its tank empty."""
    state = arriving_state(network).with_feed("jug", contents)
    tank = np.array([0.0, 0.0, 0.0, 0.0, 0.02])
    pools = MappingProxyType({**state.pools, "tank": tank})
    start = state.books.start - state.pools["tank"] + tank
    return replace(state, pools=pools, books=replace(state.books, start=start))


def run(network: CoachNetwork, state: State, tap: str, until: Until) -> Precedent:
    """Run a tap and keep what came of it."""
    action = Action("run", tap, until=until)
    moment = replay(network, state, [action]).moments[0]
    return Precedent.of(state, action, (moment.state, moment.outcome))


@pytest.mark.parametrize("expect_m3", [None, 0.6 * LITRE, 0.05 * LITRE, 3.0 * LITRE])
@pytest.mark.parametrize("run_on_s", [2.0, 15.0])
def test_strides_stop_where_colour_shows(expect_m3: float | None, run_on_s: float) -> None:
    """Guards volumes and contents against looking every 20 mL, whatever colour is expected."""
    network, closely = coach(STRIDES), coach(CLOSE)
    until = Until(run_on_s=run_on_s, expect_m3=expect_m3)
    after, seen = run_until(
        network, ready(network).with_setting("left tap", "open"), "left tap", until
    )
    expected, saw = run_until(
        closely, ready(closely).with_setting("left tap", "open"), "left tap", until
    )
    assert seen.first_colour_m3 == pytest.approx(saw.first_colour_m3, abs=2.5 * BEYOND_M3)
    assert seen.seconds - (seen.first_colour_s or 0.0) == pytest.approx(run_on_s, abs=1e-6)
    assert seen.seconds == pytest.approx(saw.seconds, rel=0.05)
    assert seen.volume_m3 == pytest.approx(saw.volume_m3, rel=0.03, abs=2.0 * BEYOND_M3)
    for link in ("trunk", "bowl", "left"):
        assert after.mean(link).glycol == pytest.approx(expected.mean(link).glycol, abs=0.015)
    assert balance_of(after).relative_error < CLOSED
    assert not seen.given_up


def test_what_is_expected_changes_nothing_but_the_work() -> None:
    """Guards that two runs with other expectations are the same order."""
    assert Until(run_on_s=3.0, expect_m3=1.0) == Until(run_on_s=3.0)
    assert Until(run_on_s=3.0) != Until(run_on_s=4.0)


@pytest.mark.parametrize("case", [BEST, STRIDES], ids=["even", "long"])
def test_an_outlet_that_never_clears_is_given_up_at_the_limit(case: Case) -> None:
    """Guards the volume drawn at the limit: that, and what the way holds."""
    network = coach(case)
    state = ready(network, Contents()).with_setting("left tap", "open")
    _, seen = run_until(network, state, "left tap", Until(run_on_s=3.0, limit_m3=1.0 * LITRE))
    holds = sum(network.links[k].volume_m3 for k in ("trunk", "bowl", "left"))
    assert seen.given_up
    assert seen.first_colour_s is None
    assert seen.volume_m3 == pytest.approx(1.0 * LITRE + holds, rel=1e-9)


@pytest.mark.parametrize("case", [BEST, STRIDES], ids=["even", "long"])
def test_the_limit_counts_what_runs_elsewhere(case: Case) -> None:
    """Guards that jugs are counted, not what came out where anyone looked."""
    network = coach(case)
    both = ready(network, Contents()).with_setting("left tap", "open")
    both = both.with_setting("right tap", "open")
    _, alone = run_until(network, both, "left tap", Until(run_on_s=3.0, limit_m3=1.0 * LITRE))
    holds = sum(network.links[k].volume_m3 for k in ("trunk", "bowl", "left", "right"))
    drawn = alone.volume_m3 + both_sides(network, both)["right tap"] * alone.seconds
    assert drawn == pytest.approx(1.0 * LITRE + holds, rel=0.02)


def both_sides(network: CoachNetwork, state: State) -> dict[str, float]:
    """Give the flow of each open tap at the end of a short run [m3/s]."""
    return {
        tap: run_until(network, state, tap, Until(seconds=1.0))[1].flow_m3_s
        for tap in ("left tap", "right tap")
    }


def test_one_viscosity_is_looked_at_once() -> None:
    """Guards a case with one viscosity for everything: the flow never changes."""
    network = coach(replace(BEST, viscosity_m2_s=1.3e-6))
    state = ready(network).with_setting("left tap", "open")
    _, short = run_until(network, state, "left tap", Until(seconds=1.0))
    _, long = run_until(network, state, "left tap", Until(seconds=60.0))
    assert long.flow_m3_s == pytest.approx(short.flow_m3_s, rel=1e-12)
    assert long.volume_m3 == pytest.approx(60.0 * short.volume_m3, rel=1e-9)


def test_a_precedent_holds_for_the_same_state() -> None:
    """Guards that what is taken over is what the run would have done."""
    network = coach()
    state = ready(network)
    before = run(network, state, "left tap", Until(run_on_s=3.0))
    assert before.moved == {"trunk", "bowl", "left"}
    assert before.touched == {"trap", "tank"}
    assert before.holds(network, state, before.action)
    again, outcome = before.taken_over(network, state)
    done, seen = before.done
    assert outcome is seen
    for link, held in again.held.items():
        assert np.array_equal(held.mean(), done.held[link].mean())
    for pool, volumes in again.pools.items():
        assert volumes == pytest.approx(done.pools[pool], abs=1e-18)
    assert dict(again.treated) == dict(done.treated)
    assert again.books.came_in == pytest.approx(done.books.came_in)
    assert again.books.went_out == pytest.approx(done.books.went_out)
    assert balance_of(again).relative_error < CLOSED


@pytest.mark.parametrize(
    "other",
    [
        lambda s: s.with_setting("spare", "open"),
        lambda s: s.with_feed("jug", Contents(glycol=0.3)),
        lambda s: s.with_setting("right tap", "open"),
    ],
)
def test_a_precedent_needs_the_same_gates_and_feeds(other: object) -> None:
    """Guards what makes another run of it: a gate, what is drawn, another open tap."""
    network = coach()
    state = ready(network)
    before = run(network, state, "left tap", Until(run_on_s=3.0))
    assert not before.holds(network, other(state), before.action)  # type: ignore[operator]
    longer = replace(before.action, until=Until(run_on_s=4.0))
    assert not before.holds(network, state, longer)
    assert not before.holds(network, state, Action("set", "spare", "open"))


@pytest.mark.parametrize(("apart", "holds"), [(0.5 * WITHIN, True), (2.0 * WITHIN, False)])
def test_a_precedent_overlooks_little_and_books_it(apart: float, holds: bool) -> None:  # noqa: FBT001
    """Guards the limit of what counts as the same, and that the books close all the same."""
    network = coach()
    state = ready(network)
    before = run(network, state, "left tap", Until(run_on_s=3.0))
    held = state.held["trunk"].copy()
    held.reset(np.array([apart, 0.0, 0.0, 0.0]))
    more = np.array([-apart, apart, 0.0, 0.0, 0.0]) * held.volume_m3
    books = replace(state.books, start=state.books.start + more)
    near = replace(state, held=MappingProxyType({**state.held, "trunk": held}), books=books)
    assert before.holds(network, near, before.action) is holds
    if holds:
        after, _ = before.taken_over(network, near)
        assert balance_of(after).relative_error < CLOSED
        assert np.array_equal(after.held["trunk"].mean(), before.done[0].held["trunk"].mean())


def test_a_precedent_looks_at_traps_and_at_room_in_tanks() -> None:
    """Guards the pools: another trap is another run, a fuller tank is not while it has room."""
    network = coach()
    state = ready(network)
    before = run(network, state, "left tap", Until(run_on_s=3.0))
    pink = np.array([0.5, 0.5, 0.0, 0.0, 0.0]) * 0.25 * LITRE
    other_trap = replace(state, pools=MappingProxyType({**state.pools, "trap": pink}))
    assert not before.holds(network, other_trap, before.action)
    fuller = np.array([0.01, 0.0, 0.0, 0.0, 0.01])
    books = replace(state.books, start=state.books.start - state.pools["tank"] + fuller)
    half = replace(state, pools=MappingProxyType({**state.pools, "tank": fuller}), books=books)
    assert before.holds(network, half, before.action)
    after, _ = before.taken_over(network, half)
    gained = before.done[0].pools["tank"] - state.pools["tank"]
    assert after.pools["tank"] == pytest.approx(fuller + gained)
    assert balance_of(after).relative_error < CLOSED
    full = np.array([0.02, 0.0, 0.0, 0.0, 0.0])
    brim = replace(state, pools=MappingProxyType({**state.pools, "tank": full}))
    assert not before.holds(network, brim, before.action)


def test_a_drained_line_is_in_doubt_on_the_careful_side() -> None:
    """Guards which lines count as full of water still: drained tubes, and only then."""
    careful = coach(CAREFUL)
    state = arriving_state(careful)
    drained = replace(state, treated=MappingProxyType(dict.fromkeys(state.held, "drained")))
    assert in_doubt(careful, drained, "left")
    assert not in_doubt(careful, drained, "bowl")
    assert not in_doubt(careful, state, "left")
    assert not in_doubt(coach(BEST), drained, "left")
    air = drained.held["left"].copy()
    air.reset(np.array([0.0, 0.0, 0.0, 0.95]))
    books = replace(
        drained.books,
        start=drained.books.start + 0.95 * air.volume_m3 * np.array([-1.0, 0, 0, 0, 1.0]),
    )
    dry = replace(drained, held=MappingProxyType({**drained.held, "left": air}), books=books)
    dry = dry.with_feed("jug", PINK).with_setting("left tap", "open")
    after, seen = run_until(careful, dry, "left tap", Until(volume_m3=0.05 * LITRE))
    assert seen.air_m3 == pytest.approx(0.0, abs=1e-12)
    assert balance_of(after).relative_error < CLOSED


def test_an_accumulator_breathes_what_stands_beside_it() -> None:
    """Guards the share of an accumulator that changes at each use, and its line, by hand."""
    plain = coach()
    stub = pipe("stub", "b", "acc", 0.5)
    network = replace(
        plain,
        links=MappingProxyType({**plain.links, "stub": stub}),
        heights_m=MappingProxyType({**plain.heights_m, "acc": 0.0}),
        pools=MappingProxyType({**plain.pools, "acc": Pool("acc", 1e-3, stirred=True)}),
        breathers=(Breather("acc", "stub", share=0.4),),
    )
    state = ready(network)
    after, _ = run_until(
        network, state.with_setting("left tap", "open"), "left tap", Until(volume_m3=6.0 * LITRE)
    )
    beside = after.mean("trunk").glycol
    assert beside > 0.49
    share = 1.0 - np.exp(-0.4)  # stirred, and 0.4 of its content comes in
    assert after.pools["acc"][1] / 1e-3 == pytest.approx(share * beside, rel=0.02)
    assert after.mean("stub").glycol == pytest.approx(after.pools["acc"][1] / 1e-3)
    assert after.treated["stub"] == "flowed"
    assert balance_of(after).relative_error < CLOSED
