"""Antifreeze by the coach's own pump, one outlet at a time."""

from wintertight.procedure.methods.filling import work_out_filling
from wintertight.procedure.methods.pump_steps import pump_job, steps_before_filling
from wintertight.procedure.methods.worked import Asked, Worked


def work_out(asked: Asked) -> Worked:
    """Work out a job of the coach's own pump.

    Args:
        asked: the coach, the antifreeze and the cold.

    Returns:
        The job, mended where too few draws held.

    Raises:
        ChoiceError: the coach has no pump that could draw antifreeze.
    """
    job = pump_job(asked.card, asked.careful, asked.product)
    return work_out_filling(asked, job, steps_before_filling(job))
