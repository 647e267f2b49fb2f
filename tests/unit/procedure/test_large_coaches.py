"""The two coaches with nearly every fitting there is: what only they have, in their plans."""

from dataclasses import replace

import pytest

from tests.unit.procedure.demo_coach import DEMO, planned, swapped
from wintertight.flow.actions import Action
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state
from wintertight.flow.stream import GLYCOL
from wintertight.procedure.drawn import draw
from wintertight.procedure.held_in import held_in, with_scatter
from wintertight.procedure.missed import STRIDE_M3
from wintertight.procedure.plan import Plan
from wintertight.procedure.steps import Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts
from wintertight.wording.steps import step_text

pytestmark = pytest.mark.long

FIFTH_WHEEL = (DEMO / "cards" / "full-fifth-wheel.toml").read_text(encoding="utf-8")
MOTORHOME = (DEMO / "cards" / "large-motorhome.toml").read_text(encoding="utf-8")

LEVEL_INLET = swapped(
    'at = ["17.6 ft", "0.1 ft", "1.3 ft"]', 'at = ["17.6 ft", "0.1 ft", "1.2 ft"]', FIFTH_WHEEL
)
"""The fifth wheel with its inlet no higher than the panel."""


def plan_of(text: str) -> Plan:
    """Plan one of the two for the low of its site [degF]."""
    return planned(0.0 if text == MOTORHOME else -10.0, text=text)


def proofs(plan: Plan, steps: list[Step]) -> dict[str, PartProof]:
    """Prove every part after some steps only, worked out in larger strides than the plan."""
    case = replace(plan.careful.network.case, chunk_m3=STRIDE_M3)
    network = replace(plan.careful.network, case=case)
    actions = [action for step in steps for action in step.actions]
    trace = replay(network, arriving_state(network), actions)
    bench = Bench(plan.card, network, trace.end, plan.low_degC, plan.product)
    parts = prove_parts(bench)
    held = held_in(draw(plan.card), bench, trace, plan.best.network, parts)
    return {part.id: part for part in with_scatter(parts, held)}


def without_step(plan: Plan, step_id: str) -> dict[str, PartProof]:
    """Prove every part where one step was left out."""
    steps = [s.step for s in plan.steps]
    assert step_id in [step.id for step in steps]
    return proofs(plan, [step for step in steps if step.id != step_id])


@pytest.mark.parametrize("text", [FIFTH_WHEEL, MOTORHOME], ids=["fifth wheel", "motorhome"])
def test_each_is_safe_for_every_part_is(text: str) -> None:
    """Guards the verdict: every outlet clears, what is not reached is drained or taken out."""
    plan = plan_of(text)
    assert [part.id for part in plan.parts if part.safe is not True] == []
    assert (plan.verdict, plan.refused, plan.never_clear) == ("safe", (), ())


def test_a_panel_s_line_from_the_city_drains_through_the_inlet() -> None:
    """Guards the one line of a panel that antifreeze never reaches, and that it is no guess."""
    plan = plan_of(FIFTH_WHEEL)
    line = next(part for part in plan.parts if part.id == "panel-out")
    assert (line.claim, line.safe) == ("drained", True)
    missed = without_step(plan, "drain-panel:panel")
    bad = [(p.id, p.reason) for p in missed.values() if p.safe is not True]
    assert bad == [("panel-out", "may not have drained")]


def test_a_panel_that_was_set_to_drain_is_set_back() -> None:
    """Guards that the pump's dry run still draws through the line from the tank."""
    plan = plan_of(FIFTH_WHEEL)
    keys = [s.step.key for s in plan.steps]
    assert keys.index("let it drain") < keys.index("drain panel") < keys.index("run pump dry")
    told = next(s for s in plan.steps if s.step.key == "drain panel")
    assert [a.setting for a in told.step.actions if a.part == "panel"] == ["CITY", "DRY CAMP"]
    said = step_text(told, plan.card)
    assert said.startswith("Set the service panel to CITY")
    assert said.endswith("set it back to DRY CAMP.")


