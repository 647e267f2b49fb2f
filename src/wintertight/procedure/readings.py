"""What a reading of an instrument or an eye does to the proof of a part.

A reading can take a claim away, and never carry one further than the engine does: of two rival
results the less safe one counts. It speaks on the doubtful side of its own uncertainty.
"""

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

from wintertight.cold.burst import survives
from wintertight.errors import Place, RecordError
from wintertight.fluids.contents import Contents
from wintertight.fluids.glycol import liquidus_glycol, volume_share_glycol
from wintertight.fluids.product import Product
from wintertight.procedure.record import Event, Reading
from wintertight.proof.claims import Evidence, PartProof

SIGMAS = 2.0
"""A reading counts with so many standard deviations on its doubtful side [1]."""

USUAL_SD = 0.01
"""Standard deviation of a reading as glycol share where none is given [1]; common practice."""

COLDEST_READ_DEGC = -51.0
"""Freezing points are printed down to here; a colder reading counts as this one [degC]."""

LEAST_DEGC, MOST_DEGC = -150.0, 0.5
"""Between these a freezing point of anything that may be in a line must lie [degC]."""

EATEN_SD = 0.1
"""Standard deviation of a share eaten where none is given [1]: an eye's; common practice."""

SHARE_UNITS: Mapping[str, float] = MappingProxyType(
    {"1": 1.0, "share": 1.0, "%": 0.01, "vol%": 0.01, "percent": 0.01}
)
"""Units of a share, and what one of them is worth [1]."""

CELSIUS = frozenset({"degc", "c", "°c"})
FAHRENHEIT = frozenset({"degf", "f", "°f"})


def check_reading(event: Event, name: str = "record") -> None:
    """Refuse a reading whose unit or value cannot be.

    Args:
        event: the event; one without a reading, or whose reading has no value, passes.
        name: what to call the record in an error.

    Raises:
        RecordError: a unit that is none of the quantity, or a value that cannot be.
    """
    reading = event.reading
    if reading is None or reading.value is None:
        return
    fault = _fault(reading)
    if fault:
        field, message = fault
        raise RecordError(message, Place(name, None, f"events[{event.id}].reading.{field}"))


def _fault(reading: Reading) -> tuple[str, str] | None:
    """Give the field at fault and what was expected, or None."""
    value = reading.value
    if isinstance(value, bool) is not (reading.kind == "looks pink"):
        expected = "true or false" if reading.kind == "looks pink" else "a number"
        return "value", f"expected {expected} for '{reading.kind}'"
    if reading.kind in {"glycol share", "share eaten"}:
        if _unit(reading) not in {"", *SHARE_UNITS}:
            return "unit", "expected % or 1, the unit of a share"
        share = _share(reading)
        if not 0.0 <= share <= 1.0:
            return "value", f"expected a share from 0 to 1, got {share:g}; is its unit %?"
    if reading.kind == "freezing point":
        if _unit(reading) not in {"", *CELSIUS, *FAHRENHEIT}:
            return "unit", "expected degC or degF"
        degrees = _celsius(reading)
        if not LEAST_DEGC <= degrees <= MOST_DEGC:
            return "value", f"no liquid here freezes at {degrees:g} degC; is its unit degF?"
    return None


def with_reading(
    part: PartProof,
    reading: Reading,
    low_degC: float,
    product: Product,
) -> PartProof:
    """Let a reading speak of a part.

    Args:
        part: the part as the engine proves it.
        reading: a reading that was checked.
        low_degC: design low [degC].
        product: what the coach was filled with.

    Returns:
        The part with the reading among its evidence; less safe where the reading is weaker than
        the engine, and never safer.
    """
    share = glycol_share(reading)
    if share is None:
        return _without_number(part, reading)
    weak = max(0.0, share - SIGMAS * _share_sd(reading, share))
    params = {"share": share, "weakest": weak}
    evidence = Evidence("measured", "reading glycol share", params)
    part = replace(part, evidence=(*part.evidence, evidence))
    full = product.contents()
    plain = full.ethanol == 0.0 and full.rated == 0.0
    if not plain and reading.kind == "glycol share":
        return part  # a scale for glycol says nothing of another product
    if plain and weak >= part.worst.glycol:
        return part
    contents = Contents(glycol=weak)
    found = survives(contents, low_degC, part.pocket, relieved=part.relieved, product=product)
    if found.safe is True or part.safe is False:
        return part
    if not plain:
        return _doubted(part, params)
    return replace(
        part,
        worst=contents,
        freezing_point_degC=found.freezing_point_degC,
        ice_fraction=found.ice_fraction,
        claim="unproven",
        safe=None if part.safe is None else found.safe,
        reason="reading is too weak",
        params=params,
    )


