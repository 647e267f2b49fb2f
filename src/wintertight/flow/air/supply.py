"""The compressor, its receiver and its regulator, as they are set up for a job."""

from dataclasses import dataclass
from typing import Final

from wintertight.errors import InputError
from wintertight.flow.air.gas import CUBIC_FOOT_PER_MINUTE, mass_of_free_air, specific_energy
from wintertight.flow.hydraulics import BAY_DEGC
from wintertight.units import GALLON_M3, PSI_PA

REGULATOR_PA: Final = 40.0 * PSI_PA
"""Gauge pressure behind the regulator unless told otherwise [Pa]: 40 psi; common practice."""

HARD_STOP_PA: Final = 50.0 * PSI_PA
"""Gauge pressure above which no blow-out is worked out [Pa]: 50 psi, which one extension service
gives as the most for polyethylene lines; none was found for PEX. Tube stands more, fittings may
not."""

CUT_OUT_PA: Final = 125.0 * PSI_PA
"""Gauge pressure at which a small compressor stops [Pa]: 125 psi; common practice."""


@dataclass(frozen=True, slots=True)
class AirSupply:
    """What drives the air.

    Simple here: the compressor runs from the first moment of a burst, and delivers the same at any
    pressure; the regulator does not droop; its hose loses nothing.

    Args:
        receiver_m3: volume of the tank [m3], 0 and up.
        delivery_m3_s: free air the compressor delivers, at 1 atm and 15 degC [m3/s], 0 and up.
        regulator_Pa: gauge pressure behind the regulator [Pa], above 0 up to ``HARD_STOP_PA``.
        cut_out_Pa: gauge pressure at which the compressor stops [Pa], from ``regulator_Pa``.
        temperature_degC: temperature of tank, air and lines [degC].

    Raises:
        InputError: a value is no size, or the regulator is set above the hard stop.

    Sources: common-practice.
    """

    receiver_m3: float = 6.0 * GALLON_M3
    delivery_m3_s: float = 2.5 * CUBIC_FOOT_PER_MINUTE
    regulator_Pa: float = REGULATOR_PA
    cut_out_Pa: float = CUT_OUT_PA
    temperature_degC: float = BAY_DEGC

    def __post_init__(self) -> None:
        """Refuse what no compressor has, and what no coach should get."""
        if not self.receiver_m3 >= 0.0 or not self.delivery_m3_s >= 0.0:
            message = "a receiver and a delivery of air are numbers from 0"
            raise InputError(message)
        if not self.regulator_Pa > 0.0:
            message = "the regulator must be set above 0 psi"
            raise InputError(message)
        if self.regulator_Pa > HARD_STOP_PA * (1.0 + 1e-12):
            message = (
                f"the regulator is set to {self.regulator_Pa / PSI_PA:.1f} psi; "
                f"no lines of a coach get more than {HARD_STOP_PA / PSI_PA:.0f} psi of air"
            )
            raise InputError(message)
        if not self.cut_out_Pa >= self.regulator_Pa:
            message = "the compressor stops below what the regulator is set to"
            raise InputError(message)

    @property
    def delivery_kg_s(self) -> float:
        """Mass the compressor delivers [kg/s]."""
        return mass_of_free_air(self.delivery_m3_s)

    def seconds_per_pascal(self, mass_kg_s: float) -> float:
        """Give how long a net mass flow takes to change the tank by a pascal, V/(R T m) [s]."""
        return self.receiver_m3 / (specific_energy(self.temperature_degC) * mass_kg_s)
