"""Units: SI inside, inch, psi, gallon and degree Fahrenheit at the doors.

A quantity that a person writes always carries its unit. It is read in three steps: a strict
pattern (number, unit, and for some kinds one smaller unit more), a table of the units the trade
uses, and pint for the rest. Temperatures have a reader of their own, because pint takes "-20F" for
farads.
"""

import math
import re
from collections.abc import Mapping
from functools import cache
from types import MappingProxyType
from typing import TYPE_CHECKING, Literal

from wintertight.errors import QuantityError

if TYPE_CHECKING:
    import pint

Dimension = Literal[
    "length", "volume", "flow", "pressure", "temperature", "time", "share", "mass", "angle"
]
System = Literal["us", "metric"]

KNOWN_UNITS: frozenset[str] = frozenset(
    {
        "1", "%", "ppm", "mg/L", "rad", "deg",
        "m", "mm", "m2", "m3", "m/m3", "m/s", "m/s2", "m2/s", "m5/s", "gal", "L",
        "ft", "in", "SI unit",
        "s", "min", "h", "1/s",
        "m3/s", "m3/h", "gal/min", "L/min",
        "kg", "g", "mol", "kg/mol", "kg/m3", "kg/s", "kg/(m2 s)",
        "Pa", "kPa", "MPa", "psi", "Pa/m", "Pa s", "mPa s", "Pa s/m3", "s/m2", "N", "N/m",
        "s2/m5", "m/(m3/s)^n",
        "K", "degC", "degF", "K s",
        "J", "W", "J/K", "W/K", "J/kg", "J/(kg K)", "W/(m K)", "W/(m2 K)", "m2 K/W", "m K/W",
    }
)  # fmt: skip
"""What may stand in the [brackets] of a docstring."""

INCH_M = 0.0254
"""One inch [m], exact."""
FOOT_M = 12 * INCH_M
"""One foot [m], exact."""
GALLON_M3 = 231 * INCH_M**3
"""One US gallon [m3], exact: 231 cubic inches."""
FLUID_OUNCE_M3 = GALLON_M3 / 128
"""One US fluid ounce [m3], exact."""
LITRE_M3 = 1e-3
"""One litre [m3]."""
POUND_KG = 0.45359237
"""One avoirdupois pound [kg], exact."""
PSI_PA = POUND_KG * 9.80665 / INCH_M**2
"""One pound-force on a square inch [Pa], exact by definition."""
ZERO_CELSIUS_K = 273.15
"""0 degC [K]."""

LONGEST_TEXT = 64
"""No quantity is written longer than this; longer text is refused unread."""

TEMPERATURE: Dimension = "temperature"

_FACTORS: Mapping[str, Mapping[str, float]] = MappingProxyType(
    {
        "length": {
            "m": 1.0, "cm": 0.01, "mm": 1e-3, "km": 1e3,
            "ft": FOOT_M, "foot": FOOT_M, "feet": FOOT_M, "'": FOOT_M,
            "in": INCH_M, "inch": INCH_M, "inches": INCH_M, '"': INCH_M,
            "yd": 3 * FOOT_M, "yard": 3 * FOOT_M, "yards": 3 * FOOT_M,
        },
        "volume": {
            "m3": 1.0, "L": LITRE_M3, "l": LITRE_M3, "litre": LITRE_M3, "litres": LITRE_M3,
            "liter": LITRE_M3, "liters": LITRE_M3, "mL": 1e-6, "ml": 1e-6, "cm3": 1e-6,
            "gal": GALLON_M3, "gallon": GALLON_M3, "gallons": GALLON_M3,
            "qt": GALLON_M3 / 4, "quart": GALLON_M3 / 4, "quarts": GALLON_M3 / 4,
            "pt": GALLON_M3 / 8, "cup": GALLON_M3 / 16, "cups": GALLON_M3 / 16,
            "fl oz": FLUID_OUNCE_M3, "floz": FLUID_OUNCE_M3,
            "ft3": FOOT_M**3, "in3": INCH_M**3,
        },
        "flow": {
            "m3/s": 1.0, "m3/h": 1 / 3600, "L/s": LITRE_M3, "l/s": LITRE_M3,
            "L/min": LITRE_M3 / 60, "l/min": LITRE_M3 / 60, "lpm": LITRE_M3 / 60,
            "gpm": GALLON_M3 / 60, "gal/min": GALLON_M3 / 60, "gal/h": GALLON_M3 / 3600,
            "gph": GALLON_M3 / 3600, "cfm": FOOT_M**3 / 60, "ft3/min": FOOT_M**3 / 60,
        },
        "pressure": {
            "Pa": 1.0, "kPa": 1e3, "MPa": 1e6, "hPa": 100.0, "bar": 1e5, "mbar": 100.0,
            "psi": PSI_PA,
        },
        "time": {
            "s": 1.0, "sec": 1.0, "second": 1.0, "seconds": 1.0,
            "min": 60.0, "minute": 60.0, "minutes": 60.0,
            "h": 3600.0, "hr": 3600.0, "hour": 3600.0, "hours": 3600.0,
            "d": 86400.0, "day": 86400.0, "days": 86400.0,
        },
        "share": {"%": 0.01, "percent": 0.01, "ppm": 1e-6},
        "mass": {
            "kg": 1.0, "g": 1e-3, "lb": POUND_KG, "lbs": POUND_KG, "oz": POUND_KG / 16,
        },
        "angle": {
            "rad": 1.0, "deg": math.pi / 180, "degree": math.pi / 180, "degrees": math.pi / 180,
            "°": math.pi / 180,
        },
    }
)  # fmt: skip

