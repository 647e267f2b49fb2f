"""What every link of a coach holds after several runs, as EPANET's own quality run leaves it.

One long run of EPANET's: between two runs of ours its taps and handles are set anew, and it carries
what its pipes hold from one to the next. How it is kept to the same job as ours:

* Every content is ``SLOW`` times as large there, so that its whole second is ``1/SLOW`` of ours.
* Each outlet is an emitter whose coefficient is nought while nothing reaches it: it leaks nothing.
* A link that no run opens is left out if it holds nothing and both its ends are reached without
  it; else it stays, shut, so that it and what is beyond it are compared as well.
* While a line stands, EPANET forgets which way it flowed last: a line that then flows the other
  way gives up first what came in last. A run that would turn such a line round has the run that
  last moved it done once more just before it, on both sides (``runs_without_rest``).
"""

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
from epanet import toolkit as en

from tests.engines.coach_twin import WATER_M2_S, hollow_twin
from tests.engines.epanet_text import (
    LENGTH_TRIM,
    Bools,
    TwinText,
    emitter_coefficient,
    lay,
    nodes_reached,
    set_options,
)
from tests.engines.epanet_twin import Opened, must_be_balanced, quietly
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.hydraulics import passes, steady_flow
from wintertight.flow.state import State, with_outlet_open
from wintertight.flow.steady import LinkKind, PipeNetwork

SLOW = 400
WIDE_M = 0.1  # with contents so large, a pipe in which next to nothing is lost
LONGEST_M = 10.0
HOLLOW = "hollow "


def shares_there(
    coach: CoachNetwork, states: Sequence[State], seconds: float, source: str, folder: Path
) -> dict[str, float]:
    """Give the share of what one source gives in each link, by EPANET.

    Args:
        coach: the coach; at first it holds nothing of what the source gives.
        states: how it stands in each run.
        seconds: how long each run takes [s].
        source: the source; all others give nothing of it.
        folder: where the input file may stand.

    Returns:
        Mean share of each link that holds anything [1].
    """
    twin = _twin(coach)
    open_links = np.array([_open_links(coach, twin, state) for state in states])
    text = _text(coach, twin, open_links, seconds)
    supply = twin.node_ids.index(coach.sources[source].node)
    text.add("QUALITY", f"N{supply}", 1.0)
    with Opened(text, folder, 1e-6) as project:
        for call in (en.openH, en.openQ):
            call(project)
        for call in (en.initH, en.initQ):
            call(project, en.NOSAVE)
        for is_open in open_links:
            _set(project, text, twin, is_open)
            quietly(en.runH, project)
            must_be_balanced(project)
            en.runQ(project)
            en.nextH(project)
            en.nextQ(project)
        shares = {
            twin.link_ids[link]: en.getlinkvalue(
                project, en.getlinkindex(project, name), en.LINKQUAL
            )
            for link, name in text.link_names.items()
        }
        for call in (en.closeQ, en.closeH):
            call(project)
    return _joined(coach, twin, shares)


def runs_without_rest(coach: CoachNetwork, state: State, outlets: Sequence[str]) -> list[str]:
    """Give the outlets in order, some twice, so that no line turns round after it stood still."""
    way_of: dict[str, float] = {}
    moved_by: dict[str, str] = {}
    just_moved: set[str] = set()
    runs: list[str] = []
    for outlet in outlets:
        ways = _ways(coach, state, outlet)
        turned = {k for k, way in ways.items() if way_of.get(k, way) != way}
        again = {moved_by[k] for k in turned - just_moved}
        assert len(again) < 2, f"{outlet} turns lines that several outlets moved"
        runs += [*again, outlet]
        way_of |= ways
        moved_by |= dict.fromkeys(ways, outlet)
        just_moved = set(ways)
    return runs


