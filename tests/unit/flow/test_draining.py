import pytest

from tests.unit.flow.laid_coach import laid, pipe, valve
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Link, Pool
from wintertight.flow.draining import drain_by_gravity
from wintertight.flow.replay import replay
from wintertight.flow.state import State, arriving_state
from wintertight.fluids.contents import Contents


def standing(coach: CoachNetwork, *opened: str) -> State:
    """Give a full coach with some controls open."""
    state = arriving_state(coach)
    for control in opened:
        state = state.with_setting(control, "open")
    return state


def classes(coach: CoachNetwork, *opened: str) -> dict[str, str]:
    """Give the class of each link."""
    return dict(drain_by_gravity(coach, standing(coach, *opened)).drainage)


def hill() -> CoachNetwork:
    r"""Lay a tap T at 1.5 m over a hill H and a valley V, and a low point L.

    T 1.5                       spill level of a node = lowest barrier on the way to L at -0.2
     \         H 0.6            L: -0.2              A: max(-0.2, 0.1) = 0.1
      \       /  \              B: max(0.1, 0.3) = 0.3, its own height: water can leave
       B 0.3 /    \             H: max(0.3, 0.6) = 0.6, its own height: water can leave
       |  --      V 0.2 -- W 0.9    V: max(0.6, 0.2) = 0.6, 0.4 above V: trapped
       A 0.1                    W: max(0.6, 0.9) = 0.9, its own height, but W-V falls to V
       |                        T: 1.5, its own height
       L -0.2                   V-Y 0.4-Z 0.5 (not drawn): 0.6 at both, trapped
    """
    lines = [("T", "B"), ("B", "A"), ("A", "L"), ("H", "B"), ("H", "V"), ("W", "V")]
    lines += [("Y", "V"), ("Z", "Y")]
    heights = {
        "T": 1.5,
        "B": 0.3,
        "A": 0.1,
        "L": -0.2,
        "H": 0.6,
        "V": 0.2,
        "W": 0.9,
        "Y": 0.4,
        "Z": 0.5,
    }
    return laid(
        [pipe(a + b, a, b) for a, b in lines],
        heights_m=heights,
        openings=[("L", "low point"), ("T", "tap"), ("W", "far tap")],
    )


def test_a_hill_by_hand() -> None:
    """Guards the whole of one coach, worked out by hand: see the drawing of `hill`."""
    assert classes(hill(), "low point", "tap") == {
        "TB": "drained",  # falls to B, whose water can leave; air from the tap
        "BA": "drained",
        "AL": "drained",
        "HB": "uncertain",  # could leave at B, but H has no air of its own
        "HV": "trapped",  # V lies under its spill level of 0.6
        "WV": "trapped",
        "YV": "trapped",
        "ZY": "trapped",  # falls to Y, but from there its water would have to climb H
    }
    # With the far tap open too, W is aired; but W-V falls to V and stops there: H stays without.
    assert classes(hill(), "low point", "tap", "far tap")["HB"] == "uncertain"
    assert classes(hill(), "low point", "tap", "far tap")["WV"] == "trapped"


def test_without_a_vent_nothing_is_promised() -> None:
    """Guards tubes open only below, which may or may not run empty, and a coach shut altogether."""
    assert classes(hill(), "low point")["TB"] == "uncertain"
    assert classes(hill(), "low point")["AL"] == "uncertain"
    assert set(classes(hill()).values()) == {"trapped"}
    assert classes(hill(), "tap")["TB"] == "trapped"


@pytest.mark.parametrize(
    ("more", "found"),
    [
        ({}, "drained"),
        ({"lowest_m": -0.1}, "trapped"),  # a sag below the end it drains to
        ({"highest_m": 1.3}, "uncertain"),  # a hump above the end that has air
        ({"highest_m": 0.9}, "drained"),
        ({"bore_m": 0.007}, "uncertain"),
        ({"bore_m": 0.0043}, "trapped"),  # water hangs in it even with air above
    ],
)
def test_what_keeps_a_line_from_draining(more: dict[str, float], found: str) -> None:
    """Guards one line from a tap at 1 m to a low point at 0 m, by shape and by bore."""
    coach = laid(
        [pipe("line", "top", "foot", **more)],
        heights_m={"top": 1.0},
        openings=[("foot", "low point"), ("top", "tap")],
    )
    assert classes(coach, "low point", "tap") == {"line": found}


@pytest.mark.parametrize(
    ("fall_m", "found"),
    [(0.0, "uncertain"), (0.009, "uncertain"), (0.03, "uncertain"), (0.05, "drained")],
)
def test_a_level_line_is_uncertain(fall_m: float, found: str) -> None:
    """Guards lines with less fall than a hundredth of their 4 m, or a centimetre."""
    coach = laid(
        [pipe("line", "far", "near", 4.0)],
        heights_m={"far": fall_m},
        openings=[("near", "low point"), ("far", "tap")],
    )
    assert classes(coach, "low point", "tap") == {"line": found}


