"""How long to run on after first colour.

Colour shows long before a line is strong enough. For each outlet in turn the engine runs, on the
careful side of everything uncertain, until every section that no later outlet will flush is strong
enough for the design low; what passed after first colour is the run-on. It is rounded up, never
down: a few seconds cost less than a comeback.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

import numpy as np

from wintertight.coach.kinds import KINDS, Pocket
from wintertight.cold.burst import survives
from wintertight.flow.actions import Action, Outcome
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.held import Held
from wintertight.flow.hydraulics import STILL_M3_S, steady_flow
from wintertight.flow.replay import Moment
from wintertight.flow.running import Running
from wintertight.flow.state import State, with_outlet_open
from wintertight.flow.stream import AIR
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.proof.judge import Bench

COUNT_S = 1.0
"""Run-on is counted in whole seconds [s]."""

SHORTEST_S = 3.0
"""Shortest run-on that is asked for [s]; common practice: nobody shuts a tap faster."""

TO_SPARE = 0.02
"""Share of the product aimed at beyond what just suffices [1]: no verdict hangs on a second."""

UNDILUTED = 0.99
"""Most that is ever aimed at [1]: the last hundredth takes as long as all before it."""

UNKNOWN_TARGET = 0.90
"""Share of the product aimed at where no strength can be shown to suffice, or none that rinsing
reaches [1]: as much as a usual job gives; common practice."""


@dataclass(frozen=True, slots=True)
class OutletPlan:
    """What was found for one outlet.

    Attributes:
        outlet: its control.
        run_on_s: seconds to run on after first colour [s].
        clears: whether every line it alone flushes became strong enough.
        moment: the run as the engine did it, with its counted run-on.
        aims: share of the product that each link it alone flushes was to reach [1].
    """

    outlet: str
    run_on_s: float
    clears: bool
    moment: Moment
    aims: Mapping[str, float]


def share_needed(
    low_degC: float, pocket: Pocket, product: Product, *, relieved: bool = True, most: float = 1.0
) -> float | None:
    """Give how much of the product must be in a pocket at the end.

    Args:
        low_degC: design low [degC].
        pocket: open, relieved or sealed.
        product: what it is filled with.
        relieved: whether the relieving action will have been done.
        most: largest share to look at [1]; above 1 for a product that is stronger than printed.

    Returns:
        Least share of undiluted product [1]; None if not even the largest is shown to be safe.
    """
    full = product.contents()

    def safe(share: float) -> bool:
        mixed = Contents(
            glycol=full.glycol * share, ethanol=full.ethanol * share, rated=full.rated * share
        )
        return survives(mixed, low_degC, pocket, relieved=relieved, product=product).safe is True

    if not safe(most):
        return None
    weak, strong = 0.0, most
    for _ in range(20):
        middle = (weak + strong) / 2.0
        weak, strong = (weak, middle) if safe(middle) else (middle, strong)
    return strong


def plan_run_ons(
    bench: Bench,
    product: Product,
    order: tuple[str, ...],
    stronger: Mapping[str, float] = MappingProxyType({}),
    known: tuple[OutletPlan, ...] = (),
) -> tuple[OutletPlan, ...]:
    """Find the run-on of each outlet.

    Args:
        bench: the coach on the careful side, with the pump on and every outlet shut.
        product: what it is filled with.
        order: outlets in the order in which they are run.
        stronger: by link, the factor by which more of the product is aimed at than usual [1].
        known: what was found before for other aims, in the same order; the first of them are taken
            over up to the first whose aims have changed.

    Returns:
        One entry for each outlet, in that order.
    """
    network, state = bench.network, bench.state
    wanted = {
        link: min(share * stronger.get(link, 1.0), max(share, UNDILUTED))
        for link, share in shares_wanted(bench, product).items()
    }
    ways = [way_to(network, state, outlet) for outlet in order]
    found: list[OutletPlan] = []
    same = True
    for i, outlet in enumerate(order):
        later = frozenset[str]().union(*ways[i + 1 :])
        own = {link: wanted[link] for link in ways[i] - later if link in wanted}
        same = same and i < len(known) and known[i].aims == own
        planned = (
            known[i] if same else _plan_outlet(network, state, outlet, own, strength_of(product))
        )
        state = planned.moment.state
        found.append(planned)
    return tuple(found)


def _plan_outlet(
    network: CoachNetwork, state: State, outlet: str, own: dict[str, float], strength: float
) -> OutletPlan:
    """Run one outlet until its own links are strong enough, then up to the counted second.

    What is not reached within the limit is not waited for: then the usual target is tried, then
    what can be reached of it, and failing that the shortest run-on is asked for. The moment is
    always the run as it is asked for.
    """
    opened = with_outlet_open(network, state, outlet)
    lesser = {link: min(share, UNKNOWN_TARGET) for link, share in own.items()}
    clears = True
    running, reached = _run_to(network, opened, outlet, own, strength)
    if not reached:
        clears = False
        if lesser != own:
            running, reached = _run_to(network, opened, outlet, lesser, strength)
    if not reached:
        held = running.held
        in_reach = {k: x for k, x in lesser.items() if weakest_share(held[k], strength) >= x}
        running, reached = _run_to(network, opened, outlet, in_reach, strength)
    if not reached:
        running = Running(network, opened)
    run_on = running.seconds - running.colour_s[outlet] if reached else 0.0
    counted = max(SHORTEST_S, COUNT_S * math.ceil(run_on / COUNT_S - 1e-6))
    until = Until(run_on_s=counted)
    stopped = running.advance(outlet, until)
    seen = running.seen(outlet, given_up=not stopped)
    found = {control: state.settings[control] for control, _ in network.outlets[outlet].opens}
    after = running.finish().with_settings(found)
    moment = Moment(Action("run", outlet, until=until), Outcome(seen, seconds=seen.seconds), after)
    return OutletPlan(outlet, counted, clears, moment, own)


def _run_to(
    network: CoachNetwork, opened: State, outlet: str, own: dict[str, float], strength: float
) -> tuple[Running, bool]:
    """Run an open outlet until links hold their shares [1], or to the limit; tell which it was."""

    def enough(running: Running) -> bool:
        return outlet in running.colour_s and all(
            weakest_share(running.held[link], strength) >= share for link, share in own.items()
        )

    running = Running(network, opened)
    reached = running.advance(outlet, Until(), enough) and outlet in running.colour_s
    return running, reached


def strength_of(product: Product) -> float:
    """Give the share of a product that is not water [1]."""
    full = product.contents()
    return full.glycol + full.ethanol + full.rated


def shares_wanted(bench: Bench, product: Product) -> dict[str, float]:
    """Give the share of product each link must hold at the end."""
    by_pocket = {
        pocket: _aimed_at(share_needed(bench.low_degC, pocket, product))
        for pocket in ("open", "relieved", "sealed")
    }
    wanted = {}
    for link in bench.network.links.values():
        if link.holding != "nothing":
            fitting = bench.card.fitting.get(link.part)
            wanted[link.id] = by_pocket[KINDS[fitting.kind].pocket if fitting else "open"]
    return wanted


def _aimed_at(needed: float | None) -> float:
    """Give the share of product to aim at [1]; gallons are not spent on what is out of reach."""
    if needed is None or needed + TO_SPARE > UNDILUTED:
        return UNKNOWN_TARGET
    return needed + TO_SPARE


def way_to(network: CoachNetwork, state: State, outlet: str) -> frozenset[str]:
    """Give the links through which an outlet's flow comes, with nothing else opened."""
    steady = steady_flow(network, with_outlet_open(network, state, outlet), viscosity_m2_s=1e-6)
    return frozenset(
        link
        for link, flow in zip(network.links, steady.flow_m3_s, strict=True)
        if abs(flow) > STILL_M3_S
    )


def weakest_share(held: Held, strength: float) -> float:
    """Give the share of product in the weakest section of what a link holds, air left out [1]."""
    sections = held.sections()
    wet = np.maximum(1.0 - sections[:, AIR], 1e-9)
    shares = sections[:, :AIR].sum(axis=1) / wet / strength
    return float(np.where(wet > 0.5, shares, 0.0).min())  # noqa: PLR2004 - mostly liquid
