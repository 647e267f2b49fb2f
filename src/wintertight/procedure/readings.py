"""What a reading of an instrument or an eye does to the proof of a part.

A reading can take a claim away, and never carry one further than the engine does: of two rival
results the less safe one counts. It speaks on the doubtful side of its own uncertainty. Of another
product than plain glycol a reading only ever leaves a part unproven.
"""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from wintertight.cold.burst import survives
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.procedure.fresh_jug import Relative, product_as_read, relative_strength
from wintertight.procedure.instruments import (
    celsius,
    glycol_share,
    on_glycol_scale,
    pressure_Pa,
    warmest_degC,
    weakest_share,
)
from wintertight.procedure.record import Reading
from wintertight.procedure.samples import PALEST_PINK, likelihood_pink, strongest_with_ice
from wintertight.proof.claims import Evidence, PartProof

ALIKE, ALIKE_AT_LEAST = 0.95, 0.90
"""From these shares of the jug's reading up, as read and on its doubtful side, an outlet counts as
undiluted [1]; no usual instrument tells two cups apart much closer (common practice)."""

Params = Mapping[str, float | str]


def with_reading(
    part: PartProof,
    reading: Reading,
    low_degC: float,
    product: Product,
    jugs: Iterable[Reading] = (),
) -> PartProof:
    """Let a reading speak of a part.

    A pressure and the temperature of a sample are noted, and change nothing.

    Args:
        part: the part as the engine proves it.
        reading: a reading that was checked.
        low_degC: design low [degC].
        product: what the coach was filled with, as the fresh jug shows it.
        jugs: readings of the fresh jug; those of the same instrument are compared with.

    Returns:
        The part with the reading among its evidence; less safe where the reading is weaker than
        the engine, and never safer.
    """
    if reading.value is None:
        return part
    compared = [r for r in (relative_strength(reading, jug) for jug in jugs) if r is not None]
    if reading.kind == "freeze sample":
        part = _with_sample(part, reading, low_degC, product)
    elif glycol_share(reading) is None:
        part = _without_strength(part, reading)
    elif is_plain_glycol(product):
        part = _with_share(part, reading, low_degC, product)
    elif not on_glycol_scale(reading):
        part = _with_freezing_point(part, reading, low_degC, product)
    elif not compared:
        params = {"share": glycol_share(reading) or 0.0}
        part = _noted(part, Evidence("measured", "glycol scale misreads", params))
    for relative in compared:
        part = _against_jug(part, relative, low_degC, product)
    return part


def with_jug(
    part: PartProof, printed: Product, jugs: Iterable[Reading], low_degC: float
) -> PartProof:
    """Let readings of the fresh jug speak of a part that was filled from it.

    Args:
        part: the part as the engine proves it with the product as the jug shows it.
        printed: the product as its label says.
        jugs: readings of the jug, checked.
        low_degC: design low [degC].

    Returns:
        The part with the readings among its evidence; never safer.
    """
    for reading in jugs:
        part = _with_jug(part, printed, reading, low_degC)
    return part


def _with_jug(part: PartProof, printed: Product, reading: Reading, low_degC: float) -> PartProof:
    if reading.value is False:
        part = _noted(part, Evidence("measured", "jug not pink"))
        return _doubted(part, "not pink", {}) if part.safe is True else part
    evidence = _of_jug(printed, reading)
    if evidence is None:
        return part
    part = _noted(part, evidence)
    # Of plain glycol the weaker product was replayed; of any other not all of it can be.
    if is_plain_glycol(printed) or reading.looked == "liquid":
        return part
    return _judged_alike(part, reading, low_degC, printed)


def _of_jug(printed: Product, reading: Reading) -> Evidence | None:
    """Give what a reading of the jug says by itself; None where it is there to be compared with."""
    if reading.kind == "freeze sample":
        return _seen_in_freezer(reading, jug=True)
    share = glycol_share(reading)
    if share is not None and is_plain_glycol(printed):
        params = {
            "share": share,
            "weakest": weakest_share(reading) or 0.0,
            "full": printed.contents().glycol,
        }
        weaker = product_as_read(printed, (reading,)) != printed
        return Evidence("measured", "jug weaker" if weaker else "jug as printed", params)
    if share is None or on_glycol_scale(reading):
        return None
    return Evidence("measured", "jug freezes", {"freezing_point_degC": celsius(reading)})


def is_plain_glycol(product: Product) -> bool:
    """Tell whether a product is propylene glycol in water, and nothing else."""
    full = product.contents()
    return full.ethanol == 0.0 and full.rated == 0.0


def _with_share(part: PartProof, reading: Reading, low_degC: float, product: Product) -> PartProof:
    """Judge plain glycol by a share that was read, on its doubtful side."""
    share, weak = glycol_share(reading) or 0.0, weakest_share(reading) or 0.0
    params = {"share": share, "weakest": weak}
    part = _noted(part, Evidence("measured", "reading glycol share", params))
    if weak >= part.worst.glycol:
        return part
    held = Contents(glycol=weak)
    return _judged(part, held, "reading is too weak", params, low_degC=low_degC, product=product)


