"""Run a network of ours through EPANET: flows, heads, and fronts that travel with the flow.

What EPANET does otherwise, and how the copy allows for it:

* It takes gravity as 32.2 ft/s2, 8/(pi^2 g) as 0.02517 and 28.317 L in a cubic foot. Lengths,
  loss coefficients and flows are trimmed so that it solves the same equations.
* A closed link leaks through a resistance of 1e8 there; closed links are left out of the copy,
  with whatever no held head reaches. Check valves and pumps that it then closes by itself leak
  as well: a second run leaves out what the first one closed.
* A loss link becomes an emitter where it ends in the open air at its own elevation, else a pipe
  of no length with a loss coefficient.
* Looking at the state of check valves at every second trial, as it does unless told otherwise,
  it can end with a pump and an inlet shut that plainly deliver; looking at every twentieth it
  can end with a check valve that lets water back. It begins with twenty here, and looks more
  often if its result has water running backwards.
* Its quality step is a whole second at least. Each pipe is followed by a wide one without
  friction that makes its volume ``slow`` times as large; a second of EPANET's is then
  ``1/slow`` of ours.
* A check-valve pipe carries no volume in its quality run: the valve gets a short link of its own.
"""

import math
import warnings
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final

import numpy as np
import numpy.typing as npt
from epanet import toolkit as en

from wintertight.flow.steady import LinkKind, PipeNetwork

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

GRAVITY: Final = 9.80665
LENGTH_TRIM: Final = 32.2 * 0.3048 / GRAVITY
LOSS_TRIM: Final = 8.0 / (math.pi**2 * GRAVITY / 0.3048) / 0.02517
LITRE_TRIM: Final = 28.317 / 28.316846592
_LOSS_BORE_M: Final = 0.02
_WIDENING: Final = 20.0  # a wide pipe loses about a millionth of what its line loses
_CHECK_EVERY: Final = (20, 5, 2, 1)
_BACK_FLOW_M3_S: Final = 1e-7  # closed check valves of its own leak less
_NO_LENGTH_M: Final = 1e-5
_SMOOTH_M: Final = 1e-12  # EPANET takes no roughness of zero


@dataclass(frozen=True, eq=False)
class TwinFlow:
    """Flows of the links [m3/s], 0 where left out; heads of the nodes [m], nan likewise."""

    flow_m3_s: Floats
    head_m: Floats
    shut: Bools


@dataclass(eq=False)
class _Text:
    """The sections of an input file, and which lines stand for what of ours."""

    sections: dict[str, list[str]] = field(default_factory=dict)
    link_names: dict[int, str] = field(default_factory=dict)
    emitters: dict[int, int] = field(default_factory=dict)

    def add(self, section: str, *words: object) -> None:
        """Add one line; numbers with all their digits."""
        text = " ".join(repr(w) if isinstance(w, float) else str(w) for w in words)
        self.sections.setdefault(section, []).append(text)

    def pipe(  # noqa: PLR0913, PLR0917 - the columns of EPANET's own table
        self,
        name: str,
        start: str,
        end: str,
        length_m: float,
        bore_m: float,
        roughness_m: float = 0.0,
        loss: float = 0.0,
        status: str = "OPEN",
    ) -> None:
        """Add a pipe, trimmed."""
        length = max(length_m, _NO_LENGTH_M) * LENGTH_TRIM
        sizes = (float(length), 1e3 * float(bore_m), 1e3 * max(float(roughness_m), _SMOOTH_M))
        self.add("PIPES", name, start, end, *sizes, float(loss * LOSS_TRIM), status)

    def write(self, path: Path) -> None:
        """Write the file."""
        # Nodes must stand before the links that name them.
        order = sorted(self.sections, key=lambda name: name not in {"JUNCTIONS", "RESERVOIRS"})
        parts = [f"[{name}]\n" + "\n".join(self.sections[name]) for name in order]
        path.write_text("\n\n".join([*parts, "[END]\n"]), encoding="ascii")


def epanet_flow(
    network: PipeNetwork, open_links: Bools, viscosity_m2_s: float, folder: Path
) -> TwinFlow:
    """Solve the steady flow with EPANET, by Darcy and Weisbach, at its finest accuracy."""
    first = _run(network, open_links, viscosity_m2_s, folder)
    if not first.shut.any():
        return first
    return _run(network, open_links & ~first.shut, viscosity_m2_s, folder)


