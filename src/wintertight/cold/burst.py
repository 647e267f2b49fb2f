"""Does a held content burst what holds it?

Pockets are of three kinds. In an open one slush has somewhere to grow, so it must not burst. A
relieved one is rigid until the procedure opens it: after that it counts as open. A sealed one can
never be opened, and what lies in it must not freeze at all.

Every verdict is taken 1 K colder than the design low. That covers the spread between the two
published freezing curves of glycol up to 45 % of the mass. From 46 to 60 % the spread is larger,
1.3 K at 50 % and at most 1.4 K at 54 %, and the curve used here is the colder of the two.

Unknown is never safe: None means unproven. A mixture whose composition is not known is judged by
its printed rating only, and only undiluted; it is called unsafe where even undiluted glycol or
ethanol in its place would be.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from wintertight.coach.kinds import Pocket
from wintertight.cold.glycol_need import (
    HARMLESS_ICE,
    burst_limit_glycol,
    burst_need,
    freeze_need,
)
from wintertight.fluids.contents import Contents
from wintertight.fluids.glycol import volume_share_glycol
from wintertight.fluids.product import Product
from wintertight.fluids.slush import Freezing, freezing_point, ice_fraction, solution
from wintertight.fluids.water import FULLEST_CLOSED_CAVITY

VERDICT_MARGIN_K = 1.0
"""A verdict holds this much colder than the design low [K]."""

UNDILUTED = 0.999
"""A product of unknown composition counts as undiluted from this share of the liquid up [1].

