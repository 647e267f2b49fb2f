"""What a method is asked, and what it answers: the one interface between methods and the plan."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace

from wintertight.coach.card import Card
from wintertight.cold.hold import HeldFor
from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST, CAREFUL
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import State, arriving_state
from wintertight.flow.tilt import Tilt
from wintertight.fluids.product import Product
from wintertight.procedure.drawn import Drawn, draw
from wintertight.procedure.held_in import Before, HeldIn
from wintertight.procedure.job import Job, city_supply, own_pump
from wintertight.procedure.run_on import OutletPlan
from wintertight.procedure.steps import Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench

START_DEGC = 5.0
"""Temperature of a parked coach when the cold comes, unless told otherwise [degC]: an autumn
evening; common practice."""


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
        earlier: what was done to the coach before the job; it arrives full of water where nothing.
        before: what an earlier job left in it, in every draw.
        start_degC: temperature of the coach when the cold comes [degC].
    """

    card: Card
    product: Product
    low_degC: float
    careful: CoachNetwork
    best: CoachNetwork
    drawn: Drawn
    air: AirSupply
    earlier: tuple[Action, ...] = ()
    before: Before | None = None
    start_degC: float = START_DEGC

    @classmethod
    def of(
        cls,
        card: Card,
        product: Product,
        low_degC: float,
        air: AirSupply | None = None,
        tilts: tuple[Tilt, ...] = (),
    ) -> "Asked":
        """Build both sides of a coach, and draw what its card leaves open.

        Args:
            card: the coach's card.
            product: the antifreeze at hand.
            low_degC: design low [degC].
            air: the compressor at hand; a small one where None.
            tilts: slopes of the floor on which it may stand; level where there are none.

        Returns:
            What a method works from.
        """
        return cls(
            card=card,
            product=product,
            low_degC=low_degC,
            careful=replace(build_network(card, CAREFUL), tilts=tilts),
            best=replace(build_network(card, BEST), tilts=tilts),
            drawn=draw(card),
            air=air or AirSupply(),
        )

    def arrives(self, network: CoachNetwork) -> State:
        """Give the coach before the job, on one side of what is uncertain."""
        if self.before is not None and network is self.careful:
            return self.before.now
        return replay(network, arriving_state(network), self.earlier).end

    def job_at_inlet(self, setting: str, what: str) -> Job:
        """Give the job of what goes on the city inlet.

        Args:
            setting: what the inlet's hose is set to.
            what: what goes on it, for the message.

        Returns:
            The job.

        Raises:
            ChoiceError: the coach has no city inlet.
        """
        enters = city_supply(self.card, self.careful, setting)
        if enters is None:
            message = f"this coach has no city inlet; expected one for {what} to go on"
            raise ChoiceError(message)
        pump = own_pump(self.card, self.careful)
        return Job(self.card, self.careful, self.product, pump, enters)

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
        hold: when the claim of a job that is only a hold expires.
    """

    steps: tuple[Step, ...]
    outlets: tuple[OutletPlan, ...]
    trace: Trace
    parts: tuple[PartProof, ...]
    held_in: HeldIn
    hold: HeldFor | None = None


WorkOut = Callable[[Asked], Worked]
"""How a method is worked out. Raises ChoiceError where the coach lacks what the method needs."""


def actions_of(steps: Iterable[Step]) -> list[Action]:
    """Give everything steps do, in order."""
    return [action for step in steps for action in step.actions]
