"""What stands in parentheses below an outlet: how it is opened, and which colour counts there."""

from collections.abc import Mapping

from wintertight.procedure.plan import Plan
from wintertight.wording.catalogue import say
from wintertight.wording.steps import how_to_open


def outlet_notes(plan: Plan, language: str = "en") -> Mapping[int, str]:
    """Give the note of each outlet, by the number of its step; "" for a plain handle.

    Hot and cold side of a shower share its hose: whoever runs the second side sees the colour of
    the first one, then clear water, then colour again. How its head is opened stands at the row
    above where that is the first side's.
    """
    last: dict[str, str] = {}
    before = ""
    found: dict[int, str] = {}
    for planned in plan.steps:
        outlet = plan.careful.network.outlets.get(planned.step.outlet or "")
        if outlet is None:
            continue
        way = how_to_open(planned.step, language)
        if last.get(outlet.link, outlet.control) != outlet.control:
            shared = say("phrase", "shared hose", language)
            told = not way or before == outlet.link
            way = shared if told else say("phrase", "notes", language, first=way, last=shared)
        found[planned.n] = way
        last[outlet.link] = outlet.control
        before = outlet.link
    return found
