"""Antifreeze by a hand pump through the city inlet, one outlet at a time.

The coach's own pump need not run. What lies before its check valve is not reached: the pump itself,
its strainer and the line from the tank stay as draining leaves them.
"""

from wintertight.coach.card import Card
from wintertight.errors import ChoiceError
from wintertight.flow.coach_network import CoachNetwork
from wintertight.fluids.product import Product
from wintertight.procedure.job import BY_HAND, Job, city_supply, own_pump
from wintertight.procedure.methods.filling import work_out_filling
from wintertight.procedure.methods.worked import Asked, Worked
from wintertight.procedure.phases.emptying import empty_out
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.phases.setting import pump_by_hand


def hand_pump_job(card: Card, network: CoachNetwork, product: Product) -> Job:
    """Find where a hand pump goes on.

    Args:
        card: the coach's card.
        network: the coach.
        product: what it is filled with.

    Returns:
        The job.

    Raises:
        ChoiceError: the coach has no city inlet.
    """
    enters = city_supply(card, network, BY_HAND)
    if enters is None:
        message = "this coach has no city inlet; expected one for the hand pump to go on"
        raise ChoiceError(message)
    return Job(card, network, product, own_pump(card, network), enters)


def work_out(asked: Asked) -> Worked:
    """Work out a job of the hand pump.

    Args:
        asked: the coach, the antifreeze and the cold.

    Returns:
        The job, mended where too few draws held.

    Raises:
        ChoiceError: the coach has no city inlet.
    """
    job = hand_pump_job(asked.card, asked.careful, asked.product)
    early = (*make_safe(job), *empty_out(job), *pump_by_hand(job))
    return work_out_filling(asked, job, early)
