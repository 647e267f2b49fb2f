"""The constants of the head-loss law of every carrying link; the laws are in ``newton``."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final, Self

import numpy as np

from wintertight.flow.steady.friction import FrictionLaw
from wintertight.flow.steady.network import Bools, Floats, Ints, LinkKind, PipeNetwork
from wintertight.flow.steady.newton import (
    CHURCHILL,
    COLEBROOK,
    EPANET,
    LEAST_SLOPE,
    head_losses,
    settle,
)

LAWS: Final[Mapping[FrictionLaw, int]] = {
    "churchill": CHURCHILL,
    "epanet": EPANET,
    "colebrook": COLEBROOK,
}
"""Number of each friction law."""

STANDARD_GRAVITY_M_S2: Final = 9.80665
_GUESS_VELOCITY_M_S: Final = 0.5
_PUMP_START: Final = 1e-6  # share of the run-out flow below which a pump curve with n < 1 is cut
_BEYOND_RUN_OUT: Final = 1e6  # how much steeper a pump's curve falls once it gains nothing


@dataclass(frozen=True, slots=True)
class LossLaws:
    """Constants of the carrying links: pipes first, then loss links, then pumps.

    Attributes:
        pipes, pumps: how many there are [1].
        pipe_rows: loss per flow, ``f Re`` and viscosity; Reynolds number times viscosity per flow;
            relative roughness; shape (3, pipes).
        quadratic, pump_rows, one_way: see ``newton.head_losses``.
        guess_flow: flow of each link to begin from [m3/s].
    """

    pipes: int
    pumps: int
    pipe_rows: Floats
    quadratic: Floats
    guess_flow: Floats
    pump_rows: Floats
    one_way: Bools

    @classmethod
    def of(cls, network: PipeNetwork, links: Ints, pipes: int, pumps: int) -> Self:
        """Gather the constants of the links, given in their order."""
        pipe, pump = links[:pipes], links[links.size - pumps :]
        bore_4 = network.bore_m[pipe] ** 4
        quadratic = network.loss_coefficient[links] * (network.kind[links] == LinkKind.LOSS)
        quadratic[:pipes] = (
            8.0 * network.minor_loss[pipe] / (np.pi**2 * STANDARD_GRAVITY_M_S2 * bore_4)
        )
        shutoff, exponent = network.pump_shutoff_m[pump], network.pump_exponent[pump]
        run_out = (shutoff / network.pump_coefficient[pump]) ** (1.0 / exponent)
        return cls(
            pipes=pipes,
            pumps=pumps,
            pipe_rows=np.array(
                (
                    2.0 * network.length_m[pipe] / (np.pi * STANDARD_GRAVITY_M_S2 * bore_4),
                    4.0 / (np.pi * network.bore_m[pipe]),
                    network.roughness_m[pipe] / network.bore_m[pipe],
                )
            ),
            quadratic=quadratic,
            guess_flow=_guess(network, links, quadratic, pipes, run_out),
            pump_rows=np.array(
                (
                    shutoff,
                    network.pump_coefficient[pump],
                    exponent,
                    run_out,
                    np.where(exponent < 1.0, _PUMP_START * run_out, 0.0),
                    _BEYOND_RUN_OUT * shutoff / run_out,
                )
            ),
            one_way=network.carries_one_way[links],
        )

    def at(self, friction: FrictionLaw, viscosity: Floats, back_slope: float = 0.0) -> "Resistance":
        """Bind the laws to one friction law and the viscosity of each pipe [m2/s]."""
        rows = self.pipe_rows.copy()
        rows[0] *= viscosity
        rows[1] /= viscosity
        return Resistance(laws=self, friction=LAWS[friction], pipes=rows, back_slope=back_slope)


@dataclass(frozen=True, slots=True)
class Resistance:
    """Head loss of each carrying link as a function of its flow.

    With a ``back_slope`` [s/m2] a one-way link resists flow from end to start that steeply;
    without one its law is simply odd, and whoever solves must look at the signs.
    """

    laws: LossLaws
    friction: int
    pipes: Floats
    back_slope: float

    def loss(self, flow: Floats) -> tuple[Floats, Floats]:
        """Give the head lost from start to end [m] and its slope [s/m2] at a flow [m3/s]."""
        laws = self.laws
        return head_losses(
            flow,
            self.friction,
            self.pipes,
            laws.quadratic,
            laws.pump_rows,
            laws.one_way,
            self.back_slope,
        )

    def settled(
        self, loops: Floats, loops_turned: Floats, loop_head: Floats, flow: Floats
    ) -> tuple[Floats, Floats, int, float]:
        """Let flows [m3/s] that keep continuity settle (see ``newton.settle``)."""
        laws = self.laws
        return settle(
            loops,
            loops_turned,
            loop_head,
            flow,
            self.friction,
            self.pipes,
            laws.quadratic,
            laws.pump_rows,
            laws.one_way,
            self.back_slope,
        )

    def guess(self) -> tuple[Floats, Floats]:
        """Give straight laws to start from: head at rest [m] and slope [s/m2]."""
        head, _ = self.loss(self.laws.guess_flow)
        at_rest = np.zeros_like(head)
        if self.laws.pumps:
            at_rest[head.size - self.laws.pumps :] = -self.laws.pump_rows[0]
        return at_rest, (head - at_rest) / self.laws.guess_flow + LEAST_SLOPE


def _guess(
    network: PipeNetwork, links: Ints, quadratic: Floats, pipes: int, run_out: Floats
) -> Floats:
    held = network.fixed_head_m[network.is_fixed]
    head = max(float(np.ptp(held)) if held.size else 0.0, 1.0)
    guess = np.sqrt(head / np.maximum(quadratic, 1.0))
    guess[:pipes] = _GUESS_VELOCITY_M_S * np.pi / 4.0 * network.bore_m[links[:pipes]] ** 2
    guess[links.size - run_out.size :] = 0.5 * run_out
    return guess
