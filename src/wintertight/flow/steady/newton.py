"""Head losses of carrying links, and Newton's method on their loops: arithmetic only.

Pipe: h = (f L/D + K) v^2/2g, written h = (f Re) 2 L nu q/(pi g D^4) + K 8 q|q|/(pi^2 g D^4).
Loss link: h = r q|q|. Pump: h = -(h0 - r q^n).
"""

from typing import Final

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.compiled import kernel
from wintertight.flow.steady.friction import (
    friction_products_churchill,
    friction_products_colebrook,
    friction_products_epanet,
)

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]

CHURCHILL: Final = 0
EPANET: Final = 1
COLEBROOK: Final = 2

LEAST_SLOPE: Final = 1e-9
"""Least slope of a law [s/m2]; keeps a loop of links at rest solvable."""

_RELATIVE_CHANGE: Final = 1e-10
_LEAST_CHANGE_M3_S: Final = 1e-15
_MOST_STEPS: Final = 150
_MOST_SEARCHES: Final = 60
_FIRST_TRIES: Final = 1


@kernel
def head_losses(
    flow: Floats,
    friction: int,
    pipes: Floats,
    quadratic: Floats,
    pumps: Floats,
    one_way: Bools,
    back_slope: float,
) -> tuple[Floats, Floats]:
    """Give the head lost from start to end [m] and its slope [s/m2] at a flow [m3/s].

    Args:
        flow: of each carrying link [m3/s]: pipes, then loss links, then pumps.
        friction: law of pipe friction.
        pipes: a row each of loss per flow and ``f Re`` [s/m2], Reynolds number per flow,
            relative roughness [1]; shape (3, pipes).
        quadratic: loss per flow squared of each link [s2/m5].
        pumps: a row each of shut-off head [m], coefficient [m/(m3/s)^n], exponent [1], flow at
            which it gains nothing [m3/s], flow below which its curve is a chord [m3/s], slope
            beyond its run-out [s/m2]; shape (6, pumps).
        one_way: which links are one-way.
        back_slope: how steeply these resist flow from end to start [s/m2]; 0 for an odd law.

    Returns:
        Head losses [m] and slopes [s/m2].
    """
    size = np.abs(flow)
    slope = quadratic * size
    head = slope * flow
    slope = slope + slope
    count = pipes.shape[1]
    if count:
        reynolds = size[:count] * pipes[1]
        if friction == CHURCHILL:
            product, rise = friction_products_churchill(reynolds, pipes[2])
        elif friction == EPANET:
            product, rise = friction_products_epanet(reynolds, pipes[2])
        else:
            product, rise = friction_products_colebrook(reynolds, pipes[2])
        head[:count] += product * pipes[0] * flow[:count]
        slope[:count] += (product + rise) * pipes[0]
    first = len(flow) - pumps.shape[1]
    if pumps.shape[1]:
        through, at = flow[first:], size[first:]
        exponent, floor = pumps[2], pumps[4]
        chord = pumps[1] * np.maximum(at, floor) ** (exponent - 1.0)
        beyond = through > pumps[3]
        head[first:] = np.where(beyond, pumps[5] * (through - pumps[3]), chord * through - pumps[0])
        slope[first:] = np.where(beyond, pumps[5], np.where(at < floor, chord, exponent * chord))
    if back_slope != 0.0:
        back = one_way & (flow < 0.0)
        head = np.where(back, back_slope * flow, head)
        slope = np.where(back, back_slope, slope)
        head[first:] -= np.where(back[first:], pumps[0], 0.0)
    return head, slope + LEAST_SLOPE


@kernel
def turns_of(loops: Floats, loops_turned: Floats, slope: Floats, unspent: Floats) -> Floats:
    """Give what has to run round each loop to spend the head that is left over.

    Args:
        loops: one row a loop, +1 or -1 where a link runs with or against it.
        loops_turned: the same, turned.
        slope: of the law of each link [s/m2].
        unspent: head left over in each loop [m].

    Returns:
        Flow round each loop [m3/s].
    """
    if len(unspent) == 1:
        one: Floats = unspent / (loops[0] * loops[0] * slope).sum()
        return one
    return np.linalg.solve((loops * slope) @ loops_turned, unspent)  # type: ignore[return-value]


@kernel
def settle(
    loops: Floats,
    loops_turned: Floats,
    loop_head: Floats,
    flow: Floats,
    friction: int,
    pipes: Floats,
    quadratic: Floats,
    pumps: Floats,
    one_way: Bools,
    back_slope: float,
) -> tuple[Floats, Floats, int, float]:
    """Let flows that keep continuity settle, by Newton's method with a search along each step.

    Args:
        loops: one row a loop, +1 or -1 where a link runs with or against it.
        loops_turned: the same, turned.
        loop_head: head that drives each loop [m].
        flow: to begin from [m3/s].
        friction: as in ``head_losses``, like the rest.
        pipes: see there.
        quadratic: see there.
        pumps: see there.
        one_way: see there.
        back_slope: see there.

    Returns:
        Flows [m3/s], head losses [m], steps made [1] (the most there may be where they did not
        settle), and the largest change in the last of them [m3/s].

    Sources: todini-pilati.
    """
    lost, slope = head_losses(flow, friction, pipes, quadratic, pumps, one_way, back_slope)
    change = 0.0
    if not len(loops):
        return flow, lost, 0, change
    for steps in range(1, _MOST_STEPS):
        unspent = loop_head - loops @ lost
        turn = turns_of(loops, loops_turned, slope, unspent)
        step = turn @ loops
        change = np.abs(step).max()
        if change <= max(_RELATIVE_CHANGE * np.abs(flow).max(), _LEAST_CHANGE_M3_S):
            # What is left is rounding: a search along it would follow noise.
            flow = flow + step
            lost, slope = head_losses(flow, friction, pipes, quadratic, pumps, one_way, back_slope)
            return flow, lost, steps, change
        fall = (turn * unspent).sum()
        # The whole step, unless it overshoots; then close in on where the energy is least.
        share, low, high = 1.0, 0.0, 1.0
        low_fall, high_fall = fall, 0.0
        for tries in range(_MOST_SEARCHES):
            lost, slope = head_losses(
                flow + share * step, friction, pipes, quadratic, pumps, one_way, back_slope
            )
            now = (turn * (loop_head - loops @ lost)).sum()
            if now >= -0.5 * fall and (tries == 0 or now <= 0.5 * fall):
                break
            # False position; the end that stays is halved so that a kink cannot hold it.
            if now < 0.0:
                high, high_fall = share, now
                low_fall *= 0.5 if tries > _FIRST_TRIES else 1.0
            else:
                low, low_fall = share, now
                high_fall *= 0.5
            if tries < _MOST_SEARCHES - 1:
                share = low + (high - low) * low_fall / (low_fall - high_fall)
        flow = flow + share * step
        change = np.abs(step).max()
        if change <= max(_RELATIVE_CHANGE * np.abs(flow).max(), _LEAST_CHANGE_M3_S):
            return flow, lost, steps, change
    return flow, lost, _MOST_STEPS, change


UNSETTLED: Final = _MOST_STEPS
"""So many steps are the mark of a solve that did not settle [1]."""
