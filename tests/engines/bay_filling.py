"""A filling in one long run of EPANET's, what lines hold carried from each outlet to the next.

How it is kept to the same job as ours, beyond what ``epanet_twin`` says:

* Its quality run takes the volume of a pipe from its length at the start, and after that never
  again. Each link is laid as long as its content, ``SLOW`` times over, and is cut to its true
  length once the content stands in it: no wide pipe hinders the solver.
* Flows do not hang on contents here: they are solved once for each outlet, and time goes on in
  steps of ``LOOK_S`` until the colour was seen long enough.
* Check valves, pumps and outlets get a short pipe before them that holds their content and opens
  and shuts for them. An outlet is an emitter, its coefficient nought while it is shut.
* A line that stands forgets which way it flowed. One that would turn round after a rest first has
  earlier runs shown to it again, for no time at all (``Turned``).
"""

from dataclasses import dataclass
from itertools import product
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
from tests.engines.epanet_twin import UnbalancedError, quietly
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.hydraulics import STILL_M3_S, passes, pipe_network
from wintertight.flow.state import State
from wintertight.flow.steady import NetworkBuilder, PipeNetwork
from wintertight.flow.until import COLOUR_SHARE
from wintertight.procedure.mistaken import waits_s

SLOW = 25
"""How many of EPANET's seconds, each a step of its quality run, make one of ours [1].

Fronts smear over a step at each node: with so many, colour shows a tenth of a second early at most.
"""

LOOK_S = 1.0 / SLOW
LONGEST = 10**7  # all of EPANET's seconds that a filling may take
STAGNANT_M3_S = 0.005 * 231 * 0.0254**3 / 60.0  # below this a line forgets its way there
BEFORE = "before "
SHORT_BORE_M = 0.02
ACCURACY = 1e-6
BALANCED = 1e-5
ALIKE = 1e-3  # shares that differ by less become one parcel
CHECK_EVERY = (20, 5, 2, 1)
BACK_FLOW_M3_S = 1e-7


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
class Run:
    """One outlet's run: what is open, when colour is due, and how long it runs on."""

    outlet: str
    state: State
    due_s: float
    run_on_s: float


class Turned:
    """Which way each line's content stands there, and which way EPANET believes that it does."""

    def __init__(self, links: int) -> None:
        """Begin with a coach that is full of one fluid."""
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
class Bay:
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
    def laid(cls, coach: CoachNetwork, half: frozenset[str]) -> "Bay":
        """Lay a coach, the valves in ``half`` half turned."""
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
                at = link.end if link.is_outlet else link.start
                builder.node(start, float(coach.heights_m[at]))
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
        set_options(text, viscosity_m2_s, LONGEST, 1)
        text.add("OPTIONS", "UNBALANCED CONTINUE 10")  # else it stops; we look at the balance
        text.add("OPTIONS", "BACKFLOW ALLOWED NO")
        return text


class Filling:
    """A filling under way: the bay, in an EPANET project that is open for both solvers."""

    def __init__(self, bay: Bay, project: Any, text: TwinText) -> None:
        """Take a project that was opened from the bay's own text."""
        self._bay, self._project = bay, project
        self._index = {i: en.getlinkindex(project, name) for i, name in text.link_names.items()}
        self._node = {i: en.getnodeindex(project, f"N{n}") for i, n in text.emitters.items()}
        self._carrier = {i: self._index[c] for i, c in enumerate(bay.carrier) if c in self._index}
        self._alone = np.array([i != c for i, c in enumerate(bay.carrier)])
        self._holds = bay.volume_m3 > 0.0
        self._turned = Turned(len(bay.coach.links))
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

    def run(self, run: Run, is_open: Bools) -> tuple[Seen, Floats]:
        """Run one outlet until its colour was seen long enough, or it is given up.

        Returns:
            What was seen, and the flow of each link [m3/s], shape (links,).
        """
        outlet = self._bay.place(run.outlet)
        flow_m3_s = np.zeros(len(is_open))
        if is_open[list(self._bay.outlets)].any():
            flow_m3_s = self._flows(is_open)
            ways = np.where(np.abs(flow_m3_s) > STAGNANT_M3_S, np.sign(flow_m3_s), 0.0)
            shown = self._turned.to_show(ways, self._holds)
            for earlier in shown:
                self._flows(earlier)
                en.runQ(self._project)
            if shown:
                self._flows(is_open)
            self._turned.runs.append((is_open, ways))
            en.runQ(self._project)
        leaving_m3_s = float(flow_m3_s[outlet])
        steps, share = 0, 0.0
        colour_s: float | None = None
        longest_s = waits_s(run.due_s)
        if not flow_m3_s.any():
            return Seen(run.outlet, None, longest_s, 0.0, 0.0, 0.0), flow_m3_s
        while steps * LOOK_S < (longest_s if colour_s is None else colour_s + run.run_on_s):
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
                colour_s = max(0.0, (steps + way - 0.5) * LOOK_S)
            steps += 1
        seconds = steps * LOOK_S
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
            back = self._alone & (flow_m3_s < -BACK_FLOW_M3_S)
            error = en.getstatistic(self._project, en.RELATIVEERROR)
            if error < BALANCED and not back.any():
                return np.where(np.abs(flow_m3_s) > STILL_M3_S, flow_m3_s, 0.0)
        if back.any():  # it shuts a check valve only beyond a tolerance of its own
            return self._flows(is_open & ~back)
        message = f"EPANET did not settle on its flows: {error}"
        raise UnbalancedError(message)