_SI: Mapping[str, str] = MappingProxyType(
    {
        "length": "m", "volume": "m**3", "flow": "m**3/s", "pressure": "Pa", "time": "s",
        "share": "", "mass": "kg", "angle": "rad",
    }
)  # fmt: skip

_EXPECTED: Mapping[str, str] = MappingProxyType(
    {
        "length": 'a length with its unit, such as "12 ft" or "3.6 m"',
        "volume": 'a volume with its unit, such as "6 gal" (US) or "0.9 L"',
        "flow": 'a flow with its unit, such as "3 gal/min" or "11 L/min"',
        "pressure": 'a pressure with its unit, such as "55 psi" or "380 kPa"',
        "temperature": 'a temperature with its unit, such as "-20 °F" or "-29 °C"',
        "time": 'a time with its unit, such as "30 min" or "1 min 20 s"',
        "share": 'a share from 0 to 1, such as "35 %", "50 ppm" or "0.35"',
        "mass": 'a mass with its unit, such as "2 lb" or "0.9 kg"',
        "angle": 'an angle with its unit, such as "45 deg"',
    }
)

_PLAIN = r"(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?"
_NUMBER = rf"(?:(?:\d+[ -])?\d+/[1-9]\d*|{_PLAIN})"
_UNIT = r"""(?:fl\.?\ ?oz|[A-Za-zµ°%'"]{1,20}(?:\^?[23])?(?:/[A-Za-z]{1,12})?)"""
_QUANTITY = re.compile(rf"([+-]?)({_NUMBER})\ ?({_UNIT})(?:\ ?({_NUMBER})\ ?({_UNIT}))?")
_BARE = re.compile(rf"[+-]?{_PLAIN}")
_TEMPERATURE = re.compile(
    rf"([+-]?{_PLAIN})\ ?(?:°|deg(?:rees?)?\ ?)?\ ?(F|C|K|fahrenheit|celsius|kelvin)",
    re.IGNORECASE,
)
_MAY_HAVE_TWO_PARTS = frozenset({"length", "time", "volume", "mass"})
_MAY_BE_NEGATIVE = frozenset({"length", "pressure", "angle"})


def fahrenheit_to_celsius(temperature_degF: float) -> float:
    """Turn [degF] into [degC]: (t - 32) / 1.8.

    Example:
        >>> fahrenheit_to_celsius(-40.0)
        -40.0
    """
    return (temperature_degF - 32.0) / 1.8


def celsius_to_fahrenheit(temperature_degC: float) -> float:
    """Turn [degC] into [degF]: 1.8 t + 32.

    Example:
        >>> celsius_to_fahrenheit(100.0)
        212.0
    """
    return 1.8 * temperature_degC + 32.0


