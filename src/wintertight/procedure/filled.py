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
from wintertight.procedure.readings import with_jug
from wintertight.procedure.record import Reading
from wintertight.procedure.steps import Step
from wintertight.proof.claims import PartProof
from wintertight.proof.judge import MOSTLY, Bench, prove_parts

_RANK = {False: 0, None: 1, True: 2}


@dataclass(frozen=True, eq=False)
class Filled:
    """A coach after what was done.

    Attributes:
        bench: the coach on the careful side at the end, the cold, and the product as read.
        trace: the replay on the careful side.
        best: the replay at best values, of the product as printed.
        drawn: what each draw takes.
        held: in how many draws each part is safe.
        parts: the proof of each part; readings of the jug are heard, others not yet.
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
    runs a little otherwise, each part counts as the less safe of what both leave. Gallons and
    minutes stay: they go by the dye.

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
        return replace(as_printed, parts=_heard(as_printed.parts, as_printed, jugs))
    poured = [replace(s, actions=poured_instead(s.actions, product, real)) for s in done]
    as_read = _filled(card, careful, poured, low_degC, real)
    pairs = zip(as_printed.parts, as_read.parts, strict=True)
    parts = tuple(p if _RANK[p.safe] < _RANK[r.safe] else r for p, r in pairs)
    return replace(as_read, best=as_printed.best, parts=_heard(parts, as_printed, jugs))


def _heard(
    parts: tuple[PartProof, ...], as_printed: Filled, jugs: Sequence[Reading]
) -> tuple[PartProof, ...]:
    """Let readings of the jug speak of the parts that hold something out of it."""
    bench = as_printed.bench
    if bench.product is None or not jugs:
        return parts
    fed = {part.id for part in as_printed.parts if _holds_product(part)}
    return tuple(
        with_jug(part, bench.product, jugs, bench.low_degC) if part.id in fed else part
        for part in parts
    )


def _holds_product(part: PartProof) -> bool:
    held = part.worst if part.worst.air < MOSTLY else part.mean
    product = held.glycol + held.ethanol + held.rated
    return product > 0.0 and part.claim not in {"drained", "removed"}


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
