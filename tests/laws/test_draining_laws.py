"""Laws of draining, on plumbing drawn at random: loops, sags, check valves, shut valves, slopes."""

from collections.abc import Callable
from dataclasses import replace
from types import MappingProxyType

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.unit.flow.laid_coach import laid, pipe
from tests.unit.flow.random_plumbing import Plumbing, coach_of, plumbing
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.draining import Drained, drain_by_gravity
from wintertight.flow.freed import best_openings, freed_by
from wintertight.flow.state import State, arriving_state
from wintertight.flow.tilt import Tilt

seeds = st.integers(0, 100_000)


def next_like(seed: int, wanted: Callable[[Plumbing], bool]) -> Plumbing:
    """Draw the first plumbing from a seed on that has what is wanted."""
    return next(d for d in map(plumbing, range(seed, seed + 1000)) if wanted(d))


def no_more(after: Drained, before: Drained) -> None:
    """Assert that no link keeps more than before, on neither side."""
    for link in after.most_m3:
        assert after.most_m3[link] <= before.most_m3[link] + 1e-12, link
        assert after.least_m3[link] <= before.least_m3[link] + 1e-12, link
    assert set(before.emptied) <= set(after.emptied)


def shut_controls(network: CoachNetwork, state: State, *, mouths: bool) -> list[str]:
    """Give the mouths, or the valves, that are still shut."""
    names = [n for n in network.controls if n.startswith("mouth ") == mouths]
    return [n for n in names if state.settings[n] == "shut" and n not in {"heater", "mouth plug"}]


@given(seeds, st.data())
@settings(max_examples=150)
def test_one_more_vent_never_traps_more(seed: int, data: st.DataObject) -> None:
    """Guards that opening a tap, a low point or a relief valve keeps no more anywhere."""
    drawn = next_like(seed, lambda d: any(not d.mouths[n] for n in set(d.mouths) - {"plug"}))
    network, state = coach_of(drawn)
    shut = shut_controls(network, state, mouths=True)
    opened = state.with_setting(data.draw(st.sampled_from(shut)), "open")
    no_more(
        drain_by_gravity(network, opened, drawn.tilt), drain_by_gravity(network, state, drawn.tilt)
    )


@given(seeds)
@settings(max_examples=60)
def test_a_plug_taken_out_never_traps_more(seed: int) -> None:
    """Guards a heater whose plug comes out: it no longer joins its lines, but its vessel does."""
    drawn = next_like(seed, lambda d: d.heater and not d.mouths["plug"])
    network, state = coach_of(drawn)
    out = state.with_settings({"heater": "shut", "mouth plug": "open"})
    no_more(
        drain_by_gravity(network, out, drawn.tilt), drain_by_gravity(network, state, drawn.tilt)
    )


@given(seeds, st.data())
@settings(max_examples=100)
def test_opening_a_valve_of_a_full_coach_never_traps_more(seed: int, data: st.DataObject) -> None:
    """Guards two-way valves: true of the state they are opened in, and of no draining before it."""
    # A valve opened after a first draining may let water run down into what was empty, and a handle
    # with several positions shuts one way as it opens another: of these nothing is promised.
    drawn = next_like(seed, lambda d: any(r.kind == "valve" and not r.is_open for r in d.runs))
    network, state = coach_of(drawn)
    shut = shut_controls(network, state, mouths=False)
    opened = state.with_setting(data.draw(st.sampled_from(shut)), "open")
    no_more(
        drain_by_gravity(network, opened, drawn.tilt), drain_by_gravity(network, state, drawn.tilt)
    )


@given(seeds, st.floats(0.0, 1.0))
@settings(max_examples=150)
def test_the_lowest_opening_lowered_never_drains_less(seed: int, down_m: float) -> None:
    """Guards a low point at the end of its line, the lowest opening there is, moved lower still."""
    drawn = next_like(seed, lambda d: d.mouths.get("low", False))
    network, state = coach_of(drawn)
    heights = {**network.heights_m, "low": network.heights_m["low"] - down_m}
    lower = replace(network, heights_m=MappingProxyType(heights))
    no_more(
        drain_by_gravity(lower, state, drawn.tilt), drain_by_gravity(network, state, drawn.tilt)
    )


def test_a_vent_lowered_may_drain_less() -> None:
    """Guards what is no law: an opening that lets air in does so only from above."""
    links = [pipe("fall", "top", "foot"), pipe("side", "top", "tap")]
    openings = [("foot", "low point"), ("tap", "tap")]
    kept = []
    for tap_m in (1.5, 0.5):
        coach = laid(links, heights_m={"top": 1.0, "tap": tap_m}, openings=openings)
        state = arriving_state(coach).with_settings({"low point": "open", "tap": "open"})
        kept.append(sum(drain_by_gravity(coach, state).most_m3.values()))
    assert kept[0] == 0.0 < kept[1]


@given(seeds, st.floats(-0.05, 0.05), st.floats(-0.05, 0.05))
@settings(max_examples=100)
def test_a_slope_is_nothing_but_other_heights(seed: int, along: float, across: float) -> None:
    """Guards the tilt: straight lines on a slope drain as they do on a level floor, so bent."""
    drawn = plumbing(seed)
    network, state = coach_of(drawn)
    straight = {
        k: replace(link, lowest_m=None, highest_m=None) for k, link in network.links.items()
    }
    network = replace(network, links=MappingProxyType(straight))
    tilt = Tilt(along, across)
    lifted = {n: h + tilt.rise_m(network.places_m[n]) for n, h in network.heights_m.items()}
    bent = replace(network, heights_m=MappingProxyType(lifted))
    assert drain_by_gravity(network, state, tilt) == drain_by_gravity(bent, state)


@given(seeds)
@settings(max_examples=60)
def test_what_openings_free_adds_up(seed: int) -> None:
    """Guards the volumes: the best openings in turn free what stayed before and does not after."""
    drawn = plumbing(seed)
    network, state = coach_of(drawn)
    before = drain_by_gravity(network, state, drawn.tilt)
    turn = best_openings(network, state, drawn.tilt)
    after = state.with_settings({freed.control: freed.setting for freed in turn})
    kept = sum(drain_by_gravity(network, after, drawn.tilt).most_m3.values())
    freed = sum(one.volume_m3 for one in turn)
    assert abs(sum(before.most_m3.values()) - freed - kept) < 1e-9
    assert freed_by(network, after, drawn.tilt) == []
