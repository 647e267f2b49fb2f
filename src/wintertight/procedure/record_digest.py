"""The digest of a record: anyone can work it out again, and any change of the record changes it.

The record is written as canonical JSON by RFC 8785 (keys sorted, no blanks, every number as
ECMAScript writes it) in UTF-8; its SHA-256 digest is taken. So neither line ends nor blanks nor the
order of keys matter, and any program that knows RFC 8785 gives the same digest.
"""

import hashlib
import json
import math
from os import PathLike

from wintertight.coach.read_json import read_json
from wintertight.coach.read_toml import read_file
from wintertight.errors import Place, RecordError
from wintertight.procedure.record import read_record

LEAST_PLAIN, LEAST_WITH_EXPONENT = 1e-6, 1e21
"""Between these ECMAScript writes a number without an exponent."""

DIGITS = 64
"""Hexadecimal digits of a digest."""


def record_digest(path: str | PathLike[str]) -> str:
    """Give the digest of a record's file.

    Args:
        path: the file; it must be a record that can be read.

    Returns:
        64 hexadecimal digits.

    Raises:
        UnreadableFile, SyntaxFault, RecordError: as ``load_record`` does.
    """
    text = read_file(path)
    read_record(text, str(path))
    return digest_of_text(text, str(path))


def digest_of_text(text: str, name: str = "record") -> str:
    """Give the digest of a record's text; errors as in ``record_digest``."""
    return digest_of(read_json(text, name), name)


def digest_of(value: object, name: str = "record") -> str:
    """Give the digest of plain data.

    Raises:
        RecordError: a text in it has half of a sign, which no UTF-8 can hold, or a number is
            beyond 1.8e308.

    Example:
        >>> digest_of({"b": 60.0, "a": [1, True]}) == digest_of({"a": [1, True], "b": 60})
        True
    """
    try:
        return hashlib.sha256(canonical(value).encode()).hexdigest()
    except UnicodeEncodeError:
        message = "a text has half of a sign in it; expected whole signs of Unicode"
        raise RecordError(message, Place(name)) from None
    except OverflowError:
        message = "a number is larger than any number of JSON may be"
        raise RecordError(message, Place(name)) from None


def check_digest(digest: str, printed: str, name: str = "record") -> None:
    """Refuse a record that is not the one whose digest stands on a paper.

    Args:
        digest: that of the record.
        printed: what stands on the paper; blanks and capitals do not matter.
        name: what to call the record in the error.

    Raises:
        RecordError: they differ, or what is printed is no digest.
    """
    bare = "".join(printed.split()).lower().removeprefix("sha256:")
    if len(bare) != DIGITS or not set(bare) <= set("0123456789abcdef"):
        message = f"expected a digest of {DIGITS} hexadecimal digits, as on the winter record"
        raise RecordError(message, Place(field="--printed"))
    if bare != digest:
        message = (
            "this record is not the one on the paper, or was changed since; expected the digest"
            f" {bare[:16]}..., got {digest[:16]}..."
        )
        raise RecordError(message, Place(name))


def canonical(value: object) -> str:
    """Write plain data as canonical JSON, by RFC 8785.

    Example:
        >>> canonical({"b": [0.002, 1e21, 60.0], "a": "x"})
        '{"a":"x","b":[0.002,1e+21,60]}'
    """
    if isinstance(value, dict):
        keys = sorted(value, key=lambda key: str(key).encode("utf-16-be", "surrogatepass"))
        return "{" + ",".join(f"{_text(key)}:{canonical(value[key])}" for key in keys) + "}"
    if isinstance(value, list):
        return "[" + ",".join(canonical(item) for item in value) + "]"
    if isinstance(value, int | float) and not isinstance(value, bool):
        return number(float(value))
    return _text(value)


def number(value: float) -> str:
    """Write a finite number as ECMAScript does.

    Example:
        >>> number(60.0), number(-0.0), number(1e-7), number(123456789012345680000.0)
        ('60', '0', '1e-7', '123456789012345680000')
    """
    if not value:
        return "0"
    size = abs(value)
    if not math.isfinite(value):
        message = f"{value} is no JSON"
        raise ValueError(message)
    mantissa, _, exponent = repr(value).partition("e")
    if LEAST_PLAIN <= size < LEAST_WITH_EXPONENT:
        return _without_exponent(mantissa, int(exponent or 0)).removesuffix(".0")
    power = int(exponent)
    return f"{mantissa.removesuffix('.0')}e{'+' if power > 0 else '-'}{abs(power)}"


def _without_exponent(mantissa: str, power: int) -> str:
    """Write a number such as 1.5e-05 or 1e+17 with its point where it belongs."""
    if not power:
        return mantissa
    sign = "-" if mantissa.startswith("-") else ""
    whole, _, part = mantissa.removeprefix("-").partition(".")
    if power < 0:
        return f"{sign}0.{'0' * (-power - 1)}{whole}{part}"
    return f"{sign}{whole}{part.ljust(power, '0')}"


def _text(value: object) -> str:
    return json.dumps(value, ensure_ascii=False)
