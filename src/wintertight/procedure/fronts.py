"""What each line holds at a moment of a job, in words that a bay knows."""

from collections.abc import Mapping
from typing import Literal

from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace
from wintertight.flow.running import run_until
from wintertight.flow.state import State, with_outlet_open
from wintertight.flow.stream import AIR
from wintertight.flow.until import Until
from wintertight.fluids.product import Product
from wintertight.procedure.run_on import UNKNOWN_TARGET, strength_of, weakest_share

LineContent = Literal["antifreeze", "weak", "water", "air"]

TRACE = 0.02
"""Share of the product below which a line holds water [1]."""


def line_contents(
    network: CoachNetwork, state: State, product: Product
) -> Mapping[str, LineContent]:
    """Tell what each link holds that has a content.

    Antifreeze is what a usual job leaves (``UNKNOWN_TARGET``) in the weakest section; air is more
    air than liquid; weak is any antifreeze short of that; the rest is water.

    Args:
        network: the coach.
        state: how it stands.
        product: what it is filled with.

    Returns:
        By id of the link.
    """
    strength = strength_of(product)
    found: dict[str, LineContent] = {}
    for link, held in state.held.items():
        if link not in network.links:
            continue
        mean = held.mean()
        if mean[AIR] > 0.5:  # noqa: PLR2004 - more air than liquid
            found[link] = "air"
        elif weakest_share(held, strength) >= UNKNOWN_TARGET:
            found[link] = "antifreeze"
        else:
            found[link] = "weak" if float(mean[:AIR].sum()) > TRACE * strength else "water"
    return found


def at_first_colour(trace: Trace, product: Product, outlet: str) -> Mapping[str, LineContent]:
    """Tell what each link holds when colour first shows at an outlet.

    Args:
        trace: the job.
        product: what the coach is filled with.
        outlet: control of an outlet that the job runs until colour.

    Returns:
        By id of the link; empty where the job does not run it, or no colour comes.
    """
    before = trace.start
    for moment in trace.moments:
        rule = moment.action.until
        by_colour = rule is not None and rule.run_on_s is not None
        if moment.action.verb == "run" and moment.action.part == outlet and by_colour:
            opened = with_outlet_open(trace.network, before, outlet)
            after, seen = run_until(trace.network, opened, outlet, Until(run_on_s=0.0))
            if seen.first_colour_s is None:
                return {}
            return line_contents(trace.network, after, product)
        before = moment.state
    return {}
