"""What one link holds, and what it lets out for what comes in.

Three ways a hollow takes up what flows through it:

    PlugHeld     displaced: first in, first out, exact segments
    RunsHeld     laminar runs in series, re-mixed between them (see ``laminar``)
    VesselHeld   stirred; air in it leaves first, through the outlet at its top

Each lets out exactly the volume it takes in. They are mutable while one action runs; a coach state
holds them and never changes one it has handed out (``copy`` first).
"""

from typing import Protocol, Self

import numpy as np
import numpy.typing as npt

from wintertight.flow.laminar import SeriesKernel
from wintertight.flow.stream import AIR, DUST_M3, SHARES, Stream

Array = npt.NDArray[np.float64]

STIR_STEP = 0.25
"""Largest parcel let out of a stirred vessel, as a share of its volume [1]."""

LONGEST_DECAY = 30.0
"""Volumes of a vessel in one push up to which all parcels are worked at once [1]."""

ALIKE = 1e-13
"""Shares closer than this are the same [1]."""


class Held(Protocol):
    """What every way of holding can do."""

    volume_m3: float

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        ...

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
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

    __slots__ = ("_forward", "_shares", "_volumes", "volume_m3")

    def __init__(self, volume_m3: float, shares: Array) -> None:
        """Start full of one content."""
        self.volume_m3 = volume_m3
        self._forward = True
        self.reset(shares)

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self._volumes = np.array([self.volume_m3])
        self._shares = np.array(shares, dtype=float).reshape(1, SHARES)

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        if forward != self._forward:
            self._volumes, self._shares = self._volumes[::-1], self._shares[::-1]
            self._forward = forward
        volumes = np.concatenate((self._volumes, stream.volumes))
        shares = np.concatenate((self._shares, stream.shares))
        leaves = stream.volume_m3
        ends = np.cumsum(volumes)
        cut = int(np.searchsorted(ends, leaves))
        cut = min(cut, len(volumes) - 1)
        before = leaves - (ends[cut - 1] if cut else 0.0)
        out_volumes = np.concatenate((volumes[:cut], [before]))
        stays = volumes[cut:].copy()
        stays[0] -= before
        keep = stays > DUST_M3
        kept = Stream(stays[keep], shares[cut:][keep]).merged()
        self._volumes, self._shares = kept.volumes, kept.shares
        gone = out_volumes > DUST_M3
        return Stream(out_volumes[gone], shares[: cut + 1][gone]).merged()

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        return np.asarray(self._volumes @ self._shares / self._volumes.sum())

    def sections(self) -> Array:
        """Give the shares [1] of each segment, shape (k, 4)."""
        return self._shares

    def copy(self) -> "PlugHeld":
        """Give an independent copy."""
        twin = PlugHeld.__new__(PlugHeld)
        twin.volume_m3, twin._forward = self.volume_m3, self._forward  # noqa: SLF001 - own class
        twin._volumes, twin._shares = self._volumes, self._shares  # noqa: SLF001 - never in place
        return twin


