"""Compiled arithmetic against the plain engine, for every coach of the demo, in another process."""

import json
import os
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest

from tests.engines.compiled_courses import course_of, plain_replay
from tests.engines.fleet import CARDS
from wintertight.flow.kernels.compiled import ASKED_BY, COMPILED

ROUNDING = 1e-9


@pytest.fixture(scope="module")
def compiled() -> dict[str, dict[str, list[float]]]:
    """Give what the compiled courses of all coaches gave, by name of the card."""
    done = subprocess.run(
        [sys.executable, "-m", "tests.engines.compiled_courses"],
        env={**os.environ, ASKED_BY: "1"},
        cwd=Path(__file__).parents[2],
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    found: dict[str, dict[str, list[float]]] = json.loads(done.stdout)
    return found


def test_it_was_compiled_there_and_not_here(compiled: dict[str, dict[str, list[float]]]) -> None:
    """Guards against comparing the plain engine with itself."""
    assert compiled["compiled"] == {"yes": [1.0]}
    assert not COMPILED


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_compiled_is_what_the_replay_does(
    path: Path, compiled: dict[str, dict[str, list[float]]]
) -> None:
    """Guards colours, volumes, seconds and contents, with viscosity, laminar lines and vessels."""
    trace = plain_replay(path)
    runs = [m.outcome.run for m in trace.moments if m.outcome.run]
    nan = float("nan")
    expected = {
        "colour_s": [nan if run.first_colour_s is None else run.first_colour_s for run in runs],
        "volume_m3": [run.volume_m3 for run in runs],
        "seconds": [run.seconds for run in runs],
    }
    there = compiled[path.stem]
    for column, numbers in expected.items():
        assert there[column] == pytest.approx(numbers, rel=ROUNDING, nan_ok=True), column
    for link, held in trace.end.held.items():
        if f"in {link}" in there:
            assert np.abs(held.mean() - there[f"in {link}"]).max() < ROUNDING, link
    assert any(key.startswith("in ") for key in there)


@pytest.mark.parametrize("path", CARDS[-2:], ids=lambda path: path.stem)
def test_plain_is_what_the_replay_does(path: Path) -> None:
    """Guards the same source where nothing is compiled."""
    trace = plain_replay(path)
    seen = course_of(path)
    runs = [m.outcome.run for m in trace.moments if m.outcome.run]
    assert seen["volume_m3"] == pytest.approx([run.volume_m3 for run in runs], rel=ROUNDING)