A thousandth of water moves the freezing point of no mixture here by more than about 0.1 K.
"""

ReasonKey = Literal[
    "nothing there",
    "room in the air",
    "does not freeze",
    "freezes",
    "slush is harmless",
    "slush bursts",
    "rating holds",
    "rating is too warm",
    "no rating",
    "diluted product",
    "blend",
    "no burst curve",
    "beyond the table",
]


@dataclass(frozen=True, slots=True)
class Survival:
    """Whether a pocket survives, and why.

    Attributes:
        safe: True, False, or None where it cannot be said: unproven.
        freezing_point_degC: of the liquid [degC]; None where not known.
        ice_fraction: share of the mass that is ice at the design low itself [1]; None where not
            known.
        reason_key: key of the reason.
        params: numbers for the sentence, in SI units and degC.
    """

    safe: bool | None
    freezing_point_degC: float | None
    ice_fraction: float | None
    reason_key: ReasonKey
    params: Mapping[str, float] = field(default_factory=dict)


def burst_limit_degC(contents: Contents) -> tuple[float | None, str | None]:
    """Give how cold a content may get where its slush has somewhere to grow.

    Args:
        contents: any; its air is left out.

    Returns:
        The limit [degC] and None; or None and the key of the reason: only glycol in water has a
        published burst curve. For a rich mixture the limit is where the tables end.

    Example:
        >>> limit, why = burst_limit_degC(Contents(glycol=0.35))
        >>> round(limit, 1), why
        (-38.9, None)
        >>> burst_limit_degC(Contents(ethanol=0.3))
        (None, 'no burst curve')

    Sources: ashrae-fundamentals; math-for-hvacr p. 97
    """
    found = solution(contents)
    if isinstance(found, str):
        return None, found
    if found.kind == "ethanol":
        return None, "no burst curve"
    return burst_limit_glycol(volume_share_glycol(found.mass_share))[0], None


def survives(
    contents: Contents,
    low_degC: float,
    pocket: Pocket,
    *,
    relieved: bool,
    product: Product | None = None,
) -> Survival:
    """Judge one pocket at a design low.

    Args:
        contents: what it holds; air in it is taken to lie in the same hollow as the liquid.
        low_degC: design low [degC].
        pocket: open, relieved or sealed.
        relieved: whether the relieving action has been done; only a relieved pocket asks.
        product: the product in use, for contents of unknown composition.

    Returns:
        The judgement.

    Example:
        >>> survives(Contents(glycol=0.35), -28.9, "open", relieved=False).safe
        True
        >>> survives(Contents(glycol=0.35), -28.9, "sealed", relieved=False).reason_key
        'freezes'

    Sources: ashrae-fundamentals; lange table 5.13; math-for-hvacr p. 97; crc (growth of water)
    """
    freezing = freezing_point(contents)
    ice = ice_fraction(contents, low_degC).fraction
    judged_at = low_degC - VERDICT_MARGIN_K
    may_be_slush = pocket == "open" or (pocket == "relieved" and relieved)
    safe, key, params = _judge(contents, judged_at, freezing, product, may_be_slush=may_be_slush)
    return Survival(safe, freezing.point_degC, ice, key, {"judged_at_degC": judged_at, **params})


_Judgement = tuple[bool | None, ReasonKey, dict[str, float]]


def _judge(
    contents: Contents,
    judged_at: float,
    freezing: Freezing,
    product: Product | None,
    *,
    may_be_slush: bool,
) -> _Judgement:
    if freezing.why_null == "no liquid":
        return True, "nothing there", {}
    if 1.0 - contents.air <= FULLEST_CLOSED_CAVITY:
        return True, "room in the air", {"full": 1.0 - contents.air}
    if freezing.why_null == "product unknown":
        return _judge_unknown(contents, judged_at, product, may_be_slush=may_be_slush)
    if freezing.why_null == "blend":
        safe = False if _hopeless(contents, judged_at, may_be_slush=may_be_slush) else None
        return safe, "blend", {}
    return _judge_solution(contents, judged_at, freezing, may_be_slush=may_be_slush)


def _judge_solution(
    contents: Contents, judged_at: float, freezing: Freezing, *, may_be_slush: bool
) -> _Judgement:
    if freezing.at_most_degC is not None and freezing.at_most_degC <= judged_at:
        return True, "does not freeze", {"freezing_point_degC": freezing.at_most_degC}
    if may_be_slush:
        return _judge_slush(contents, judged_at)
    if freezing.point_degC is None:
        return None, "beyond the table", {}
    return False, "freezes", {"freezing_point_degC": freezing.point_degC}


def _judge_slush(contents: Contents, judged_at: float) -> _Judgement:
    found = solution(contents)
    if isinstance(found, str) or found.kind == "ethanol":
        # No burst curve is published, but so much ice bursts glycol too.
        at_least = ice_fraction(contents, judged_at).at_least
        if at_least > HARMLESS_ICE:
            return False, "slush bursts", {"ice": at_least}
        return None, "no burst curve", {"ice": at_least}
    limit, at_end = burst_limit_glycol(volume_share_glycol(found.mass_share))
    params = {"burst_limit_degC": limit}
    if limit <= judged_at:
        return True, "slush is harmless", params
    return (None, "beyond the table", params) if at_end else (False, "slush bursts", params)


def _judge_unknown(
    contents: Contents, judged_at: float, product: Product | None, *, may_be_slush: bool
) -> _Judgement:
    rating = None
    if product is not None:
        rating = product.burst_rating_degC if may_be_slush else product.freeze_rating_degC
    too_warm = rating is not None and rating > judged_at
    liquid = contents.liquid()
    share = liquid.rated if liquid else 0.0
    if share >= UNDILUTED:
        if rating is None:
            return None, "no rating", {}
        return (
            not too_warm,
            "rating is too warm" if too_warm else "rating holds",
            {"rating_degC": rating},
        )
    # Water does not help a product that is too weak undiluted.
    alone = contents.glycol + contents.ethanol <= 1.01 * (1.0 - UNDILUTED) * contents.rated
    weak = too_warm and alone
    safe = False if weak or _hopeless(contents, judged_at, may_be_slush=may_be_slush) else None
    return safe, "diluted product", {"product": share}


def _hopeless(contents: Contents, judged_at: float, *, may_be_slush: bool) -> bool:
    """Tell whether it fails even if all that is not water were glycol, or were ethanol."""
    other = min(1.0 - contents.air, contents.glycol + contents.ethanol + contents.rated)
    for best in (
        Contents(glycol=other, air=contents.air),
        Contents(ethanol=other, air=contents.air),
    ):
        safe, _, _ = _judge(best, judged_at, freezing_point(best), None, may_be_slush=may_be_slush)
        if safe is not False:
            return False
    return True


def glycol_needed(low_degC: float, pocket: Pocket, *, relieved: bool) -> float:
    """Give the weakest glycol that is safe in a pocket at a design low.

    Args:
        low_degC: design low [degC], down to -50.06.
        pocket: open, relieved or sealed.
        relieved: whether the relieving action will have been done.

    Returns:
        Propylene glycol's share of the volume [1].

    Raises:
        OutOfRange: colder than the published tables.

    Example:
        >>> round(glycol_needed(-28.9, "open", relieved=False), 3)
        0.314
        >>> round(glycol_needed(-28.9, "sealed", relieved=False), 3)
        0.473

    Sources: ashrae-fundamentals; math-for-hvacr p. 97
    """
    judged_at = low_degC - VERDICT_MARGIN_K
    may_be_slush = pocket == "open" or (pocket == "relieved" and relieved)
    need = burst_need(judged_at) if may_be_slush else freeze_need(judged_at)
    # A millionth more, so that rounding on the way back cannot turn "just enough" into too little.
    return need + 1e-6 if need > 0.0 else 0.0