class RunsHeld:
    """Laminar runs in series.

    The content follows from what was in the line at first (uniform) and from the parcels fed since
    then. When the flow turns round, the profile is taken as mixed over the whole line; its weak
    sections are still judged until the volume of the line has passed.
    """

    __slots__ = (
        "_count",
        "_fed",
        "_first",
        "_forward",
        "_mean",
        "_part",
        "_turned",
        "_used",
        "kernel",
        "parcel_m3",
        "volume_m3",
    )

    def __init__(self, volume_m3: float, shares: Array, kernel: SeriesKernel) -> None:
        """Start full of one content; ``kernel.parcel`` fixes the volume of a parcel."""
        self.volume_m3 = volume_m3
        self.kernel = kernel
        self.parcel_m3 = kernel.parcel * volume_m3
        self._forward = True
        self.reset(shares)

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self._first = np.array(shares, dtype=float)
        self._fed = np.zeros((SHARES, 64))
        self._used = np.zeros(SHARES, dtype=bool)
        self._count = 0
        self._part = (0.0, np.zeros(SHARES))
        self._mean: Array | None = self._first
        self._turned: Array | None = None

    def push(self, stream: Stream, *, forward: bool) -> Stream:
        """Take a stream in at one end and give what leaves at the other."""
        if forward != self._forward:
            judged = self.sections()
            self.reset(self.mean())
            self._forward, self._turned = forward, judged
        self._mean = None
        had = self._count
        part_before, _ = self._part
        new = self._take(stream)
        sizes = np.full(new + 1, self.parcel_m3)
        sizes[0] -= part_before
        sizes[-1] = self._part[0] if new else stream.volume_m3
        total = had + new
        out = np.empty((new + 1, SHARES))
        out[:] = self._first
        if total:
            for c in np.flatnonzero(self._used):
                out[:, c] += self.kernel.leaving_of(self._fed[c, :total], new)
        keep = sizes > DUST_M3
        return Stream(sizes[keep], out[keep])

    def _take(self, stream: Stream) -> int:
        """Cut what comes in into parcels; keep the unfinished one; give how many are new."""
        part, part_sum = self._part
        count = len(stream.volumes)
        at = np.zeros(count + 2)
        at[1] = part
        at[2:] = part + np.cumsum(stream.volumes)
        run = np.zeros((count + 2, SHARES))
        run[1] = part_sum
        run[2:] = part_sum + np.cumsum(stream.volumes[:, None] * stream.shares, 0)
        new = int(at[-1] / self.parcel_m3 + 1e-12)
        edges = np.minimum(self.parcel_m3 * np.arange(new + 1), at[-1])
        sums = np.zeros((new + 1, SHARES))
        for c in np.flatnonzero(run[-1]):
            sums[:, c] = np.interp(edges, at, run[:, c])
        while self._count + new > self._fed.shape[1]:
            self._fed = np.concatenate((self._fed, np.zeros_like(self._fed)), axis=1)
        if new:
            fed = (np.diff(sums, axis=0) / self.parcel_m3 - self._first).T
            self._fed[:, self._count : self._count + new] = fed
            self._used |= fed.any(axis=1)
        self._count += new
        left = at[-1] - edges[-1]
        self._part = (left, run[-1] - sums[-1]) if left > DUST_M3 else (0.0, np.zeros(SHARES))
        return new

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        if self._mean is None:
            self._mean = self._mean_now()
        return self._mean

    def _mean_now(self) -> Array:
        part, part_sum = self._part
        kept = self.kernel.kept(self._count + 1)
        n = self._count
        # An unfinished parcel has pushed out its own volume of what w says leaves next.
        lag = part / self.parcel_m3
        still = kept[:n][::-1]
        later = kept[1 : n + 1][::-1]
        weights = ((1.0 - lag) * still + lag * later) * self.parcel_m3
        deviation = self._fed[:, :n] @ weights + part_sum - part * self._first
        return np.asarray(self._first + deviation / self.volume_m3)

    def sections(self) -> Array:
        """Give the shares [1] of the sections to be judged, shape (k, 4).

        The outlet end of each run; the inlet; and the mean, as some section is as weak as that.
        Without these two, what came in last and has not reached an end would not be judged.
        """
        n = self._count
        part, part_sum = self._part
        last = self._first + self._fed[:, n - 1] if n else self._first
        inlet = (part_sum + (self.parcel_m3 - part) * last) / self.parcel_m3
        judged = [self.mean(), inlet]
        if n:
            weights = self.kernel.sections(n)[:, ::-1]
            judged.extend(self._first + weights @ self._fed[:, :n].T)
        if self._turned is not None and n * self.kernel.parcel < 1.0:
            judged.extend(self._turned)
        return np.array(judged)

    def copy(self) -> "RunsHeld":
        """Give an independent copy."""
        twin = RunsHeld.__new__(RunsHeld)
        twin.volume_m3, twin.kernel, twin.parcel_m3 = self.volume_m3, self.kernel, self.parcel_m3
        twin._first, twin._fed, twin._count = self._first, self._fed.copy(), self._count  # noqa: SLF001
        twin._forward, twin._part = self._forward, self._part  # noqa: SLF001 - own class
        twin._mean, twin._used = self._mean, self._used.copy()  # noqa: SLF001 - own class
        twin._turned = self._turned  # noqa: SLF001 - own class
        return twin


