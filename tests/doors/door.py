"""Stands at the command line: runs a command in this process or as its own program."""

import json
import os
import re
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from tests.architecture.tree import PACKAGE
from wintertight.cli.main import main

CARD = PACKAGE / "demo" / "cards" / "middle-travel-trailer.toml"
SHOP = PACKAGE / "demo" / "shop.toml"
PROGRAM = Path(sys.executable).with_name("wintertight")
PLAN_KEYS = {
    "schema", "engine", "card_hash", "coach", "method", "design_low_degC", "verdict",
    "antifreeze_m3", "antifreeze_buy", "duration_s", "steps", "parts", "gaps", "look_at",
    "refused", "balance", "sources",
}  # fmt: skip
"""What the object of a plan, and of a proof, has at its top."""
_LINE = re.compile(r"WT-\d{3} [^\n]+\n")


@dataclass(frozen=True)
class Done:
    """What a command left behind."""

    status: int
    out: str
    err: str

    def object(self) -> dict[str, Any]:
        """Read standard output as one JSON object; nan and infinity are refused."""
        assert self.status in {0, 3}, self.err
        assert self.err == ""
        found = json.loads(self.out, parse_constant=_refuse)
        assert isinstance(found, dict)
        return found

    def refused(self, code: str, *words: str, status: int = 2) -> None:
        """Assert one line on standard error with these words, and nothing on standard output."""
        assert (self.status, self.out) == (status, ""), self
        assert _LINE.fullmatch(self.err), self.err
        assert self.err.startswith(f"{code} "), self.err
        assert not [word for word in words if word not in self.err], self.err


def _refuse(constant: str) -> None:
    message = f"{constant} is no JSON"
    raise AssertionError(message)


class Door:
    """Runs commands in this process."""

    def __init__(self, capsys: pytest.CaptureFixture[str]) -> None:
        """Take the fixture that catches both streams."""
        self._capsys = capsys

    def __call__(self, *arguments: str | Path) -> Done:
        """Run one command."""
        self._capsys.readouterr()
        status = main([str(argument) for argument in arguments])
        caught = self._capsys.readouterr()
        return Done(status, caught.out, caught.err)


def as_program(*arguments: str | Path, **surroundings: str) -> Done:
    """Run one command through the real entry, as its own program."""
    done = subprocess.run(  # noqa: S603 - our own program
        [PROGRAM, *map(str, arguments)],
        capture_output=True,
        env={**os.environ, **surroundings},
        timeout=60,
        check=False,
    )
    return Done(done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8"))
