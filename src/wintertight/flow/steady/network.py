"""The network a steady flow is solved on: plain arrays, checked once and then read-only."""

from dataclasses import dataclass
from enum import IntEnum
from typing import Final

import numpy as np
import numpy.typing as npt

from wintertight.errors import InputError

Floats = npt.NDArray[np.float64]
Ints = npt.NDArray[np.int64]
Bools = npt.NDArray[np.bool_]


class LinkKind(IntEnum):
    """What sort of head-flow law a link follows."""

    PIPE = 0
    PUMP = 1
    LOSS = 2


_NODE_FLOATS: Final = ("elevation_m", "fixed_head_m", "demand_m3_s")
_SIZES: Final = (
    "length_m",
    "bore_m",
    "roughness_m",
    "minor_loss",
    "loss_coefficient",
    "pump_shutoff_m",
    "pump_coefficient",
    "pump_exponent",
)


@dataclass(frozen=True, eq=False)
class PipeNetwork:
    """Nodes and links as arrays; head is elevation plus pressure head.

    A pipe loses ``(f L/D + K) v^2/2g``, a loss link ``r q |q|``, a pump gains ``h0 - r q^n``.
    Values of a kind a link does not have are zero.

    Args:
        node_ids: names of the nodes, each once.
        elevation_m: elevation of each node [m].
        fixed_head_m: head held at a node [m], nan where it is free.
        demand_m3_s: what leaves the network at a node [m3/s]; without effect at a fixed head.
        link_ids: names of the links, each once.
        start: index of the node a link begins at.
        end: index of the node it ends at; flow from start to end counts as positive.
        kind: a ``LinkKind`` for each link.
        length_m: length of a pipe [m], 0 and up.
        bore_m: inner diameter of a pipe [m], above 0.
        roughness_m: equivalent sand roughness of a pipe [m], 0 and up, below its bore.
        minor_loss: loss coefficient K on the velocity head of the pipe [1], 0 and up.
        loss_coefficient: r of a loss link [s2/m5], 0 and up.
        one_way: whether a link carries only from start to end; a pump always does.
        pump_shutoff_m: head a pump gains at rest, h0 [m], above 0.
        pump_coefficient: r of a pump [m/(m3/s)^n], above 0.
        pump_exponent: n of a pump [1], above 0.

    Raises:
        InputError: an array has another length, a node is unknown, a size is not a size.

    Sources: todini-pilati (the form of the network's equations).
    """

    node_ids: tuple[str, ...]
    elevation_m: Floats
    fixed_head_m: Floats
    demand_m3_s: Floats
    link_ids: tuple[str, ...]
    start: Ints
    end: Ints
    kind: Ints
    length_m: Floats
    bore_m: Floats
    roughness_m: Floats
    minor_loss: Floats
    loss_coefficient: Floats
    one_way: Bools
    pump_shutoff_m: Floats
    pump_coefficient: Floats
    pump_exponent: Floats

    def __post_init__(self) -> None:
        """Check the arrays and close them against change."""
        n, m = len(self.node_ids), len(self.link_ids)
        for names, what in ((self.node_ids, "node"), (self.link_ids, "link")):
            if len(set(names)) != len(names):
                twice = next(name for name in names if names.count(name) > 1)
                message = f"the {what} {twice!r} is named twice"
                raise InputError(message)
        for name in _NODE_FLOATS:
            self._close(name, np.float64, n)
        for name in _SIZES:
            self._close(name, np.float64, m)
        for name in ("start", "end", "kind"):
            self._close(name, np.int64, m)
        self._close("one_way", np.bool_, m)
        self._check_nodes()
        self._check_links()

    @property
    def is_fixed(self) -> Bools:
        """Where the head is held."""
        return ~np.isnan(self.fixed_head_m)

    @property
    def carries_one_way(self) -> Bools:
        """Where flow can only run from start to end: check valves and pumps."""
        return np.asarray(self.one_way | (self.kind == LinkKind.PUMP), dtype=np.bool_)

    def _close(self, name: str, dtype: type[np.generic], length: int) -> None:
        array = np.array(getattr(self, name), dtype=dtype)
        if array.shape != (length,):
            message = f"{name} has shape {array.shape}, {(length,)} is needed"
            raise InputError(message)
        array.setflags(write=False)
        object.__setattr__(self, name, array)

    def _check_nodes(self) -> None:
        self._refuse_nodes(~np.isfinite(self.elevation_m), "elevation_m is not a number")
        self._refuse_nodes(~np.isfinite(self.demand_m3_s), "demand_m3_s is not a number")
        self._refuse_nodes(np.isinf(self.fixed_head_m), "fixed_head_m is infinite")

    def _check_links(self) -> None:
        n = len(self.node_ids)
        ends = np.stack([self.start, self.end])
        self._refuse_links(np.any((ends < 0) | (ends >= n), axis=0), "an end is no known node")
        self._refuse_links(self.start == self.end, "both ends are the same node")
        self._refuse_links(~np.isin(self.kind, list(LinkKind)), "its kind is unknown")
        for name in _SIZES:
            sizes = getattr(self, name)
            self._refuse_links(~np.isfinite(sizes) | (sizes < 0.0), f"{name} is not a size")
        pipe = self.kind == LinkKind.PIPE
        self._refuse_links(pipe & (self.bore_m <= 0.0), "a pipe needs a bore")
        self._refuse_links(pipe & (self.roughness_m > self.bore_m), "rougher than its bore")
        pump = self.kind == LinkKind.PUMP
        curve = np.stack([self.pump_shutoff_m, self.pump_coefficient, self.pump_exponent])
        self._refuse_links(pump & np.any(curve <= 0.0, axis=0), "a pump needs its whole curve")

    def _refuse_nodes(self, wrong: Bools, why: str) -> None:
        if wrong.any():
            message = f"node {self.node_ids[int(np.argmax(wrong))]!r}: {why}"
            raise InputError(message)

    def _refuse_links(self, wrong: Bools, why: str) -> None:
        if wrong.any():
            message = f"link {self.link_ids[int(np.argmax(wrong))]!r}: {why}"
            raise InputError(message)
