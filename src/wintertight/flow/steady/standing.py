"""Heads in water that stands still behind one-way links."""

from dataclasses import dataclass
from typing import Final, Self

import numpy as np

from wintertight.flow.steady.network import Floats, Ints, LinkKind, PipeNetwork

_SAME_M: Final = 1e-12


@dataclass(frozen=True, eq=False, slots=True)
class StandingWater:
    """How heads pass through one-way links at rest, from start to end and never back.

    Attributes:
        adrift: for each node whether its tree hangs from no held head.
        gates: rows (start, end, lift [m], the nodes that move with the end): one-way links at
            rest that lead to such a tree. A pump at rest lifts by its shut-off head.
    """

    adrift: Ints
    gates: tuple[tuple[int, int, float, Ints], ...]

    @classmethod
    def of(cls, network: PipeNetwork, tops: Ints, resting: Ints) -> Self:
        """Gather the gates among the one-way links at rest, given the top of each node's tree."""
        adrift = ~network.is_fixed[tops]
        lift = np.where(network.kind == LinkKind.PUMP, network.pump_shutoff_m, 0.0)
        gates = []
        for link in resting.tolist():
            start, end = int(network.start[link]), int(network.end[link])
            if adrift[end] and tops[start] != tops[end]:
                gates.append((start, end, float(lift[link]), np.flatnonzero(tops == tops[end])))
        return cls(adrift=np.flatnonzero(adrift), gates=tuple(gates))

    def fill(self, head: Floats) -> None:
        """Shift the heads of trees adrift to the highest head that pushes on them.

        What nothing pushes on becomes nan.

        Args:
            head: heads of all nodes [m], those adrift counted from the top of their tree.
        """
        if not self.adrift.size:
            return
        relative = head[self.adrift]
        head[self.adrift] = np.nan
        known = dict(zip(self.adrift.tolist(), relative.tolist(), strict=True))
        for _ in self.gates:
            settled = True
            for start, end, lift, group in self.gates:
                pushed = head[start] + lift
                if pushed > head[end] + _SAME_M or (np.isnan(head[end]) and not np.isnan(pushed)):
                    shift = pushed - known[end]
                    head[group] = [known[node] + shift for node in group.tolist()]
                    settled = False
            if settled:
                return
