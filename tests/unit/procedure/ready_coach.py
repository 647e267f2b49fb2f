"""Coaches ready to be filled, each made once, to go round their outlets in any order."""

from functools import cache

from tests.unit.procedure.demo_coach import DEMO, PINK, celsius
from wintertight.coach.load import load_card
from wintertight.flow.build import build_network
from wintertight.flow.case import CAREFUL
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.procedure.methods.pump_steps import pump_job, steps_before_filling
from wintertight.procedure.methods.worked import actions_of
from wintertight.procedure.orders import Round, ready_to_fill
from wintertight.procedure.run_on import OutletPlan, plan_run_ons
from wintertight.proof.judge import Bench

LOW = celsius(-10.0)

FEW = ("kitchen.cold", "kitchen.hot", "toilet", "shower.cold", "shower.hot")
"""Outlets of the small trailer, nearest first; few enough that all their orders can be tried."""


@cache
def ready(name: str = "small-trailer", low_degC: float = LOW) -> Round:
    """Give a bundled coach with the pump on."""
    return ready_to_fill(load_card(DEMO / "cards" / f"{name}.toml"), PINK, low_degC)


def planned_in_small_strides(of: Round, order: tuple[str, ...]) -> tuple[OutletPlan, ...]:
    """Plan the run-ons of one order as a plan does, in its small strides."""
    network = build_network(of.job.card, CAREFUL)
    steps = steps_before_filling(pump_job(of.job.card, network, PINK))
    state = replay(network, arriving_state(network), actions_of(steps)).end
    return plan_run_ons(Bench(of.job.card, network, state, LOW, PINK), PINK, order)


def volume_of(plans: tuple[OutletPlan, ...]) -> float:
    """Give what comes out of all outlets of a plan [m3]."""
    runs = [plan.moment.outcome.run for plan in plans]
    return sum(run.volume_m3 for run in runs if run)
