"""What the technician and the adviser read."""

import re
from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.unit.documents.demo_plans import COLD, demo_card, demo_plan, doubtful_plan, plan_of
from wintertight.coach.findings import KEYS, Finding
from wintertight.coach.kinds import KINDS
from wintertight.procedure.plan import Plan, Purchase, Refused
from wintertight.procedure.steps import PlannedStep
from wintertight.proof.claims import Evidence
from wintertight.wording.names import part_name
from wintertight.wording.plans import (
    bring_line,
    finding_text,
    minutes_line,
    notes,
    verdict_of_plan,
    warnings,
)
from wintertight.wording.proofs import evidence_text, reason, settle
from wintertight.wording.steps import missed_text, step_text, step_why

VALUES = {"kind": "trap", "missing": "heater hot", "vin": "1ABC", "expected": "X"}


def step(key: str, plan: Plan | None = None) -> PlannedStep:
    """Give the first step of a key."""
    return next(s for s in (plan or plan_of()).steps if s.step.key == key)


def test_handles_are_told_along_and_across() -> None:
    """Guards that a valve is told by how its handle stands, and what that means."""
    said = step_text(step("set bypass"), demo_card())
    assert "Handle across the pipe (shut): valve into the heater and valve out" in said
    assert "Handle along the pipe (open): bypass valve." in said


def test_a_hose_on_the_pump_is_another_sentence() -> None:
    """Guards that a coach without an antifreeze hose is told where the jug's hose goes."""
    planned = step("draw from jug")
    bare = replace(planned, step=replace(planned.step, part="pump/suction", actions=()))
    said = step_text(bare, demo_card())
    assert said.startswith("Take the tank line off the inlet of the water pump")


def test_an_outlet_without_colour_is_told_so() -> None:
    """Guards that where no colour comes nobody is told to wait for it."""
    planned = step("run outlet")
    assert planned.run is not None
    dry = replace(planned, run=replace(planned.run, first_colour_s=None))
    assert "count it as not filled" in step_text(dry, demo_card())


def test_every_step_of_a_plan_is_said_whole() -> None:
    """Guards that no sentence of a whole plan has a hole, a doubled blank or a small start."""
    plan = plan_of(missed=True)
    for planned in plan.steps:
        said = f"{step_text(planned, plan.card)} {step_why(planned.step)}"
        assert not re.search(r"[{}]|  |\(\)|: \.", said), said
        assert said[0].isupper()
        assert planned.if_missed is not None
        assert missed_text(planned.if_missed, plan.card).endswith(".")


@pytest.mark.parametrize("key", sorted(KEYS))
def test_every_finding_can_be_said(key: str) -> None:
    """Guards that each finding is a sentence once its parameters are given."""
    params = {name: VALUES.get(name, 2.0) for name in KEYS[key]}
    assert finding_text(Finding(key, "kitchen", params), demo_card()).endswith((".", "?"))


@pytest.mark.parametrize(
    "made", [plan_of, lambda: plan_of("Heron spirit -50", COLD), doubtful_plan]
)
def test_every_part_is_said_whole(made: Callable[[], Plan]) -> None:
    """Guards that each part has its reason, its evidence, and a remedy where it is not proven."""
    plan = made()
    for part in plan.parts:
        assert reason(part).endswith(".")
        assert all(evidence_text(e).endswith(".") for e in part.evidence)
        assert (settle(part) is None) == (part.safe is True)
        assert part.kind == "line" or part.kind in KINDS


def test_the_verdict_says_to_what_cold_and_what_voids_it() -> None:
    """Guards the three verdicts, planned and recorded."""
    safe = "Protected as planned to -4 °F, once every step is done; void once water runs."
    assert verdict_of_plan(plan_of()) == safe
    assert verdict_of_plan(plan_of(), recorded=True).startswith("Protected as recorded to -4 °F;")
    assert "-20 °C" in verdict_of_plan(plan_of(), system="metric")
    gap = verdict_of_plan(plan_of("Heron spirit -50", COLD))
    assert gap.startswith("NOT protected to -31 °F: ")
    assert verdict_of_plan(doubtful_plan()).startswith("Not proven to -4 °F: nobody can vouch for")


