"""What one link holds, and what it lets out for what comes in.

Three ways a hollow takes up what flows through it:

    PlugHeld     displaced: first in, first out, exact segments
    RunsHeld     laminar runs in series, re-mixed between them (see ``laminar``)
    VesselHeld   stirred; air in it leaves first, through the outlet at its top

Each lets out exactly the volume it takes in; the arithmetic is in ``kernels``. They are mutable
while one action runs; a coach state holds them and never changes one it has handed out (``copy``
first). Their arrays are never changed in place, so a copy shares them.
"""

from abc import ABC, abstractmethod
from typing import ClassVar, Self

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.holding import DISPLACED, RUNS, STIRRED, about, glycol_about, push
from wintertight.flow.kernels.runs import IN_ALL, MARKS, begun_runs, mean_runs, parcels_of
from wintertight.flow.laminar import SeriesKernel
from wintertight.flow.stream import SHARES, Stream

Array = npt.NDArray[np.float64]

NO_ARRAY = np.zeros(0)


class Held(ABC):
    """What every way of holding can do.

    Attributes:
        way: how it holds (see ``kernels.holding``).
        volume_m3: of the hollow [m3].
        forward: the way in which it was last pushed.
        volumes, shares, part: what it holds (see ``kernels.holding``).
        parcel_m3: parcel in which runs are fed [m3].
    """

    __slots__ = ("forward", "parcel_m3", "part", "shares", "volume_m3", "volumes")

    way: ClassVar[int]

    def __init__(self, volume_m3: float, shares: Array) -> None:
        """Start full of one content (liquid, air, or both)."""
        self.volume_m3 = volume_m3
        self.forward = True
        self.parcel_m3 = volume_m3
        self.volumes = self.part = NO_ARRAY
        self.reset(shares)

    @abstractmethod
    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""

    @abstractmethod
    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""

    @abstractmethod
    def sections(self) -> Array:
        """Give the shares [1] of the sections to be judged, shape (k, 4)."""

    def turn(self, *, forward: bool) -> None:
        """Be pushed from this end from now on."""
        self.forward = forward

    def response(self, _coming_m3: float) -> Array:
        """Give the response, for runs, long enough for what comes [m3] (see ``push_runs``)."""
        return NO_ARRAY

    def put(self, volumes: Array, shares: Array, part: Array) -> None:
        """Take what it holds after a push."""
        self.volumes, self.shares, self.part = volumes, shares, part

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        self.turn(forward=forward)
        volumes, shares, part, gone = push(
            self.way,
            self.volume_m3,
            self.parcel_m3,
            self.response(stream.volume_m3),
            self.volumes,
            self.shares,
            self.part,
            stream.volumes,
            stream.shares,
        )
        self.put(volumes, shares, part)
        return Stream(*gone)

    def about(self) -> Array:
        """Give the mean shares [1], shape (4,), by what came in and went out: quick."""
        return about(self.way, self.volume_m3, self.volumes, self.shares, self.part)

    def glycol_about(self) -> float:
        """Give the share of glycol alone of the same mean [1]."""
        return glycol_about(self.way, self.volume_m3, self.volumes, self.shares, self.part)

    def copy(self) -> Self:
        """Give an independent copy."""
        twin = type(self).__new__(type(self))
        twin.volume_m3, twin.forward, twin.parcel_m3 = self.volume_m3, self.forward, self.parcel_m3
        twin.volumes, twin.shares, twin.part = self.volumes, self.shares, self.part
        return twin


class PlugHeld(Held):
    """Segments in order, the one nearest the outlet first; no mixing at all."""

    __slots__ = ()

    way = DISPLACED

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self.volumes = np.array([self.volume_m3])
        self.shares = np.array(shares, dtype=float).reshape(1, SHARES)

    def turn(self, *, forward: bool) -> None:
        """Be pushed from this end from now on."""
        if forward != self.forward:
            self.volumes, self.shares = self.volumes[::-1].copy(), self.shares[::-1].copy()
            self.forward = forward

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        return np.asarray(self.volumes @ self.shares / self.volumes.sum())

    def sections(self) -> Array:
        """Give the shares [1] of each segment, shape (k, 4)."""
        return self.shares


class RunsHeld(Held):
    """Laminar runs in series.

    The content follows from what was in the line at first (uniform) and from the parcels fed since
    then. When the flow turns round, the profile is taken as mixed over the whole line; its weak
    sections are still judged until the volume of the line has passed.
    """

    __slots__ = ("_mean", "_turned", "kernel")

    way = RUNS

    def __init__(self, volume_m3: float, shares: Array, kernel: SeriesKernel) -> None:
        """Start full of one content; ``kernel.parcel`` fixes the volume of a parcel."""
        super().__init__(volume_m3, shares)
        self.kernel = kernel
        self.parcel_m3 = kernel.parcel * volume_m3

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self.shares, self.part = begun_runs(self.volume_m3, np.array(shares, dtype=float))
        self._mean: Array | None = self.shares[0]
        self._turned: Array | None = None

    def turn(self, *, forward: bool) -> None:
        """Be pushed from this end from now on."""
        if forward != self.forward:
            judged = self.sections()
            self.reset(self.mean())
            self.forward, self._turned = forward, judged

    def copy(self) -> Self:
        """Give an independent copy."""
        twin = super().copy()
        twin.kernel, twin._mean, twin._turned = self.kernel, self._mean, self._turned  # noqa: SLF001
        return twin

    def response(self, coming_m3: float) -> Array:
        """Give the response, long enough for what comes [m3] (see ``push_runs``)."""
        more = parcels_of(self.part[0] + coming_m3, self.parcel_m3)
        return self.kernel.padded(len(self.shares) + more + 1)

    def put(self, volumes: Array, shares: Array, part: Array) -> None:
        """Take what it holds after a push; fed with what it is full of, it stays as it was."""
        if self._turned is None and not part[MARKS:IN_ALL].any():
            shares = shares[:1]
        super().put(volumes, shares, part)
        self._mean = None

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        if self._mean is None:
            kept = self.kernel.kept(len(self.shares))
            self._mean = mean_runs(self.shares, self.part, self.parcel_m3, self.volume_m3, kept)
        return self._mean

    def sections(self) -> Array:
        """Give the shares [1] of the sections to be judged, shape (k, 4).

        The outlet end of each run; the inlet; and the mean, as some section is as weak as that.
        Without these two, what came in last and has not reached an end would not be judged.
        """
        n = len(self.shares) - 1
        first, sums = self.shares[0], self.part[1:MARKS]
        last = first + self.shares[n] if n else first
        inlet = (sums + (self.parcel_m3 - self.part[0]) * last) / self.parcel_m3
        judged = [self.mean(), inlet]
        if n:
            weights = self.kernel.sections(n)[:, ::-1]
            judged.extend(first + weights @ self.shares[1:])
        else:
            judged.append(first)  # less than a parcel came in: the far end is as it was
        if self._turned is not None and n * self.kernel.parcel < 1.0:
            judged.extend(self._turned)
        return np.array(judged)


class VesselHeld(Held):
    """A stirred vessel; free air in it leaves before liquid does."""

    __slots__ = ()

    way = STIRRED

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self.shares = np.array(shares, dtype=float).reshape(1, SHARES)

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        return np.asarray(self.shares[0])

    def sections(self) -> Array:
        """Give the shares [1] of the one content, shape (1, 4)."""
        return self.shares
