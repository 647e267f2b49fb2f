"""Antifreeze by the coach's own pump: the steps, without their numbers.

Drawn in through the antifreeze inlet, a service panel, or a hose put on the pump's suction. The
heater is drained, and then bypassed where it can be; where it cannot, it is closed and filled. What
the coach does not have makes no step.
"""

from wintertight.coach.card import Card
from wintertight.errors import ChoiceError
from wintertight.flow.coach_network import CoachNetwork
from wintertight.fluids.product import Product
from wintertight.procedure.job import IN_THE_JUG, Job, Supply
from wintertight.procedure.phases.draining import drain
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.phases.setting import set_handles
from wintertight.procedure.roles import Roles
from wintertight.procedure.steps import Step

DRAWN_THROUGH = ("antifreeze hose", "demand pump", "city inlet")
"""What the antifreeze is drawn through, best first."""


def pump_job(card: Card, network: CoachNetwork, product: Product) -> Job:
    """Find the pump of a coach, and what the antifreeze is drawn through.

    Args:
        card: the coach's card.
        network: the coach.
        product: what it is filled with.

    Returns:
        The job.

    Raises:
        ChoiceError: the coach has no pump that could draw antifreeze.
    """
    roles = Roles(card, network)
    pumps = roles.of_kind("demand pump")
    by_panel = any(f.kind == "service panel" for f, _ in roles.positions("antifreeze"))
    best_first = ("antifreeze hose", "city inlet", "demand pump") if by_panel else DRAWN_THROUGH
    hoses = sorted(
        (
            c.id
            for c in network.controls.values()
            if c.thing == "hose" and c.id in network.sources and IN_THE_JUG in c.settings
        ),
        key=lambda name: best_first.index(card.fitting[network.controls[name].part].kind),
    )
    if not pumps or not hoses:
        message = "this coach has no pump that could draw antifreeze; expected a demand pump"
        raise ChoiceError(message)
    return Job(card, network, product, pumps[0].id, Supply(hoses[0], IN_THE_JUG, hoses[0]))


def steps_before_filling(job: Job) -> tuple[Step, ...]:
    """Give the steps up to the running pump."""
    return (*make_safe(job), *drain(job), *set_handles(job))
