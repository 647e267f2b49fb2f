"""Which antifreeze of the shop's list suits a coach, how much of it to buy, and what that costs.

The rules, in this order; a brand is no rule:

  refused        its name says ethylene glycol: a poison, never in a potable line.
  suits          its label prints what is in it, and undiluted that is shown to last in every pocket
                 the coach has. Then some dilution lasts as well, and the share of the product that
                 must leave each outlet is the largest that a pocket asks for.
  unproven       what is in it is not printed, or is a blend of glycol and ethanol, or a mixture
                 whose slush nobody has published: then only the printed rating is left, which holds
                 for the undiluted product. Where that is cold enough (burst rating for open and
                 relieved pockets, freeze rating for sealed ones) it may be used undiluted, and is
                 to be measured. Where a rating that is needed is not printed there is nothing to go
                 by.
  does not suit  undiluted it is shown to fail in some pocket, or its rating is too warm.

The worst pocket decides. Every answer is taken with the margin of the verdict. Unknown is never
safe: nothing "suits" by its rating alone, and a stock that nobody has counted is not enough.

Best first: what suits before what is unproven; within that what is in stock; within that the
cheapest for the whole job, an unknown price last; then the fewest containers; then by name.
"""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from decimal import Decimal
from types import MappingProxyType
from typing import Literal

from wintertight.coach.card import Card
from wintertight.coach.kinds import KINDS, Pocket
from wintertight.cold.burst import survives
from wintertight.errors import OutOfRange
from wintertight.fluids.product import Product
from wintertight.procedure.hazards import BURNS_AT, product_refused
from wintertight.procedure.run_on import share_needed

Answer = Literal["suits", "unproven", "does not suit", "refused"]
Why = Literal[
    "strong enough", "only its rating", "nothing to go by", "too weak", "rating too warm", "poison"
]
ChoiceCaution = Literal["burns", "may burn"]

ANSWERS: tuple[Answer, ...] = ("suits", "unproven", "does not suit", "refused")
"""Every answer, best first."""

NOTHING_WORKED_OUT: Mapping[str, float] = MappingProxyType({})

A_DROP = 1e-9
"""Part of a container that is not worth another one [1]: rounding."""


@dataclass(frozen=True, slots=True)
class ProductChoice:
    """What is said of one product.

    Attributes:
        product: the product.
        answer: suits, unproven, does not suit, or refused.
        why: key of the reason.
        share: share of the undiluted product that must leave each outlet [1]; None where it is not
            to be used.
        count: containers the job takes [1]; None where it is not to be used.
        cost: price of those, in the shop's currency; None where it has no price.
        enough: whether the stock suffices; None where it was not counted.
        cautions: keys of the cautions.
    """

    product: Product
    answer: Answer
    why: Why
    share: float | None = None
    count: int | None = None
    cost: Decimal | None = None
    enough: bool | None = None
    cautions: tuple[ChoiceCaution, ...] = ()

    @property
    def best_first(self) -> tuple[int, int, bool, Decimal, int, str]:
        """Give what products are put in order by, the best first."""
        return (
            ANSWERS.index(self.answer),
            {True: 0, None: 1, False: 2}[self.enough],
            self.cost is None,
            self.cost or Decimal(0),
            self.count or 0,
            self.product.name,
        )


def pockets_of(card: Card) -> frozenset[Pocket]:
    """Give the pockets that a coach has: its lines are open, and each fitting is of its kind.

    Args:
        card: the coach's card.

    Returns:
        Some of open, relieved and sealed.
    """
    fittings = (KINDS[f.kind] for f in card.fittings if f.seen != "absent")
    return frozenset({"open", *(kind.pocket for kind in fittings if kind.wetted)})


def has_flame(card: Card) -> bool:
    """Tell whether a heater on a coach's card burns gas, and so may be lit.

    Stoves, furnaces and refrigerators hold no water and stand on no card: False is no promise.
    """
    return any("burner" in f.heat for f in card.fittings if f.seen != "absent")


