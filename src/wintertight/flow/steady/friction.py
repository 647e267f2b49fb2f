"""Darcy friction factors over all flow regimes, with the slope a Newton step needs.

The solver never works with the factor itself, which has a pole at rest, but with the product
``f Re``: it is 64 in laminar flow, so a line at rest keeps a finite resistance.
"""

from collections.abc import Callable, Mapping
from typing import Final, Literal

import numpy as np
import numpy.typing as npt

from wintertight.flow.kernels.compiled import kernel

Floats = npt.NDArray[np.float64]
FrictionLaw = Literal["churchill", "epanet", "colebrook"]
Products = tuple[Floats, Floats]

LAMINAR_PRODUCT: Final = 64.0
LAMINAR_END: Final = 2000.0
TURBULENT_START: Final = 4000.0
_LN_10: Final = float(np.log(10.0))
_COLEBROOK_SWEEPS: Final = 12


@kernel
def friction_products_churchill(reynolds: Floats, relative_roughness: Floats) -> Products:
    """Give ``f Re`` and its logarithmic slope by Churchill's formula for all regimes.

    f = 8 ((8/Re)^12 + (A + B)^-1.5)^(1/12), A = (2.457 ln(1/((7/Re)^0.9 + 0.27 e)))^16,
    B = (37530/Re)^16.

    Args:
        reynolds: Reynolds number [1], 0 and up; below 1 the flow is taken as laminar.
        relative_roughness: roughness over bore [1], 0 to 0.05.

    Returns:
        ``f Re`` [1] and ``Re d(f Re)/dRe`` [1], of the shape of ``reynolds``.

    Sources: churchill (one equation, read from memory; checked against another library).
    """
    re = np.maximum(reynolds, 1.0)
    laminar = 8.0 / re
    laminar *= laminar * laminar  # ^3
    laminar *= laminar
    laminar *= laminar  # ^12
    smooth = (7.0 / re) ** 0.9
    inside = smooth + 0.27 * relative_roughness
    theta = -2.457 * np.log(inside)
    theta_3 = theta * theta * theta
    theta_15 = theta_3 * theta_3
    theta_15 = theta_15 * theta_15 * theta_3
    transition = 37530.0 / re
    transition *= transition
    transition *= transition
    transition *= transition
    transition *= transition  # ^16
    total = theta * theta_15 + transition
    slope_of_total = (16.0 * 2.457 * 0.9) * theta_15 * smooth / inside - 16.0 * transition
    turbulent = 1.0 / (total * np.sqrt(total))
    both = laminar + turbulent
    product = 8.0 * re * both ** (1.0 / 12.0)
    slope = product * (1.0 - (laminar + 0.125 * turbulent * slope_of_total / total) / both)
    return product, slope


@kernel
def friction_products_epanet(reynolds: Floats, relative_roughness: Floats) -> Products:
    """Give ``f Re`` and its logarithmic slope as EPANET 2.2 and later compute them.

    64/Re up to 2000; Dunlop's cubic from 2000 to 4000; Swamee and Jain above,
    f = (2 log10(e/3.7 + 5.74/Re^0.9))^-2.

    Args:
        reynolds: Reynolds number [1], 0 and up.
        relative_roughness: roughness over bore [1], 0 to 0.05.

    Returns:
        ``f Re`` [1] and ``Re d(f Re)/dRe`` [1].

    Sources: epanet-manual (2.2 users manual, chapter 12, section 1); swamee-jain.
    """
    re = np.maximum(reynolds, LAMINAR_END)
    turbulent_re = np.maximum(reynolds, TURBULENT_START)
    decay = 5.74 / turbulent_re**0.9
    inside = relative_roughness / 3.7 + decay
    root = (-2.0 / _LN_10) * np.log(inside)
    factor = 1.0 / (root * root)
    slope = -3.6 / _LN_10 * factor * decay / (inside * root)

    inside = relative_roughness / 3.7 + 5.74 / TURBULENT_START**0.9
    root = (-2.0 / _LN_10) * np.log(inside)
    fa = 1.0 / (root * root)
    fb = fa * (2.0 - 3.6 / _LN_10 * (5.74 / TURBULENT_START**0.9) / (inside * root))
    x1 = 7.0 * fa - fb
    x2 = 0.128 - 17.0 * fa + 2.5 * fb
    x3 = -0.128 + 13.0 * fa - 2.0 * fb
    x4 = 0.032 - 3.0 * fa + 0.5 * fb
    r = re / LAMINAR_END
    cubic = x1 + r * (x2 + r * (x3 + r * x4))
    cubic_slope = r * (x2 + r * (2.0 * x3 + r * 3.0 * x4))

    is_cubic = reynolds < TURBULENT_START
    factor = np.where(is_cubic, cubic, factor)
    slope = np.where(is_cubic, cubic_slope, slope)
    is_laminar = reynolds <= LAMINAR_END
    return (
        np.where(is_laminar, LAMINAR_PRODUCT, factor * re),
        np.where(is_laminar, 0.0, (factor + slope) * re),
    )


