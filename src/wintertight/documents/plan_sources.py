"""Which published works stand behind one plan."""

from collections.abc import Iterator

from wintertight.coach.kinds import KINDS
from wintertight.coach.tubing import BORES
from wintertight.procedure.plan import Plan
from wintertight.sources import SOURCES

ALWAYS = ("todini-pilati", "churchill", "levenspiel", "melinder", "crc", "common-practice")
"""Flow in the lines, friction, displacement, density and viscosity, and usual hollows."""

GLYCOL = ("ashrae-fundamentals", "math-for-hvacr")
"""Freezing points, and the burst need that is printed beside them."""

ETHANOL = ("lange",)
"""Freezing points of ethanol in water."""


def sources_of(plan: Plan) -> tuple[str, ...]:
    """Give the keys of the sources a plan stands on, in the order of the bibliography."""
    used = frozenset(_used(plan))
    return tuple(key for key in SOURCES if key in used)


def _used(plan: Plan) -> Iterator[str]:
    yield from ALWAYS
    liquids = [p.worst for p in plan.parts] + [plan.product.contents()]
    if any(c.glycol > 0.0 for c in liquids):
        yield from GLYCOL
    if any(c.ethanol > 0.0 for c in liquids):
        yield from ETHANOL
    for line in plan.card.lines:
        bore = None if line.bore else BORES.get((line.size, line.material))
        if bore is not None:
            yield bore.source
    for fitting in plan.card.fittings:
        yield KINDS[fitting.kind].source
