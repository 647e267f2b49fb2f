import json
from typing import Any

import pytest

from tests.unit.procedure.demo_coach import PINK, SMALL, card, celsius, planned
from wintertight.errors import RecordError
from wintertight.procedure.as_done import AsDone, prove_record
from wintertight.procedure.record import read_record

pytestmark = pytest.mark.long

LOW = celsius(-10.0)
HOT = "run-outlet:kitchen.hot"
BYPASS = "set-bypass:bypass-valve"

Event = dict[str, Any]


def events(**changes: Event) -> list[Event]:
    """Give the record of a job done to the letter, and what was otherwise by step id."""
    steps = [p.step.id for p in planned(text=SMALL).steps]
    return [
        {"id": f"e{n}", "seq": n, "step": step, "result": "done", **changes.get(step, {})}
        for n, step in enumerate(steps)
    ]


def proved(some: list[Event], **fields: Any) -> AsDone:
    """Prove a record of the small coach."""
    text = json.dumps({"schema": "wintertight/record/1", "events": some, **fields})
    return prove_record(card(SMALL), read_record(text), PINK, LOW)


def bad(done: AsDone) -> set[str]:
    """Give the parts that are not safe."""
    return {part.id for part in done.plan.parts if part.safe is not True}


def test_a_job_done_to_the_letter_proves_the_plan() -> None:
    """Guards that the plan's own record gives the plan's own proof, gallons and minutes."""
    plan, done = planned(text=SMALL), proved(events(), card_hash=card(SMALL).card_hash)
    assert done.plan.verdict == plan.verdict == "safe"
    assert not done.unknown
    for part, twin in zip(plan.parts, done.plan.parts, strict=True):
        assert (part.id, part.safe, part.claim) == (twin.id, twin.safe, twin.claim)
        assert part.worst.glycol == pytest.approx(twin.worst.glycol, abs=1e-12)
    assert done.plan.antifreeze.p50 == pytest.approx(plan.antifreeze.p50, rel=1e-9)
    assert done.plan.duration.p95 == pytest.approx(plan.duration.p95, rel=1e-9)


def test_an_empty_record_proves_nothing() -> None:
    """Guards that what the record does not speak of was not done."""
    done = proved([])
    assert done.plan.verdict == "gap"
    assert BYPASS in done.unknown
    assert done.plan.antifreeze.p95 == 0.0


@pytest.mark.parametrize("result", ["skipped", "failed"])
def test_what_was_not_done_is_no_credit(result: str) -> None:
    """Guards that every word but done counts as not done."""
    assert "kitchen" in bad(proved(events(**{HOT: {"result": result}})))


def test_what_is_not_on_this_coach_is_taken_off_the_card() -> None:
    """Guards that a tap said not to be there is proven away with its branch, and named."""
    done = proved(events(**{HOT: {"result": "not on this coach"}}))
    assert done.not_here == ("kitchen",)
    assert "kitchen" not in {part.id for part in done.plan.parts}
    assert done.plan.card.fitting["kitchen"].seen == "absent"


def test_what_others_are_fed_through_stays_on_the_card() -> None:
    """Guards that a pump said not to be there is no reason to believe the rest."""
    pump = next(p.step.id for p in planned(text=SMALL).steps if p.step.id == "pump-on:pump")
    done = proved(events(**{pump: {"result": "not on this coach"}}))
    assert done.not_here == ()
    assert done.still_here == ("pump",)
    assert done.plan.verdict == "gap"


def test_order_of_writing_does_not_matter() -> None:
    """Guards that the count decides, not the place in the file."""
    assert not bad(proved(events()[::-1]))


def test_actions_and_parts_name_steps_too() -> None:
    """Guards a record that was written without step ids."""
    steps = [p.step for p in planned(text=SMALL).steps]
    some = [
        {"id": f"e{n}", "seq": n, "action": s.key, "part": s.part or None, "result": "done"}
        for n, s in enumerate(steps)
    ]
    assert not bad(proved(some))


@pytest.mark.parametrize(
    ("event", "field", "says"),
    [
        ({"step": "nope"}, "step", "no step is called 'nope'"),
        ({"action": "dance"}, "action", "no step does 'dance'"),
        ({"action": "run outlet"}, "part", "several steps"),
        ({"step": HOT, "part": "heater"}, "part", "not done to 'heater'"),
        ({"step": BYPASS, "setting": "ajar"}, "setting", "expected the setting 'along'"),
    ],
)
def test_what_the_plan_does_not_know_is_refused(event: Event, field: str, says: str) -> None:
    """Guards that an event which cannot be placed is named, and not guessed at."""
    with pytest.raises(RecordError, match=says) as caught:
        proved([{"id": "x", "seq": 1, "result": "done", **event}])
    assert caught.value.place.field == f"events[x].{field}"


def test_the_record_of_another_card_is_refused() -> None:
    """Guards that a record proves only the card it was made from."""
    with pytest.raises(RecordError, match="another state of the card"):
        proved(events(), card_hash="sha256:" + "0" * 64)


