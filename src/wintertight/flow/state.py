"""The state of one coach at one moment: how everything stands, and what everything holds."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held, PlugHeld, RunsHeld, VesselHeld
from wintertight.flow.laminar import FIRST_ARRIVAL, SeriesKernel
from wintertight.flow.stream import AIR, SHARES, contents_of, shares_of
from wintertight.fluids.contents import Contents

Array = npt.NDArray[np.float64]

WATER = np.zeros(SHARES)
ONLY_AIR = np.eye(SHARES)[AIR]

ICE = "(ice)"
"""Mark of a coach in whose lines ice may stand."""

_KERNELS: dict[tuple[int, float], SeriesKernel] = {}


@dataclass(frozen=True, slots=True)
class Books:
    """What came in, what went out, and what was held at the start [m3].

    Each entry holds water, glycol, ethanol, rated product and air, shape (5,).
    """

    start: Array
    came_in: Array
    went_out: Array

    @classmethod
    def opened(cls, held: Array) -> "Books":
        """Open the books on what is held at the start [m3], shape (5,)."""
        return cls(held, np.zeros(SHARES + 1), np.zeros(SHARES + 1))


@dataclass(frozen=True, slots=True, eq=False)
class State:
    """One coach at one moment. Frozen: an action gives a new one.

    Attributes:
        settings: how each control stands.
        feeds: what each source gives.
        held: what each link holds.
        pools: volumes [m3] of water, glycol, ethanol, rated and air in each pool, shape (5,).
        treated: how each link came by its content: as found, flowed, drained, swept, emptied.
        books: what came in and went out so far.
        marks: fittings whose pressure was let out, and ``ICE`` while ice may stand in lines.
    """

    settings: Mapping[str, str]
    feeds: Mapping[str, Contents]
    held: Mapping[str, Held]
    pools: Mapping[str, Array]
    treated: Mapping[str, str]
    books: Books
    marks: frozenset[str] = field(default_factory=frozenset)

    def with_setting(self, control: str, setting: str) -> "State":
        """Give the state with one control set."""
        return replace(self, settings=MappingProxyType({**self.settings, control: setting}))

    def with_settings(self, settings: Mapping[str, str]) -> "State":
        """Give the state with several controls set."""
        return replace(self, settings=MappingProxyType({**self.settings, **settings}))

    def with_feed(self, source: str, contents: Contents) -> "State":
        """Give the state with one source giving something else."""
        return replace(self, feeds=MappingProxyType({**self.feeds, source: contents}))

    def mean(self, link: str) -> Contents:
        """Give the mean contents of a link."""
        return contents_of(self.held[link].mean())


def new_held(link: Link, shares: Array, parcel_m3: float) -> Held:
    """Make the content of a link, full of one fluid; laminar lines are fed in such parcels."""
    if link.holding == "vessel":
        return VesselHeld(link.volume_m3, shares)
    if link.holding == "plug":
        return PlugHeld(link.volume_m3, shares)
    parcel = min(parcel_m3 / link.volume_m3, FIRST_ARRIVAL / link.runs)
    key = (link.runs, parcel)
    kernel = _KERNELS.get(key)
    if kernel is None:
        kernel = _KERNELS.setdefault(key, SeriesKernel(link.runs, key[1]))
    return RunsHeld(link.volume_m3, shares, kernel)


def five(volumes_of_four: Array, total_m3: float) -> Array:
    """Put water in front of what is not water.

    Args:
        volumes_of_four: glycol, ethanol, rated product, air [m3], shape (4,).
        total_m3: volume of all, water included [m3].

    Returns:
        Volumes of water, glycol, ethanol, rated product, air [m3], shape (5,).
    """
    return np.concatenate(([total_m3 - volumes_of_four.sum()], volumes_of_four))


def arriving_state(network: CoachNetwork, contents: Contents | None = None) -> State:
    """Give a coach as it arrives: every line, vessel and trap full of water, heat on, pump off.

    Args:
        network: the coach.
        contents: what fills it; water where None.

    Returns:
        The state, with its books opened.
    """
    shares = shares_of(contents) if contents else WATER
    parcel_m3 = network.case.parcel_m3
    held = {
        link.id: new_held(link, shares, parcel_m3)
        for link in network.links.values()
        if link.holding != "nothing"
    }
    pools = {k: five(shares * p.volume_m3, p.volume_m3) for k, p in network.pools.items()}
    state = State(
        settings=MappingProxyType({c.id: c.as_found for c in network.controls.values()}),
        feeds=MappingProxyType({s: Contents.all_water() for s in network.sources}),
        held=MappingProxyType(held),
        pools=MappingProxyType(pools),
        treated=MappingProxyType(dict.fromkeys(held, "as found")),
        books=Books.opened(np.zeros(SHARES + 1)),
    )
    return replace(state, books=Books.opened(all_held(state)))


def with_outlet_open(network: CoachNetwork, state: State, outlet: str) -> State:
    """Give the state with everything set so that one outlet runs."""
    return state.with_settings(dict(network.outlets[outlet].opens))


def in_doubt(network: CoachNetwork, state: State, link: str) -> bool:
    """Tell whether a line counts as full of water when fluid first moves in it.

    On the careful side a line that should have drained had not drained after all.
    """
    doubted = not network.case.trusts_drains and network.links[link].way == "pipe"
    return doubted and state.treated[link] == "drained"


def all_held(state: State) -> Array:
    """Add up what all links and pools hold.

    Args:
        state: any state.

    Returns:
        Volumes of water, glycol, ethanol, rated product, air [m3], shape (5,).
    """
    total = np.zeros(SHARES + 1)
    for held in state.held.values():
        total += five(held.mean() * held.volume_m3, held.volume_m3)
    for volumes in state.pools.values():
        total += volumes
    return total
