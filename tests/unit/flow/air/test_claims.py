import math
from dataclasses import replace

import pytest

from tests.unit.flow.air.laid_air import (
    HALF_INCH_M,
    KITCHEN,
    QUARTER_INCH_M,
    THREE_QUARTER_INCH_M,
    blown,
    trunk_and_taps,
    tube,
)
from tests.unit.flow.laid_coach import laid, outlet, pipe, valve
from wintertight.flow.air.claims import rise_m
from wintertight.flow.air.gas import GAS_CONSTANT_AIR
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import sweep_all
from wintertight.flow.coach_network import Link, Pool
from wintertight.flow.state import arriving_state
from wintertight.units import PSI_PA


def test_a_kitchen_tap_sweeps_its_riser_and_the_trunk() -> None:
    """Guards the plain case: a kitchen tap at 40 psi on half-inch tube."""
    found = blown(trunk_and_taps(), "kitchen").links
    assert (found["riser"].claim, found["riser"].reason) == ("swept", "carried up")
    assert (found["trunk"].claim, found["trunk"].reason) == ("swept", "pushed along")
    assert (found["ice-tube"].claim, found["ice-tube"].reason) == ("not swept", "small tube")


def test_velocities_are_those_of_the_local_pressure() -> None:
    """Guards that a line's two velocities follow from its mass flow and its two pressures."""
    result = blown(trunk_and_taps(), "kitchen")
    line, area = result.air.links["riser"], math.pi / 4.0 * HALF_INCH_M**2
    volume = line.mass_kg_s * GAS_CONSTANT_AIR * 283.15
    assert line.upstream_m_s == pytest.approx(volume / line.upstream_Pa / area, rel=1e-9)
    assert line.downstream_m_s == pytest.approx(volume / line.downstream_Pa / area, rel=1e-9)
    assert line.upstream_m_s < line.downstream_m_s


@pytest.mark.parametrize(
    ("bore", "tee_m", "claim"),
    [
        (HALF_INCH_M, 0.0, "doubtful"),
        (HALF_INCH_M, 0.5, "not swept"),
        (THREE_QUARTER_INCH_M, 0.0, "not swept"),
        (THREE_QUARTER_INCH_M, 0.5, "not swept"),
    ],
)
def test_an_ice_makers_tube_does_not_sweep_its_trunk(bore: float, tee_m: float, claim: str) -> None:
    """Guards that the flow through a quarter-inch tube never counts as sweeping a trunk."""
    coach = trunk_and_taps(trunk_bore_m=bore, heights_m={"tee": tee_m})
    found = blown(coach, "ice-maker").links
    assert found["trunk"].claim == claim
    assert found["ice-tube"].claim == "not swept"


def test_what_air_never_clears() -> None:
    """Guards pump head, check valve, bowl, heater and trap: not swept, though air goes through."""
    gate = {"gate": None, "resistance_s2_m5": 1e7, "volume_m3": 1e-4}
    coach = laid(
        [
            pipe("a", "in", "b"),
            valve("check", "b", "c", one_way=True, holding="plug", **gate),
            valve("bowl", "c", "d", holding="vessel", resistance_s2_m5=1e7, volume_m3=9e-4),
            valve("heater", "d", "e", holding="vessel", **{**gate, "volume_m3": 22e-3}),
            valve("coil", "e", "f", holding="plug", **{**gate, "volume_m3": 6e-4}),
            valve("body", "f", "g", holding="plug", **{**gate, "volume_m3": 5e-6}),
            outlet("tap", "g", resistance=KITCHEN),
            Link(
                "pump",
                "pump",
                "tank",
                "in",
                way="pump",
                pump_open_m3_s=2e-4,
                pump_cut_off_m=35.0,
                one_way=True,
                holding="vessel",
                volume_m3=1e-4,
            ),
        ],
        sources={"hose": ("in", 0.0)},
        heater_ports={"heater": ("d", "e")},
        pools=[Pool("trap", 2.5e-4, stirred=True)],
        things={"bowl": "bowl"},
    )
    found = blown(coach, "tap", None, "bowl").links
    reasons = {
        "check": "check valve",
        "bowl": "bowl",
        "heater": "heater",
        "coil": "hollow",
        "pump": "pump head",
        "trap": "standing water",
    }
    assert {name: found[name].reason for name in reasons} == reasons
    assert {found[name].claim for name in reasons} == {"not swept"}
    assert found["body"].claim == "doubtful"  # the heater before it is full
    assert found["a"].claim == "swept"


def test_a_check_valve_against_the_way_stops_it() -> None:
    """Guards that air goes no way that a check valve faces."""
    coach = laid(
        [
            pipe("a", "in", "b"),
            valve("check", "c", "b", one_way=True, gate=None),
            pipe("d", "c", "e"),
            outlet("tap", "e", resistance=KITCHEN),
        ],
        sources={"hose": ("in", 0.0)},
    )
    found = blown(coach, "tap")
    assert not found.air.mass_kg_s
    assert {claim.reason for claim in found.links.values()} == {"off the way"}
    assert found.work.bursts == 0


