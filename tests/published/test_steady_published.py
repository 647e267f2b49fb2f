"""Pipe flows in print: parallel, series and branching pipes, single lines, a pump, a loss table."""

import math

import numpy as np
import pytest

from tests.conftest import Published
from wintertight.flow.steady import (
    NetworkBuilder,
    friction_factor_churchill,
    friction_factor_colebrook,
    friction_factor_epanet,
    solve_steady,
)

# length [m], bore [m], roughness [m] of the three pipes that ch. 6 uses throughout section 6.10
THREE_PIPES = ((100.0, 0.08, 0.24e-3), (150.0, 0.06, 0.12e-3), (80.0, 0.04, 0.20e-3))
WATER_M2_S = 1.02e-6
ONE_PERCENT = "another equation than the book's; both claim no better than 10 % of f"
M3_H = 3600.0
FOOT = 0.3048
GALLON = 3.785411784e-3
PSI = 6894.757293168


def three_pipes(
    ends: tuple[tuple[str, str], ...], heads: dict[str, float | None]
) -> NetworkBuilder:
    """Lay the three pipes between nodes, some of which have a held head."""
    builder = NetworkBuilder()
    for name, head in heads.items():
        builder.node(name, fixed_head_m=head)
    for i, ((length, bore, roughness), (start, end)) in enumerate(
        zip(THREE_PIPES, ends, strict=True)
    ):
        builder.pipe(
            f"pipe {i + 1}", start, end, length_m=length, bore_m=bore, roughness_m=roughness
        )
    return builder


def test_parallel_pipes(published: Published) -> None:
    """Guards the split of a flow between parallel pipes, by the book's friction law."""
    network = three_pipes((("a", "b"),) * 3, {"a": 20.3, "b": 0.0}).build()
    flow = M3_H * solve_steady(network, np.ones(3, bool), WATER_M2_S, "colebrook").flow_m3_s
    for i, printed in enumerate(("62.5", "25.9", "11.4")):
        published("white", f"parallel pipes, pipe {i + 1} [m3/h]", printed, flow[i], place="6.10")
    published("white", "parallel pipes, total [m3/h]", "99.8", flow.sum(), place="6.10")


def test_parallel_pipes_by_churchill(published: Published) -> None:
    """Guards that the product's own friction law stays near the printed flows."""
    network = three_pipes((("a", "b"),) * 3, {"a": 20.3, "b": 0.0}).build()
    flow = M3_H * solve_steady(network, np.ones(3, bool), WATER_M2_S).flow_m3_s
    published(
        "white",
        "parallel pipes, total, by Churchill [m3/h]",
        "99.8",
        flow.sum(),
        0.998,
        ONE_PERCENT,
        place="6.10",
    )


def test_series_pipes(published: Published) -> None:
    """Guards the flow through pipes one after the other."""
    heads = {"a": 20.3, "b": None, "c": None, "d": 0.0}
    network = three_pipes((("a", "b"), ("b", "c"), ("c", "d")), heads).build()
    flow = solve_steady(network, np.ones(3, bool), WATER_M2_S, "colebrook").flow_m3_s
    published("white", "series pipes [m3/h]", "10.2", M3_H * flow[0], place="6.10, from memory")


def test_three_reservoirs(published: Published) -> None:
    """Guards a junction of three pipes, whose flows have no known direction before."""
    heads = {"1": 20.0, "2": 100.0, "3": 40.0, "j": None}
    network = three_pipes((("1", "j"), ("2", "j"), ("3", "j")), heads).build()
    steady = solve_steady(network, np.ones(3, bool), WATER_M2_S, "colebrook")
    published(
        "white",
        "three reservoirs, head at the junction [m]",
        "34.53",
        steady.head_m[3],
        0.02,
        "the book stops iterating by hand when its flows close to three places",
        place="6.10",
    )
    for i, printed in enumerate(("-52.8", "47.0", "5.8")):
        flow = M3_H * steady.flow_m3_s[i]
        published("white", f"three reservoirs, pipe {i + 1} [m3/h]", printed, flow, place="6.10")


def test_water_line(published: Published) -> None:
    """Guards the loss of a single rough line of water."""
    flow = 6.0 * math.pi / 4.0 * 0.5**2
    network = (
        NetworkBuilder()
        .node("a", fixed_head_m=0.0)
        .node("b", demand_m3_s=flow * FOOT**3)
        .pipe("line", "a", "b", length_m=200 * FOOT, bore_m=0.5 * FOOT, roughness_m=0.0004 * FOOT)
        .build()
    )
    steady = solve_steady(network, np.ones(1, bool), 1.1e-5 * FOOT**2, "colebrook")
    published(
        "white",
        "head loss, 200 ft of 6 in asphalted cast iron, 6 ft/s [ft]",
        "4.5",
        -steady.head_m[1] / FOOT,
        0.11,
        "the book reads f = 0.02 from a chart, to 0.0005 at best: 2.5 % of the loss",
        place="example 6.6, from memory",
    )


