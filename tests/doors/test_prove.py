import json
from pathlib import Path
from typing import Any

import pytest

from tests.doors.door import CARD, PLAN_KEYS, Door
from wintertight.coach.load import load_card


@pytest.fixture(scope="module")
def steps() -> list[str]:
    """Give the ids of the planned steps of the bundled coach, in order."""
    from wintertight.cli.stock import product_for, shop_list  # noqa: PLC0415 - the plan is slow
    from wintertight.procedure.plan import plan_coach  # noqa: PLC0415

    card = load_card(CARD)
    shop, _ = shop_list(None, str(CARD))
    low = card.site.design_low_degC if card.site and card.site.design_low_degC else -20.0
    planned = plan_coach(card, product_for(card, str(CARD), None, shop), low)
    return [step.step.id for step in planned.steps]


def record(tmp_path: Path, steps: list[str], **more: Any) -> Path:
    """Write a record in which these steps were done."""
    events = [
        {"id": f"e{seq}", "seq": seq, "step": step, "result": "done"}
        for seq, step in enumerate(steps, start=1)
    ]
    file = tmp_path / "record.json"
    content = {"schema": "wintertight/record/1", "events": events, **more}
    file.write_text(json.dumps(content), encoding="utf-8")
    return file


def read(reading: dict[str, Any]) -> dict[str, Any]:
    """Give an event with a reading."""
    return {"id": "e", "seq": 1, "step": "take-reading", "result": "done", "reading": reading}


def test_the_keys_are_those_of_the_contract(door: Door, tmp_path: Path, steps: list[str]) -> None:
    """Guards that a proof is the same object as a plan, with what was learned beside it."""
    done = record(tmp_path, steps, card_hash=load_card(CARD).card_hash)
    found = door("prove", CARD, "--done", done, "--strict", "--json").object()
    assert found.keys() >= PLAN_KEYS | {"diagnosis", "learned"}
    assert found["schema"] == "wintertight/plan/1"
    assert all(found[key] is not None or key in found["why_null"] for key in found)
    assert [step["id"] for step in found["steps"]] == steps
    assert found["not_recorded"] == []


def test_what_was_not_recorded_was_not_done(door: Door, tmp_path: Path, steps: list[str]) -> None:
    """Guards that a job broken off is a gap, told by status and by name."""
    done = record(tmp_path, [step for step in steps if not step.startswith("run-outlet")])
    said = door("prove", CARD, "--done", done, "--strict")
    assert said.status == 3
    assert said.out.startswith("NOT protected")
    assert "run-outlet:toilet" in said.out


@pytest.mark.parametrize(
    ("more", "code", "words"),
    [
        ({"card_hash": "sha256:0"}, "WT-130", ("record.json", "card_hash")),
        ({"product": "Heron pnk"}, "WT-140", ("record.json product: ", "Heron pink -50")),
        ({"schema": "wintertight/card/1"}, "WT-130", ("record.json", "schema")),
        ({"events": 5}, "WT-130", ("record.json", "events")),
        (
            {"events": [{"id": "e", "seq": 1, "step": "dance", "result": "done"}]},
            "WT-130",
            ("record.json", "events[e].step", "dance"),
        ),
        (
            {"events": [read({"kind": "glycol share", "value": 31, "instrument": "brixmeter"})]},
            "WT-130",
            ("record.json", "events[e].reading.instrument", "refractometer", "hydrometer"),
        ),
        (
            {"events": [read({"kind": "freeze sample", "value": -18, "unit": "degC"})]},
            "WT-130",
            ("record.json", "events[e].reading.looked", "slush"),
        ),
    ],
)
def test_a_wrong_record_is_one_line(
    door: Door, tmp_path: Path, more: dict[str, Any], code: str, words: tuple[str, ...]
) -> None:
    """Guards that the line names file and field."""
    done = record(tmp_path, [], **more)
    door("prove", CARD, "--done", done, "--json").refused(code, *words)


RECORDS = CARD.parents[1] / "records"


def test_what_a_record_tells_is_in_the_object(door: Door) -> None:
    """Guards the keys of the contract: causes with likelihoods, and a band for each line."""
    good = RECORDS / f"{CARD.stem}-good.json"
    found = door("prove", CARD, "--done", good, "--strict", "--json").object()
    assert found["verdict"] == "safe"
    assert sum(cause["fits"] for cause in found["diagnosis"]) == pytest.approx(1.0)
    assert found["diagnosis"][0]["what"] == "as recorded"
    assert {"what", "fits", "text"} <= found["diagnosis"][0].keys()
    lines = {line.id for line in load_card(CARD).lines}
    assert found["learned"].keys() == lines
    for learned in found["learned"].values():
        band = learned["volume_m3"]
        assert 0.0 < band["p05"] < band["p50"] < band["p95"]
    assert found["next_visit"]["antifreeze_m3"]["p95"] < found["antifreeze_m3"]["p95"] * 1.2


def test_quick_leaves_hindsight_out(door: Door) -> None:
    """Guards that the proof alone is to be had, and says why the rest is missing."""
    bad = RECORDS / f"{CARD.stem}-bad.json"
    found = door("prove", CARD, "--done", bad, "--quick", "--json").object()
    assert found["diagnosis"] is None
    assert found["why_null"]["diagnosis"] == "it was left out, as asked"


def test_a_plan_is_taught_by_earlier_visits(door: Door) -> None:
    """Guards that a record of last fall narrows the gallons of the next plan."""
    good = RECORDS / f"{CARD.stem}-good.json"
    plain = door("plan", CARD, "--quick", "--json").object()
    taught = door("plan", CARD, "--quick", "--earlier", good, "--json").object()
    assert (plain["taught_by"], taught["taught_by"]) == (0, 1)

    def width(found: dict[str, Any]) -> float:
        band = found["antifreeze_m3"]
        return float(band["p95"] - band["p05"])

    assert width(taught) < 0.7 * width(plain)


def test_a_step_may_be_added(door: Door, tmp_path: Path, steps: list[str]) -> None:
    """Guards that a handle turned back at the end is replayed, and no such handle is one line."""
    file = record(tmp_path, steps)
    written = json.loads(file.read_text(encoding="utf-8"))
    more = {"id": "x", "seq": 900, "action": "run", "part": "kitchen.hot", "result": "done"}
    written["events"].append({**more, "run_on_s": 10.0})
    file.write_text(json.dumps(written), encoding="utf-8")
    found = door("prove", CARD, "--done", file, "--json").object()
    assert found["steps"][-1]["id"] == "added:x"
    written["events"][-1] = {**more, "part": "kitchen.hto", "run_on_s": 10.0}
    file.write_text(json.dumps(written), encoding="utf-8")
    words = ("events[x].part", "kitchen.hto", "kitchen.hot")
    door("prove", CARD, "--done", file).refused("WT-130", *words)
