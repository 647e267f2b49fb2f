import json
import os
import pty
import signal
import subprocess
import time
from pathlib import Path
from typing import Any

import pytest

from tests.architecture.tree import PACKAGE
from tests.doors.door import PROGRAM, Door
from wintertight.cli import fleet
from wintertight.cli.main import STOPPED

CARDS = PACKAGE / "demo" / "cards"
GOOD = ("on-demand-van.toml", "small-trailer.toml")
SAME_AS_PLAN = (
    "card_hash", "coach", "design_low_degC", "verdict", "antifreeze_m3", "antifreeze_buy",
    "duration_s", "gaps", "unproven",
)  # fmt: skip


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Give a folder with the two smallest cards, the shop's list, and what is no card."""
    cards = tmp_path / "cards"
    cards.mkdir()
    for name in GOOD:
        (cards / name).write_bytes((CARDS / name).read_bytes())
    (cards / "shop.toml").write_bytes((PACKAGE / "demo" / "shop.toml").read_bytes())
    (cards / "notes.txt").write_text("call back on Monday", encoding="utf-8")
    (cards / ".draft.toml").write_text("half a card", encoding="utf-8")
    (cards / "old.toml").mkdir()
    return cards


def without_workers(found: dict[str, Any]) -> dict[str, Any]:
    """Give an object without the number of workers."""
    return {key: value for key, value in found.items() if key != "workers"}


def test_each_coach_is_what_its_plan_says(door: Door, folder: Path) -> None:
    """Guards that a folder's object has its cards by name, each with the values of its own plan."""
    found = door("fleet", folder, "--json", "--strict").object()
    assert found["schema"] == "wintertight/fleet/1"
    assert [coach["file"] for coach in found["coaches"]] == list(GOOD)
    for coach in found["coaches"]:
        plan = door("plan", folder / coach["file"], "--quick", "--json").object()
        for key in SAME_AS_PLAN:
            # Sums of another process may differ in the last digit, by where its arrays lie.
            numbers = isinstance(plan[key], dict) and key in {"antifreeze_m3", "duration_s"}
            assert coach[key] == (pytest.approx(plan[key], rel=1e-12) if numbers else plan[key])
        assert found["shop"] == plan["shop"] | {"list": str(folder / "shop.toml")}
    totals = found["totals"]
    assert [totals[key] for key in ("coaches", "failed", "safe", "gap", "unproven")] == [
        2, 0, 2, 0, 0,
    ]  # fmt: skip
    assert (found["failed"], found["compiled"]) == ([], False)


def test_a_bad_card_stops_no_other(door: Door, folder: Path) -> None:
    """Guards the row of a bad card, the plans beside it, and that any number of workers agrees."""
    (folder / "bad.toml").write_text("id = 1\n", encoding="utf-8")
    several, one = (door("fleet", folder, "--workers", n, "--json", "--strict") for n in "21")
    assert (several.status, several.err) == (2, "")
    assert (one.status, one.err) == (2, "")
    found, again = (json.loads(done.out) for done in (several, one))
    assert (found["workers"], again["workers"]) == (2, 1)
    assert without_workers(found) == without_workers(again)
    assert [coach["file"] for coach in found["coaches"]] == list(GOOD)
    (failed,) = found["failed"]
    alone = door("plan", folder / "bad.toml")
    assert failed["file"] == "bad.toml"
    assert alone.err == f"{failed['code']} {failed['message']}\n"


def test_strict_is_three_unless_all_are_safe(door: Door, folder: Path) -> None:
    """Guards the exit status that scripts act upon, and the rows and totals on the screen."""
    (folder / GOOD[0]).unlink()
    cold = door("fleet", folder, "--low=-49F", "--strict", "--units", "metric")
    assert (cold.status, cold.err) == (3, "")
    heading, row, *_ = cold.out.splitlines()
    assert heading.split() == ["Coach", "Antifreeze", "Work", "Jugs", "Verdict"]
    assert row.startswith("HL-118 Small trailer")
    assert row.endswith("would burst")
    assert "    1  with a part that would burst\n" in cold.out


