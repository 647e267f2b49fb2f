from dataclasses import replace

import pytest

from tests.unit.procedure.demo_coach import PINK, planned
from tests.unit.procedure.ready_coach import LOW, ready
from wintertight.errors import ChoiceError
from wintertight.procedure.orders import ready_to_fill
from wintertight.procedure.plan import Plan
from wintertight.procedure.stop_rules import TEN_S, RuleOutcome, compare_stop_rules

USUAL = RuleOutcome("as planned", 5e-3, 100.0, "safe")


def by_rule(name: str = "small-trailer", low_degC: float = LOW) -> dict[str, RuleOutcome]:
    """Compare the rules on one coach."""
    return {found.rule: found for found in compare_stop_rules(ready(name, low_degC))}


def sheet(plan: Plan) -> dict[str, float]:
    """Give the run-on that stands on a plan's sheet, by outlet [s]."""
    return {
        s.step.outlet: s.run_on_s for s in plan.steps if s.step.outlet and s.run_on_s is not None
    }


@pytest.mark.parametrize("name", ["small-trailer", "middle-travel-trailer", "on-demand-van"])
def test_first_colour_is_not_strong_enough(name: str) -> None:
    """Guards that a tenth of the product, at which colour shows, is not what 81 % is needed of."""
    found = by_rule(name)
    assert found["as planned"].verdict == "safe"
    assert found["first colour"].verdict == "gap"
    assert not found["first colour"].holds
    assert len(found["first colour"].bursting) > 3
    assert found["first colour"].volume_m3 < found["as planned"].volume_m3


def test_where_nothing_freezes_every_rule_holds() -> None:
    """Guards that the rules are judged by the cold: two degrees above freezing all of them hold."""
    found = by_rule(low_degC=2.0)
    assert all(outcome.holds for outcome in found.values())
    assert {outcome.verdict for outcome in found.values()} == {"safe"}


def test_colder_never_leaves_fewer_weak() -> None:
    """Guards that a rule which fails in a mild winter does not come right in a hard one."""
    mild, hard = (by_rule(low_degC=low)["first colour"] for low in (-4.0, LOW))
    assert set(mild.bursting) <= set(hard.bursting)


def test_a_count_of_ten_adds_ten_seconds_an_outlet() -> None:
    """Guards seconds and volume of the count against first colour: ten seconds more each, about."""
    # The trunk holds more product when those before ran longer, so colour comes no later.
    found = by_rule()
    ten, first = found["ten seconds"], found["first colour"]
    outlets = len(ready().nearest)
    assert first.seconds < ten.seconds <= first.seconds + TEN_S * outlets
    assert ten.volume_m3 > first.volume_m3
    assert set(ten.weak) <= set(first.weak)


def test_the_sheet_of_a_plan_holds_here_too() -> None:
    """Guards the large strides: the run-on of a plan, found in small ones, leaves nothing weak."""
    plan = planned()
    of = ready_to_fill(plan.card, PINK, LOW)
    rules = {found.rule: found for found in compare_stop_rules(of, sheet(plan))}
    assert plan.verdict == "safe"
    assert rules["as planned"].verdict == "safe"
    # Counting ten is too little for the outlet that is run longest, as its sheet says.
    longest = max(sheet(plan).values())
    assert (longest > TEN_S) == (not rules["ten seconds"].holds)


def test_a_run_on_belongs_to_an_outlet() -> None:
    """Guards that a slip in the name of an outlet is named, and that one left out is not run."""
    with pytest.raises(ChoiceError, match="'bath' is no outlet that is run; expected kitchen"):
        compare_stop_rules(ready(), {"bath": 3.0})
    usual, *_ = compare_stop_rules(ready(), {"kitchen.cold": 9.0})
    assert usual.verdict == "gap"
    assert usual.seconds < 30.0


def test_what_bursts_comes_before_what_is_doubtful() -> None:
    """Guards the key of each outcome, and that doubt alone does not hold either."""
    rule = replace(USUAL, rule="ten seconds")
    doubtful, bursting = replace(rule, doubtful=("a",)), replace(rule, bursting=("b",))
    both = replace(doubtful, bursting=("b",))
    assert [r.key.partition(": ")[2] for r in (rule, doubtful, bursting, both)] == [
        "holds",
        "doubtful",
        "bursts",
        "bursts",
    ]
    assert both.weak == ("b", "a")
    assert [r.holds for r in (rule, doubtful, bursting)] == [True, False, False]
    assert USUAL.key == "as planned"
    assert both.params["weak"] == 2.0
