"""Blow-out: everything drained first, then air through one outlet at a time.

Air comes in at the city inlet. It never clears the pump, check valves, small tubes and traps: they
stay gaps until antifreeze or removal covers them, and the traps get theirs by the cup.
"""

from wintertight.flow.air.blowing import Blow
from wintertight.flow.air.open_way import with_inlet_on
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.procedure.job import BY_AIR, Job
from wintertight.procedure.methods.drain_only import work_out_emptying
from wintertight.procedure.methods.worked import Asked, Worked, actions_of
from wintertight.procedure.phases.blowing import air_off, air_on, blow_outlet
from wintertight.procedure.phases.emptying import empty_out
from wintertight.procedure.phases.make_safe import make_safe
from wintertight.procedure.phases.setting import HEATERS_WITH_PLUGS, close_up
from wintertight.procedure.steps import Step
from wintertight.procedure.walking import walking_order


def work_out(asked: Asked) -> Worked:
    """Work out a blow-out.

    Args:
        asked: the coach, the compressor, the antifreeze for its traps, and the cold.

    Returns:
        The job.

    Raises:
        ChoiceError: the coach has no city inlet.
    """
    job = asked.job_at_inlet(BY_AIR, "the air line")
    return work_out_emptying(asked, job, steps_of_blowing(asked, job))


def steps_of_blowing(asked: Asked, job: Job) -> tuple[Step, ...]:
    """Give the steps up to the last outlet blown out.

    Args:
        asked: the coach and the compressor.
        job: where the air comes in.

    Returns:
        The steps.
    """
    network, enters = job.network, job.enters_by
    blow = Blow(enters.source, asked.air)
    early = (
        *make_safe(job),
        *empty_out(job),
        *close_up(job, heaters=HEATERS_WITH_PLUGS, filled=False),
        air_on(job, blow),
    )
    state = replay(network, arriving_state(network), actions_of(early)).end
    state = with_inlet_on(network, state, enters.source)
    order = walking_order(network, state, network.sources[enters.source].node)
    own = network.controls[enters.control].part
    blows = (blow_outlet(job, o, blow) for o in order if network.controls[o].part != own)
    return (*early, *blows, air_off(job))
