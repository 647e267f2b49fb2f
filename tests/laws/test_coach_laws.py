"""What holds for any coach: trees and loops drawn by lot, with valves, vessels and two outlets."""

from dataclasses import replace
from types import MappingProxyType

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.flow.laid_coach import laid, outlet, pipe, valve
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.hydraulics import passes, steady_flow
from wintertight.flow.replay import Trace, replay
from wintertight.flow.running import run_until
from wintertight.flow.state import State, arriving_state
from wintertight.flow.stream import GLYCOL, RATED
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

LITRE = 1e-3
PINK = Contents(glycol=0.5)
AS_WATER = Contents(rated=1.0)  # of no known viscosity: it flows as water does
OUTLETS = ("first tap", "second tap")


@st.composite
def coaches(draw: st.DrawFn) -> tuple[CoachNetwork, tuple[str, ...]]:
    """Draw a coach of a tree and up to three loops, and which of its valves are open."""
    nodes = draw(st.integers(3, 7))
    pairs = [(draw(st.integers(0, i - 1)), i) for i in range(1, nodes)]
    ends = st.tuples(st.integers(0, nodes - 1), st.integers(0, nodes - 1))
    pairs += draw(st.lists(ends.filter(lambda pair: pair[0] != pair[1]), max_size=3))
    links = []
    for i, pair in enumerate(pairs):
        a, b = pair if draw(st.booleans()) else pair[::-1]
        links.append(_drawn_link(draw, f"l{i}", f"n{a}", f"n{b}"))
    taps = draw(st.lists(st.integers(1, nodes - 1), min_size=2, max_size=2))
    links += [outlet(name, f"n{node}") for name, node in zip(OUTLETS, taps, strict=True)]
    sources = {"jug": ("n0", 12.0)}
    if draw(st.integers(0, 3)) == 0:
        sources["main"] = (f"n{draw(st.integers(0, nodes - 1))}", 14.0)
    coach = laid(links, sources=sources)
    opened = [c for c in coach.controls if c not in OUTLETS and draw(st.integers(0, 3)) > 0]
    return coach, tuple(opened)


def _drawn_link(draw: st.DrawFn, name: str, start: str, end: str) -> Link:
    kind = draw(st.sampled_from(["runs", "runs", "plug", "bowl", "valve", "check"]))
    length = 0.1 * draw(st.integers(2, 30))
    if kind == "runs":
        return pipe(name, start, end, length, holding="runs", runs=draw(st.integers(1, 5)))
    if kind == "plug":
        return pipe(name, start, end, length)
    if kind == "check":
        return pipe(name, start, end, length, one_way=True)
    if kind == "valve":
        return valve(name, start, end, holding="plug", volume_m3=5e-6)
    return Link(name, name, start, end, resistance_s2_m5=1e6, holding="vessel", volume_m3=2e-4)


def ready(coach: CoachNetwork, opened: tuple[str, ...], contents: Contents) -> State:
    """Give a coach full of water, some valves open, the product in its jug."""
    state = arriving_state(coach).with_feed("jug", contents)
    for control in opened:
        state = state.with_setting(control, "open")
    return state


def job(coach: CoachNetwork, opened: tuple[str, ...], contents: Contents = PINK) -> Trace:
    """Run both taps, one after the other, then both at once."""
    run = [Action("run", tap, until=Until(volume_m3=0.45 * LITRE)) for tap in OUTLETS]
    both = [Action("set", OUTLETS[0], "open"), replace(run[1], until=Until(seconds=5.0))]
    return replay(coach, ready(coach, opened, contents), [*run, *both])


@given(coaches())
@settings(max_examples=40)
def test_nothing_is_lost_and_shares_stay_shares(
    drawn: tuple[CoachNetwork, tuple[str, ...]],
) -> None:
    """Guards the balance of every replay, and every content between 0 and 1 of the supply."""
    trace = job(*drawn)
    assert trace.balance.relative_error < 1e-9
    for moment in trace.moments:
        for held in moment.state.held.values():
            for shares in (held.mean().reshape(1, -1), held.sections()):
                assert shares.min() > -1e-9
                assert shares[:, GLYCOL].max() < PINK.glycol + 1e-9


