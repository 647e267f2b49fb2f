"""The proof of what was really done, for every method that winterizes."""

import json

import pytest

from tests.methods.every_plan import CARDS, low_of, plan_of, product_of
from wintertight.errors import RecordError
from wintertight.procedure.as_done import AsDone, prove_record
from wintertight.procedure.methods.table import FIRST_AID, METHODS
from wintertight.procedure.record import read_record

NAME = "small-trailer"
WINTERIZING = [method for method in METHODS if method not in FIRST_AID]


def proved(method: str, *left_out: str) -> AsDone:
    """Prove a record in which every step was done but some."""
    card = CARDS[NAME]
    events = [
        {"id": f"e{n}", "seq": n, "step": p.step.id, "result": _result(p.step.id, left_out)}
        for n, p in enumerate(plan_of(NAME, method).steps)
    ]
    text = json.dumps({"schema": "wintertight/record/1", "method": method, "events": events})
    return prove_record(card, read_record(text), product_of(card), low_of(card))


def _result(step: str, left_out: tuple[str, ...]) -> str:
    return "skipped" if step in left_out else "done"


@pytest.mark.parametrize("method", WINTERIZING)
def test_a_job_done_to_the_letter_proves_its_plan(method: str) -> None:
    """Guards that the record of a plan gives the plan's own proof, whatever the method."""
    plan, done = plan_of(NAME, method), proved(method)
    assert done.plan.method == method
    assert done.plan.verdict == plan.verdict
    assert not done.unknown
    for part, twin in zip(plan.parts, done.plan.parts, strict=True):
        assert (part.id, part.safe, part.claim) == (twin.id, twin.safe, twin.claim)
    assert done.plan.duration.p50 == pytest.approx(plan.duration.p50)


@pytest.mark.parametrize("method", WINTERIZING)
def test_a_step_left_out_never_proves_more(method: str) -> None:
    """Guards the law on every method: a skipped step improves the claim of no part."""
    whole = {p.id: p.safe for p in plan_of(NAME, method).parts}
    rank = {False: 0, None: 1, True: 2}
    for key in ("open low points", "let it drain", "open taps"):
        ids = [p.step.id for p in plan_of(NAME, method).steps if p.step.key == key]
        for part in proved(method, *ids).plan.parts:
            assert rank[part.safe] <= rank[whole[part.id]], (key, part.id)


@pytest.mark.parametrize("method", ["thaw", "prayer"])
def test_first_aid_proves_nothing(method: str) -> None:
    """Guards the words for a record of a method that winterizes nothing."""
    card = CARDS[NAME]
    text = json.dumps({"schema": "wintertight/record/1", "method": method, "events": []})
    with pytest.raises(RecordError, match="expected a method that winterizes"):
        prove_record(card, read_record(text), product_of(card), low_of(card))