def _with_freezing_point(
    part: PartProof, reading: Reading, low_degC: float, product: Product
) -> PartProof:
    """Doubt another product that was seen to freeze too warm."""
    params = {"freezing_point_degC": celsius(reading)}
    part = _noted(part, Evidence("measured", "reading freezing point", params))
    return _judged_alike(part, reading, low_degC, product)


def _with_sample(part: PartProof, reading: Reading, low_degC: float, product: Product) -> PartProof:
    """Judge by what a freezer did to a sample; one that stayed liquid is evidence and no more."""
    part = _noted(part, _seen_in_freezer(reading, jug=False))
    if reading.looked == "liquid":
        return part
    return _judged_alike(part, reading, low_degC, product)


def _judged_alike(
    part: PartProof, reading: Reading, low_degC: float, product: Product
) -> PartProof:
    """Judge by the strongest mixture that freezes as the reading says, on its doubtful side."""
    solid, sample = reading.looked == "solid", reading.kind == "freeze sample"
    held = strongest_with_ice(warmest_degC(reading), product, solid=solid)
    if is_plain_glycol(product) and held.glycol >= part.worst.glycol:
        return part
    params = {"frozen_at_degC": celsius(reading)}
    if not sample:
        return _judged(part, held, "freezes too warm", params, low_degC=low_degC, product=product)
    reason = "sample froze solid" if solid else "sample turned to slush"
    return _judged(part, held, reason, params, low_degC=low_degC, product=product)


def _against_jug(
    part: PartProof, relative: Relative, low_degC: float, product: Product
) -> PartProof:
    """Judge by the ratio to the fresh jug: that share of what the product itself has."""
    weakest, full = relative.weakest, product.contents()
    params = {"share": min(1.0, relative.strength), "weakest": weakest}
    part = _noted(part, Evidence("measured", "reading against jug", params))
    liquid, strength = part.worst.liquid(), 1.0 - full.water
    if liquid is None or weakest * strength >= 1.0 - liquid.water:
        return part
    if full.rated > 0.0 and relative.strength >= ALIKE and weakest >= ALIKE_AT_LEAST:
        return part
    held = Contents(full.glycol * weakest, full.ethanol * weakest, full.rated * weakest)
    return _judged(part, held, "weaker than the jug", params, low_degC=low_degC, product=product)


def _without_strength(part: PartProof, reading: Reading) -> PartProof:
    """Take note of a reading that gives no strength; what is not pink was never filled."""
    if reading.kind == "pressure":
        params = {"read_Pa": pressure_Pa(reading)}
        return _noted(part, Evidence("measured", "reading pressure", params))
    if reading.kind == "temperature":
        params = {"read_degC": celsius(reading)}
        return _noted(part, Evidence("measured", "reading temperature", params))
    if reading.kind == "share eaten":
        return _noted(part, Evidence("measured", "reading share eaten"))
    if reading.value is True:
        params = {"share": likelihood_pink(PALEST_PINK)}
        return _noted(part, Evidence("measured", "reading looks pink", params))
    part = _noted(part, Evidence("measured", "reading not pink"))
    return _doubted(part, "not pink", {}) if part.safe is True else part


def _seen_in_freezer(reading: Reading, *, jug: bool) -> Evidence:
    if reading.looked == "liquid":
        params = {"read_degC": celsius(reading), "freezing_point_degC": warmest_degC(reading)}
        return Evidence("measured", "jug liquid" if jug else "reading freeze sample", params)
    params = {"frozen_at_degC": celsius(reading)}
    if reading.looked == "slush":
        return Evidence("measured", "jug slush" if jug else "sample slush", params)
    return Evidence("measured", "jug solid" if jug else "sample solid", params)


def _noted(part: PartProof, evidence: Evidence) -> PartProof:
    return replace(part, evidence=(*part.evidence, evidence))


def _judged(  # noqa: PLR0913 - what it is judged by, and what is said then
    part: PartProof,
    held: Contents,
    reason: str,
    params: Params,
    *,
    low_degC: float,
    product: Product,
) -> PartProof:
    """Judge a part as if it held something weaker; of both results the less safe one counts."""
    found = survives(held, low_degC, part.pocket, relieved=part.relieved, product=product)
    if found.safe is True or part.safe is False:
        return part
    if not is_plain_glycol(product):
        return _doubted(part, reason, params)
    return replace(
        part,
        worst=held,
        freezing_point_degC=found.freezing_point_degC,
        ice_fraction=found.ice_fraction,
        claim="unproven",
        safe=found.safe,
        reason=reason,
        params=params,
    )


def _doubted(part: PartProof, reason: str, params: Params) -> PartProof:
    return replace(part, claim="unproven", safe=None, reason=reason, params=params, look_at=True)
