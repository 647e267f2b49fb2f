"""The plan for programs keeps to its contract."""

import json
import math
from collections.abc import Callable, Iterator
from typing import Any

import pytest

import wintertight
from tests.unit.documents.demo_plans import COLD, WARM, demo_card, doubtful_plan, plan_of
from wintertight.documents.plan_json import plan_object
from wintertight.procedure.plan import Plan

BAND = {"p05", "p50", "p95"}
TOP = {
    "schema", "engine", "card_hash", "coach", "method", "design_low_degC", "verdict",
    "antifreeze_m3", "antifreeze_buy", "duration_s", "steps", "parts", "gaps", "look_at",
    "refused", "balance", "sources",
}  # fmt: skip
STEP = {
    "id", "n", "action", "part", "setting", "text", "why", "cautions", "volume_m3",
    "to_colour_s", "run_on_s", "telling", "if_missed",
}  # fmt: skip
PART = {
    "id", "kind", "name", "volume_m3", "contents", "worst", "freezing_point_degC",
    "ice_fraction_at_low", "pocket", "claim", "safe", "evidence", "reason",
}  # fmt: skip
CLAIMS = {"filled", "drained", "swept", "kept warm", "removed", "unproven"}

PLANS: list[Callable[[], Plan]] = [
    plan_of,
    lambda: plan_of(missed=True),
    lambda: plan_of("Heron spirit -50", COLD),
    doubtful_plan,
]


def objects(value: object) -> Iterator[dict[str, Any]]:
    """Give every object inside a value."""
    if isinstance(value, dict):
        yield value
        for inner in value.values():
            yield from objects(inner)
    if isinstance(value, list):
        for inner in value:
            yield from objects(inner)


@pytest.mark.parametrize("made", PLANS)
def test_every_promised_key_is_there(made: Callable[[], Plan]) -> None:
    """Guards the keys that programs outside rely on."""
    made_object = plan_object(made())
    assert set(made_object) >= TOP
    assert set(made_object["coach"]) == {"id", "name"}
    assert set(made_object["antifreeze_m3"]) == set(made_object["duration_s"]) == BAND
    assert set(made_object["antifreeze_buy"]) == {"product", "container_m3", "count", "spare"}
    assert set(made_object["balance"]) == {"in_m3", "out_m3", "held_m3", "relative_error"}
    assert all(set(s) >= STEP for s in made_object["steps"])
    assert all(set(p) >= PART for p in made_object["parts"])
    assert made_object["schema"] == "wintertight/plan/1"
    assert made_object["engine"] == wintertight.__version__


@pytest.mark.parametrize("made", PLANS)
def test_it_is_plain_data(made: Callable[[], Plan]) -> None:
    """Guards that the object comes back from JSON as it went in, without a nan."""
    made_object = plan_object(made())
    assert json.loads(json.dumps(made_object, allow_nan=False)) == made_object


@pytest.mark.parametrize("made", PLANS)
def test_every_null_has_its_reason(made: Callable[[], Plan]) -> None:
    """Guards that a value that cannot be said stands beside why, and no reason stands alone."""
    for some in objects(plan_object(made())):
        nulls = {k for k, v in some.items() if v is None}
        assert nulls == set(some.get("why_null", {}))


@pytest.mark.parametrize("made", PLANS)
def test_parts_agree_with_the_verdict(made: Callable[[], Plan]) -> None:
    """Guards that shares fill each part, that only the proven is safe, and that lists agree."""
    plan = made()
    made_object = plan_object(plan)
    for part in made_object["parts"]:
        for shares in (part["contents"], part["worst"]):
            assert math.isclose(sum(shares.values()), 1.0, abs_tol=1e-9)
            assert set(shares) == {"water", "glycol", "ethanol", "rated", "air"}
        assert part["claim"] in CLAIMS
        assert part["safe"] is (part["claim"] != "unproven")
        assert ("settle" in part) is not part["safe"]
    gaps = made_object["gaps"]
    assert (made_object["verdict"] == "gap") is bool(gaps)
    assert (made_object["verdict"] == "safe") is all(p["safe"] for p in made_object["parts"])
    names = {p["id"] for p in made_object["parts"]}
    assert set(gaps) | set(made_object["look_at"]) <= names
    assert [s["n"] for s in made_object["steps"]] == list(range(1, len(plan.steps) + 1))


def test_outlets_carry_their_seconds() -> None:
    """Guards that each outlet that is run says when colour comes and how long to run on."""
    steps = plan_object(plan_of())["steps"]
    runs = [s for s in steps if s["action"] == "run outlet"]
    assert len(runs) == 12
    assert all(s["to_colour_s"] >= 0 and s["run_on_s"] >= 3 and s["volume_m3"] > 0 for s in runs)
    cups = [s for s in steps if s["action"] == "pour a cup"]
    assert all(math.isclose(s["volume_m3"], 0.25e-3) for s in cups)


def test_a_missed_step_says_what_comes_of_it() -> None:
    """Guards the cost of a step left out, in numbers and in words."""
    steps = {s["action"]: s for s in plan_object(plan_of(missed=True))["steps"]}
    missed = steps["plug out"]["if_missed"]
    assert missed["outcome"] == "gap"
    assert "heater" in missed["parts"]
    assert missed["water_m3"] > 0.02
    assert missed["text"].startswith("Left out, water heater would burst")
    assert steps["heat off"]["if_missed"]["hazard"] == "heater drained while heated"


def test_sources_follow_the_product() -> None:
    """Guards that a plan cites the table of the antifreeze it uses, and not of the other."""
    pink = " ".join(plan_object(plan_of())["sources"])
    spirit = " ".join(plan_object(plan_of("Heron spirit -50", COLD))["sources"])
    assert "ASHRAE" in pink
    assert "Lange" not in pink
    assert "Lange" in spirit
    assert "F876" in pink


def test_it_names_the_card_and_the_cold() -> None:
    """Guards that a plan can be traced to its card and its design low."""
    made_object = plan_object(plan_of())
    assert made_object["card_hash"] == demo_card().card_hash
    assert made_object["design_low_degC"] == WARM


def test_warnings_come_as_sentences() -> None:
    """Guards that a program is told what the screen and the sheet warn of."""
    assert plan_object(plan_of())["warnings"] == []
    (weak,) = plan_object(plan_of("Heron spirit -50", COLD))["warnings"]
    assert weak == "Heron spirit -50, even undiluted, is not shown to protect to -31 °F."
