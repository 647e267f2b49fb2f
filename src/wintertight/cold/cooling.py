"""How fast what lies outside a tube or fitting takes heat from it, and how fast its water cools."""

import math
from typing import Final

HEAT_WATER: Final = 4190.0
"""Specific heat of water [J/(kg K)]; common tables, from memory."""

CONDUCTIVITY_WATER: Final = 0.56
"""Thermal conductivity of water at 0 degC [W/(m K)]; common tables, from memory."""

CONDUCTIVITY_AIR: Final = 0.0243
"""Thermal conductivity of air at 0 degC [W/(m K)]; common tables, from memory."""

VISCOSITY_AIR: Final = 1.33e-5
"""Kinematic viscosity of air at 0 degC and 1 atm [m2/s]; common tables, from memory."""

PRANDTL_AIR: Final = 0.71
"""Prandtl number of air [1]; common tables, from memory."""

STILL_AIR: Final = 10.0
"""Heat transfer from a tube to still air and to the walls round it, by convection and radiation
[W/(m2 K)]; common practice: 8 to 12."""


CONDUCTIVITY_FOAM: Final = 0.04
"""Thermal conductivity of a sleeve of foam [W/(m K)]; common tables, from memory."""


def wind_coefficient(wind_m_s: float, diameter_m: float) -> float:
    """Give the heat transfer from a tube to air that blows across it.

        Nu = 0.3 + 0.62 Re^(1/2) Pr^(1/3) / (1 + (0.4/Pr)^(2/3))^(1/4)
             (1 + (Re/282000)^(5/8))^(4/5)

    Args:
        wind_m_s: speed of the air [m/s], above 0.
        diameter_m: outside diameter [m], above 0.

    Returns:
        Coefficient [W/(m2 K)].

    Example:
        >>> round(wind_coefficient(5.0, 0.0159), 0)
        62.0

    Sources: churchill-bernstein
    """
    reynolds = wind_m_s * diameter_m / VISCOSITY_AIR
    low = 0.62 * math.sqrt(reynolds) * PRANDTL_AIR ** (1.0 / 3.0)
    low /= (1.0 + (0.4 / PRANDTL_AIR) ** (2.0 / 3.0)) ** 0.25
    nusselt: float = 0.3 + low * (1.0 + (reynolds / 282e3) ** 0.625) ** 0.8
    return nusselt * CONDUCTIVITY_AIR / diameter_m


def insulation_resistance(inner_m: float, outer_m: float, conductivity: float) -> float:
    """Give the thermal resistance of a sleeve, for each metre of it.

        ln(D2 / D1) / (2 pi k)

    Args:
        inner_m: its inside diameter [m], above 0.
        outer_m: its outside diameter [m], from the inside one up.
        conductivity: of its material [W/(m K)], above 0.

    Returns:
        Resistance [m K/W].

    Example:
        >>> round(insulation_resistance(0.0889, 0.1397, 0.0433), 3)
        1.661

    Sources: ashrae-insulation
    """
    return math.log(outer_m / inner_m) / (2.0 * math.pi * conductivity)


def coefficient_at_bore(bore_m: float, outside_m: float, sleeve_m: float, wind_m_s: float) -> float:
    """Give what a tube loses through wall, sleeve and air, for each area of its bore.

        1/(h b) = 1/(h_air D) + ln(D/d) / (2 k),  D = d + 2 s

    The tube's own wall resists nothing here, which is the careful side.

    Args:
        bore_m: inside diameter b [m], above 0.
        outside_m: outside diameter d of the tube [m], from the bore up.
        sleeve_m: thickness s of a sleeve of foam round it [m], 0 for none.
        wind_m_s: speed of the air [m/s]; still air at least takes its share.

    Returns:
        Coefficient [W/(m2 K)].

    Example:
        >>> round(coefficient_at_bore(0.0123, 0.0159, 0.0, 0.0), 1)
        12.9

    Sources: churchill-bernstein; common-practice
    """
    outer_m = outside_m + 2.0 * sleeve_m
    film = max(STILL_AIR, wind_coefficient(wind_m_s, outer_m)) if wind_m_s > 0.0 else STILL_AIR
    resistance = 1.0 / (film * math.pi * outer_m)
    resistance += insulation_resistance(outside_m, outer_m, CONDUCTIVITY_FOAM)
    return 1.0 / (resistance * math.pi * bore_m)


def cooling_s(time_constant_s: float, start_degC: float, air_degC: float, end_degC: float) -> float:
    """Give how long something takes to cool in air that stays as cold as it is.

        t = tau ln((T0 - Ta) / (T1 - Ta))

    Args:
        time_constant_s: what it holds over what it loses [s], 0 and up.
        start_degC: its temperature at first [degC].
        air_degC: that of the air [degC].
        end_degC: that to which it is to cool [degC].

    Returns:
        Time [s]; 0 where it is as cold already, infinite where the air is not colder than that.

    Example:
        >>> round(cooling_s(3600.0, 10.0, -10.0, 0.0), 1)
        2495.3

    Sources: ashrae-insulation (time to freezing)
    """
    if start_degC <= end_degC:
        return 0.0
    if air_degC >= end_degC:
        return math.inf
    return time_constant_s * math.log((start_degC - air_degC) / (end_degC - air_degC))
