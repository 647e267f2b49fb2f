"""Letting fluid run from open outlets until a rule says stop."""

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from types import MappingProxyType

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.held import Held
from wintertight.flow.hydraulics import (
    BAY_DEGC,
    glycol_shares,
    pipe_places,
    steady_flow,
)
from wintertight.flow.kernels.letting_run import let_run
from wintertight.flow.kernels.rows import Fallen, Stop
from wintertight.flow.kernels.striding import (
    DRAWN_M3,
    GIVEN_UP,
    LOOK,
    MORE_ROOM,
    MOVED,
    PACE,
    PROGRESS,
    STOPPED,
    STRIDE_M3,
    paced,
)
from wintertight.flow.kernels.watching import (
    COLOUR_M3,
    COLOUR_S,
    SECONDS,
    SEEN,
    VOLUME_M3,
    WET,
)
from wintertight.flow.laid_out import filled_of, legs_of, pace_of, put_back, stop_of
from wintertight.flow.pools import taken_in
from wintertight.flow.routing import NOWHERE, Route, route
from wintertight.flow.state import WATER, Books, State, five, in_doubt
from wintertight.flow.steady.loops import LoopPlan
from wintertight.flow.stream import AIR, SHARES, Stream, shares_of
from wintertight.flow.until import COLOUR_SHARE, OutletRun, Until
from wintertight.fluids.transport import kinematic_viscosity

Array = npt.NDArray[np.float64]

COLOURLESS = 1e6
"""Stands for the strength of a supply without antifreeze [1]: nothing shows as much colour."""

STRIDES_AHEAD = 4.0
"""Strides for which there is room at first, beyond what a line took in before [1]."""


