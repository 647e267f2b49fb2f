"""How many cups of antifreeze each trap and sump is given."""

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from wintertight.flow.actions import Action
from wintertight.flow.replay import replay
from wintertight.fluids.product import Product
from wintertight.procedure.phases.finishing import CUP_M3
from wintertight.procedure.run_on import share_needed
from wintertight.proof.judge import Bench, prove_parts

MOST_CUPS = 8
"""Most cups that are poured into one trap [1]; more is a sign that the product is too weak."""

NOTHING: Mapping[str, float] = MappingProxyType({})


def cups_needed(
    bench: Bench, product: Product, stronger: Mapping[str, float] = NOTHING
) -> dict[str, int]:
    """Give how many cups each trap and sump needs that is not strong enough yet.

    Args:
        bench: the coach before they are poured, and the cold.
        product: what is poured.
        stronger: by trap, the factor by which more of the product is aimed at than usual [1].

    Returns:
        Cups by trap.
    """
    weak = {part.id for part in prove_parts(bench) if part.safe is not True or part.id in stronger}
    breathing = {b.pool for b in bench.network.breathers}
    return {
        trap: _cups_of(bench, product, trap, stronger.get(trap, 1.0))
        for trap, pool in bench.network.pools.items()
        if pool.stirred and trap in weak and trap not in breathing
    }


def _cups_of(bench: Bench, product: Product, trap: str, stronger: float) -> int:
    """Give the fewest cups after which a trap is as strong as is aimed at.

    One more than would do on the careful side where more than usual is aimed at: cups are whole.
    Where so many as may be poured do not get it there, the most that make it hold; one where no
    number of them helps.
    """
    asked = (share_needed(bench.low_degC, "open", product) or 0.0) * stronger
    full = 1.0 - product.contents().water
    holds, one_more = 1, stronger > 1.0
    for cups in range(1, MOST_CUPS + 1):
        poured = Action("pour", trap, contents=product.contents(), volume_m3=cups * CUP_M3)
        state = replay(bench.network, bench.state, [poured]).end
        found = next(p for p in prove_parts(replace(bench, state=state)) if p.id == trap)
        if found.safe is True:
            holds = cups
            if not one_more and 1.0 - found.worst.water >= asked * full:
                break
            one_more = False
    return holds
