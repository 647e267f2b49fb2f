"""What can be done to a coach, as far as its fluids are concerned: one table of verbs.

* set: put a control to a setting
* feed: let a source give something else (a jug, an empty tank)
* run: open an outlet, let fluid run until a rule says stop, shut it again
* drain: let gravity take what it takes, as everything stands
* pour: pour something into a trap or tank
* relieve: let the pressure out of a fitting by working it once (pedal, check)
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal

import numpy as np

from wintertight.errors import ChoiceError
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.draining import drain_by_gravity
from wintertight.flow.held import VesselHeld
from wintertight.flow.running import run_until
from wintertight.flow.state import ONLY_AIR, Books, State, five
from wintertight.flow.stream import SHARES, Stream, shares_of
from wintertight.flow.until import OutletRun, Until
from wintertight.fluids.contents import Contents

Verb = Literal["set", "feed", "run", "drain", "pour", "relieve"]

WET_SHARE = 0.05
"""Share of water left as film and drops in what was drained or emptied by hand [1]; common
practice."""

HEATER_HEEL = 0.042
"""Share of a heater that stays below its plug: one quart in six gallons [1]; common practice."""


@dataclass(frozen=True, slots=True)
class Action:
    """One thing done.

    Attributes:
        verb: what is done.
        part: the control, source or pool it is done to; for a run, the outlet's control.
        setting: what a control is set to.
        contents: what a source gives from now on, or what is poured.
        until: when a run stops.
        volume_m3: how much is poured [m3].
    """

    verb: Verb
    part: str = ""
    setting: str = ""
    contents: Contents | None = None
    until: Until | None = None
    volume_m3: float = 0.0


@dataclass(frozen=True, slots=True)
class Outcome:
    """What was seen while an action was done."""

    run: OutletRun | None = None
    drainage: Mapping[str, str] | None = None
    seconds: float = 0.0


Done = tuple[State, Outcome]

EMPTIED_BY_HAND = frozenset(
    {("bowl", "off"), ("body", "removed"), ("filter", "bypass plug in"), ("mould", "emptied")}
)
"""Settings that empty a fitting by hand: (thing, setting)."""


def _set(network: CoachNetwork, state: State, action: Action) -> Done:
    control = network.controls.get(action.part)
    if control is None or action.setting not in control.settings:
        message = f"'{action.part}' cannot be set to '{action.setting}'"
        raise ChoiceError(message)
    after = state.with_setting(action.part, action.setting)
    if control.thing == "switch" and action.setting == "on":
        after = replace(after, marks=frozenset())  # pressure is back: what was relieved is not
    if (control.thing, action.setting) in EMPTIED_BY_HAND:
        if control.part in after.held:
            after = refill(after, control.part, _left_wet(WET_SHARE), "emptied")
        for name, pool in network.pools.items():
            if pool.part == control.part and not pool.stirred:
                after = _empty_tank(after, name, pool.heel)
    return after, Outcome()


def _feed(network: CoachNetwork, state: State, action: Action) -> Done:
    if action.part not in network.sources or action.contents is None:
        message = f"'{action.part}' is no source"
        raise ChoiceError(message)
    return state.with_feed(action.part, action.contents), Outcome()


def _run(network: CoachNetwork, state: State, action: Action) -> Done:
    if action.part not in network.outlets:
        message = f"'{action.part}' is no outlet"
        raise ChoiceError(message)
    found = {control: state.settings[control] for control, _ in network.outlets[action.part].opens}
    opened = with_outlet_open(network, state, action.part)
    after, seen = run_until(network, opened, action.part, action.until or Until())
    return after.with_settings(found), Outcome(run=seen, seconds=seen.seconds)


def with_outlet_open(network: CoachNetwork, state: State, outlet: str) -> State:
    """Give the state with everything set so that one outlet runs."""
    return state.with_settings(dict(network.outlets[outlet].opens))


def _drain(network: CoachNetwork, state: State, _action: Action) -> Done:
    drained = drain_by_gravity(network, state)
    for link, drainage in drained.drainage.items():
        if drainage == "drained":
            state = refill(state, link, _left_wet(WET_SHARE), "drained")
        elif drainage == "uncertain" and state.treated[link] == "as found":
            doubtful = {**state.treated, link: "drain uncertain"}
            state = replace(state, treated=MappingProxyType(doubtful))
    for vessel in drained.emptied:
        if vessel in network.pools:
            state = _empty_tank(state, vessel, network.pools[vessel].heel)
            if vessel in network.sources:
                state = state.with_feed(vessel, Contents.all_air())
        else:
            state = refill(state, vessel, _left_wet(HEATER_HEEL), "drained")
    return state, Outcome(drainage=MappingProxyType(dict(drained.drainage)))


def _pour(network: CoachNetwork, state: State, action: Action) -> Done:
    pool = network.pools.get(action.part)
    if pool is None or action.contents is None or not action.volume_m3 > 0.0:
        message = f"nothing can be poured into '{action.part}'"
        raise ChoiceError(message)
    shares = shares_of(action.contents)
    came = five(shares * action.volume_m3, action.volume_m3)
    volumes = state.pools[action.part]
    if pool.stirred:
        vessel = VesselHeld(pool.volume_m3, volumes[1:] / pool.volume_m3)
        over = vessel.push(Stream.of(action.volume_m3, shares), forward=True)
        new = five(vessel.mean() * pool.volume_m3, pool.volume_m3)
        went = five(over.component_volumes, over.volume_m3)
    else:
        room = min(action.volume_m3, float(volumes[-1]))
        taken = came * (room / action.volume_m3)
        new = volumes + taken
        new[-1] -= room
        went = came - taken
        went[-1] += room
    pools = MappingProxyType({**state.pools, action.part: new})
    return replace(state, pools=pools, books=_moved(state.books, came, went)), Outcome()


def _relieve(_network: CoachNetwork, state: State, action: Action) -> Done:
    return replace(state, marks=state.marks | {action.part}), Outcome()


VERBS: Mapping[Verb, Callable[[CoachNetwork, State, Action], Done]] = MappingProxyType(
    {"set": _set, "feed": _feed, "run": _run, "drain": _drain, "pour": _pour, "relieve": _relieve}
)
"""What each verb does: (network, state, action) to (state, outcome)."""


def _left_wet(share: float) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """Give shares of a hollow that keeps so much of its liquid as water, and air for the rest."""
    return np.asarray(ONLY_AIR * (1.0 - share))


def _moved(books: Books, came: object, went: object) -> Books:
    return Books(
        books.start,
        books.came_in + np.asarray(came),
        books.went_out + np.asarray(went),
    )


def refill(state: State, link: str, shares: object, treated: str) -> State:
    """Give the state with one link's content let out and another in its place, on the books.

    Where it already holds less liquid than ``shares`` would leave, it stays as it is.
    """
    held = state.held[link]
    new = np.asarray(shares, dtype=float)
    before = five(held.mean() * held.volume_m3, held.volume_m3)
    marked = MappingProxyType({**state.treated, link: treated})
    if before[-1] / held.volume_m3 >= new[-1]:
        return replace(state, treated=marked)
    # What is left keeps the composition of what was there.
    liquid = held.mean().copy()
    liquid[SHARES - 1] = 0.0
    wet = 1.0 - new[-1]
    full = 1.0 - held.mean()[SHARES - 1]
    new = new + liquid / full * wet
    twin = held.copy()
    twin.reset(new)
    after = five(new * held.volume_m3, held.volume_m3)
    change = after - before
    came, went = np.maximum(change, 0.0), np.maximum(-change, 0.0)
    return replace(
        state,
        held=MappingProxyType({**state.held, link: twin}),
        treated=marked,
        books=_moved(state.books, came, went),
    )


def _empty_tank(state: State, tank: str, heel: float) -> State:
    """Give the state with a tank drained to its heel, on the books."""
    before = state.pools[tank]
    volume = float(before.sum())
    liquid = float(before[:-1].sum())
    keep = min(liquid, heel * volume)
    after = before * (keep / liquid) if liquid else before.copy()
    after[-1] = volume - keep
    change = after - before
    return replace(
        state,
        pools=MappingProxyType({**state.pools, tank: after}),
        books=_moved(state.books, np.maximum(change, 0.0), np.maximum(-change, 0.0)),
    )