def parse_quantity(text: object, dimension: Dimension) -> float:
    """Read a quantity a person wrote.

    Args:
        text: a number and its unit, as "27 ft", "12 ft 3 in", "6 gal" (US), "-20F", "35 %". Only
            a share may be a bare number, and only a share may come as a number instead of text.
        dimension: the kind of quantity wanted.

    Returns:
        The value in SI units; a temperature in [degC].

    Raises:
        QuantityError: no text, no number, no unit, a unit of another kind, not finite, or below
            what the kind allows.

    Example:
        >>> round(parse_quantity("12 ft 3 in", "length"), 4)
        3.7338
        >>> parse_quantity("-40F", "temperature")
        -40.0
    """
    if dimension == "share" and isinstance(text, int | float) and not isinstance(text, bool):
        return _checked(float(text), dimension, text)
    if not isinstance(text, str) or len(text) > LONGEST_TEXT:
        raise _refusal(dimension, text)
    plain = " ".join(text.replace("\u2212", "-").split())
    if dimension == TEMPERATURE:
        return _read_temperature(plain)
    if dimension == "share" and _BARE.fullmatch(plain):
        return _checked(float(plain), dimension, text)
    match = _QUANTITY.fullmatch(plain)
    if match is None:
        raise _refusal(dimension, text)
    sign, number, unit, number_2, unit_2 = match.groups()
    factor = _factor(unit, dimension, text)
    value = _to_float(number) * factor
    if number_2 is not None:
        factor_2 = _factor(unit_2, dimension, text)
        if dimension not in _MAY_HAVE_TWO_PARTS or factor_2 >= factor:
            raise _refusal(dimension, text)
        value += _to_float(number_2) * factor_2
    return _checked(-value if sign == "-" else value, dimension, text)


def _read_temperature(text: str) -> float:
    match = _TEMPERATURE.fullmatch(text)
    if match is None:
        raise _refusal(TEMPERATURE, text)
    number, letter = float(match[1]), match[2][0].upper()
    if letter == "F":
        number = fahrenheit_to_celsius(number)
    elif letter == "K":
        number -= ZERO_CELSIUS_K
    if not math.isfinite(number) or number < -ZERO_CELSIUS_K:
        raise _refusal(TEMPERATURE, text)
    return number


def _to_float(number: str) -> float:
    if "/" not in number:
        return float(number)
    whole, _, part = number.replace("-", " ").rpartition(" ")
    above, below = part.split("/")
    return (float(whole) if whole else 0.0) + float(above) / float(below)


def _factor(unit: str, dimension: Dimension, text: object) -> float:
    word = unit.replace("^", "").replace(".", "")
    table = _FACTORS[dimension]
    if word in table:
        return table[word]
    lower = word.lower()
    # "MPa" and "mPa" differ, so only words that are all small letters are found in capitals.
    if len(lower) > 1 and lower in table:
        return table[lower]
    factor = _factor_by_pint(word, _SI[dimension])
    if factor is None:
        raise _refusal(dimension, text)
    return factor


@cache
def _registry() -> "pint.UnitRegistry[float]":
    # Importing pint costs a quarter of a second, and the table above serves nearly every card.
    from pint import UnitRegistry  # noqa: PLC0415

    return UnitRegistry()


@cache
def _factor_by_pint(word: str, si: str) -> float | None:
    registry = _registry()
    try:
        unit = registry.Unit(re.sub(r"(?<=[A-Za-z])([23])", r"**\1", word))
        wanted = registry.Unit(si)
        if not si or unit.dimensionality != wanted.dimensionality:
            return None
        return float(registry.Quantity(1.0, unit).to(wanted).magnitude)
    except Exception:  # noqa: BLE001 - whatever pint finds wrong with a word, it is no unit here
        return None


def _checked(value: float, dimension: Dimension, text: object) -> float:
    too_low = value < 0.0 and dimension not in _MAY_BE_NEGATIVE
    too_high = dimension == "share" and value > 1.0
    if not math.isfinite(value) or too_low or too_high:
        raise _refusal(dimension, text)
    return value


