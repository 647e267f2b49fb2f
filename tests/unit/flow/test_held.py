import numpy as np
import numpy.typing as npt
import pytest

from wintertight.flow.held import Held, PlugHeld, RunsHeld, VesselHeld
from wintertight.flow.laminar import SeriesKernel
from wintertight.flow.stream import AIR, GLYCOL, Stream

Array = npt.NDArray[np.float64]
LITRE = 1e-3


def of(glycol: float = 0.0, air: float = 0.0) -> Array:
    """Give shares."""
    return np.array([glycol, 0.0, 0.0, air])


def pushed(held: Held, *some: tuple[float, float], forward: bool = True) -> Stream:
    """Push parcels of (litres, share of glycol) in; give what leaves."""
    shares = np.zeros((len(some), 4))
    shares[:, GLYCOL] = [g for _, g in some]
    return held.push(Stream(LITRE * np.array([v for v, _ in some]), shares), forward=forward)


def litres(stream: Stream) -> list[tuple[float, float]]:
    """Give what left as (litres, share of glycol)."""
    parcels = zip(stream.volumes, stream.shares[:, GLYCOL], strict=True)
    return [(round(float(v) / LITRE, 9), round(float(g), 9)) for v, g in parcels]


def runs(count: int, litre: float = 1.0, glycol: float = 0.0) -> RunsHeld:
    """Make a line of some laminar runs."""
    return RunsHeld(litre * LITRE, of(glycol), SeriesKernel(count, 0.5 / count / 10))


def test_plug_lets_out_first_what_came_first() -> None:
    """Guards displaced content by hand: 1 L of water, then 0.4 L at 0.5 and 0.9 L at 0.2."""
    line = PlugHeld(LITRE, of())
    assert litres(pushed(line, (0.4, 0.5))) == [(0.4, 0.0)]
    assert line.mean()[GLYCOL] == pytest.approx(0.2)
    assert litres(pushed(line, (0.9, 0.2))) == [(0.6, 0.0), (0.3, 0.5)]
    assert line.mean()[GLYCOL] == pytest.approx(0.1 * 0.5 + 0.9 * 0.2)
    assert sorted(line.sections()[:, GLYCOL]) == [0.2, 0.5]


def test_plug_turns_round() -> None:
    """Guards that what came in last leaves first when the flow turns."""
    line = PlugHeld(LITRE, of())
    pushed(line, (0.3, 0.5))
    back = pushed(line, (0.5, 1.0), forward=False)
    assert litres(back) == [(0.3, 0.5), (0.2, 0.0)]
    assert litres(pushed(line, (0.6, 0.2))) == [(0.5, 1.0), (0.1, 0.0)]


def test_plug_takes_more_than_it_holds() -> None:
    """Guards a parcel larger than the whole line, which leaves in part at once."""
    line = PlugHeld(LITRE, of())
    assert litres(pushed(line, (2.5, 0.5))) == [(1.0, 0.0), (1.5, 0.5)]
    assert litres(pushed(line, (1.0, 0.0))) == [(1.0, 0.5)]


def test_three_volumes_leave_a_twentieth_in_a_stirred_vessel() -> None:
    """Guards C = C0 exp(-V/Vt): exp(-3) = 0.0498 stays after three volumes."""
    bowl = VesselHeld(LITRE, of(1.0))
    out = pushed(bowl, (3.0, 0.0))
    assert bowl.mean()[GLYCOL] == pytest.approx(np.exp(-3.0), abs=1e-12)
    assert out.component_volumes[GLYCOL] == pytest.approx(LITRE * (1.0 - np.exp(-3.0)))


