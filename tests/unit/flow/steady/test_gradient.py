import numpy as np
import pytest

from wintertight.errors import InputError, NoSteadyFlow
from wintertight.flow.steady import NetworkBuilder, PipeNetwork, Steady, gradient, solve_steady

WATER_M2_S = 1.0e-6


def solved(network: PipeNetwork, shut: str = "", start: np.ndarray | None = None) -> Steady:
    """Solve with the links named in ``shut`` closed."""
    is_open = np.array([name not in shut.split() for name in network.link_ids])
    return solve_steady(network, is_open, WATER_M2_S, start_flows=start)


def house() -> PipeNetwork:
    """A tank with a pump and a city inlet, each behind a check valve, and two taps."""
    return (
        NetworkBuilder()
        .node("tank", fixed_head_m=0.0)
        .node("city", fixed_head_m=25.0)
        .node("pumped")
        .node("main")
        .node("far")
        .node("air", fixed_head_m=0.0)
        .pump("pump", "tank", "pumped", shutoff_m=35.0, coefficient=35.0 / 2e-4, exponent=1.0)
        .loss("check", "pumped", "main", coefficient=1e7, one_way=True)
        .pipe("inlet", "city", "main", length_m=1.0, bore_m=0.012, one_way=True)
        .pipe("line", "main", "far", length_m=4.0, bore_m=0.012)
        .loss("near tap", "main", "air", coefficient=1e9)
        .loss("far tap", "far", "air", coefficient=2e10)
        .build()
    )


def test_laminar_flow_is_exact() -> None:
    """Guards the flow of a laminar line against Poiseuille: q = pi g D^4 h / (128 nu L)."""
    network = (
        NetworkBuilder()
        .node("a", fixed_head_m=0.01)
        .node("b", fixed_head_m=0.0)
        .pipe("line", "a", "b", length_m=10.0, bore_m=0.012)
        .build()
    )
    exact = np.pi * 9.80665 * 0.012**4 * 0.01 / (128.0 * WATER_M2_S * 10.0)
    assert solved(network).flow_m3_s[0] == pytest.approx(exact, rel=1e-9)


def test_losses_in_series_and_parallel_are_exact() -> None:
    """Guards loss links by hand: q = sqrt(h / r) through each of two in parallel."""
    network = (
        NetworkBuilder()
        .node("a", fixed_head_m=9.0)
        .node("b")
        .node("c", fixed_head_m=0.0)
        .loss("first", "a", "b", coefficient=1e8)
        .loss("left", "b", "c", coefficient=4e8)
        .loss("right", "c", "b", coefficient=16e8)
        .build()
    )
    # 1/sqrt(r) add in parallel: 1/2 + 1/4 = 3/4 of 1e-4, so r = 16/9 e8; 25/9 e8 in all
    total = np.sqrt(9.0 / (25.0 / 9.0 * 1e8))
    expected = np.array([1.0, 2.0 / 3.0, -1.0 / 3.0]) * total
    assert solved(network).flow_m3_s == pytest.approx(expected, rel=1e-9)
    assert solved(network).head_m[1] == pytest.approx(9.0 * 16.0 / 25.0, rel=1e-9)


def test_everything_closed_gives_zeros() -> None:
    """Guards a network at rest: no flow and no error; what nothing reaches has no head."""
    steady = solve_steady(house(), np.zeros(6, bool), WATER_M2_S)
    assert steady.flow_m3_s.tolist() == [0.0] * 6
    assert np.isnan(steady.head_m).tolist() == [False, False, True, True, True, False]


def test_pump_against_closed_taps_stands_at_its_shutoff_head() -> None:
    """Guards a dead-headed pump: flow exactly zero, its head on all that hangs on it."""
    network = house()
    is_open = np.array([True, True, True, True, False, False])
    steady = solve_steady(network, is_open, WATER_M2_S)
    assert steady.flow_m3_s.tolist() == [0.0] * 6
    assert steady.head_m[2:5] == pytest.approx([35.0] * 3, abs=1e-12)


def test_stronger_source_closes_the_check_valve_of_the_weaker() -> None:
    """Guards check valves: at a small draw only the pump delivers, and nothing flows back."""
    network = house()
    is_open = np.array([True, True, True, True, False, True])
    steady = solve_steady(network, is_open, WATER_M2_S)
    assert steady.head_m[3] > 25.0
    assert steady.flow_m3_s[2] == 0.0
    assert steady.flow_m3_s[0] == pytest.approx(steady.flow_m3_s[5], rel=1e-9)


def test_both_sources_deliver_when_both_are_needed() -> None:
    """Guards that a closed check valve opens again: at a large draw both sources deliver."""
    network = house()
    small = solve_steady(network, np.array([True] * 4 + [False, True]), WATER_M2_S)
    steady = solve_steady(network, np.ones(6, bool), WATER_M2_S, start_flows=small.flow_m3_s)
    afresh = solve_steady(network, np.ones(6, bool), WATER_M2_S)
    assert steady.flow_m3_s[2] > 0.0
    assert steady.flow_m3_s == pytest.approx(afresh.flow_m3_s, rel=1e-9)


