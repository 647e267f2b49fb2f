"""Letting fluid run from open outlets until a rule says stop."""

from collections.abc import Callable
from copy import copy
from dataclasses import dataclass, field, replace
from types import MappingProxyType
from typing import Any

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held, VesselHeld
from wintertight.flow.hydraulics import (
    BAY_DEGC,
    STILL_M3_S,
    glycol_shares,
    pipe_places,
    steady_flow,
)
from wintertight.flow.routing import NOWHERE, Route, carry, route
from wintertight.flow.state import WATER, Books, State, five, in_doubt
from wintertight.flow.stream import AIR, DUST_M3, SHARES, Stream, shares_of
from wintertight.flow.until import COLOUR_SHARE, OutletRun, Until
from wintertight.fluids.transport import kinematic_viscosity

Array = npt.NDArray[np.float64]

STEADY = 0.002
"""Change of the whole flow from one look to the next [1] below which the next stride may double."""

BEYOND_M3 = 25e-6
"""Volume by which a long stride goes beyond where colour shows [m3]."""

MOVES = (
    "pools",
    "seconds",
    "drawn_m3",
    "volume_m3",
    "colour_s",
    "colour_m3",
    "strength",
    "air_m3",
    "_came_in",
    "_went_out",
    "_moved",
    "_glycol",
)
"""What changes while a run moves, beside what links hold."""

SLOWEST_PACE = 0.8
"""Least flow half way through a stride, as a share of that at its beginning [1]."""


