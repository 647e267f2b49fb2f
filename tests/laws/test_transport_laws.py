"""What holds for anything that is pushed through lines and vessels, checked along another way."""

import numpy as np
import numpy.typing as npt
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scipy.stats import qmc

from wintertight.flow.held import Held, PlugHeld, RunsHeld, VesselHeld
from wintertight.flow.laminar import SeriesKernel
from wintertight.flow.stream import AIR, GLYCOL, Stream

Array = npt.NDArray[np.float64]
History = list[tuple[float, Array]]
VOLUME_M3 = 0.4e-3

shares = st.tuples(st.floats(0.0, 1.0), st.sampled_from([0.0, 0.0, 0.3, 1.0])).map(
    lambda drawn: np.array([drawn[0] * (1.0 - drawn[1]), 0.0, 0.0, drawn[1]])
)
histories = st.lists(st.tuples(st.floats(0.001, 1.5), shares), min_size=1, max_size=6)


@st.composite
def hollows(draw: st.DrawFn) -> Held:
    """Draw a line or vessel, and what it holds at first."""
    first = draw(shares)
    kind = draw(st.sampled_from(["plug", "vessel", "runs", "runs"]))
    if kind == "plug":
        return PlugHeld(VOLUME_M3, first)
    if kind == "vessel":
        return VesselHeld(VOLUME_M3, first)
    runs = draw(st.integers(1, 20))
    return RunsHeld(VOLUME_M3, first, SeriesKernel(runs, draw(st.floats(0.05, 0.5)) / runs))


def push(held: Held, volumes: float, content: Array, *, forward: bool = True) -> Stream:
    """Push some line volumes of one content in."""
    return held.push(Stream.of(volumes * VOLUME_M3, content), forward=forward)


@given(hollows(), histories, st.data())
def test_what_goes_in_comes_out_or_stays(held: Held, history: History, data: st.DataObject) -> None:
    """Guards every component of every push, turns of the flow included, and shares from 0 to 1."""
    for volumes, content in history:
        before = held.mean().copy()
        forward = data.draw(st.integers(0, 5)) > 0
        out = push(held, volumes, content, forward=forward)
        assert out.volume_m3 == pytest.approx(volumes * VOLUME_M3, rel=1e-9)
        gained = (held.mean() - before) * VOLUME_M3
        lost = volumes * VOLUME_M3 * content - out.component_volumes
        assert np.abs(gained - lost).max() < 1e-9 * VOLUME_M3
        for some in (held.mean().reshape(1, -1), held.sections(), out.shares):
            assert some.min() > -1e-9
            assert some.sum(axis=1).max() < 1.0 + 1e-9


@given(hollows(), histories, st.randoms(use_true_random=False))
def test_in_one_push_or_in_many(held: Held, history: History, lot: st.DataObject) -> None:
    """Guards against answers that depend on how long a stride the engine takes."""
    twin = held.copy()
    stream = Stream(
        np.array([v * VOLUME_M3 for v, _ in history]), np.array([c for _, c in history])
    )
    whole = held.push(stream, forward=True)
    pieces = np.zeros(4)
    for volumes, content in history:
        cuts = np.sort([lot.random() for _ in range(5)])  # type: ignore[attr-defined]
        for part in np.diff(np.concatenate(([0.0], cuts, [1.0]))):
            pieces += push(twin, volumes * part, content).component_volumes
    assert np.abs(whole.component_volumes - pieces).max() < 1e-9 * VOLUME_M3
    assert np.abs(held.mean() - twin.mean()).max() < 1e-9
    if not isinstance(held, PlugHeld):
        assert np.abs(held.sections() - twin.sections()).max() < 1e-9


