"""A talk that is killed, breaks off, turns back, or is given nonsense loses nothing."""

import os
import signal
import subprocess
import sys
import time
from select import select

import pytest

from tests.doors.door import PROGRAM
from tests.intake.conftest import Adviser
from tests.intake.keys import Line, as_typed, script
from tests.intake.test_coaches import BIG_MOTORHOME, BUNKHOUSE, COACHES, OLD_TRAILER, Coach
from wintertight.cli.main import STOPPED

NONSENSE = (
    "", "99", "zzz", "\x00\x1b[31m\u2028", 500 * "x", "27", "1e999 ft", "none 1", "-5",
    "--", "\u00bd", "1 2 3 4 5 6 7 8 9 10 11 12 13 14",
)  # fmt: skip
"""Lines that answer no question there is."""


def until(said: str, program: subprocess.Popen[bytes], seconds: float = 60.0) -> None:
    """Read what a program prints until it has said something."""
    assert program.stdout is not None
    seen, ends = b"", time.monotonic() + seconds
    while said.encode() not in seen:
        ready, _, _ = select([program.stdout], [], [], max(ends - time.monotonic(), 0.0))
        assert ready, seen
        piece = os.read(program.stdout.fileno(), 4096)
        assert piece, seen
        seen += piece


@pytest.mark.skipif(sys.platform == "win32", reason="process groups are killed otherwise there")
@pytest.mark.parametrize(
    ("blow", "status"), [(signal.SIGKILL, -signal.SIGKILL), (signal.SIGINT, STOPPED)]
)
def test_killed_in_the_middle_it_goes_on(
    adviser: Adviser, blow: signal.Signals, status: int
) -> None:
    """Guards that a computer that goes out in the middle, or Ctrl-C, costs no answer."""
    lines = script("bunkhouse")
    program = subprocess.Popen(  # noqa: S603 - our own program
        [PROGRAM, "coach", "new", adviser.card, "--id", "HL-301"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        start_new_session=True,
    )
    assert program.stdin is not None
    program.stdin.write(as_typed(lines[:13]).encode())
    program.stdin.flush()
    until("Question 5 of 21", program)
    os.killpg(program.pid, blow)
    assert program.wait(30) == status
    program.stdin.close()
    if program.stdout is not None:
        program.stdout.close()
    kept = adviser.answers()
    asked_before = {line.to for line in lines[:13]} - {"go on"}
    assert kept == {key: BUNKHOUSE[key] for key in kept}
    assert set(kept) == asked_before
    assert not adviser.card.exists()
    done = adviser.as_program(as_typed(lines[13:]).encode())
    assert (done.status, done.err) == (0, "")
    assert done.out.startswith("Going on with")
    assert adviser.answers() == BUNKHOUSE
    assert adviser.made().id == "HL-301"


def test_at_any_question_it_may_break_off(adviser: Adviser) -> None:
    """Guards that a talk of one line at a time ends as the same talk in one go."""
    lines = script("old-trailer")
    for number, line in enumerate(lines, start=1):
        done = adviser(as_typed([line]))
        if number < len(lines):
            done_so_far = len([one for one in lines[:number] if one.to != "go on"])
            assert done.status == 2
            assert done.err.startswith("WT-100 standard input: ended before a card was written")
            assert len(adviser.answers()) + len(adviser.file()["left_open"]) == done_so_far
            assert not adviser.card.exists()
    assert adviser.answers() == OLD_TRAILER
    assert adviser.made().id == "HL-301"


def test_two_steps_back_and_another_answer(adviser: Adviser) -> None:
    """Guards that going back twice takes two answers back, and the new ones count."""
    lines = script("big-motorhome")
    heater = [line.to for line in lines].index("heater")
    # Answered as a tank; two questions later (outside, bypass) the adviser thinks again.
    wrong = [Line("1", "heater"), Line("2", "outside")]
    keys = as_typed([*lines[:heater], *wrong, Line("<", ""), Line("<", ""), *lines[heater:]])
    assert adviser(keys).status == 0
    assert adviser.answers() == BIG_MOTORHOME
    assert adviser.file()["left_open"] == ["design low", "outside"]
    assert "hydronic coil" in {fitting.kind for fitting in adviser.made().fittings}


def test_back_is_kept_too(adviser: Adviser) -> None:
    """Guards that a talk which breaks off after going back goes on from there."""
    adviser("4\nnone\n<\n<\n")
    assert adviser.file() == {
        "schema": "wintertight/answers/1",
        "answers": {},
        "left_open": [],
        "stage": "phone",
    }
    done = adviser("<\n11\n")
    assert "This is the first question" in done.out
    assert adviser.answers() == {"shape": "rear-engine motorhome"}


@pytest.mark.parametrize("coach", COACHES, ids=str)
def test_nonsense_at_every_question(adviser: Adviser, coach: Coach) -> None:
    """Guards that nothing anybody types is a fault, changes an answer or is taken for one."""
    lines = script(coach.name)
    keys = "".join("".join(f"{bad}\n" for bad in NONSENSE) + as_typed([line]) for line in lines)
    done = adviser(keys)
    assert (done.status, done.err) == (0, "")
    assert adviser.answers() == coach.answers
    assert adviser.made().id == "HL-301"
    assert done.out.count("\nNoted: ") == len(coach.answers)
    # Each question was asked once, however often nonsense was typed at it.
    assert done.out.count("\nQuestion ") == len([one for one in lines if one.to not in CROSSROADS])
    assert "\x1b" not in done.out


CROSSROADS = {"go on", "write"}


def test_help_and_summary_at_every_question(adviser: Adviser) -> None:
    """Guards that asking why, and what is known so far, never moves the talk."""
    lines = script("bunkhouse")
    keys = "".join(f"?\n!\n{line.typed}\n" for line in lines)
    done = adviser(keys)
    assert done.status == 0
    assert adviser.answers() == BUNKHOUSE
    assert done.out.count("Left open: ") == len(lines) - 1
    assert adviser.card.exists()


def test_bytes_that_are_no_letters(adviser: Adviser) -> None:
    """Guards that a keyboard set to another code page costs no answer."""
    done = adviser.as_program(b"\xff\xfe\n4\n")
    assert done.status == 2
    assert done.err.startswith("WT-100 standard input: ")
    assert adviser.answers() == {"shape": "short travel trailer"}