def test_pump_never_runs_beyond_zero_head() -> None:
    """Guards the run-out of a pump that a high tank pushes: its flow stops at zero head."""
    network = (
        NetworkBuilder()
        .node("high", fixed_head_m=20.0)
        .node("low", fixed_head_m=0.0)
        .node("a")
        .pump("pump", "high", "a", shutoff_m=10.0, coefficient=10.0 / 1e-4, exponent=1.0)
        .loss("rest", "a", "low", coefficient=1e8)
        .build()
    )
    assert solved(network).flow_m3_s == pytest.approx([1e-4, 1e-4], rel=1e-5)


@pytest.mark.parametrize("exponent", [0.5, 1.0, 1.8, 3.0])
def test_pump_works_on_its_curve(exponent: float) -> None:
    """Guards pump curves of any exponent: gain and loss are equal at the flow found."""
    coefficient = 30.0 / 2e-4**exponent
    network = (
        NetworkBuilder()
        .node("low", fixed_head_m=0.0)
        .node("a")
        .node("high", fixed_head_m=5.0)
        .pump("pump", "low", "a", shutoff_m=30.0, coefficient=coefficient, exponent=exponent)
        .loss("tap", "a", "high", coefficient=1e9)
        .build()
    )
    steady = solved(network)
    flow = steady.flow_m3_s[0]
    assert 30.0 - coefficient * flow**exponent == pytest.approx(5.0 + 1e9 * flow**2, rel=1e-9)


def test_circulating_pump_moves_its_ring() -> None:
    """Guards a pump in a ring of its own, which hangs on the network by one node."""
    network = (
        NetworkBuilder()
        .node("held", fixed_head_m=3.0)
        .node("a")
        .node("b")
        .pipe("stub", "held", "a", length_m=1.0, bore_m=0.01)
        .pump("pump", "a", "b", shutoff_m=2.0, coefficient=2.0 / 1e-4, exponent=1.0)
        .loss("ring", "b", "a", coefficient=1e8)
        .build()
    )
    steady = solved(network)
    assert steady.flow_m3_s[0] == 0.0
    flow = steady.flow_m3_s[1]
    assert 2.0 - 2.0e4 * flow == pytest.approx(1e8 * flow**2, rel=1e-9)
    assert steady.head_m[1:] == pytest.approx([3.0, 3.0 + 1e8 * flow**2], rel=1e-9)


def test_standing_water_upstream_of_a_check_valve_has_no_known_head() -> None:
    """Guards heads: they pass a check valve on, never back."""
    network = (
        NetworkBuilder()
        .node("held", fixed_head_m=3.0)
        .node("before")
        .node("after")
        .loss("in", "held", "after", coefficient=1.0, one_way=True)
        .loss("check", "before", "held", coefficient=1.0, one_way=True)
        .build()
    )
    head = solved(network).head_m
    assert np.isnan(head[1])
    assert head[2] == 3.0


def test_demand_without_a_way_is_refused() -> None:
    """Guards demands that nothing can meet, cut off or behind a check valve."""
    builder = NetworkBuilder().node("held", fixed_head_m=3.0).node("a", demand_m3_s=1e-5)
    network = builder.loss("check", "a", "held", coefficient=1e8, one_way=True).build()
    with pytest.raises(NoSteadyFlow, match="demand") as caught:
        solved(network)
    assert caught.value.iterations >= 0
    with pytest.raises(NoSteadyFlow, match="demand at 'a'"):
        solved(network, "check")


def test_viscosity_may_differ_from_link_to_link() -> None:
    """Guards that each pipe takes its own fluid: the thicker half takes its share of the head."""
    builder = NetworkBuilder().node("a", fixed_head_m=0.02).node("b").node("c", fixed_head_m=0.0)
    for name, start, end in (("thin", "a", "b"), ("thick", "b", "c")):
        builder.pipe(name, start, end, length_m=10.0, bore_m=0.012)
    steady = solve_steady(builder.build(), np.ones(2, bool), np.array([1e-6, 3e-6]))
    assert steady.head_m[1] == pytest.approx(0.015, rel=1e-9)


@pytest.mark.parametrize(
    ("is_open", "viscosity", "start", "message"),
    [
        (np.ones(3, bool), 1e-6, None, "open_links has shape"),
        (np.ones(6, bool), 0.0, None, "not above 0"),
        (np.ones(6, bool), np.full(6, np.nan), None, "not above 0"),
        (np.ones(6, bool), np.full(3, 1e-6), None, "one a link"),
        (np.ones(6, bool), 1e-6, np.full(6, np.nan), "start_flows"),
    ],
)
def test_unusable_inputs_are_refused(
    is_open: np.ndarray, viscosity: float, start: np.ndarray | None, message: str
) -> None:
    """Guards that wrong arrays are refused by name."""
    with pytest.raises(InputError, match=message):
        solve_steady(house(), is_open, viscosity, start_flows=start)


@pytest.mark.parametrize("taps", [[False, False], [False, True], [True, True]])
def test_resisting_links_find_the_same_states(
    taps: list[bool], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Guards the second way to the state of one-way links, which the first seldom leaves work."""
    is_open = np.array([True] * 4 + taps)
    usual = solve_steady(house(), is_open, WATER_M2_S)
    monkeypatch.setattr(gradient, "_MOST_ROUNDS", 0)
    other = solve_steady(house(), is_open, WATER_M2_S)
    assert other.flow_m3_s == pytest.approx(usual.flow_m3_s, rel=1e-9, abs=1e-15)
    assert other.head_m == pytest.approx(usual.head_m, rel=1e-9, nan_ok=True)
