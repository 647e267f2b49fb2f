"""The talk that the manual shows is the talk of the program."""

import io
import sys
from pathlib import Path

import pytest

from tests.architecture.markdown import blocks, matches
from tests.architecture.tree import ROOT
from tests.doors.door import Door
from tests.intake.keys import Line, as_typed, script


def test_the_talk_of_the_manual(
    door: Door, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Guards that the shown talk is word for word what the half-heard motorhome brings about."""
    page = (ROOT / "docs" / "manual.md").read_text("utf-8")
    (shown,) = (b.text for b in blocks(page) if b.text.startswith("$ wintertight coach new"))
    command, _, talk = shown.partition("\n")
    lines = [
        slip
        for line in script("big-motorhome")
        for slip in (*SLIPS.get(line.to, ()), line)
    ]  # fmt: skip
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(sys, "stdin", io.StringIO(as_typed(lines)))
    done = door(*command.removeprefix("$ wintertight ").split())
    assert (done.status, done.err) == (0, "")
    assert matches(talk, done.out), done.out
    assert not matches(talk.replace("42 ft", "43 ft"), done.out)


SLIPS = {"appliances": (Line("?", ""),), "length": (Line("42", ""),)}
"""What is typed before the answer in the manual: why it matters, and a length without its unit."""
