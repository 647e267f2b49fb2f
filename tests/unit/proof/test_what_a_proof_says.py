"""Every field of a proof: nothing that is printed or counted may come from another part."""

from dataclasses import replace
from types import MappingProxyType

import numpy as np
import pytest

from tests.unit.procedure.demo_coach import SMALL, card, swapped
from tests.unit.proof.test_judge import COACH, LOW, NETWORK, STRONG, filled, proofs
from wintertight.coach.kinds import KINDS
from wintertight.cold.burst import survives
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.held import PlugHeld
from wintertight.flow.state import State, arriving_state
from wintertight.flow.stream import Stream, shares_of
from wintertight.fluids.contents import Contents
from wintertight.proof.claims import Evidence, PartProof

WATER = Contents.all_water()
LENGTHS = {line.id: line.length for line in COACH.lines}


def with_setting(state: State, name: str, setting: str) -> State:
    """Give a state with one more control set, whether the coach has it or not."""
    return replace(state, settings=MappingProxyType({**state.settings, name: setting}))


def with_line(name: str, *parcels: tuple[float, Contents]) -> State:
    """Give the strong coach with one line holding shares of its volume in a row."""
    volume = NETWORK.links[name].volume_m3
    held = PlugHeld(volume, shares_of(STRONG))
    for share, contents in parcels:
        held.push(Stream.of(volume * share, shares_of(contents)), forward=True)
    state = filled(STRONG, "flowed")
    return replace(state, held=MappingProxyType({**state.held, name: held}))


def test_a_line_says_all_it_knows() -> None:
    """Guards each field of a filled line that was guessed."""
    expected = survives(STRONG, LOW, "open", relieved=False, product=None)
    assert proofs(filled(STRONG, "flowed"))["kitchen-cold"] == PartProof(
        id="kitchen-cold",
        kind="line",
        volume_m3=NETWORK.links["kitchen-cold"].volume_m3,
        mean=STRONG,
        worst=STRONG,
        freezing_point_degC=expected.freezing_point_degC,
        ice_fraction=expected.ice_fraction,
        pocket="open",
        relieved=False,
        claim="filled",
        safe=True,
        reason=expected.reason_key,
        params=dict(expected.params),
        evidence=(
            Evidence("computed", "content flowed"),
            Evidence("assumed", "length guessed", {"spread": LENGTHS["kitchen-cold"].spread}),
        ),
        look_at=False,
    )


@pytest.mark.parametrize("how", ["flowed", "drained", "emptied", "drain uncertain", "as found"])
def test_evidence_names_how_it_came_by_its_content(how: str) -> None:
    """Guards that only a drained line stands on its heights, and only a guessed one on a guess."""
    found = proofs(filled(Contents(air=0.95), how))
    for name, guessed in (("hose", False), ("kitchen-hot", True)):
        expected = [Evidence("computed", f"content {how}")]
        if guessed:
            spread = LENGTHS[name].spread
            expected.append(Evidence("assumed", "length guessed", {"spread": spread}))
        if how == "drained":
            expected.append(Evidence("assumed", "heights as on the card"))
        assert list(found[name].evidence) == expected


def test_a_trap_and_a_tank_say_all_they_know() -> None:
    """Guards each field of what holds open water: a trap by flow, a tank by drain."""
    state = arriving_state(NETWORK)
    volume = NETWORK.pools["kitchen-trap"].volume_m3
    trap = np.array([0.6, 0.4, 0.0, 0.0, 0.0]) * volume
    tank = np.array([0.02, 0.0, 0.0, 0.0, 0.98]) * NETWORK.pools["fresh-tank"].volume_m3
    pools = {**state.pools, "kitchen-trap": trap, "fresh-tank": tank}
    found = proofs(replace(state, pools=MappingProxyType(pools)))
    pink = Contents(glycol=0.4)
    expected = survives(pink, LOW, "open", relieved=True, product=None)
    part = found["kitchen-trap"]
    assert part.mean == part.worst
    assert part.mean.glycol == pytest.approx(0.4)
    assert (part.id, part.kind, part.pocket, part.relieved) == (
        "kitchen-trap",
        "trap",
        "open",
        True,
    )
    assert part.volume_m3 == pytest.approx(volume)
    assert part.freezing_point_degC == pytest.approx(expected.freezing_point_degC)
    assert part.ice_fraction == pytest.approx(expected.ice_fraction)
    assert (part.claim, part.safe, part.reason) == ("filled", True, expected.reason_key)
    assert dict(part.params) == pytest.approx(dict(expected.params))
    assert part.evidence == (Evidence("computed", "content flowed"),)
    assert part.look_at is False
    emptied = found["fresh-tank"]
    assert (emptied.kind, emptied.claim, emptied.safe) == ("fresh tank", "drained", True)
    assert emptied.evidence == (Evidence("computed", "content drained"),)
    full = proofs(state)["gray-tank"]
    assert (full.claim, full.safe, full.look_at) == ("unproven", False, True)


