"""Laws of places: more there never makes less possible, and a known slope never proves less."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.methods.every_plan import CARDS, low_of, product_of
from wintertight.coach.place import PLACE_KINDS, Place, usual_place
from wintertight.procedure.methods.table import METHODS
from wintertight.procedure.place import is_possible, possible, tilts
from wintertight.procedure.plan import plan_coach

FLAGS = ("water", "dump", "compressor", "lets_water_out", "catches_antifreeze")
PLACES = st.builds(
    lambda kind, has: replace(usual_place(kind), **has),
    st.sampled_from(PLACE_KINDS),
    st.fixed_dictionaries({flag: st.booleans() for flag in FLAGS}),
)
POWER = ("none", "generator", "mains")


@given(PLACES, st.sampled_from(FLAGS), st.sampled_from(sorted(METHODS)), st.sampled_from(POWER))
@settings(max_examples=200)
def test_more_at_a_place_never_makes_less_possible(
    place: Place, flag: str, method: str, power: str
) -> None:
    """Guards that one more thing at a place hinders no method."""
    card = CARDS["full-fifth-wheel"]
    less = replace(place, **{flag: False}, power=power)  # type: ignore[arg-type]
    more = replace(less, **{flag: True})  # type: ignore[arg-type]
    for charged in (None, True, False):
        before = is_possible(possible(less, card, method, battery_charged=charged))
        after = is_possible(possible(more, card, method, battery_charged=charged))
        assert after or not before


@pytest.mark.parametrize("name", ["small-trailer", "middle-travel-trailer"])
@pytest.mark.parametrize("method", ["drain", "air"])
def test_a_known_slope_never_proves_less(name: str, method: str) -> None:
    """Guards the unknown slope: what it proves, each slope it stands for proves too."""
    card = CARDS[name]
    yard = replace(usual_place("yard"), slope_across=0.0)
    unknown = plan_coach(card, product_of(card), low_of(card), method, tilts=tilts(yard))
    sure = {p.id for p in unknown.parts if p.safe is True}
    for tilt in tilts(yard):
        known = plan_coach(card, product_of(card), low_of(card), method, tilts=(tilt,))
        assert sure <= {p.id for p in known.parts if p.safe is True}
