"""Every method on one coach, side by side: what each leaves, takes and costs.

Best first: a method that proves everything before one that leaves something unproven, that before
one that leaves a gap. Among those that prove everything the shorter one comes first: a gallon saved
is worth a few minutes at most (common practice). Among the others the one that leaves fewer gaps,
then fewer parts unproven, comes first.
"""

from dataclasses import dataclass, replace
from decimal import Decimal

from wintertight.coach.card import Card
from wintertight.coach.place import Place
from wintertight.errors import ChoiceError
from wintertight.flow.air.supply import AirSupply
from wintertight.fluids.product import Product
from wintertight.procedure.at_place import at_place
from wintertight.procedure.bands import Band
from wintertight.procedure.methods.table import FIRST_AID, METHODS
from wintertight.procedure.place import Hindrance, is_possible, tilts
from wintertight.procedure.plan import Plan, plan_coach
from wintertight.procedure.side_by_side import side_by_side
from wintertight.proof.claims import Verdict

RANK: dict[Verdict, int] = {"safe": 0, "unproven": 1, "gap": 2}


@dataclass(frozen=True, slots=True)
class Compared:
    """One method on one coach.

    Attributes:
        method: its name.
        verdict: safe, unproven or gap; None where it cannot be planned.
        why_not: why it cannot be planned, "" where it can.
        antifreeze, duration: bands of antifreeze used [m3] and of the whole job [s]; None where it
            cannot be planned.
        jugs: how many containers it takes [1].
        cost: price of the antifreeze; None where its price is not known.
        gaps, unproven: parts that would burst, and parts nobody can vouch for.
        steps: how many steps it has [1].
        hindrances: what stands in its way at the place of work, and what takes longer there.
        holds_s: when the claim of a freeze hold expires [s]; None for any other method.
    """

    method: str
    verdict: Verdict | None
    why_not: str = ""
    antifreeze: Band | None = None
    duration: Band | None = None
    jugs: int = 0
    cost: Decimal | None = None
    gaps: tuple[str, ...] = ()
    unproven: tuple[str, ...] = ()
    steps: int = 0
    hindrances: tuple[Hindrance, ...] = ()
    holds_s: float | None = None

    @property
    def can_be_done(self) -> bool:
        """Can it be planned, and does nothing at the place of work hinder it?"""
        return self.verdict is not None and is_possible(self.hindrances)


def compare_methods(
    card: Card,
    product: Product,
    low_degC: float,
    *,
    air: AirSupply | None = None,
    place: Place | None = None,
) -> tuple[Compared, ...]:
    """Plan a coach by every method.

    Args:
        card: the coach's card.
        product: the antifreeze at hand.
        low_degC: design low of its storage site [degC].
        air: the compressor at hand; a small one where None.
        place: where it is to be done; None where that is not known yet.

    Returns:
        One entry a method, best first; those that cannot be done there, or planned, come last.

    Raises:
        ChoiceError: the product must never be used.
    """
    names = tuple(name for name in METHODS if name not in FIRST_AID)

    floor = tilts(place) if place is not None else ()

    def one(i: int) -> Compared:
        try:
            plan = plan_coach(card, product, low_degC, names[i], air=air, tilts=floor)
            return compared(at_place(plan, place))
        except ChoiceError as error:
            return Compared(names[i], None, error.message)

    return best_first(side_by_side(one, len(names)))


def best_first(found: list[Compared]) -> tuple[Compared, ...]:
    """Put methods in order, best first."""
    return tuple(sorted(found, key=_badness))


def _badness(one: Compared) -> tuple[bool, int, int, int, float]:
    if one.verdict is None or one.duration is None:
        return True, len(RANK), 0, 0, 0.0
    return (
        not one.can_be_done,
        RANK[one.verdict],
        len(one.gaps),
        len(one.unproven),
        one.duration.p50,
    )


def compared(plan: Plan) -> Compared:
    """Sum a plan up for the comparison.

    Args:
        plan: the plan.

    Returns:
        Its entry.
    """
    price = plan.product.price
    return Compared(
        method=plan.method,
        verdict=plan.verdict,
        antifreeze=plan.antifreeze,
        duration=plan.duration,
        jugs=plan.buy.count,
        cost=None if price is None else price * plan.buy.count,
        gaps=tuple(p.id for p in plan.parts if p.safe is False),
        unproven=tuple(p.id for p in plan.parts if p.safe is None),
        steps=len(plan.steps),
        # What crosses between processes must be plain.
        hindrances=tuple(replace(h, params=dict(h.params)) for h in plan.hindrances),
        holds_s=plan.hold.seconds if plan.hold else None,
    )
