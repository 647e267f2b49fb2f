"""How closely an owner's guide is set: the first density that fits two pages is taken."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Density:
    """One way of setting a guide. Handles, taps, cautions and steps are on it in every way.

    Attributes:
        size_pt: size of its print in points, never under eight.
        whys: whether each step says why it is done.
        together: whether steps of one kind share a row.
        pairs: whether hot and cold side of one tap share a row.
        run_in: whether lists run on as text, with narrow margins and gaps.
    """

    size_pt: float
    whys: bool = False
    together: bool = False
    pairs: bool = False
    run_in: bool = False


WITH_WHYS: tuple[Density, ...] = (Density(10.0, whys=True), Density(9.5, whys=True))
"""From roomy to close, with a reason at each step."""

WITHOUT_WHYS: tuple[Density, ...] = (
    Density(10.0),
    Density(9.5),
    Density(9.0),
    Density(9.0, together=True),
    Density(8.5, together=True),
    Density(8.5, together=True, pairs=True),
    Density(8.5, together=True, pairs=True, run_in=True),
    Density(8.0, together=True, pairs=True, run_in=True),
)
"""From roomy to close, where there is no room for reasons. The last one is taken for a coach that
is too large even for it."""

DENSITIES = (*WITH_WHYS, *WITHOUT_WHYS)
"""All of them, the first that fits to be taken."""

MOST_PAGES = 2
"""A guide is one sheet of paper, printed on both sides."""
