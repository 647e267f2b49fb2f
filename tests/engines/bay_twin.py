"""A whole filling with antifreeze, outlet after outlet, as EPANET sees it, with or without a mistake.

It stands in for a coach in the bay: another engine makes the seconds and the shades that somebody
would write down there. Every hollow is plug flow, and one that holds air counts as its volume that
is to be displaced. How EPANET is brought to do it, beyond what ``epanet_twin`` says:

* Its quality run takes the volume of a pipe from its length at the start, and after that never
  again. Each link is laid as long as its content, ``SLOW`` times over, and is cut to its true
  length once the content stands in it: no wide pipe hinders the solver.
* Flows do not hang on contents here: they are solved once for each outlet, and time goes on in
  strides of ``LOOK_S`` until the colour was seen long enough.
* Check valves, pumps and outlets get a short pipe before them that holds their content and opens
  and shuts for them. An outlet is an emitter, its coefficient nought while it is shut.
* A line that stands forgets which way it flowed. One that would turn round after a rest first has
  earlier runs shown to it again, for no time at all (``_Turned``).
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import product
from pathlib import Path
from types import MappingProxyType
from typing import Any

import numpy as np
from epanet import toolkit as en

from tests.engines.coach_twin import lay_again
from tests.engines.epanet_text import (
    LITRE_TRIM,
    Bools,
    Floats,
    TwinText,
    emitter_coefficient,
    lay,
    nodes_reached,
    set_options,
)
from tests.engines.epanet_twin import Opened, UnbalancedError, quietly
from tests.unit.procedure.demo_coach import rebuilt
from wintertight.coach.card import Card, Fitting, Line
from wintertight.coach.quantity import Quantity
from wintertight.coach.tubing import bore
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.hydraulics import BAY_DEGC, half_turned, passes, pipe_network
from wintertight.flow.state import State, arriving_state, with_outlet_open
from wintertight.flow.steady import NetworkBuilder, PipeNetwork
from wintertight.flow.until import COLOUR_SHARE
from wintertight.fluids.contents import Contents
from wintertight.fluids.transport import kinematic_viscosity
from wintertight.procedure.drawn import HALF
from wintertight.procedure.mistaken import GIVE_UP_S, with_mistake
from wintertight.procedure.mistakes import Mistake
from wintertight.procedure.plan import Plan

SLOW = 20
"""How many of EPANET's seconds, each a step of its quality run, make one of ours [1]."""

STRIDE = 2
"""How many of EPANET's seconds pass from one look at the outlet to the next [s]."""

LOOK_S = STRIDE / SLOW
LONGEST = 10**7  # all of EPANET's seconds that a filling may take
WATER_M2_S = float(kinematic_viscosity(np.zeros(1), BAY_DEGC)[0])
STILL_M3_S = 0.005 * 231 * 0.0254**3 / 60.0  # below this a line forgets its way there
BEFORE = "before "
SHORT_BORE_M = 0.02
ACCURACY = 1e-6
BALANCED = 1e-5
ALIKE = 1e-3  # shares that differ by less become one parcel
CHECK_EVERY = (20, 5, 2, 1)
BACK_FLOW_M3_S = 1e-7

NOT_IN_PLUG_FLOW = frozenset({"suction leak", "jug ran dry", "wrong product"})
"""Mistakes that are a matter of air, or of what nobody sees."""

HOLDS_AIR = frozenset({"drained", "empty"})
"""Circumstances in which air comes out of what EPANET takes as full."""


@dataclass(frozen=True)
class Seen:
    """What the bay sees at one outlet of a filling.

    Attributes:
        outlet: its control.
        first_colour_s: when colour showed, and stayed [s]; None if it was given up before.
        seconds: how long it ran in all [s].
        volume_m3: what left it [m3].
        strength: share of what the jug should hold in what left it last [1]; 0 if nothing did.
        flow_m3_s: its flow [m3/s].
    """

    outlet: str
    first_colour_s: float | None
    seconds: float
    volume_m3: float
    strength: float
    flow_m3_s: float


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


@dataclass(frozen=True)
class _Run:
    """One outlet's run: what is open, when colour is due, and how long it runs on."""

    outlet: str
    state: State
    due_s: float
    run_on_s: float