def test_oil_line(published: Published) -> None:
    """Guards the loss of a fast oil line in cast iron."""
    network = (
        NetworkBuilder()
        .node("a", fixed_head_m=0.0)
        .node("b", demand_m3_s=0.2)
        .pipe("line", "a", "b", length_m=500.0, bore_m=0.2, roughness_m=0.26e-3)
        .build()
    )
    steady = solve_steady(network, np.ones(1, bool), 1e-5, "colebrook")
    published(
        "white",
        "head loss, oil, 500 m of 200 mm cast iron [m]",
        "117",
        -steady.head_m[1],
        1.5,
        "the book reads f = 0.0225 from a chart and rounds the velocity to 6.4 m/s",
        place="example 6.7, from memory",
    )


def test_pump_at_its_operating_point(published: Published) -> None:
    """Guards where the curve of a pump, 490 - 0.26 Q^2, meets that of its line."""
    thousand_gpm = 1000.0 * GALLON / 60.0
    area = math.pi / 4.0 * (16.0 / 12.0 * FOOT) ** 2
    line = 0.030 * 1500.0 / (16.0 / 12.0) / (2.0 * 9.80665 * area**2)
    network = (
        NetworkBuilder()
        .node("low", fixed_head_m=0.0)
        .node("pumped")
        .node("high", fixed_head_m=120.0 * FOOT)
        .pump(
            "pump",
            "low",
            "pumped",
            shutoff_m=490.0 * FOOT,
            coefficient=0.26 * FOOT / thousand_gpm**2,
            exponent=2.0,
        )
        .loss("line", "pumped", "high", coefficient=line)
        .build()
    )
    steady = solve_steady(network, np.ones(2, bool), 1e-6)
    flow = steady.flow_m3_s[0] / thousand_gpm
    place = "ch. 11, example 11.6, from memory"
    published(
        "white", "pump, flow at the operating point [1000 gal/min]", "15.2", flow, place=place
    )
    published(
        "white",
        "pump, head at the operating point [ft]",
        "430",
        steady.head_m[1] / FOOT,
        place=place,
    )


@pytest.mark.parametrize("roughness_m", [1.5e-6, 7e-6 * FOOT])
def test_half_inch_tube(roughness_m: float, published: Published) -> None:
    """Guards the loss of the tube coaches are plumbed with, at a flow of theirs."""
    network = (
        NetworkBuilder()
        .node("a", fixed_head_m=0.0)
        .node("b", demand_m3_s=3.0 * GALLON / 60.0)
        .pipe(
            "tube", "a", "b", length_m=100.0 * FOOT, bore_m=0.485 * 0.0254, roughness_m=roughness_m
        )
        .build()
    )
    steady = solve_steady(network, np.ones(1, bool), 1.0034e-6)
    published(
        "pex-loss-table",
        f"1/2 in tube, 100 ft, 3 gal/min, roughness {1e6 * roughness_m:.2f} um [psi]",
        "11.0",
        -steady.head_m[1] * 9.80665 * 998.2 / PSI,
        1.1,
        "Hazen and Williams with 150 gives 10.9 from this bore, a formula for larger lines",
    )


@pytest.mark.parametrize(
    ("law", "source"), [("churchill", "churchill"), ("colebrook", "colebrook")]
)
def test_laminar_friction(law: str, source: str, published: Published) -> None:
    """Guards 64/Re, the exact result of laminar flow."""
    factor = {"churchill": friction_factor_churchill, "colebrook": friction_factor_colebrook}[law]
    published(source, "friction factor at Re 640, laminar [1]", "0.1000", float(factor(640.0, 0.0)))


def test_friction_of_a_smooth_pipe(published: Published) -> None:
    """Guards the smooth limit against the book's table of Prandtl's law."""
    table = (("4000", "0.0399"), ("10000", "0.0309"), ("100000", "0.0180"), ("1000000", "0.0116"))
    for reynolds, printed in table:
        ours = float(friction_factor_colebrook(float(reynolds), 0.0))
        published("white", f"smooth pipe, Re {reynolds} [1]", printed, ours, place="6.6")


def test_approximations_stay_near_colebrook() -> None:
    """Guards both explicit formulas within 3 % of the equation they stand for."""
    reynolds = np.geomspace(5e3, 1e7, 40)
    for roughness in (0.0, 1e-5, 1e-3, 1e-2):
        true = friction_factor_colebrook(reynolds, roughness)
        assert np.abs(friction_factor_epanet(reynolds, roughness) / true - 1.0).max() < 0.03
        near = friction_factor_churchill(reynolds, roughness) / true
        assert np.abs(near - 1.0).max() < 0.05
