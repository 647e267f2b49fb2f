"""The open links of a network as rows of numbers, and what heads say about its one-way links."""

from typing import Final, NamedTuple

import numpy as np

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.steady.network import Bools, Floats, Ints

_SAME_M: Final = 1e-12
_PUSH_M: Final = 1e-9


class Circuit(NamedTuple):
    """What of a network does not depend on viscosity or flow.

    Carrying links are pipes, then loss links, then pumps. One-way links are those that are open,
    whether they carry or not.

    Attributes:
        loops: one row a loop, +1 or -1 where a carrying link runs with or against it.
        loops_turned: the same, turned.
        chords: place of the carrying link that closes each loop.
        loop_head: head that drives each loop [m].
        tree_flow: flows along the tree that meet the demands [m3/s].
        paths: one row a node: the carrying links from the top of its tree to it.
        top_head: the held head its tree hangs from, 0 where it hangs from none [m].
        quadratic, pump_rows, one_way: of the carrying links (see ``newton.head_losses``).
        pipe_rows: loss per flow, ``f Re`` and viscosity; Reynolds number times viscosity per flow;
            relative roughness; shape (3, pipes).
        tops: the node from which the tree of each node hangs.
        adrift: nodes whose tree hangs from no held head.
        lift_start, lift_end, lift_m: one-way links at rest that lead to such a tree, and the head
            by which they lift [m]: a pump its shut-off head.
        gate_place: place of each one-way link among the carrying links; -1 where it is none.
        gate_start, gate_end, gate_m: its ends, and the head by which it lifts at rest [m].
        gate_closed: whether it stands closed against its flow.
    """

    loops: Floats
    loops_turned: Floats
    chords: Ints
    loop_head: Floats
    tree_flow: Floats
    paths: Floats
    top_head: Floats
    quadratic: Floats
    pump_rows: Floats
    one_way: Bools
    pipe_rows: Floats
    tops: Ints
    adrift: Ints
    lift_start: Ints
    lift_end: Ints
    lift_m: Floats
    gate_place: Ints
    gate_start: Ints
    gate_end: Ints
    gate_m: Floats
    gate_closed: Bools


@kernel
def heads_in(circuit: Circuit, lost: Floats) -> Floats:
    """Give the head of each node.

    Heads pass through one-way links at rest from start to end and never back: a tree adrift is
    shifted to the highest head that pushes on it. What nothing pushes on becomes nan.

    Args:
        circuit: the circuit.
        lost: head lost along each carrying link [m].

    Returns:
        Heads [m].
    """
    head = circuit.top_head - circuit.paths @ lost
    if not len(circuit.adrift):
        return head
    within_tree = head.copy()
    head[circuit.adrift] = np.nan
    for _ in range(len(circuit.lift_m)):
        settled = True
        for k in range(len(circuit.lift_m)):
            end = circuit.lift_end[k]
            pushed = head[circuit.lift_start[k]] + circuit.lift_m[k]
            if pushed > head[end] + _SAME_M or (np.isnan(head[end]) and not np.isnan(pushed)):
                shift = pushed - within_tree[end]
                head = np.where(circuit.tops == circuit.tops[end], within_tree + shift, head)
                settled = False
        if settled:
            break
    return head


@kernel
def standing_wrongly(circuit: Circuit, flow: Floats, head: Floats) -> Bools:
    """Tell which one-way links stand wrongly: open to backward flow, or closed under a push.

    Args:
        circuit: the circuit.
        flow: of each carrying link [m3/s].
        head: of each node [m].

    Returns:
        True or False for each one-way link [1].
    """
    gates = len(circuit.gate_place)
    wrong = np.zeros(gates, dtype=np.bool_)
    if not gates:
        return wrong
    through = np.zeros(gates)
    for k in range(gates):
        if circuit.gate_place[k] >= 0:
            through[k] = flow[circuit.gate_place[k]]
    closed = circuit.gate_closed
    wrong |= ~closed & (through < 0.0)
    if closed.any():
        push = head[circuit.gate_start] - head[circuit.gate_end] + circuit.gate_m
        wrong |= closed & (push > _PUSH_M)
        if np.any((through == 0.0) & (push > _PUSH_M)):
            # A closed link passes its head on to water that could move: open it.
            wrong |= closed & (push > -_PUSH_M)
    return wrong
