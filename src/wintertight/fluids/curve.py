"""A smooth curve through printed points that never wiggles.

Freezing points fall ever faster with the share of antifreeze. Straight lines between printed
points would lie below such a curve and promise up to 0.12 K too much; a cubic spline may wiggle.
The monotone cubic of Fritsch and Carlson does neither: it passes through every printed point,
falls where they fall, and has one inverse.
"""

import math
from bisect import bisect_right
from collections.abc import Sequence
from itertools import pairwise

_MOST_STEPS = 60
_CLOSE = 1e-15


class MonotoneCurve:
    """The curve y(x) through points of rising x and strictly rising or strictly falling y."""

    def __init__(self, x: Sequence[float], y: Sequence[float]) -> None:
        """Take the points and fix the slope at each.

        Args:
            x: rising.
            y: strictly rising, or strictly falling.

        Raises:
            ValueError: the points do not rise and fall as said.

        Sources: fritsch-carlson (slopes: weighted harmonic mean of the neighbouring chords)
        """
        widths = [b - a for a, b in pairwise(x)]
        chords = [(d - c) / h for (c, d), h in zip(pairwise(y), widths, strict=True)]
        if min(widths) <= 0.0 or not (max(chords) < 0.0 or min(chords) > 0.0):
            message = "points must rise in x and strictly rise or fall in y"
            raise ValueError(message)
        self.x = tuple(x)
        self.y = tuple(y)
        self._falling = chords[0] < 0.0
        inner = [
            _inner_slope(widths[k], widths[k + 1], chords[k], chords[k + 1])
            for k in range(len(chords) - 1)
        ]
        first = _end_slope(widths[0], widths[1], chords[0], chords[1])
        last = _end_slope(widths[-1], widths[-2], chords[-1], chords[-2])
        self._slopes = (first, *inner, last)

    def at(self, x: float) -> float:
        """Give y, in the unit of the points, at an x between the first and the last point."""
        k = min(max(bisect_right(self.x, x) - 1, 0), len(self.x) - 2)
        return self._at_and_slope(k, x)[0]

    def where(self, y: float) -> float:
        """Give x, in the unit of the points, at a y between the first and the last point.

        Newton's step inside the one piece that holds y, and halving where that would leave it.
        """
        k = self._piece_of(y)
        low, high = self.x[k], self.x[k + 1]
        if y == self.y[k + 1]:
            return high
        x = low + (high - low) * (y - self.y[k]) / (self.y[k + 1] - self.y[k])
        for _ in range(_MOST_STEPS):
            value, slope = self._at_and_slope(k, x)
            if (value > y) == self._falling:
                low = x
            else:
                high = x
            step = (value - y) / slope if slope != 0.0 else math.inf
            following = x - step
            if not low <= following <= high:
                following = 0.5 * (low + high)
            if abs(following - x) <= _CLOSE * abs(x):
                return following
            x = following
        return x

    def _piece_of(self, y: float) -> int:
        key = (lambda v: -v) if self._falling else None
        k = bisect_right(self.y, -y if self._falling else y, key=key) - 1
        return min(max(k, 0), len(self.x) - 2)

    def _at_and_slope(self, k: int, x: float) -> tuple[float, float]:
        h = self.x[k + 1] - self.x[k]
        t = (x - self.x[k]) / h
        y0, y1 = self.y[k], self.y[k + 1]
        m0, m1 = h * self._slopes[k], h * self._slopes[k + 1]
        c2 = 3.0 * (y1 - y0) - 2.0 * m0 - m1
        c3 = m0 + m1 - 2.0 * (y1 - y0)
        value = y0 + t * (m0 + t * (c2 + t * c3))
        return value, (m0 + t * (2.0 * c2 + 3.0 * t * c3)) / h


def _inner_slope(h0: float, h1: float, d0: float, d1: float) -> float:
    w0, w1 = 2.0 * h1 + h0, h1 + 2.0 * h0
    return (w0 + w1) / (w0 / d0 + w1 / d1)


def _end_slope(h0: float, h1: float, d0: float, d1: float) -> float:
    # Parabola through three points, held between none and three times the chord.
    slope = ((2.0 * h0 + h1) * d0 - h0 * d1) / (h0 + h1)
    if slope * d0 <= 0.0:
        return 0.0
    return 3.0 * d0 if abs(slope) > 3.0 * abs(d0) else slope
