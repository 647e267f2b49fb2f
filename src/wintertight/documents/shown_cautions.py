"""Which cautions are printed where: each as often as it helps, and no oftener.

A row of like steps carries a caution once, and the scalding heater is not named twice at one step.
"""

from collections.abc import Iterable, Mapping

from wintertight.procedure.steps import PlannedStep

COVERS: Mapping[str, frozenset[str]] = {"plug under pressure": frozenset({"hot water"})}
"""Caution that says all another one says."""


def shown_cautions(steps: Iterable[PlannedStep]) -> Mapping[int, tuple[str, ...]]:
    """Give the keys of the cautions to print at each step, by the step's number."""
    shown: dict[int, tuple[str, ...]] = {}
    before = ""
    for planned in steps:
        step = planned.step
        covered = frozenset[str]().union(*(COVERS.get(c, frozenset()) for c in step.cautions))
        repeated = step.key == before and planned.run is None
        shown[planned.n] = () if repeated else tuple(c for c in step.cautions if c not in covered)
        before = step.key
    return shown
