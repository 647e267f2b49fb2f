"""What instruments show: in which units, within which limits, and how far they are trusted."""

import math
from collections.abc import Mapping
from types import MappingProxyType

from wintertight.coach.faults import printable
from wintertight.errors import Place, RecordError
from wintertight.fluids.glycol import liquidus_glycol, volume_share_glycol
from wintertight.procedure.record import Event, Instrument, Reading, ReadingKind
from wintertight.units import PSI_PA, fahrenheit_to_celsius

SIGMAS = 2.0
"""A reading counts with so many standard deviations on its doubtful side [1]."""

USUAL_SD: Mapping[Instrument | None, float] = MappingProxyType(
    {None: 0.01, "refractometer": 0.01, "hydrometer": 0.03, "test strip": 0.05}
)
"""Standard deviation as glycol share where none is given [1]; common practice."""

REPEATED_SD: Mapping[Instrument | None, float] = MappingProxyType(
    {None: 0.01, "refractometer": 0.005, "hydrometer": 0.015, "test strip": 0.05}
)
"""The part of it that differs between two readings of one instrument [1]; common practice.

Two strips have nothing in common, and of two instruments nobody named nobody knows.
"""

ZERO_SD: Mapping[bool | None, float] = MappingProxyType({True: 0.0, None: 0.01, False: 0.03})
"""What a refractometer may be off as a whole [1], by whether it was zeroed on water; common
practice."""

USUAL_SD_K = 1.0
"""Standard deviation of a temperature where none is given [K]; common practice."""

EATEN_SD = 0.1
"""Standard deviation of a share eaten where none is given [1]: an eye's; common practice."""

COLDEST_READ_DEGC = -51.0
"""Freezing points are printed down to here; a colder reading counts as this one [degC]."""

LEAST_DEGC, MOST_DEGC = -150.0, 0.5
"""Between these a freezing point of anything that may be in a line must lie [degC]."""

COLDEST_DEGC, HOTTEST_DEGC = -90.0, 120.0
"""Between these any thermometer on a coach, or in a freezer, stands [degC]."""

LEAST_PA, MOST_PA = -1.02e5, 2.1e6
"""Between these a gauge on a coach stands [Pa]: a vacuum, and 300 psi."""

SHARE_UNITS: Mapping[str, float] = MappingProxyType(
    {"1": 1.0, "share": 1.0, "%": 0.01, "vol%": 0.01, "percent": 0.01}
)
"""Units of a share, and what one of them is worth [1]."""

PRESSURE_UNITS: Mapping[str, float] = MappingProxyType(
    {"psi": PSI_PA, "kpa": 1e3, "bar": 1e5, "pa": 1.0}
)
"""Units of a pressure, and what one of them is worth [Pa]."""

CELSIUS = frozenset({"degc", "c", "°c"})
FAHRENHEIT = frozenset({"degf", "f", "°f"})

SCALES: tuple[Instrument, ...] = ("refractometer", "hydrometer", "test strip")
"""Instruments with a scale made for glycol."""

READ_WITH: Mapping[ReadingKind, tuple[Instrument, ...]] = MappingProxyType(
    {
        "glycol share": SCALES,
        "freezing point": (*SCALES, "freezer", "thermometer"),
        "freeze sample": ("freezer", "thermometer", "eye"),
        "pressure": ("gauge",),
        "temperature": ("thermometer", "freezer"),
        "looks pink": ("eye",),
        "share eaten": ("eye",),
    }
)
"""What each kind of reading can be read with."""

_Fault = tuple[str, str] | None


def check_reading(event: Event, name: str = "record") -> None:
    """Refuse a reading whose instrument, unit or value cannot be.

    Args:
        event: the event; one without a reading, or whose reading has no value, passes, but a
            freeze sample must say where it stood and how it looked.
        name: what to call the record in an error.

    Raises:
        RecordError: an instrument that cannot read the quantity, a unit that is none of it, or a
            value that cannot be.
    """
    if event.reading is None:
        return
    fault = _fault(event.reading)
    if fault:
        field, message = fault
        where = f"events[{printable(event.id)}].reading.{field}"
        raise RecordError(printable(message), Place(name, None, where))


def _fault(reading: Reading) -> _Fault:
    """Give the field at fault and what was expected, or None."""
    fault = _form_fault(reading)
    if fault or reading.value is None or reading.kind == "looks pink":
        return fault
    if reading.kind in {"glycol share", "share eaten"}:
        return _share_fault(reading)
    return _pressure_fault(reading) if reading.kind == "pressure" else _temperature_fault(reading)


def _form_fault(reading: Reading) -> _Fault:
    """Give what does not go with the kind of reading, whatever its value."""
    known, kind = READ_WITH[reading.kind], reading.kind
    if reading.instrument is not None and reading.instrument not in known:
        return "instrument", f"expected {' or '.join(known)} for '{kind}'"
    if kind == "freeze sample" and reading.looked is None:
        return "looked", "expected how the sample looked: liquid, slush or solid"
    if kind != "freeze sample" and reading.looked is not None:
        return "looked", "only a freeze sample looks so; expected the kind 'freeze sample'"
    if reading.value is None:
        missing = kind == "freeze sample"
        return ("value", "expected the temperature of the freezer") if missing else None
    if isinstance(reading.value, bool) is not (kind == "looks pink"):
        expected = "true or false" if kind == "looks pink" else "a number"
        return "value", f"expected {expected} for '{kind}'"
    return None