@given(hollows(), st.lists(st.floats(0.001, 0.8), min_size=2, max_size=12))
@example(RunsHeld(VOLUME_M3, np.zeros(4), SeriesKernel(1, 0.5)), [0.25, 0.5])
def test_under_a_constant_feed_nothing_gets_weaker(held: Held, volumes: list[float]) -> None:
    """Guards filling: the mean and the worst section only rise while pure product comes in."""
    pure = np.array([1.0, 0.0, 0.0, 0.0])
    mean, worst = held.mean()[GLYCOL], held.sections()[:, GLYCOL].min()
    for volume in volumes:
        push(held, volume, pure)
        assert held.mean()[GLYCOL] >= mean - 1e-9
        assert held.sections()[:, GLYCOL].min() >= worst - 1e-9
        assert held.sections()[:, GLYCOL].min() <= held.mean()[GLYCOL] + 1e-9
        mean, worst = held.mean()[GLYCOL], held.sections()[:, GLYCOL].min()


def along_streamlines(
    runs: int, history: list[tuple[float, float]], first: float
) -> tuple[float, float, float]:
    """Follow particles of the feed, each with its own time in each run.

    Knows no parcels and no convolution: a particle that enters a run at the axis leaves it after
    half the run's volume has passed, one near the wall much later; each run draws anew.

    Returns:
        Mean share, share at the outlet end, and line volumes of it that have left.
    """
    lot = qmc.Sobol(runs + 1, seed=7).random_base2(17).clip(1e-12, 1.0 - 1e-12)
    fed = sum(v for v, _ in history)
    ends = np.cumsum([v for v, _ in history])
    given_share = np.array([c for _, c in history])
    stay = (1.0 / (2.0 * np.sqrt(1.0 - lot[:, 1:]))).sum(axis=1) / runs
    at = fed * lot[:, 0]
    content = given_share[np.searchsorted(ends, at).clip(0, len(history) - 1)]
    inside = at + stay > fed
    held = fed * float((content * inside).mean())
    mean = held + first * (1.0 - fed * float(inside.mean()))
    left = fed * float((content * ~inside).mean()) + first * fed * float(inside.mean())
    last = 1.0 / (2.0 * (1.0 - lot[:, -1]))
    earlier = (1.0 / (2.0 * np.sqrt(1.0 - lot[:, 1:-1]))).sum(axis=1)
    entered = fed - (earlier + last) / runs
    there = given_share[np.searchsorted(ends, entered).clip(0, len(history) - 1)]
    return mean, float(np.where(entered < 0.0, first, there).mean()), left


@pytest.mark.parametrize("runs", [1, 2, 3, 6])
@pytest.mark.parametrize("seed", range(6))
def test_streamlines_hold_the_same(runs: int, seed: int) -> None:
    """Guards mean, outlet section and what has left against particles, for any feed."""
    lot = np.random.default_rng(100 * runs + seed)
    history = [(float(lot.uniform(0.05, 0.8)), float(lot.random())) for _ in range(6)]
    first = float(lot.random())
    line = RunsHeld(
        VOLUME_M3, np.array([first, 0.0, 0.0, 0.0]), SeriesKernel(runs, 0.5 / runs / 25)
    )
    left = 0.0
    for volumes, share in history:
        out = push(line, volumes, np.array([share, 0.0, 0.0, 0.0]))
        left += out.component_volumes[GLYCOL] / VOLUME_M3
    mean, section, gone = along_streamlines(runs, history, first)
    assert line.mean()[GLYCOL] == pytest.approx(mean, abs=1e-3)
    assert left == pytest.approx(gone, abs=2e-3)
    assert line.sections()[-1, GLYCOL] == pytest.approx(section, abs=1.5e-2)


@given(hollows(), shares)
def test_a_turn_of_the_flow_keeps_the_volume(held: Held, content: Array) -> None:
    """Guards that to and fro with nothing new changes no component of the whole."""
    push(held, 0.7, content)
    before = held.mean().copy()
    out = push(held, 0.3, held.mean(), forward=False)
    gained = held.mean() - before
    assert np.abs(gained - (0.3 * before - out.component_volumes / VOLUME_M3)).max() < 1e-9
    assert held.mean()[AIR] <= 1.0 + 1e-9
