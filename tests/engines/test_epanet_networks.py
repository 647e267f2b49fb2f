"""The steady solver against EPANET 2.3 on networks drawn by lot, and the twin against itself."""

from pathlib import Path

import numpy as np
import pytest

from tests.conftest import Published
from tests.engines.epanet_text import Bools
from tests.engines.epanet_twin import crossing_time, epanet_flow, epanet_fronts
from wintertight.flow.steady import NetworkBuilder, PipeNetwork, solve_steady

BORES_M = (0.0065, 0.0091, 0.0123, 0.0173)
ROUGHNESSES_M = (0.0, 1.5e-6, 1e-4)
AGREEMENT = 1e-6


def drawn(seed: int, nodes: int, extra: int) -> tuple[PipeNetwork, Bools, float]:
    """Draw a network: a tree with extra links, pumps, check valves, outlets, some links closed."""
    lot = np.random.default_rng(seed)
    builder = NetworkBuilder().node("tank", fixed_head_m=float(lot.uniform(0.0, 1.0)))
    builder.node("city", fixed_head_m=float(lot.uniform(25.0, 30.0)))
    builder.node("pumped").node("n0").node("n1")
    exponent = float(lot.choice([0.7, 1.0, 1.5, 2.0]))
    shutoff = float(lot.uniform(30.0, 40.0))
    builder.pump(
        "pump",
        "tank",
        "pumped",
        shutoff_m=shutoff,
        coefficient=shutoff / 4e-4**exponent,
        exponent=exponent,
    )
    builder.pipe("check", "pumped", "n0", length_m=0.3, bore_m=0.0123, one_way=True)
    builder.pipe("inlet", "city", "n1", length_m=2.0, bore_m=0.0123, minor_loss=3.0, one_way=True)
    builder.pipe("main", "n0", "n1", length_m=1.0, bore_m=0.0173)
    links = 0
    for i in range(2, nodes):
        builder.node(f"n{i}", elevation_m=float(lot.uniform(0.0, 2.0)))
        ends = (f"n{lot.integers(0, i)}", f"n{i}")
        _draw_link(builder, lot, f"l{links}", ends if lot.random() < 0.7 else ends[::-1])
        links += 1
    for _ in range(extra):
        a, b = lot.choice(nodes, 2, replace=False)
        _draw_link(builder, lot, f"l{links}", (f"n{a}", f"n{b}"))
        links += 1
    for i in lot.choice(np.arange(2, nodes), 3, replace=False):
        elevation = float(lot.uniform(0.0, 2.0))
        builder.node(f"tap{i}", elevation).node(f"air{i}", fixed_head_m=elevation)
        builder.pipe(f"riser{i}", f"n{i}", f"tap{i}", length_m=0.8, bore_m=0.0091)
        builder.loss(f"out{i}", f"tap{i}", f"air{i}", coefficient=10.0 ** lot.uniform(8.0, 9.5))
    network = builder.build()
    is_open = lot.random(len(network.link_ids)) < 0.93
    return network, is_open, float(10.0 ** lot.uniform(-6.0, -5.0))


def _draw_link(
    builder: NetworkBuilder, lot: np.random.Generator, name: str, ends: tuple[str, str]
) -> None:
    one_way = bool(lot.random() < 0.15)
    if lot.random() < 0.2:
        builder.loss(name, *ends, coefficient=10.0 ** lot.uniform(6.0, 9.0), one_way=one_way)
    else:
        builder.pipe(
            name,
            *ends,
            length_m=float(lot.uniform(0.2, 4.0)),
            bore_m=float(lot.choice(BORES_M)),
            roughness_m=float(lot.choice(ROUGHNESSES_M)),
            minor_loss=float(lot.choice([0.0, 0.9, 4.0])),
            one_way=one_way,
        )


@pytest.mark.parametrize("extra", [0, 8])
@pytest.mark.parametrize("seed", range(12))
def test_flows_agree_on_networks_drawn_by_lot(seed: int, extra: int, tmp_path: Path) -> None:
    """Guards every flow and head, branched and looped, against another engine's."""
    network, is_open, viscosity = drawn(seed, 18, extra)
    theirs = epanet_flow(network, is_open, viscosity, tmp_path)
    ours = solve_steady(network, is_open, viscosity, "epanet")
    largest = np.abs(ours.flow_m3_s).max()
    difference = np.abs(theirs.flow_m3_s - ours.flow_m3_s)
    assert difference.max() <= AGREEMENT * max(largest, 1e-5)


def test_heads_agree_where_water_moves(tmp_path: Path) -> None:
    """Guards heads, which follow from the flows along another way than in the other engine."""
    network, is_open, viscosity = drawn(3, 18, 8)
    theirs = epanet_flow(network, is_open, viscosity, tmp_path)
    ours = solve_steady(network, is_open, viscosity, "epanet")
    moving = np.abs(ours.flow_m3_s) > 1e-7
    nodes = np.unique(np.concatenate([network.start[moving], network.end[moving]]))
    nodes = nodes[~np.isnan(theirs.head_m[nodes])]
    assert nodes.size > 4
    assert np.abs(theirs.head_m[nodes] - ours.head_m[nodes]).max() < 1e-5


def test_total_flow_of_a_pumped_tree(published: Published, tmp_path: Path) -> None:
    """Guards one whole pumped network with three open outlets, as a row of the accuracy page."""
    network, _, _ = drawn(5, 18, 0)
    is_open = np.ones(len(network.link_ids), dtype=np.bool_)
    theirs = epanet_flow(network, is_open, 1.3e-6, tmp_path)
    ours = solve_steady(network, is_open, 1.3e-6, "epanet")
    outlets = [i for i, name in enumerate(network.link_ids) if name.startswith("out")]
    published(
        "epanet",
        "flow of a pumped tree with three outlets, friction as there [L/s]",
        f"{1e3 * theirs.flow_m3_s[outlets].sum():.6f}",
        1e3 * ours.flow_m3_s[outlets].sum(),
        place="version 2.3.5",
    )


def test_a_front_arrives_after_the_volume_of_its_way(tmp_path: Path) -> None:
    """Guards the twin's front times, on which other tests rely, against volume over flow."""
    network = (
        NetworkBuilder()
        .node("supply", fixed_head_m=20.0)
        .node("a")
        .node("b")
        .node("c")
        .node("air", fixed_head_m=0.0)
        .pipe("first", "supply", "a", length_m=2.0, bore_m=0.0123, one_way=True)
        .pipe("second", "a", "b", length_m=3.3, bore_m=0.0091)
        .pipe("third", "b", "c", length_m=0.7, bore_m=0.0065)
        .loss("tap", "c", "air", coefficient=1e9)
        .build()
    )
    is_open = np.ones(4, dtype=np.bool_)
    flow = solve_steady(network, is_open, 1e-6, "epanet").flow_m3_s[0]
    volumes = network.length_m[:3] * np.pi / 4.0 * network.bore_m[:3] ** 2
    times, seen = epanet_fronts(
        network,
        is_open,
        1e-6,
        tmp_path,
        supply={"supply": 1.0},
        watch=["b", "c"],
        duration_s=6.0,
    )
    assert crossing_time(times, seen["b"], 0.5) == pytest.approx(volumes[:2].sum() / flow, abs=0.02)
    assert crossing_time(times, seen["c"], 0.5) == pytest.approx(volumes.sum() / flow, abs=0.02)
    assert seen["c"][-1] == pytest.approx(1.0, abs=1e-6)