def _share_fault(reading: Reading) -> _Fault:
    if _unit(reading) not in {"", *SHARE_UNITS}:
        return "unit", "expected % or 1, the unit of a share"
    share = _share(reading)
    if not 0.0 <= share <= 1.0:
        return "value", f"expected a share from 0 to 1, got {share:g}; is its unit %?"
    return None


def _pressure_fault(reading: Reading) -> _Fault:
    if _unit(reading) not in PRESSURE_UNITS:
        return "unit", "expected psi, kPa, bar or Pa"
    if not LEAST_PA <= pressure_Pa(reading) <= MOST_PA:
        shown = f"{reading.value:g} {reading.unit}"
        return "value", f"expected at most 300 psi, and no less than a vacuum, got {shown}"
    return None


def _temperature_fault(reading: Reading) -> _Fault:
    # A bare freezing point has always been one in degC.
    bare = {""} if reading.kind == "freezing point" else set()
    if _unit(reading) not in {*bare, *CELSIUS, *FAHRENHEIT}:
        return "unit", "expected degC or degF"
    degrees = celsius(reading)
    if reading.kind == "freezing point" and not LEAST_DEGC <= degrees <= MOST_DEGC:
        return "value", f"no liquid here freezes at {degrees:g} degC; is its unit degF?"
    if not COLDEST_DEGC <= degrees <= HOTTEST_DEGC:
        return "value", f"no thermometer here stands at {degrees:g} degC; is its unit degF?"
    if reading.looked not in {None, "liquid"} and degrees > MOST_DEGC:
        return "value", f"no sample has ice in it at {degrees:g} degC; is its unit degF?"
    return None


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
        return share_freezing_at(celsius(reading))
    return None


def weakest_share(reading: Reading) -> float | None:
    """Give the glycol share on the doubtful side of a reading's uncertainty.

    Args:
        reading: a reading that was checked.

    Returns:
        The share less ``SIGMAS`` standard deviations [1], not below 0; None where the reading says
        nothing of strength. What a refractometer may be off as a whole is in it.

    Example:
        >>> dry = Reading(kind="glycol share", value=0.35, instrument="refractometer", zeroed=False)
        >>> round(weakest_share(dry), 3)
        0.287

    Sources: common-practice (usual standard deviations)
    """
    share = glycol_share(reading)
    if share is None:
        return None
    return max(0.0, share - SIGMAS * math.hypot(_own_sd(reading, share), zero_sd(reading)))


def share_freezing_at(freezing_point_degC: float) -> float:
    """Give the glycol that freezes at a temperature.

    Args:
        freezing_point_degC: [degC]; beyond the printed table its nearer end counts.

    Returns:
        Its share of the volume [1].

    Sources: ashrae-fundamentals
    """
    degrees = min(0.0, max(COLDEST_READ_DEGC, freezing_point_degC))
    return volume_share_glycol(liquidus_glycol(degrees))


def on_glycol_scale(reading: Reading) -> bool:
    """Tell whether a strength was read from a scale made for glycol, which others mislead."""
    return reading.kind == "glycol share" or (
        reading.kind == "freezing point" and reading.instrument in SCALES
    )


def zero_sd(reading: Reading) -> float:
    """Give by how much all readings of the instrument may be off together [1].

    Only a refractometer is zeroed; one that nobody named counts as one, unless its uncertainty is
    given. Common practice.
    """
    unnamed = reading.instrument is None and reading.sd is None
    is_one = reading.instrument == "refractometer" or (unnamed and on_glycol_scale(reading))
    return ZERO_SD[reading.zeroed] if is_one else 0.0


def repeated_sd(reading: Reading, share: float) -> float:
    """Give by how much two readings of one thing with one instrument differ.

    Args:
        reading: a reading of strength that was checked.
        share: the same as glycol share [1].

    Returns:
        Standard deviation of one of them as glycol share [1]; the one given, else a usual one.
    """
    if reading.sd is None:
        return REPEATED_SD.get(reading.instrument, USUAL_SD[None])
    return _own_sd(reading, share)


def _own_sd(reading: Reading, share: float) -> float:
    """Give the standard deviation of a reading as glycol share [1]; a usual one where not said."""
    if reading.sd is None and reading.instrument in USUAL_SD:
        return USUAL_SD[reading.instrument]
    if reading.kind == "glycol share":
        return (reading.sd or 0.0) * SHARE_UNITS.get(_unit(reading), 1.0)
    # The curve is steep near 0 degC: the doubtful side is asked there, not at the reading.
    return abs(share - share_freezing_at(warmest_degC(reading))) / SIGMAS


def warmest_degC(reading: Reading) -> float:
    """Give a temperature on the doubtful side of its uncertainty: the warm one [degC]."""
    sd = USUAL_SD_K
    if reading.sd is not None:
        sd = reading.sd / 1.8 if _unit(reading) in FAHRENHEIT else reading.sd
    return celsius(reading) + SIGMAS * sd


def celsius(reading: Reading) -> float:
    """Give the value of a temperature that was checked [degC]."""
    value = float(reading.value or 0.0)
    return fahrenheit_to_celsius(value) if _unit(reading) in FAHRENHEIT else value


def pressure_Pa(reading: Reading) -> float:
    """Give the value of a pressure that was checked [Pa]."""
    return float(reading.value or 0.0) * PRESSURE_UNITS.get(_unit(reading), 1.0)


def _unit(reading: Reading) -> str:
    return (reading.unit or "").replace(" ", "").lower()


def _share(reading: Reading) -> float:
    return float(reading.value or 0.0) * SHARE_UNITS.get(_unit(reading), 1.0)


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
