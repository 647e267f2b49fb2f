"""How the floor of a coach slopes where it stands."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Tilt:
    """How the floor of a coach slopes where it stands.

    Attributes:
        along: rise of the floor towards the rear, per run [1]; a nose that is high is negative.
        across: rise of the floor away from the road side, per run [1].
    """

    along: float = 0.0
    across: float = 0.0

    def rise_m(self, place_m: tuple[float, float]) -> float:
        """Give how much higher than the front on the road side a place is [m]."""
        return self.along * place_m[0] + self.across * place_m[1]