@dataclass(slots=True)
class Running:
    """A run that is under way; ``step`` moves it on, ``finish`` gives the state after it."""

    network: CoachNetwork
    state: State
    held: dict[str, Held] = field(init=False)
    pools: dict[str, Array] = field(init=False)
    seconds: float = 0.0
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
    _plan: LoopPlan | None = None
    _room: float = 1.0
    _at: Array = field(default_factory=lambda: np.zeros(PROGRESS))
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
        self._at[STRIDE_M3], self._at[PACE] = self.network.case.chunk_m3, 1.0
        self._glycol = glycol_shares(self.network, self.held)
        self.look()

    def look(self) -> None:
        """Solve the flow anew with what the lines hold now, in the whole coach."""
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
        self._flows, self._plan = steady.flow_m3_s, steady.plan
        self.route = route(self.network, self._flows)
        self.still = not self.route.legs
        for link in self.route.hollows:
            if link not in self._owned:
                self.held[link] = self._taken_over(self.network.links[link])
                self._owned.add(link)
        longest_m3 = self.network.case.longest_chunk_m3
        if longest_m3 is not None:
            paced(self._at, before, self.flow_m3_s, self.network.case.chunk_m3, longest_m3)

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
        return float(self._along()[self.route.outs].sum())

    @property
    def drawn_m3(self) -> float:
        """Volume drawn so far [m3]."""
        return float(self._at[DRAWN_M3])

    def _along(self) -> Array:
        """Give the flow of each leg [m3/s]."""
        if self._flows is None:
            return np.zeros(0)
        return self._flows[self.route.index] * self.route.sign

    def flow_at(self, outlet: str) -> float:
        """Give the flow out of the outlet of one control [m3/s]."""
        spout, along = self.network.outlets[outlet].link, self._along()
        return sum(float(along[k]) for k in self.route.outs if self._ends_in(k) == spout)

    def _ends_in(self, leg: int) -> str:
        return self.route.legs[leg].link.id

    def step(self, seconds: float) -> None:
        """Move the run on by some seconds [s], and look again."""
        if self.still:
            self.seconds += seconds
            self.look()
            return
        until_s = self.seconds + seconds
        stop = self._stop("", Until(seconds=until_s, limit_m3=np.inf), nothing_to_see=True)
        stop = stop._replace(spares_look=False)
        while self._let_run(stop) != STOPPED:
            pass

    def advance(
        self, outlet: str, until: Until, enough: Callable[["Running"], bool] | None = None
    ) -> bool:
        """Move on until a rule says stop.

        Args:
            outlet: control of the outlet that is watched.
            until: when to stop.
            enough: asked after each chunk once colour shows; True stops as well.

        Returns:
            False if it was given up at the limit, or nothing flows; else True.
        """
        nothing_to_see = self._colourless()
        limit_m3 = until.limit_m3 + sum(leg.link.volume_m3 for leg in self.route.legs)
        until = replace(until, limit_m3=limit_m3)
        while not self.still:
            stop = self._stop(outlet, until, nothing_to_see=nothing_to_see)
            why = self._let_run(stop._replace(asks=enough is not None))
            if why in {STOPPED, GIVEN_UP}:
                return why == STOPPED
            if why == MORE_ROOM or outlet not in self.colour_s:
                continue
            if enough is not None and enough(self):
                return True
        return False

    def _stop(self, outlet: str, until: Until, *, nothing_to_see: bool) -> Stop:
        """Put down when to stop, the outlet being that of a control."""
        spout = self.network.outlets[outlet].link if outlet else ""
        rows = [self._ends_in(k) for k in self.route.outs]
        watched = rows.index(spout) if spout in rows else len(rows)
        colour = COLOUR_SHARE * self._supply()
        return stop_of(self.network.case, until, watched, colour, nothing_to_see=nothing_to_see)

    def _let_run(self, stop: Stop) -> int:
        """Let it run for as long as every link keeps its way; tell why that ended."""
        flows, plan = self._flows, self._plan
        if flows is None or plan is None:
            return GIVEN_UP
        feeds, hollows = self._feeds(), [self.held[link] for link in self.route.hollows]
        for leg in self.route.legs:
            if leg.link.id in self.held:
                self.held[leg.link.id].turn(forward=leg.forward)
        legs = legs_of(self.route, plan, feeds, self._glycol)
        rows, came_m3, moves = self._rows(), np.zeros(legs.nodes), self._at[MOVED]
        why, carried, holds, fell = let_run(
            legs,
            plan.circuit,
            filled_of(hollows, self._ahead_m3(stop)),
            pace_of(self.network.case),
            stop,
            flows[plan.links],
            self._at,
            rows,
            came_m3,
        )
        if self._at[MOVED] > moves:
            put_back(hollows, holds)
            for node, shares in enumerate(legs.feeds):
                self._came_in += five(shares * came_m3[node], float(came_m3[node]))
            self._take_down(rows, fell, self._supply())
            self._flows = np.zeros_like(flows)
            self._flows[plan.links] = carried
        if why == LOOK:
            self.look()
        elif why == MORE_ROOM:
            self._room *= 2.0
        return int(why)

    def _ahead_m3(self, stop: Stop) -> float:
        """Give the volume for which there is to be room [m3]: some strides, or all that is left."""
        left_m3 = stop.drawn_m3 - self.drawn_m3
        if np.isfinite(stop.limit_s):
            left_m3 = min(left_m3, (stop.limit_s - self.seconds) * self.flow_m3_s)
        if not stop.at_once:
            left_m3 = min(left_m3, STRIDES_AHEAD * self._at[STRIDE_M3])
        return float(self._room * left_m3)

    def _supply(self) -> float:
        """Give the share of antifreeze in the strongest of what is drawn [1]."""
        fed = {leg.upstream for leg in self.route.legs}
        drawn = [Stream.of(1.0, feed) for node, feed in self._feeds().items() if node in fed]
        return max((float(feed.strengths[0]) for feed in drawn), default=0.0) or COLOURLESS

    def _feeds(self) -> dict[str, Array]:
        """Give the shares of what each source node gives [1], shape (4,) each."""
        sources = self.network.sources.items()
        return {source.node: shares_of(self.state.feeds[name]) for name, source in sources}

    def _rows(self) -> Array:
        """Put down what was seen so far, a row for each outlet that flows and one more."""
        rows = np.zeros((len(self.route.outs) + 1, SEEN))
        rows[:, : COLOUR_M3 + 1] = np.nan
        rows[:, SECONDS] = self.seconds
        for row, leg in zip(rows, self.route.outs, strict=False):
            for control in self._watched.get(self._ends_in(leg), ())[:1]:
                row[COLOUR_S] = self.colour_s.get(control, np.nan)
                row[COLOUR_M3] = self.colour_m3.get(control, np.nan)
                row[VOLUME_M3] = self.volume_m3.get(control, 0.0)
        return rows

    def _take_down(self, rows: Array, fell: Fallen, supply: float) -> None:
        """Take down what was seen, the supply so strong [1], and let what fell out run on."""
        self.seconds = float(rows[-1, SECONDS])
        self._moved.update(dict.fromkeys(leg.link.id for leg in self.route.legs))
        for k, leg in enumerate(self.route.outs):
            link, piece = self.route.legs[leg].link, slice(fell.edges[k], fell.edges[k + 1])
            stream = Stream(fell.volumes[piece], fell.shares[piece])
            for control in self._watched.get(link.id, ()):
                self._note(control, rows[k], stream, supply)
            if link.drops_to is not None:
                self._drop(link.drops_to, stream)
        places = pipe_places(self.network)
        for name in self.route.hollows:
            if name in places:
                self._glycol[places[name]] = self.held[name].glycol_about()

    def _note(self, outlet: str, row: Array, stream: Stream, supply: float) -> None:
        """Note what was seen at an outlet, the supply so strong [1]."""
        self.volume_m3[outlet] = float(row[VOLUME_M3])
        air_m3 = float(stream.volumes @ stream.shares[:, AIR])
        self.air_m3[outlet] = self.air_m3.get(outlet, 0.0) + air_m3
        if np.isnan(row[COLOUR_S]):
            self.colour_s.pop(outlet, None)
        else:
            self.colour_s[outlet] = float(row[COLOUR_S])
            self.colour_m3[outlet] = float(row[COLOUR_M3])
        wet = np.flatnonzero(stream.shares[:, AIR] < WET)
        if supply < COLOURLESS and len(wet):
            self.strength[outlet] = float(stream.strengths[wet[-1]]) / supply

    def _drop(self, pool: str, stream: Stream) -> None:
        """Let what fell out of an outlet run through a trap into a tank, or away."""
        while pool:
            spec = self.network.pools[pool]
            self.pools[pool], stream, lost = taken_in(spec, self.pools[pool], stream)
            self._went_out += lost
            pool = spec.drops_to if spec.stirred else ""
        self._went_out += five(stream.component_volumes, stream.volume_m3)

    def _colourless(self) -> bool:
        """Tell whether no antifreeze can come: then the flow stays, and no look is needed."""
        feeds = (shares_of(self.state.feeds[name]) for name in self.network.sources)
        holds = (self.held[k.link.id].mean() for k in self.route.legs if k.link.id in self.held)
        return not any(shares[:AIR].any() for shares in (*feeds, *holds))

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
            drawn = Stream.of(breather.share * spec.volume_m3, self.held[beside[0]].mean())
            holds, gone, _ = taken_in(spec, self.pools[breather.pool], drawn)
            self.pools[breather.pool] = holds
            # The pump makes up for what the trunk gave.
            self._came_in += five(drawn.component_volumes, drawn.volume_m3)
            self._went_out += five(gone.component_volumes, gone.volume_m3)
            breath = self.held[breather.line].copy()
            self._refill(breath, holds[1:] / spec.volume_m3)
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
