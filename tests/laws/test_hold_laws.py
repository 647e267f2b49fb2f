"""Laws of a claim that expires."""

import math

from hypothesis import given
from hypothesis import strategies as st

from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.cold.hold import Wet, held_for, seconds_until_gone

BORES = st.floats(0.004, 0.05)
PLACES = st.sampled_from(["indoors", "closed", "outside"])
STARTS = st.floats(0.0, 25.0)
COLDS = st.floats(-45.0, -0.1)


@given(BORES, PLACES, STARTS, COLDS, st.floats(0.0, 20.0), st.booleans())
def test_colder_never_lasts_longer(  # noqa: PLR0913, PLR0917 - all that the clock hangs on
    bore: float,
    place: str,
    start: float,
    cold: float,
    colder: float,
    gives: bool,  # noqa: FBT001 - hypothesis gives it by place
) -> None:
    """Guards that more cold brings the end no later."""
    wet = Wet("line", 1e-4, place, bore, gives)  # type: ignore[arg-type]
    later = seconds_until_gone(wet, start, cold)
    assert seconds_until_gone(wet, start, cold - colder) <= later * (1.0 + 1e-9)


@given(BORES, PLACES, STARTS, COLDS, st.floats(0.0, 10.0))
def test_warmer_to_begin_with_never_ends_sooner(
    bore: float, place: str, start: float, cold: float, warmer: float
) -> None:
    """Guards that a warmer coach holds at least as long."""
    wet = Wet("line", 1e-4, place, bore)  # type: ignore[arg-type]
    sooner = seconds_until_gone(wet, start, cold)
    assert seconds_until_gone(wet, start + warmer, cold) >= sooner * (1.0 - 1e-9)


@given(BORES, PLACES, STARTS, COLDS)
def test_what_gives_nowhere_ends_first(bore: float, place: str, start: float, cold: float) -> None:
    """Guards that room to grow never ends a claim sooner."""
    rigid, giving = (Wet("x", 1e-4, place, bore, g) for g in (False, True))  # type: ignore[arg-type]
    assert seconds_until_gone(rigid, start, cold) <= seconds_until_gone(giving, start, cold)


@given(BORES, STARTS, COLDS)
def test_shelter_never_ends_it_sooner(bore: float, start: float, cold: float) -> None:
    """Guards the rooms: indoors at least as long as in a closed belly, and that as outside."""
    inside, closed, out = (
        seconds_until_gone(Wet("x", 1e-4, place, bore), start, cold)
        for place in ("indoors", "closed", "outside")
    )
    assert inside >= closed * (1.0 - 1e-9)
    assert closed >= out * (1.0 - 1e-9)


@given(st.lists(st.tuples(BORES, PLACES, st.booleans()), max_size=6), STARTS, COLDS)
def test_a_claim_never_outlives_any_part(
    hollows: list[tuple[float, str, bool]], start: float, cold: float
) -> None:
    """Guards the claim as a whole: it ends with the first part, and more water never ends later."""
    wet = [Wet(f"p{i}", 1e-4, p, b, g) for i, (b, p, g) in enumerate(hollows)]  # type: ignore[arg-type]
    found = held_for(wet, start, cold)
    each = [seconds_until_gone(one, start, cold - VERDICT_MARGIN_K) for one in wet]
    assert found.seconds == min(each, default=math.inf)
    for k in range(len(wet)):
        assert held_for(wet[:k], start, cold).seconds >= found.seconds


@given(BORES, PLACES, STARTS, st.floats(0.0, 20.0))
def test_above_freezing_nothing_expires(bore: float, place: str, start: float, mild: float) -> None:
    """Guards that no cold at all ends no claim."""
    wet = Wet("x", 1e-4, place, bore)  # type: ignore[arg-type]
    assert seconds_until_gone(wet, start, mild) == math.inf
