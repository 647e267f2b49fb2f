"""A cup from the fresh jug: what the product really is, and what an outlet is compared with.

Whatever a scale was made for, it shows a cup from an outlet and one from the jug alike when they
are alike. So the ratio of both speaks of any product (common practice), as long as one instrument
read both.
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

from wintertight.flow.actions import Action
from wintertight.fluids.product import Product
from wintertight.procedure.drawn import PRINTED_WITHIN
from wintertight.procedure.instruments import (
    SIGMAS,
    celsius,
    glycol_share,
    on_glycol_scale,
    repeated_sd,
    warmest_degC,
    weakest_share,
    zero_sd,
)
from wintertight.procedure.record import Event, Reading
from wintertight.procedure.samples import strongest_with_ice
from wintertight.procedure.steps import Step

DRAWS_FROM_JUG = "draw from jug"
"""Key of the step at whose time a reading is one of the fresh jug."""

OF_NO_JUG = frozenset({"pressure", "temperature"})
"""Kinds of reading that say nothing of a product."""


@dataclass(frozen=True, slots=True)
class Relative:
    """Strength at an outlet over that of the fresh jug.

    Attributes:
        strength: the ratio [1].
        sd: its standard deviation [1].
    """

    strength: float
    sd: float

    @property
    def weakest(self) -> float:
        """The ratio on its doubtful side [1], from 0 to 1."""
        return min(1.0, max(0.0, self.strength - SIGMAS * self.sd))


def is_of_jug(reading: Reading, step: Step) -> bool:
    """Tell whether a reading is of the fresh jug: it says so, or the jug was just opened."""
    told = reading.of == "jug" or step.key == DRAWS_FROM_JUG
    return told and reading.kind not in OF_NO_JUG


def jug_readings(pairs: Iterable[tuple[Event, Step]]) -> tuple[Reading, ...]:
    """Give the readings of the fresh jug among all events of a job."""
    return tuple(e.reading for e, step in pairs if e.reading and is_of_jug(e.reading, step))


def relative_strength(outlet: Reading, jug: Reading) -> Relative | None:
    """Compare a cup from an outlet with one from the fresh jug.

    r = a / j, with the variance (a's + r^2 j's + (1 - r)^2 zero's) / j^2. What the instrument is
    off as a factor cancels; an error of its zero is common to both and only counts with 1 - r,
    unless it was zeroed in between.

    Args:
        outlet: reading at the outlet, checked.
        jug: reading of the jug, checked.

    Returns:
        The ratio and its standard deviation, which has no bound where the jug shows nothing; None
        where there is nothing to compare: another instrument, or no scale.

    Example:
        >>> cup = Reading(kind="glycol share", value=0.27, sd=0.005)
        >>> found = relative_strength(cup, cup.model_copy(update={"value": 0.30}))
        >>> round(found.strength, 2), round(found.sd, 3)
        (0.9, 0.022)

    Sources: common-practice; calculated (propagation of errors)
    """
    one, full = _on_scale(outlet), _on_scale(jug)
    if one is None or full is None or outlet.instrument != jug.instrument:
        return None
    if full <= 0.0:
        return Relative(0.0, math.inf)
    ratio = one / full
    own, theirs = repeated_sd(outlet, one), repeated_sd(jug, full)
    common = zero_sd(jug)
    if outlet.zeroed != jug.zeroed:
        own, theirs = math.hypot(own, zero_sd(outlet)), math.hypot(theirs, zero_sd(jug))
        common = 0.0
    return Relative(ratio, math.hypot(own, ratio * theirs, (1.0 - ratio) * common) / full)


def _on_scale(reading: Reading) -> float | None:
    """Give a reading as a scale shows it [1]; None where it is from no scale."""
    unnamed = reading.instrument is None
    return glycol_share(reading) if unnamed or on_glycol_scale(reading) else None


def product_as_read(product: Product, jugs: Iterable[Reading]) -> Product:
    """Give the product as the fresh jug shows it: as printed, or weaker.

    A label is right to ``PRINTED_WITHIN``, and every proof allows for that. A jug that shows less
    counts on the doubtful side of its reading; a stronger one changes nothing.

    Args:
        product: as its label says.
        jugs: readings of the jug, checked.

    Returns:
        The product with the least share any reading leaves it; one known only by its rating, with
        no colder rating than its frozen sample leaves it.

    Example:
        >>> pink = Product("pink", 0.35, None, None, None, 0.004)
        >>> cup = Reading(kind="glycol share", value=0.30, sd=0.01)
        >>> round(product_as_read(pink, [cup]).glycol, 2)
        0.28
    """
    found = product
    for reading in jugs:
        found = _weaker(found, product, reading)
    return found


def _weaker(found: Product, printed: Product, reading: Reading) -> Product:
    """Give a product as one more reading leaves it."""
    full = printed.contents()
    if full.rated > 0.0:
        return _rated_less(found, printed, reading)
    plain = full.ethanol == 0.0
    if full.glycol > 0.0 and not plain:
        return found  # a blend is never shown to hold anyway
    shown = _shown(printed, reading)
    if shown is None:
        return found
    share, weakest = shown
    if share >= (full.glycol if plain else full.ethanol) - PRINTED_WITHIN:
        return found
    if plain:
        return replace(found, glycol=min(weakest, found.glycol or 0.0))
    # A label's figure stands for a little less ethanol than the same share before mixing.
    return replace(found, ethanol=min(weakest, found.ethanol or 0.0))


def _shown(product: Product, reading: Reading) -> tuple[float, float] | None:
    """Give the most antifreeze a reading of the jug allows a product.

    Args:
        product: as its label says; glycol or ethanol, and nothing else.
        reading: of the jug, checked.

    Returns:
        Its share as read and on the doubtful side [1]; None where the reading says nothing of
        that, as a glycol scale does not of ethanol.
    """
    if reading.value is None:
        return None
    plain = product.contents().ethanol == 0.0
    if plain and reading.kind in {"glycol share", "freezing point"}:
        return glycol_share(reading) or 0.0, weakest_share(reading) or 0.0
    if reading.looked == "liquid" or on_glycol_scale(reading):
        return None
    if reading.kind not in {"freezing point", "freeze sample"}:
        return None
    solid = reading.looked == "solid"
    share, weakest = (
        strongest_with_ice(degrees, product, solid=solid)
        for degrees in (celsius(reading), warmest_degC(reading))
    )
    if plain:
        return share.glycol, weakest.glycol
    return share.ethanol, weakest.ethanol


def _rated_less(found: Product, printed: Product, reading: Reading) -> Product:
    """Take a rating back that a frozen sample contradicts."""
    froze = reading.looked in {"slush", "solid"} or (
        reading.kind == "freezing point" and not on_glycol_scale(reading)
    )
    if reading.value is None or not froze:
        return found
    degrees = celsius(reading)

    def no_colder(rating: float | None, label: float | None) -> float | None:
        if rating is None or label is None or degrees <= label:
            return rating
        return max(rating, warmest_degC(reading))

    burst = found.burst_rating_degC
    if reading.looked == "solid":
        burst = no_colder(burst, printed.burst_rating_degC)
    freeze = no_colder(found.freeze_rating_degC, printed.freeze_rating_degC)
    return replace(found, burst_rating_degC=burst, freeze_rating_degC=freeze)


def poured_instead(
    actions: tuple[Action, ...], planned: Product, real: Product
) -> tuple[Action, ...]:
    """Give actions with the real product in place of the planned one."""
    was, now = planned.contents(), real.contents()
    return tuple(replace(a, contents=now) if a.contents == was else a for a in actions)
