"""The order of the outlets and the rule for shutting a tap, compared for a plan."""

from dataclasses import replace

from wintertight.procedure.orders import compare_orders, ready_to_fill
from wintertight.procedure.plan import Plan
from wintertight.procedure.stop_rules import compare_stop_rules

SHUFFLED, MOST_RUNS = 1, 50
"""How many orders are looked at for one line of a sheet [1]: about two seconds' worth."""


def with_rounds_compared(plan: Plan) -> Plan:
    """Give a plan with its order and its stop rule compared against others; takes some seconds.

    Args:
        plan: the plan.

    Returns:
        The same plan, with what was found; as it was where the coach's own pump fills nothing.
    """
    if plan.method != "pump":
        return plan
    ready = ready_to_fill(plan.card, plan.product, plan.low_degC)
    run_on = {
        s.step.outlet: s.run_on_s for s in plan.steps if s.step.outlet and s.run_on_s is not None
    }
    rules = compare_stop_rules(ready, run_on)
    orders = compare_orders(ready, shuffled=SHUFFLED, most_runs=MOST_RUNS)
    return replace(plan, orders=orders, stop_rules=rules)
