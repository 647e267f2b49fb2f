"""Blow-out, then antifreeze by the coach's own pump: less to thin it, and no pump left wet."""

from wintertight.procedure.job import BY_AIR
from wintertight.procedure.methods.air import steps_of_blowing
from wintertight.procedure.methods.filling import work_out_filling
from wintertight.procedure.methods.pump_steps import pump_job
from wintertight.procedure.methods.worked import Asked, Worked
from wintertight.procedure.phases.setting import draw_after_blowing


def work_out(asked: Asked) -> Worked:
    """Work out a blow-out with antifreeze after it.

    Args:
        asked: the coach, the compressor, the antifreeze and the cold.

    Returns:
        The job, mended where too few draws held.

    Raises:
        ChoiceError: the coach has no city inlet, or no pump that could draw antifreeze.
    """
    job = pump_job(asked.card, asked.careful, asked.product)
    early = (
        *steps_of_blowing(asked, asked.job_at_inlet(BY_AIR, "the air line")),
        *draw_after_blowing(job),
    )
    return work_out_filling(asked, job, early)