@kernel
def friction_products_colebrook(reynolds: Floats, relative_roughness: Floats) -> Products:
    """Give ``f Re`` and its logarithmic slope by Colebrook's equation, solved to rounding.

    1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f))) from Re 4000; 64/Re up to 2000; between them
    a straight line in f, a convention of this package that keeps the loss rising with the flow.

    Args:
        reynolds: Reynolds number [1], 0 and up.
        relative_roughness: roughness over bore [1], 0 to 0.05.

    Returns:
        ``f Re`` [1] and ``Re d(f Re)/dRe`` [1].

    Sources: colebrook (the equation, from memory).
    """
    re = np.maximum(reynolds, LAMINAR_END)
    turbulent_re = np.maximum(reynolds, TURBULENT_START)
    rough = relative_roughness / 3.7
    per_root = 2.51 / turbulent_re
    x = -1.8 * np.log10(6.9 / turbulent_re + rough**1.11)
    for _ in range(_COLEBROOK_SWEEPS):
        inside = rough + per_root * x
        pull = 2.0 / _LN_10 * per_root / inside
        step = (x + 2.0 * np.log10(inside)) / (1.0 + pull)
        x = x - step
        if step.size == 0 or np.max(np.abs(step)) < 1e-14:  # noqa: PLR2004 - rounding
            break
    factor = 1.0 / (x * x)
    pull = 2.0 / _LN_10 * per_root / (rough + per_root * x)
    slope = -2.0 * factor * pull / (1.0 + pull)

    start = LAMINAR_PRODUCT / LAMINAR_END
    rise = (factor - start) / (TURBULENT_START - LAMINAR_END)
    between = reynolds < TURBULENT_START
    slope = np.where(between, rise * re, slope)
    factor = np.where(between, start + rise * (re - LAMINAR_END), factor)
    is_laminar = reynolds <= LAMINAR_END
    return (
        np.where(is_laminar, LAMINAR_PRODUCT, factor * re),
        np.where(is_laminar, 0.0, (factor + slope) * re),
    )


FRICTION_PRODUCTS: Final[Mapping[FrictionLaw, Callable[[Floats, Floats], Products]]] = {
    "churchill": friction_products_churchill,
    "epanet": friction_products_epanet,
    "colebrook": friction_products_colebrook,
}


def friction_factor_churchill(reynolds: npt.ArrayLike, relative_roughness: npt.ArrayLike) -> Floats:
    """Give the Darcy friction factor of all regimes, by Churchill; the product's own choice.

    Args:
        reynolds: Reynolds number [1], above 0.
        relative_roughness: roughness over bore [1], 0 to 0.05.

    Returns:
        Darcy friction factor [1].

    Example:
        >>> print(f"{friction_factor_churchill(1e5, 0.001):.5f}")
        0.02234

    Sources: churchill.
    """
    return _factor("churchill", reynolds, relative_roughness)


def friction_factor_epanet(reynolds: npt.ArrayLike, relative_roughness: npt.ArrayLike) -> Floats:
    """Give the Darcy friction factor as EPANET 2.2 and later compute it.

    Args:
        reynolds: Reynolds number [1], above 0.
        relative_roughness: roughness over bore [1], 0 to 0.05.

    Returns:
        Darcy friction factor [1].

    Example:
        >>> print(f"{friction_factor_epanet(3000.0, 0.0):.5f}")
        0.03307

    Sources: epanet-manual (2.2 users manual, chapter 12, section 1).
    """
    return _factor("epanet", reynolds, relative_roughness)


def friction_factor_colebrook(reynolds: npt.ArrayLike, relative_roughness: npt.ArrayLike) -> Floats:
    """Give the Darcy friction factor by Colebrook's equation, with 64/Re below 2000.

    Args:
        reynolds: Reynolds number [1], above 0.
        relative_roughness: roughness over bore [1], 0 to 0.05.

    Returns:
        Darcy friction factor [1].

    Example:
        >>> print(f"{friction_factor_colebrook(1e5, 0.001):.5f}")
        0.02217

    Sources: colebrook.
    """
    return _factor("colebrook", reynolds, relative_roughness)


def _factor(law: FrictionLaw, reynolds: npt.ArrayLike, relative_roughness: npt.ArrayLike) -> Floats:
    re, rough = np.broadcast_arrays(
        np.asarray(reynolds, dtype=np.float64), np.asarray(relative_roughness, dtype=np.float64)
    )
    product, _ = FRICTION_PRODUCTS[law](re, rough)
    return np.asarray(product / re)
