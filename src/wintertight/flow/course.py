"""A course: outlets of one coach run one after another, laid out for the compiled arithmetic.

Which links lie on whose way is found out once, by the plain engine; then the same course is run
again and again, with longer lines, other run-ons or another product: many coaches a second.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
import numpy.typing as npt

from wintertight.errors import NoSteadyFlow
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.held import Held, RunsHeld
from wintertight.flow.hydraulics import BAY_DEGC, half_turned, passes, pipe_network, steady_flow
from wintertight.flow.kernels.carrying import NO_HOLLOW
from wintertight.flow.kernels.filling import OUT_OF_ROOM, WENT_WELL, fill_in_turn
from wintertight.flow.kernels.rows import Hollows, Laws, Rules, Ways
from wintertight.flow.kernels.watching import (
    COLOUR_M3,
    COLOUR_S,
    FLOW_M3_S,
    SECONDS,
    SEEN,
    VOLUME_M3,
)
from wintertight.flow.routing import Route, edges_of, route, row_of
from wintertight.flow.state import WATER, State, in_doubt, with_outlet_open
from wintertight.flow.steady.friction import FrictionLaw
from wintertight.flow.steady.laws import LAWS
from wintertight.flow.steady.loops import LoopPlan, loop_plan
from wintertight.flow.stream import SHARES, shares_of
from wintertight.flow.until import COLOUR_SHARE, LIMIT_M3
from wintertight.fluids.contents import Contents
from wintertight.fluids.transport import viscosity_ladder

Array = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]

WATER_M2_S = 1.3e-6
"""Viscosity at which ways are found out [m2/s]; it changes how fast, not where."""

FIRST_LENGTH = 2048
"""Parcels for which there is room at first [1]."""


@dataclass(frozen=True, slots=True, eq=False)
class Seen:
    """What is seen at each outlet, shape (outlets,) each.

    Attributes:
        colour_s, colour_m3: first colour that stays [s], what had come out by then [m3]; nan: none.
        volume_m3, seconds: in all [m3], [s].
        flow_m3_s: at the end [m3/s].
        series: strength at even times [1], shape (outlets, samples).
        means: shares of each hollow at the end [1], by link.
    """

    colour_s: Array
    colour_m3: Array
    volume_m3: Array
    seconds: Array
    flow_m3_s: Array
    series: Array
    means: Mapping[str, Array]


@dataclass(frozen=True, slots=True, eq=False)
class Course:
    """Outlets to be run one after another.

    Attributes:
        outlets: their controls.
        hollows, pipes: ids of the links that the rows are about.
        ways, laws: see ``kernels.filling``.
        held: what each hollow is like; runs bring their response.
        size, parcel_m3: of each hollow [m3].
        first: what it is full of [1], shape (hollows, 4).
    """

    outlets: tuple[str, ...]
    hollows: tuple[str, ...]
    pipes: tuple[str, ...]
    ways: Ways
    laws: Laws
    held: tuple[Held, ...]
    size: Array
    parcel_m3: Array
    first: Array

    def stretched(self, factors: Mapping[str, float]) -> "Course":
        """Give the course of a coach whose lines are so many times as long.

        Args:
            factors: factor on the length or content of each link [1], by its id; 1 where missing.

        Returns:
            The course; parcels grow with their lines, so that the responses stay.
        """
        longer = np.array([factors.get(link, 1.0) for link in self.hollows])
        rows = self.laws.pipe_rows.copy()
        rows[0] *= np.array([factors.get(link, 1.0) for link in self.pipes])
        return replace(
            self,
            size=self.size * longer,
            parcel_m3=self.parcel_m3 * longer,
            laws=self.laws._replace(pipe_rows=rows),
        )

    def run(self, rules: Rules, samples: int = 0) -> Seen:
        """Run the outlets.

        Args:
            rules: what is drawn, and when to stop (see ``rules_for``).
            samples: how many samples of strength to take [1].

        Returns:
            What is seen.

        Raises:
            NoSteadyFlow: a link would turn round, or the flow does not settle: the plain engine
                has to do it.
        """
        seen = np.zeros((len(self.outlets), SEEN))
        series = np.full((len(self.outlets), samples), np.nan)
        means = np.zeros((len(self.hollows), SHARES))
        length, went = FIRST_LENGTH, OUT_OF_ROOM
        while went == OUT_OF_ROOM:
            hollows = self._hollows(length)
            went = fill_in_turn(self.ways, self.laws, hollows, rules, seen, series, means)
            length *= 2
        if went != WENT_WELL:
            message = "a link turns round on the way, or the flow does not settle"
            raise NoSteadyFlow(message, 0, 0.0)
        return Seen(
            colour_s=seen[:, COLOUR_S],
            colour_m3=seen[:, COLOUR_M3],
            volume_m3=seen[:, VOLUME_M3],
            seconds=seen[:, SECONDS],
            flow_m3_s=seen[:, FLOW_M3_S],
            series=series,
            means=dict(zip(self.hollows, means, strict=True)),
        )

    def _hollows(self, length: int) -> Hollows:
        """Lay out what lies on the way, with responses of so many parcels."""
        kernels = [h.kernel if isinstance(h, RunsHeld) else None for h in self.held]
        some = list({id(k): k for k in kernels if k}.values())
        row = {id(k): i for i, k in enumerate(some)}
        padded, kept = np.zeros((len(some) or 1, 2 * length)), np.zeros((len(some) or 1, length))
        for i, kernel in enumerate(some):
            padded[i, length:] = kernel.leaving(length)
            kept[i] = kernel.kept(length)
        return Hollows(
            way=row_of(held.way for held in self.held),
            size=self.size,
            parcel_m3=self.parcel_m3,
            response=row_of(row[id(k)] if k else 0 for k in kernels),
            padded=padded,
            kept=kept,
            first=self.first,
        )


def rules_for(  # noqa: PLR0913 - a run has these numbers
    outlets: int,
    feed: Contents,
    *,
    run_on_s: npt.ArrayLike | None = None,
    seconds: npt.ArrayLike | None = None,
    each_s: float = 1.0,
    viscosity_m2_s: float | None = None,
    chunk_m3: float = 0.1e-3,
    limit_m3: float = LIMIT_M3,
) -> Rules:
    """Say what is drawn, and when an outlet is shut.

    Args:
        outlets: how many there are [1].
        feed: what is drawn.
        run_on_s: seconds after first colour [s], one for all or one each.
        seconds: seconds in all [s], one for all or one each.
        each_s: seconds between two samples of strength [s].
        viscosity_m2_s: one viscosity for everything [m2/s]; None is that of what lines hold.
        chunk_m3: volume moved between two looks at the flow [m3].
        limit_m3: volume, beyond what its way holds, after which an outlet is given up [m3].

    Returns:
        The rules.
    """
    shares, logs = viscosity_ladder(BAY_DEGC)
    if viscosity_m2_s is not None:
        logs = np.full(2, np.log(viscosity_m2_s))
    on = np.nan if run_on_s is None else run_on_s
    end = np.inf if seconds is None else seconds
    return Rules(
        feed=shares_of(feed),
        ladder_top=float(shares[-1]),
        ladder_logs=logs,
        chunk_m3=chunk_m3,
        run_on_s=np.array(np.broadcast_to(on, outlets), dtype=float),
        limit_s=np.array(np.broadcast_to(end, outlets), dtype=float),
        limit_m3=limit_m3,
        shows=COLOUR_SHARE,
        each_s=each_s,
    )


def lay_course(
    network: CoachNetwork,
    state: State,
    outlets: Sequence[str],
    source: str,
    *,
    friction: FrictionLaw = "churchill",
) -> Course:
    """Lay a course: find out once which links lie on whose way.

    Args:
        network: the coach.
        state: how it stands, and what it holds: each link one content.
        outlets: controls of the outlets, in the order in which they are run.
        source: the source that is drawn from.
        friction: friction law.

    Returns:
        The course.
    """
    found = [_way(network, state, outlet, friction) for outlet in outlets]
    routes, plans = [way for way, _, _ in found], [plan for _, plan, _ in found]
    hollows = tuple(dict.fromkeys(link for way in routes for link in way.hollows))
    names = list(network.links)
    pipes = tuple(names[i] for plan in plans for i in plan.links[: plan.laws.pipes])
    return Course(
        outlets=tuple(outlets),
        hollows=hollows,
        pipes=pipes,
        ways=_ways(network, outlets, source, routes, plans, hollows),
        laws=_laws(plans, [flow for _, _, flow in found], pipes, hollows, friction),
        held=tuple(state.held[link] for link in hollows),
        size=np.array([state.held[link].volume_m3 for link in hollows]),
        parcel_m3=np.array([state.held[link].parcel_m3 for link in hollows]),
        first=np.array([_begun(network, state, link) for link in hollows]),
    )


def _begun(network: CoachNetwork, state: State, link: str) -> Array:
    """Give what a link holds when fluid first moves in it (see ``running``)."""
    return WATER if in_doubt(network, state, link) else state.held[link].mean()


def _way(
    network: CoachNetwork, state: State, outlet: str, friction: FrictionLaw
) -> tuple[Route, LoopPlan, Array]:
    """Give the way of one outlet, its loops, and flows to begin from [m3/s]."""
    opened = with_outlet_open(network, state, outlet)
    flow = steady_flow(network, opened, friction=friction, viscosity_m2_s=WATER_M2_S).flow_m3_s
    pipes = pipe_network(network, half_turned(network, opened))
    open_links = passes(network, opened)
    plan = loop_plan(pipes, open_links, pipes.carries_one_way & open_links & (flow == 0.0))
    return route(network, flow), plan, flow[plan.links]


def _ways(  # noqa: PLR0913, PLR0917 - a course in all its parts
    network: CoachNetwork,
    outlets: Sequence[str],
    source: str,
    routes: Sequence[Route],
    plans: Sequence[LoopPlan],
    hollows: Sequence[str],
) -> Ways:
    at = {link: i for i, link in enumerate(hollows)}
    index = {link: i for i, link in enumerate(network.links)}
    places = [{int(link): i for i, link in enumerate(plan.links)} for plan in plans]
    both = list(zip(routes, places, strict=True))
    node = network.sources[source].node
    spouts = [network.outlets[outlet].link for outlet in outlets]
    return Ways(
        leg_from=edges_of(len(way.legs) for way in routes),
        place=row_of(place[index[leg.link.id]] for way, place in both for leg in way.legs),
        up=np.concatenate([way.up for way in routes]),
        down=np.concatenate([way.down for way in routes]),
        hollow=row_of(at.get(leg.link.id, NO_HOLLOW) for way in routes for leg in way.legs),
        sign=np.array([1.0 if leg.forward else -1.0 for way in routes for leg in way.legs]),
        spout=row_of(
            [leg.link.id for leg in way.legs].index(spout)
            for way, spout in zip(routes, spouts, strict=True)
        ),
        nodes=row_of(len(way.nodes) for way in routes),
        source=row_of(way.nodes.index(node) for way in routes),
    )


def _laws(
    plans: Sequence[LoopPlan],
    flows: Sequence[Array],
    pipes: Sequence[str],
    hollows: Sequence[str],
    friction: FrictionLaw,
) -> Laws:
    at = {link: i for i, link in enumerate(hollows)}
    return Laws(
        link_from=edges_of(len(plan.links) for plan in plans),
        loop_from=edges_of(len(plan.circuit.loop_head) for plan in plans),
        loop_head=np.concatenate([plan.circuit.loop_head for plan in plans]),
        mesh_from=edges_of(plan.circuit.loops.size for plan in plans),
        mesh=np.concatenate([plan.circuit.loops.ravel() for plan in plans]),
        begin_flow=np.concatenate(flows),
        quadratic=np.concatenate([plan.circuit.quadratic for plan in plans]),
        one_way=np.concatenate([plan.circuit.one_way for plan in plans]),
        pump_from=edges_of(plan.laws.pumps for plan in plans),
        pump_rows=np.concatenate([plan.circuit.pump_rows for plan in plans], axis=1),
        pipe_from=edges_of(plan.laws.pipes for plan in plans),
        pipe_rows=np.concatenate([plan.circuit.pipe_rows for plan in plans], axis=1),
        pipe_hollow=row_of(at.get(link, NO_HOLLOW) for link in pipes),
        friction=LAWS[friction],
    )
