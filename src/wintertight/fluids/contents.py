"""What a hollow holds: shares of its volume."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from wintertight.errors import OutOfRange

DUST = 1e-9
"""Rounding dust: a share this far outside 0 to 1 is taken as 0 or 1."""


@dataclass(frozen=True, slots=True)
class Contents:
    """Volume shares of what a hollow holds; what is not named is water.

    The volumes are those the parts had before they were mixed.

    Attributes:
        glycol: propylene glycol [1].
        ethanol: ethanol [1].
        rated: a product of unknown composition, known only by its printed rating [1].
        air: air [1].
    """

    glycol: float = 0.0
    ethanol: float = 0.0
    rated: float = 0.0
    air: float = 0.0

    def __post_init__(self) -> None:
        """Refuse what cannot be, and take rounding dust off."""
        total = 0.0
        for name in ("glycol", "ethanol", "rated", "air"):
            share = float(getattr(self, name))
            # Written so that nan is refused as well.
            if not -DUST <= share <= 1.0 + DUST:
                message = f"the share of {name} must lie between 0 and 1, not {share}"
                raise OutOfRange(message)
            clipped = min(max(share, 0.0), 1.0)
            object.__setattr__(self, name, clipped)
            total += clipped
        if total > 1.0 + DUST:
            message = f"the shares must not add up to more than 1, and give {total}"
            raise OutOfRange(message)

    @property
    def water(self) -> float:
        """Give the share of water [1]: what the others leave."""
        return max(0.0, 1.0 - self.glycol - self.ethanol - self.rated - self.air)

    @classmethod
    def all_water(cls) -> "Contents":
        """Give contents that are water and nothing else."""
        return cls()

    @classmethod
    def all_air(cls) -> "Contents":
        """Give contents that are air and nothing else."""
        return cls(air=1.0)

    def as_mapping(self) -> Mapping[str, float]:
        """Give all five shares [1] by name; they add up to 1."""
        return {
            "water": self.water,
            "glycol": self.glycol,
            "ethanol": self.ethanol,
            "rated": self.rated,
            "air": self.air,
        }

    def liquid(self) -> "Contents | None":
        """Give the liquid alone, its shares adding up to 1; None where there is none."""
        part = 1.0 - self.air
        if part <= DUST:
            return None
        if self.air == 0.0:
            return self
        shares = [min(1.0, s / part) for s in (self.glycol, self.ethanol, self.rated)]
        excess = max(1.0, sum(shares))
        return Contents(shares[0] / excess, shares[1] / excess, shares[2] / excess)


def mix(parts: Iterable[tuple[float, Contents]]) -> Contents:
    """Mix volumes of contents; volumes are taken to add up.

    Args:
        parts: pairs of a volume [m3], not negative, and what it holds.

    Returns:
        The mixture.

    Raises:
        OutOfRange: no volume at all, or a negative one.

    Example:
        >>> mix([(0.001, Contents(glycol=0.5)), (0.003, Contents())]).glycol
        0.125
    """
    pairs = list(parts)
    total = sum(volume for volume, _ in pairs)
    if not total > 0.0 or min(volume for volume, _ in pairs) < 0.0:
        message = "a mixture needs volumes that are not negative, and one that is not nothing"
        raise OutOfRange(message)
    return Contents(
        glycol=sum(v * c.glycol for v, c in pairs) / total,
        ethanol=sum(v * c.ethanol for v, c in pairs) / total,
        rated=sum(v * c.rated for v, c in pairs) / total,
        air=sum(v * c.air for v, c in pairs) / total,
    )
