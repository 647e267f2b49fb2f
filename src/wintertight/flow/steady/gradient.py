"""Steady flow in a network: the global gradient method with exact one-way links.

Newton's step on the energy and continuity equations together is the global gradient of Todini
and Pilati. From flows that keep continuity it stays on them, so it is made here on the loops
(``loops.py``), damped by a search that never lets the energy sum grow: the sum is convex, so
the iteration ends from any start.

One-way links are first taken as open; those that would run backwards are closed and those
pushed open are opened again. Should a set of closed links come back, a solve in which they
resist backward flow steeply decides at once, for that problem is convex too.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np

from wintertight.errors import InputError, NoSteadyFlow
from wintertight.flow.steady.books import continuity_error
from wintertight.flow.steady.circuit import heads_in, standing_wrongly
from wintertight.flow.steady.friction import FrictionLaw
from wintertight.flow.steady.laws import Resistance
from wintertight.flow.steady.loops import LoopPlan, loop_plan
from wintertight.flow.steady.network import Bools, Floats, PipeNetwork
from wintertight.flow.steady.newton import UNSETTLED, turns_of

_LEAST_FLOW_M3_S: Final = 1e-12
_MOST_ROUNDS: Final = 20
_BACK_SLOPES: Final = (1e10, 1e12, 1e14)
_CONTINUITY: Final = 1e-9


@dataclass(frozen=True, eq=False, slots=True)
class Steady:
    """A steady flow.

    Attributes:
        flow_m3_s: flow of each link, positive from start to end; exactly 0 where none can be.
        head_m: head of each node [m]; a dead end has the head it hangs on; nan where no held
            head reaches, or only against a one-way link.
        iterations: Newton steps made.
        residual: largest change of a flow in the last of them [m3/s].
        plan: the loops on which it was found.
    """

    flow_m3_s: Floats
    head_m: Floats
    iterations: int
    residual: float
    plan: LoopPlan


def solve_steady(
    network: PipeNetwork,
    open_links: Bools,
    kinematic_viscosity_m2_s: float | Floats,
    friction: FrictionLaw = "churchill",
    start_flows: Floats | None = None,
) -> Steady:
    """Solve the steady flow of a network.

    Head loss along each link, h(q) = H_start - H_end, and continuity at each free node.

    Args:
        network: the network.
        open_links: which links are open, one truth value a link.
        kinematic_viscosity_m2_s: viscosity of what each link holds, or one for all [m2/s],
            above 0.
        friction: law of pipe friction.
        start_flows: flows to start from, as a former solution gives them [m3/s].

    Returns:
        Flows [m3/s] and heads [m].

    Raises:
        InputError: an array has another length, a viscosity is not above 0.
        NoSteadyFlow: a demand cannot be met, or the iteration does not end.

    Example:
        >>> from wintertight.flow.steady.builder import NetworkBuilder
        >>> network = (
        ...     NetworkBuilder()
        ...     .node("high", fixed_head_m=0.01)
        ...     .node("low", fixed_head_m=0.0)
        ...     .pipe("line", "high", "low", length_m=10.0, bore_m=0.012)
        ...     .build()
        ... )
        >>> steady = solve_steady(network, np.array([True]), 1.0e-6)
        >>> print(f"{1e6 * steady.flow_m3_s[0]:.3f} mL/s")  # laminar: pi g D^4 h / (128 nu L)
        4.991 mL/s

    Sources: todini-pilati.
    """
    open_links = _checked_mask(network, open_links)
    viscosity = _checked_viscosity(network, kinematic_viscosity_m2_s)
    one_way = network.carries_one_way & open_links
    closed, start = _start(network, one_way, start_flows)
    run = _Run(network, open_links, viscosity, friction)
    seen: set[bytes] = set()
    for _ in range(_MOST_ROUNDS):
        seen.add(closed.tobytes())
        steady, wrong = run.with_closed(closed, one_way, start)
        if steady is not None and not wrong.any():
            return steady
        closed = closed ^ wrong
        if steady is None or closed.tobytes() in seen:
            break
        start = steady.flow_m3_s
    for back_slope in _BACK_SLOPES:
        closed = run.closed_by_resisting(one_way, back_slope)
        steady, wrong = run.with_closed(closed, one_way, None)
        if steady is not None and not wrong.any():
            return steady
    message = "one-way links find no state that fits the heads, or a demand cannot be met"
    raise NoSteadyFlow(message, run.steps, run.change)


@dataclass(slots=True)
class _Run:
    """One call of the solver: what it was asked, and how far it is."""

    network: PipeNetwork
    open_links: Bools
    viscosity: Floats
    friction: FrictionLaw
    steps: int = 0
    change: float = 0.0

    def with_closed(
        self, closed: Bools, one_way: Bools, start: Floats | None
    ) -> tuple[Steady | None, Bools]:
        """Solve with some one-way links closed; give also those in the wrong state."""
        network = self.network
        plan = loop_plan(network, self.open_links, closed)
        if plan.unfed >= 0:
            if not one_way.any():
                message = f"no open way leads to the demand at {network.node_ids[plan.unfed]!r}"
                raise NoSteadyFlow(message, self.steps, self.change)
            return None, np.zeros_like(closed)
        carried, lost = self._balance(plan, self._resistance(plan), start)
        flow, wrong = np.zeros(len(network.link_ids)), np.zeros_like(closed)
        flow[plan.links] = carried
        head = heads_in(plan.circuit, lost)
        wrong[plan.gates] = standing_wrongly(plan.circuit, carried, head)
        steady = Steady(flow, head, self.steps, self.change, plan)
        largest = float(np.abs(flow).max(initial=0.0))
        if largest > _LEAST_FLOW_M3_S and continuity_error(network, flow) > _CONTINUITY:
            message = "flows do not balance at the nodes"
            raise NoSteadyFlow(message, self.steps, self.change)
        return steady, wrong

    def closed_by_resisting(self, one_way: Bools, back_slope: float) -> Bools:
        """Tell which one-way links run backwards when they only resist that steeply."""
        none = np.zeros_like(one_way)
        plan = loop_plan(self.network, self.open_links, none)
        if plan.unfed >= 0:
            return none
        carried, _ = self._balance(plan, self._resistance(plan, back_slope), None)
        closed = none
        closed[plan.links] = carried < 0.0
        return closed & one_way

    def _resistance(self, plan: LoopPlan, back_slope: float = 0.0) -> Resistance:
        pipes = plan.links[: plan.laws.pipes]
        return plan.laws.at(self.friction, self.viscosity[pipes], back_slope)

    def _balance(
        self, plan: LoopPlan, resistance: Resistance, start: Floats | None
    ) -> tuple[Floats, Floats]:
        """Give flows and head losses of the carrying links by Newton's method on the loops."""
        flow, loops, turned = plan.circuit.tree_flow, plan.circuit.loops, plan.circuit.loops_turned
        driving, chords = plan.circuit.loop_head, plan.links[plan.circuit.chords]
        if start is not None:
            flow = flow + start[chords] @ loops
        elif chords.size:
            at_rest, slope = resistance.guess()
            unspent = driving - loops @ (at_rest + slope * flow)
            flow = flow + turns_of(loops, turned, slope, unspent) @ loops
        flow, lost, steps, self.change = resistance.settled(loops, turned, driving, flow)
        self.steps += steps
        if steps == UNSETTLED:
            message = "the flows do not settle"
            raise NoSteadyFlow(message, self.steps, self.change)
        return flow, lost


