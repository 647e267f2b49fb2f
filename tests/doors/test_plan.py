import math
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from tests.doors.door import CARD, PLAN_KEYS, SHOP, Door, as_program
from wintertight.cli.stock import BUNDLED, shop_list
from wintertight.coach.load import load_card

STEP = {
    "id", "n", "action", "part", "setting", "text", "why", "cautions", "volume_m3", "to_colour_s",
    "run_on_s", "telling", "if_missed",
}  # fmt: skip
PART = {
    "id", "kind", "name", "volume_m3", "contents", "worst", "freezing_point_degC",
    "ice_fraction_at_low", "pocket", "claim", "safe", "evidence", "reason",
}  # fmt: skip
MISSED = {"outcome", "parts", "water_m3"}
OUTCOMES = {"same", "gap", "unproven", "hazard"}
BAND = {"p05", "p50", "p95"}
SHARES = {"water", "glycol", "ethanol", "air"}


def test_the_keys_are_those_of_the_contract(door: Door) -> None:
    """Guards the names that other programs read, at every depth."""
    found = door("plan", CARD, "--json").object()
    assert found.keys() >= PLAN_KEYS
    assert found["schema"] == "wintertight/plan/1"
    assert found["card_hash"] == load_card(CARD).card_hash
    assert found["coach"].keys() >= {"id", "name"}
    assert found["antifreeze_m3"].keys() >= BAND
    assert found["duration_s"].keys() >= BAND
    assert found["antifreeze_buy"].keys() >= {"product", "container_m3", "count", "spare"}
    assert found["balance"].keys() >= {"in_m3", "out_m3", "held_m3", "relative_error"}
    assert [step["n"] for step in found["steps"]] == list(range(1, len(found["steps"]) + 1))
    assert all(step.keys() >= STEP for step in found["steps"])
    assert all(step["if_missed"].keys() >= MISSED for step in found["steps"])
    assert {step["if_missed"]["outcome"] for step in found["steps"]} <= OUTCOMES
    assert all(part.keys() >= PART for part in found["parts"])
    assert all(part[mean].keys() >= SHARES for part in found["parts"] for mean in MEANS)
    assert found["verdict"] in {"safe", "gap", "unproven"}


MEANS = ("contents", "worst")


def unexplained(value: Any, where: str = "") -> Iterator[str]:
    """Give the path of every null without a why_null, and of every number that is not finite."""
    if isinstance(value, dict):
        why = value.get("why_null") or {}
        for key, inner in value.items():
            if inner is None and key not in why:
                yield f"{where}.{key}"
            yield from unexplained(inner, f"{where}.{key}")
    elif isinstance(value, list):
        for place, inner in enumerate(value):
            yield from unexplained(inner, f"{where}[{place}]")
    elif isinstance(value, float) and not math.isfinite(value):
        yield where


def test_every_null_is_explained(door: Door) -> None:
    """Guards that what cannot be said is null with a reason in the same object."""
    found = door("plan", CARD, "--product", "Heron thrift -50", "--quick", "--json").object()
    assert list(unexplained(found)) == []


def test_the_screen_says_the_verdict_first() -> None:
    """Guards the installed program from card to screen."""
    done = as_program("plan", CARD)
    assert (done.status, done.err) == (0, "")
    assert done.out.splitlines()[0].startswith("Protected as planned to")
    assert "bundled example" in done.out


@pytest.mark.parametrize("spelled", [("--low=-20F",), ("--low", "-20F")])
def test_the_low_can_be_given(door: Door, spelled: tuple[str, ...]) -> None:
    """Guards that a minus in front is no option, and the option outranks the card."""
    found = door("plan", CARD, *spelled, "--quick", "--json").object()
    assert found["design_low_degC"] == pytest.approx(-52.0 / 1.8, abs=5e-4)


