"""The bay that EPANET stands in for: whole fillings beside our own, right and with mistakes."""

from collections.abc import Callable
from dataclasses import replace
from functools import cache, partial
from pathlib import Path

import numpy as np
import pytest

from tests.engines import bay_twin
from tests.engines.bay_twin import Filled, Seen, drawn_card, fill_there
from tests.engines.fleet import CARDS
from tests.unit.procedure.demo_coach import planned
from wintertight.flow import running
from wintertight.flow.build import build_network
from wintertight.flow.case import PLUG
from wintertight.flow.hydraulics import steady_flow
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.flow.until import OutletRun
from wintertight.procedure.mistaken import waits_s, with_mistake
from wintertight.procedure.mistakes import Mistake, possible_mistakes
from wintertight.procedure.plan import Plan

COLOUR_S = 0.3
FLOW = 1e-3
TEXTS = {path.stem: path.read_text(encoding="utf-8") for path in CARDS}
MIDDLE = "middle-travel-trailer"
LARGE = "full-fifth-wheel"
HOT_TAPS = ("kitchen.hot", "lavatory.hot", "shower.hot")

Fill = Callable[..., Filled]


def plan_of(name: str) -> Plan:
    """Plan a coach with a product that moves as water does."""
    return planned(product="thrift", text=TEXTS[name])


def the(key: str, circumstance: str = "", name: str = MIDDLE) -> Mistake:
    """Give one mistake possible at a coach."""
    return next(
        m
        for m in possible_mistakes(plan_of(name))
        if (m.key, m.circumstance) == (key, circumstance)
    )


@pytest.fixture(scope="module")
def fill(tmp_path_factory: pytest.TempPathFactory) -> Fill:
    """Give a filling of a coach just as its card says, each worked out once."""
    folder = tmp_path_factory.mktemp("bay")

    @cache
    def filled(name: str = MIDDLE, mistake: tuple[str, str] | None = None) -> Filled:
        plan = plan_of(name)
        return fill_there(plan, plan.card, folder, the(*mistake, name) if mistake else None)

    return filled


def ours(name: str, mistake: tuple[str, str] | None = None) -> dict[str, OutletRun]:
    """Replay the plan's own actions in plug flow, by the other engine's law of friction.

    There every part of the coach is plug flow in our engine too, its heater included. An
    accumulator that breathes is left out, as there. A shower's hose is full of colour from the cold
    side when the hot side, drained, first sends air: neither here nor there does that colour stay.
    """
    plan = plan_of(name)
    network = build_network(plan.card, replace(PLUG, viscosity_m2_s=bay_twin.WATER_M2_S))
    network = replace(network, breathers=())
    steps = tuple(p.step for p in plan.steps)
    if mistake:
        steps, network = with_mistake(plan.steps, network, the(*mistake, name))
    actions = [a for step in steps for a in step.actions]
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(running, "steady_flow", partial(steady_flow, friction="epanet"))
        moments = replay(network, arriving_state(network), actions).moments
    return {m.action.part: m.outcome.run for m in moments if m.outcome.run}


def at(filled: Filled, outlet: str) -> Seen:
    """Give what was seen at one outlet."""
    return next(seen for seen in filled.seen if seen.outlet == outlet)


@pytest.mark.parametrize("name", [MIDDLE, LARGE, "small-trailer", "on-demand-van"])
def test_a_right_filling_is_seen_alike(name: str, fill: Fill) -> None:
    """Guards first colour, flow and shade at every outlet of a whole filling against our own."""
    filled, here = fill(name), ours(name)
    outlets = [p.step.outlet for p in plan_of(name).steps if p.step.outlet]
    assert [seen.outlet for seen in filled.seen] == outlets
    for seen in filled.seen:
        assert seen.first_colour_s is not None
        assert here[seen.outlet].first_colour_s == pytest.approx(seen.first_colour_s, abs=COLOUR_S)
        assert here[seen.outlet].flow_m3_s == pytest.approx(seen.flow_m3_s, rel=FLOW)
        assert here[seen.outlet].seconds == pytest.approx(seen.seconds, abs=COLOUR_S)
        assert seen.strength == pytest.approx(1.0, abs=1e-4)


