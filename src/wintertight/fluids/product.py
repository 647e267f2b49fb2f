"""An antifreeze product, as far as its label tells.

Products are sold by a rating, not by a concentration. What the label does not say is unknown, and
unknown is never taken as good.
"""

from dataclasses import dataclass
from decimal import Decimal
from functools import cache

import numpy as np

from wintertight.errors import OutOfRange
from wintertight.fluids.contents import Contents
from wintertight.fluids.ethanol import DENSITY_ETHANOL_20, volume_share_ethanol
from wintertight.fluids.melinder import HIGHEST_MASS_SHARE, density_and_viscosity


@dataclass(frozen=True, slots=True)
class Product:
    """A product of the shop's own list.

    Attributes:
        name: what the shop calls it.
        glycol: share of propylene glycol by volume [1]; None where the label does not say.
        ethanol: ethanol by volume of the finished product, as a label prints it [1]; None where
            the label does not say.
        burst_rating_degC: temperature to which the label promises no burst [degC].
        freeze_rating_degC: temperature to which the label promises no freezing [degC].
        container_m3: content of one container [m3].
        price: price of one container, in the shop's currency.
        stock: containers on the shelf [1]; None where nobody has counted them.
    """

    name: str
    glycol: float | None
    ethanol: float | None
    burst_rating_degC: float | None
    freeze_rating_degC: float | None
    container_m3: float
    price: Decimal | None = None
    stock: int | None = None

    def __post_init__(self) -> None:
        """Refuse shares that cannot be, a container without content, and less than no stock."""
        Contents(glycol=self.glycol or 0.0, ethanol=self.ethanol or 0.0)
        if not self.container_m3 > 0.0:
            message = f"the container of {self.name} must hold something"
            raise OutOfRange(message)
        if self.stock is not None and self.stock < 0:
            message = f"the stock of {self.name} cannot be less than none"
            raise OutOfRange(message)

    def contents(self) -> Contents:
        """Give what a hollow holds when it is full of the undiluted product.

        Returns:
            The shares; if neither glycol nor ethanol is known, all of it is ``rated``. A label's
            ethanol counts the volume after mixing, which is smaller than that of the parts, so
            the share of the parts given here is a little less than the label's.

        Example:
            >>> Product("pink", None, None, -45.6, None, 0.003785).contents().rated
            1.0
        """
        if self.glycol is None and self.ethanol is None:
            return Contents(rated=1.0)
        return Contents(
            glycol=self.glycol or 0.0, ethanol=ethanol_before_mixing(self.ethanol or 0.0)
        )


@cache
def ethanol_before_mixing(label_share: float) -> float:
    """Turn a label's ethanol by volume of the mixture into the share of the parts' volumes.

    The mass of ethanol in a volume of the mixture is label_share x 789 kg/m3 and w rho(w); solved
    for w by halving, at 20 degC.

    Args:
        label_share: ethanol by volume of the mixture [1], 0 to 1.

    Returns:
        Ethanol's share of the volumes before mixing [1].

    Example:
        >>> round(ethanol_before_mixing(0.40), 3)
        0.387

    Sources: melinder (density of the mixture); crc (density of ethanol)
    """
    if label_share == 0.0:
        return 0.0
    wanted = label_share * DENSITY_ETHANOL_20
    low, high = 0.0, HIGHEST_MASS_SHARE
    if wanted >= high * _density(high):
        return (
            label_share * volume_share_ethanol(high) * DENSITY_ETHANOL_20 / (high * _density(high))
        )
    for _ in range(50):
        middle = 0.5 * (low + high)
        low, high = (middle, high) if middle * _density(middle) < wanted else (low, middle)
    return volume_share_ethanol(0.5 * (low + high))


def _density(mass_share: float) -> float:
    density, _ = density_and_viscosity("ethanol", np.array([mass_share]), 20.0)
    return float(density[0])
