"""A stream: parcels of fluid in the order in which they flow.

A parcel is a volume and four shares of it: glycol, ethanol, product known only by its rating, air.
Water is the rest. Streams are exact: cutting, joining and sharing keep every volume.
"""

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.parcels import AIR, DUST_M3, SHARES, mixed_pair
from wintertight.fluids.contents import Contents

Array = npt.NDArray[np.float64]

GLYCOL, ETHANOL, RATED = range(3)

__all__ = ["AIR", "DUST_M3", "ETHANOL", "GLYCOL", "RATED", "SHARES", "Stream", "mixed"]


def shares_of(contents: Contents) -> Array:
    """Give contents as an array.

    Args:
        contents: any contents.

    Returns:
        Shares of glycol, ethanol, rated product, air [1], shape (4,).
    """
    return np.array([contents.glycol, contents.ethanol, contents.rated, contents.air])


def contents_of(shares: Array) -> Contents:
    """Give an array of four shares [1] as contents, rounding dust taken off."""
    g, e, r, a = (min(max(float(x), 0.0), 1.0) for x in shares)
    excess = max(g + e + r + a, 1.0)
    return Contents(glycol=g / excess, ethanol=e / excess, rated=r / excess, air=a / excess)


@dataclass(frozen=True, slots=True, eq=False)
class Stream:
    """Parcels in order of arrival.

    Attributes:
        volumes: volume of each parcel [m3], shape (p,).
        shares: shares of each parcel [1], shape (p, 4).
    """

    volumes: Array
    shares: Array

    @classmethod
    def of(cls, volume_m3: float, shares: Array) -> "Stream":
        """Make a stream of one parcel."""
        return cls(np.array([volume_m3]), shares.reshape(1, SHARES))

    @property
    def volume_m3(self) -> float:
        """Whole volume [m3]."""
        return float(self.volumes.sum())

    @property
    def component_volumes(self) -> Array:
        """Volume of each of the four components [m3], shape (4,)."""
        return np.asarray(self.volumes @ self.shares)

    @property
    def strengths(self) -> Array:
        """Share of antifreeze in the liquid of each parcel [1], shape (p,)."""
        wet = np.maximum(1.0 - self.shares[:, AIR], 1e-9)
        return np.asarray(self.shares[:, :AIR].sum(axis=1) / wet)

    def scaled(self, factor: float) -> "Stream":
        """Give the same stream with every volume times ``factor`` [1]: one branch of a split."""
        return Stream(self.volumes * factor, self.shares)


def mixed(streams: Iterable[Stream]) -> Stream:
    """Mix streams that arrive at one place during the same time, each at a steady rate.

    Args:
        streams: the streams that arrive; each lasts the whole time.

    Returns:
        One stream cut at every cut of any of them; volumes and components add up exactly.
    """
    some = [s for s in streams if s.volume_m3 > DUST_M3]
    if not some:
        return Stream(np.zeros(0), np.zeros((0, SHARES)))
    one = some[0]
    for other in some[1:]:
        one = Stream(*mixed_pair(one.volumes, one.shares, other.volumes, other.shares))
    return one
