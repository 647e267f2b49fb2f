"""Numbers and lists as they are said: the unit that ends a parameter's name tells its kind."""

import math
from collections.abc import Iterable, Mapping, Sequence

from wintertight.units import Dimension, System, in_words
from wintertight.wording.catalogue import say, say_best

_BY_ENDING: tuple[tuple[str, Dimension], ...] = (
    ("_degC", "temperature"),
    ("_m3", "volume"),
    ("_m", "length"),
    ("_Pa", "pressure"),
    ("_s", "time"),
)
_BY_NAME: Mapping[str, Dimension] = {"seconds": "time"}
_SHARES = frozenset({"full", "ice", "product", "spread", "share", "weakest", "held_in"})
_AT_LEAST = frozenset({"product", "weakest", "held_in"})
"""Shares that must never be told too high: they are rounded down."""

_WORDS: Mapping[str, str] = {"kind": "kind", "missing": "role", "cause": "cause in passing"}
"""Parameters that are keys themselves, and the subject in which they stand."""

AT_ONCE_S = 1.0
"""Colour that comes sooner than this comes at once [s]: a record says so with a nought."""


def spoken(
    params: Mapping[str, float | str], language: str = "en", system: System = "us"
) -> dict[str, str]:
    """Turn parameters into words.

    Args:
        params: by name: ``..._degC``, ``..._m3``, ``..._m``, ``..._s`` and shares are numbers with
            that unit, ``kind`` and ``missing`` are keys, other numbers are counts.
        language: two letters.
        system: "us" or "metric".

    Returns:
        Words by the same names.

    Example:
        >>> spoken({"freezing_point_degC": -20.0, "full": 0.05, "count": 2.0})
        {'freezing_point_degC': '-4 °F', 'full': '5 %', 'count': '2'}
    """
    return {name: _said(name, value, language, system) for name, value in params.items()}


def _said(name: str, value: float | str, language: str, system: System) -> str:
    if isinstance(value, str):
        return say(_WORDS[name], value, language) if name in _WORDS else value
    if name in _SHARES:
        rounded = math.floor(100.0 * value) / 100.0 if name in _AT_LEAST else value
        return share_in_words(rounded, language)
    by_ending = next((d for ending, d in _BY_ENDING if name.endswith(ending)), None)
    dimension = _BY_NAME.get(name, by_ending)
    return in_words(value, dimension, system) if dimension else f"{value:g}"


def share_in_words(share: float, language: str = "en") -> str:
    """Give a share in whole per cent; what is less than one is "under 1 %".

    Example:
        >>> share_in_words(0.0005), share_in_words(0.25)
        ('under 1 %', '25 %')
    """
    if share < 0.01:  # noqa: PLR2004 - one per cent
        return say("phrase", "share under", language, share=_per_cent("1", language))
    return _per_cent(f"{100.0 * share:.0f}", language)


def _per_cent(number: str, language: str) -> str:
    return say("phrase", "per cent", language, number=number)


def in_thousands(count: int, language: str = "en") -> str:
    """Give a large count with a mark after its thousands.

    Example:
        >>> in_thousands(4000), in_thousands(96)
        ('4,000', '96')
    """
    return f"{count:,}".replace(",", say("phrase", "thousands", language))


def listed(names: Iterable[str], language: str = "en") -> str:
    """Join names: "a", "a and b", "a, b and c".

    Some languages have another "and" before some sounds: "and: i" is said before a name that
    begins with i, where longer beginnings do not say otherwise.

    Example:
        >>> listed(["taps", "traps", "tanks"])
        'taps, traps and tanks'
    """
    some = list(dict.fromkeys(names))
    if len(some) <= 1:
        return "".join(some)
    first = say("phrase", "comma", language).join(some[:-1])
    last = some[-1]
    beginnings = tuple(last[:letters].casefold() for letters in (3, 2, 1))
    return say_best("phrase", "and", beginnings, language, first=first, last=last)


def some_of(names: Sequence[str], most: int, language: str = "en") -> str:
    """Join the first names and count the rest.

    Example:
        >>> some_of(["taps", "traps", "tanks", "lines"], 2)
        'taps and traps, and 2 more'
    """
    said = listed(names[:most], language)
    if len(names) <= most:
        return said
    return say("phrase", "more", language, parts=said, count=str(len(names) - most))


def counted(count: int, noun: str, language: str = "en") -> str:
    """Count: "1 jug", "4 jugs"; the nouns stand among the phrases.

    Example:
        >>> counted(1, "jugs"), counted(4, "jugs")
        ('1 jug', '4 jugs')
    """
    number = "one" if count == 1 else "many"
    return say("phrase", f"{noun} {number}", language, count=str(count))


def about(seconds: float | None, language: str = "en") -> str:
    """Give a time to colour as it is worth saying: at once, or to about five seconds.

    Example:
        >>> about(0.6), about(7.4), about(13.6), about(None)
        ('at once', 'about 7 s', 'about 15 s', 'none expected')
    """
    if seconds is None:
        return say("phrase", "never", language)
    if seconds < AT_ONCE_S:
        return say("phrase", "colour at once", language)
    step = 1 if seconds < 10 else 5  # noqa: PLR2004 - nobody reads a stopwatch closer
    said = in_words(step * round(seconds / step), "time", "metric")
    return say("phrase", "colour about", language, time=said)


def begun(sentence: str) -> str:
    """Give a sentence with a capital letter in front, and no blanks around it."""
    bare = sentence.strip()
    return bare[:1].upper() + bare[1:]