def fill_there(  # noqa: PLR0913 - a job has these inputs
    plan: Plan,
    card: Card,
    folder: Path,
    mistake: Mistake | None = None,
    *,
    skips: frozenset[str] = frozenset(),
    counting: float = 1.0,
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
    state, runs, jug = arriving_state(coach), [], ""
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
            runs.append(_Run(step.outlet, opened, due_s, counting * run_on_s))
    strength = _bought(state.feeds[jug]) / _bought(plan.product.contents())
    return _filled(coach, runs, jug, strength, viscosity_m2_s, folder)


def _filled(  # noqa: PLR0913, PLR0917 - a filling has these inputs
    coach: CoachNetwork,
    runs: Sequence[_Run],
    jug: str,
    strength: float,
    viscosity_m2_s: float,
    folder: Path,
) -> Filled:
    """Run all outlets one after another."""
    (half,) = {half_turned(coach, run.state) for run in runs}  # nobody turns a valve meanwhile
    bay = _Bay.laid(coach, half)
    open_links = [bay.open_links(run.state) for run in runs]
    text = bay.text(np.asarray(np.any(open_links, axis=0)), viscosity_m2_s)
    source = coach.sources[jug]
    assert coach.links[source.link].start == source.node, "else the jug's own link begins full"
    text.add("QUALITY", f"N{bay.net.node_ids.index(source.node)}", float(strength))
    came = {name: bay.place_of[s.link] for name, s in coach.sources.items()}
    seen: list[Seen] = []
    passed_m3 = np.zeros(len(coach.links))
    with Opened(text, folder, ACCURACY) as project:
        filling = _Filling(bay, project, text)
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


class _Turned:
    """Which way each line's content stands there, and which way EPANET believes that it does."""

    def __init__(self, links: int) -> None:
        self._stands = np.zeros(links)  # 0: all of one fluid
        self._believed = np.zeros(links)
        self.runs: list[tuple[Bools, Floats]] = []

    def to_show(self, ways: Floats, holds: Bools) -> tuple[Bools, ...]:
        """Give the open links of earlier runs to show first, so that nothing is turned over.

        Args:
            ways: sign of the flow of each link in the run to come, shape (links,).
            holds: which links hold anything, shape (links,).
        """
        for many in range(3):
            for shown in product(self.runs, repeat=many):
                stands = self._after([way for _, way in shown] + [ways])
                if not ((stands * ways < 0.0) & holds).any():
                    self._stands = np.where(ways != 0.0, ways, stands)
                    self._believed = ways
                    return tuple(is_open for is_open, _ in shown)
        message = "EPANET would turn over what stands in a line"
        raise AssertionError(message)

    def _after(self, shown: list[Floats]) -> Floats:
        """Tell how contents stand once EPANET was shown these ways."""
        stands, believed = self._stands, self._believed
        for ways in shown:
            stands = np.where(believed * ways < 0.0, -stands, stands)
            believed = ways
        return stands


@dataclass(eq=False)
class _Bay:
    """A coach laid for EPANET, with a short pipe before all that opens and shuts by itself.

    Attributes:
        coach: the coach.
        net: its links in their order, then the short pipes.
        carrier: for each link, the pipe that holds its content and opens and shuts for it.
        outlets: links that are emitters there, with the node at which they are.
        place_of: place of each link.
        volume_m3: content of each link [m3], shape (links,).
    """

    coach: CoachNetwork
    net: PipeNetwork
    carrier: list[int]
    outlets: dict[int, int]
    place_of: dict[str, int]
    volume_m3: Floats

    @classmethod
    def laid(cls, coach: CoachNetwork, half: frozenset[str]) -> "_Bay":
        plain = pipe_network(coach, half)
        builder = NetworkBuilder()
        for name, height, head in zip(
            plain.node_ids, plain.elevation_m, plain.fixed_head_m, strict=True
        ):
            builder.node(name, float(height), fixed_head_m=None if np.isnan(head) else float(head))
        carrier: list[int] = []
        short: list[Link] = []
        for i, link in enumerate(coach.links.values()):
            start = link.start
            by_itself = bool(link.is_outlet or plain.carries_one_way[i])
            carrier.append(len(coach.links) + len(short) if by_itself else i)
            if by_itself:
                start = f"{BEFORE}{link.id}"
                builder.node(start, float(coach.heights_m[link.end if link.is_outlet else link.start]))
                short.append(link)
            lay_again(builder, plain, i, start, link.end)
        for link in short:
            name = f"{BEFORE}{link.id}"
            builder.pipe(name, link.start, name, length_m=0.0, bore_m=SHORT_BORE_M)
        net = builder.build()
        outlets = {i: int(net.start[i]) for i, k in enumerate(coach.links.values()) if k.is_outlet}
        place_of = {name: i for i, name in enumerate(coach.links)}
        held = [k.volume_m3 if k.holding != "nothing" else 0.0 for k in coach.links.values()]
        return cls(coach, net, carrier, outlets, place_of, np.array(held))

    def place(self, outlet: str) -> int:
        """Give the place of an outlet's link."""
        return self.place_of[self.coach.outlets[outlet].link]

    def open_links(self, state: State) -> Bools:
        """Tell which links can pass and are reached from a source; shape (links,)."""
        can_pass = passes(self.coach, state)
        is_open = np.zeros(len(self.net.link_ids), dtype=np.bool_)
        is_open[: len(can_pass)] = can_pass
        is_open[self.carrier] = can_pass
        within = is_open.copy()
        within[list(self.outlets)] = False
        fed = nodes_reached(self.net, within, self.net.is_fixed)
        return np.asarray(can_pass & fed[self.net.start[: len(can_pass)]])

    def text(self, ever_open: Bools, viscosity_m2_s: float) -> TwinText:
        """Give the input file, all pipes at their true lengths."""
        text = TwinText()
        links = {int(i) for i in np.flatnonzero(ever_open)}
        laid = sorted(links | {self.carrier[i] for i in links})
        lay(text, self.net, laid, {i: n for i, n in self.outlets.items() if i in links})
        set_options(text, viscosity_m2_s, LONGEST, STRIDE)
        text.add("OPTIONS", "UNBALANCED CONTINUE 10")  # else it stops; we look at the balance
        text.add("OPTIONS", "BACKFLOW ALLOWED NO")
        return text


class _Filling:
    """A filling under way: the bay, in an EPANET project that is open for both solvers."""

    def __init__(self, bay: _Bay, project: Any, text: TwinText) -> None:
        self._bay, self._project = bay, project
        self._index = {i: en.getlinkindex(project, name) for i, name in text.link_names.items()}
        self._node = {i: en.getnodeindex(project, f"N{n}") for i, n in text.emitters.items()}
        self._carrier = {
            i: self._index[c] for i, c in enumerate(bay.carrier) if c in self._index
        }
        self._alone = np.array([i != c for i, c in enumerate(bay.carrier)])
        self._holds = bay.volume_m3 > 0.0
        self._turned = _Turned(len(bay.coach.links))
        en.setoption(project, en.TOLERANCE, ALIKE)

    def begin(self) -> None:
        """Open both solvers, and fill each link: long at first, then cut to its true length."""
        en.openH(self._project)
        en.openQ(self._project)
        true_m = {k: en.getlinkvalue(self._project, k, en.LENGTH) for k in self._index.values()}
        for link, index in self._carrier.items():
            if self._holds[link]:
                bore_m = 1e-3 * en.getlinkvalue(self._project, index, en.DIAMETER)
                long_m = SLOW * self._bay.volume_m3[link] / (np.pi / 4.0 * bore_m**2)
                en.setlinkvalue(self._project, index, en.LENGTH, float(long_m))
        en.initH(self._project, en.NOSAVE)
        en.initQ(self._project, en.NOSAVE)
        for index, length_m in true_m.items():
            en.setlinkvalue(self._project, index, en.LENGTH, length_m)

    def run(self, run: _Run, is_open: Bools) -> tuple[Seen, Floats]:
        """Run one outlet until its colour was seen long enough, or it is given up.

        Returns:
            What was seen, and the flow of each link [m3/s], shape (links,).
        """
        outlet = self._bay.place(run.outlet)
        flow_m3_s = np.zeros(len(is_open))
        if is_open[list(self._bay.outlets)].any():
            flow_m3_s = self._flows(is_open)
            ways = np.where(np.abs(flow_m3_s) > STILL_M3_S, np.sign(flow_m3_s), 0.0)
            shown = self._turned.to_show(ways, self._holds)
            for earlier in shown:
                self._flows(earlier)
                en.runQ(self._project)
            if shown:
                self._flows(is_open)
            self._turned.runs.append((is_open, ways))
            en.runQ(self._project)
        leaving_m3_s = float(flow_m3_s[outlet])
        seconds, colour_s, share, before = 0.0, None, 0.0, 0.0
        longest_s = run.due_s + GIVE_UP_S
        if not flow_m3_s.any():
            return Seen(run.outlet, None, longest_s, 0.0, 0.0, 0.0), flow_m3_s
        while seconds < (longest_s if colour_s is None else colour_s + run.run_on_s):
            en.nextH(self._project)
            en.nextQ(self._project)
            before = share
            if leaving_m3_s > 0.0:
                share = en.getnodevalue(self._project, self._node[outlet], en.QUALITY)
            if share < COLOUR_SHARE:
                colour_s = None
            elif colour_s is None:
                # What is seen is the mean of the last step.
                way = (COLOUR_SHARE - before) / (share - before)
                colour_s = max(0.0, seconds + way * LOOK_S - 0.5 / SLOW)
            seconds += LOOK_S
        volume_m3 = leaving_m3_s * seconds
        return Seen(run.outlet, colour_s, seconds, volume_m3, share, leaving_m3_s), flow_m3_s

    def _flows(self, is_open: Bools) -> Floats:
        """Set every tap, handle and passage, and solve the flow of each link [m3/s]."""
        for link, index in self._carrier.items():
            en.setlinkvalue(self._project, index, en.STATUS, float(is_open[link]))
        for link, index in self._node.items():
            coefficient = emitter_coefficient(self._bay.net, link) if is_open[link] else 0.0
            en.setnodevalue(self._project, index, en.EMITTER, coefficient)
        for check_every in CHECK_EVERY:
            en.setoption(self._project, en.CHECKFREQ, check_every)
            quietly(en.runH, self._project)
            flow_m3_s = np.zeros(len(is_open))
            for link, index in self._carrier.items():
                if is_open[link]:
                    flow_m3_s[link] = en.getlinkvalue(self._project, index, en.FLOW)
            flow_m3_s /= 1e3 * LITRE_TRIM
            error = en.getstatistic(self._project, en.RELATIVEERROR)
            if error < BALANCED and flow_m3_s[self._alone].min() > -BACK_FLOW_M3_S:
                return flow_m3_s
        message = f"EPANET did not settle on its flows: {error}"
        raise UnbalancedError(message)