def _run(network: PipeNetwork, open_links: Bools, viscosity: float, folder: Path) -> TwinFlow:
    text = _describe(network, open_links, viscosity, 1.0, 1)
    one_way = network.carries_one_way
    for check_every in _CHECK_EVERY:
        with _Opened(text, folder, 1e-8, check_every) as project:
            flow = _solve(project, text, network)
        if flow.flow_m3_s[one_way].min(initial=0.0) > -_BACK_FLOW_M3_S:
            return flow
    message = "EPANET lets water run backwards through a check valve or pump"
    raise AssertionError(message)


def epanet_fronts(  # noqa: PLR0913 - a run has these inputs
    network: PipeNetwork,
    open_links: Bools,
    viscosity_m2_s: float,
    folder: Path,
    *,
    supply: Mapping[str, float],
    watch: Sequence[str],
    duration_s: float,
    slow: float = 100.0,
    widening: float = _WIDENING,
) -> tuple[Floats, dict[str, Floats]]:
    """Follow what enters at held heads through the network, each pipe as plug flow.

    Args:
        network: the network; at first it holds a concentration of 0.
        open_links: which links are open.
        viscosity_m2_s: one viscosity for all.
        folder: where the input file may stand.
        supply: concentration at held nodes, by name.
        watch: names of nodes to report.
        duration_s: how long to follow.
        slow: how many of EPANET's seconds make one of ours.
        widening: bore of the wide pipes over that of their lines; with many of them EPANET settles
            only if they lose a little.

    Returns:
        Times [s] and the concentration at each watched node at these times.
    """
    open_links = open_links & ~_run(network, open_links, viscosity_m2_s, folder).shut
    seconds = math.ceil(duration_s * slow)
    text = _describe(network, open_links, viscosity_m2_s, slow, seconds, widening)
    text.add("OPTIONS", "UNBALANCED CONTINUE 10")  # else it stops; we look at the balance
    for name, value in supply.items():
        text.add("QUALITY", f"N{network.node_ids.index(name)}", float(value))
    times: list[float] = []
    seen: dict[str, list[float]] = {name: [] for name in watch}
    with _Opened(text, folder, 1e-6) as project:
        _quietly(en.solveH, project)
        _must_be_balanced(project)
        en.openQ(project)
        en.initQ(project, en.NOSAVE)
        index = {n: en.getnodeindex(project, f"N{network.node_ids.index(n)}") for n in watch}
        left = 1
        while left > 0:
            times.append(en.runQ(project) / slow)
            for name in watch:
                seen[name].append(en.getnodevalue(project, index[name], en.QUALITY))
            left = en.stepQ(project)
        en.closeQ(project)
    return np.array(times), {name: np.array(values) for name, values in seen.items()}


@contextmanager
def opened_for_timing(
    network: PipeNetwork, open_links: Bools, viscosity_m2_s: float, folder: Path
) -> Iterator[Callable[[], None]]:
    """Give a call that solves the network's hydraulics anew, without writing or reading files."""
    with _Opened(_describe(network, open_links, viscosity_m2_s, 1.0, 1), folder, 1e-8) as project:
        en.openH(project)

        def solve() -> None:
            en.initH(project, en.INITFLOW)
            en.runH(project)

        yield lambda: _quietly(lambda _: solve(), project)
        en.closeH(project)


@contextmanager
def opened_for_fronts(  # noqa: PLR0913 - a run has these inputs
    network: PipeNetwork,
    open_links: Bools,
    viscosity_m2_s: float,
    folder: Path,
    *,
    supply: Mapping[str, float],
    duration_s: float,
) -> Iterator[Callable[[], None]]:
    """Give a call that solves hydraulics and fronts anew, second by second, input file read."""
    text = _describe(network, open_links, viscosity_m2_s, 1.0, math.ceil(duration_s))
    for name, value in supply.items():
        text.add("QUALITY", f"N{network.node_ids.index(name)}", float(value))
    with _Opened(text, folder, 1e-6) as project:

        def solve(project: Any) -> None:
            en.solveH(project)
            en.solveQ(project)

        yield lambda: _quietly(solve, project)


