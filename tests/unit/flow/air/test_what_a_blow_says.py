"""Every field of what a blow claims, and laws of it that can be checked by hand."""

from collections.abc import Iterator
from dataclasses import replace

import pytest

from tests.unit.flow.air.laid_air import HALF_INCH_M, KITCHEN, blown, trunk_and_taps, tube
from tests.unit.flow.laid_coach import laid, outlet, pipe, valve
from tests.unit.procedure.demo_coach import DEMO
from wintertight.coach.load import load_card
from wintertight.flow.air.claims import LinkSweep
from wintertight.flow.air.gas import GAS_CONSTANT_AIR
from wintertight.flow.air.laws import isothermal_mass_flow
from wintertight.flow.air.receiver import REGAIN_S, AirCurve, work_of
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import sweep_all
from wintertight.flow.build import build_network
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.state import arriving_state
from wintertight.units import PSI_PA


@pytest.mark.parametrize("outside_Pa", [1.013e5, 2.5e5])
def test_bends_count_as_a_longer_line(outside_Pa: float) -> None:
    """Guards the loss of bends: coefficient K is a line longer by K D / f."""
    bore, friction, loss = 0.0123, 0.02, 4.0
    bent = isothermal_mass_flow(
        3.77e5, outside_Pa, length_m=5.0, bore_m=bore, friction_factor=friction, minor_loss=loss
    )
    longer = 5.0 + loss * bore / friction
    straight = isothermal_mass_flow(
        3.77e5, outside_Pa, length_m=longer, bore_m=bore, friction_factor=friction
    )
    assert bent == pytest.approx(straight, rel=1e-12)


def test_a_blow_names_where_the_air_came_in_and_went_out() -> None:
    """Guards the names, whether air moves or not."""
    coach = trunk_and_taps()
    weak = AirSupply(regulator_Pa=PSI_PA)
    for supply, moves in ((AirSupply(), True), (weak, False)):
        found = blown(coach, "kitchen", supply)
        assert (found.inlet, found.outlet, bool(found.air.links)) == ("hose", "kitchen", moves)
    for name, result in sweep_all(coach, arriving_state(coach), "hose", weak).outlets.items():
        assert (result.inlet, result.outlet) == ("hose", name)


def lines_at_many_pressures() -> Iterator[LinkSweep]:
    """Blow two coaches out at 2 to 50 psi, and give what is claimed for riser and trunk."""
    for trunk_bore, riser_m in ((HALF_INCH_M, 60.0), (2.0 * HALF_INCH_M, 2.0)):
        coach = trunk_and_taps(trunk_bore_m=trunk_bore, riser_m=riser_m)
        for psi in (2, 3, 4, 6, 8, 10, 12, 15, 20, 30, 40, 50):
            found = blown(coach, "kitchen", AirSupply(regulator_Pa=psi * PSI_PA)).links
            yield from (c for c in (found["riser"], found["trunk"]) if c.reason != "off the way")


def test_reasons_go_with_claims() -> None:
    """Guards the six reasons: which way, and how near, told apart by climb and margin."""
    seen = set()
    for claim in lines_at_many_pressures():
        rises = claim.link == "riser"
        assert claim.rises_m == pytest.approx(1.0 if rises else 0.0)
        does, did = ("carry up", "carried up") if rises else ("push along", "pushed along")
        expected = {
            "swept": did,
            "doubtful": f"nearly {did}",
            "not swept": f"too slow to {does}",
        }
        assert claim.reason == expected[claim.claim]
        assert (claim.margin >= 1.0) is (claim.claim == "swept")
        assert 0.0 < claim.film < 1.0
        seen.add(claim.reason)
    assert seen == {
        *("carried up", "nearly carried up", "too slow to carry up"),
        *("pushed along", "nearly pushed along", "too slow to push along"),
    }


def test_a_faster_push_leaves_a_thicker_film() -> None:
    """Guards that film, speed and flow belong to the line they stand at."""
    claims = [c for c in lines_at_many_pressures() if c.link == "riser"]
    by_push = sorted(claims, key=lambda c: c.push_m_s)
    films = [c.film for c in by_push]
    assert films == sorted(films)
    assert films[0] < films[-1]


