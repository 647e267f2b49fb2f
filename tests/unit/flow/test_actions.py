"""Each verb by itself: what it changes, what it says, and what stays."""

from dataclasses import replace
from types import MappingProxyType

import pytest

from tests.unit.flow.laid_coach import LITRE, laid, outlet, pipe
from wintertight.errors import ChoiceError
from wintertight.flow.actions import Action
from wintertight.flow.coach_network import CoachNetwork, Link, Pool
from wintertight.flow.letting_out import HEATER_HEEL, WET_SHARE
from wintertight.flow.replay import CLOSED, replay
from wintertight.flow.state import State, arriving_state
from wintertight.flow.until import Until
from wintertight.fluids.contents import Contents

PINK = Contents(glycol=0.5)


def coach() -> CoachNetwork:
    """Lay a tank that is a source, a sloping line, a bowl, a heater, and a tap."""
    links = [
        pipe("line", "a", "b", 3.0),
        Link("bowl", "bowl", "b", "c", resistance_s2_m5=1e6, holding="vessel", volume_m3=9e-4),
        Link("heater", "heater", "c", "d", resistance_s2_m5=1e6, holding="vessel", volume_m3=0.02),
        outlet("tap", "d"),
    ]
    network = laid(
        links,
        sources={"tank": ("a", 10.0)},
        heights_m={"a": 1.0, "b": 0.8, "c": 0.5, "d": 0.4, "heater/plug": 0.1},
        openings=[("a", "vent"), ("d", "low point"), ("tank", "gate"), ("heater/plug", "plug")],
        pools=[Pool("tank", 60.0 * LITRE, stirred=False, heel=0.02)],
        things={"bowl": "bowl", "pump": "switch"},
    )
    controls = dict(network.controls)
    plain = next(iter(controls.values()))
    controls["bowl/bowl"] = replace(
        plain, id="bowl/bowl", part="bowl", thing="bowl", settings=("on", "loose", "off")
    )
    controls["tank/body"] = replace(
        plain, id="tank/body", part="tank", thing="body", settings=("in place", "removed")
    )
    controls["pump/switch"] = replace(
        plain, id="pump/switch", part="pump", thing="switch", settings=("on", "off")
    )
    return replace(
        network,
        controls=MappingProxyType(controls),
        heater_ports=MappingProxyType({"heater": ("heater/plug", "c")}),
    )


def after(*actions: Action, state: State | None = None) -> State:
    """Give the coach after some actions, its books closed."""
    network = coach()
    trace = replay(network, state or arriving_state(network), actions)
    assert trace.balance.relative_error < CLOSED
    return trace.end


def test_setting_changes_one_control_and_no_content() -> None:
    """Guards that a handle is a handle."""
    before, now = arriving_state(coach()), after(Action("set", "tap", "open"))
    assert now.settings["tap"] == "open"
    assert {k: v for k, v in now.settings.items() if k != "tap"} == {
        k: v for k, v in before.settings.items() if k != "tap"
    }
    assert all(now.mean(link).water == 1.0 for link in now.held)


def test_a_bowl_taken_off_is_empty_but_for_drops() -> None:
    """Guards what a hand empties: a bowl that is off, not one that is loose."""
    assert after(Action("set", "bowl/bowl", "loose")).mean("bowl").water == 1.0
    off = after(Action("set", "bowl/bowl", "off"))
    assert off.mean("bowl").air == pytest.approx(1.0 - WET_SHARE)
    assert off.mean("bowl").water == pytest.approx(WET_SHARE)
    assert off.treated["bowl"] == "emptied"
    assert off.treated["line"] == "as found"


def test_a_tank_taken_out_keeps_its_heel() -> None:
    """Guards a removed body whose content is a tank's."""
    pool = after(Action("set", "tank/body", "removed")).pools["tank"]
    assert pool[0] == pytest.approx(0.02 * 60.0 * LITRE)
    assert pool[-1] == pytest.approx(0.98 * 60.0 * LITRE)


def test_pressure_takes_back_what_was_relieved() -> None:
    """Guards marks: made by hand, gone once the pump runs, kept when it stops."""
    worked = after(Action("relieve", "toilet"), Action("relieve", "check"))
    assert worked.marks == {"toilet", "check"}
    assert after(Action("set", "pump/switch", "on"), state=worked).marks == frozenset()
    assert after(Action("set", "pump/switch", "off"), state=worked).marks == worked.marks


def test_draining_empties_what_can_run_out() -> None:
    """Guards lines, bowl, heater and tank, each by what stays in it."""
    opened = [Action("set", name, "open") for name in ("vent", "low point", "gate", "plug")]
    shut = after(Action("drain"))
    assert all(shut.mean(link).water == 1.0 for link in shut.held)
    now = after(*opened, Action("drain"))
    assert now.treated["line"] == "drained"
    assert now.mean("line").water == pytest.approx(WET_SHARE)
    assert now.mean("line").air == pytest.approx(1.0 - WET_SHARE)
    assert now.mean("heater").water == pytest.approx(HEATER_HEEL)
    assert now.pools["tank"][0] == pytest.approx(0.02 * 60.0 * LITRE)
    assert now.feeds["tank"] == Contents.all_air()
    again = after(Action("drain"), state=now)
    assert again.mean("line").water == pytest.approx(WET_SHARE)


def test_what_may_not_run_out_is_doubtful_once() -> None:
    """Guards that only a line full of the coach's own water is doubtful after a doubtful drain."""
    network = coach()
    narrow = replace(network.links["line"], bore_m=0.008)
    links = MappingProxyType({**network.links, "line": narrow})
    network = replace(network, links=links)
    state = arriving_state(network).with_setting("low point", "open")
    now = replay(network, state, [Action("drain")]).end
    assert now.treated["line"] == "drain uncertain"
    assert now.mean("line").water == 1.0
    flowed = MappingProxyType({**state.treated, "line": "flowed"})
    moved = replay(network, replace(state, treated=flowed), [Action("drain")]).end
    assert moved.treated["line"] == "drain uncertain"
    full = arriving_state(network, PINK).with_setting("low point", "open")
    filled = replay(network, replace(full, treated=flowed), [Action("drain")]).end
    assert filled.treated["line"] == "flowed"


def test_a_feed_lasts_until_the_next() -> None:
    """Guards what a source gives: to all that follows, and to nothing else."""
    now = after(Action("feed", "tank", contents=PINK))
    assert now.feeds["tank"] == PINK
    ran = after(Action("run", "tap", until=Until(volume_m3=5.0 * LITRE)), state=now)
    assert ran.mean("line").glycol == pytest.approx(0.5)


@pytest.mark.parametrize(
    ("action", "said"),
    [
        (Action("set", "tap", "ajar"), "'tap' cannot be set to 'ajar'"),
        (Action("feed", "jug", contents=PINK), "'jug' is no source"),
        (Action("run", "hose"), "'hose' is no outlet"),
        (
            Action("pour", "sink", contents=PINK, volume_m3=LITRE),
            "nothing can be poured into 'sink'",
        ),
    ],
)
def test_a_refusal_names_what_was_asked_for(action: Action, said: str) -> None:
    """Guards the message of each verb."""
    with pytest.raises(ChoiceError, match=said):
        after(action)
