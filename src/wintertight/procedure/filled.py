"""What the engine makes of the steps that were done, with the product as the fresh jug shows it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from wintertight.coach.card import Card
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.coach_network import CoachNetwork
from wintertight.flow.replay import Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.fluids.product import Product
from wintertight.procedure.drawn import Drawn, draw
from wintertight.procedure.fresh_jug import poured_instead, product_as_read
from wintertight.procedure.held_in import HeldIn, held_in, with_scatter
from wintertight.procedure.record import Reading
from wintertight.procedure.steps import Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import Bench, prove_parts

_RANK = {False: 0, None: 1, True: 2}


@dataclass(frozen=True, eq=False)
class Filled:
    """A coach after what was done.

    Attributes:
        bench: the coach on the careful side at the end, the cold, and the product as read.
        trace: the replay on the careful side.
        best: the replay at best values.
        drawn: what each draw takes.
        held: in how many draws each part is safe.
        parts: the proof of each part, before anything else that was read is heard.
    """

    bench: Bench
    trace: Trace
    best: Trace
    drawn: Drawn
    held: HeldIn
    parts: tuple[PartProof, ...]


def fill_as_done(  # noqa: PLR0913 - coach, job, cold, product and what was read of it
    card: Card,
    careful: CoachNetwork,
    done: Sequence[Step],
    low_degC: float,
    product: Product,
    *,
    jugs: Sequence[Reading] = (),
) -> Filled:
    """Replay what was done, and prove what it left.

    A product that the jug shows to be weaker than its label is replayed as it is; as a thinner one
    runs a little otherwise, each part counts as the less safe of what both leave.

    Args:
        card: the coach's card.
        careful: the coach on the careful side.
        done: the steps that were done, in order.
        low_degC: design low [degC].
        product: what was poured, as its label says.
        jugs: readings of the fresh jug, checked.

    Returns:
        The coach after it.
    """
    as_printed = _filled(card, careful, done, low_degC, product)
    real = product_as_read(product, jugs)
    if real == product:
        return as_printed
    poured = [replace(s, actions=poured_instead(s.actions, product, real)) for s in done]
    as_read = _filled(card, careful, poured, low_degC, real)
    pairs = zip(as_printed.parts, as_read.parts, strict=True)
    parts = tuple(p if _RANK[p.safe] < _RANK[r.safe] else r for p, r in pairs)
    return replace(as_read, parts=parts)


def _filled(
    card: Card, careful: CoachNetwork, done: Sequence[Step], low_degC: float, product: Product
) -> Filled:
    actions = [action for step in done for action in step.actions]
    best_network, drawn = build_network(card, BEST), draw(card)
    trace = replay(careful, arriving_state(careful), actions)
    best = replay(best_network, arriving_state(best_network), actions)
    bench = Bench(card, careful, trace.end, low_degC, product)
    parts = prove_parts(bench)
    held = held_in(drawn, bench, trace, best_network, parts)
    return Filled(bench, trace, best, drawn, held, with_scatter(parts, held))
