"""What the tests of the talk share: an adviser who types."""

import io
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from tests.doors.door import PROGRAM, Done, Door
from wintertight.coach.card import Card
from wintertight.coach.load import load_card


class Adviser:
    """Types answers at ``coach new`` in a folder."""

    def __init__(self, door: Door, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
        """Take the door, and the folder in which the card is to be."""
        self._door, self._monkeypatch = door, monkeypatch
        self.card = folder / "coach.toml"
        self.kept = folder / "coach.answers.json"

    def __call__(self, typed: str, *more: str) -> Done:
        """Type at the command until there is no more."""
        self._monkeypatch.setattr(sys, "stdin", io.StringIO(typed))
        return self._door("coach", "new", self.card, "--id", "HL-301", *more)

    def as_program(self, typed: bytes) -> Done:
        """Type at the program itself, through a pipe."""
        done = subprocess.run(  # noqa: S603 - our own program
            [PROGRAM, "coach", "new", self.card, "--id", "HL-301"],
            input=typed,
            capture_output=True,
            timeout=60,
            check=False,
        )
        return Done(done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8"))

    def made(self) -> Card:
        """Read the card that was made."""
        return load_card(self.card)

    def answers(self) -> dict[str, Any]:
        """Give the answers that were kept."""
        found: dict[str, Any] = self.file()["answers"]
        return found

    def file(self) -> dict[str, Any]:
        """Give the file of answers."""
        found: dict[str, Any] = json.loads(self.kept.read_text("utf-8"))
        return found


@pytest.fixture
def door(capsys: pytest.CaptureFixture[str]) -> Door:
    """Give a door to run commands at."""
    return Door(capsys)


@pytest.fixture
def adviser(door: Door, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Adviser:
    """Give an adviser, with an empty folder."""
    return Adviser(door, tmp_path, monkeypatch)
