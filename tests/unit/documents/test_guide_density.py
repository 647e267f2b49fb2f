"""The density of a guide, found with few tries."""

import pytest

from wintertight.documents.guide_density import (
    FEW_LETTERS,
    FOR_A_PICTURE,
    MORE_LETTERS,
    WITH_WHYS,
    WITHOUT_WHYS,
    Density,
    roomiest,
)

EVERY = (*WITH_WHYS, *WITHOUT_WHYS)


@pytest.mark.parametrize("letters", [0, 11_600, 14_000, 17_000, 19_500, 90_000])
@pytest.mark.parametrize("first", range(len(EVERY) + 1))
def test_the_first_that_fits_is_found_from_wherever_the_search_begins(
    first: int, letters: int
) -> None:
    """Guards each density against a guess of another, and that no try is far from the way."""
    fitting = set(EVERY[first:])
    if first < len(WITH_WHYS):
        fitting |= set(WITHOUT_WHYS)
    tried: list[Density] = []

    def fits(density: Density) -> bool:
        tried.append(density)
        return density in fitting

    found = roomiest(fits, letters)
    assert found == (EVERY[first] if first < len(EVERY) else WITHOUT_WHYS[-1])
    last = len(WITHOUT_WHYS) - 1
    guess = min(max((letters - FEW_LETTERS) // MORE_LETTERS, 0), last)
    there = min(max(first - len(WITH_WHYS), 0), last)
    assert len(set(tried)) <= abs(guess - there) + 4


@pytest.mark.parametrize("at", range(2, len(WITHOUT_WHYS)))
def test_a_right_guess_takes_two_tries(at: int) -> None:
    """Guards the work: with the length as foreseen one try fits and the one before does not."""
    tried: set[Density] = set()

    def fits(density: Density) -> bool:
        tried.add(density)
        return WITHOUT_WHYS.index(density) >= at if density in WITHOUT_WHYS else False

    letters = FEW_LETTERS + MORE_LETTERS * at - FOR_A_PICTURE
    assert roomiest(fits, letters, pictures=1) == WITHOUT_WHYS[at]
    assert len(tried) <= 2
