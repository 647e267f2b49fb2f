"""The polynomials of one published correlation for density and viscosity of mixtures.

One form serves all mixtures: f = sum c_ij (x - x_mean)^i (t - t_mean)^j with x in percent of the
mass and t in degC. It is evaluated for a row of shares at one temperature, which is what the flow
through one coach needs.
"""

from dataclasses import dataclass
from functools import cache
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from wintertight.fluids.tables import read_table

Solute = Literal["propylene_glycol", "ethanol"]

HIGHEST_MASS_SHARE = 0.60
"""End of the correlation [1 of the mass]."""


@dataclass(frozen=True, slots=True)
class _Coefficients:
    x_mean: float
    t_mean: float
    density: NDArray[np.float64]
    log_viscosity: NDArray[np.float64]


@cache
def _coefficients(solute: Solute) -> _Coefficients:
    table = read_table(f"melinder_2010_{solute}_coefficients")
    rows = np.asarray(table.columns["i"], dtype=int)
    columns = np.asarray(table.columns["j"], dtype=int)
    grids = {name: np.zeros((6, 4)) for name in ("density", "log_viscosity")}
    for name, grid in grids.items():
        grid[rows, columns] = table.columns[name]
    return _Coefficients(
        x_mean=float(table.head["x_mean"]),
        t_mean=float(table.head["t_mean"]),
        density=grids["density"],
        log_viscosity=grids["log_viscosity"],
    )


def density_and_viscosity(
    solute: Solute,
    mass_share: NDArray[np.float64],
    temperature_degC: float,
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Evaluate the correlation.

    Args:
        solute: what is dissolved in the water.
        mass_share: its shares [1], 0 to 0.60; any shape.
        temperature_degC: [degC], from the freezing point up to 40.

    Returns:
        Density [kg/m3] and viscosity [Pa s], in the shape of the shares.

    Example:
        >>> rho, mu = density_and_viscosity("propylene_glycol", np.array([0.5]), 20.0)
        >>> round(float(rho[0]), 1), round(1000 * float(mu[0]), 2)
        (1039.1, 6.39)

    Sources: melinder coefficients for aqueous propylene glycol and ethyl alcohol
    """
    c = _coefficients(solute)
    x = 100.0 * np.asarray(mass_share, dtype=np.float64) - c.x_mean
    powers_of_t = (temperature_degC - c.t_mean) ** np.arange(4)
    rho = np.polynomial.polynomial.polyval(x, c.density @ powers_of_t)
    log_mu = np.polynomial.polynomial.polyval(x, c.log_viscosity @ powers_of_t)
    return np.asarray(rho), 1e-3 * np.exp(log_mu)