@pytest.mark.parametrize(
    ("arguments", "code", "words"),
    [
        (("--workers", "many"), "WT-100", "--workers"),
        (("--workers", "0"), "WT-100", "--workers"),
        (("--low", "-20"), "WT-110", "--low: expected a temperature"),
        (("--product", "Heron pnk"), "WT-140", "--product: "),
        (("--shop", "none.toml"), "WT-101", "none.toml"),
        (("--language", "de"), "WT-140", "--language"),
    ],
)
def test_a_wrong_option_is_one_line(
    door: Door, folder: Path, arguments: tuple[str, ...], code: str, words: str
) -> None:
    """Guards that what is wrong for all cards is told once and before any work."""
    door("fleet", folder, *arguments).refused(code, words)


def test_what_is_no_folder_of_cards_is_one_line(door: Door, tmp_path: Path) -> None:
    """Guards a folder without a card, a file in its place, and one that is not there."""
    (tmp_path / "shop.toml").write_text("", encoding="utf-8")
    door("fleet", tmp_path).refused("WT-100", str(tmp_path), "no card", ".toml")
    door("fleet", tmp_path / "shop.toml").refused("WT-101", "expected a folder")
    door("fleet", tmp_path / "none").refused("WT-101", "no such folder")
    door("fleet", "").refused("WT-101", "no such folder")


def test_the_list_that_is_named_is_no_card(folder: Path) -> None:
    """Guards that a list of another name, lying among the cards, is not planned."""
    (folder / "prices.toml").write_text("", encoding="utf-8")
    named = fleet.cards_of(str(folder), str(folder / "prices.toml"))
    assert [card.name for card in named] == list(GOOD)
    assert len(fleet.cards_of(str(folder), None)) == len(GOOD) + 1


def test_compiling_is_asked_for_where_it_pays(
    door: Door, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Guards the rule: as the option says, else for many cards, and never without numba."""
    many = fleet.PAYS_FROM + 1
    monkeypatch.setattr(fleet, "find_spec", lambda _: "found")
    assert fleet.asks_for_compiled(wanted=True, cards=1)
    assert not fleet.asks_for_compiled(wanted=False, cards=many)
    assert [fleet.asks_for_compiled(wanted=None, cards=n) for n in (many - 1, many)] == [
        False,
        True,
    ]
    monkeypatch.setattr(fleet, "find_spec", lambda _: None)
    assert not fleet.asks_for_compiled(wanted=None, cards=many)
    door("fleet", folder, "--compiled").refused(
        "WT-100", "--compiled: ", 'pip install "wintertight[fleet]"'
    )


def test_ctrl_c_is_quiet_and_leaves_no_worker(folder: Path) -> None:
    """Guards that stopping it by hand says nothing, and that every process is gone with it."""
    for number in range(30):
        (folder / f"{number}.toml").write_bytes((CARDS / GOOD[0]).read_bytes())
    running = subprocess.Popen(  # noqa: S603 - our own program
        [PROGRAM, "fleet", folder],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        start_new_session=True,
    )
    time.sleep(1.0)
    os.killpg(running.pid, signal.SIGINT)
    # Both streams end only when the last process that could write to them has ended.
    assert running.communicate(timeout=20.0) == (b"", b"")
    assert running.returncode == STOPPED


def test_a_terminal_is_shown_how_far_it_is(folder: Path) -> None:
    """Guards the bar: on a terminal's error stream, and never among the answer."""
    (folder / GOOD[0]).unlink()
    ours, theirs = pty.openpty()
    done = subprocess.run(  # noqa: S603 - our own program
        [PROGRAM, "fleet", folder, "--json"],
        stdout=subprocess.PIPE,
        stderr=theirs,
        env={**os.environ, "TERM": "xterm"},
        timeout=60,
        check=True,
    )
    os.close(theirs)
    shown = os.read(ours, 100_000)
    os.close(ours)
    assert b"Planning coaches" in shown
    assert done.stdout.startswith(b'{\n "schema": "wintertight/fleet/1"')
