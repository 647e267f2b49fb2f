"""What every test may use: the `published` check, and the house's settings for hypothesis."""

import json
import math
import os
import signal
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings

Published = Callable[..., None]

ROWS = pytest.StashKey[list[dict[str, object]]]()
SKIPPED = pytest.StashKey[list[str]]()

# A shared machine is no stopwatch, and a test that fails must fail again on the next run.
settings.register_profile("house", deadline=None, derandomize=True, max_examples=60)
settings.load_profile("house")

# A shell that starts the tests in the background lets them, and every program they start, ignore
# Ctrl-C; tests of Ctrl-C must not hang on how they were started.
if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
    signal.signal(signal.SIGINT, signal.default_int_handler)


def half_last_digit(printed: str) -> float:
    """Give half of the last digit of a number as printed: "0.350" -> 0.0005, "12" -> 0.5."""
    exponent = Decimal(printed).as_tuple().exponent
    if not isinstance(exponent, int):
        message = f"no finite number is printed in {printed!r}"
        raise TypeError(message)
    return 0.5 * 10.0**exponent


@pytest.fixture
def published(record_property: Callable[[str, object], None]) -> Published:
    """Give the check of one number of ours against one that stands in print or another engine.

    Use::

        def test_water_grows(published):
            "Guards the growth of water on freezing against the printed densities."
            published("crc", "growth of water on freezing [%]", "9.07", 100 * growth)

    The check asserts, and puts a row on docs/accuracy.md.
    """

    def check(  # noqa: PLR0913, PLR0917 - one row of the page has this many columns
        source_key: str,
        what: str,
        theirs: str,
        ours: float,
        tolerance: float | None = None,
        why: str = "",
        place: str = "",
    ) -> None:
        """Compare, and record a row.

        Args:
            source_key: a key of wintertight.sources.SOURCES.
            what: the quantity, its conditions and [unit].
            theirs: the value exactly as printed, e.g. "0.350".
            ours: what the package says.
            tolerance: largest difference allowed; half the last printed digit if not given.
            why: reason of a tolerance wider than half the last printed digit.
            place: table, page or equation in the source.
        """
        from wintertight.sources import SOURCES  # noqa: PLC0415 - collected late on purpose

        half = half_last_digit(theirs)
        allowed = half if tolerance is None else tolerance
        assert source_key in SOURCES, f"no source is called {source_key!r}"
        assert allowed <= half * (1 + 1e-9) or why, f"{what}: a wider tolerance needs its reason"
        difference = float(ours) - float(theirs)
        row = {
            "source": source_key,
            "place": place,
            "what": what,
            "theirs": theirs,
            "ours": float(ours),
            "difference": difference,
            "tolerance": allowed,
            "why": why,
        }
        record_property("accuracy", json.dumps(row))
        assert math.isfinite(difference), f"{what}: ours is {ours}"
        assert abs(difference) <= allowed * (1 + 1e-9), (
            f"{what}: printed {theirs}, ours {ours:.6g}, allowed +- {allowed:g} ({source_key})"
        )

    return check


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add the option that keeps the rows of the accuracy page."""
    parser.addoption("--accuracy", metavar="FILE", help="write the published checks to FILE (JSON)")


def pytest_configure(config: pytest.Config) -> None:
    """Start empty lists."""
    config.stash[ROWS] = []
    config.stash[SKIPPED] = []


class _Collector:
    """Collects what the tests report; in a parallel run it stands in the controlling process."""

    def __init__(self, config: pytest.Config) -> None:
        self.config = config

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Take the rows of one finished test, and note whether it was skipped."""
        if report.skipped:
            self.config.stash[SKIPPED].append(report.nodeid)
        if report.when == "call":
            rows = [json.loads(str(v)) for name, v in report.user_properties if name == "accuracy"]
            self.config.stash[ROWS].extend(rows)


def pytest_sessionstart(session: pytest.Session) -> None:
    """Set the collector to work."""
    session.config.pluginmanager.register(_Collector(session.config), "accuracy-collector")


@pytest.hookimpl(trylast=True)
def pytest_sessionfinish(session: pytest.Session) -> None:
    """Write the rows if asked, and let no skipped test pass where none may be skipped."""
    config: Any = session.config
    if hasattr(config, "workerinput"):
        return
    target = config.getoption("--accuracy")
    if target:
        rows = sorted(config.stash[ROWS], key=lambda r: (r["source"], r["place"], r["what"]))
        Path(target).parent.mkdir(parents=True, exist_ok=True)
        Path(target).write_text(json.dumps(rows, indent=1) + "\n", encoding="utf-8")
    if os.environ.get("WINTERTIGHT_NO_SKIPS") and config.stash[SKIPPED]:
        session.exitstatus = pytest.ExitCode.TESTS_FAILED