def test_what_was_taken_out_is_removed() -> None:
    """Guards that a body taken out counts as removed, a line beside it does not."""
    state = filled(Contents(air=0.95), "emptied")
    found = proofs(with_setting(state, "filter/body", "removed"))
    assert found["filter"].claim == "removed"
    assert found["filter"].evidence[0] == Evidence("computed", "content removed")
    assert found["strainer"].claim == "drained"
    assert found["strainer"].evidence[0] == Evidence("computed", "content emptied")
    pool = proofs(with_setting(arriving_state(NETWORK), "kitchen-trap/body", "removed"))
    assert pool["kitchen-trap"].evidence[0] == Evidence("computed", "content removed")


def test_a_maker_vouches_for_its_own_part_only() -> None:
    """Guards what ticked steps of a maker change, and that unticked ones change nothing."""
    state = filled(WATER, "as found")
    before = proofs(state)
    ticked = proofs(with_setting(state, "filter/maker's steps", "done"))
    assert ticked["filter"] == replace(
        before["filter"],
        claim="drained",
        safe=True,
        reason="maker's steps",
        evidence=(*before["filter"].evidence, Evidence("attested", "maker's steps")),
        look_at=False,
    )
    others = {name: part for name, part in ticked.items() if name != "filter"}
    assert others == {name: part for name, part in before.items() if name != "filter"}
    assert proofs(with_setting(state, "filter/maker's steps", "open")) == before


@pytest.mark.parametrize(
    ("parcels", "worst"),
    [
        (((0.2, Contents(glycol=0.30)), (0.2, Contents(glycol=0.33))), Contents(glycol=0.30)),
        (((0.2, Contents(glycol=0.10)), (0.2, WATER)), WATER),
        (((0.2, WATER), (0.2, Contents(glycol=0.10))), WATER),
        (((0.2, Contents(air=1.0)), (0.2, Contents(glycol=0.32))), Contents(glycol=0.32)),
        (((0.2, Contents(glycol=0.1, ethanol=0.1)), (0.2, STRONG)), None),
    ],
)
def test_the_weakest_stands_for_the_whole(
    parcels: tuple[tuple[float, Contents], ...], worst: Contents | None
) -> None:
    """Guards the order: unsafe before unproven before safe, then by ice, then by water."""
    part = proofs(with_line("suction-b", *parcels))["suction-b"]
    if worst is None:
        assert part.worst.ethanol > 0.0
        assert part.safe is not True
    else:
        assert part.worst.glycol == pytest.approx(worst.glycol)
        assert part.worst.air == pytest.approx(worst.air)


def test_what_nobody_knows_says_so() -> None:
    """Guards each field of a fitting not looked at, and of a kind nobody has looked for."""
    coach = card(swapped('id = "low-hot"\n', 'id = "low-hot"\nseen = "not looked at"\n', SMALL))
    state = arriving_state(build_network(coach, BEST), STRONG)
    unseen = [p for p in proofs(state, coach).values() if p.id == "low-hot"]
    assert unseen[-1] == _unknown("low-hot", "low point", "not looked at")
    coach = card(swapped('"bidet sprayer", ', "", SMALL))
    state = arriving_state(build_network(coach, BEST), STRONG)
    found = proofs(state, coach)["any bidet sprayer"]
    assert found == _unknown("any bidet sprayer", "bidet sprayer", "nobody has looked")
    assert not any(name.startswith("any ") for name in proofs(filled(STRONG, "flowed")))


def _unknown(name: str, kind: str, reason: str) -> PartProof:
    return PartProof(
        id=name,
        kind=kind,
        volume_m3=KINDS[kind].hollow_m3,
        mean=WATER,
        worst=WATER,
        freezing_point_degC=None,
        ice_fraction=None,
        pocket=KINDS[kind].pocket,
        relieved=False,
        claim="unproven",
        safe=None,
        reason=reason,
        params={"kind": kind},
        evidence=(Evidence("assumed", reason),),
        look_at=True,
    )
