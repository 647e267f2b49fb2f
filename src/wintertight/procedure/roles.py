"""Finding a coach's fittings by what they are for."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from wintertight.coach.card import Card, Fitting
from wintertight.coach.kinds import KINDS
from wintertight.flow.coach_network import CoachNetwork


@dataclass(frozen=True, slots=True)
class Roles:
    """The fittings of a coach by kind and role; only those that are there."""

    card: Card
    network: CoachNetwork

    def of_kind(self, *kinds: str) -> tuple[Fitting, ...]:
        """Give the present fittings of some kinds, in the order of the card."""
        return tuple(f for f in self.card.fittings if f.seen == "present" and f.kind in kinds)

    def valves(self, role: str) -> tuple[Fitting, ...]:
        """Give the present two-way valves of one role."""
        return tuple(f for f in self.of_kind("ball valve") if f.role == role)

    def positions(self, use: str) -> tuple[tuple[Fitting, str], ...]:
        """Give the many-way valves that have a position for a use, and its name."""
        return tuple(
            (fitting, position.name)
            for fitting in self.of_kind("three-way valve", "service panel")
            for position in fitting.positions
            if position.use == use
        )

    def controls(self, thing: str, only: Callable[[Fitting], bool] | None = None) -> Iterator[str]:
        """Give the controls of one thing, such as every tap, in the order of the card."""
        for control in self.network.controls.values():
            fitting = self.card.fitting[control.part]
            if control.thing == thing and (only is None or only(fitting)):
                yield control.id

    @property
    def taps(self) -> tuple[str, ...]:
        """Taps that can be left open: all but toilets, whose pedal springs back."""
        return tuple(self.controls("tap", lambda f: KINDS[f.kind].relief != "hold toilet pedal"))

    @property
    def heads(self) -> tuple[str, ...]:
        """Heads of showers and sprayers that can be shut."""
        return tuple(self.controls("head"))

    @property
    def low_points(self) -> tuple[str, ...]:
        """Low points, by their control."""
        return tuple(self.controls("valve"))