def with_body(feeder: Link, *, turned: bool) -> CoachNetwork:
    """Lay a tap with a body behind one line, the line or the body laid the other way round."""
    body = valve("body", "x", "y", gate=None, holding="plug", volume_m3=5e-6, resistance_s2_m5=1e7)
    if turned:
        feeder = replace(feeder, start=feeder.end, end=feeder.start)
        body = replace(body, start="y", end="x")
    return laid(
        [
            feeder,
            body,
            tube("spur", "y", "z", 0.3, HALF_INCH_M),
            outlet("tap", "z", resistance=KITCHEN),
        ],
        sources={"hose": ("in", 0.0)},
    )


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(("bore_m", "claim"), [(HALF_INCH_M, "swept"), (0.0045, "not swept")])
def test_a_body_is_as_good_as_the_line_before_it(
    bore_m: float,
    claim: str,
    turned: bool,  # noqa: FBT001 - a column
) -> None:
    """Guards that a body follows the line the air comes from, however both were laid."""
    coach = with_body(tube("feeder", "in", "x", 0.5, bore_m), turned=turned)
    found = blown(coach, "tap").links
    assert (found["feeder"].claim, found["body"].claim) == (claim, claim)


@pytest.mark.parametrize("turned", [False, True])
def test_what_lies_behind_a_full_heater_is_in_doubt(turned: bool) -> None:  # noqa: FBT001
    """Guards that behind, not before, a full heater a line is in doubt, and that this is said."""
    ends = ("e", "d") if turned else ("d", "e")
    heater = valve(
        "heater", *ends, gate=None, holding="vessel", volume_m3=22e-3, resistance_s2_m5=1e7
    )
    coach = laid(
        [pipe("a", "in", "d"), heater, pipe("b", "e", "f"), outlet("tap", "f", resistance=KITCHEN)],
        sources={"hose": ("in", 0.0)},
        heater_ports={"heater": ("d", "e")},
    )
    found = blown(coach, "tap").links
    assert found["a"].claim == "swept"
    assert (found["b"].claim, found["b"].reason) == ("doubtful", "behind a full heater")


def steady(times_delivered: float) -> tuple[AirSupply, AirCurve, float, float, float]:
    """Give a tank, an outlet that draws steadily, and the times to empty and to fill the tank."""
    supply = AirSupply()
    draw = times_delivered * supply.delivery_kg_s
    curve = AirCurve((supply.regulator_Pa,), (draw,), supply.regulator_Pa)
    drop = supply.cut_out_Pa - supply.regulator_Pa
    # The tank loses its drop at the net draw, and regains it at what the compressor delivers.
    capacity_s = drop * supply.receiver_m3 / (GAS_CONSTANT_AIR * (supply.temperature_degC + 273.15))
    empties_s = capacity_s / (draw - supply.delivery_kg_s)
    return supply, curve, draw, empties_s, capacity_s / supply.delivery_kg_s


@pytest.mark.parametrize(
    ("push", "blow", "first", "used"),
    [
        (0.3, 0.2, 1, 0.5),  # all in one burst
        (1.5, 0.1, 2, 0.6),  # the tank is empty while water is still pushed
        (0.5, 0.8, 2, 0.3),  # the tank is empty while it blows
    ],
)
def test_bursts_by_hand(push: float, blow: float, first: int, used: float) -> None:
    """Guards bursts, seconds and refill for a steady draw; push and blow as shares of a tank."""
    supply, curve, draw, empties, fills = steady(5.0)
    regain = REGAIN_S if first > 1 else 0.0
    work = work_of(supply, curve, push * empties, draw, blow * empties)
    assert work.bursts == first
    expected = (push + blow) * empties + (first - 1) * fills + regain
    assert work.seconds == pytest.approx(expected)
    assert work.refill_s == pytest.approx((used + regain / empties) * fills)


def test_without_a_compressor_one_tank_is_all_there_is() -> None:
    """Guards that a second burst needs something that fills the tank again."""
    supply, curve, draw, empties, _ = steady(5.0)
    alone = replace(supply, delivery_m3_s=0.0)
    assert work_of(alone, curve, 0.2 * empties, draw, 0.2 * empties).bursts == 1
    assert work_of(alone, curve, 3.0 * empties, draw, 0.2 * empties).bursts == 0


def test_the_inlet_is_not_blown_out_by_itself() -> None:
    """Guards that of all outlets the pressed check of the inlet itself is left out."""
    network = build_network(load_card(DEMO / "cards" / "small-trailer.toml"))
    found = sweep_all(network, arriving_state(network), "city-inlet", AirSupply())
    assert set(found.outlets) == set(network.outlets) - {"city-inlet"}