def test_nothing_drains_through_a_thin_line() -> None:
    """Guards a wide line whose only way out is an ice-maker's tube."""
    coach = laid(
        [pipe("wide", "top", "tee"), pipe("thin", "tee", "end", bore_m=0.0043)],
        heights_m={"top": 1.0, "tee": 0.5},
        openings=[("end", "low point"), ("top", "tap")],
    )
    assert classes(coach, "low point", "tap") == {"wide": "trapped", "thin": "trapped"}


def test_nothing_drains_back_through_a_check_valve_or_a_shut_valve() -> None:
    """Guards that only what lets water and air by counts as a way out."""
    check = Link("check", "check", "b", "a", resistance_s2_m5=1e6, one_way=True)
    for between in (check, valve("shut valve", "a", "b")):
        coach = laid(
            [pipe("line", "top", "a"), between],
            heights_m={"top": 1.0, "a": 0.5, "b": 0.0},
            openings=[("b", "low point"), ("top", "tap")],
        )
        assert classes(coach, "low point", "tap")["line"] == "trapped"


def test_nobody_counts_on_a_check_valve_to_let_by() -> None:
    """Guards the way through a check valve: its spring may or may not let a little water fall."""
    check = Link("check", "check", "a", "b", resistance_s2_m5=1e6, one_way=True)
    coach = laid(
        [pipe("line", "top", "a"), check],
        heights_m={"top": 1.0, "a": 0.5, "b": 0.0},
        openings=[("b", "low point"), ("top", "tap")],
    )
    assert classes(coach, "low point", "tap") == {"line": "uncertain"}


def heated(*, bowl: bool = False) -> CoachNetwork:
    """Lay a heater between a hot tap line and a cold low point, both lower than its ports."""
    part = valve("plug", "cold", "hot", holding="vessel", volume_m3=20e-3)
    return laid(
        [part, pipe("cold line", "cold", "low"), pipe("hot line", "top", "hot")],
        heights_m={"cold": 0.4, "hot": 0.6, "low": 0.0, "top": 1.2, "bottom": 0.3, "relief": 0.7},
        openings=[("low", "low point"), ("top", "tap"), ("bottom", "out"), ("relief", "lever")],
        heater_ports={} if bowl else {"plug": ("bottom", "relief")},
        things={"plug": "bowl"} if bowl else {},
    )


def test_a_heater_does_not_drain_through_its_ports() -> None:
    """Guards against taking a heater for empty because water beside its ports can leave."""
    found = classes(heated(), "plug", "low point", "tap")
    assert found["plug"] == "trapped"
    assert found["hot line"] == found["cold line"] == "drained"


def test_a_bowl_does_not_drain_through_its_ports() -> None:
    """Guards the bowl of a strainer or filter, which hangs below them."""
    found = classes(heated(bowl=True), "plug", "low point", "tap")
    assert found == {"plug": "trapped", "cold line": "drained", "hot line": "drained"}


@pytest.mark.parametrize(
    ("opened", "empty"),
    [({"out"}, False), ({"lever"}, False), ({"out", "lever"}, True), (set(), False)],
)
def test_a_heater_empties_with_its_plug_out_and_its_relief_open(
    opened: set[str],
    empty: bool,  # noqa: FBT001 - a value of the table
) -> None:
    """Guards that a heater whose relief stays shut keeps its water although its plug is out."""
    assert (drain_by_gravity(heated(), standing(heated(), *opened)).emptied == ("plug",)) == empty


def test_a_heater_keeps_its_heel() -> None:
    """Guards what a drained heater still holds: one quart in six gallons, on the books."""
    coach = heated()
    trace = replay(coach, standing(coach, "out", "lever"), [Action("drain")])
    assert trace.end.mean("plug").water == pytest.approx(0.25 / 6.0, abs=1e-3)
    assert trace.end.treated["plug"] == "drained"
    assert trace.end.books.went_out[0] == pytest.approx(20e-3 * (1.0 - 0.042))


def test_a_tank_drains_by_its_own_drain_only() -> None:
    """Guards a tank: full with its drain shut, down to its heel once it is open."""
    tank = Pool("tank", 150e-3, stirred=False, heel=0.02)
    coach = laid([pipe("line", "tank", "b")], pools=[tank], openings=[("tank", "drain")])
    shut = replay(coach, standing(coach), [Action("drain")])
    assert shut.end.pools["tank"][0] == pytest.approx(150e-3)
    opened = replay(coach, standing(coach, "drain"), [Action("drain")])
    assert opened.end.pools["tank"][0] == pytest.approx(3e-3)
    assert opened.balance.relative_error < 1e-12


def test_what_drained_keeps_a_film_of_what_it_held() -> None:
    """Guards the content after draining: air, and a twentieth of the liquid that was there."""
    coach = hill()
    half = arriving_state(coach, Contents(glycol=0.5))
    state = half.with_setting("low point", "open").with_setting("tap", "open")
    end = replay(coach, state, [Action("drain")]).end
    assert end.mean("TB").air == pytest.approx(0.95)
    assert end.mean("TB").glycol == pytest.approx(0.025)
    assert end.mean("WV") == Contents(glycol=0.5)
    assert (end.treated["TB"], end.treated["HB"], end.treated["WV"]) == (
        "drained",
        "drain uncertain",
        "as found",
    )
    assert half.mean("TB") == Contents(glycol=0.5)
