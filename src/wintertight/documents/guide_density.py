"""How closely an owner's guide is set: the first density that fits two pages is taken."""

from collections.abc import Callable
from dataclasses import dataclass, replace


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


LARGEST_PT = 10.0
"""Size of print where there is room [points]."""

WITH_WHYS: tuple[Density, ...] = (Density(LARGEST_PT, whys=True), Density(9.5, whys=True))
"""From roomy to close, with a reason at each step."""

WITHOUT_WHYS: tuple[Density, ...] = (
    Density(LARGEST_PT),
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

FEW_LETTERS = 10_900
"""So many letters of content fit at any density [1]; measured on the coaches of the demo."""

MORE_LETTERS = 1_050
"""So many letters more need about the next density [1]; measured likewise."""

FOR_A_PICTURE = 600
"""A picture takes the room of so many letters [1]; measured likewise."""


def roomiest(fits: Callable[[Density], bool], letters: int, pictures: int = 0) -> Density:
    """Find the roomiest density that fits; what is set closer takes less room in each row.

    To set a guide takes long, so the search begins where its length suggests.

    Args:
        fits: whether a guide set so fits; true of all that are closer than one of which it is true.
        letters: how long its content is [1].
        pictures: how many pictures it has [1].

    Returns:
        The density; the closest one where none fits.
    """
    last = len(WITHOUT_WHYS) - 1
    more = letters + pictures * FOR_A_PICTURE - FEW_LETTERS
    at = min(max(more // MORE_LETTERS, 0), last)
    while at > 0 and fits(WITHOUT_WHYS[at - 1]):
        at -= 1
    while at < last and not fits(WITHOUT_WHYS[at]):
        at += 1
    # Reasons take room: where print of the same size does not fit without them, they do not.
    plain = replace(WITH_WHYS[-1], whys=False)
    if at > WITHOUT_WHYS.index(plain) or not fits(WITH_WHYS[-1]):
        return WITHOUT_WHYS[at]
    return next(density for density in WITH_WHYS if fits(density))