def _ways(coach: CoachNetwork, state: State, outlet: str) -> dict[str, float]:
    """Give which way each link flows that does while one outlet is open."""
    opened = with_outlet_open(coach, state, outlet)
    flow = steady_flow(coach, opened, friction="epanet", viscosity_m2_s=WATER_M2_S).flow_m3_s
    return {k: way for k, way in zip(coach.links, np.sign(flow), strict=True) if way}


def _twin(coach: CoachNetwork) -> PipeNetwork:
    """Give the coach with larger hollows, each with exactly its volume once EPANET trims it."""
    twin = hollow_twin(coach, times=SLOW, wide_m=WIDE_M, longest_m=LONGEST_M)
    is_hollow = np.array([name.startswith(HOLLOW) for name in twin.link_ids])
    return replace(twin, length_m=np.where(is_hollow, twin.length_m / LENGTH_TRIM, twin.length_m))


def _open_links(coach: CoachNetwork, twin: PipeNetwork, state: State) -> Bools:
    """Tell which links can pass: hollows always can, an outlet that nothing reaches cannot."""
    can_pass = dict(zip(coach.links, passes(coach, state), strict=True))
    is_open = np.array([can_pass.get(name, True) for name in twin.link_ids])
    outlets = _is_outlet(coach, twin)
    fed = nodes_reached(twin, is_open & ~outlets, twin.is_fixed)
    return np.asarray(is_open & (fed[twin.start] | ~outlets))


def _is_outlet(coach: CoachNetwork, twin: PipeNetwork) -> Bools:
    return np.array([n in coach.links and coach.links[n].is_outlet for n in twin.link_ids])


def _text(coach: CoachNetwork, twin: PipeNetwork, open_links: Bools, seconds: float) -> TwinText:
    """Describe all runs as one."""
    ever_open = np.asarray(open_links.any(axis=0))
    holds = np.array(
        [name in coach.links and coach.links[name].holding != "nothing" for name in twin.link_ids]
    )
    is_outlet = _is_outlet(coach, twin)
    reached = nodes_reached(twin, ever_open & ~is_outlet, twin.is_fixed)
    spared = ~ever_open & ~holds & reached[twin.start] & reached[twin.end]
    text = TwinText()
    lay(
        text,
        twin,
        [int(i) for i in np.flatnonzero(~spared)],
        {int(i): int(twin.start[i]) for i in np.flatnonzero(is_outlet & ~spared)},
        shut=~ever_open,
    )
    stride = round(seconds * SLOW)
    set_options(text, WATER_M2_S, stride * len(open_links), stride)
    text.add("OPTIONS", "UNBALANCED CONTINUE 10")  # else it stops; we look at the balance
    return text


def _set(project: Any, text: TwinText, twin: PipeNetwork, is_open: Bools) -> None:
    """Set every tap, handle and passage; check valves and the pump see to themselves."""
    for link, name in text.link_names.items():
        if twin.kind[link] != LinkKind.PUMP and not twin.one_way[link]:
            index = en.getlinkindex(project, name)
            en.setlinkvalue(project, index, en.STATUS, float(is_open[link]))
    for link, node in text.emitters.items():
        coefficient = emitter_coefficient(twin, link) if is_open[link] else 0.0
        en.setnodevalue(project, en.getnodeindex(project, f"N{node}"), en.EMITTER, coefficient)


def _joined(coach: CoachNetwork, twin: PipeNetwork, shares: dict[str, float]) -> dict[str, float]:
    """Put a link's own tube and its hollow together."""
    volume = np.where(twin.kind == LinkKind.PIPE, twin.bore_m**2 * twin.length_m, 0.0)
    volume_of = dict(zip(twin.link_ids, volume, strict=True))
    joined = {}
    for link in coach.links.values():
        if link.holding != "nothing":
            parts = [n for n in (link.id, HOLLOW + link.id) if volume_of.get(n, 0.0)]
            whole = sum(volume_of[n] for n in parts)
            joined[link.id] = sum(volume_of[n] * shares[n] for n in parts) / whole
    return joined