def _without_number(part: PartProof, reading: Reading) -> PartProof:
    """Take note of a reading that gives no strength; what is not pink was never filled."""
    if reading.value is None:
        return part
    key = f"reading {reading.kind}"
    if reading.kind == "looks pink" and reading.value is False:
        params = {"share": 0.0, "weakest": 0.0}
        evidence = Evidence("measured", "reading glycol share", params)
        part = replace(part, evidence=(*part.evidence, evidence))
        return _doubted(part, params) if part.safe is True else part
    return replace(part, evidence=(*part.evidence, Evidence("measured", key)))


def _doubted(part: PartProof, params: Mapping[str, float | str]) -> PartProof:
    return replace(
        part, claim="unproven", safe=None, reason="reading is too weak", params=params, look_at=True
    )


def glycol_share(reading: Reading) -> float | None:
    """Give a reading as glycol's share of the volume.

    Args:
        reading: a reading that was checked.

    Returns:
        The share [1]; for a freezing point that of the glycol which freezes there; None where the
        reading says nothing of strength.

    Example:
        >>> round(glycol_share(Reading(kind="freezing point", value=9.2, unit="degF")), 3)
        0.294

    Sources: ashrae-fundamentals
    """
    if reading.value is None or isinstance(reading.value, bool):
        return None
    if reading.kind == "glycol share":
        return _share(reading)
    if reading.kind == "freezing point":
        return _share_at(_celsius(reading))
    return None


def share_eaten(reading: Reading) -> tuple[float, float] | None:
    """Give a reading as the share of an anode rod that is eaten.

    Args:
        reading: a reading that was checked.

    Returns:
        The share and its standard deviation [1]; None where the reading is of another kind, or has
        no value.

    Example:
        >>> share_eaten(Reading(kind="share eaten", value=30.0, unit="%"))
        (0.3, 0.1)
    """
    if reading.kind != "share eaten" or reading.value is None:
        return None
    if reading.sd is None:
        return _share(reading), EATEN_SD
    return _share(reading), reading.sd * SHARE_UNITS.get(_unit(reading), 1.0)


def _share_at(freezing_point_degC: float) -> float:
    degrees = min(0.0, max(COLDEST_READ_DEGC, freezing_point_degC))
    return volume_share_glycol(liquidus_glycol(degrees))


def _unit(reading: Reading) -> str:
    return (reading.unit or "").replace(" ", "").lower()


def _share(reading: Reading) -> float:
    return float(reading.value or 0.0) * SHARE_UNITS.get(_unit(reading), 1.0)


def _celsius(reading: Reading) -> float:
    value = float(reading.value or 0.0)
    return (value - 32.0) / 1.8 if _unit(reading) in FAHRENHEIT else value


def _share_sd(reading: Reading, share: float) -> float:
    """Give the standard deviation of a reading as glycol share [1]; a usual one where not said."""
    if reading.sd is None:
        return USUAL_SD
    if reading.kind == "glycol share":
        return reading.sd * SHARE_UNITS.get(_unit(reading), 1.0)
    degrees = reading.sd / 1.8 if _unit(reading) in FAHRENHEIT else reading.sd
    # The curve is steep near 0 degC: the doubtful side is asked there, not at the reading.
    return abs(share - _share_at(_celsius(reading) + SIGMAS * degrees)) / SIGMAS
