"""A filling with antifreeze as EPANET sees it from the first outlet to the last, right or mistaken.

It stands in for a coach in the bay: another engine makes the seconds and the shades that somebody
would write down there. Every hollow is plug flow, and one that holds air counts as its volume that
is to be displaced; one viscosity holds for all, by default that of water in the bay.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from types import MappingProxyType

import numpy as np
from epanet import toolkit as en

from tests.engines.bay_filling import ACCURACY, Bay, Filling, Run, Seen
from tests.engines.epanet_twin import Opened
from tests.unit.procedure.demo_coach import rebuilt
from wintertight.coach.card import Card, Fitting, Line
from wintertight.coach.quantity import Quantity
from wintertight.coach.tubing import bore
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import BAY_DEGC, half_turned
from wintertight.flow.state import arriving_state, with_outlet_open
from wintertight.fluids.contents import Contents
from wintertight.fluids.transport import kinematic_viscosity
from wintertight.procedure.drawn import HALF
from wintertight.procedure.mistaken import with_mistake
from wintertight.procedure.mistakes import Mistake
from wintertight.procedure.plan import Plan

WATER_M2_S = float(kinematic_viscosity(np.zeros(1), BAY_DEGC)[0])

NOT_IN_PLUG_FLOW = frozenset({"suction leak", "jug ran dry", "wrong product"})
"""Mistakes that are a matter of air, or of what nobody sees."""

HOLDS_AIR = frozenset({"drained", "empty"})
"""Circumstances in which air comes out of what EPANET takes as full."""

__all__ = ["WATER_M2_S", "Filled", "Seen", "drawn_card", "fill_there"]


@dataclass(frozen=True)
class Filled:
    """A whole filling.

    Attributes:
        seen: what was seen, in the order run; outlets that were skipped are missing.
        drawn_m3: what was drawn from the jug in all [m3].
        elsewhere_m3: what left by outlets that were open beside the one that was run [m3].
        from_elsewhere_m3: what came from any source but the jug [m3].
    """

    seen: tuple[Seen, ...]
    drawn_m3: float
    elsewhere_m3: float
    from_elsewhere_m3: float


def fill_there(  # noqa: PLR0913 - a job has these inputs
    plan: Plan,
    card: Card,
    folder: Path,
    mistake: Mistake | None = None,
    *,
    skips: frozenset[str] = frozenset(),
    counting: float = 1.0,
    seeing_s: float = 0.0,
    pump: float = 1.0,
    viscosity_m2_s: float = WATER_M2_S,
) -> Filled:
    """Fill a coach as its plan says, by EPANET.

    Args:
        plan: the plan of its job, by the coach's own pump.
        card: the true coach; only its sizes may differ from those of the plan's card.
        folder: where the input file may stand.
        mistake: what is wrong, if anything.
        skips: ids of steps that are not done at all.
        counting: factor on the seconds that an outlet runs on [1].
        seeing_s: seconds that it runs on beside, until colour is seen [s].
        pump: factor on the pump's open flow [1].
        viscosity_m2_s: one viscosity for all [m2/s].

    Returns:
        What was seen at each outlet, and what was drawn.

    Raises:
        ValueError: the mistake is a matter of air.
        UnbalancedError: EPANET did not settle on the flows of a run.
    """
    if mistake and (mistake.key in NOT_IN_PLUG_FLOW or mistake.circumstance in HOLDS_AIR):
        message = f"'{mistake.key}', {mistake.circumstance}, cannot be told in plug flow"
        raise ValueError(message)
    coach = build_network(card, PLUG)
    steps = tuple(p.step for p in plan.steps)
    if mistake:
        steps, coach = with_mistake(plan.steps, coach, mistake)
    coach = _with_pump(coach, pump)
    state, jug = arriving_state(coach), ""
    runs: list[Run] = []
    for planned, step in zip(plan.steps, steps, strict=True):
        if step.id in skips:
            continue
        for action in step.actions:
            if action.verb == "set":
                state = state.with_setting(action.part, action.setting)
            if action.verb == "feed" and action.contents:
                state, jug = state.with_feed(action.part, action.contents), action.part
        if step.outlet and planned.run:
            due_s, run_on_s = planned.run.first_colour_s or 0.0, planned.run_on_s or 0.0
            opened = with_outlet_open(coach, state, step.outlet)
            runs.append(Run(step.outlet, opened, due_s, counting * run_on_s + seeing_s))
    strength = _bought(state.feeds[jug]) / _bought(plan.product.contents())
    return _filled(coach, runs, jug, strength, viscosity_m2_s, folder)


def _filled(  # noqa: PLR0913, PLR0917 - a filling has these inputs
    coach: CoachNetwork,
    runs: Sequence[Run],
    jug: str,
    strength: float,
    viscosity_m2_s: float,
    folder: Path,
) -> Filled:
    """Run all outlets one after another."""
    (half,) = {half_turned(coach, run.state) for run in runs}  # nobody turns a valve meanwhile
    bay = Bay.laid(coach, half)
    open_links = [bay.open_links(run.state) for run in runs]
    text = bay.text(np.asarray(np.any(open_links, axis=0)), viscosity_m2_s)
    source = coach.sources[jug]
    assert coach.links[source.link].start == source.node, "else the jug's own link begins full"
    text.add("QUALITY", f"N{bay.net.node_ids.index(source.node)}", float(strength))
    came = {name: bay.place_of[s.link] for name, s in coach.sources.items()}
    seen: list[Seen] = []
    passed_m3 = np.zeros(len(coach.links))
    with Opened(text, folder, ACCURACY) as project:
        filling = Filling(bay, project, text)
        filling.begin()
        for run, is_open in zip(runs, open_links, strict=True):
            at_outlet, flow_m3_s = filling.run(run, is_open)
            seen.append(at_outlet)
            passed_m3 += flow_m3_s * at_outlet.seconds
        for call in (en.closeQ, en.closeH):
            call(project)
    drawn_m3 = float(passed_m3[came.pop(jug)])
    out_m3 = float(passed_m3[list(bay.outlets)].sum())
    return Filled(
        seen=tuple(seen),
        drawn_m3=drawn_m3,
        elsewhere_m3=out_m3 - sum(s.volume_m3 for s in seen),
        from_elsewhere_m3=float(passed_m3[list(came.values())].sum()),
    )


def drawn_card(card: Card, rng: np.random.Generator) -> Card:
    """Draw a true coach that fits a card, by other laws than the product draws coaches by.

    Lengths, and bores and volumes that the card gives, lie anywhere within the square root of
    three standard deviations. The walls of tubes that no line gives a bore for scatter normally
    about the middle of their tolerance, the same for all lines of one size and material.

    Args:
        card: the card.
        rng: where random numbers come from.

    Returns:
        The true coach's card; it still says that nobody knows its sizes better.
    """

    def drawn(quantity: Quantity | None) -> Quantity | None:
        if quantity is None:
            return None
        half_width = 3.0**0.5 * HALF * quantity.spread
        return replace(quantity, value=quantity.value * rng.uniform(1 - half_width, 1 + half_width))

    walls: dict[tuple[str, str], Quantity] = {}
    for size, material in sorted({(k.size, k.material) for k in card.lines if k.bore is None}):
        tube = bore(size, material)
        half_m = (tube.thickest_wall_m - tube.thinnest_wall_m) / 2.0
        off_m = np.clip(rng.normal(0.0, half_m / 3.0**0.5), -half_m, half_m)
        inside_m = float(tube.middle_bore_m - 2.0 * off_m)
        walls[size, material] = Quantity(inside_m, "measured", 0.0)

    def drawn_line(line: Line) -> Line:
        inside = drawn(line.bore) or walls[line.size, line.material]
        if line.bore:  # the largest bore is what counts for its volume: it is the true one
            inside = replace(inside, spread=0.0)
        sizes = {"length": drawn(line.length), "bore": inside, "volume": drawn(line.volume)}
        return line.model_copy(update=sizes)

    def drawn_fitting(fitting: Fitting) -> Fitting:
        return fitting.model_copy(update={"volume": drawn(fitting.volume)})

    return rebuilt(
        card,
        lines=tuple(drawn_line(line) for line in card.lines),
        fittings=tuple(drawn_fitting(f) for f in card.fittings),
    )


def _with_pump(coach: CoachNetwork, factor: float) -> CoachNetwork:
    links = {
        name: replace(link, pump_open_m3_s=factor * link.pump_open_m3_s)
        for name, link in coach.links.items()
        if link.way == "pump" and factor != 1.0
    }
    if not links:
        return coach
    return replace(coach, links=MappingProxyType({**coach.links, **links}))


def _bought(contents: Contents) -> float:
    return contents.glycol + contents.ethanol + contents.rated
