from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

import numpy as np
import pytest

from tests.unit.procedure.demo_coach import PINK, SMALL, card, swapped
from wintertight.coach.card import Card
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.held import PlugHeld
from wintertight.flow.state import State, arriving_state
from wintertight.flow.stream import Stream, shares_of
from wintertight.fluids.contents import Contents
from wintertight.proof.claims import PartProof, verdict_of
from wintertight.proof.judge import Bench, prove_parts

LOW = -23.0
STRONG = Contents(glycol=0.35)
COACH = card(SMALL)
NETWORK = build_network(COACH, BEST)


def filled(contents: Contents, how: str) -> State:
    """Give the small coach with one content everywhere, come by in one way."""
    state = arriving_state(NETWORK, contents)
    return replace(state, treated=MappingProxyType(dict.fromkeys(state.held, how)))


def proofs(state: State, coach: Card = COACH, low: float = LOW) -> Mapping[str, PartProof]:
    """Prove all parts, by id."""
    network = NETWORK if coach is COACH else build_network(coach, BEST)
    return {p.id: p for p in prove_parts(Bench(coach, network, state, low, PINK))}


@pytest.mark.parametrize(
    ("contents", "how", "safe", "claim"),
    [
        (STRONG, "flowed", True, "filled"),
        (Contents(), "as found", False, "unproven"),
        (Contents(), "drain uncertain", None, "unproven"),
        (STRONG, "drain uncertain", True, "filled"),
        (Contents(air=0.95), "drained", True, "drained"),
        (Contents(air=0.30), "drained", True, "drained"),
        (Contents(air=0.30), "flowed", False, "unproven"),
        (Contents(glycol=0.25, air=0.30), "flowed", True, "filled"),
        (Contents(air=0.95), "flowed", None, "unproven"),
        (Contents(air=0.05), "drained", False, "unproven"),
    ],
)
def test_a_line_is_judged_by_what_it_holds_and_how_it_came_by_it(
    contents: Contents,
    how: str,
    safe: bool | None,  # noqa: FBT001 - a column
    claim: str,
) -> None:
    """Guards that bubbles earn no room, drained air does, and an uncertain drain is unproven."""
    part = proofs(filled(contents, how))["kitchen-cold"]
    assert part.safe is safe
    assert part.claim == claim
    assert part.look_at is (safe is not True and how in {"as found", "drain uncertain"})


def test_the_worst_section_decides() -> None:
    """Guards that one weak stretch makes a line a gap, however strong the rest is."""
    state = filled(STRONG, "flowed")
    volume = NETWORK.links["suction-b"].volume_m3
    line = PlugHeld(volume, shares_of(STRONG))
    line.push(Stream.of(volume / 20.0, shares_of(Contents())), forward=True)
    state = replace(state, held=MappingProxyType({**state.held, "suction-b": line}))
    part = proofs(state)["suction-b"]
    assert part.safe is False
    assert part.worst.water == pytest.approx(1.0)
    assert part.mean.glycol == pytest.approx(0.35 * 0.95)
    assert part.water_m3 == pytest.approx(volume * (1.0 - 0.35 * 0.95))


def test_pools_are_judged_as_a_whole() -> None:
    """Guards that a trap freezes by its mean, and an emptied tank does not."""
    full = proofs(arriving_state(NETWORK))
    assert full["kitchen-trap"].safe is False
    assert full["fresh-tank"].safe is False
    state = arriving_state(NETWORK)
    tank = state.pools["fresh-tank"]
    drained = np.array([0.02, 0.0, 0.0, 0.0, 0.98]) * tank.sum()
    state = replace(state, pools=MappingProxyType({**state.pools, "fresh-tank": drained}))
    assert proofs(state)["fresh-tank"].safe is True


@pytest.mark.parametrize(
    ("old", "new", "part", "reason"),
    [
        ('"bidet sprayer", ', "", "any bidet sprayer", "nobody has looked"),
        ('role = "heater bypass"\n', "", "bypass-valve", "not looked at"),
        (
            'id = "low-hot"\n',
            'id = "low-hot"\nseen = "not looked at"\n',
            "low-hot",
            "not looked at",
        ),
    ],
)
def test_what_is_unknown_is_never_safe(old: str, new: str, part: str, reason: str) -> None:
    """Guards that what nobody looked at, or whose purpose nobody knows, is unproven."""
    coach = card(swapped(old, new, SMALL))
    state = arriving_state(build_network(coach, BEST), STRONG)
    state = replace(state, treated=MappingProxyType(dict.fromkeys(state.held, "flowed")))
    found = proofs(state, coach)[part]
    assert (found.safe, found.reason, found.look_at) == (None, reason, True)


def test_a_gap_outranks_unproven_and_unproven_outranks_safe() -> None:
    """Guards the verdict on a coach."""
    safe = proofs(filled(STRONG, "flowed"))["kitchen-cold"]
    unproven, gap = replace(safe, safe=None), replace(safe, safe=False)
    assert verdict_of(()) == "safe"
    assert verdict_of((safe, safe)) == "safe"
    assert verdict_of((safe, unproven)) == "unproven"
    assert verdict_of((gap, unproven, safe)) == "gap"


def test_a_closed_tap_is_rigid() -> None:
    """Guards that what would pass as slush in an open tap is a gap in a closed one."""
    state = filled(STRONG, "flowed")
    shut = proofs(state)["kitchen"]
    opened = proofs(state.with_setting("kitchen.hot", "open").with_setting("kitchen.cold", "open"))
    assert (shut.safe, shut.relieved) == (False, False)
    assert (opened["kitchen"].safe, opened["kitchen"].relieved) == (True, True)


def test_air_behind_a_pump_sweeps_a_level_line_and_no_riser() -> None:
    """Guards the two thresholds: a level tube is swept, a riser is not."""
    found = proofs(filled(Contents(air=0.95), "flowed"))
    assert found["cold-trunk-1"].claim == "swept"
    assert found["kitchen-cold"].reason == "air from the pump"