@pytest.mark.parametrize("into", [0.3, 0.75, 1.4])
def test_air_leaves_a_vessel_first(into: float) -> None:
    """Guards a vessel three quarters full of air: liquid leaves only when the air has gone."""
    # It holds 0.25 L of water. After 0.75 L of the feed it is full, at 0.75; then it is stirred.
    bowl = VesselHeld(LITRE, of(air=0.75))
    out = pushed(bowl, (into, 1.0))
    liquid = out.volume_m3 - out.component_volumes[AIR]
    assert out.component_volumes[AIR] == pytest.approx(LITRE * min(into, 0.75))
    assert liquid == pytest.approx(LITRE * max(into - 0.75, 0.0), abs=1e-12)
    stirred = 1.0 - 0.25 * np.exp(-(into - 0.75))
    assert bowl.mean()[GLYCOL] == pytest.approx(into if into <= 0.75 else stirred)
    assert bowl.mean()[AIR] == pytest.approx(max(0.75 - into, 0.0), abs=1e-12)


def test_air_leaves_a_vessel_first_whatever_comes_in() -> None:
    """Guards against a feed that happens to be what the vessel holds: its air still goes first."""
    bowl = VesselHeld(LITRE, of(air=0.5))
    out = bowl.push(Stream.of(0.2 * LITRE, of(air=0.5)), forward=True)
    assert out.component_volumes[AIR] == pytest.approx(0.2 * LITRE)
    assert bowl.mean()[AIR] == pytest.approx(0.4)


def test_a_run_holds_what_the_formulas_say() -> None:
    """Guards one laminar run at 2.24 volumes: 89 % on the mean, 78 % at the outlet end."""
    line = runs(1)
    pushed(line, (2.24, 1.0))
    assert line.mean()[GLYCOL] == pytest.approx(1.0 - 1.0 / (4.0 * 2.24), abs=1e-4)
    assert line.sections()[:, GLYCOL].min() == pytest.approx(1.0 - 1.0 / (2.0 * 2.24), abs=5e-3)


@pytest.mark.parametrize("count", [1, 2, 4])
def test_water_that_came_last_is_judged(count: int) -> None:
    """Guards against judging a line by its outlet end while fresh water stands at its inlet."""
    line = runs(count)
    pushed(line, (10.0, 1.0))
    assert line.sections()[:, GLYCOL].min() > 0.9
    pushed(line, (0.2, 0.0))
    assert line.sections()[:, GLYCOL].min() < 1e-9
    pushed(line, (0.2, 1.0))
    # The slug of water has left the inlet: some section is as weak as the mean, at least.
    assert line.sections()[:, GLYCOL].min() <= line.mean()[GLYCOL] < 0.85


def test_a_turn_of_the_flow_makes_nothing_stronger() -> None:
    """Guards the weak section of a line when a drop of flow the other way is taken as mixing it."""
    line = runs(2)
    pushed(line, (1.5, 1.0))
    weakest, mean = line.sections()[:, GLYCOL].min(), line.mean()[GLYCOL]
    assert weakest < mean - 0.1
    pushed(line, (0.01, 1.0), forward=False)
    assert line.sections()[:, GLYCOL].min() == pytest.approx(weakest)
    pushed(line, (3.0, 1.0), forward=False)
    assert line.sections()[:, GLYCOL].min() > mean


def test_a_copy_goes_its_own_way() -> None:
    """Guards states that were handed out against what is pushed later."""
    some: tuple[Held, ...] = (runs(3), PlugHeld(LITRE, of()), VesselHeld(LITRE, of()))
    for held in some:
        pushed(held, (0.4, 0.6))
        mean, sections = held.mean().copy(), held.sections().copy()
        twin = held.copy()
        pushed(twin, (0.7, 0.1))
        pushed(twin, (0.1, 0.3), forward=False)
        assert (held.mean() == mean).all()
        assert (held.sections() == sections).all()


def test_the_quick_mean_is_the_mean() -> None:
    """Guards what viscosities are read from: in less out, with small pushes and after a turn."""
    line = runs(3, glycol=0.3)
    for volume, glycol, forward in ((0.003, 0.0, True), (0.4, 0.5, True), (0.002, 0.1, False)):
        pushed(line, (volume, glycol), forward=forward)
        assert line.about() == pytest.approx(line.mean(), abs=1e-12)
        assert line.glycol_about() == pytest.approx(line.mean()[GLYCOL], abs=1e-12)
