"""The proof of what was done on screen."""

import pytest

from tests.unit.documents.demo_plans import plan_of, recorded_without
from wintertight.documents.screen import plan_screen
from wintertight.documents.screen_blocks import WIDTH
from wintertight.procedure.as_done import AsDone
from wintertight.procedure.undone import undone_at, undone_steps

pytestmark = pytest.mark.long

MISSED = ("run-outlet:shower", "plug-out")


def said(done: AsDone) -> str:
    """Give the proof as one line of text."""
    return " ".join(plan_screen(done.plan, recorded=True, planned=done.planned).split())


def test_a_proof_is_no_plan() -> None:
    """Guards that nobody is told to bring jugs or to do a step for a job that is done."""
    done = recorded_without()
    text = said(done)
    assert text.startswith("Protected as recorded to -4 °F; void once water runs.")
    assert "Bring" not in text
    assert "of work, worked out from the record" in text
    assert "Not done" not in text
    assert "Turn off the heat" not in text
    fills = sum(s.step.phase == "fill" for s in plan_of().steps)
    assert f"Fill, one outlet at a time {fills} of {fills}" in text


def test_what_was_left_out_is_told_where_it_matters() -> None:
    """Guards that gaps name the steps that would have closed them, by their number on the sheet."""
    done = recorded_without(*MISSED)
    text = said(done)
    numbers = {s.step.id: s.n for s in plan_of().steps}
    shower = [n for i, n in numbers.items() if i.startswith("run-outlet:shower")]
    plug = numbers["plug-out:heater"]
    assert text.startswith("NOT protected to -4 °F")
    assert f"{plug} Take the plug with the anode rod out" in text
    assert f"Steps {plug}, {shower[0]} and {shower[1]} were not done: do them now" in text
    assert "It holds plain water, and that bursts what holds it." in text


def test_steps_belong_to_what_they_would_have_moved() -> None:
    """Guards that an outlet's step is named at its line and trap, and at nothing it never met."""
    done = recorded_without(*MISSED)
    found = undone_at(done.plan, done.planned)
    hot, cold = ("run-outlet:shower.hot", "run-outlet:shower.cold")
    numbers = {s.step.id: s.n for s in done.planned.steps}
    assert {s.step.id for s in undone_steps(done.plan, done.planned)} == {
        hot,
        cold,
        "plug-out:heater",
    }
    assert found["heater"] == (numbers["plug-out:heater"],)
    assert set(found["shower-trap"]) == {numbers[hot], numbers[cold]}
    assert numbers[hot] in found["shower-hot"]
    assert numbers[hot] not in found.get("kitchen-hot", ())


def test_without_the_plan_only_what_was_done_is_told() -> None:
    """Guards that a proof without its plan neither fails nor claims that all was done."""
    done = recorded_without(*MISSED)
    text = plan_screen(done.plan, recorded=True, all_parts=True)
    assert "Not done" not in text
    assert "Run it from its outlet, or drain it by hand." in " ".join(text.split())
    assert max(map(len, text.splitlines())) <= WIDTH
    assert "All parts" in text


def test_an_order_out_of_turn_is_quoted() -> None:
    """Guards that a hazard in a record names what was done, not a step that is refused."""
    done = recorded_without("heat-off", "pressure-off", "open-taps", "open-relief")
    text = said(done)
    assert 'Out of order, as recorded: "Take the plug' in text
    assert "is refused as it stands" not in text
