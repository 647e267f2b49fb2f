"""What runs from an outlet in every draw: until colour shows, and on after it.

A replay says what ran in one coach. In another that fits the card colour comes after another
volume: that of what still had to be filled on the way, washed through more runs or fewer. What runs
after it goes by the technician's count and by the flow, which follows the pump only in part.
"""

import math
from dataclasses import dataclass, field

import numpy as np
import numpy.typing as npt

from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.replay import Moment, Trace
from wintertight.flow.state import State
from wintertight.flow.stream import AIR
from wintertight.flow.until import COLOUR_SHARE, OutletRun
from wintertight.procedure.drawn import Drawn
from wintertight.procedure.responses import MOST_RUNS, Whole, volumes_to_colour

Array = npt.NDArray[np.float64]

LOSSES_GROW = 2.0
"""Exponent with which losses grow with the flow [1]: taps, valves and bends rule."""


@dataclass(frozen=True, eq=False, slots=True)
class Sizes:
    """Sizes of everything in every draw; the coach of the replay stands last.

    Attributes:
        drawn: what each draw takes.
        network: the coach of the replay.
        best: the coach at best values, on which the drawn factors stand.
        strength: share of antifreeze in the undiluted product [1].
    """

    drawn: Drawn
    network: CoachNetwork
    best: CoachNetwork
    strength: float
    _volumes: dict[str, Array] = field(default_factory=dict)
    _runs: dict[str, Whole] = field(default_factory=dict)

    def volume_m3(self, link: Link) -> Array:
        """Give what a link holds [m3], shape (draws + 1,)."""
        if link.id not in self._volumes:
            usual = self.best.links[link.id].volume_m3
            drawn = usual * self.drawn.lines[link.part]
            self._volumes[link.id] = np.append(drawn, link.volume_m3)
        return self._volumes[link.id]

    def runs(self, link: Link) -> Whole:
        """Give the laminar runs of a link [1], shape (draws + 1,)."""
        if link.id not in self._runs:
            most = self.best.links[link.id].runs
            least = max(1, (most + 1) // 2)
            runs = np.rint(least + self.drawn.mixing * (most - least))
            self._runs[link.id] = np.append(runs, link.runs).astype(np.int64)
        return self._runs[link.id]

    def still(self, link: Link, state: State) -> tuple[float, float]:
        """Give the shares of a link that no antifreeze fills yet, and that air fills [1]."""
        shares = state.held[link.id].mean()
        return max(0.0, 1.0 - float(shares[:AIR].sum()) / self.strength), float(shares[AIR])

    def flow(self, flow_m3_s: float) -> Array:
        """Give the factor on a flow [1], shape (draws,).

        The pump's curve is straight and losses go with the square of the flow: at a share x of the
        open flow, one per cent more open flow gives x / (x + 2 (1 - x)) per cent more.
        """
        opened = sum(k.pump_open_m3_s for k in self.network.links.values() if k.way == "pump")
        share = min(1.0, flow_m3_s / opened) if opened else 0.0
        return np.asarray(self.drawn.pump ** (share / (share + LOSSES_GROW * (1.0 - share))))


@dataclass(frozen=True, eq=False, slots=True)
class Ran:
    """What ran from one outlet, shape (draws,) each.

    Attributes:
        colour_m3: until colour showed [m3].
        on_m3: after it [m3].
        colour_s: how long it took until colour showed [s].
        seconds: how long both took [s].
    """

    colour_m3: Array
    on_m3: Array
    colour_s: Array
    seconds: Array


@dataclass(frozen=True, eq=False, slots=True)
class DrawnRun:
    """One run of a replay, and what ran in the draws.

    Attributes:
        seen: what was seen in the replay.
        before, after: the coach of the replay before and after it.
        ran: what ran in the draws; None where it was not run for colour, or none came.
        draws: how many there are [1].
    """

    seen: OutletRun
    before: State
    after: State
    ran: Ran | None
    draws: int

    @property
    def passed_m3(self) -> Array:
        """What ran in each draw [m3], as in the replay where it does not hang on them."""
        usual = np.full(self.draws + 1, self.seen.volume_m3)
        if self.ran is not None:
            usual[:-1] = self.ran.colour_m3 + self.ran.on_m3
        return usual


def branches(network: CoachNetwork, way: tuple[str, ...]) -> bool:
    """Tell whether an outlet is fed by several ways at once.

    Args:
        network: the coach.
        way: the links through which fluid moved.

    Returns:
        True if more than two of them meet anywhere.
    """
    nodes = [node for name in way for node in (network.links[name].start, network.links[name].end)]
    return max(map(nodes.count, nodes), default=0) > 2  # noqa: PLR2004 - in and out


def drawn_runs(sizes: Sizes, trace: Trace) -> tuple[DrawnRun, ...]:
    """Work out what runs from every outlet of a replay.

    Args:
        sizes: sizes of everything in every draw.
        trace: the replay.

    Returns:
        Its runs, in order.
    """
    states = (trace.start, *(moment.state for moment in trace.moments))
    return tuple(
        DrawnRun(seen, before, moment.state, ran(sizes, moment, before), len(sizes.drawn.pump))
        for moment, before in zip(trace.moments, states, strict=False)
        if (seen := moment.outcome.run) is not None
    )


def ran(sizes: Sizes, moment: Moment, before: State) -> Ran | None:
    """Work out what runs from an outlet that is run for colour.

    Args:
        sizes: sizes of everything in every draw.
        moment: the run, as the replay did it.
        before: the state before it.

    Returns:
        Volumes and seconds; None where it was not run for colour, or none came.
    """
    seen, until, drawn = moment.outcome.run, moment.action.until, sizes.drawn
    if seen is None or until is None or until.volume_m3 is not None:
        return None
    if seen.first_colour_m3 is None or seen.first_colour_s is None:
        return None
    later, flow = _later(sizes, seen.way, before), sizes.flow(seen.flow_m3_s)
    asked_s = until.run_on_s or 0.0
    on_s = asked_s * drawn.counting + drawn.seeing_s
    took_s = seen.seconds - seen.first_colour_s
    on_m3_s = (seen.volume_m3 - seen.first_colour_m3) / took_s if asked_s else seen.flow_m3_s
    colour_s = seen.first_colour_s * later / flow
    return Ran(
        colour_m3=seen.first_colour_m3 * later,
        on_m3=on_s * flow * on_m3_s,
        colour_s=colour_s,
        seconds=colour_s + on_s,
    )


def _later(sizes: Sizes, way: tuple[str, ...], before: State) -> Array:
    """Give the factor on the volume after which colour shows, shape (draws,)."""
    lines, squares, vessels = (np.zeros(len(sizes.drawn.pump) + 1) for _ in range(3))
    for link in (sizes.network.links[name] for name in way):
        if link.holding == "nothing":
            continue
        still, air = sizes.still(link, before)
        volume = sizes.volume_m3(link)
        if link.holding == "vessel":
            # What is pushed ahead of the front fills its air; then it is stirred.
            clear = (still - air) / max(1.0 - air, 1e-9)
            turns = max(0.0, math.log(max(clear, 1e-9) / (1.0 - COLOUR_SHARE)))
            vessels += np.maximum(air * volume - lines - vessels, 0.0) + turns * volume
            continue
        fresh = still * volume
        lines += fresh
        squares += fresh**2 / (sizes.runs(link) if link.holding == "runs" else MOST_RUNS)
    # A row of unequal lines wears a front down as so many equal runs would.
    equal = lines**2 / np.maximum(squares, np.finfo(float).tiny)
    volume = lines * volumes_to_colour(equal) + vessels
    return np.asarray(volume[:-1] / volume[-1]) if volume[-1] > 0.0 else np.ones(len(volume) - 1)
