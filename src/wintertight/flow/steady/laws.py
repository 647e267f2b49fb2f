"""Head loss and its slope for every carrying link at once.

Pipe: h = (f L/D + K) v^2/2g, written h = (f Re) 2 L nu q/(pi g D^4) + K 8 q|q|/(pi^2 g D^4).
Loss link: h = r q|q|. Pump: h = -(h0 - r q^n).
"""

from dataclasses import dataclass
from typing import Final, Self

import numpy as np

from wintertight.flow.steady.friction import FRICTION_PRODUCTS, FrictionLaw
from wintertight.flow.steady.network import Bools, Floats, Ints, LinkKind, PipeNetwork

STANDARD_GRAVITY_M_S2: Final = 9.80665
_GUESS_VELOCITY_M_S: Final = 0.5
_LEAST_SLOPE: Final = 1e-9  # [s/m2]; keeps a loop of links at rest solvable
_PUMP_START: Final = 1e-6  # share of the run-out flow below which a pump curve with n < 1 is cut
_BEYOND_RUN_OUT: Final = 1e6  # how much steeper a pump's curve falls once it gains nothing


@dataclass(frozen=True, slots=True)
class LossLaws:
    """Constants of the carrying links: pipes first, then loss links, then pumps."""

    pipes: int
    pumps: int
    per_viscosity: Floats
    reynolds_per_flow: Floats
    relative_roughness: Floats
    quadratic: Floats
    guess_flow: Floats
    shutoff: Floats
    pump_coefficient: Floats
    pump_exponent: Floats
    run_out: Floats
    floor: Floats
    steep: Floats
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
            per_viscosity=2.0 * network.length_m[pipe] / (np.pi * STANDARD_GRAVITY_M_S2 * bore_4),
            reynolds_per_flow=4.0 / (np.pi * network.bore_m[pipe]),
            relative_roughness=network.roughness_m[pipe] / network.bore_m[pipe],
            quadratic=quadratic,
            guess_flow=_guess(network, links, quadratic, pipes, run_out),
            shutoff=shutoff,
            pump_coefficient=network.pump_coefficient[pump],
            pump_exponent=exponent,
            run_out=run_out,
            floor=np.where(exponent < 1.0, _PUMP_START * run_out, 0.0),
            steep=_BEYOND_RUN_OUT * shutoff / run_out,
            one_way=network.carries_one_way[links],
        )

    def at(self, friction: FrictionLaw, viscosity: Floats, back_slope: float = 0.0) -> "Resistance":
        """Bind the laws to one friction law and the viscosity of each pipe [m2/s]."""
        return Resistance(
            laws=self,
            friction=friction,
            linear=self.per_viscosity * viscosity,
            reynolds_per_flow=self.reynolds_per_flow / viscosity,
            back_slope=back_slope,
        )


@dataclass(frozen=True, slots=True)
class Resistance:
    """Head loss of each carrying link as a function of its flow.

    With a ``back_slope`` [s/m2] a one-way link resists flow from end to start that steeply;
    without one its law is simply odd, and whoever solves must look at the signs.
    """

    laws: LossLaws
    friction: FrictionLaw
    linear: Floats
    reynolds_per_flow: Floats
    back_slope: float

    def loss(self, flow: Floats) -> tuple[Floats, Floats]:
        """Give the head lost from start to end [m] and its slope [s/m2] at a flow [m3/s]."""
        laws = self.laws
        size = np.abs(flow)
        slope = laws.quadratic * size
        head = slope * flow
        slope += slope
        if laws.pipes:
            pipes = slice(laws.pipes)
            product, rise = FRICTION_PRODUCTS[self.friction](
                size[pipes] * self.reynolds_per_flow, laws.relative_roughness
            )
            product *= self.linear
            rise *= self.linear
            head[pipes] += product * flow[pipes]
            slope[pipes] += product + rise
        if laws.pumps:
            pumps = slice(flow.size - laws.pumps, None)
            head[pumps], slope[pumps] = self._pump(flow[pumps])
        if self.back_slope:
            back = laws.one_way & (flow < 0.0)
            head = np.where(back, self.back_slope * flow, head)
            slope = np.where(back, self.back_slope, slope)
            if laws.pumps:
                head[pumps] -= np.where(back[pumps], laws.shutoff, 0.0)
        slope += _LEAST_SLOPE
        return head, slope

    def guess(self) -> tuple[Floats, Floats]:
        """Give straight laws to start from: head at rest [m] and slope [s/m2]."""
        head, _ = self.loss(self.laws.guess_flow)
        at_rest = np.zeros_like(head)
        if self.laws.pumps:
            at_rest[head.size - self.laws.pumps :] = -self.laws.shutoff
        return at_rest, (head - at_rest) / self.laws.guess_flow + _LEAST_SLOPE

    def _pump(self, flow: Floats) -> tuple[Floats, Floats]:
        laws = self.laws
        size = np.abs(flow)
        chord = laws.pump_coefficient * np.maximum(size, laws.floor) ** (laws.pump_exponent - 1.0)
        slope = np.where(size < laws.floor, chord, laws.pump_exponent * chord)
        beyond = flow > laws.run_out
        head = np.where(beyond, laws.steep * (flow - laws.run_out), chord * flow - laws.shutoff)
        return head, np.where(beyond, laws.steep, slope)


def _guess(
    network: PipeNetwork, links: Ints, quadratic: Floats, pipes: int, run_out: Floats
) -> Floats:
    held = network.fixed_head_m[network.is_fixed]
    head = max(float(np.ptp(held)) if held.size else 0.0, 1.0)
    guess = np.sqrt(head / np.maximum(quadratic, 1.0))
    guess[:pipes] = _GUESS_VELOCITY_M_S * np.pi / 4.0 * network.bore_m[links[:pipes]] ** 2
    guess[links.size - run_out.size :] = 0.5 * run_out
    return guess
