import numpy as np
import numpy.typing as npt
import pytest

from tests.unit.procedure.demo_coach import SMALL, card, planned
from tests.unit.procedure.drawn_coach import drawn_replay, drawn_strength
from wintertight.procedure.bands import Band, fill_draws, handling_draws
from wintertight.procedure.drawn import Drawn, draw
from wintertight.procedure.plan import Plan

pytestmark = pytest.mark.long

STRENGTH = 0.35
DRAWS = 25


def replayed_m3(plan: Plan, drawn: Drawn, i: int) -> float:
    """Give the antifreeze of one drawn coach by a full replay [m3]."""
    end = drawn_replay(plan, drawn, i, trusts_drains=True).end
    return float(end.books.came_in[1:4].sum()) / drawn_strength(plan, drawn, i)


@pytest.fixture(scope="module")
def both() -> tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]]:
    """Give the gallons of some draws: quick, and by a full replay of each [m3]."""
    plan = planned(text=SMALL)
    drawn = draw(plan.card, DRAWS)
    quick = fill_draws(drawn, plan.best, STRENGTH).antifreeze_m3
    return quick, np.array([replayed_m3(plan, drawn, i) for i in range(DRAWS)])


def test_quick_gallons_agree_with_full_replays(
    both: tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]],
) -> None:
    """Guards the quick draws against the engine on coaches built from the drawn lengths."""
    # Ten per cent for one draw and two on the mean: what runs on before one tap shifts the start
    # of the next, and the quick way leaves that out. The band is some twenty per cent wide.
    quick, full = both
    error = quick / full - 1.0
    assert abs(error.mean()) < 0.02
    assert np.abs(error).max() < 0.10


def test_quick_gallons_spread_as_full_replays_do(
    both: tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]],
) -> None:
    """Guards the width of the band: standard deviations within a fifth of each other."""
    quick, full = both
    assert quick.std() == pytest.approx(full.std(), rel=0.2)


def test_draws_are_the_same_each_time() -> None:
    """Guards that gallons do not change from one reading of a card to the next."""
    first, again, other = (draw(card(SMALL), 50, seed) for seed in (1, 1, 2))
    assert np.array_equal(first.pump, again.pump)
    assert all(np.array_equal(first.lines[part], again.lines[part]) for part in first.lines)
    assert not np.array_equal(first.pump, other.pump)


def test_what_was_measured_hardly_scatters() -> None:
    """Guards that each length scatters by its own spread: half of it is a standard deviation."""
    drawn = draw(card(SMALL), 4000)
    assert drawn.lines["kitchen-cold"].std() == pytest.approx(0.125, rel=0.05)
    assert drawn.lines["hose"].std() < 0.05


def test_bands_are_in_order() -> None:
    """Guards that five per cent, half and ninety-five per cent come in this order."""
    plan = planned(text=SMALL)
    for band in (plan.antifreeze, plan.duration):
        assert 0.0 < band.p05 < band.p50 < band.p95
    assert Band.of(np.array([1.0, 2.0, 3.0])).p50 == 2.0


def test_handling_scatters_about_its_usual_time() -> None:
    """Guards hands-on time: its draws have the median of the sum of best values."""
    steps = planned(text=SMALL).steps
    usual = sum(s.handling_s for s in steps)
    assert np.median(handling_draws(steps)) == pytest.approx(usual, rel=0.06)


def test_containers_cover_the_band() -> None:
    """Guards that what is bought and kept at hand covers the upper end of the gallons."""
    plan = planned(text=SMALL)
    buy = plan.buy
    assert buy.count * buy.container_m3 >= plan.antifreeze.p50
    assert (buy.count + buy.spare) * buy.container_m3 >= plan.antifreeze.p95