@pytest.mark.parametrize("name", [MIDDLE, LARGE])
def test_what_is_drawn_leaves_at_the_outlets(name: str, fill: Fill) -> None:
    """Guards the volume drawn from the jug against what all outlets let out."""
    filled = fill(name)
    let_out_m3 = sum(seen.volume_m3 for seen in filled.seen)
    assert filled.drawn_m3 == pytest.approx(let_out_m3, rel=1e-4)
    assert filled.drawn_m3 > 10e-3


@pytest.mark.parametrize(
    ("name", "mistake"),
    [
        (MIDDLE, ("heater left open", "full")),
        (MIDDLE, ("inlet half open", "tank valve too")),
        (MIDDLE, ("tank valve half open", "full")),
        (MIDDLE, ("shower crossing", "")),
        (LARGE, ("pause button", "")),
        (MIDDLE, ("low point left open", "")),
        (MIDDLE, ("cartridge left in", "")),
    ],
)
def test_a_mistaken_filling_is_seen_alike(name: str, mistake: tuple[str, str], fill: Fill) -> None:
    """Guards lines that turn round, mixes and losses: first colours and flows against our own."""
    there, here = fill(name, mistake), ours(name, mistake)
    for seen in there.seen:
        assert here[seen.outlet].flow_m3_s == pytest.approx(seen.flow_m3_s, rel=FLOW)
        assert seen.first_colour_s is not None
        assert here[seen.outlet].first_colour_s == pytest.approx(seen.first_colour_s, abs=COLOUR_S)


def test_hot_taps_stay_pale_beside_a_full_heater(fill: Fill) -> None:
    """Guards the shade that stays at the hot taps while the heater is open beside its bypass."""
    filled = fill(MIDDLE, ("heater left open", "full"))
    for outlet in HOT_TAPS:
        assert 0.5 < at(filled, outlet).strength < 0.9
    assert at(filled, "kitchen.cold").strength == pytest.approx(1.0, abs=1e-4)


def test_no_colour_comes_through_a_full_heater(fill: Fill) -> None:
    """Guards giving up: a full heater hides the colour behind more than anyone waits for."""
    first = at(fill(MIDDLE, ("bypass shut", "full")), "outside-shower.hot")
    due = next(p.run for p in plan_of(MIDDLE).steps if p.step.outlet == first.outlet)
    assert due is not None
    assert due.first_colour_s is not None
    assert first.first_colour_s is None
    assert first.seconds == pytest.approx(waits_s(due.first_colour_s), abs=0.1)
    assert first.volume_m3 == pytest.approx(first.flow_m3_s * first.seconds)


def test_an_open_low_point_takes_more_than_the_taps(fill: Fill) -> None:
    """Guards that what runs out elsewhere is drawn from the jug as well."""
    filled = fill(MIDDLE, ("low point left open", ""))
    let_out_m3 = sum(seen.volume_m3 for seen in filled.seen)
    assert filled.drawn_m3 > 1.2 * let_out_m3
    assert filled.drawn_m3 == pytest.approx(let_out_m3 + filled.elsewhere_m3, rel=1e-4)


def test_the_plug_hole_takes_nearly_all(fill: Fill) -> None:
    """Guards a hole below its node: hardly anything reaches a tap, and the jug empties fast."""
    filled = fill(MIDDLE, ("heater left open", "plug out"))
    assert at(filled, "kitchen.cold").flow_m3_s < 0.05 * at(fill(), "kitchen.cold").flow_m3_s
    assert filled.elsewhere_m3 > 0.9 * filled.drawn_m3


def test_nothing_comes_through_a_branch_that_is_shut(fill: Fill) -> None:
    """Guards an outlet that nothing reaches: no flow, no colour, and all others as ever."""
    filled, right = fill(LARGE, ("branch left shut", "")), fill(LARGE)
    shut = at(filled, "ice-maker")
    assert (shut.first_colour_s, shut.flow_m3_s, shut.volume_m3, shut.strength) == (None, 0, 0, 0)
    for seen in right.seen:
        if seen.outlet != "ice-maker":
            assert at(filled, seen.outlet).first_colour_s == pytest.approx(
                seen.first_colour_s, abs=0.01
            )


