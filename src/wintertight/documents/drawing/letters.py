"""How wide a text is, by the font that papers are set in."""

from functools import cache, lru_cache

from fontTools.ttLib import TTFont

from wintertight.documents.typeset import FONTS

LINE = 1.25
"""Height of a line of text, as a share of its size [1]."""


@cache
def _widths(file: str) -> tuple[dict[int, float], float]:
    font = TTFont(FONTS / file)
    per_em = font["head"].unitsPerEm
    advance, names = font["hmtx"], font.getBestCmap()
    widths = {code: advance[name][0] / per_em for code, name in names.items()}
    return widths, max(widths.values())


@lru_cache(maxsize=4096)
def width_of(text: str, size: float, *, bold: bool = False) -> float:
    """Give how wide a text is.

    Args:
        text: on one line.
        size: of the letters.
        bold: whether it is set bold.

    Returns:
        Sum of the advances; a letter that the font lacks counts as its widest.

    Example:
        >>> 50.0 < width_of("bypass valve", 10.0) < 70.0
        True
    """
    widths, widest = _widths("NotoSans-Bold.ttf" if bold else "NotoSans-Regular.ttf")
    return size * sum(widths.get(ord(letter), widest) for letter in text)


def broken(text: str, size: float, widest: float, *, bold: bool = False) -> tuple[str, ...]:
    """Break a text into lines no wider than asked, if its words let it; a line break stays.

    Example:
        >>> broken("outside shower, cold side", 10.0, 80.0)
        ('outside shower,', 'cold side')
    """
    lines: list[str] = []
    for asked in text.splitlines():
        first, *more = asked.split() or [""]
        lines.append(first)
        for word in more:
            longer = f"{lines[-1]} {word}"
            if width_of(longer, size, bold=bold) <= widest:
                lines[-1] = longer
            else:
                lines.append(word)
    return tuple(lines)
