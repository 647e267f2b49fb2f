"""How much more air loses than water would, in a line and in an opening.

Both are written as what is added to the law of water on the difference of squared pressures,

    p1^2 - p2^2 = R T (m/A)^2 N,     N = f L/D + K,

because the solver of steady flow then takes squared pressure for head, and m for its flow.

A line is taken as isothermal: it is hundreds of bores long, its wall has the bay's temperature, and
the air in it moves at under a fifth of the speed of sound, so that a friction heating of under 1 K
is gone within a metre. An opening is too short for that: its air expands without heat.
"""

from typing import Final

import numpy as np
import numpy.typing as npt

from wintertight.flow.air.gas import HEAT_CAPACITY_RATIO, specific_energy

Floats = npt.NDArray[np.float64]

_GAMMA: Final = HEAT_CAPACITY_RATIO

CRITICAL_RATIO: Final = (2.0 / (_GAMMA + 1.0)) ** (_GAMMA / (_GAMMA - 1.0))
"""Ratio of pressures behind and before an opening at which its air reaches the speed of sound
[1]."""

_NEWTON_STEPS: Final = 60
_NEWTON_DONE: Final = 1e-14
_NO_DROP: Final = 1e-5


def choked_ratio(resistance: npt.ArrayLike) -> Floats:
    """Give the least ratio of end to inlet pressure that an isothermal line can have.

    y = p1/p2 from N = y^2 - 1 - 2 ln y: there m/A = p2 / sqrt(R T), and a lower pressure outside
    draws no more air.

    Args:
        resistance: N = f L/D + K of the line [1], above 0.

    Returns:
        p2/p1 at which the line is choked [1].

    Example:
        >>> print(f"{choked_ratio(20.0):.4f}")
        0.2033

    Sources: white (ch. 9, isothermal flow with friction).
    """
    n = np.asarray(resistance, dtype=np.float64)
    y = 1.0 + np.sqrt(n)  # above the root of a convex function: Newton only falls
    for _ in range(_NEWTON_STEPS):
        step = (y * y - 1.0 - 2.0 * np.log(y) - n) / (2.0 * (y - 1.0 / y))
        y = y - step
        if np.all(np.abs(step) <= _NEWTON_DONE * y):
            break
    return np.asarray(1.0 / y)


def line_extra(
    upstream_Pa: npt.ArrayLike, downstream_Pa: npt.ArrayLike, resistance: npt.ArrayLike
) -> Floats:
    """Give what speeding up adds to N of a line: 2 ln(p1/p2), and more where it is choked.

    Args:
        upstream_Pa: absolute pressure at its inlet [Pa], above 0.
        downstream_Pa: absolute pressure behind its end [Pa], 0 up to ``upstream_Pa``.
        resistance: N = f L/D + K [1], above 0.

    Returns:
        Addition to N [1].

    Example:
        >>> print(f"{line_extra(2e5, 1e5, 20.0):.4f}")  # not choked: 2 ln 2
        1.3863

    Sources: white (ch. 9, isothermal flow with friction).
    """
    p1, p2 = np.asarray(upstream_Pa, dtype=float), np.asarray(downstream_Pa, dtype=float)
    n = np.asarray(resistance, dtype=float)
    least = choked_ratio(n) * p1
    free = 2.0 * np.log(p1 / np.maximum(p2, least))
    return np.asarray(np.where(p2 < least, (p1**2 - p2**2) / least**2 - n, free))


def opening_factor(ratio: npt.ArrayLike) -> Floats:
    """Give by what an opening's resistance to water is multiplied for air.

    (1 - x^2) / psi^2, psi^2 = 2 g/(g-1) (x^(2/g) - x^((g+1)/g)), x = p2/p1 and at least the
    critical ratio inside psi: choked air flows by what is before the opening alone.

    Args:
        ratio: pressure behind over pressure before the opening [1], 0 to 1.

    Returns:
        Factor [1]: 1 where hardly any pressure is lost, 2.13 into a vacuum.

    Example:
        >>> print(f"{opening_factor(0.0):.4f}")
        2.1328

    Sources: white (ch. 9, isentropic flow through a throat).
    """
    x = np.minimum(np.asarray(ratio, dtype=float), 1.0 - _NO_DROP)
    throat = np.maximum(x, CRITICAL_RATIO)
    psi_2 = throat ** (2.0 / _GAMMA) - throat ** ((_GAMMA + 1.0) / _GAMMA)
    return np.asarray((1.0 - x * x) / (2.0 * _GAMMA / (_GAMMA - 1.0) * psi_2))


def isothermal_mass_flow(  # noqa: PLR0913 - a line has these figures
    upstream_Pa: float,
    downstream_Pa: float,
    *,
    length_m: float,
    bore_m: float,
    friction_factor: float,
    minor_loss: float = 0.0,
    temperature_degC: float = 15.0,
) -> float:
    """Give the isothermal mass flow of air through one line, choked at its end where it must be.

    m = A sqrt((p1^2 - p2^2) / (R T (f L/D + K + 2 ln(p1/p2)))).

    Args:
        upstream_Pa: absolute pressure at its inlet [Pa], 1e5 to 1e6.
        downstream_Pa: absolute pressure behind its end [Pa], 0 up to ``upstream_Pa``.
        length_m: length [m], above 0.
        bore_m: bore [m], above 0.
        friction_factor: Darcy friction factor [1], 0.005 to 0.1.
        minor_loss: loss coefficient of its bends [1], 0 and up.
        temperature_degC: temperature [degC], -40 to 60.

    Returns:
        Mass flow [kg/s].

    Example:
        >>> m = isothermal_mass_flow(
        ...     3.77e5, 1.013e5, length_m=5.0, bore_m=0.0123, friction_factor=0.02
        ... )
        >>> print(f"{m:.4f}")
        0.0458

    Sources: white (ch. 9, isothermal flow with friction).
    """
    resistance = friction_factor * length_m / bore_m + minor_loss
    extra = float(line_extra(upstream_Pa, downstream_Pa, resistance))
    area = np.pi / 4.0 * bore_m**2
    squares = upstream_Pa**2 - downstream_Pa**2
    energy = specific_energy(temperature_degC)
    return float(area * np.sqrt(squares / (energy * (resistance + extra))))