def test_an_inlet_level_with_its_panel_lets_in_no_air_for_certain() -> None:
    """Guards that a level stub, over whose water air may or may not pass, stays unproven."""
    plan = plan_of(LEVEL_INLET)
    bad = [(p.id, p.reason) for p in plan.parts if p.safe is not True]
    assert bad == [("panel-out", "may not have drained")]
    assert plan.verdict == "unproven"


@pytest.mark.parametrize(
    ("text", "valve", "position"),
    [(FIFTH_WHEEL, "panel", "WINTER"), (MOTORHOME, "suction-valve", "HOSE")],
    ids=["panel", "three-way valve"],
)
def test_a_named_handle_is_told_by_what_is_written_on_it(
    text: str, valve: str, position: str
) -> None:
    """Guards that drawing from the jug names the position the card gives for antifreeze."""
    plan = plan_of(text)
    drawn = next(s for s in plan.steps if s.step.key == "draw from jug")
    assert Action("set", valve, position) in drawn.step.actions
    assert f"to {position}." in step_text(drawn, plan.card)


@pytest.mark.parametrize(
    ("text", "step", "part"),
    [
        (FIFTH_WHEEL, "open-rinse-inlet:rinse", "rinse"),
        (FIFTH_WHEEL, "pour-a-cup:tub-trap", "tub-trap"),
        (MOTORHOME, "take-out:membrane", "membrane/tank"),
        (MOTORHOME, "maker's-steps:whirlpool", "whirlpool/jets"),
        (MOTORHOME, "work-pedal:toilet-2", "toilet-2"),
        (MOTORHOME, "open-diverter:diverter", "div-a"),
        (MOTORHOME, "pour-a-cup:macerator", "macerator"),
    ],
)
def test_a_step_for_one_part_is_what_saves_it(text: str, step: str, part: str) -> None:
    """Guards that no step is idle: left out, its part is no longer safe."""
    plan = plan_of(text)
    assert next(p for p in plan.parts if p.id == part).safe is True
    assert without_step(plan, step)[part].safe is not True


@pytest.mark.parametrize(
    ("text", "pool"),
    [(FIFTH_WHEEL, "washer/sump"), (MOTORHOME, "macerator")],
    ids=["washer", "macerator"],
)
def test_one_cup_less_would_be_too_few(text: str, pool: str) -> None:
    """Guards that a sump gets the fewest cups that make it safe."""
    plan = plan_of(text)
    steps = [s.step for s in plan.steps]
    poured = next(s for s in steps if s.key == "pour a cup" and s.part == pool)
    cups = float(poured.params["cups"])
    assert cups > 1.0
    (action,) = poured.actions
    less = replace(action, volume_m3=action.volume_m3 * (1.0 - 1.0 / cups))
    fewer = [replace(s, actions=(less,)) if s is poured else s for s in steps]
    assert proofs(plan, fewer)[pool].safe is not True


def test_hot_taps_alone_draw_through_both_sides_of_a_tempering_valve() -> None:
    """Guards the crossover: hot water is fed from the coil and past it, and both ways fill."""
    plan = plan_of(MOTORHOME)
    steps = [s.step for s in plan.steps]
    hot = [s for s in steps if s.outlet is None or s.outlet.endswith(".hot")]
    after = proofs(plan, hot)
    both_ways = ("coil-in", "coil", "coil-out", "mix-run", "mix-cold", "tempering", "tempered")
    assert {after[part].claim for part in both_ways} == {"filled"}
    assert after["lavatory-2-cold"].claim != "filled"


def test_a_softener_left_in_place_drinks_its_own_content() -> None:
    """Guards the reason for taking it out: what it holds would be filled with antifreeze."""
    plan = plan_of(FIFTH_WHEEL)
    network = plan.careful.network
    kept = [a for s in plan.steps if s.step.key != "take out" for a in s.step.actions]
    more = replay(network, plan.careful.start, kept).end.books.came_in[1 + GLYCOL]
    usual = plan.careful.end.books.came_in[1 + GLYCOL]
    strength = plan.product.contents().glycol
    softener = next(p for p in plan.parts if p.id == "softener")
    assert (more - usual) / strength > 0.95 * softener.volume_m3
