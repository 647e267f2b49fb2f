"""Laws of a claim in a night that changes from hour to hour."""

from hypothesis import given
from hypothesis import strategies as st

from wintertight.cold.hold import Place, Wet, freezes, held_for
from wintertight.cold.outdoors import Outdoors

NIGHTS = st.lists(st.floats(-30.0, 15.0), min_size=1, max_size=12)
BORES = st.floats(0.008, 0.05)
PLACES: st.SearchStrategy[Place] = st.sampled_from(["indoors", "closed", "outside"])
STARTS = st.floats(0.0, 25.0)


def no_later(one_s: float, other_s: float) -> bool:
    """Compare times; water that starts at freezing is flat there, and rounds to a millisecond."""
    return one_s <= other_s * (1.0 + 1e-7) + 1e-3


@given(NIGHTS, st.lists(st.floats(0.0, 15.0), min_size=12, max_size=12), BORES, PLACES, STARTS)
def test_a_colder_hour_never_ends_later(
    night: list[float], colder: list[float], bore: float, place: Place, start: float
) -> None:
    """Guards all three times, and a wall that gives nowhere: colder hours bring none later."""
    mild = Outdoors(tuple(night))
    hard = Outdoors(tuple(t - d for t, d in zip(night, colder, strict=False)))
    for gives in (True, False):
        wet = Wet("x", 1e-4, place, bore, gives)
        first, then = freezes(wet, start, hard), freezes(wet, start, mild)
        assert no_later(first.cold_s, then.cold_s)
        assert no_later(first.gone_s, then.gone_s)
        assert no_later(first.solid_s, then.solid_s)


@given(NIGHTS, BORES, PLACES, STARTS, st.floats(0.0, 0.05), st.floats(0.0, 0.05))
def test_a_thicker_sleeve_never_ends_it_sooner(  # noqa: PLR0913, PLR0917 - all the clock hangs on
    night: list[float], bore: float, place: Place, start: float, one: float, other: float
) -> None:
    """Guards insulation, from 8 mm on: round thinner tubes foam adds surface."""
    thin, thick = sorted((one, other))
    outdoors = Outdoors(tuple(night))
    bare, clad = (
        freezes(Wet("x", 1e-4, place, bore, sleeve_m=s), start, outdoors) for s in (thin, thick)
    )
    assert no_later(bare.cold_s, clad.cold_s)
    assert no_later(bare.gone_s, clad.gone_s)


@given(NIGHTS, st.floats(1e-6, 1e-2), st.floats(1.0, 10.0), PLACES, STARTS)
def test_a_larger_body_of_water_never_ends_sooner(
    night: list[float], volume: float, times: float, place: Place, start: float
) -> None:
    """Guards that the same place holds at least as long where it holds more water."""
    outdoors = Outdoors(tuple(night))
    small, large = (freezes(Wet("x", v, place), start, outdoors) for v in (volume, volume * times))
    assert no_later(small.gone_s, large.gone_s)


@given(NIGHTS, BORES, PLACES, STARTS)
def test_no_claim_outlives_the_hours_that_are_known(
    night: list[float], bore: float, place: Place, start: float
) -> None:
    """Guards the claim's end: the first part, or the last hour."""
    found = held_for([Wet("x", 1e-4, place, bore)], start, Outdoors(tuple(night)))
    assert found.seconds <= found.known_s
    assert found.seconds <= found.parts[0][1]


@given(NIGHTS, BORES, PLACES, STARTS)
def test_the_coldest_hour_for_ever_ends_first(
    night: list[float], bore: float, place: Place, start: float
) -> None:
    """Guards that a night never ends sooner than its coldest hour would, there from the first."""
    wet = Wet("x", 1e-4, place, bore)
    worst = freezes(wet, start, min(night)).gone_s
    assert no_later(worst, freezes(wet, start, Outdoors(tuple(night))).gone_s)


@given(st.floats(-30.0, 5.0), st.integers(1, 9), BORES, PLACES, STARTS)
def test_hours_of_one_cold_are_that_cold(
    cold: float, hours: int, bore: float, place: Place, start: float
) -> None:
    """Guards that cutting a cold into hours changes nothing."""
    wet = Wet("x", 1e-4, place, bore)
    cut, whole = freezes(wet, start, Outdoors((cold,) * hours)), freezes(wet, start, cold)
    for ours, theirs in ((cut.cold_s, whole.cold_s), (cut.gone_s, whole.gone_s)):
        assert no_later(ours, theirs)
        assert no_later(theirs, ours)
