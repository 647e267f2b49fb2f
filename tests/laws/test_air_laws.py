"""What holds for blowing out any way, whatever its sizes."""

from collections.abc import Mapping
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.unit.flow.air.laid_air import HALF_INCH_M, tube
from tests.unit.flow.laid_coach import laid, outlet
from wintertight.flow.air.claims import ORDER, LinkSweep
from wintertight.flow.air.receiver import AirCurve, burst, work_of
from wintertight.flow.air.supply import AirSupply
from wintertight.flow.air.sweep import SweepResult, sweep
from wintertight.flow.coach_network import CoachNetwork, Link
from wintertight.flow.losses import EMITTERS, emitter_resistance
from wintertight.flow.state import arriving_state
from wintertight.units import PSI_PA

BORES = st.sampled_from([0.00432, 0.00914, HALF_INCH_M, 0.0173])
LENGTHS = st.floats(0.2, 9.0)
HEIGHTS = st.sampled_from([-0.3, 0.0, 0.005, 0.4, 1.1])
PRESSURES = st.floats(5.0, 50.0).map(lambda psi: psi * PSI_PA)


@st.composite
def ways(draw: st.DrawFn, *, beside: bool = True) -> CoachNetwork:
    """Draw three lines in a row, perhaps a fourth beside the middle one, and an outlet."""
    lines = [
        tube(f"line-{i}", f"n{i}", f"n{i + 1}", draw(LENGTHS), draw(BORES), bends_loss=3.6)
        for i in range(3)
    ]
    if beside and draw(st.booleans()):
        lines.append(tube("beside", "n1", "n2", draw(LENGTHS), draw(BORES)))
    heights = {f"n{i}": draw(HEIGHTS) for i in range(1, 4)}
    kind = draw(st.sampled_from(sorted(EMITTERS)))
    lines.append(outlet("tap", "n3", resistance=emitter_resistance(kind)))
    return laid(lines, sources={"hose": ("n0", 0.0)}, heights_m=heights)


def blown(coach: CoachNetwork, supply: AirSupply) -> SweepResult:
    """Blow the one outlet of a full coach out."""
    return sweep(coach, arriving_state(coach), "hose", "tap", supply)


def worse(one: Mapping[str, LinkSweep], other: Mapping[str, LinkSweep]) -> list[str]:
    """Give the links for which the first result claims less than the second."""
    return [k for k in one if ORDER[one[k].claim] < ORDER[other[k].claim]]


@given(ways(), PRESSURES, PRESSURES)
@settings(max_examples=25)
def test_more_pressure_never_sweeps_less(coach: CoachNetwork, one: float, two: float) -> None:
    """Guards that claims, air and speeds grow with the pressure, given a tank that lasts."""
    low, high = (blown(coach, AirSupply(1.0, regulator_Pa=p)) for p in sorted((one, two)))
    assert worse(high.links, low.links) == []
    assert high.air.mass_kg_s >= low.air.mass_kg_s * (1.0 - 1e-7)


@given(
    ways(beside=False),
    PRESSURES,
    st.floats(1.0, 3.0),
    st.sampled_from(["line-0", "line-1", "line-2"]),
)
@settings(max_examples=25)
def test_a_longer_line_never_sweeps_more(
    coach: CoachNetwork, pressure: float, factor: float, which: str
) -> None:
    """Guards that with a longer line no line on the way is swept better, in a row of lines."""
    line = coach.links[which]
    long = replace(coach, links={**coach.links, which: _stretched(line, factor)})
    supply = AirSupply(1.0, regulator_Pa=pressure)
    short_result, long_result = blown(coach, supply), blown(long, supply)
    assert long_result.air.mass_kg_s <= short_result.air.mass_kg_s * (1.0 + 1e-7)
    # Before the longer line the pressure is the same or higher: the air there is slower too. Behind
    # it a Wallis number falls with the flow and rises as the air gets thinner; flow wins.
    assert worse(short_result.links, long_result.links) == []


def _stretched(line: Link, factor: float) -> Link:
    return replace(line, length_m=factor * line.length_m, volume_m3=factor * line.volume_m3)


@given(ways(), PRESSURES)
@settings(max_examples=25)
def test_air_is_neither_lost_nor_made(coach: CoachNetwork, pressure: float) -> None:
    """Guards that what enters leaves, that pressure falls along the way, and speed grows."""
    result = blown(coach, AirSupply(1.0, regulator_Pa=pressure))
    assume(result.air.mass_kg_s > 0.0)
    links = result.air.links
    entering = links["line-0"].mass_kg_s
    assert entering == pytest.approx(result.air.mass_kg_s, rel=1e-7)
    for air in links.values():
        assert air.downstream_Pa <= air.upstream_Pa
        assert air.downstream_m_s >= air.upstream_m_s
    for link in result.links.values():
        assert link.claim in ORDER


CURVES = st.builds(
    lambda flow, shares, last: AirCurve(
        (275e3, 200e3, 120e3), (flow, flow * shares[0], flow * shares[0] * shares[1]), last
    ),
    st.floats(1e-4, 2e-2),
    st.tuples(st.floats(0.6, 1.0), st.floats(0.5, 1.0)),
    st.floats(120e3, 275e3),
)


@given(CURVES, st.floats(1e-3, 0.2), st.floats(1.0, 5.0), st.floats(0.0, 5e-3))
def test_a_larger_receiver_never_lasts_shorter(
    curve: AirCurve, volume: float, factor: float, delivery: float
) -> None:
    """Guards that a larger tank lasts at least as long, in as few bursts; so does more delivery."""
    small = AirSupply(volume, delivery, regulator_Pa=275e3)
    large = replace(small, receiver_m3=factor * volume)
    more = replace(small, delivery_m3_s=factor * delivery)
    for better in (large, more):
        assert burst(better, curve).lasts_s >= burst(small, curve).lasts_s * (1.0 - 1e-12)
        assert burst(better, curve).holds_s >= burst(small, curve).holds_s * (1.0 - 1e-12)
        ours, theirs = (work_of(s, curve, 10.0, 5e-4, 30.0).bursts for s in (better, small))
        assert not theirs or 0 < ours <= theirs