class VesselHeld:
    """A stirred vessel; free air in it leaves before liquid does."""

    __slots__ = ("_amounts", "volume_m3")

    def __init__(self, volume_m3: float, shares: Array) -> None:
        """Start full of one content (liquid, air, or both)."""
        self.volume_m3 = volume_m3
        self.reset(shares)

    def reset(self, shares: Array) -> None:
        """Fill with one uniform content."""
        self._amounts = np.array(shares, dtype=float) * self.volume_m3

    def push(self, stream: Stream, *, forward: bool) -> Stream:  # noqa: ARG002 - ends are alike
        """Take a stream in at one end and give what leaves at the other."""
        if self._amounts[AIR] == 0.0:
            apart = np.abs(stream.shares * self.volume_m3 - self._amounts).max()
            if apart < ALIKE * self.volume_m3:
                return stream
            passed = float(stream.volumes.sum()) / self.volume_m3
            if passed < LONGEST_DECAY:
                return self._stir(stream)
        volumes: list[float] = []
        shares: list[Array] = []
        for volume, share in zip(stream.volumes, stream.shares, strict=True):
            steps = max(1, int(np.ceil(volume / (STIR_STEP * self.volume_m3))))
            for _ in range(steps):
                out, gone = self._step(volume / steps, share)
                volumes.extend(v for v, _ in gone)
                shares.extend(s for _, s in gone)
                self._amounts = out
        return Stream(np.array(volumes), np.array(shares).reshape(-1, SHARES)).merged()

    def _stir(self, stream: Stream) -> Stream:
        """Take a whole stream in while the vessel holds no air: all parcels at once, exactly.

        Air that comes in leaves at once, with the liquid of its parcel.
        """
        volumes, shares = stream.volumes, stream.shares
        steps = np.maximum(1, np.ceil(volumes / (STIR_STEP * self.volume_m3))).astype(int)
        if steps.max() > 1:
            volumes, shares = np.repeat(volumes / steps, steps), np.repeat(shares, steps, axis=0)
        air = shares[:, AIR]
        wet = np.maximum(1.0 - air, DUST_M3)
        feed = shares / wet[:, None]
        feed[:, AIR] = 0.0
        turns = volumes * wet / self.volume_m3
        decay = np.exp(-turns)
        since = np.exp(-np.cumsum(turns))
        gained = np.cumsum(feed * ((1.0 - decay) / since)[:, None], axis=0)
        first = self._amounts / self.volume_m3
        after = since[:, None] * (first + gained)
        before = np.concatenate((first.reshape(1, SHARES), after[:-1]))
        out = (feed + (before - feed) * (-np.expm1(-turns) / turns)[:, None]) * wet[:, None]
        out[:, AIR] = air
        self._amounts = after[-1] * self.volume_m3
        self._amounts[AIR] = 0.0
        return Stream(volumes, out)

    def _step(self, volume: float, share: Array) -> tuple[Array, list[tuple[float, Array]]]:
        """Take one parcel in: air goes out first, then the stirred liquid, exactly."""
        amounts = self._amounts + volume * share
        free_air = min(amounts[AIR], volume)
        gone: list[tuple[float, Array]] = []
        if free_air > DUST_M3:
            air = np.zeros(SHARES)
            air[AIR] = 1.0
            gone.append((free_air, air))
            amounts = amounts - free_air * air
        rest = volume - free_air
        if rest > DUST_M3:
            liquid_in = share.copy()
            liquid_in[AIR] = 0.0
            wet = 1.0 - share[AIR]
            feed = liquid_in / wet if wet > 0.0 else liquid_in
            held = amounts - volume * liquid_in
            held[AIR] = 0.0
            full = max(self.volume_m3 - amounts[AIR], DUST_M3)
            decay = np.exp(-rest / full)
            # Air that left made room for part of the feed: the liquid held grew to `full` first.
            grown = held + (volume * wet - rest) * feed
            start = grown / full
            mean_out = feed + (start - feed) * (full / rest) * (1.0 - decay)
            gone.append((rest, mean_out))
            left = amounts[AIR]
            amounts = full * (feed + (start - feed) * decay)
            amounts[AIR] = left if left > DUST_M3 else 0.0
        return amounts, gone

    def mean(self) -> Array:
        """Give the mean shares [1], shape (4,)."""
        return np.asarray(self._amounts / self.volume_m3)

    def sections(self) -> Array:
        """Give the shares [1] of the one content, shape (1, 4)."""
        return self.mean().reshape(1, SHARES)

    def copy(self) -> "VesselHeld":
        """Give an independent copy."""
        twin = VesselHeld.__new__(VesselHeld)
        twin.volume_m3, twin._amounts = self.volume_m3, self._amounts  # noqa: SLF001 - own class
        return twin
