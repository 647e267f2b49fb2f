"""Each coach of the demo, planned once: its verdict, and why that is the right one."""

from functools import cache

import pytest

from tests.unit.procedure.demo_coach import DEMO, GALLON_M3
from wintertight.coach.card import Fitting
from wintertight.coach.kinds import KINDS
from wintertight.coach.load import load_card
from wintertight.coach.shop import find_product, load_shop
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.wording.steps import step_text

pytestmark = pytest.mark.long

SHOP = load_shop(DEMO / "shop.toml")

COACHES = {
    # Every outlet is run until its line is strong; the heater is drained and left open.
    "small-trailer": "safe",
    "middle-travel-trailer": "safe",
    # The heater is filled, and a quart of old water in six gallons thins it by a twentieth only.
    "no-bypass-trailer": "safe",
    # Fluid runs straight through its heater; the site is one of the two milder ones.
    "on-demand-van": "safe",
    # The line from the panel's city port, which the antifreeze never reaches, is drained through
    # the inlet in the panel's city position.
    "full-fifth-wheel": "safe",
    # What its maker's steps vouch for are the jets of the whirlpool; every outlet is run.
    "large-motorhome": "safe",
}

GALLONS = {
    # Common practice: 2 to 3 gallons with the heater bypassed, 1 to 4 for trailers.
    "small-trailer": (1.0, 3.0),
    "middle-travel-trailer": (2.0, 4.0),
    # Common practice: six more for a heater of six gallons that is filled.
    "no-bypass-trailer": (7.0, 10.0),
    # Common practice: as a small trailer; an on-demand heater holds a quart.
    "on-demand-van": (1.0, 3.0),
    # Twenty-five outlets, a washer, a dishwasher and an accumulator.
    "full-fifth-wheel": (4.0, 8.0),
    # Home runs to both ends of 42 feet: more line than any trailer.
    "large-motorhome": (4.0, 9.0),
}


@cache
def planned(name: str) -> Plan:
    """Plan one coach of the demo."""
    card = load_card(DEMO / "cards" / f"{name}.toml")
    assert card.antifreeze is not None
    assert card.site is not None
    assert card.site.design_low_degC is not None
    product = find_product(SHOP, card.antifreeze.product)
    return plan_coach(card, product, card.site.design_low_degC)


def test_every_card_of_the_demo_is_here() -> None:
    """Guards that a new card gets its verdict below."""
    assert {p.stem for p in (DEMO / "cards").glob("*.toml")} == set(COACHES) == set(GALLONS)


@pytest.mark.parametrize(("name", "verdict"), COACHES.items())
def test_a_demo_coach_gets_its_verdict(name: str, verdict: str) -> None:
    """Guards each verdict, that nothing is refused, and that the books close."""
    plan = planned(name)
    assert plan.verdict == verdict
    assert not plan.refused
    assert not plan.never_clear
    assert plan.balance.relative_error < 1e-9


@pytest.mark.parametrize(("name", "band"), GALLONS.items())
def test_a_demo_coach_takes_what_the_trade_expects(name: str, band: tuple[float, float]) -> None:
    """Guards gallons against common practice, by size of coach."""
    low, high = band
    assert low < planned(name).antifreeze.p50 / GALLON_M3 < high


def outlets_of(fitting: Fitting) -> set[str]:
    """Give the places of one fitting at which fluid leaves, as the card and its kind tell them."""
    sides = set(KINDS[fitting.kind].outlets) & set(fitting.ports)
    return {f"{fitting.id}.{side}" if side else fitting.id for side in sides}


@pytest.mark.parametrize("name", COACHES)
def test_every_outlet_of_the_card_is_run(name: str) -> None:
    """Guards that no outlet is forgotten, but the inlet that the jug's hose is on."""
    plan = planned(name)
    run = {step.step.outlet for step in plan.steps if step.step.outlet}
    told = {outlet for fitting in plan.card.fittings for outlet in outlets_of(fitting)}
    assert told - run == ({"city-inlet"} if name == "full-fifth-wheel" else set())


@pytest.mark.parametrize("name", ["small-trailer", "on-demand-van"])
def test_a_hose_on_the_suction_goes_before_the_strainer(name: str) -> None:
    """Guards that the order fills the strainer too, whose proof counts on it."""
    plan = planned(name)
    drawn = next(s for s in plan.steps if s.step.key == "draw from jug")
    said = step_text(drawn, plan.card)
    assert said.startswith("Take the tank line off the inlet of the pump strainer")
    claims = {part.id: part.claim for part in plan.parts}
    assert (claims["strainer"], claims["tank-stub"]) == ("filled", "drained")


@pytest.mark.parametrize(
    ("name", "taken_out"),
    [
        ("full-fifth-wheel", {"softener", "regulator", "supply-hose", "hose-filter"}),
        ("on-demand-van", {"regulator", "supply-hose", "hose-filter"}),
        ("small-trailer", set()),
    ],
)
def test_what_is_taken_out_is_claimed_as_removed(name: str, taken_out: set[str]) -> None:
    """Guards the removal list: the softener, and what hangs on the hose."""
    assert {p.id for p in planned(name).parts if p.claim == "removed"} == taken_out


@pytest.mark.parametrize(
    ("name", "heater"),
    [("small-trailer", "drained"), ("no-bypass-trailer", "filled"), ("on-demand-van", "filled")],
)
def test_only_a_heater_with_a_bypass_is_left_empty(name: str, heater: str) -> None:
    """Guards that a heater nothing leads round is filled, and one with a bypass stays drained."""
    claims = {part.id: part.claim for part in planned(name).parts}
    assert claims["heater"] == heater


def test_an_accumulator_breathes_itself_strong() -> None:
    """Guards that it takes in what the trunk holds each time a tap is used."""
    part = next(p for p in planned("full-fifth-wheel").parts if p.id == "accumulator")
    assert part.safe is True
    assert part.worst.glycol > 0.3
    assert not any("accumulator" in s.step.id for s in planned("full-fifth-wheel").steps)


def test_a_maker_s_own_steps_stand_in_for_ours() -> None:
    """Guards the whirlpool: its jets are vouched for by a person, and by nothing computed."""
    jets = next(p for p in planned("large-motorhome").parts if p.id == "whirlpool/jets")
    assert jets.safe is True
    assert jets.evidence[-1].kind == "attested"


def test_a_diverter_is_opened_so_that_its_lines_fill() -> None:
    """Guards the hidden crossover of a recirculating shower."""
    plan = planned("large-motorhome")
    keys = [s.step.key for s in plan.steps]
    assert keys.index("open diverter") < keys.index("run outlet") < keys.index("close diverter")
    claims = {p.id: p.claim for p in plan.parts}
    assert claims["div-a"] == claims["div-b"] == "filled"
