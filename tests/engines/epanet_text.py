"""A network of ours as EPANET's input file, trimmed so that both solve the same equations.

EPANET takes gravity as 32.2 ft/s2, 8/(pi^2 g) as 0.02517 and 28.317 L in a cubic foot: lengths,
loss coefficients and flows are trimmed. A loss link becomes an emitter where it ends in the open
air at its own elevation, else a pipe of no length with a loss coefficient.
"""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Final

import numpy as np
import numpy.typing as npt

from wintertight.flow.steady import LinkKind, PipeNetwork

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

GRAVITY: Final = 9.80665
LENGTH_TRIM: Final = 32.2 * 0.3048 / GRAVITY
LOSS_TRIM: Final = 8.0 / (math.pi**2 * GRAVITY / 0.3048) / 0.02517
LITRE_TRIM: Final = 28.317 / 28.316846592
WIDENING: Final = 20.0  # a wide pipe loses about a millionth of what its line loses
_LOSS_BORE_M: Final = 0.02
_NO_LENGTH_M: Final = 1e-5
_SMOOTH_M: Final = 1e-12  # EPANET takes no roughness of zero


@dataclass(eq=False)
class TwinText:
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


def describe(  # noqa: PLR0913, PLR0917 - what one input file is made of
    network: PipeNetwork,
    open_links: Bools,
    viscosity_m2_s: float,
    slow: float,
    seconds: int,
    widening: float = WIDENING,
) -> TwinText:
    """Give the file of one run: the open links that a held head reaches."""
    text = TwinText()
    emitters: dict[int, int] = {}
    for link in _emitters(network, open_links):
        # EPANET knows one emitter a junction; a second stays a pipe.
        if int(network.start[link]) not in emitters.values():
            emitters[link] = int(network.start[link])
    links = links_reached(network, open_links, network.is_fixed)
    lay(text, network, links, emitters, slow=slow, widening=widening)
    set_options(text, viscosity_m2_s, seconds, seconds)
    return text


def lay(  # noqa: PLR0913 - how links can be laid
    text: TwinText,
    network: PipeNetwork,
    links: Iterable[int],
    emitters: Mapping[int, int],
    *,
    shut: Bools | None = None,
    slow: float = 1.0,
    widening: float = WIDENING,
) -> None:
    """Lay links, those in ``emitters`` (link: junction) as emitters, and the nodes they need."""
    nodes: set[int] = set()
    for link in links:
        ends = (int(network.start[link]), int(network.end[link]))
        nodes.update(ends[:1] if link in emitters else ends)
        if link in emitters:
            text.emitters[link] = emitters[link]
            coefficient = emitter_coefficient(network, link)
            text.add("EMITTERS", f"N{emitters[link]}", coefficient)
        else:
            text.link_names[link] = f"L{link}"
            is_shut = shut is not None and bool(shut[link])
            _lay_link(text, network, link, slow, widening, is_shut=is_shut)
    for node in sorted(nodes):
        if network.is_fixed[node]:
            text.add("RESERVOIRS", f"N{node}", float(network.fixed_head_m[node]))
        else:
            demand = 1e3 * LITRE_TRIM * float(network.demand_m3_s[node])
            text.add("JUNCTIONS", f"N{node}", float(network.elevation_m[node]), demand)


def emitter_coefficient(network: PipeNetwork, link: int) -> float:
    """Give what EPANET multiplies the root of the pressure with [L/s per root of m]."""
    return float(1e3 * LITRE_TRIM / math.sqrt(network.loss_coefficient[link]))


def set_options(text: TwinText, viscosity_m2_s: float, seconds: int, stride_s: int) -> None:
    """Set the duration, the stride from one look at the hydraulics to the next, and the units."""
    for line in ("UNITS LPS", "HEADLOSS D-W", "EMITTER EXPONENT 0.5", "QUALITY CHEM mg/L"):
        text.add("OPTIONS", line)
    text.add("OPTIONS", "VISCOSITY", float(viscosity_m2_s))
    text.add("TIMES", "DURATION", _span(seconds))
    for name in ("HYDRAULIC TIMESTEP", "PATTERN TIMESTEP", "REPORT TIMESTEP"):
        text.add("TIMES", name, _span(stride_s))
    text.add("TIMES", "QUALITY TIMESTEP 0:00:01")


def _span(seconds: int) -> str:
    return f"0:00:{seconds}" if seconds < 60 else f"{seconds / 3600.0!r}"


def _lay_link(  # noqa: PLR0913 - how one link can be laid
    text: TwinText,
    network: PipeNetwork,
    link: int,
    slow: float,
    widening: float,
    *,
    is_shut: bool,
) -> None:
    name, start, end = f"L{link}", f"N{network.start[link]}", f"N{network.end[link]}"
    kind = network.kind[link]
    status = "CLOSED" if is_shut else "CV" if network.one_way[link] else "OPEN"
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
    supplied = set(links_reached(network, open_links, supplies))
    return [link for link in outlets if link in supplied]


def links_reached(network: PipeNetwork, open_links: Bools, seeds: Bools) -> list[int]:
    """Give the open links that lead to one of the seeds."""
    links = np.flatnonzero(open_links)
    reached = nodes_reached(network, open_links, seeds)
    return [int(link) for link in links[reached[network.start[links]]]]


def nodes_reached(network: PipeNetwork, open_links: Bools, seeds: Bools) -> Bools:
    """Tell which nodes open links join with one of the seeds."""
    reached = seeds.copy()
    links = np.flatnonzero(open_links)
    start, end = network.start[links], network.end[links]
    for _ in network.node_ids:
        touched = reached[start] | reached[end]
        if not touched[~(reached[start] & reached[end])].any():
            break
        reached[start[touched]] = True
        reached[end[touched]] = True
    return reached
