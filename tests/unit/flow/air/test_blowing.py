"""What a blow leaves in a coach: on the books, and how each line came by its content."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from tests.unit.flow.air.laid_air import trunk_and_taps
from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.air.blowing import EMPTY_ALREADY, PERHAPS, Blow
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.letting_out import WET_SHARE
from wintertight.flow.replay import CLOSED, Trace, replay
from wintertight.flow.state import arriving_state
from wintertight.units import GALLON_M3, PSI_PA

WEAK = AirSupply(
    receiver_m3=0.0, delivery_m3_s=2e-4, regulator_Pa=5.0 * PSI_PA, cut_out_Pa=20.0 * PSI_PA
)
STRONG = AirSupply(receiver_m3=60.0 * GALLON_M3, delivery_m3_s=10e-3)


def after(outlet: str, supply: AirSupply = STRONG, treated: str = "as found") -> Trace:
    """Blow one outlet of the coach laid by hand, its lines full of water."""
    coach = trunk_and_taps()
    state = arriving_state(coach)
    how = MappingProxyType(dict.fromkeys(state.treated, treated))
    blow = Action("blow", outlet, blow=Blow("hose", supply))
    return replay(coach, replace(state, treated=how), [blow])


def test_what_is_swept_keeps_a_film() -> None:
    """Guards the books: the water of a swept line goes out, air comes in, a film stays."""
    trace = after("kitchen")
    sweep = trace.moments[0].outcome.sweep
    assert sweep is not None
    swept = {k for k, claim in sweep.links.items() if claim.claim == "swept"}
    assert {"trunk", "riser"} <= swept
    for name in ("trunk", "riser"):
        assert trace.end.treated[name] == "swept"
        film = max(WET_SHARE, sweep.links[name].film)
        assert trace.end.mean(name).water == pytest.approx(film)
    assert trace.balance.relative_error < CLOSED
    assert trace.balance.out_m3 == pytest.approx(trace.balance.in_m3)


def test_what_is_off_the_way_keeps_its_water() -> None:
    """Guards that no blow through one outlet lets another line out."""
    end = after("kitchen").end
    assert end.treated["ice-tube"] == "as found"
    assert end.mean("ice-tube").water == 1.0


def test_a_weak_blow_lets_nothing_out() -> None:
    """Guards that what is doubtful or not swept counts as full."""
    trace = after("kitchen", WEAK)
    sweep = trace.moments[0].outcome.sweep
    assert sweep is not None
    assert all(claim.claim != "swept" for claim in sweep.links.values())
    assert all(trace.end.mean(k).water == 1.0 for k in trace.end.held)
    doubtful = {k for k, claim in sweep.links.items() if claim.claim == "doubtful"}
    assert {k for k, how in trace.end.treated.items() if how == PERHAPS} == doubtful


@pytest.mark.parametrize("how", sorted(EMPTY_ALREADY))
def test_what_is_empty_stays_as_it_is(how: str) -> None:
    """Guards that a better claim than swept is not lost."""
    assert set(after("kitchen", treated=how).end.treated.values()) == {how}


def test_a_blow_needs_air() -> None:
    """Guards the words for a blow that names no compressor."""
    coach = trunk_and_taps()
    with pytest.raises(ChoiceError, match="'kitchen' is blown out with nothing"):
        replay(coach, arriving_state(coach), [Action("blow", "kitchen")])
