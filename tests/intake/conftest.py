"""What the tests of the talk share: an adviser who types, and a clerk who takes the answers."""

import io
import json
import sys
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest

from tests.doors.door import Done, Door
from wintertight.cli import intake
from wintertight.coach.intake.answers import Answers


@dataclass
class Clerk:
    """Takes what a card is to be made from, and writes it down instead of a card."""

    taken: list[tuple[Answers, str, str, str | None]] = field(default_factory=list)

    def __call__(self, answers: Answers, card_id: str, name: str, site: str | None) -> str:
        """Take the answers of one coach."""
        self.taken.append((answers, card_id, name, site))
        return f'id = "{card_id}"\n'


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


@pytest.fixture
def clerk(monkeypatch: pytest.MonkeyPatch) -> Clerk:
    """Put a clerk where cards are made, so that the talk is tested by itself."""
    clerk = Clerk()
    monkeypatch.setattr(intake, "card_of", clerk)
    return clerk
