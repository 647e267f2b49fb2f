"""``plan --method``, ``methods`` and ``antifreeze``, as other programs see them."""

from pathlib import Path

import pytest

from tests.doors.door import CARD, PLAN_KEYS, SHOP, Door
from tests.doors.test_plan import unexplained
from wintertight.procedure.methods.table import FIRST_AID, METHODS

SMALL = CARD.with_name("small-trailer.toml")
METHOD_KEYS = {"method", "verdict", "antifreeze_m3", "duration_s", "cost", "gaps", "why"}


@pytest.mark.parametrize("method", METHODS)
def test_every_method_gives_the_same_object(door: Door, method: str) -> None:
    """Guards the contract's keys for every method, and that no null is without its reason."""
    found = door("plan", SMALL, "--method", method, "--json").object()
    assert found.keys() >= PLAN_KEYS
    assert found["method"] == method
    assert not list(unexplained(found))
    assert all(step["if_missed"]["outcome"] for step in found["steps"])
    assert found["refused"] == []
    assert ("hold" in found) is (method == "hold")


@pytest.mark.parametrize("method", METHODS)
def test_every_method_has_its_sheet(door: Door, tmp_path: Path, method: str) -> None:
    """Guards that the job sheet of every method is written."""
    sheet = tmp_path / f"{method}.pdf"
    done = door("plan", SMALL, "--method", method, "--quick", "--pdf", sheet)
    assert done.status == 0, done.err
    assert sheet.read_bytes().startswith(b"%PDF")


def test_methods_are_compared_best_first(door: Door) -> None:
    """Guards the contract of the comparison."""
    found = door("methods", SMALL, "--json").object()
    assert found["schema"] == "wintertight/methods/1"
    methods = found["methods"]
    assert {m["method"] for m in methods} == set(METHODS) - FIRST_AID
    assert all(m.keys() >= METHOD_KEYS for m in methods)
    rank = {"safe": 0, "unproven": 1, "gap": 2}
    ranks = [rank[m["verdict"]] for m in methods]
    assert ranks == sorted(ranks)
    assert all(m["cost"].keys() == {"amount", "currency"} for m in methods)
    assert not list(unexplained(found))


def test_what_cannot_be_planned_comes_last_and_says_why(door: Door, tmp_path: Path) -> None:
    """Guards a coach without a city inlet: three methods are not possible there."""
    text = SMALL.read_text(encoding="utf-8")
    blocks = [b for b in text.split("\n\n") if 'id = "city-inlet"' not in b]
    blocks = [b for b in blocks if '"city-inlet"' not in b]
    card = tmp_path / "card.toml"
    kept = "\n\n".join(blocks).replace("absent = [", 'absent = ["city inlet", ')
    card.write_text(kept, encoding="utf-8")
    methods = door("methods", card, "--json", "--shop", SHOP).object()["methods"]
    last = [m["method"] for m in methods if m["verdict"] is None]
    assert set(last) == {"hand-pump", "air", "air-then-pump"}
    assert [m["method"] for m in methods[-3:]] == last
    assert all("city inlet" in m["why_null"]["verdict"] for m in methods[-3:])


def test_the_screen_names_every_method(door: Door) -> None:
    """Guards the table on the screen."""
    done = door("methods", SMALL)
    assert done.status == 0
    for words in ("blow-out, then antifreeze", "drain only", "freeze hold", "by hand pump"):
        assert words in done.out


def test_antifreeze_is_judged_best_first(door: Door) -> None:
    """Guards the list of products, and that no null is without its reason."""
    found = door("antifreeze", SMALL, "--json", "--shop", SHOP).object()
    answers = [p["answer"] for p in found["products"]]
    order = ["suits", "unproven", "does not suit", "refused"]
    assert answers == sorted(answers, key=order.index)
    assert "suits" in answers
    assert not list(unexplained(found))


def test_no_antifreeze_for_the_deepest_cold(door: Door) -> None:
    """Guards that a list without a suitable product says so and is no error."""
    done = door("antifreeze", SMALL, "--low", "-75F")
    assert done.status == 0
    assert "No antifreeze of the list is shown to suit" in done.out


def test_the_compressor_of_the_list_is_used(door: Door, tmp_path: Path) -> None:
    """Guards the list's compressor: a weak one clears less, and one above 50 psi is refused."""
    text = SHOP.read_text(encoding="utf-8").partition("[compressor]")[0]
    weak, wild = tmp_path / "weak.toml", tmp_path / "wild.toml"
    table = '[compressor]\nreceiver = "1 gal"\ndelivery = "0.2 cfm"\nregulator = "5 psi"\n'
    weak.write_text(text + table, encoding="utf-8")
    wild.write_text(text + table.replace("5 psi", "90 psi"), encoding="utf-8")
    plan = ("plan", SMALL, "--method", "air", "--quick", "--json", "--shop")
    usual, less = door(*plan, SHOP).object(), door(*plan, weak).object()
    assert _swept(usual) > _swept(less)
    door(*plan, wild).refused("WT-100", "compressor.regulator", "50 psi")


def _swept(found: dict[str, object]) -> int:
    parts = found["parts"]
    assert isinstance(parts, list)
    return sum(part["claim"] == "swept" for part in parts)


def test_what_was_used_since_is_told(door: Door) -> None:
    """Guards the object of a coach that was used: what is void, and the shorter plan."""
    found = door("plan", CARD, "--since", "kitchen.cold", "--jug", "toilet", "--json").object()
    assert found["since"]["ran"] == ["kitchen.cold"]
    assert found["since"]["flushed"] == ["black-tank"]
    assert found["since"]["verdict"] == "gap"
    assert "kitchen-cold" in found["since"]["voided"]
    assert found["verdict"] == "safe"
    assert not list(unexplained(found))


@pytest.mark.parametrize(
    ("code", "arguments", "words"),
    [
        ("WT-100", ("--method", "air", "--regulator", "60 psi"), ("--regulator:", "50 psi")),
        ("WT-110", ("--method", "air", "--regulator", "60"), ("--regulator:", "unit")),
        ("WT-110", ("--method", "hold", "--start", "50"), ("--start:", "unit")),
    ],
)
def test_a_wrong_quantity_is_one_line(
    door: Door, code: str, arguments: tuple[str, ...], words: tuple[str, ...]
) -> None:
    """Guards pressures and temperatures of the options: with their unit, and within bounds."""
    door("plan", SMALL, *arguments).refused(code, *words)
