"""A time budget for each folder of tests; a run that overdraws one fails.

Loaded by pytest through ``-p tests.budgets``; the budgets stand in pyproject.toml, in the table
``tool.wintertight.budgets``. A folder without a line there has no right to exist, so it fails too.
"""

import tomllib
from collections.abc import Mapping
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]


def budgets() -> dict[str, float]:
    """Read seconds by test folder from pyproject.toml."""
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    table = settings["tool"]["wintertight"]["budgets"]
    return {folder: float(seconds) for folder, seconds in table.items()}


def folder_of(nodeid: str) -> str | None:
    """Give the folder below tests/ that a test stands in, or None for an example in src/."""
    parts = nodeid.split("::", maxsplit=1)[0].split("/")
    return parts[1] if parts[0] == "tests" and len(parts) > 2 else None


def overdrawn(spent: Mapping[str, float], allowed: Mapping[str, float]) -> list[str]:
    """Say which folders took longer than they may, or have no budget, one sentence each."""
    found = []
    for folder, seconds in sorted(spent.items()):
        if folder not in allowed:
            found.append(f"tests/{folder} has no budget in pyproject.toml")
        elif seconds > allowed[folder]:
            found.append(f"tests/{folder} took {seconds:.1f} s of {allowed[folder]:.0f} s")
    return found


class _Clock:
    """Adds up what each folder spends, in the process that reports."""

    def __init__(self) -> None:
        self.spent: dict[str, float] = {}

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Add the seconds of one phase of one test."""
        folder = folder_of(report.nodeid)
        if folder is not None:
            self.spent[folder] = self.spent.get(folder, 0.0) + report.duration

    @pytest.hookimpl(trylast=True)
    def pytest_sessionfinish(self, session: pytest.Session) -> None:
        """Let a run over budget fail."""
        if overdrawn(self.spent, budgets()) and session.exitstatus == pytest.ExitCode.OK:
            session.exitstatus = pytest.ExitCode.TESTS_FAILED

    def pytest_terminal_summary(self, terminalreporter: pytest.TerminalReporter) -> None:
        """Print one line of seconds by folder, and one for each budget overdrawn."""
        if not self.spent:
            return
        allowed = budgets()
        line = ", ".join(
            f"{folder} {seconds:.1f}/{allowed.get(folder, 0):.0f}"
            for folder, seconds in sorted(self.spent.items())
        )
        terminalreporter.write_line(f"seconds of test time / budget: {line}")
        for sentence in overdrawn(self.spent, allowed):
            terminalreporter.write_line(f"OVER BUDGET: {sentence}", red=True)


def pytest_configure(config: pytest.Config) -> None:
    """Start the clock in the reporting process only."""
    if not hasattr(config, "workerinput"):
        config.pluginmanager.register(_Clock(), "folder-budgets")