def test_no_longer_run_helps_a_product_that_is_too_weak() -> None:
    """Guards that nobody is told to run on where even the undiluted product fails."""
    plan = plan_of("Heron spirit -50", COLD)
    told = {settle(p, too_weak=plan.too_weak) for p in plan.parts if p.safe is False}
    assert told == {"Take a stronger product, or empty it."}
    assert any("even undiluted" in said for said in warnings(plan))


def test_water_that_no_step_moves_is_told_so() -> None:
    """Guards that a forgotten branch is not sent a stronger product."""
    part = next(p for p in plan_of("Heron spirit -50", COLD).parts if p.safe is False)
    left = replace(part, evidence=(Evidence("computed", "content as found"),))
    assert (settle(left) or "").startswith("No step moves what is in it")


def test_a_refused_order_is_told_first() -> None:
    """Guards that a refused order names its step and comes before what is merely worth knowing."""
    plan = replace(plan_of(), refused=(Refused("plug-out:heater", "plug while hot"),))
    first = next(iter(notes(plan)))
    assert re.match(r"Step 7 is refused as it stands\. The plug would come out", first)


@pytest.mark.parametrize(
    ("count", "spare", "said"),
    [
        (1, 0, "Bring 1 jug of Pink (1 gal each)."),
        (4, 1, "Bring 4 jugs of Pink (1 gal each), have one more."),
        (6, 2, "Bring 6 jugs of Pink (1 gal each), have 2 more."),
    ],
)
def test_jugs_are_told_as_a_foreman_would(count: int, spare: int, said: str) -> None:
    """Guards that what to bring is whole jugs and spares, never a band."""
    assert bring_line(Purchase("Pink", 0.003785411784, count, spare)) == said


def test_work_is_told_to_five_minutes() -> None:
    """Guards that no plan pretends to know its seconds."""
    assert minutes_line(2436.0) == "About 40 min of work."
    assert minutes_line(10.0) == "About 5 min of work."


@pytest.mark.parametrize(
    ("low", "said"),
    [
        (10.0, "A design low of 50 °F is above freezing."),
        (30.0, "A design low of 86 °F: is that a slip of the pen?"),
        (-70.0, "A design low of -94 °F: is that a slip of the pen?"),
    ],
)
def test_the_low_in_use_is_doubted(low: float, said: str) -> None:
    """Guards that an odd cold is told once, whether the card or the command gave it."""
    of_the_card = Finding("design low above freezing", params={"design_low_degC": 10.0})
    plan = replace(plan_of(), low_degC=low, findings=(of_the_card,))
    assert [n for n in notes(plan) if n.startswith("A design low")] == [said]
    assert not [n for n in notes(plan_of()) if n.startswith("A design low")]


@pytest.mark.parametrize(
    ("kind", "inside", "called"),
    [
        ("washer", "sump", "sump of the washing machine"),
        ("whirlpool", "jets", "jets of the whirlpool"),
        ("ice maker", "mould", "mould of the ice maker"),
        ("membrane filter", "tank", "tank of the drinking water filter"),
        ("macerating toilet", "sump", "sump of the toilet of the half bath"),
    ],
)
def test_what_is_inside_a_fitting_has_a_name(kind: str, inside: str, called: str) -> None:
    """Guards that a sump, jets, a mould or a tank is told as what it is, not as its fitting."""
    plan = demo_plan("large-motorhome")
    pool = next(f"{f.id}/{inside}" for f in plan.card.fittings if f.kind == kind)
    assert pool in plan.careful.network.pools
    assert part_name(plan.card, pool) == called


def test_a_toilet_without_a_pedal_is_flushed() -> None:
    """Guards that nobody looks for a pedal on a toilet that has a button."""
    plan = demo_plan("large-motorhome")
    said = [step_text(s, plan.card) for s in plan.steps if s.step.key == "work pedal"]
    assert "Flush the toilet of the half bath once." in said
    assert "Work the pedal of the toilet of the rear bath once." in said


def test_the_relief_lever_is_lifted_for_two_reasons() -> None:
    """Guards that a lever lifted at the end is not said to let the heater drain."""
    plan = demo_plan("no-bypass-trailer")
    whys = [step_why(s.step) for s in plan.steps if s.step.key == "open relief"]
    assert whys == [
        "Air comes in at the top, so the heater empties at the bottom.",
        "An open lever gives what may freeze room to grow.",
    ]
