"""What a method is asked, and what it answers: the one interface between methods and the plan."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from wintertight.coach.card import Card
from wintertight.flow.actions import Action
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace
from wintertight.flow.state import State
from wintertight.fluids.product import Product
from wintertight.procedure.drawn import Drawn
from wintertight.procedure.held_in import HeldIn
from wintertight.procedure.run_on import OutletPlan
from wintertight.procedure.steps import Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench


@dataclass(frozen=True, eq=False, slots=True)
class Asked:
    """What a method works from.

    Attributes:
        card: the coach's card.
        product: the antifreeze at hand.
        low_degC: design low [degC].
        careful, best: the coach on the careful side and at best values.
        drawn: what each drawn coach takes.
        air: the compressor at hand.
    """

    card: Card
    product: Product
    low_degC: float
    careful: CoachNetwork
    best: CoachNetwork
    drawn: Drawn
    air: AirSupply

    def bench(self, state: State) -> Bench:
        """Give the bench for one state on the careful side."""
        return Bench(self.card, self.careful, state, self.low_degC, self.product)


@dataclass(frozen=True, eq=False, slots=True)
class Worked:
    """A job that was worked out to its end.

    Attributes:
        steps: what is done, in order.
        outlets: the outlets that are run until colour, and for how long.
        trace: the replay on the careful side.
        parts: the proof of each part, scatter counted.
        held_in: in how many drawn coaches each part is safe.
    """

    steps: tuple[Step, ...]
    outlets: tuple[OutletPlan, ...]
    trace: Trace
    parts: tuple[PartProof, ...]
    held_in: HeldIn


WorkOut = Callable[[Asked], Worked]
"""How a method is worked out. Raises ChoiceError where the coach lacks what the method needs."""


def actions_of(steps: Iterable[Step]) -> list[Action]:
    """Give everything steps do, in order."""
    return [action for step in steps for action in step.actions]
