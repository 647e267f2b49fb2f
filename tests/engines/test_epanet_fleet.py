"""Every coach of the demo against EPANET 2.3: flows and fronts with each outlet open in turn."""

from pathlib import Path

import numpy as np
import pytest

from tests.conftest import Published
from tests.engines.coach_twin import WATER_M2_S, crossed_s, fallen_out, fronts_there
from tests.engines.epanet_twin import crossing_time, epanet_flow
from tests.engines.fleet import CARDS, drawing
from wintertight.flow.hydraulics import passes, pipe_network, steady_flow
from wintertight.flow.state import with_outlet_open

AGREEMENT = 1e-4  # of the largest flow
FRONT_S = 0.1
LONGEST_S = 600.0
OUTLETS = [
    pytest.param(path, outlet, id=f"{path.stem}:{outlet}")
    for path in CARDS
    for outlet in drawing(path).outlets
]


@pytest.mark.parametrize(("path", "outlet"), OUTLETS)
def test_flows_agree_in_every_coach(path: Path, outlet: str, tmp_path: Path) -> None:
    """Guards every flow in every coach, outlet by outlet, against another engine's."""
    here = drawing(path)
    state = with_outlet_open(here.coach, here.state, outlet)
    theirs = epanet_flow(pipe_network(here.coach), passes(here.coach, state), WATER_M2_S, tmp_path)
    ours = steady_flow(here.coach, state, friction="epanet", viscosity_m2_s=WATER_M2_S)
    largest = np.abs(ours.flow_m3_s).max()
    assert largest > 1e-5
    assert np.abs(theirs.flow_m3_s - ours.flow_m3_s).max() <= AGREEMENT * largest


@pytest.mark.parametrize(("path", "outlet"), OUTLETS)
def test_fronts_agree_in_every_coach(
    path: Path, outlet: str, tmp_path: Path, published: Published
) -> None:
    """Guards the seconds until the jug's content stands at an outlet, in plug flow."""
    here = drawing(path)
    state = with_outlet_open(here.coach, here.state, outlet)
    seen = fallen_out(here.coach, state, outlet, LONGEST_S)
    ours = crossed_s(seen, LONGEST_S)
    assert 1.0 < ours < LONGEST_S
    times, shares = fronts_there(
        here.coach, state, outlet, ours + 3.0, tmp_path, source=here.source
    )
    theirs = crossing_time(times, shares, 0.5)
    published(
        "epanet",
        f"seconds to {outlet} of {path.stem} [s]",
        f"{theirs:.2f}",
        ours,
        tolerance=FRONT_S,
        why="asked for by the design; a bay cannot time finer",
        place="version 2.3.5",
    )
