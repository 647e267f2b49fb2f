"""What holds for the steady flow of any network, whatever its shape and sizes."""

from dataclasses import replace
from typing import Any

import numpy as np
import numpy.typing as npt
from hypothesis import given
from hypothesis import strategies as st

from wintertight.flow.steady import (
    LinkKind,
    NetworkBuilder,
    PipeNetwork,
    Steady,
    carrying_links,
    continuity_error,
    solve_steady,
)

WATER_M2_S = 1.3e-6
Bools = npt.NDArray[np.bool_]


@st.composite
def networks(draw: st.DrawFn, *, one_way: bool = True) -> tuple[PipeNetwork, Bools]:
    """Draw a connected network with two to four held heads, and which of its links are open."""
    nodes = draw(st.integers(4, 14))
    held = draw(st.sets(st.integers(0, nodes - 1), min_size=2, max_size=4))
    builder = NetworkBuilder()
    for i in range(nodes):
        head = float(draw(st.integers(0, 40))) if i in held else None
        builder.node(f"n{i}", fixed_head_m=head)
    pairs = [(draw(st.integers(0, i - 1)), i) for i in range(1, nodes)]
    indices = st.integers(0, nodes - 1)
    more = st.tuples(indices, indices).filter(lambda pair: pair[0] != pair[1])
    pairs += draw(st.lists(more, max_size=8))
    kinds = ["pipe", "pipe", "loss", "check", "pump"] if one_way else ["pipe", "pipe", "loss"]
    for i, (a, b) in enumerate(pairs):
        _lay(draw, builder, f"l{i}", (f"n{a}", f"n{b}"), draw(st.sampled_from(kinds)))
    is_open = np.array([draw(st.integers(0, 9)) > 0 for _ in pairs])
    return builder.build(), is_open


def _lay(
    draw: st.DrawFn, builder: NetworkBuilder, name: str, ends: tuple[str, str], kind: str
) -> None:
    if kind == "pump":
        exponent = draw(st.sampled_from([0.5, 1.0, 2.0]))
        shutoff = float(draw(st.integers(5, 40)))
        builder.pump(
            name, *ends, shutoff_m=shutoff, coefficient=shutoff / 2e-4**exponent, exponent=exponent
        )
    elif kind == "loss":
        builder.loss(name, *ends, coefficient=10.0 ** draw(st.integers(6, 10)))
    else:
        builder.pipe(
            name,
            *ends,
            length_m=0.1 * draw(st.integers(1, 60)),
            bore_m=draw(st.sampled_from([0.0065, 0.0091, 0.0123, 0.0173])),
            roughness_m=draw(st.sampled_from([0.0, 1.5e-6, 1e-4])),
            minor_loss=float(draw(st.integers(0, 5))),
            one_way=kind == "check",
        )


def near(a: Any, b: Any) -> bool:
    """Tell whether flows agree to 1e-7 of the largest, or 1e-12 m3/s."""
    largest = max(float(np.abs(a).max(initial=0.0)), float(np.abs(b).max(initial=0.0)))
    return bool(np.abs(np.asarray(a) - np.asarray(b)).max(initial=0.0) <= 1e-7 * largest + 1e-12)


def taken(network: PipeNetwork, nodes: Any, links: Any) -> PipeNetwork:
    """Give the same network with its nodes and links in another order."""
    place = np.argsort(nodes)
    by_link = ["kind", "length_m", "bore_m", "roughness_m", "minor_loss", "loss_coefficient"]
    by_link += ["one_way", "pump_shutoff_m", "pump_coefficient", "pump_exponent"]
    changed: dict[str, Any] = {name: getattr(network, name)[links] for name in by_link}
    for name in ("elevation_m", "fixed_head_m", "demand_m3_s"):
        changed[name] = getattr(network, name)[nodes]
    return replace(
        network,
        node_ids=tuple(f"other {i}" for i in nodes),
        link_ids=tuple(f"another {i}" for i in links),
        start=place[network.start[links]],
        end=place[network.end[links]],
        **changed,
    )


def solved(case: tuple[PipeNetwork, Bools]) -> Steady:
    """Solve with cold water."""
    return solve_steady(*case, WATER_M2_S)


@given(networks())
def test_what_enters_a_node_leaves_it(case: tuple[PipeNetwork, Bools]) -> None:
    """Guards continuity at each free node."""
    flow = solved(case).flow_m3_s
    if np.abs(flow).max(initial=0.0) > 1e-12:
        assert continuity_error(case[0], flow) < 1e-10


