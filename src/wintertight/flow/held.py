"""What one link holds, and what it lets out for what comes in.

Three ways a hollow takes up what flows through it:

    PlugHeld     displaced: first in, first out, exact segments
    RunsHeld     laminar runs in series, re-mixed between them (see ``laminar``)
    VesselHeld   stirred; air in it leaves first, through the outlet at its top

Each lets out exactly the volume it takes in; the arithmetic is in ``kernels``. They are mutable
while one action runs; a coach state holds them and never changes one it has handed out (``copy``
first). Their arrays are never changed in place, so a copy shares them.
"""

from typing import Protocol, Self

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.plug import push_plug
from wintertight.flow.kernels.runs import PART, mean_runs, parcels_of, push_runs
from wintertight.flow.kernels.vessel import push_vessel
from wintertight.flow.laminar import SeriesKernel
from wintertight.flow.stream import SHARES, Stream

Array = npt.NDArray[np.float64]


class Held(Protocol):
    """What every way of holding can do."""

    volume_m3: float
    forward: bool

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        ...

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        ...

    def about(self) -> Array:
        """Give the mean shares [1], shape (4,), by what came in and went out: quick."""
        ...

    def sections(self) -> Array:
        """Give the shares [1] of the sections to be judged, shape (k, 4)."""
        ...

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        ...

    def copy(self) -> Self:
        """Give an independent copy."""
        ...


class PlugHeld:
    """Segments in order, the one nearest the outlet first; no mixing at all."""

    __slots__ = ("forward", "shares", "volume_m3", "volumes")

    def __init__(self, volume_m3: float, shares: Array) -> None:
        """Start full of one content."""
        self.volume_m3 = volume_m3
        self.forward = True
        self.reset(shares)

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self.volumes = np.array([self.volume_m3])
        self.shares = np.array(shares, dtype=float).reshape(1, SHARES)

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        volumes, shares = self.volumes, self.shares
        if forward != self.forward:
            volumes, shares = volumes[::-1].copy(), shares[::-1].copy()
            self.forward = forward
        (self.volumes, self.shares), gone = push_plug(
            volumes, shares, stream.volumes, stream.shares
        )
        return Stream(*gone)

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        return np.asarray(self.volumes @ self.shares / self.volumes.sum())

    about = mean

    def sections(self) -> Array:
        """Give the shares [1] of each segment, shape (k, 4)."""
        return self.shares

    def copy(self) -> "PlugHeld":
        """Give an independent copy."""
        twin = PlugHeld.__new__(PlugHeld)
        twin.volume_m3, twin.forward = self.volume_m3, self.forward
        twin.volumes, twin.shares = self.volumes, self.shares
        return twin


class RunsHeld:
    """Laminar runs in series.

    The content follows from what was in the line at first (uniform) and from the parcels fed since
    then. When the flow turns round, the profile is taken as mixed over the whole line; its weak
    sections are still judged until the volume of the line has passed.
    """

    __slots__ = (
        "_about",
        "_mean",
        "_turned",
        "fed",
        "forward",
        "kernel",
        "parcel_m3",
        "part",
        "volume_m3",
    )

    def __init__(self, volume_m3: float, shares: Array, kernel: SeriesKernel) -> None:
        """Start full of one content; ``kernel.parcel`` fixes the volume of a parcel."""
        self.volume_m3 = volume_m3
        self.kernel = kernel
        self.parcel_m3 = kernel.parcel * volume_m3
        self.forward = True
        self.reset(shares)

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        first = np.array(shares, dtype=float)
        self.fed = first.reshape(1, SHARES)
        self.part = np.zeros(PART)
        self._mean: Array | None = first
        self._about = first
        self._turned: Array | None = None

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        if forward != self.forward:
            judged = self.sections()
            self.reset(self.mean())
            self.forward, self._turned = forward, judged
        self._mean = None
        more = parcels_of(self.part[0] + stream.volume_m3, self.parcel_m3)
        padded = self.kernel.padded(len(self.fed) + more)
        self.fed, self.part, gone = push_runs(
            self.fed, self.part, self.parcel_m3, padded, stream.volumes, stream.shares
        )
        out = Stream(*gone)
        change = (stream.component_volumes - out.component_volumes) / self.volume_m3
        self._about = self._about + change
        return out

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        if self._mean is None:
            kept = self.kernel.kept(len(self.fed))
            self._mean = mean_runs(self.fed, self.part, self.parcel_m3, self.volume_m3, kept)
        return self._mean

    def about(self) -> Array:
        """Give the mean shares [1], shape (4,), by what came in and went out: quick."""
        return self._about

    def sections(self) -> Array:
        """Give the shares [1] of the sections to be judged, shape (k, 4).

        The outlet end of each run; the inlet; and the mean, as some section is as weak as that.
        Without these two, what came in last and has not reached an end would not be judged.
        """
        n = len(self.fed) - 1
        first, sums = self.fed[0], self.part[1 : 1 + SHARES]
        last = first + self.fed[n] if n else first
        inlet = (sums + (self.parcel_m3 - self.part[0]) * last) / self.parcel_m3
        judged = [self.mean(), inlet]
        if n:
            weights = self.kernel.sections(n)[:, ::-1]
            judged.extend(first + weights @ self.fed[1:])
        if self._turned is not None and n * self.kernel.parcel < 1.0:
            judged.extend(self._turned)
        return np.array(judged)

    def copy(self) -> "RunsHeld":
        """Give an independent copy."""
        twin = RunsHeld.__new__(RunsHeld)
        twin.volume_m3, twin.kernel, twin.parcel_m3 = self.volume_m3, self.kernel, self.parcel_m3
        twin.fed, twin.part, twin.forward = self.fed, self.part, self.forward
        twin._mean, twin._about = self._mean, self._about  # noqa: SLF001 - own class
        twin._turned = self._turned  # noqa: SLF001 - own class
        return twin


class VesselHeld:
    """A stirred vessel; free air in it leaves before liquid does."""

    __slots__ = ("forward", "shares", "volume_m3")

    def __init__(self, volume_m3: float, shares: Array) -> None:
        """Start full of one content (liquid, air, or both)."""
        self.volume_m3 = volume_m3
        self.forward = True
        self.reset(shares)

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self.shares = np.array(shares, dtype=float)

    def push(self, stream: Stream, *, forward: bool) -> Stream:  # noqa: ARG002 - ends are alike
        """Take a stream in at one end and give what leaves at the other."""
        self.shares, gone = push_vessel(self.volume_m3, self.shares, stream.volumes, stream.shares)
        return Stream(*gone)

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        return self.shares

    about = mean

    def sections(self) -> Array:
        """Give the shares [1] of the one content, shape (1, 4)."""
        return self.shares.reshape(1, SHARES)

    def copy(self) -> "VesselHeld":
        """Give an independent copy."""
        twin = VesselHeld.__new__(VesselHeld)
        twin.volume_m3, twin.forward, twin.shares = self.volume_m3, self.forward, self.shares
        return twin