def _refusal(dimension: Dimension, text: object) -> QuantityError:
    shown = text if isinstance(text, str) else repr(text)
    shown = " ".join(shown.split())
    if len(shown) > LONGEST_TEXT:
        shown = shown[: LONGEST_TEXT - 3] + "..."
    return QuantityError(f'expected {_EXPECTED[dimension]}; got "{shown}"')


def in_words(value: float, dimension: Dimension, system: System) -> str:
    """Give a quantity as it is said in the shop.

    Args:
        value: the value in SI units; a temperature in [degC].
        dimension: its kind.
        system: "us" or "metric".

    Returns:
        Number and unit, rounded for reading.

    Example:
        >>> in_words(0.0098, "volume", "us"), in_words(0.0098, "volume", "metric")
        ('2.6 gal', '9.8 L')
        >>> in_words(80, "time", "us"), in_words(1.016, "length", "us")
        ('1 min 20 s', '3 ft 4 in')
    """
    if dimension == "time":
        return _time_in_words(value)
    if dimension == "length" and system == "us" and abs(value) >= FOOT_M - INCH_M / 2:
        return _feet_and_inches(value)
    for least, factor, unit in _SPOKEN[dimension, system]:
        if abs(value) >= least:
            return f"{_short(value / factor)} {unit}"
    if dimension == "temperature" and system == "us":
        return f"{_whole(celsius_to_fahrenheit(value))} °F"
    return f"{_one_decimal(value)} °C"


_SPOKEN: Mapping[tuple[str, str], tuple[tuple[float, float, str], ...]] = MappingProxyType(
    {
        ("length", "us"): ((0.0, INCH_M, "in"),),
        ("length", "metric"): ((1.0, 1.0, "m"), (0.0, 1e-3, "mm")),
        ("volume", "us"): ((GALLON_M3 / 4, GALLON_M3, "gal"), (0.0, FLUID_OUNCE_M3, "fl oz")),
        ("volume", "metric"): ((0.9995e-3, LITRE_M3, "L"), (0.0, 1e-6, "mL")),
        ("flow", "us"): ((0.0, GALLON_M3 / 60, "gal/min"),),
        ("flow", "metric"): ((0.0, LITRE_M3 / 60, "L/min"),),
        ("pressure", "us"): ((0.0, PSI_PA, "psi"),),
        ("pressure", "metric"): ((0.0, 1e3, "kPa"),),
        ("temperature", "us"): (),
        ("temperature", "metric"): (),
        ("share", "us"): ((1e-3, 0.01, "%"), (1e-12, 1e-6, "ppm"), (0.0, 0.01, "%")),
        ("share", "metric"): ((1e-3, 0.01, "%"), (1e-12, 1e-6, "ppm"), (0.0, 0.01, "%")),
        ("mass", "us"): ((POUND_KG, POUND_KG, "lb"), (0.0, POUND_KG / 16, "oz")),
        ("mass", "metric"): ((1.0, 1.0, "kg"), (0.0, 1e-3, "g")),
        ("angle", "us"): ((0.0, math.pi / 180, "deg"),),
        ("angle", "metric"): ((0.0, math.pi / 180, "deg"),),
    }
)


def _short(number: float) -> str:
    return _one_decimal(number) if abs(number) < 19.95 else _whole(number)  # noqa: PLR2004


def _whole(number: float) -> str:
    return f"{round(number):d}"


def _one_decimal(number: float) -> str:
    text = f"{number:.1f}".removesuffix(".0")
    return "0" if text == "-0" else text


def _feet_and_inches(value: float) -> str:
    sign = "-" if value < 0 else ""
    feet, inches = divmod(round(abs(value) / INCH_M), 12)
    return f"{sign}{feet} ft" + (f" {inches} in" if inches else "")


def _time_in_words(value: float) -> str:
    seconds = round(value)
    hours, rest = divmod(abs(seconds), 3600)
    minutes, rest = divmod(rest, 60)
    sign = "-" if seconds < 0 else ""
    if hours:
        minutes = round((abs(seconds) - 3600 * hours) / 60)
        hours, minutes = hours + minutes // 60, minutes % 60
        return f"{sign}{hours} h" + (f" {minutes} min" if minutes else "")
    if minutes:
        return f"{sign}{minutes} min" + (f" {rest} s" if rest else "")
    return f"{sign}{rest} s"