@given(networks())
def test_what_cannot_carry_carries_exactly_nothing(case: tuple[PipeNetwork, Bools]) -> None:
    """Guards closed links and dead ends at 0.0, and one-way links against any backward flow."""
    network, is_open = case
    flow = solved(case).flow_m3_s
    assert not flow[~is_open].any()
    assert not flow[~carrying_links(network, is_open)].any()
    assert (flow[network.carries_one_way] >= 0.0).all()


@given(networks())
def test_closed_one_way_links_are_not_pushed_open(case: tuple[PipeNetwork, Bools]) -> None:
    """Guards the state of one-way links: one at rest has no head that would open it."""
    network, is_open = case
    steady = solved(case)
    push = steady.head_m[network.start] - steady.head_m[network.end]
    push += np.where(network.kind == LinkKind.PUMP, network.pump_shutoff_m, 0.0)
    at_rest = is_open & network.carries_one_way & (steady.flow_m3_s == 0.0) & ~np.isnan(push)
    assert (push[at_rest] < 1e-8).all()


@given(networks(), st.randoms(use_true_random=False))
def test_order_and_names_change_nothing(case: tuple[PipeNetwork, Bools], shuffler: Any) -> None:
    """Guards against answers that depend on the order in which a network is written down."""
    network, is_open = case
    nodes, links = list(range(len(network.node_ids))), list(range(len(network.link_ids)))
    shuffler.shuffle(nodes)
    shuffler.shuffle(links)
    first, second = solved(case), solved((taken(network, nodes, links), is_open[links]))
    assert near(first.flow_m3_s[links], second.flow_m3_s)
    assert (np.isnan(first.head_m[nodes]) == np.isnan(second.head_m)).all()


@given(networks(), st.data())
def test_a_flipped_link_has_the_flow_with_the_other_sign(
    case: tuple[PipeNetwork, Bools], data: st.DataObject
) -> None:
    """Guards signs: only the direction in which a link is counted decides them."""
    network, is_open = case
    flipped = np.array(data.draw(st.lists(st.booleans(), min_size=is_open.size)))[: is_open.size]
    flipped &= ~network.carries_one_way
    other = replace(
        network,
        start=np.where(flipped, network.end, network.start),
        end=np.where(flipped, network.start, network.end),
    )
    sign = np.where(flipped, -1.0, 1.0)
    assert near(solved(case).flow_m3_s, sign * solved((other, is_open)).flow_m3_s)


@given(networks(one_way=False), st.data())
def test_another_open_path_never_lowers_the_flow(
    case: tuple[PipeNetwork, Bools], data: st.DataObject
) -> None:
    """Guards that opening a link between two held heads' network never lowers what flows."""
    network, is_open = case
    held = np.flatnonzero(network.is_fixed)
    heads = np.full(len(network.node_ids), np.nan)
    heads[held[0]], heads[held[1]] = 20.0, 0.0
    network = replace(network, fixed_head_m=heads)
    wider = is_open.copy()
    wider[data.draw(st.integers(0, is_open.size - 1))] = True

    def drawn(mask: Bools) -> float:
        flow = solve_steady(network, mask, WATER_M2_S).flow_m3_s
        out = flow[network.start == held[0]].sum() - flow[network.end == held[0]].sum()
        return float(out)

    assert drawn(wider) >= drawn(is_open) * (1.0 - 1e-8) - 1e-12


@given(networks(one_way=False), st.sampled_from([0.5, 2.0, 10.0]))
def test_scaled_networks_have_scaled_flows(case: tuple[PipeNetwork, Bools], scale: float) -> None:
    """Guards dimensions: all lengths by s and viscosity by s^1.5 give flows by s^2.5."""
    network, is_open = case
    larger = replace(
        network,
        elevation_m=scale * network.elevation_m,
        fixed_head_m=scale * network.fixed_head_m,
        length_m=scale * network.length_m,
        bore_m=scale * network.bore_m,
        roughness_m=scale * network.roughness_m,
        loss_coefficient=scale**-4 * network.loss_coefficient,
    )
    grown = solve_steady(larger, is_open, WATER_M2_S * scale**1.5).flow_m3_s
    assert near(solved(case).flow_m3_s, grown / scale**2.5)


@given(networks())
def test_a_start_changes_the_effort_and_not_the_answer(case: tuple[PipeNetwork, Bools]) -> None:
    """Guards solves that start from a former solution, here at another viscosity."""
    former = solve_steady(*case, 8e-6).flow_m3_s
    again = solve_steady(*case, WATER_M2_S, start_flows=former)
    assert near(again.flow_m3_s, solved(case).flow_m3_s)
