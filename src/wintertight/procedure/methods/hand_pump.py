"""Antifreeze by a hand pump through the city inlet, one outlet at a time.

The coach's own pump need not run. What lies before its check valve is not reached: the pump itself,
its strainer and the line from the tank stay as draining leaves them.
"""

from wintertight.procedure.job import BY_HAND
from wintertight.procedure.methods.filling import work_out_filling
from wintertight.procedure.methods.worked import Asked, Worked
from wintertight.procedure.phases.emptying import empty_out
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.phases.setting import pump_by_hand


def work_out(asked: Asked) -> Worked:
    """Work out a job of the hand pump.

    Args:
        asked: the coach, the antifreeze and the cold.

    Returns:
        The job, mended where too few draws held.

    Raises:
        ChoiceError: the coach has no city inlet.
    """
    job = asked.job_at_inlet(BY_HAND, "the hand pump")
    early = (*make_safe(job), *empty_out(job), *pump_by_hand(job))
    return work_out_filling(asked, job, early)
