"""The six coaches of the demo, blown out at 40 psi from 6 gal and 2.5 ft3/min."""

from functools import cache
from importlib.resources import files

import pytest

from wintertight.coach.card import Card
from wintertight.coach.load import load_card
from wintertight.flow.actions import Action
from wintertight.flow.air.claims import Claim
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import SweepAll, sweep_all
from wintertight.flow.build import build_network
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.falling import HANGING_BORE_M
from wintertight.flow.replay import replay
from wintertight.flow.state import arriving_state

pytestmark = pytest.mark.long

CARDS = files("wintertight") / "demo" / "cards"
COACHES = sorted(card.name.removesuffix(".toml") for card in CARDS.iterdir())
INLET = "city-inlet"
BYPASSED = (("heater cold", "across"), ("heater hot", "across"), ("heater bypass", "along"))
NEVER = frozenset(
    {"demand pump", "check valve", "city inlet", "strainer", "filter housing", "tank heater"}
    | {"on-demand heater", "hydronic coil", "fridge filter", "softener", "UV sleeve", "trap"}
)
TRUNK_M = 0.010
"""Bore from which a line can be a trunk [m]: half an inch."""


def set_up(card: Card) -> list[Action]:
    """Drain the heaters, bypass them where that can be done, and let the city's water in."""
    actions: list[Action] = []
    heaters = [f.id for f in card.fittings if f.kind in {"tank heater", "on-demand heater"}]
    for wanted in ("open", "shut"):
        for heater in heaters:
            kinds = {"open": ("out", "open"), "shut": ("in", "shut")}[wanted]
            actions.append(Action("set", f"{heater}/plug", kinds[0]))
            if card.fitting[heater].kind == "tank heater":
                actions.append(Action("set", f"{heater}/relief", kinds[1]))
        if wanted == "open":
            actions.append(Action("drain"))
    roles = {f.role for f in card.fittings}
    for fitting in card.fittings:
        actions += [
            Action("set", fitting.id, p.name)
            for p in fitting.positions
            if p.use in {"heater bypass", "city water"}
        ]
        actions += [
            Action("set", fitting.id, handle)
            for role, handle in BYPASSED
            if fitting.kind == "ball valve" and fitting.role == role and "heater bypass" in roles
        ]
    return actions


@cache
def blown_out(name: str) -> tuple[Card, CoachNetwork, SweepAll]:
    """Blow a coach of the demo out."""
    card = load_card(str(CARDS / f"{name}.toml"))
    network = build_network(card)
    state = replay(network, arriving_state(network), set_up(card)).end
    return card, network, sweep_all(network, state, INLET, AirSupply())


def claims(name: str) -> dict[str, Claim]:
    """Give the best claim of each link and pool."""
    return {k: best.sweep.claim for k, best in blown_out(name)[2].best.items()}


@pytest.mark.parametrize("name", COACHES)
def test_what_air_never_clears_comes_back_so(name: str) -> None:
    """Guards pump, checks, bowls, heaters, coils, traps and small tubes of every demo coach."""
    card, network, found = blown_out(name)
    parts = {f.id for f in card.fittings if f.kind in NEVER}
    small = {k.id for k in network.links.values() if k.way == "pipe" and k.bore_m < HANGING_BORE_M}
    never = [b.sweep for k, b in found.best.items() if b.sweep.part in parts or k in small]
    assert {s.part for s in never} >= parts - {p for p in parts if p not in network.links_of}
    assert {s.link for s in never if s.claim != "not swept"} == set()


@pytest.mark.parametrize("name", COACHES)
def test_nothing_before_the_pump_is_swept_from_the_city_inlet(name: str) -> None:
    """Guards that air from the city inlet does not go backwards through the pump."""
    card, network, found = blown_out(name)
    pumps = [f.id for f in card.fittings if f.kind == "demand pump"]
    before = [
        k.id
        for k in network.links.values()
        if k.way == "pipe" and {k.start, k.end} & {f"{pump}.in" for pump in pumps}
    ]
    assert before
    assert {found.best[k].sweep.claim for k in before} == {"not swept"}


@pytest.mark.parametrize("name", COACHES)
def test_the_lines_of_a_kitchen_tap_are_swept(name: str) -> None:
    """Guards the taps technicians do blow out: the last line to each side of a kitchen tap."""
    card, network, found = blown_out(name)
    taps = [f.id for f in card.fittings if f.kind == "kitchen tap"]
    ends = {f"{tap}.{side}" for tap in taps for side in ("hot", "cold")}
    last = [k.id for k in network.links.values() if k.way == "pipe" and ends & {k.start, k.end}]
    assert last
    assert {found.best[k].sweep.claim for k in last} == {"swept"}


@pytest.mark.parametrize("name", COACHES)
def test_an_ice_maker_sweeps_no_trunk(name: str) -> None:
    """Guards that no half-inch line counts as swept through an ice maker."""
    card, network, found = blown_out(name)
    makers = [f.id for f in card.fittings if f.kind == "ice maker"]
    swept = [
        link
        for maker in makers
        for link, claim in found.outlets[maker].links.items()
        if claim.claim == "swept" and network.links[link].way == "pipe"
        if network.links[link].bore_m > TRUNK_M
    ]
    assert swept == []


@pytest.mark.parametrize("name", COACHES)
def test_every_line_on_a_way_is_judged(name: str) -> None:
    """Guards that a line's best claim comes from an outlet on whose way it is."""
    _, network, found = blown_out(name)
    for link, best in found.best.items():
        if best.sweep.claim != "not swept" and network.links[link].way == "pipe":
            assert link in found.outlets[best.outlet].air.links
            assert best.sweep.margin > 0.0


def test_some_lines_are_in_doubt() -> None:
    """Guards that not everything comes back swept: small flows in wide lines that rise."""
    assert claims("no-bypass-trailer")["lavatory-cold"] == "doubtful"
    assert claims("large-motorhome")["ice-line"] == "doubtful"
    assert claims("small-trailer")["shower(outlet)"] == "doubtful"