def choose_antifreeze(  # noqa: PLR0913 - a coach, a job and a shelf
    products: Iterable[Product],
    low_degC: float,
    pockets: Iterable[Pocket],
    needed_m3: float,
    *,
    flame: bool = True,
    needed_of_m3: Mapping[str, float] = NOTHING_WORKED_OUT,
) -> tuple[ProductChoice, ...]:
    """Judge every product of a list for one job.

    Args:
        products: the list; its order changes nothing.
        low_degC: design low [degC].
        pockets: pockets of the coach, relieved ones taken as relieved by the procedure.
        needed_m3: antifreeze the job takes [m3], above zero.
        flame: whether a pilot or burner may be lit in the coach; not to know is no "no".
        needed_of_m3: by name of product, what the job takes of it [m3], where that was worked out:
            a stronger product takes less.

    Returns:
        One entry a product, best first.

    Raises:
        OutOfRange: the job takes nothing, or no finite volume.
    """
    places = tuple(sorted({*pockets, "open"}))
    found = []
    for product in products:
        needed = needed_of_m3.get(product.name, needed_m3)
        if not 0.0 < needed < math.inf:
            message = f"a job takes a volume above zero, not {needed} m3"
            raise OutOfRange(message)
        found.append(_choice(product, low_degC, places, needed, flame=flame))
    return tuple(sorted(found, key=lambda choice: choice.best_first))


def _choice(
    product: Product, low_degC: float, pockets: tuple[Pocket, ...], needed_m3: float, *, flame: bool
) -> ProductChoice:
    answer, why, share = judge_product(product, low_degC, pockets)
    if share is None:
        return ProductChoice(product, answer, why)
    count = max(1, math.ceil(needed_m3 / product.container_m3 - A_DROP))
    return ProductChoice(
        product=product,
        answer=answer,
        why=why,
        share=share,
        count=count,
        cost=None if product.price is None else product.price * count,
        enough=None if product.stock is None else product.stock >= count,
        cautions=_cautions(product) if flame else (),
    )


def judge_product(
    product: Product, low_degC: float, pockets: Iterable[Pocket]
) -> tuple[Answer, Why, float | None]:
    """Judge one product by what its label prints.

    Args:
        product: the product.
        low_degC: design low [degC].
        pockets: pockets of the coach; the worst decides.

    Returns:
        The answer, why, and the share of the undiluted product that must leave each outlet [1];
        None where the product is not to be used.

    Example:
        >>> pink = Product("pink", 0.35, None, None, None, 0.003785)
        >>> judge_product(pink, -28.9, ["open"])[:2], judge_product(pink, -28.9, ["sealed"])
        (('suits', 'strong enough'), ('does not suit', 'too weak', None))

    Sources: ashrae-fundamentals; lange table 5.13; math-for-hvacr p. 97;
        health-canada-ethylene-glycol
    """
    if product_refused(product.name):
        return "refused", "poison", None
    judged = [_in_pocket(product, low_degC, pocket) for pocket in pockets]
    answer, why, _ = max(judged, key=lambda one: (ANSWERS.index(one[0]), one[2] is None))
    shares = [share for _, _, share in judged]
    usable = [share for share in shares if share is not None]
    return answer, why, max(usable) if len(usable) == len(shares) else None


def _in_pocket(
    product: Product, low_degC: float, pocket: Pocket
) -> tuple[Answer, Why, float | None]:
    full = survives(product.contents(), low_degC, pocket, relieved=True, product=product)
    if full.safe is False and full.reason_key == "rating is too warm":
        return "does not suit", "rating too warm", None
    if full.safe is False:
        return "does not suit", "too weak", None
    if full.safe is True and full.reason_key != "rating holds":
        return "suits", "strong enough", share_needed(low_degC, pocket, product)
    # Nothing is left to go by but what the label promises of the undiluted product.
    bare = replace(product, glycol=None, ethanol=None)
    rated = survives(bare.contents(), low_degC, pocket, relieved=True, product=bare)
    if rated.safe is None:
        return "unproven", "nothing to go by", None
    if rated.safe is False:
        return "does not suit", "rating too warm", None
    return "unproven", "only its rating", 1.0


def _cautions(product: Product) -> tuple[ChoiceCaution, ...]:
    """Give what a flame nearby has to do with a product; what is in it may not be known."""
    if product.ethanol is None and product.glycol is None:
        return ("may burn",)
    return ("burns",) if (product.ethanol or 0.0) >= BURNS_AT else ()