def test_a_weak_product_is_pale_everywhere(fill: Fill) -> None:
    """Guards the share of what the jug should hold where a quarter of it is water."""
    assert {round(s.strength, 3) for s in fill(MIDDLE, ("weak product", "")).seen} == {0.75}


def test_a_full_tank_thins_what_is_drawn(fill: Fill) -> None:
    """Guards the volume that comes from the tank beside the jug."""
    filled = fill(MIDDLE, ("inlet half open", "tank valve too"))
    from_jug = filled.drawn_m3 / (filled.drawn_m3 + filled.from_elsewhere_m3)
    assert 0.4 < from_jug < 0.8
    assert at(filled, "kitchen.cold").strength == pytest.approx(from_jug, abs=0.02)


def test_an_outlet_that_is_forgotten_leaves_its_water_to_the_next(tmp_path: Path) -> None:
    """Guards skipped steps: the outlet is missing, and the next one along shows colour later."""
    plan = plan_of(MIDDLE)
    right = fill_there(plan, plan.card, tmp_path)
    skips = frozenset({"run-outlet:outside-shower.cold", "run-outlet:outside-shower.hot"})
    filled = fill_there(plan, plan.card, tmp_path, skips=skips)
    assert [s.outlet for s in filled.seen] == [s.outlet for s in right.seen[2:]]
    late, usual = (at(f, "kitchen.cold").first_colour_s for f in (filled, right))
    assert late is not None
    assert usual is not None
    assert late > usual + 5.0


def test_counting_and_the_pump_change_seconds_and_flows(tmp_path: Path) -> None:
    """Guards that a slow counter runs on longer, and that a weak pump brings colour later."""
    plan = plan_of(MIDDLE)
    right = fill_there(plan, plan.card, tmp_path).seen[0]
    slow = fill_there(plan, plan.card, tmp_path, counting=1.5).seen[0]
    weak = fill_there(plan, plan.card, tmp_path, pump=0.8).seen[0]
    assert right.first_colour_s is not None
    assert weak.first_colour_s is not None
    assert slow.first_colour_s == right.first_colour_s
    ran_on_s = right.seconds - right.first_colour_s
    assert slow.seconds - right.first_colour_s == pytest.approx(1.5 * ran_on_s, abs=0.1)
    assert weak.flow_m3_s < 0.95 * right.flow_m3_s
    passed_m3 = right.flow_m3_s * right.first_colour_s
    assert weak.flow_m3_s * weak.first_colour_s == pytest.approx(passed_m3, rel=0.01)


def test_air_is_refused(tmp_path: Path) -> None:
    """Guards against an answer about air from an engine that knows none."""
    plan = plan_of(MIDDLE)
    for key in (("suction leak", "some air"), ("heater left open", "drained")):
        with pytest.raises(ValueError, match="plug flow"):
            fill_there(plan, plan.card, tmp_path, the(*key))


def test_true_coaches_scatter_as_their_card_says(tmp_path: Path) -> None:
    """Guards spread and law of drawn lengths, and that a longer coach is seen to be longer."""
    card, rng = plan_of(MIDDLE).card, np.random.default_rng(3)
    coaches = [drawn_card(card, rng) for _ in range(400)]
    line = card.lines[0]
    lengths = np.array([c.line[line.id].length.value for c in coaches]) / line.length.value
    half = line.length.spread / 2.0
    assert lengths.mean() == pytest.approx(1.0, abs=0.2 * half)
    assert lengths.std() == pytest.approx(half, rel=0.1)
    assert np.abs(lengths - 1.0).max() <= 3.0**0.5 * half
    bores = [c.line[line.id].largest_bore_m for c in coaches]
    assert line.middle_bore_m < max(bores) <= line.largest_bore_m
    assert np.mean(bores) == pytest.approx(line.middle_bore_m, rel=0.01)
    assert card.line[line.id] is line
    held_m3 = [build_network(c, PLUG).volume_m3 for c in coaches[:40]]
    assert len(set(held_m3)) == len({c.card_hash for c in coaches[:40]}) == len(held_m3)
    small, large = (coaches[int(i)] for i in (np.argmin(held_m3), np.argmax(held_m3)))
    first, last = (fill_there(plan_of(MIDDLE), c, tmp_path).drawn_m3 for c in (small, large))
    assert first < last
