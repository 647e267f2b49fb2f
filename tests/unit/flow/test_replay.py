import numpy as np
import pytest

from tests.unit.flow.laid_coach import LITRE, laid, outlet, pipe
from wintertight.errors import BooksDoNotClose, ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Pool
from wintertight.flow.held import PlugHeld
from wintertight.flow.letting_out import refill
from wintertight.flow.replay import balance_of, replay
from wintertight.flow.state import ONLY_AIR, arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

PINK = Contents(glycol=0.5)


def small() -> CoachNetwork:
    """Lay a jug, a line, a tap, a trap and a tank."""
    return laid(
        [pipe("line", "a", "b", 3.0), outlet("tap", "b", "trap")],
        sources={"jug": ("a", 10.0)},
        pools=[
            Pool("trap", 0.25 * LITRE, stirred=True, drops_to="tank"),
            Pool("tank", 20.0 * LITRE, stirred=False),
        ],
        openings=[("tank", "gate")],
    )


def test_the_books_of_a_small_job_by_hand() -> None:
    """Guards start + in = out + held for each component of a job that does a bit of everything."""
    coach = small()
    trace = replay(
        coach,
        arriving_state(coach),
        [
            Action("set", "gate", "open"),
            Action("drain"),
            Action("feed", "jug", contents=PINK),
            Action("run", "tap", until=Until(volume_m3=LITRE)),
            Action("pour", "trap", contents=PINK, volume_m3=0.5 * LITRE),
        ],
    )
    end = trace.end
    # Came in: 1 L from the jug, half of it glycol; 0.5 L poured; and 20 L of air into the tank.
    glycol = (end.books.came_in - end.books.went_out)[1]
    assert end.books.came_in[1] == pytest.approx(0.5 * LITRE + 0.25 * LITRE)
    held = 0.5 * 0.3 * LITRE + end.pools["trap"][1] + end.pools["tank"][1]
    assert held == pytest.approx(glycol)
    assert end.pools["trap"][1] == pytest.approx(0.125 * LITRE * (1.0 - np.exp(-0.7 / 0.25 - 2.0)))
    assert trace.balance.relative_error < 1e-12
    assert [m.action.verb for m in trace.moments] == ["set", "drain", "feed", "run", "pour"]


def test_books_that_do_not_close_are_refused() -> None:
    """Guards the guard: a state that has lost a drop is noticed."""
    coach = small()
    state = arriving_state(coach)
    content = PlugHeld(0.3 * LITRE, np.array([1e-6, 0.0, 0.0, 0.0]))
    lost = type(state)(
        state.settings,
        state.feeds,
        {**state.held, "line": content},
        state.pools,
        state.treated,
        state.books,
    )
    assert balance_of(lost).relative_error > 1e-9
    with pytest.raises(BooksDoNotClose):
        replay(coach, lost, [])


@pytest.mark.parametrize(
    "action",
    [
        Action("set", "tap", "ajar"),
        Action("set", "no tap", "open"),
        Action("feed", "no jug", contents=PINK),
        Action("feed", "jug"),
        Action("run", "no tap"),
        Action("pour", "no trap", contents=PINK, volume_m3=LITRE),
        Action("pour", "trap", contents=PINK),
        Action("pour", "trap", contents=PINK, volume_m3=-LITRE),
    ],
)
def test_what_the_coach_does_not_have_is_refused(action: Action) -> None:
    """Guards each verb against names it does not know and amounts that are none."""
    coach = small()
    with pytest.raises(ChoiceError):
        replay(coach, arriving_state(coach), [action])


def test_a_full_tank_runs_over_and_a_drained_one_fills() -> None:
    """Guards pouring into a tank: full, it lets everything by; drained, it takes it."""
    coach = small()
    pour = Action("pour", "tank", contents=PINK, volume_m3=2.0 * LITRE)
    full = replay(coach, arriving_state(coach), [pour])
    assert full.end.pools["tank"][1] == 0.0
    assert full.end.books.went_out.sum() == pytest.approx(2.0 * LITRE)
    empty = [Action("set", "gate", "open"), Action("drain"), pour]
    assert replay(coach, arriving_state(coach), empty).end.pools["tank"][1] == pytest.approx(LITRE)


def test_emptying_twice_changes_nothing_more() -> None:
    """Guards that what is nearly empty is not filled up again by being emptied."""
    coach = small()
    state = arriving_state(coach, PINK)
    once = refill(state, "line", ONLY_AIR * 0.98, "emptied")
    assert once.mean("line").air == pytest.approx(0.98)
    assert once.mean("line").glycol == pytest.approx(0.01)
    again = refill(once, "line", ONLY_AIR * 0.95, "drained")
    assert again.held is once.held
    assert again.treated["line"] == "drained"
    drier = refill(once, "line", ONLY_AIR * 0.99, "emptied")
    assert drier.mean("line").glycol == pytest.approx(0.005)
    assert once.mean("line").air == pytest.approx(0.98)
    assert balance_of(drier).relative_error < 1e-12


def test_an_outlet_is_left_as_it_stood() -> None:
    """Guards a run at an outlet that was open before: it is not shut behind anybody's back."""
    coach = small()
    run = Action("run", "tap", until=Until(volume_m3=0.1 * LITRE))
    assert replay(coach, arriving_state(coach), [run]).end.settings["tap"] == "shut"
    opened = arriving_state(coach).with_setting("tap", "open")
    assert replay(coach, opened, [run]).end.settings["tap"] == "open"
