"""Every refused order, tried on every method of every coach of the demo."""

from collections.abc import Iterator
from dataclasses import replace

import pytest

from tests.methods.every_plan import CARDS, EVERY, low_of, plan_of, product_of
from wintertight.errors import ChoiceError, InputError
from wintertight.flow.actions import Action
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.state import State
from wintertight.fluids.contents import Contents
from wintertight.procedure.hazards import hazard_of
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.units import PSI_PA

SPIRIT = Contents(ethanol=0.28)


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_no_plan_asks_for_a_refused_order(name: str, method: str) -> None:
    """Guards the plans themselves."""
    assert plan_of(name, method).refused == ()


def states(plan: Plan) -> Iterator[State]:
    """Give the coach before each action of a plan."""
    yield plan.careful.start
    yield from (moment.state for moment in plan.careful.moments)


def refused(plan: Plan, state: State, action: Action) -> str | None:
    """Give why an order is refused in one state of a job."""
    return hazard_of(plan.card, plan.careful.network, state, action)


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_no_plug_comes_out_hot_or_under_pressure(name: str, method: str) -> None:
    """Guards every moment: with heat on, or pump, main, hand pump or air on, the plug stays in."""
    plan = plan_of(name, method)
    controls = plan.careful.network.controls
    heaters = [c.part for c in controls.values() if c.thing == "plug"]
    for state in states(plan):
        pushed = any(
            state.settings[c.id] in {"on", "hand pump", "air line"}
            for c in controls.values()
            if c.thing in {"switch", "hose"}
        )
        for heater in heaters:
            hot = any(
                state.settings[c.id] == "on"
                for c in controls.values()
                if c.part == heater and c.thing in {"burner", "element", "coolant"}
            )
            found = refused(plan, state, Action("set", f"{heater}/plug", "out"))
            if pushed:
                assert found == "plug under pressure"
            elif hot:
                assert found in {"plug while hot", "plug under pressure"}


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_no_empty_heater_is_lit(name: str, method: str) -> None:
    """Guards every moment at which a heater is empty, and the end of every job."""
    plan = plan_of(name, method)
    controls = plan.careful.network.controls
    sources = [
        c
        for c in controls.values()
        if c.thing in {"burner", "element"} and c.part in plan.careful.network.heater_ports
    ]
    assert sources or not plan.careful.network.heater_ports
    for state in states(plan):
        for c in sources:
            empty = float(state.held[c.part].mean()[-1]) > 0.5
            if empty or state.settings[f"{c.part}/plug"] == "out":
                assert refused(plan, state, Action("set", c.id, "on")) == "heat without water"
    if plan.careful.network.heater_ports and method != "hand-pump":
        bypassed = any(s.step.key == "set bypass" for s in plan.steps)
        for c in sources:
            end = plan.careful.end
            if bypassed:
                assert refused(plan, end, Action("set", c.id, "on")) == "heat without water"


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_no_hot_heater_is_drained(name: str, method: str) -> None:
    """Guards the drain: with the plug out and the heat on, it is refused at every moment."""
    plan = plan_of(name, method)
    controls = plan.careful.network.controls
    for state in states(plan):
        for heater in plan.careful.network.heater_ports:
            lit = [c.id for c in controls.values() if c.part == heater and c.thing == "burner"]
            wrong = state.with_settings({f"{heater}/plug": "out", **dict.fromkeys(lit, "on")})
            if lit:
                assert refused(plan, wrong, Action("drain")) == "heater drained while heated"


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_no_spirit_by_a_flame(name: str, method: str) -> None:
    """Guards ethanol: as long as a burner is on, none is drawn or poured."""
    plan = plan_of(name, method)
    network = plan.careful.network
    burners = [c.id for c in network.controls.values() if c.thing == "burner"]
    assert burners
    for state in (plan.careful.start, plan.careful.end):
        lit = state.with_settings(dict.fromkeys(burners, "on"))
        for source in network.sources:
            found = refused(plan, lit, Action("feed", source, contents=SPIRIT))
            assert found == "spirit by a flame"
        for pool in network.pools:
            poured = Action("pour", pool, contents=SPIRIT, volume_m3=1e-4)
            assert refused(plan, lit, poured) == "spirit by a flame"


@pytest.mark.parametrize(("name", "method"), EVERY)
def test_no_bowl_comes_off_under_pressure(name: str, method: str) -> None:
    """Guards filter bowls while pump, main, hand pump or air is on."""
    plan = plan_of(name, method)
    network = plan.careful.network
    bowls = [
        c.id
        for c in network.controls.values()
        if c.thing == "bowl" and plan.card.fitting[c.part].kind == "filter housing"
    ]
    pushers = {"demand pump": ("/switch", "on"), "city inlet": ("/hose", "air line")}
    for fitting in plan.card.fittings:
        if fitting.seen != "present" or fitting.kind not in pushers:
            continue
        thing, setting = pushers[fitting.kind]
        pushed = plan.careful.end.with_setting(fitting.id + thing, setting)
        for bowl in bowls:
            for how in ("off", "loose"):
                found = refused(plan, pushed, Action("set", bowl, how))
                assert found == "bowl under pressure"


@pytest.mark.parametrize("psi", [50.1, 60.0, 90.0, 125.0])
def test_no_more_than_fifty_psi_of_air(psi: float) -> None:
    """Guards the hard stop, which no method can get round: there is no such supply."""
    with pytest.raises(InputError, match="no lines of a coach get more than 50 psi"):
        AirSupply(regulator_Pa=psi * PSI_PA)


@pytest.mark.parametrize("method", METHODS)
def test_no_ethylene_glycol(method: str) -> None:
    """Guards the product: no method takes a poison, by whatever spelling."""
    card = CARDS["small-trailer"]
    for name in ("ethylene glycol", "Ethylene-Glycol 50/50", "engine coolant (ETHYLENE GLYCOL)"):
        poison = replace(product_of(card), name=name)
        with pytest.raises(ChoiceError, match="never goes into a potable line"):
            plan_coach(card, poison, low_of(card), method)
