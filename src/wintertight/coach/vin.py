"""The check digit of a vehicle identification number.

It is required in North America only, and since 1981 only, so a wrong one is a reason to look at the
plate again and never a reason to refuse a coach.
"""

import re
from collections.abc import Mapping
from types import MappingProxyType

FIRST_YEAR = 1981
"""First model year with a check digit."""

LENGTH = 17

WEIGHTS = (8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2)
"""Weight of each of the seventeen places; the ninth is the check digit itself."""

VALUES: Mapping[str, int] = MappingProxyType(
    {str(digit): digit for digit in range(10)}
    | dict(zip("ABCDEFGH", range(1, 9), strict=True))
    | dict(zip("JKLMN", range(1, 6), strict=True))
    | {"P": 7, "R": 9}
    | dict(zip("STUVWXYZ", range(2, 10), strict=True))
)
"""Value of each character; I, O and Q are never used."""

_CHECK_PLACE = 8


def has_vin_shape(vin: str) -> bool:
    """Say whether it has seventeen characters, all of which a number may have."""
    return bool(re.fullmatch(r"[0-9A-HJ-NPR-Z]{17}", vin.upper()))


def vin_check_digit(vin: str) -> str:
    """Give the check digit that belongs to a vehicle identification number.

    The values of the characters times the weights of their places are summed; the remainder after
    division by eleven is the digit, and ten is written X.

    Args:
        vin: seventeen characters; the ninth does not matter.

    Returns:
        "0" to "9", or "X".

    Raises:
        KeyError: a character that no number has.
        ValueError: not seventeen characters.

    Example:
        >>> vin_check_digit("1" * 17)
        '1'

    Sources: 49-cfr-565.15, paragraph (c).
    """
    pairs = zip(vin.upper(), WEIGHTS, strict=True)
    rest = sum(VALUES[letter] * weight for letter, weight in pairs if weight) % 11
    return "X" if rest == 10 else str(rest)  # noqa: PLR2004 - the rule above says ten


def has_right_check_digit(vin: str) -> bool:
    """Say whether a number of the right shape carries its own check digit."""
    return vin.upper()[_CHECK_PLACE] == vin_check_digit(vin)