@dataclass(slots=True)
class Running:
    """A run that is under way; ``step`` moves it on, ``finish`` gives the state after it."""

    network: CoachNetwork
    state: State
    held: dict[str, Held] = field(init=False)
    pools: dict[str, Array] = field(init=False)
    seconds: float = 0.0
    drawn_m3: float = 0.0
    volume_m3: dict[str, float] = field(default_factory=dict)
    colour_s: dict[str, float] = field(default_factory=dict)
    colour_m3: dict[str, float] = field(default_factory=dict)
    strength: dict[str, float] = field(default_factory=dict)
    air_m3: dict[str, float] = field(default_factory=dict)
    route: Route = NOWHERE
    still: bool = False
    _watched: dict[str, list[str]] = field(init=False)
    _came_in: Array = field(default_factory=lambda: np.zeros(SHARES + 1))
    _went_out: Array = field(default_factory=lambda: np.zeros(SHARES + 1))
    _flows: Array | None = None
    _stride_m3: float = field(init=False)
    pace: float = 1.0
    _glycol: Array = field(init=False)
    _owned: set[str] = field(default_factory=set)
    _moved: dict[str, None] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Take the contents over; each is copied when it first moves."""
        self._watched = {}
        for outlet in self.network.outlets.values():
            if all(self.state.settings[c] == setting for c, setting in outlet.opens):
                self._watched.setdefault(outlet.link, []).append(outlet.control)
        self.held = dict(self.state.held)
        self.pools = dict(self.state.pools)
        self._stride_m3 = self.network.case.chunk_m3
        self._glycol = glycol_shares(self.network, self.held)
        self.look()

    def look(self) -> None:
        """Solve the flow anew with what the lines hold now."""
        one_for_all = self.network.case.viscosity_m2_s
        if one_for_all is not None and self._flows is not None:
            return  # no content changes the flow
        before = self.flow_m3_s
        steady = steady_flow(
            self.network,
            self.state,
            viscosity_m2_s=one_for_all or kinematic_viscosity(self._glycol, BAY_DEGC),
            start_flows=self._flows,
        )
        same = self._flows is not None and bool(
            np.array_equal(_signs(steady.flow_m3_s), _signs(self._flows))
        )
        self._flows = steady.flow_m3_s
        if same:
            flows = dict(zip(self.network.links, self._flows, strict=True))
            self.route = self.route.at_flows(flows)
        else:
            self.route = route(self.network, self._flows)
        self.still = not self.route.legs
        for leg in self.route.legs:
            if leg.link.id in self.held and leg.link.id not in self._owned:
                self.held[leg.link.id] = self._taken_over(leg.link)
                self._owned.add(leg.link.id)
        self._stretch(before)

    def _stretch(self, flow_before_m3_s: float) -> None:
        """Lengthen the stride while the flow stays as it is, and begin anew when it does not.

        In long strides the flow is taken as it will be half way, if it goes on changing as it did.
        """
        case = self.network.case
        if case.longest_chunk_m3 is None or not flow_before_m3_s:
            return
        change = self.flow_m3_s / flow_before_m3_s - 1.0
        longer = min(2.0 * self._stride_m3, case.longest_chunk_m3)
        self._stride_m3 = longer if abs(change) < STEADY else case.chunk_m3
        self.pace = min(max(1.0 + 0.5 * change, SLOWEST_PACE), 1.0)

    def _taken_over(self, link: Link) -> Held:
        """Copy what a link holds; on the careful side a drained line had not drained after all."""
        held = self.held[link.id].copy()
        if in_doubt(self.network, self.state, link.id):
            self._refill(held, WATER)
        return held

    def _refill(self, held: Held, shares: Array) -> None:
        """Put another content in, on the books."""
        before = five(held.mean() * held.volume_m3, held.volume_m3)
        held.reset(shares)
        change = five(shares * held.volume_m3, held.volume_m3) - before
        self._came_in += np.maximum(change, 0.0)
        self._went_out += np.maximum(-change, 0.0)

    @property
    def flow_m3_s(self) -> float:
        """Flow out of all open outlets [m3/s]."""
        return sum(leg.flow_m3_s for leg in self.route.legs if leg.link.is_outlet)

    def flow_at(self, outlet: str) -> float:
        """Give the flow out of the outlet of one control [m3/s]."""
        spout = self.network.outlets[outlet].link
        return sum((leg.flow_m3_s for leg in self.route.legs if leg.link.id == spout), 0.0)

    def step(self, seconds: float) -> None:
        """Move the run on by some seconds [s], and look again."""
        self._move(seconds)
        self.look()

    def _step_to_colour(self, seconds: float, outlet: str, expect_m3: float | None) -> None:
        """Do the same, but hardly further than to where colour shows, if it does meanwhile."""
        flow, passed = self.flow_at(outlet), self.volume_m3.get(outlet, 0.0)
        if expect_m3 is not None and flow and passed < expect_m3:
            seconds = min(seconds, (expect_m3 + BEYOND_M3 - passed) / (flow * self.pace))
        begin, before = self.seconds, self._mark()
        self._move(seconds)
        shown = self.colour_s.get(outlet)
        if shown is not None and (self.seconds - shown) * flow > 2.0 * BEYOND_M3:
            self._back_to(before)
            self._move(max(shown - begin, 0.0) + BEYOND_M3 / flow)
        self.look()

    def _mark(self) -> dict[str, Any]:
        """Keep how the run stands, to come back to it."""
        kept = {name: copy(getattr(self, name)) for name in MOVES}
        kept["held"] = {
            link: held.copy() if link in self._owned else held for link, held in self.held.items()
        }
        return kept

    def _back_to(self, mark: dict[str, Any]) -> None:
        """Let the run stand again as it did."""
        for name, value in mark.items():
            setattr(self, name, value)

    def _move(self, seconds: float) -> None:
        """Move the run on by some seconds [s]."""
        at_once = seconds * self.pace  # at the flow as it stands
        feeds = {
            source.node: shares_of(self.state.feeds[name])
            for name, source in self.network.sources.items()
        }
        ease = self.network.case.longest_chunk_m3 is not None
        carried = carry(self.route, self.held, feeds, at_once, ease=ease)
        self._moved.update(dict.fromkeys(leg.link.id for leg in self.route.legs))
        self.drawn_m3 += self.flow_m3_s * at_once
        supply = 0.0
        for stream in carried.came_in.values():
            self._came_in += five(stream.component_volumes, stream.volume_m3)
            supply = max(supply, float(stream.strengths.max()))
        for leg in self.route.legs:
            if leg.link.drops_to is not None:
                fell = carried.fell_out[leg.link.id]
                for outlet in self._watched.get(leg.link.id, ()):
                    self._watch(outlet, fell, leg.flow_m3_s, supply)
                self._drop(leg.link.drops_to, fell)
        self.seconds += seconds
        places = pipe_places(self.network)
        for link in self.route.hollows:
            if link in places:
                self._glycol[places[link]] = self.held[link].glycol_about()

    def _watch(self, outlet: str, stream: Stream, flow_m3_s: float, supply: float) -> None:
        """Note what is seen at an outlet."""
        before = self.volume_m3.get(outlet, 0.0)
        self.volume_m3[outlet] = before + stream.volume_m3
        air = float(stream.volumes @ stream.shares[:, AIR])
        self.air_m3[outlet] = self.air_m3.get(outlet, 0.0) + air
        if supply <= 0.0 or not len(stream.volumes):
            return
        strengths = stream.strengths / supply
        wet = stream.shares[:, AIR] < 0.5  # noqa: PLR2004 - more liquid than air
        if wet.any():
            self.strength[outlet] = float(strengths[wet][-1])
        # Colour that water or air follows was what the hose still held: only what stays counts.
        coloured = wet & (strengths >= COLOUR_SHARE)
        clear, shown = np.flatnonzero(~coloured), np.flatnonzero(coloured)
        if len(clear):
            self.colour_s.pop(outlet, None)
            shown = shown[shown > clear[-1]]
        if outlet not in self.colour_s and len(shown):
            passed = float(stream.volumes[: shown[0]].sum())
            self.colour_m3[outlet] = before + passed
            self.colour_s[outlet] = self.seconds + passed / (flow_m3_s * self.pace)

    def _drop(self, pool: str, stream: Stream) -> None:
        """Let what fell out of an outlet run through a trap into a tank, or away."""
        while pool:
            spec = self.network.pools[pool]
            if spec.stirred:
                vessel = VesselHeld(spec.volume_m3, self.pools[pool][1:] / spec.volume_m3)
                stream = vessel.push(stream, forward=True)
                self.pools[pool] = five(vessel.mean() * spec.volume_m3, spec.volume_m3)
            else:
                # A tank that fills: liquid in, as much air out.
                liquid = five(stream.component_volumes, stream.volume_m3)
                room = min(float(liquid[:-1].sum()), float(self.pools[pool][-1]))
                share = room / float(liquid[:-1].sum()) if room else 0.0
                taken = liquid * share
                taken[-1] = 0.0
                gone = liquid - taken
                gone[-1] += room
                self.pools[pool] = self.pools[pool] + taken
                self.pools[pool][-1] -= room
                self._went_out += gone
                return
            pool = spec.drops_to
        self._went_out += five(stream.component_volumes, stream.volume_m3)

    def advance(
        self, outlet: str, until: Until, enough: Callable[["Running"], bool] | None = None
    ) -> bool:
        """Move on until a rule says stop.

        Args:
            outlet: control of the outlet that is watched.
            until: when to stop.
            enough: asked after each chunk; True stops as well.

        Returns:
            False if it was given up at the limit, or nothing flows; else True.
        """
        limit = until.limit_m3 + sum(leg.link.volume_m3 for leg in self.route.legs)
        nothing_to_see = self._colourless()
        while not self.still:
            left = self._seconds_left(outlet, until)
            if left <= 0.0:
                return True
            # Where only other outlets flow, this one would never reach its limit.
            dead = np.isinf(left) and not self.flow_at(outlet)
            if dead or self.drawn_m3 >= limit - DUST_M3:
                return False
            to_limit = (limit - self.drawn_m3) / self.flow_m3_s / self.pace
            chunk = min(left, to_limit, np.inf if nothing_to_see else self.chunk_s())
            if self.network.case.longest_chunk_m3 is None:
                self.step(chunk)
            elif until.run_on_s is not None and not (outlet in self.colour_s or nothing_to_see):
                self._step_to_colour(chunk, outlet, until.expect_m3)
            else:
                self._move(chunk)
                if self._seconds_left(outlet, until) <= 0.0:
                    return True  # in long strides the last look is spared
                self.look()
            if enough and enough(self):
                return True
        return False

    def _seconds_left(self, outlet: str, until: Until) -> float:
        """Give the seconds until a rule says stop [s]; infinite while none is near."""
        passed, flow = self.volume_m3.get(outlet, 0.0), self.flow_at(outlet) * self.pace
        return until.seconds_left(self.seconds, passed, flow, self.colour_s.get(outlet))

    def _colourless(self) -> bool:
        """Tell whether no antifreeze can come: then the flow stays, and no look is needed."""
        feeds = (shares_of(self.state.feeds[name]) for name in self.network.sources)
        holds = (self.held[k.link.id].mean() for k in self.route.legs if k.link.id in self.held)
        return not any(shares[:AIR].any() for shares in (*feeds, *holds))

    def chunk_s(self) -> float:
        """Give how long a chunk takes [s]."""
        flow = self.flow_m3_s
        return self._stride_m3 / flow / self.pace if flow > STILL_M3_S else np.inf

    def _breathe(self) -> None:
        """Let accumulators take in from the trunk what they gave out while the tap ran."""
        for breather in self.network.breathers:
            spec = self.network.pools[breather.pool]
            line = self.network.links[breather.line]
            beside = [
                leg.link.id
                for leg in self.route.legs
                if leg.link.id in self.held
                and {line.start, line.end} & {leg.upstream, leg.downstream}
            ]
            if not beside:
                continue
            vessel = VesselHeld(spec.volume_m3, self.pools[breather.pool][1:] / spec.volume_m3)
            drawn = Stream.of(breather.share * spec.volume_m3, self.held[beside[0]].mean())
            gone = vessel.push(drawn, forward=True)
            self.pools[breather.pool] = five(vessel.mean() * spec.volume_m3, spec.volume_m3)
            # The pump makes up for what the trunk gave.
            self._came_in += five(drawn.component_volumes, drawn.volume_m3)
            self._went_out += five(gone.component_volumes, gone.volume_m3)
            breath = self.held[breather.line].copy()
            self._refill(breath, vessel.mean())
            self.held[breather.line] = breath
            self._moved[breather.line] = None

    def finish(self) -> State:
        """Give the state after the run."""
        if self._moved:
            self._breathe()
        flowed = {link: "flowed" for link in self._moved if link in self.held}
        treated = {**self.state.treated, **flowed}
        books = Books(
            self.state.books.start,
            self.state.books.came_in + self._came_in,
            self.state.books.went_out + self._went_out,
        )
        return replace(
            self.state,
            held=MappingProxyType(self.held),
            pools=MappingProxyType(self.pools),
            treated=MappingProxyType(treated),
            books=books,
        )

    def seen(self, outlet: str, *, given_up: bool) -> OutletRun:
        """Give what was seen at one outlet."""
        return OutletRun(
            outlet=outlet,
            volume_m3=self.volume_m3.get(outlet, 0.0),
            seconds=self.seconds,
            first_colour_s=self.colour_s.get(outlet),
            first_colour_m3=self.colour_m3.get(outlet),
            strength=self.strength.get(outlet, 0.0),
            given_up=given_up,
            flow_m3_s=self.flow_at(outlet),
            way=tuple(leg.link.id for leg in self.route.legs),
            air_m3=self.air_m3.get(outlet, 0.0),
            given_m3=float(self._came_in[1:-1].sum()),
        )


def _signs(flows: Array) -> Array:
    return np.sign(np.where(np.abs(flows) > STILL_M3_S, flows, 0.0))


def run_until(
    network: CoachNetwork, state: State, outlet: str, until: Until
) -> tuple[State, OutletRun]:
    """Let fluid run from an open outlet until a rule says stop.

    Args:
        network: the coach.
        state: how it stands; the outlet must be open already.
        outlet: control of the outlet that is watched.
        until: when to stop.

    Returns:
        The state after it, and what was seen at the outlet.
    """
    running = Running(network, state)
    seen = running.seen(outlet, given_up=not running.advance(outlet, until))
    return running.finish(), seen
