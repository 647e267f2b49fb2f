"""What every line holds at the end, in every coach of the demo, against EPANET's quality run."""

from dataclasses import dataclass, replace
from functools import cache, partial
from pathlib import Path

import numpy as np
import pytest
from epanet import toolkit as en

from tests.conftest import Published
from tests.engines.coach_twin import PINK, WATER_M2_S
from tests.engines.contents_twin import runs_without_rest, shares_there
from tests.engines.epanet_text import LENGTH_TRIM, LITRE_TRIM, TwinText, set_options
from tests.engines.epanet_twin import Opened, must_be_balanced, quietly
from tests.engines.fleet import CARDS, Drawing, drawing
from wintertight.flow import running
from wintertight.flow.actions import Action
from wintertight.flow.held import PlugHeld
from wintertight.flow.hydraulics import steady_flow
from wintertight.flow.replay import replay
from wintertight.flow.state import State, with_outlet_open
from wintertight.flow.stream import RATED, Stream, shares_of
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

SHARE = 0.005
"""How far the mean share of a line may be off [1]."""

MEAN_SHARE = 0.0005
"""How far it may be off in the mean over all lines [1]."""

LINE_M3 = float(np.pi / 4.0 * 0.1**2 * 100.0)
"""A line a hundred metres long and ten centimetres wide [m3]."""

SECONDS = (3.0, 12.0)
"""How long each outlet runs [s]: too short for most lines, and long enough for most."""


@dataclass(frozen=True)
class Comparison:
    """One coach after every outlet ran: shares of what the jug gave, by link, here and there."""

    ours: dict[str, float]
    theirs: dict[str, float]
    stood_still: frozenset[str]

    @property
    def differences(self) -> dict[str, float]:
        """Ours less theirs, by link."""
        return {link: share - self.theirs[link] for link, share in self.ours.items()}


def runs(here: Drawing) -> list[str]:
    """Give every outlet in turn, some of them twice."""
    return runs_without_rest(here.coach, here.state, here.outlets)


def left(here: Drawing, seconds: float) -> State:
    """Give the state after every outlet ran, with the other engine's law of friction."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(running, "steady_flow", partial(steady_flow, friction="epanet"))
        until = Until(seconds=seconds)
        actions = [Action("run", outlet, until=until) for outlet in runs(here)]
        return replay(here.coach, here.state, actions).end


@cache
def compared(path: Path, seconds: float, folder: Path) -> Comparison:
    """Run every outlet of a coach here and there."""
    here = drawing(path).with_one_viscosity()
    end = left(here, seconds)
    states = [with_outlet_open(here.coach, here.state, outlet) for outlet in runs(here)]
    return Comparison(
        ours={link: float(held.mean()[RATED]) for link, held in end.held.items()},
        theirs=shares_there(here.coach, states, seconds, here.source, folder),
        stood_still=frozenset(k for k, treated in end.treated.items() if treated == "as found"),
    )


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Give one folder for all input files."""
    return tmp_path_factory.mktemp("contents")


EACH = pytest.mark.parametrize("seconds", SECONDS)
EVERY_COACH = pytest.mark.parametrize("path", CARDS, ids=lambda path: path.stem)


@EVERY_COACH
@EACH
def test_every_line_ends_with_what_it_holds_there(
    path: Path, seconds: float, folder: Path, published: Published
) -> None:
    """Guards the contents of every line and hollow after every outlet ran for a fixed time."""
    seen = compared(path, seconds, folder)
    apart = {link: abs(difference) for link, difference in seen.differences.items()}
    assert {link: d for link, d in apart.items() if d > SHARE} == {}
    after = f"of {path.stem} after {seconds:g} s at each outlet"
    published(
        "epanet",
        f"largest difference of a share in the {len(apart)} contents {after} [1]",
        "0.000",
        max(apart.values()),
        tolerance=SHARE,
        why="it leaks through shut valves and mixes over its step; see the differences below",
        place="version 2.3.5, quality run",
    )
    published(
        "epanet",
        f"mean difference of a share in the {len(apart)} contents {after} [1]",
        "0.000",
        sum(apart.values()) / len(apart),
        tolerance=MEAN_SHARE,
        why="a tenth of what one line may be off",
        place="version 2.3.5, quality run",
    )


