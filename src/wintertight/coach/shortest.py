"""The shortest text of a number with its unit that reads back to the same meaning."""

from collections.abc import Iterator, Mapping
from decimal import Decimal
from types import MappingProxyType

from wintertight.errors import QuantityError
from wintertight.units import (
    FOOT_M,
    GALLON_M3,
    INCH_M,
    LITRE_M3,
    PSI_PA,
    Dimension,
    celsius_to_fahrenheit,
    parse_quantity,
)

FEW_DIGITS = 4
"""A number a person wrote has no more digits than this; beyond it another unit is tried."""

EXACT_DIGITS = 17
"""Digits that tell any two floating-point numbers apart."""

_LONGEST_PLAIN = 24
"""Signs of a number that is still written without a power of ten."""

_UNITS: Mapping[str, tuple[tuple[str, float], ...]] = MappingProxyType(
    {
        "length": (("ft", FOOT_M), ("in", INCH_M), ("m", 1.0), ("mm", 1e-3)),
        "volume": (("gal", GALLON_M3), ("fl oz", GALLON_M3 / 128), ("L", LITRE_M3), ("mL", 1e-6)),
        "flow": (("gal/min", GALLON_M3 / 60), ("L/min", LITRE_M3 / 60)),
        "pressure": (("psi", PSI_PA), ("kPa", 1e3), ("bar", 1e5)),
        "time": (("min", 60.0), ("s", 1.0)),
    }
)
"""Units of each dimension, in the order in which they are tried."""

_SI: Mapping[str, str] = MappingProxyType(
    {"length": "m", "volume": "m3", "flow": "m3/s", "pressure": "Pa", "time": "s"}
)


def shortest(value: float, dimension: Dimension) -> str:
    """Give the shortest text of a length, volume, flow, pressure or time.

    Args:
        value: the value in SI units.
        dimension: its kind.

    Returns:
        Number and unit: the first unit, US ones first, in which four digits suffice; else the one
        with the fewest. It reads back to the same nine digits in SI.

    Example:
        >>> shortest(0.3048 * 2.8, "length"), shortest(-0.0254, "length"), shortest(3.6, "length")
        ('2.8 ft', '-1 in', '3.6 m')
    """
    tried = [
        found
        for unit, factor in _UNITS[dimension]
        for found in _written(value / factor, f" {unit}", dimension, value)
    ]
    few = next((text for digits, text in tried if digits <= FEW_DIGITS), None)
    if few is not None:
        return few
    # In the SI unit itself the number is exact, whatever it is.
    exact = (EXACT_DIGITS, f"{value!r} {_SI[dimension]}")
    return min([*tried, exact], key=lambda found: found[0])[1]


def temperature_text(value_degC: float) -> str:
    """Give the shortest text of a temperature.

    Example:
        >>> temperature_text(-23.0 - 1 / 3), temperature_text(-28.71)
        ('-10F', '-28.71C')
    """
    tried = [
        *_written(celsius_to_fahrenheit(value_degC), "F", "temperature", value_degC),
        *_written(value_degC, "C", "temperature", value_degC),
    ]
    few = next((text for digits, text in tried if digits <= FEW_DIGITS), None)
    exact = (EXACT_DIGITS, f"{value_degC!r}C")
    return few or min([*tried, exact], key=lambda found: found[0])[1]


def spread_text(spread: float) -> str:
    """Give the shortest text of a spread, in per cent.

    Args:
        spread: relative half-width, 0 to below 1 [1].

    Example:
        >>> spread_text(0.25), spread_text(0.125)
        ('25 %', '12.5 %')
    """
    found = _written(100.0 * spread, " %", "share", spread)
    return next((text for _, text in found if parse_quantity(text, "share") < 1.0), repr(spread))


def _written(
    number: float, unit: str, dimension: Dimension, value: float
) -> Iterator[tuple[int, str]]:
    """Give the fewest digits that mean the value, and the text; nothing if no number does."""
    for digits in range(1, EXACT_DIGITS + 1):
        short = f"{number:.{digits}g}"
        plain = f"{Decimal(short):f}"
        text = (plain if len(plain) <= _LONGEST_PLAIN else short) + unit
        try:
            again = parse_quantity(text, dimension)
        except QuantityError:
            # Rounded up beyond what the kind allows: more digits keep it within.
            continue
        if f"{again + 0.0:.9g}" == f"{value + 0.0:.9g}":
            yield digits, text
            return
