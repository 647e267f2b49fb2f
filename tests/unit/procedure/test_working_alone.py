"""What whoever works alone must have, leave off, look at and put back."""

from dataclasses import replace

import pytest

from tests.unit.documents.demo_plans import demo_plan, plan_of
from wintertight.procedure.never_clears import CHECKS, patience_s, to_check
from wintertight.procedure.put_back import SORTS, put_back
from wintertight.procedure.stays_off import stays_off
from wintertight.procedure.tools import OF_STEP, TOOLS, tools_of

pytestmark = pytest.mark.long

LARGEST, MIDDLE, NO_BYPASS = "large-motorhome", "middle-travel-trailer", "no-bypass-trailer"
CARDS = (LARGEST, MIDDLE, NO_BYPASS, "small-trailer", "on-demand-van", "full-fifth-wheel")


def test_each_tool_is_named_once_for_what_it_is_for() -> None:
    """Guards that a wrench is asked for where there is a plug, and for that heater."""
    tools = {tool.key: tool for tool in tools_of(demo_plan(MIDDLE))}
    assert list(tools) == [key for key in TOOLS if key in tools]
    assert tools["plug wrench"].parts == ("heater",)
    assert {"watch", "bucket", "cup", "blunt tool", "reading", "tag"} <= set(tools)
    assert "compressor" not in tools
    assert "jug hose" not in tools
    assert {key for keys in OF_STEP.values() for key in keys} <= set(TOOLS)


def test_a_jug_hose_is_asked_for_where_the_coach_has_none() -> None:
    """Guards that a coach without an antifreeze hose sends its owner for a short hose."""
    assert "jug hose" in {tool.key for tool in tools_of(demo_plan("small-trailer"))}
    assert "bridge hose" in {tool.key for tool in tools_of(demo_plan(LARGEST))}


@pytest.mark.parametrize(
    ("card", "why"), [(MIDDLE, "bypassed"), (NO_BYPASS, "filled"), (LARGEST, "filled")]
)
def test_a_heater_stays_off_for_what_is_in_it(card: str, why: str) -> None:
    """Guards that a heater which is bypassed and one full of antifreeze are told apart."""
    plan = demo_plan(card)
    found = stays_off(plan)
    heaters = [off for off in found if off.heat]
    assert [off.why for off in heaters] == [why]
    (heater,) = heaters
    assert set(heater.heat) == set(plan.card.fitting[heater.part].heat)


@pytest.mark.parametrize("card", CARDS)
def test_every_heater_of_a_card_stays_off(card: str) -> None:
    """Guards that no heater with a source of heat is forgotten, from its step on."""
    plan = demo_plan(card)
    off = {found.part: found.step for found in stays_off(plan)}
    for fitting in plan.card.fittings:
        if fitting.heat:
            step = next(s for s in plan.steps if s.n == off[fitting.id])
            assert (step.step.key, step.step.part) == ("heat off", fitting.id)


def test_the_bypass_is_looked_at_only_where_there_is_one() -> None:
    """Guards that a coach without a bypass is not sent to look for its handles."""
    assert "bypass" in {check.key for check in to_check(demo_plan(MIDDLE))}
    found = {check.key: check for check in to_check(demo_plan(NO_BYPASS))}
    assert "bypass" not in found
    assert found["fills first"].seconds == pytest.approx(255.0, abs=15.0)


@pytest.mark.parametrize("card", CARDS)
def test_checks_come_in_one_order_and_once(card: str) -> None:
    """Guards that what is quickest to see comes first, on every coach."""
    keys = [check.key for check in to_check(demo_plan(card))]
    assert keys == [key for key in CHECKS if key in keys]
    assert {"jug", "two open"} <= set(keys)


def test_patience_grows_with_what_the_card_leaves_open() -> None:
    """Guards that a tap which may be late on the careful side is waited for."""
    plan = plan_of()
    assert patience_s(plan) == 60.0
    early = tuple(
        replace(s, run=replace(s.run, first_colour_s=(s.run.first_colour_s or 0.0) - 90.0))
        if s.run
        else s
        for s in plan.steps
    )
    assert patience_s(replace(plan, steps=early)) == 120.0


@pytest.mark.parametrize("card", CARDS)
def test_what_stands_otherwise_is_put_back(card: str) -> None:
    """Guards that each handle, plug, lever, cartridge and heat is set back as it was found."""
    plan = demo_plan(card)
    back = put_back(plan)
    network, end = plan.careful.network, plan.careful.end.settings
    moved = {c.id for c in network.controls.values() if end[c.id] != c.as_found}
    told = {found.control for found in back}
    assert told <= moved
    left = {network.controls[control].thing for control in moved - told}
    assert left <= {"mould", "switch"}
    assert [found.sort for found in back] == sorted((found.sort for found in back), key=SORTS.index)
    assert all(found.setting == network.controls[found.control].as_found for found in back)


def test_handles_at_the_heater_are_set_back_last() -> None:
    """Guards that the heater stays bypassed until the lines are rinsed."""
    sorts = [found.sort for found in put_back(demo_plan(MIDDLE))]
    assert sorts.count("heater handle") == 3
    assert set(sorts[sorts.index("heater handle") :]) == {"heater handle", "heat"}