def crossing_time(times_s: Floats, values: Floats, level: float) -> float:
    """Give when a rising series first passes a level [s], between its points; nan if never."""
    above = np.flatnonzero(values >= level)
    if not above.size:
        return math.nan
    i = int(above[0])
    if i == 0:
        return float(times_s[0])
    share = (level - values[i - 1]) / (values[i] - values[i - 1])
    return float(times_s[i - 1] + share * (times_s[i] - times_s[i - 1]))


class _Opened:
    """An EPANET project, opened from a text and closed again whatever happens."""

    def __init__(
        self, text: _Text, folder: Path, accuracy: float, check_every: int = _CHECK_EVERY[0]
    ) -> None:
        self._check_every = check_every
        self._accuracy = accuracy
        self._path = folder / "twin.inp"
        text.write(self._path)
        self._project: Any = None

    def __enter__(self) -> Any:
        self._project = en.createproject()
        out = self._path.with_suffix
        en.open(self._project, str(self._path), str(out(".rpt")), str(out(".out")))
        en.setoption(self._project, en.TRIALS, 500)
        en.setoption(self._project, en.ACCURACY, self._accuracy)
        en.setoption(self._project, en.CHECKFREQ, self._check_every)
        en.setoption(self._project, en.TOLERANCE, 1e-6)
        return self._project

    def __exit__(self, *_: object) -> None:
        en.close(self._project)
        en.deleteproject(self._project)