@given(coaches())
@settings(max_examples=40)
def test_nothing_behind_a_shut_valve_changes(drawn: tuple[CoachNetwork, tuple[str, ...]]) -> None:
    """Guards shut links and dead ends: no flow at all, and the very same content to the end."""
    coach, opened = drawn
    state = ready(coach, opened, PINK).with_setting(OUTLETS[0], "open")
    flow = steady_flow(coach, state).flow_m3_s
    assert not flow[~passes(coach, state)].any()
    after, seen = run_until(coach, state, OUTLETS[0], Until(volume_m3=0.6 * LITRE))
    for link in coach.links.values():
        if link.holding != "nothing" and after.treated[link.id] == "as found":
            assert after.held[link.id] is state.held[link.id]
    closed = {k for k, ok in zip(coach.links, passes(coach, state), strict=True) if not ok}
    assert not closed & set(seen.way)
    assert not closed & {k for k, how in after.treated.items() if how != "as found"}


def renamed(coach: CoachNetwork, order: list[int]) -> CoachNetwork:
    """Give the same coach with other names of nodes, and its links in another order."""
    nodes = sorted(coach.heights_m)
    new = {name: f"x{(7 * i + 3) % 101}" for i, name in enumerate(nodes)}
    links = list(coach.links.values())
    moved = [replace(links[i], start=new[links[i].start], end=new[links[i].end]) for i in order]
    sources = {k: replace(s, node=new[s.node]) for k, s in coach.sources.items()}
    return replace(
        coach,
        links=MappingProxyType({k.id: k for k in moved}),
        sources=MappingProxyType(sources),
        heights_m=MappingProxyType({new[n]: h for n, h in coach.heights_m.items()}),
    )


@given(coaches(), st.randoms(use_true_random=False))
@settings(max_examples=25)
def test_names_and_order_change_nothing(
    drawn: tuple[CoachNetwork, tuple[str, ...]], lot: st.DataObject
) -> None:
    """Guards against answers that depend on how a card is written down."""
    coach, opened = drawn
    order = list(range(len(coach.links)))
    lot.shuffle(order)  # type: ignore[attr-defined]
    first, second = job(coach, opened).end, job(renamed(coach, order), opened).end
    assert first.treated == second.treated
    for link, held in first.held.items():
        assert np.abs(held.mean() - second.held[link].mean()).max() < 1e-9


@given(coaches(), st.floats(0.05, 0.8), st.floats(0.05, 0.8))
@settings(max_examples=40)
def test_more_never_makes_the_worst_section_weaker(
    drawn: tuple[CoachNetwork, tuple[str, ...]], some: float, more: float
) -> None:
    """Guards run-on: under one feed through lines that stay as they are, weak spots only shrink."""
    coach, opened = drawn
    lone = replace(coach, sources=MappingProxyType({"jug": coach.sources["jug"]}))
    state = ready(lone, opened, AS_WATER).with_setting(OUTLETS[0], "open")
    state = state.with_feed("main", AS_WATER) if "main" in coach.sources else state
    short, _ = run_until(coach, state, OUTLETS[0], Until(volume_m3=some * LITRE))
    longer, _ = run_until(coach, state, OUTLETS[0], Until(volume_m3=(some + more) * LITRE))
    for link, held in short.held.items():
        weak = held.sections()[:, RATED].min()
        assert longer.held[link].sections()[:, RATED].min() >= weak - 1e-9


@given(coaches(), st.sampled_from([0.03e-3, 0.1e-3, 0.37e-3]))
@settings(max_examples=25)
def test_strides_change_nothing_while_flows_stay(
    drawn: tuple[CoachNetwork, tuple[str, ...]], stride_m3: float
) -> None:
    """Guards contents against the engine's stride; a vessel lets out quarters of itself at most."""
    coach, opened = drawn
    if "main" in coach.sources:
        coach = laid(
            [k for k in coach.links.values() if not k.id.endswith("/end")],
            sources={"jug": ("n0", 12.0)},
        )
    striding = replace(coach, case=replace(coach.case, chunk_m3=stride_m3))
    once = replace(coach, case=replace(coach.case, chunk_m3=1.0))
    a, b = (job(some, opened, AS_WATER).end for some in (striding, once))
    stirred = any(link.holding == "vessel" for link in coach.links.values())
    for link, held in a.held.items():
        apart = np.abs(held.mean() - b.held[link].mean()).max()
        assert apart < (1e-2 if stirred else 1e-9)
