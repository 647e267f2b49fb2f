from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from wintertight.errors import InputError
from wintertight.flow.steady import NetworkBuilder, PipeNetwork


@pytest.fixture
def network() -> PipeNetwork:
    """Give a network with one link of each kind."""
    return (
        NetworkBuilder()
        .node("tank", fixed_head_m=0.5)
        .node("a")
        .node("b", 0.4)
        .node("air", fixed_head_m=0.4)
        .pump("pump", "tank", "a", shutoff_m=30.0, coefficient=1e5, exponent=1.0)
        .pipe("line", "a", "b", length_m=2.0, bore_m=0.012)
        .loss("tap", "b", "air", coefficient=1e9)
        .build()
    )


@pytest.mark.parametrize(
    ("field", "value", "message"),
    [
        ("length_m", [0.0, -1.0, 0.0], "length_m is not a size"),
        ("bore_m", [0.0, 0.0, 0.0], "needs a bore"),
        ("roughness_m", [0.0, 1.0, 0.0], "rougher than its bore"),
        ("loss_coefficient", [0.0, 0.0, np.nan], "loss_coefficient is not a size"),
        ("pump_shutoff_m", [0.0, 0.0, 0.0], "whole curve"),
        ("end", [1, 2, 4], "no known node"),
        ("start", [0, 2, 2], "the same node"),
        ("kind", [1, 0, 7], "kind is unknown"),
        ("demand_m3_s", [0.0, np.inf, 0.0, 0.0], "demand_m3_s is not a number"),
        ("fixed_head_m", [0.0, np.inf, 0.0, 0.0], "infinite"),
        ("elevation_m", [0.0], "shape"),
        ("node_ids", ("tank", "a", "a", "air"), "named twice"),
    ],
)
def test_unusable_networks_are_refused(
    network: PipeNetwork, field: str, value: Any, message: str
) -> None:
    """Guards that each wrong array is refused with the name of what is wrong."""
    with pytest.raises(InputError, match=message):
        replace(network, **{field: value})


def test_arrays_are_closed_against_change(network: PipeNetwork) -> None:
    """Guards compiled plans: a network cannot change after they were made."""
    with pytest.raises(ValueError, match="read-only"):
        network.length_m[0] = 1.0


def test_builder_refuses_names_it_does_not_know() -> None:
    """Guards against links to nowhere and names given twice."""
    builder = NetworkBuilder().node("a").node("b").loss("x", "a", "c", coefficient=1.0)
    with pytest.raises(InputError, match="'c' is not known"):
        builder.build()
    with pytest.raises(InputError, match="'a' is named twice"):
        builder.node("a")
    with pytest.raises(InputError, match="'x' is named twice"):
        builder.loss("x", "a", "b", coefficient=1.0)


def test_a_pump_counts_as_one_way(network: PipeNetwork) -> None:
    """Guards that pumps carry one way without being told."""
    assert network.carries_one_way.tolist() == [True, False, False]
