import numpy as np

from wintertight.flow.steady import NetworkBuilder, continuity_error


def test_imbalance_is_found_and_put_in_relation() -> None:
    """Guards the closing of the books by hand: 3 in, 2 out and 0.5 drawn leave 0.5 of 3."""
    network = (
        NetworkBuilder()
        .node("a", fixed_head_m=1.0)
        .node("b", demand_m3_s=0.5)
        .node("c", fixed_head_m=0.0)
        .loss("in", "a", "b", coefficient=1.0)
        .loss("out", "b", "c", coefficient=1.0)
        .build()
    )
    assert continuity_error(network, np.array([3.0, 2.0])) == 0.5 / 3.0
    assert continuity_error(network, np.array([2.5, 2.0])) == 0.0
    assert continuity_error(network, np.zeros(2)) == 1.0