@pytest.mark.parametrize("low", ["-20", "20", "nan F", "-inf C", "-999C", "cold", "", "--json"])
def test_a_low_without_unit_is_one_line(door: Door, low: str) -> None:
    """Guards that no scale is guessed."""
    door("plan", CARD, "--low", low).refused("WT-110", "--low: expected a temperature", "°F")


def without(line: str, tmp_path: Path) -> Path:
    """Give the bundled card without one of its lines."""
    lines = CARD.read_text("utf-8").splitlines()
    kept = [other for other in lines if not other.startswith(line)]
    assert len(kept) == len(lines) - 1
    card = tmp_path / "card.toml"
    card.write_text("\n".join(kept), encoding="utf-8")
    return card


def test_no_low_anywhere_is_one_line(door: Door, tmp_path: Path) -> None:
    """Guards that a coach without a design low asks for one."""
    card = without("design_low", tmp_path)
    door("plan", card).refused("WT-110", "card.toml site.design_low: ", "--low")
    assert door("plan", card, "--low=-5F").status == 0


def test_strict_is_three_unless_safe(door: Door) -> None:
    """Guards the exit status that scripts act upon, and that the plan is printed all the same."""
    for low, verdict, status in (("-10F", "safe", 0), ("-49F", "gap", 3)):
        found = door("plan", CARD, "--low", low, "--strict", "--quick", "--json")
        assert (found.object()["verdict"], found.status) == (verdict, status)


def test_the_list_beside_the_card_is_taken(door: Door, tmp_path: Path) -> None:
    """Guards the order in which the shop's list is looked for: named, beside the card, bundled."""
    card, named, beside = (tmp_path / f"{name}.toml" for name in ("card", "named", "shop"))
    card.write_bytes(CARD.read_bytes())
    text = SHOP.read_text("utf-8")
    assert shop_list(None, str(card))[1] == BUNDLED
    for file in (named, beside):
        file.write_text(text.replace("Heron Lake Coach Care", file.stem), encoding="utf-8")
    assert shop_list(None, str(card))[0].name == "shop"
    assert shop_list(str(named), str(card))[0].name == "named"
    assert BUNDLED not in door("plan", card).out


def test_all_names_every_part(door: Door) -> None:
    """Guards that the screen can show each part, the good ones too."""
    said = door("plan", CARD, "--all").out.splitlines()
    assert len([line for line in said if line.startswith("  -  ")]) > len(load_card(CARD).lines)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("--product", "Heron pnk"), ("--product:", "Heron pink -50")),
        (("--product", ""), ("--product:", "Heron thrift -50")),
        (("--method", "prayer"), ("'prayer'", "hand-pump")),
        (("--since", "attic"), ("'attic'", "outlet")),
        (("--jug", "filter"), ("'filter'", "jug")),
        (("--since", "kitchen", "--method", "drain"), ("'drain'", "as a whole")),
        (("--warm", "belly"), ("'belly'", "heats")),
        (("--warm", "attic"), ("'attic'", "compartment")),
        (("--language", "de"), ("--language:", "en")),
        (("--units", "cubits"), ("--units:", "metric")),
        (("--paper", "a5"), ("--paper:", "us-letter or a4")),
    ],
)
def test_a_wrong_choice_is_one_line(
    door: Door, arguments: tuple[str, ...], words: tuple[str, ...]
) -> None:
    """Guards that the line names what was wrong and what there is."""
    door("plan", CARD, *arguments, "--json").refused("WT-140", *words)


def test_a_card_without_product_asks_for_one(door: Door, tmp_path: Path) -> None:
    """Guards that antifreeze is never guessed."""
    text = CARD.read_text("utf-8")
    start = text.index("[antifreeze]")
    card = tmp_path / "card.toml"
    card.write_text(text[:start] + text[text.index("[looked_for]") :], encoding="utf-8")
    door("plan", card).refused("WT-140", "antifreeze.product: ", "--product", "Heron blue -100")