def _quietly(call: Callable[[Any], object], project: Any) -> None:
    """Call the toolkit, which warns of pressures below the air's: we look at the balance."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        call(project)


class UnbalancedError(AssertionError):
    """EPANET did not settle on flows of its own network, so it is no reference for that run."""


def _must_be_balanced(project: Any) -> None:
    error = en.getstatistic(project, en.RELATIVEERROR)
    if not error < 1e-5:
        message = f"EPANET did not balance its own run: {error}"
        raise UnbalancedError(message)


def _solve(project: Any, text: _Text, network: PipeNetwork) -> TwinFlow:
    en.openH(project)
    en.initH(project, en.NOSAVE)
    _quietly(en.runH, project)
    _must_be_balanced(project)
    flow = np.zeros(len(network.link_ids))
    head = np.full(len(network.node_ids), np.nan)
    shut = np.zeros(len(network.link_ids), dtype=np.bool_)
    for link, name in text.link_names.items():
        index = en.getlinkindex(project, name)
        shut[link] = not en.getlinkvalue(project, index, en.STATUS)
        flow[link] = en.getlinkvalue(project, index, en.FLOW) / LITRE_TRIM / 1e3
    for link, node in text.emitters.items():
        index = en.getnodeindex(project, f"N{node}")
        flow[link] = en.getnodevalue(project, index, en.EMITTERFLOW) / LITRE_TRIM / 1e3
    for i in range(1, en.getcount(project, en.NODECOUNT) + 1):
        name = en.getnodeid(project, i)
        if name.startswith("N"):
            head[int(name[1:])] = en.getnodevalue(project, i, en.HEAD)
    en.closeH(project)
    return TwinFlow(flow, head, shut)


def _describe(  # noqa: PLR0913, PLR0917 - what one input file is made of
    network: PipeNetwork,
    open_links: Bools,
    viscosity: float,
    slow: float,
    seconds: int,
    widening: float = _WIDENING,
) -> _Text:
    text = _Text()
    links = _reached(network, open_links, network.is_fixed)
    emitting: set[int] = set()
    for link in _emitters(network, open_links):
        start = int(network.start[link])
        if start in emitting:
            continue  # EPANET knows one emitter a junction; a second stays a pipe
        emitting.add(start)
        text.emitters[link] = start
        coefficient = 1e3 * LITRE_TRIM / math.sqrt(network.loss_coefficient[link])
        text.add("EMITTERS", f"N{start}", float(coefficient))
    nodes: set[int] = set()
    for link in links:
        ends = (int(network.start[link]), int(network.end[link]))
        nodes.update(ends[:1] if link in text.emitters else ends)
        if link not in text.emitters:
            text.link_names[link] = f"L{link}"
            _add_link(text, network, link, slow, widening)
    for node in sorted(nodes):
        if network.is_fixed[node]:
            text.add("RESERVOIRS", f"N{node}", float(network.fixed_head_m[node]))
        else:
            demand = 1e3 * LITRE_TRIM * float(network.demand_m3_s[node])
            text.add("JUNCTIONS", f"N{node}", float(network.elevation_m[node]), demand)
    for line in ("UNITS LPS", "HEADLOSS D-W", "EMITTER EXPONENT 0.5", "QUALITY CHEM mg/L"):
        text.add("OPTIONS", line)
    text.add("OPTIONS", "VISCOSITY", float(viscosity))
    span = f"0:00:{seconds}" if seconds < 60 else f"{seconds / 3600.0!r}"
    for name in ("DURATION", "HYDRAULIC TIMESTEP", "PATTERN TIMESTEP", "REPORT TIMESTEP"):
        text.add("TIMES", name, span)
    text.add("TIMES", "QUALITY TIMESTEP 0:00:01")
    return text


def _add_link(text: _Text, network: PipeNetwork, link: int, slow: float, widening: float) -> None:
    name, start, end = f"L{link}", f"N{network.start[link]}", f"N{network.end[link]}"
    kind = network.kind[link]
    status = "CV" if network.one_way[link] else "OPEN"
    if kind == LinkKind.PUMP:
        shutoff, exponent = network.pump_shutoff_m[link], network.pump_exponent[link]
        run_out = (shutoff / network.pump_coefficient[link]) ** (1.0 / exponent)
        text.add("PUMPS", name, start, end, "HEAD", f"C{link}")
        for share in (0.0, 0.5, 1.0):
            flow = 1e3 * LITRE_TRIM * share * run_out
            text.add("CURVES", f"C{link}", float(flow), float(shutoff * (1.0 - share**exponent)))
    elif kind == LinkKind.LOSS:
        per_loss = 8.0 / (math.pi**2 * GRAVITY * _LOSS_BORE_M**4)
        loss = network.loss_coefficient[link] / per_loss
        text.pipe(name, start, end, 0.0, _LOSS_BORE_M, 0.0, loss, status)
    else:
        length, bore = float(network.length_m[link]), float(network.bore_m[link])
        extra = (slow - 1.0) * length / widening**2
        if slow > 1.0:
            elevation = float(network.elevation_m[network.end[link]])
            text.add("JUNCTIONS", f"V{link}", elevation, 0.0)
            text.pipe(f"W{link}", f"V{link}", end, extra / LENGTH_TRIM, widening * bore)
            end = f"V{link}"
            if status == "CV":
                text.add("JUNCTIONS", f"K{link}", elevation, 0.0)
                text.pipe(f"X{link}", start, f"K{link}", 0.0, _LOSS_BORE_M, status="CV")
                start, status = f"K{link}", "OPEN"
        loss, roughness = float(network.minor_loss[link]), float(network.roughness_m[link])
        text.pipe(name, start, end, length, bore, roughness, loss, status)


def _is_emitter(network: PipeNetwork, link: int) -> bool:
    """Tell whether a loss link lets water out into the air at the elevation of its start."""
    start, end = network.start[link], network.end[link]
    return bool(
        network.kind[link] == LinkKind.LOSS
        and not network.one_way[link]
        and not network.is_fixed[start]
        and network.fixed_head_m[end] == network.elevation_m[start]
    )


def _emitters(network: PipeNetwork, open_links: Bools) -> list[int]:
    """Give the links to model as emitters: where water stands against them but for the air."""
    outlets = [int(link) for link in np.flatnonzero(open_links) if _is_emitter(network, int(link))]
    supplies = network.is_fixed.copy()
    supplies[network.end[outlets]] = False
    supplied = set(_reached(network, open_links, supplies))
    return [link for link in outlets if link in supplied]


def _reached(network: PipeNetwork, open_links: Bools, seeds: Bools) -> list[int]:
    """Give the open links that lead to one of the seeds."""
    reached = seeds.copy()
    links = np.flatnonzero(open_links)
    start, end = network.start[links], network.end[links]
    for _ in network.node_ids:
        touched = reached[start] | reached[end]
        reached[start[touched]] = True
        reached[end[touched]] = True
    return [int(link) for link in links[reached[start]]]
