"""What is left in each trap, in all drawn coaches at once."""

from collections.abc import Iterable, Mapping

import numpy as np
import numpy.typing as npt

from wintertight.procedure.ran import DrawnRun, Sizes

Array = npt.NDArray[np.float64]

NEARLY_ALL = 1.0 - 1e-9
"""Share of product beyond which a trap counts as full of it [1]."""


def poured_shares(
    sizes: Sizes,
    runs: Iterable[DrawnRun],
    poured_m3: Mapping[str, float],
    shares: Mapping[str, float],
) -> dict[str, Array]:
    """Work out the share of the product in each trap, in every draw.

    A trap is stirred: what it lacks goes as ``exp(-volume passed / volume)``. Of the volume of
    product that the replay's share speaks of, cups are the same in every draw, and the rest goes
    with what runs on after colour at the outlets above it.

    Args:
        sizes: sizes of everything in every draw.
        runs: all runs of the replay on the careful side.
        poured_m3: what was poured into each trap [m3].
        shares: share of the product in each trap, as the replay found it [1].

    Returns:
        Shares [1] by trap, shape (draws,) each; those into which nothing fell are missing.

    Sources: levenspiel (stirred tank)
    """
    on = {trap: np.zeros(len(sizes.drawn.pump) + 1) for trap in shares}
    for run in runs:
        trap = sizes.network.links[sizes.network.outlets[run.seen.outlet].link].drops_to or ""
        if trap in on and run.ran is not None:
            usual = run.seen.volume_m3 - (run.seen.first_colour_m3 or 0.0)
            on[trap] += np.append(run.ran.on_m3, usual)
    cups = {trap: poured_m3.get(trap, 0.0) for trap in shares}
    return {
        trap: _share(sizes, trap, min(share, NEARLY_ALL), cups[trap], on[trap])
        for trap, share in shares.items()
        if cups[trap] or on[trap][-1] > 0.0
    }


def _share(sizes: Sizes, trap: str, share: float, cups_m3: float, on_m3: Array) -> Array:
    usual_m3 = sizes.network.pools[trap].volume_m3
    volume = sizes.best.pools[trap].volume_m3 * sizes.drawn.lines[sizes.network.pools[trap].part]
    passed_m3 = -np.log1p(-share) * usual_m3
    ran_m3 = max(0.0, passed_m3 - cups_m3)
    more = on_m3[:-1] / on_m3[-1] if on_m3[-1] > 0.0 else 1.0
    return np.asarray(-np.expm1(-(passed_m3 - ran_m3 + ran_m3 * more) / volume))
