import pytest

from tests.unit.procedure.demo_coach import (
    GALLON_M3,
    PINK,
    SMALL,
    TEXT,
    absent,
    card,
    celsius,
    planned,
    swapped,
    with_line,
    without,
)
from wintertight.errors import ChoiceError
from wintertight.procedure.plan import plan_coach

pytestmark = pytest.mark.long

BYPASS = ("bypass-valve", "bypass-a", "bypass-b")
HOSE = ("jug-hose", "jug-valve", "hose", "suction-b")
HEATER = ("heater", "heater-cold-valve", "heater-hot-valve", "heater-cold-a", "heater-cold-b")
HOT_SIDE_OF_HEATER = ("heater-hot-a", "heater-hot-b")
LOW_POINTS = ("low-cold", "low-hot", "low-cold-stub", "low-hot-stub")
TANK = ("fresh-tank", "tank-valve", "tank-stub", "suction-a")

ICE_MAKER = swapped('"ice maker", ', "", SMALL) + (
    '\n\n[[fitting]]\nid = "ice"\nkind = "ice maker"\nat = ["16 ft", "7 ft", "3 ft"]\n'
    '\n[[line]]\nid = "ice-line"\nfrom = "kitchen-cold-tee"\nto = "ice"\nlength = "9 ft"\n'
)

NO_TRAPS = without("kitchen-trap", "lavatory-trap", "shower-trap")
for _sink in ("kitchen", "lavatory", "shower"):
    NO_TRAPS = swapped(f'drains_to = "{_sink}-trap"', 'drains_to = "gray-tank"', NO_TRAPS)


@pytest.mark.parametrize(
    ("text", "verdict"),
    [
        (TEXT, "safe"),
        (without(*HOSE, text=SMALL), "safe"),
        (without(*TANK, text=SMALL), "safe"),
        (absent("city inlet", without("city-inlet", "city-branch", text=SMALL)), "safe"),
        (without(*HEATER, *HOT_SIDE_OF_HEATER, text=SMALL), "safe"),
        (NO_TRAPS, "safe"),
        (
            without("strainer", "suction-d", text=swapped('"strainer.in"', '"pump.in"', SMALL)),
            "safe",
        ),
        (without(*LOW_POINTS, text=SMALL), "gap"),
        (without(*BYPASS, text=SMALL), "safe"),
        (with_line("filter", 'seen = "not looked at"', SMALL), "gap"),
        (with_line("heater", 'seen = "not looked at"', SMALL), "gap"),
        (with_line("toilet", 'seen = "not looked at"'), "gap"),
        (with_line("city-inlet", 'seen = "not looked at"', SMALL), "unproven"),
        (with_line("suction-tee", 'seen = "not looked at"', SMALL), "unproven"),
        (swapped('role = "heater bypass"\n', "", SMALL), "unproven"),
        (ICE_MAKER, "safe"),
        (swapped('"bidet sprayer", ', "", SMALL), "unproven"),
    ],
)
def test_each_coach_gets_its_verdict(text: str, verdict: str) -> None:
    """Guards that no coach makes the planner fall over, and that what is unknown is never safe."""
    plan = planned(text=text)
    assert plan.verdict == verdict
    assert not plan.refused
    assert plan.balance.relative_error < 1e-9


def test_a_heater_that_cannot_be_bypassed_is_drained_closed_and_filled() -> None:
    """Guards the six gallons more that a six-gallon heater takes by common practice."""
    plan = planned(text=without(*BYPASS))
    assert plan.verdict == "safe"
    assert "no bypass" in {finding.key for finding in plan.findings}
    assert "close heater" in {s.step.key for s in plan.steps}
    more_gal = (plan.antifreeze.p50 - planned().antifreeze.p50) / GALLON_M3
    assert 5.5 < more_gal < 7.0


def test_a_coach_without_a_pump_is_refused_in_one_line() -> None:
    """Guards that a coach which has nothing to pump with is unusable input, not a fault of ours."""
    supply = ("suction-tee", "strainer", "pump", "suction-c", "suction-d", "pump-out", "filter")
    text = without(*TANK, *HOSE, *supply, "filter-out")
    with pytest.raises(ChoiceError, match="no pump"):
        plan_coach(card(text), PINK, celsius(-10.0))


def test_a_coach_whose_only_outlet_is_a_toilet_is_planned() -> None:
    """Guards that the pump can be run dry where there is neither a tap nor a low point."""
    keep = ("toilet", "toilet-tee", "toilet-line")
    taps = ("kitchen", "lavatory", "shower", "outside-shower")
    sides = [
        f"{tap}-{side}" for tap in ("kitchen", "lavatory", "shower") for side in ("hot", "cold")
    ]
    hot = ("hot-forward", "hot-aft-1", "hot-aft-2", "low-hot-tee", "heater-hot-tee")
    tees = ("outside-cold", "outside-hot", "outside-hot-tee", "lavatory-hot-tee")
    text = without(
        *taps,
        *sides,
        *hot,
        *tees,
        *LOW_POINTS,
        *BYPASS,
        *HEATER,
        *HOT_SIDE_OF_HEATER,
        *("kitchen-trap", "lavatory-trap", "shower-trap", "city-inlet", "city-branch"),
    )
    plan = planned(text=absent("outside shower", absent("city inlet", text)))
    assert [s.step.outlet for s in plan.steps if s.step.outlet] == ["toilet"]
    assert all(name in plan.card.fitting or name in plan.card.line for name in keep)


@pytest.mark.parametrize(
    ("degF", "product", "verdict", "reasons"),
    [
        (-40.0, "pink", "gap", {"slush bursts"}),
        (-75.0, "blue", "unproven", {"beyond the table"}),
        (-10.0, "thrift", "unproven", {"diluted product"}),
        (-75.0, "thrift", "gap", {"rating is too warm", "diluted product"}),
        (20.0, "spirit", "safe", set()),
        (0.0, "spirit", "unproven", {"no burst curve"}),
    ],
)
def test_each_product_gets_its_verdict(
    degF: float,
    product: str,
    verdict: str,
    reasons: set[str],
) -> None:
    """Guards that a weak or unknown product is a verdict with its reason, and no exception."""
    plan = planned(degF, product, SMALL)
    assert plan.verdict == verdict
    assert {p.reason for p in plan.parts if p.safe is not True} == reasons
