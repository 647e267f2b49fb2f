"""One job: a coach, what it is filled with, and what that is drawn through."""

from dataclasses import dataclass

from wintertight.coach.card import Card
from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork
from wintertight.fluids.product import Product
from wintertight.procedure.roles import Roles
from wintertight.procedure.steps import Phase, Step

IN_THE_JUG = "in the jug"
BY_HAND = "hand pump"
BY_AIR = "air line"
"""What the hose of a supply can be set to."""


@dataclass(frozen=True, slots=True)
class Supply:
    """Where antifreeze or air comes into a coach.

    Attributes:
        control: control of the hose that is put there.
        setting: what it is set to.
        source: id of the source that it then is.
    """

    control: str
    setting: str
    source: str


@dataclass(frozen=True, slots=True)
class Job:
    """What every step of a job may look at.

    Attributes:
        card, network: the coach.
        product: what it is filled with.
        pump: id of the coach's own pump; None where it has none.
        supply: where antifreeze comes in; None where none is pumped.
    """

    card: Card
    network: CoachNetwork
    product: Product
    pump: str | None = None
    supply: Supply | None = None

    @property
    def roles(self) -> Roles:
        """The coach's fittings by role."""
        return Roles(self.card, self.network)

    @property
    def enters_by(self) -> Supply:
        """Where antifreeze comes in.

        Raises:
            ChoiceError: none does in this job.
        """
        if self.supply is None:
            message = "no antifreeze is pumped in this job"
            raise ChoiceError(message)
        return self.supply

    @property
    def has_bypass(self) -> bool:
        """Can the heater be left out of the flow?"""
        return bool(self.roles.valves("heater bypass") or self.roles.positions("heater bypass"))


def own_pump(card: Card, network: CoachNetwork) -> str | None:
    """Give the id of a coach's own pump; None where it has none."""
    pumps = Roles(card, network).of_kind("demand pump")
    return pumps[0].id if pumps else None


def city_supply(card: Card, network: CoachNetwork, setting: str) -> Supply | None:
    """Find the city inlet as the place where a hand pump, or air, comes in.

    Args:
        card: the coach's card.
        network: the coach.
        setting: what its hose is set to.

    Returns:
        The inlet; None where the coach has none.
    """
    for hose in Roles(card, network).controls("hose"):
        if setting not in network.controls[hose].settings:
            continue
        inlet = network.controls[hose].part
        # Air is put on in place of the main.
        feeds = "on" if setting == BY_AIR else setting
        for source in network.sources.values():
            link = network.links[source.link]
            if link.part == inlet and link.gate and feeds in link.gate.passes:
                return Supply(hose, setting, source.id)
    return None


def step(
    key: str,
    phase: Phase,
    *actions: Action,
    part: str = "",
    setting: str = "",
    cautions: tuple[str, ...] = (),
    **params: float | str,
) -> Step:
    """Make a step whose id is its key and its part."""
    name = key.replace(" ", "-") + (f":{part}" if part else "")
    return Step(name, key, phase, actions, part, setting, params, cautions)
