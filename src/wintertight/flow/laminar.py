r"""What a laminar run lets out and keeps, as functions of volumes passed.

A run is a straight stretch of tube in which the fluid keeps its parabolic profile: the streamline
through the area share ``s`` (0 at the axis, 1 at the wall) moves at ``2 (1 - s)`` times the mean.
Molecular diffusion across a half-inch tube takes hours, so within a winterizing it is left out;
fittings re-mix the profile, hence a line is several runs in series, mixed between them.

With ``theta`` the volume fed divided by the volume of the run, after a step at its inlet:

    leaving the outlet   F = 1 - 1/(4 theta^2)      flow-weighted: what the tap shows
    kept on the mean     M = 1 - 1/(4 theta)        volume-weighted: what the run holds
    at the outlet end    A = 1 - 1/(2 theta)        area-weighted: the worst section

each 0 (M: theta) before theta = 1/2.

Sources: levenspiel, 3rd ed., pp. 343-344 for F; M and A follow from the same profile.
"""

from dataclasses import dataclass, field

import numpy as np
import numpy.typing as npt

from wintertight.errors import OutOfRange

Array = npt.NDArray[np.float64]

FIRST_ARRIVAL = 0.5
"""Share of a run's volume after which the first of the feed leaves [1]."""


def leaving_share_laminar(theta: npt.ArrayLike) -> Array:
    """Give the share of feed in what leaves a run, flow-weighted.

    ``F = 1 - 1/(4 theta^2)`` from theta = 1/2 on, else 0.

    Args:
        theta: volume fed over volume of the run [1], any shape, from 0 on.

    Returns:
        Share of feed [1], same shape.

    Example:
        >>> [round(float(x), 3) for x in leaving_share_laminar([0.5, 1.58, 2.24, 5.0])]
        [0.0, 0.9, 0.95, 0.99]

    Sources:
        levenspiel, 3rd ed., pp. 343-344
    """
    t = np.maximum(np.asarray(theta, dtype=float), FIRST_ARRIVAL)
    return np.asarray(1.0 - 1.0 / (4.0 * t * t))


def kept_share_laminar(theta: npt.ArrayLike) -> Array:
    """Give the share of feed in what a run holds, volume-weighted.

    ``M = theta`` up to 1/2, then ``1 - 1/(4 theta)``.

    Args:
        theta: volume fed over volume of the run [1], any shape, from 0 on.

    Returns:
        Share of feed [1], same shape.

    Example:
        >>> round(float(kept_share_laminar(2.24)), 2)
        0.89

    Sources:
        levenspiel, 3rd ed., pp. 343-344 (the profile; the mean is calculated from it)
    """
    t = np.asarray(theta, dtype=float)
    late = np.maximum(t, FIRST_ARRIVAL)
    return np.asarray(np.where(t < FIRST_ARRIVAL, t, 1.0 - 1.0 / (4.0 * late)))


def outlet_section_share_laminar(theta: npt.ArrayLike) -> Array:
    """Give the share of feed over the section at the outlet end of a run, area-weighted.

    ``A = 1 - 1/(2 theta)`` from theta = 1/2 on, else 0.

    Args:
        theta: volume fed over volume of the run [1], any shape, from 0 on.

    Returns:
        Share of feed [1], same shape.

    Example:
        >>> round(float(outlet_section_share_laminar(2.24)), 2)
        0.78

    Sources:
        levenspiel, 3rd ed., pp. 343-344 (the profile; the section is calculated from it)
    """
    t = np.maximum(np.asarray(theta, dtype=float), FIRST_ARRIVAL)
    return np.asarray(1.0 - 1.0 / (2.0 * t))


def _left_so_far(theta: Array) -> Array:
    """Integrate F from 0: run volumes of feed that have left."""
    t = np.maximum(theta, FIRST_ARRIVAL)
    return np.asarray(t - 1.0 + 1.0 / (4.0 * t))


@dataclass(slots=True, eq=False)
class SeriesKernel:
    """Responses of a line of ``runs`` equal laminar runs to one parcel of feed.

    The line is fed in parcels of equal volume. Entry ``m`` of a response belongs to the parcel
    that entered ``m`` parcels ago. The arrays grow when asked for more.

    Attributes:
        runs: number of runs in series [1], from 1 on.
        parcel: volume of a parcel over volume of the line [1], at most half a run, so that nothing
            leaves in the parcel in which it came.
    """

    runs: int
    parcel: float
    _length: int = 0
    _leaving: Array = field(default_factory=lambda: np.zeros(0))
    _sections: Array = field(default_factory=lambda: np.zeros((0, 0)))
    _kept: Array = field(default_factory=lambda: np.zeros(0))
    _padded: Array = field(default_factory=lambda: np.zeros(0))

    def __post_init__(self) -> None:
        """Refuse what the discretisation cannot carry."""
        if self.runs < 1 or not 0.0 < self.parcel * self.runs <= FIRST_ARRIVAL:
            message = "a line needs at least one run, and parcels of at most half a run"
            raise OutOfRange(message)

    def leaving(self, length: int) -> Array:
        """Give the share [1] of a parcel that leaves the line m parcels later, m < length."""
        self._grow(length)
        return self._leaving[:length]

    def padded(self, length: int) -> Array:
        """Give as many zeros as entries, then ``leaving`` [1]; more than ``length`` each."""
        self._grow(length)
        if not len(self._padded):
            self._padded = np.concatenate((np.zeros(self._length), self._leaving))
        return self._padded

    def kept(self, length: int) -> Array:
        """Give the share [1] of a parcel still in the line at the end of parcel m, m < length."""
        self._grow(length)
        return self._kept[:length]

    def sections(self, length: int) -> Array:
        """Give the share [1] of a parcel at the outlet end of each run, shape (runs, length)."""
        self._grow(length)
        return self._sections[:, :length]

    def _grow(self, length: int) -> None:
        if length <= self._length:
            return
        n = max(256, 1 << (length - 1).bit_length())
        a = self.parcel * self.runs
        edges = a * np.arange(n + 1, dtype=float)
        left = _left_so_far(edges)
        one_run = np.diff(left, prepend=0.0)
        one_run = (one_run[1:] - one_run[:-1]) / a
        section = np.diff(outlet_section_share_laminar(edges))
        spectrum = np.fft.rfft(one_run, 2 * n)
        section_spectrum = np.fft.rfft(section, 2 * n)
        sections = np.empty((self.runs, n))
        leaving = np.zeros(n)
        leaving[0] = 1.0
        for i in range(self.runs):
            # Cut to n after each run: what lies beyond would come back at the front.
            arriving = np.fft.rfft(leaving, 2 * n)
            sections[i] = np.fft.irfft(arriving * section_spectrum, 2 * n)[:n]
            leaving = np.fft.irfft(arriving * spectrum, 2 * n)[:n]
        leaving[: self.runs * int(FIRST_ARRIVAL / a)] = 0.0  # rounding of the transform
        self._leaving = leaving
        self._sections = sections
        self._kept = 1.0 - np.cumsum(leaving)
        self._padded = np.zeros(0)
        self._length = n
