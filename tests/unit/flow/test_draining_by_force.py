from collections import Counter
from functools import cache

import pytest

from tests.unit.flow.draining_by_force import Force, every_way
from tests.unit.flow.random_plumbing import Plumbing, coach_of, plumbing
from wintertight.flow.draining import Drained, drain_by_gravity

COACHES = 400
"""Coaches drawn at random, each from its own seed."""


@cache
def found(seed: int) -> tuple[Plumbing, Drained]:
    """Give one coach drawn at random and what the product says of it."""
    drawn = plumbing(seed)
    network, state = coach_of(drawn)
    return drawn, drain_by_gravity(network, state, drawn.tilt)


def liquid_m3(drawn: Plumbing, name: str) -> tuple[float, float]:
    """Give what a run can hold, and what liquid is in it at first [m3]."""
    run = next(r for r in drawn.runs if r.name == name)
    full = {"line": 1e-4 * run.length_m, "heater": 2e-2}.get(run.kind, 1e-5)
    return full, full * 0.1 if run.holds_air else full


@pytest.mark.parametrize("first", range(0, COACHES, 50))
def test_one_cell_after_another_runs_empty(first: int) -> None:
    """Guards classes, what stays in each line, and heaters: both passes done the long way."""
    for seed in range(first, first + 50):
        drawn, drained = found(seed)
        careful, hopeful = Force(drawn, careful=True), Force(drawn, careful=False)
        most, least = careful.stays(), hopeful.stays()
        assert ("heater" in drained.emptied) == careful.heater_is_empty(), seed
        if hopeful.heater_is_empty():
            least["heater"] = 0.0
        for name, kind in drained.drainage.items():
            full, liquid = liquid_m3(drawn, name)
            expected = [min(share[name] * full, liquid) for share in (most, least)]
            got = [drained.most_m3[name], drained.least_m3[name]]
            assert got == pytest.approx(expected, abs=1e-9), (seed, name)
            stays = "trapped" if least[name] > 1e-5 else "uncertain"
            assert kind == ("drained" if most[name] < 1e-5 else stays), (seed, name)


def test_small_cells_tell_the_same() -> None:
    """Guards partly wet lines with cells that know no height beforehand: twenty to each piece."""
    for seed in range(1000, 1060):
        drawn, drained = found(seed)
        for careful, stays in ((True, drained.most_m3), (False, drained.least_m3)):
            force = Force(drawn, careful=careful, pieces=20).stays()
            for run in drawn.runs:
                if run.kind == "line" and not run.holds_air:
                    share = stays[run.name] / liquid_m3(drawn, run.name)[0]
                    # One cell of twenty at the water's edge may fall to either side.
                    assert share == pytest.approx(force[run.name], abs=1 / 20), (seed, run)


def test_every_way_out_is_tried() -> None:
    """Guards each spill level against the lowest barrier among all simple ways there are."""
    finite = 0
    for seed in range(COACHES):
        drawn, drained = found(seed)
        for node in drawn.places:
            level = drained.spill_m.get(node, float("inf"))
            assert level == pytest.approx(every_way(drawn, node), abs=1e-9), (seed, node)
            finite += level < float("inf")
    assert finite > 1500


def test_the_draw_is_worth_its_while() -> None:
    """Guards the draw itself: every class, partly wet lines, and all that makes a case hard."""
    classes: Counter[str] = Counter()
    cases: Counter[str] = Counter()
    for seed in range(COACHES):
        drawn, drained = found(seed)
        classes.update(drained.drainage.values())
        kinds = {run.kind + ("" if run.is_open else " shut") for run in drawn.runs}
        cases.update(kinds)
        cases["slopes"] += drawn.slope != (0.0, 0.0)
        cases["several mouths"] += sum(drawn.mouths.values()) > 1
        cases["sags"] += any(run.sag_m is not None for run in drawn.runs)
        cases["humps"] += any(run.hump_m is not None for run in drawn.runs)
        cases["emptied heaters"] += "heater" in drained.emptied
        for name, most in drained.most_m3.items():
            share = most / liquid_m3(drawn, name)[0]
            cases["partly wet"] += drained.drainage[name] == "trapped" and 0.01 < share < 0.99
    assert all(classes[kind] > 500 for kind in ("drained", "trapped", "uncertain")), classes
    assert all(count > 20 for count in cases.values()), cases
    assert min(cases["check"], cases["valve shut"], cases["slopes"], cases["sags"]) > 80, cases
    assert cases["partly wet"] > 100, cases
    assert cases["several mouths"] > 200, cases
