"""Close the books of a steady flow: what enters a node leaves it."""

import numpy as np

from wintertight.flow.steady.network import Floats, PipeNetwork


def continuity_error(network: PipeNetwork, flow_m3_s: Floats) -> float:
    """Give the largest imbalance at a free node, relative to the largest flow.

    max |sum in - sum out - demand| / max |q| over the nodes whose head is not held.

    Args:
        network: the network.
        flow_m3_s: flow in each link, positive from start to end [m3/s].

    Returns:
        Relative imbalance [1]; 0 where nothing flows and nothing is demanded.

    Sources: todini-pilati (the continuity rows of the system).
    """
    n = len(network.node_ids)
    into = np.bincount(network.end, flow_m3_s, n)
    out = np.bincount(network.start, flow_m3_s, n)
    gain = (into - out - network.demand_m3_s)[~network.is_fixed]
    worst = np.max(np.abs(gain), initial=0.0)
    largest = np.max(np.abs(flow_m3_s), initial=0.0)
    largest = max(largest, np.max(np.abs(network.demand_m3_s), initial=0.0))
    return float(worst / largest) if largest > 0.0 else 0.0