def test_a_side_way_carries_air_only_if_it_ends_in_the_open() -> None:
    """Guards dead ends, another open tap, and two ways side by side."""
    coach = trunk_and_taps(
        tube("loop", "in", "tee", 9.0, HALF_INCH_M), tube("dead", "tee", "x", 1.0, HALF_INCH_M)
    )
    shut = blown(coach, "kitchen")
    assert "dead" not in shut.air.links
    assert "ice-tube" not in shut.air.links
    both = shut.air.links["trunk"].mass_kg_s + shut.air.links["loop"].mass_kg_s
    assert both == pytest.approx(shut.air.mass_kg_s, rel=1e-7)
    assert shut.air.links["loop"].mass_kg_s < shut.air.links["trunk"].mass_kg_s
    also = blown(coach, "kitchen", None, "ice-maker")
    assert also.air.links["ice-tube"].mass_kg_s > 0.0
    assert also.air.mass_kg_s > shut.air.mass_kg_s


def test_a_claim_is_made_where_the_air_is_slowest() -> None:
    """Guards by hand that a riser's number is that at its upstream end, with the density there."""
    result = blown(trunk_and_taps(), "kitchen")
    line, claim = result.air.links["riser"], result.links["riser"]
    density = line.upstream_Pa / (GAS_CONSTANT_AIR * 283.15)
    number = line.upstream_m_s * math.sqrt(density / (9.80665 * HALF_INCH_M * (998.2 - density)))
    assert claim.wallis == pytest.approx(number, rel=1e-9)
    downstream = line.downstream_m_s * math.sqrt(line.downstream_Pa / line.upstream_Pa)
    assert downstream > line.upstream_m_s


def test_water_that_stands_higher_than_the_pressure_is_not_moved() -> None:
    """Guards that 1 psi, which lifts water 0.70 m, blows nothing out of a tap at 1 m."""
    found = blown(trunk_and_taps(), "kitchen", AirSupply(regulator_Pa=PSI_PA))
    assert not found.air.mass_kg_s
    assert {claim.claim for claim in found.links.values()} == {"not swept"}


def test_climbs_by_hand() -> None:
    """Guards climbs over sags and humps, in both directions, and from a raised end."""
    line = replace(tube("x", "low", "high", 2.0, HALF_INCH_M), lowest_m=-0.2)
    coach = laid([line], heights_m={"low": 0.1, "high": 0.9})
    assert rise_m(coach, line, forward=True) == pytest.approx(1.1)  # -0.2 up to 0.9
    assert rise_m(coach, line, forward=False) == pytest.approx(0.3)  # -0.2 up to 0.1
    hump = replace(line, lowest_m=None, highest_m=1.2)
    assert rise_m(coach, hump, forward=False) == pytest.approx(0.3)  # 0.9 up to 1.2
    plain = replace(line, lowest_m=None)
    assert rise_m(coach, plain, forward=False) == 0.0  # it falls
    raised = replace(plain, start_m=0.95)
    assert rise_m(coach, raised, forward=True) == pytest.approx(0.85)  # 0.1 up to 0.95
    long = replace(plain, length_m=100.0)
    assert rise_m(coach, long, forward=True) == 0.0  # 0.8 in 100 is level


def test_the_best_of_all_outlets_is_kept() -> None:
    """Guards that each line gets its best claim and the outlet it comes from."""
    coach = trunk_and_taps()
    found = sweep_all(coach, arriving_state(coach), "hose", AirSupply())
    assert set(found.outlets) == {"kitchen", "ice-maker"}
    assert (found.best["trunk"].outlet, found.best["trunk"].sweep.claim) == ("kitchen", "swept")
    assert (found.best["ice-tube"].outlet, found.best["ice-tube"].sweep.claim) == ("", "not swept")
    works = [result.work for result in found.outlets.values()]
    assert found.seconds == pytest.approx(sum(w.seconds for w in works) + works[0].refill_s)


def test_the_body_of_an_outlet_follows_its_line() -> None:
    """Guards that a tap's body has the claim of its line, and that a hose is in doubt at best."""
    coach = trunk_and_taps()
    tap = coach.links["kitchen(outlet)"]
    for volume, claim in ((3e-5, "swept"), (8e-5, "doubtful"), (1e-3, "not swept")):
        body = replace(tap, holding="plug", volume_m3=volume)
        found = blown(replace(coach, links={**coach.links, tap.id: body}), "kitchen")
        assert found.links[tap.id].claim == claim


def test_a_small_tube_is_never_swept_whatever_the_flow() -> None:
    """Guards tubes under 5 mm, even where the air in them is fast."""
    coach = laid(
        [tube("t", "in", "x", 0.5, QUARTER_INCH_M), outlet("tap", "x", resistance=KITCHEN)],
        sources={"hose": ("in", 0.0)},
    )
    found = blown(coach, "tap")
    assert found.air.links["t"].upstream_m_s > 20.0
    assert found.links["t"].reason == "small tube"