@EVERY_COACH
@EACH
def test_what_stood_still_holds_water_on_both_sides(
    path: Path, seconds: float, folder: Path
) -> None:
    """Guards that nothing reaches a line through which nothing flowed."""
    seen = compared(path, seconds, folder)
    assert seen.stood_still
    for link in seen.stood_still:
        assert seen.ours[link] == 0.0
        assert seen.theirs[link] < SHARE


def test_the_comparison_has_lines_of_every_sort(folder: Path) -> None:
    """Guards the checks above against a job that fills everything, or nothing."""
    shares = np.array(
        [s for p in CARDS for t in SECONDS for s in compared(p, t, folder).ours.values()]
    )
    assert ((shares > 0.02) & (shares < 0.98)).sum() > 50
    assert (shares == 0.0).sum() > 50
    assert (shares > 0.98).sum() > 200


@EVERY_COACH
def test_an_accumulator_changes_nothing_but_its_own_line(path: Path) -> None:
    """Guards that leaving out what EPANET does not know leaves out that line only."""
    here = drawing(path).with_one_viscosity()
    breathers = drawing(path).coach.breathers
    breathing = replace(here, coach=replace(here.coach, breathers=breathers))
    without, with_breath = left(here, 3.0), left(breathing, 3.0)
    changed = {
        link
        for link, held in without.held.items()
        if not np.array_equal(held.mean(), with_breath.held[link].mean())
    }
    assert changed == {breather.line for breather in breathers}


def turned_there(folder: Path, *, with_a_rest: bool) -> float:
    """Fill three quarters of a line from its left, push half of it back out, by EPANET."""
    text = TwinText()
    for node in ("left", "right"):
        text.add("JUNCTIONS", node, 0.0)
    for node in ("jug", "tank"):
        text.add("RESERVOIRS", node, 10.0)
    text.pipe("from-jug", "jug", "left", 0.01, 0.1)
    text.pipe("line", "left", "right", 100.0, 0.1)
    text.pipe("from-tank", "tank", "right", 0.01, 0.1)
    text.add("QUALITY", "jug", 1.0)
    set_options(text, WATER_M2_S, 180, 60)
    litres_s = 1e3 * LINE_M3 * LENGTH_TRIM / 60.0 * LITRE_TRIM
    to_right, rest, to_left = ("right", 0.75 * litres_s), ("right", 0.0), ("left", 0.5 * litres_s)
    with Opened(text, folder, 1e-6) as project:
        en.openH(project)
        en.openQ(project)
        en.initH(project, en.NOSAVE)
        en.initQ(project, en.NOSAVE)
        for end, demand in (to_right, rest, to_left) if with_a_rest else (to_right, to_left):
            for node, feeding in (("left", "from-tank"), ("right", "from-jug")):
                index = en.getnodeindex(project, node)
                en.setnodevalue(project, index, en.BASEDEMAND, demand if node == end else 0.0)
                fed = en.getlinkindex(project, feeding)
                en.setlinkvalue(project, fed, en.STATUS, float(node == end))
            quietly(en.runH, project)
            must_be_balanced(project)
            en.runQ(project)
            en.nextH(project)
            en.nextQ(project)
        return float(en.getlinkvalue(project, en.getlinkindex(project, "line"), en.LINKQUAL))


def test_a_line_that_turns_after_a_rest_is_turned_over_there(tmp_path: Path) -> None:
    """Guards the reason why runs are arranged: the other engine then gives up the wrong end."""
    ours = PlugHeld(LINE_M3, shares_of(Contents.all_water()))
    ours.push(Stream.of(0.75 * LINE_M3, shares_of(PINK)), forward=True)
    ours.push(Stream.of(0.5 * LINE_M3, shares_of(Contents.all_water())), forward=False)
    # Three quarters went in and half came back out: a quarter is left, rest or no rest.
    assert float(ours.mean()[RATED]) == pytest.approx(0.25, abs=1e-12)
    assert turned_there(tmp_path, with_a_rest=False) == pytest.approx(0.25, abs=1e-3)
    assert turned_there(tmp_path, with_a_rest=True) == pytest.approx(0.5, abs=1e-3)
