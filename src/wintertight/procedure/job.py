"""One job: a coach, what it is filled with, and what that is drawn through."""

from dataclasses import dataclass

from wintertight.coach.card import Card
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork
from wintertight.fluids.product import Product
from wintertight.procedure.roles import Roles
from wintertight.procedure.steps import Phase, Step


@dataclass(frozen=True, slots=True)
class Job:
    """What every step of a job may look at.

    Attributes:
        card, network: the coach.
        product: what it is filled with.
        pump, hose: ids of the pump, and of the control of the hose that goes into the jug.
    """

    card: Card
    network: CoachNetwork
    product: Product
    pump: str
    hose: str

    @property
    def roles(self) -> Roles:
        """The coach's fittings by role."""
        return Roles(self.card, self.network)

    @property
    def has_bypass(self) -> bool:
        """Can the heater be left out of the flow?"""
        return bool(self.roles.valves("heater bypass") or self.roles.positions("heater bypass"))


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
