"""Compiled arithmetic against the plain engine, for every coach of the demo, in another process."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.engines.compiled_courses import course_of, replay_of, seen_in
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


def same(here: list[float], there: list[float], what: str) -> None:
    """Hold two rows of numbers against each other; shares [1] are compared as they are."""
    rel, least = (0.0, ROUNDING) if what.startswith("in ") else (ROUNDING, 0.0)
    assert here == pytest.approx(there, rel=rel, abs=least, nan_ok=True), what


def test_it_was_compiled_there_and_not_here(compiled: dict[str, dict[str, list[float]]]) -> None:
    """Guards against comparing the plain engine with itself."""
    assert compiled["compiled"] == {"yes": [1.0]}
    assert not COMPILED


@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_compiled_is_what_the_replay_does(
    path: Path, compiled: dict[str, dict[str, list[float]]]
) -> None:
    """Guards colours, volumes, seconds and contents, with viscosity, laminar lines and vessels."""
    expected, there = seen_in(replay_of(path)), compiled[path.stem]
    for column in ("colour_s", "volume_m3", "seconds"):
        same(there[column], expected[column], column)
    links = [key for key in there if key.startswith("in ")]
    assert links
    for link in links:
        same(there[link], expected[link], link)


@pytest.mark.parametrize("strides", [False, True], ids=["closely", "in strides"])
@pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)
def test_a_compiled_replay_is_a_plain_one(
    path: Path,
    strides: bool,  # noqa: FBT001 - two cases
    compiled: dict[str, dict[str, list[float]]],
) -> None:
    """Guards replays, which compiled programs run through the same arithmetic, stride by stride."""
    expected, there = seen_in(replay_of(path, strides=strides)), compiled[f"{path.stem} {strides}"]
    assert there.keys() == expected.keys()
    for column, numbers in expected.items():
        same(there[column], numbers, column)


@pytest.mark.parametrize("path", CARDS[-2:], ids=lambda path: path.stem)
def test_plain_is_what_the_replay_does(path: Path) -> None:
    """Guards the same source where nothing is compiled."""
    seen, expected = course_of(path), seen_in(replay_of(path))
    same(seen["volume_m3"], expected["volume_m3"], "volume_m3")
