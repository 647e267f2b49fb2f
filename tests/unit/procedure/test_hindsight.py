"""What is collected from a record, and the chances that explanations begin with."""

import json
from typing import Any

import pytest

from tests.unit.procedure.demo_coach import PRODUCTS, planned
from wintertight.procedure.chances import AS_RECORDED, forgotten_chances
from wintertight.procedure.hindsight.cups import cups_of
from wintertight.procedure.hindsight.explanations import MOST_WRONG, possible_explanations
from wintertight.procedure.hindsight.observed import JUG, observe, ticked_steps
from wintertight.procedure.record import Event
from wintertight.procedure.steps import Step

PLAN = planned()
BY_ID = {p.step.id: p for p in PLAN.steps}
HOT = "run-outlet:kitchen.hot"
GALLON_M3 = PLAN.product.container_m3


def pairs(**more: Any) -> tuple[tuple[Event, Step], ...]:
    """Write a whole job down, with more at some steps."""
    found = []
    for p in PLAN.steps:
        entry = {"id": str(p.n), "seq": p.n, "step": p.step.id, "result": "done"}
        event = Event.model_validate_json(json.dumps({**entry, **more.get(p.step.id, {})}))
        found.append((event, p.step))
    return tuple(found)


def test_times_and_misses_are_collected() -> None:
    """Guards what counts as timed, as at once, as missing and as not written down."""
    events = pairs(
        **{
            HOT: {"first_colour_s": 7.0, "run_on_s": 9.0},
            "run-outlet:shower.hot": {"first_colour_s": 0.0},
            "run-outlet:toilet": {"result": "failed"},
        }
    )
    found = observe(events, BY_ID, GALLON_M3)
    assert found.colour_s == {"kitchen.hot": 7.0, "shower.hot": 0.0}
    assert found.run_on_s == {"kitchen.hot": 9.0}
    assert found.colourless == {"toilet"}
    asked = {p.step.outlet for p in PLAN.steps if p.telling}
    assert found.untimed == asked - {"kitchen.hot", "shower.hot"}
    assert ("colour", "shower.hot") not in found.measured
    assert ("colour", "shower.hot") in found.seen


def test_who_times_nothing_forgot_no_single_time() -> None:
    """Guards that a bay without a stopwatch is not taken for one that forgot an outlet."""
    assert observe(pairs(), BY_ID, GALLON_M3).untimed == frozenset()
    assert not observe(pairs(), BY_ID, GALLON_M3).is_something


def test_two_counts_of_jugs_are_one_use() -> None:
    """Guards the use between counts, and that jugs brought in between are no negative use."""
    ids = [p.step.id for p in PLAN.steps]
    first, last = ids.index("draw-from-jug:jug-valve"), ids.index("take-reading")
    counted = {ids[first]: {"jugs_left": 4.0}, ids[last]: {"jugs_left": 0.5}}
    (jugs,) = observe(pairs(**counted), BY_ID, GALLON_M3).jugs
    assert (jugs.first, jugs.last) == (first + 1, last)
    assert jugs.volume_m3 == pytest.approx(3.5 * GALLON_M3)
    more = {ids[first]: {"jugs_left": 1.0}, ids[last]: {"jugs_left": 3.0}}
    assert observe(pairs(**more), BY_ID, GALLON_M3).jugs == ()


def test_what_was_tried_is_rehearsed() -> None:
    """Guards that an outlet without colour was run, and a skipped one was not."""
    events = pairs(**{HOT: {"result": "skipped"}, "run-outlet:toilet": {"result": "failed"}})
    ticked = {p.step.id for p in ticked_steps(events, BY_ID)}
    assert HOT not in ticked
    assert "run-outlet:toilet" in ticked


def test_cups_are_shares_of_the_label_or_of_the_jug() -> None:
    """Guards that glycol is read against its label, and another product only against the jug."""
    cup = {"kind": "glycol share", "value": 28, "unit": "%", "instrument": "refractometer"}
    jug = {**cup, "value": 35}
    events = pairs(**{HOT: {"reading": cup}, "draw-from-jug:jug-valve": {"reading": jug}})
    strengths, pink = cups_of(events, PLAN.careful.network, PRODUCTS["pink"])
    assert {(s.outlet, s.beside_jug) for s in strengths} == {(JUG, False), ("kitchen.hot", False)}
    assert next(s.share for s in strengths if s.outlet == JUG) == pytest.approx(1.0)
    assert pink == {}
    rated = next(p for p in PRODUCTS.values() if p.contents().rated > 0.0)
    (beside,) = cups_of(events, PLAN.careful.network, rated)[0]
    assert beside.beside_jug
    assert beside.share == pytest.approx(0.8)


def test_chances_are_chances() -> None:
    """Guards that all explanations together are certain, and most jobs go as recorded."""
    found = possible_explanations(PLAN, [p.step for p in PLAN.steps], ["shower.hot"])
    assert sum(each.chance for each in found) == pytest.approx(1.0)
    assert found[0].cause == AS_RECORDED
    assert found[0].chance >= MOST_WRONG
    assert all(each.chance > 0.0 for each in found)


def test_what_is_out_of_sight_is_forgotten_more_often() -> None:
    """Guards the one thing the trade says of forgetting."""
    chances = forgotten_chances(PLAN.card, ["kitchen", "outside-shower", "toilet"])
    assert chances["outside-shower"] > 5.0 * chances["kitchen"]
    assert chances["kitchen"] == chances["toilet"]
