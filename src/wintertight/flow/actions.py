"""What can be done to a coach, as far as its fluids are concerned: one table of verbs.

* set: put a control to a setting
* feed: let a source give something else (a jug, an empty tank)
* run: open an outlet, let fluid run until a rule says stop, shut it again
* drain: let gravity take what it takes, as everything stands
* pour: pour something into a trap or tank
* relieve: let the pressure out of a fitting by working it once (pedal, check)
* blow: open an outlet, let air blow through it, shut it again
* thaw: keep the coach warm until no ice can stand in it
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Literal

from wintertight.errors import ChoiceError
from wintertight.flow.air.blowing import Blow, blown
from wintertight.flow.air.sweep import SweepResult
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.draining import drain_as_it_stands
from wintertight.flow.letting_out import (
    HEATER_HEEL,
    WET_SHARE,
    empty_tank,
    left_wet,
    moved,
    refill,
)
from wintertight.flow.pools import taken_in
from wintertight.flow.running import run_until
from wintertight.flow.state import ICE, State, five, with_outlet_open
from wintertight.flow.stream import AIR, Stream, shares_of
from wintertight.flow.until import OutletRun, Until
from wintertight.fluids.contents import Contents

MOSTLY = 0.5
"""Share of air up to which a link counts as full [1]."""

NO_PRODUCT = 1e-6
"""Share of antifreeze up to which what a link holds counts as the coach's own water [1]."""

Verb = Literal["set", "feed", "run", "drain", "pour", "relieve", "blow", "thaw"]


@dataclass(frozen=True, slots=True)
class Action:
    """One thing done.

    Attributes:
        verb: what is done.
        part: the control, source or pool it is done to; for a run or a blow, the outlet's control.
        setting: what a control is set to.
        contents: what a source gives from now on, or what is poured.
        until: when a run stops.
        volume_m3: how much is poured [m3].
        blow: where air comes in, and what drives it.
    """

    verb: Verb
    part: str = ""
    setting: str = ""
    contents: Contents | None = None
    until: Until | None = None
    volume_m3: float = 0.0
    blow: Blow | None = None


@dataclass(frozen=True, slots=True)
class Outcome:
    """What was seen while an action was done."""

    run: OutletRun | None = None
    drainage: Mapping[str, str] | None = None
    sweep: SweepResult | None = None
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
        # Pressure is back: what was relieved is not.
        after = replace(after, marks=after.marks & {ICE})
    if (control.thing, action.setting) in EMPTIED_BY_HAND:
        if control.part in after.held:
            after = refill(after, control.part, left_wet(WET_SHARE), "emptied")
        for name, pool in network.pools.items():
            if pool.part == control.part and not pool.stirred:
                after = empty_tank(after, name, pool.heel)
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


def _drain(network: CoachNetwork, state: State, _action: Action) -> Done:
    drained = drain_as_it_stands(network, state)
    for link, drainage in drained.drainage.items():
        if drainage == "drained":
            state = refill(state, link, left_wet(WET_SHARE), "drained")
        elif drainage == "uncertain" and _stands_full(state, link):
            doubtful = {**state.treated, link: "drain uncertain"}
            state = replace(state, treated=MappingProxyType(doubtful))
    for vessel in drained.emptied:
        if vessel in network.pools:
            state = empty_tank(state, vessel, network.pools[vessel].heel)
            if vessel in network.sources:
                state = state.with_feed(vessel, Contents.all_air())
        else:
            state = refill(state, vessel, left_wet(HEATER_HEEL), "drained")
    return state, Outcome(drainage=MappingProxyType(dict(drained.drainage)))


def _stands_full(state: State, link: str) -> bool:
    """Tell whether a link stands full as found, or of the coach's own water that was moved."""
    if state.treated[link] != "flowed":
        return state.treated[link] == "as found"
    held = state.held[link].mean()
    return bool(held[AIR] <= MOSTLY and held[:AIR].sum() <= NO_PRODUCT)


def _pour(network: CoachNetwork, state: State, action: Action) -> Done:
    pool = network.pools.get(action.part)
    if pool is None or action.contents is None or not action.volume_m3 > 0.0:
        message = f"nothing can be poured into '{action.part}'"
        raise ChoiceError(message)
    shares = shares_of(action.contents)
    poured = Stream.of(action.volume_m3, shares)
    new, over, lost = taken_in(pool, state.pools[action.part], poured)
    came = five(shares * action.volume_m3, action.volume_m3)
    went = lost + five(over.component_volumes, over.volume_m3)
    pools = MappingProxyType({**state.pools, action.part: new})
    return replace(state, pools=pools, books=moved(state.books, came, went)), Outcome()


def _blow(network: CoachNetwork, state: State, action: Action) -> Done:
    if action.blow is None:
        message = f"'{action.part}' is blown out with nothing"
        raise ChoiceError(message)
    after, found = blown(network, state, action.part, action.blow)
    seconds = found.work.seconds + found.work.refill_s if found.work.bursts else 0.0
    return after, Outcome(sweep=found, seconds=seconds)


def _thaw(_network: CoachNetwork, state: State, _action: Action) -> Done:
    return replace(state, marks=state.marks - {ICE}), Outcome()


def _relieve(_network: CoachNetwork, state: State, action: Action) -> Done:
    return replace(state, marks=state.marks | {action.part}), Outcome()


VERBS: Mapping[Verb, Callable[[CoachNetwork, State, Action], Done]] = MappingProxyType(
    {
        "set": _set,
        "feed": _feed,
        "run": _run,
        "drain": _drain,
        "pour": _pour,
        "relieve": _relieve,
        "blow": _blow,
        "thaw": _thaw,
    }
)
"""What each verb does: (network, state, action) to (state, outcome)."""
