"""Wrong settings of the demo's coaches that several tests look at, each worked out once."""

from functools import cache

from tests.unit.documents.demo_plans import demo_plan
from tests.unit.procedure.demo_coach import SMALL, planned, swapped
from wintertight.procedure.mistake_outcome import MistakeOutcome, outcome_of
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.plan import Plan


def the(key: str, circumstance: str = "", plan: Plan | None = None) -> Mistake:
    """Give the first mistake of a key possible at a coach; the middle trailer if none is named."""
    found = possible_mistakes(plan or planned())
    return next(m for m in found if (m.key, m.circumstance) == (key, circumstance))


@cache
def of_middle(key: str, circumstance: str = "") -> MistakeOutcome:
    """Give what comes of a mistake at the middle trailer."""
    return outcome_of(planned(), the(key, circumstance))


@cache
def of_motorhome(key: str) -> MistakeOutcome:
    """Give what comes of a mistake at the large motorhome."""
    plan = demo_plan("large-motorhome")
    return outcome_of(plan, the(key, plan=plan))


def checked_coach() -> Plan:
    """Plan the small coach with a check valve where its heater's hot valve was."""
    old = 'id = "heater-hot-valve"\nkind = "ball valve"\nrole = "heater hot"\n'
    text = swapped(old, 'id = "heater-hot-valve"\nkind = "check valve"\n', SMALL)
    text = swapped('to = "heater-hot-valve"', 'to = "heater-hot-valve.in"', text)
    return planned(text=swapped('from = "heater-hot-valve"', 'from = "heater-hot-valve.out"', text))