def _start(
    network: PipeNetwork, one_way: Bools, start_flows: Floats | None
) -> tuple[Bools, Floats | None]:
    """Give the one-way links a former solution held closed, and its flows."""
    closed = np.zeros_like(one_way)
    if start_flows is None:
        return closed, None
    flows = np.asarray(start_flows, dtype=np.float64)
    if flows.shape != (len(network.link_ids),) or not np.isfinite(flows).all():
        message = "start_flows needs one finite flow a link"
        raise InputError(message)
    if not flows.any():
        return closed, None
    return one_way & (flows == 0.0), flows


def _checked_mask(network: PipeNetwork, open_links: Bools) -> Bools:
    mask = np.asarray(open_links, dtype=np.bool_)
    if mask.shape != (len(network.link_ids),):
        message = f"open_links has shape {mask.shape}, one truth value a link is needed"
        raise InputError(message)
    return mask


def _checked_viscosity(network: PipeNetwork, viscosity: float | Floats) -> Floats:
    array = np.asarray(viscosity, dtype=np.float64)
    m = len(network.link_ids)
    if array.ndim == 0:
        array = np.full(m, array)
    if array.shape != (m,):
        message = f"the viscosity has shape {array.shape}, one a link is needed"
        raise InputError(message)
    if not (np.isfinite(array) & (array > 0.0)).all():
        message = "a kinematic viscosity is not above 0 m2/s"
        raise InputError(message)
    return array
