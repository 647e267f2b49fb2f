"""Air in lines and openings against another library."""

import itertools
from importlib.resources import files

import numpy as np
import pytest
from fluids import friction as their_friction
from fluids.compressible import P_critical_flow, P_isothermal_critical_flow, isothermal_gas
from fluids.safety_valve import API520_A_g

from tests.unit.flow.laid_coach import laid, outlet, pipe
from wintertight.coach.load import load_card
from wintertight.flow.air.air_flow import air_flow
from wintertight.flow.air.gas import ATMOSPHERE_PA, density_air, viscosity_air
from wintertight.flow.air.laws import (
    CRITICAL_RATIO,
    choked_ratio,
    isothermal_mass_flow,
    opening_factor,
)
from wintertight.flow.air.open_way import open_way
from wintertight.flow.build import build_network
from wintertight.flow.losses import GRAVITY
from wintertight.flow.state import arriving_state, with_outlet_open

DEGC = 10.0
MOLAR_G = 28.9644
GRID = list(
    itertools.product((0.5, 5.0, 40.0), (0.0045, 0.0123, 0.0173), (0.01, 0.03), (1.2e5, 3.77e5))
)


@pytest.mark.parametrize(("length", "bore", "friction", "inlet"), GRID)
def test_isothermal_lines_agree(length: float, bore: float, friction: float, inlet: float) -> None:
    """Guards the isothermal flow of air in a line, choked and not, on a grid of lines."""
    critical = P_isothermal_critical_flow(P=inlet, fd=friction, D=bore, L=length)
    assert choked_ratio(friction * length / bore) == pytest.approx(critical / inlet, rel=1e-9)
    for outside in np.linspace(0.0, 0.999 * inlet, 8):
        ours = isothermal_mass_flow(
            inlet,
            float(outside),
            length_m=length,
            bore_m=bore,
            friction_factor=friction,
            temperature_degC=DEGC,
        )
        theirs = isothermal_gas(
            rho=density_air(inlet, DEGC),
            fd=friction,
            P1=inlet,
            P2=max(float(outside), critical * (1.0 + 1e-12)),
            L=length,
            D=bore,
        )
        assert ours == pytest.approx(theirs, rel=1e-8)


@pytest.mark.parametrize("gauge", [0.2e5, 1.0e5, 2.76e5])
@pytest.mark.parametrize("length", [1.0, 6.0, 30.0])
def test_a_line_with_a_wide_end_agrees(gauge: float, length: float) -> None:
    """Guards the solver on squared pressures: one line with nothing but air behind it."""
    coach = laid(
        [pipe("line", "a", "b", length), outlet("end", "b", resistance=1.0)],
        sources={"hose": ("a", 0.0)},
    )
    way = open_way(coach, with_outlet_open(coach, arriving_state(coach), "end"), "hose")
    assert way is not None
    air = air_flow(way, gauge, DEGC)
    line, bore = air.links["line"], coach.links["line"].bore_m
    reynolds = 4.0 * air.mass_kg_s / (np.pi * bore * viscosity_air(DEGC))
    friction = their_friction.Churchill_1977(reynolds, 1.5e-6 / bore)
    critical = P_isothermal_critical_flow(P=line.upstream_Pa, fd=friction, D=bore, L=length)
    theirs = isothermal_gas(
        rho=density_air(line.upstream_Pa, DEGC),
        fd=friction,
        P1=line.upstream_Pa,
        P2=max(line.downstream_Pa, critical * (1.0 + 1e-12)),
        L=length,
        D=bore,
    )
    assert air.mass_kg_s == pytest.approx(theirs, rel=1e-6)
    assert line.choked == (line.downstream_Pa < critical)


def test_choked_openings_agree() -> None:
    """Guards the speed of sound in an opening: its critical ratio, and its flow by API 520."""
    assert pytest.approx(P_critical_flow(1.0, 1.4), rel=1e-12) == CRITICAL_RATIO
    area, inlet = 4.8e-6, 3.77e5
    resistance = 1.0 / (2.0 * GRAVITY * area**2)
    coach = laid(
        [pipe("line", "a", "b", 0.01, bore_m=0.05), outlet("tap", "b", resistance=resistance)],
        sources={"hose": ("a", 0.0)},
    )
    way = open_way(coach, with_outlet_open(coach, arriving_state(coach), "tap"), "hose")
    assert way is not None
    air = air_flow(way, inlet - ATMOSPHERE_PA, DEGC)
    tap = air.links["tap(outlet)"]
    theirs = API520_A_g(
        m=air.mass_kg_s, T=DEGC + 273.15, Z=1.0, MW=MOLAR_G, k=1.4, P1=tap.upstream_Pa, Kd=1.0
    )
    assert tap.choked
    assert theirs == pytest.approx(area, rel=1e-4)  # their constant is printed with five digits


@pytest.mark.parametrize("ratio", [0.6, 0.7, 0.8, 0.9])
def test_openings_below_choking_agree(ratio: float) -> None:
    """Guards the flow through an opening that is not choked, by the area API 520 asks for."""
    area, inlet = 4.8e-6, 3.0e5
    squares = inlet**2 * (1.0 - ratio**2)
    energy = inlet / density_air(inlet, DEGC)
    mass = area * np.sqrt(squares / (energy * float(opening_factor(ratio))))
    theirs = API520_A_g(
        m=mass, T=DEGC + 273.15, Z=1.0, MW=MOLAR_G, k=1.4, P1=inlet, P2=ratio * inlet, Kd=1.0
    )
    assert theirs == pytest.approx(area, rel=2e-3)  # their constant 17.9 has three digits


@pytest.mark.parametrize("name", ["kitchen.hot", "shower.cold", "toilet"])
def test_every_line_of_a_coach_agrees(name: str) -> None:
    """Guards a whole way of the demo coach: each line's flow follows from its two pressures."""
    card = load_card(str(files("wintertight") / "demo" / "cards" / "middle-travel-trailer.toml"))
    coach = build_network(card)
    state = with_outlet_open(coach, arriving_state(coach), name)
    way = open_way(coach, state, "city-inlet")
    assert way is not None
    air = air_flow(way, 2.76e5, DEGC)
    lines = [k for k in way.links if k.way == "pipe"]
    assert len(lines) > 3
    for link in lines:
        moving = air.links[link.id]
        reynolds = 4.0 * moving.mass_kg_s / (np.pi * link.bore_m * viscosity_air(DEGC))
        friction = their_friction.Churchill_1977(reynolds, link.roughness_m / link.bore_m)
        theirs = isothermal_gas(
            rho=density_air(moving.upstream_Pa, DEGC),
            fd=friction,
            P1=moving.upstream_Pa,
            P2=moving.downstream_Pa,
            L=link.length_m + link.bends_loss * link.bore_m / friction,
            D=link.bore_m,
        )
        assert moving.mass_kg_s == pytest.approx(theirs, rel=1e-5)