def test_another_setting_is_what_was_done() -> None:
    """Guards that a bypass ticked off as shut is a shut bypass."""
    assert "bypass-b" in bad(proved(events(**{BYPASS: {"setting": "across"}})))


def test_run_on_as_counted_decides() -> None:
    """Guards that a tap shut at first colour is not taken for one that ran on."""
    assert {"kitchen", "kitchen-hot"} <= bad(proved(events(**{HOT: {"run_on_s": 0.0}})))


def test_a_measured_volume_is_what_was_used() -> None:
    """Guards that a poured-off volume goes into the gallons as measured."""
    usual = proved(events(**{HOT: {"volume_m3": 1e-3}})).plan.antifreeze
    more = proved(events(**{HOT: {"volume_m3": 2e-3}})).plan.antifreeze
    # The flow still changes a little while the last tenth of a litre runs.
    assert more.p50 - usual.p50 == pytest.approx(1e-3, rel=1e-3)
    assert "kitchen" in bad(proved(events(**{HOT: {"volume_m3": 0.0}})))


@pytest.mark.parametrize(
    ("reading", "safe"),
    [
        ({"kind": "freezing point", "value": 2.0, "unit": "degF"}, True),
        ({"kind": "freezing point", "value": 15.0, "unit": "degF"}, False),
        ({"kind": "looks pink", "value": True}, True),
        ({"kind": "looks pink", "value": False}, None),
    ],
)
def test_a_reading_speaks_of_its_outlet(reading: Event, safe: bool | None) -> None:  # noqa: FBT001 - a column
    """Guards that a weak reading takes the claim of an outlet and of its line away."""
    done = proved(events(**{HOT: {"reading": reading}}))
    parts = {part.id: part for part in done.plan.parts}
    for name in ("kitchen", "kitchen-hot"):
        assert parts[name].safe is safe
        assert "measured" in {e.kind for e in parts[name].evidence}
    assert parts["kitchen-cold"].safe is True


def test_a_reading_without_a_place_is_of_the_last_tap() -> None:
    """Guards the plan's own reading step, which says: what came last from a tap."""
    weak = {"kind": "glycol share", "value": 10.0, "unit": "%"}
    assert bad(proved(events(**{"take-reading": {"reading": weak}}))) == {"kitchen", "kitchen-hot"}


JUG = "draw-from-jug:jug-valve"


def shown(value: float, **more: Any) -> Event:
    """Give a reading in per cent by a zeroed refractometer."""
    fields = {"unit": "%", "instrument": "refractometer", "zeroed": True, **more}
    return {"reading": {"kind": "glycol share", "value": value, **fields}}


@pytest.mark.parametrize(("value", "verdict"), [(36.0, "safe"), (34.0, "safe"), (25.0, "gap")])
def test_a_weak_jug_takes_every_claim_it_filled(value: float, verdict: str) -> None:
    """Guards that nothing is called safe by the printed share of a jug that was read weaker."""
    printed, done = proved(events()), proved(events(**{JUG: shown(value)}))
    assert done.plan.verdict == verdict
    assert done.plan.antifreeze.p50 == pytest.approx(printed.plan.antifreeze.p50)
    for before, after in zip(printed.plan.parts, done.plan.parts, strict=True):
        if before.claim == "filled":
            assert any(e.key.startswith("jug ") for e in after.evidence), after.id
        if verdict == "gap" and before.claim == "filled" and before.pocket == "open":
            assert after.safe is False, after.id
            # 25 % less two hundredths, of 35 %: thinned as the printed product was.
            assert after.worst.glycol == pytest.approx(before.worst.glycol * 23.0 / 35.0, rel=1e-2)


def test_a_jug_of_water_is_a_gap() -> None:
    """Guards the weakest jug there can be."""
    done = proved(events(**{JUG: shown(0.0)}))
    assert done.plan.verdict == "gap"


def test_an_outlet_is_compared_with_the_jug_read_later() -> None:
    """Guards that a jug's reading counts wherever it stands, also one that says it is the jug's."""
    both = {HOT: shown(33.0), "take-reading": shown(45.0, of="jug")}
    assert bad(proved(events(**both))) == {"kitchen", "kitchen-hot"}
    assert not bad(proved(events(**{HOT: shown(33.0)})))


def test_a_gauge_at_the_jug_is_no_reading_of_the_jug() -> None:
    """Guards that a pressure taken while the jug is opened stands at its part."""
    gauge = {"reading": {"kind": "pressure", "value": 45.0, "unit": "psi", "instrument": "gauge"}}
    done = proved(events(**{JUG: gauge}))
    told = {e.key: part.id for part in done.plan.parts for e in part.evidence}
    assert "reading pressure" in told
    assert not any(key.startswith("jug ") for key in told)
    assert not bad(done)


def test_a_reading_never_saves_what_was_skipped() -> None:
    """Guards that a good reading carries no claim further than the engine does."""
    good = {"kind": "glycol share", "value": 35.0, "unit": "%"}
    done = proved(events(**{HOT: {"result": "skipped", "reading": good}}))
    assert "kitchen" in bad(done)
