"""How a coach was left by what was recorded."""

import json
from dataclasses import replace

import pytest

from tests.recorded_jobs import job_with
from wintertight.procedure.as_left import (
    HeaterLeft,
    heaters_left,
    holds_antifreeze,
    set_backs,
)

pytestmark = pytest.mark.long


def test_a_job_as_planned_leaves_the_heater_out() -> None:
    """Guards that every fact follows from a step that was done."""
    left = HeaterLeft("heater", heat_off=True, content="empty", bypassed=True, plug="out")
    assert heaters_left(job_with().done) == (left,)


@pytest.mark.parametrize(
    ("left_out", "field", "value"),
    [
        ("heat-off", "heat_off", False),
        ("set-bypass", "bypassed", False),
        ("plug-out", "plug", None),
        ("plug-out", "content", None),
    ],
)
def test_what_is_not_recorded_is_not_said(left_out: str, field: str, value: object) -> None:
    """Guards that a step left out takes its fact away, whatever is usual."""
    (heater,) = heaters_left(job_with(left_out=(left_out,)).done)
    assert getattr(heater, field) == value


def test_heat_without_a_source_on_the_card_goes_by_its_tick() -> None:
    """Guards that a heater whose sources nobody entered is off only where that was ticked."""
    done = job_with().done
    bare = [f.model_copy(update={"heat": ()}) for f in done.plan.card.fittings]
    card = done.plan.card.model_copy(update={"fittings": tuple(bare)})
    ticked = replace(done, plan=replace(done.plan, card=card))
    assert heaters_left(ticked)[0].heat_off
    assert not heaters_left(replace(ticked, done=()))[0].heat_off


def test_what_is_set_back_is_what_stands_otherwise() -> None:
    """Guards that each thing is named once, and one that was put back is not."""
    backs = {back.sort: back.parts for back in set_backs(job_with().done)}
    assert backs["plug in"] == ("heater",)
    assert backs["bowl tight"] == ("strainer", "filter")
    assert backs["cartridge in"] == ("filter",)
    plug = json.dumps({"action": "set", "part": "heater/plug", "setting": "in"})
    assert "plug in" not in {back.sort for back in set_backs(job_with(plug).done)}


def test_antifreeze_is_left_where_some_was_pumped_or_poured() -> None:
    """Guards that rinsing is asked for only where there is something to rinse."""
    assert holds_antifreeze(job_with().done)
    assert not holds_antifreeze(job_with(left_out=("run-outlet", "pour", "pump-on")).done)
