"""Run a network of ours through EPANET: flows, heads, and fronts that travel with the flow.

What EPANET does otherwise, and how the copy allows for it:

* Its constants are rounded: ``epanet_text`` trims what it is given.
* A closed link leaks through a resistance of 1e8 there; closed links are left out of the copy,
  with whatever no held head reaches. Check valves and pumps that it then closes by itself leak
  as well: a second run leaves out what the first one closed.
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
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

import numpy as np
from epanet import toolkit as en

from tests.engines.epanet_text import LITRE_TRIM, WIDENING, Bools, Floats, TwinText, describe
from wintertight.flow.steady import PipeNetwork

_CHECK_EVERY: Final = (20, 5, 2, 1)
_BACK_FLOW_M3_S: Final = 1e-7  # closed check valves of its own leak less


@dataclass(frozen=True, eq=False)
class TwinFlow:
    """Flows of the links [m3/s], 0 where left out; heads of the nodes [m], nan likewise."""

    flow_m3_s: Floats
    head_m: Floats
    shut: Bools


def epanet_flow(
    network: PipeNetwork, open_links: Bools, viscosity_m2_s: float, folder: Path
) -> TwinFlow:
    """Solve the steady flow with EPANET, by Darcy and Weisbach, at its finest accuracy."""
    first = _run(network, open_links, viscosity_m2_s, folder)
    if not first.shut.any():
        return first
    return _run(network, open_links & ~first.shut, viscosity_m2_s, folder)


def _run(network: PipeNetwork, open_links: Bools, viscosity: float, folder: Path) -> TwinFlow:
    text = describe(network, open_links, viscosity, 1.0, 1)
    one_way = network.carries_one_way
    for check_every in _CHECK_EVERY:
        with Opened(text, folder, 1e-8, check_every) as project:
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
    widening: float = WIDENING,
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
    text = describe(network, open_links, viscosity_m2_s, slow, seconds, widening)
    text.add("OPTIONS", "UNBALANCED CONTINUE 10")  # else it stops; we look at the balance
    for name, value in supply.items():
        text.add("QUALITY", f"N{network.node_ids.index(name)}", float(value))
    times: list[float] = []
    seen: dict[str, list[float]] = {name: [] for name in watch}
    with Opened(text, folder, 1e-6) as project:
        quietly(en.solveH, project)
        must_be_balanced(project)
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
    with Opened(describe(network, open_links, viscosity_m2_s, 1.0, 1), folder, 1e-8) as project:
        en.openH(project)

        def solve() -> None:
            en.initH(project, en.INITFLOW)
            en.runH(project)

        yield lambda: quietly(lambda _: solve(), project)
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
    text = describe(network, open_links, viscosity_m2_s, 1.0, math.ceil(duration_s))
    for name, value in supply.items():
        text.add("QUALITY", f"N{network.node_ids.index(name)}", float(value))
    with Opened(text, folder, 1e-6) as project:

        def solve(project: Any) -> None:
            en.solveH(project)
            en.solveQ(project)

        yield lambda: quietly(solve, project)


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


class Opened:
    """An EPANET project, opened from a text and closed again whatever happens."""

    def __init__(
        self, text: TwinText, folder: Path, accuracy: float, check_every: int = _CHECK_EVERY[0]
    ) -> None:
        """Write the text into a folder; it is opened on entering."""
        self._check_every = check_every
        self._accuracy = accuracy
        self._path = folder / "twin.inp"
        text.write(self._path)
        self._project: Any = None

    def __enter__(self) -> Any:
        """Open it."""
        self._project = en.createproject()
        out = self._path.with_suffix
        en.open(self._project, str(self._path), str(out(".rpt")), str(out(".out")))
        en.setoption(self._project, en.TRIALS, 500)
        en.setoption(self._project, en.ACCURACY, self._accuracy)
        en.setoption(self._project, en.CHECKFREQ, self._check_every)
        en.setoption(self._project, en.TOLERANCE, 1e-6)
        return self._project

    def __exit__(self, *_: object) -> None:
        """Close it."""
        en.close(self._project)
        en.deleteproject(self._project)


def quietly(call: Callable[[Any], object], project: Any) -> None:
    """Call the toolkit, which warns of pressures below the air's: we look at the balance."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        call(project)


class UnbalancedError(AssertionError):
    """EPANET did not settle on flows of its own network, so it is no reference for that run."""


def must_be_balanced(project: Any) -> None:
    """Let no run count that EPANET did not settle."""
    error = en.getstatistic(project, en.RELATIVEERROR)
    if not error < 1e-5:
        message = f"EPANET did not balance its own run: {error}"
        raise UnbalancedError(message)


def _solve(project: Any, text: TwinText, network: PipeNetwork) -> TwinFlow:
    en.openH(project)
    en.initH(project, en.NOSAVE)
    quietly(en.runH, project)
    must_be_balanced(project)
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
