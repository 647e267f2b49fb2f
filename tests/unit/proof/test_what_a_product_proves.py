"""What stands on the label of the product, on relief, and on nothing at all."""

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType

import numpy as np
import pytest

from tests.unit.procedure.demo_coach import DEMO, TEXT, card
from tests.unit.proof.test_judge import COACH, LOW, NETWORK, STRONG, filled
from wintertight.coach.load import load_card
from wintertight.cold.burst import VERDICT_MARGIN_K
from wintertight.flow.build import build_network
from wintertight.flow.case import BEST
from wintertight.flow.held import PlugHeld
from wintertight.flow.state import State, arriving_state
from wintertight.flow.stream import Stream, shares_of
from wintertight.fluids.contents import Contents
from wintertight.fluids.product import Product
from wintertight.proof.claims import Evidence, PartProof
from wintertight.proof.judge import Bench, prove_parts
from wintertight.proof.relief import is_relieved

FULL = Contents(rated=1.0)


def labelled(burst_degC: float | None, freeze_degC: float | None) -> Product:
    """Give a product of which only the label is known."""
    return Product("pink", None, None, burst_degC, freeze_degC, 0.003785)


def proofs(state: State, product: Product | None) -> Mapping[str, PartProof]:
    """Prove all parts of the small coach with one product, by id."""
    return {p.id: p for p in prove_parts(Bench(COACH, NETWORK, state, LOW, product))}


def with_trap(contents: np.ndarray) -> State:
    """Give the small coach full of the product, its trap with other contents."""
    state = filled(FULL, "flowed")
    trap = contents * NETWORK.pools["kitchen-trap"].volume_m3
    return replace(state, pools=MappingProxyType({**state.pools, "kitchen-trap": trap}))


@pytest.mark.parametrize(
    ("product", "safe"),
    [
        (labelled(LOW - VERDICT_MARGIN_K - 0.1, None), True),
        (labelled(LOW - VERDICT_MARGIN_K + 0.1, None), False),
        (labelled(None, LOW - 20.0), None),
        (None, None),
    ],
)
def test_open_parts_stand_on_the_burst_rating(product: Product | None, safe: object) -> None:
    """Guards that a line and a trap full of a product are as good as its label, and no better."""
    found = proofs(with_trap(np.array([0.0, 0.0, 0.0, 1.0, 0.0])), product)
    assert found["kitchen-cold"].safe is safe
    assert found["kitchen-trap"].safe is safe


@pytest.mark.parametrize(
    ("product", "safe"),
    [
        (labelled(LOW - 20.0, LOW - VERDICT_MARGIN_K - 0.1), True),
        (labelled(LOW - 20.0, LOW - VERDICT_MARGIN_K + 0.1), False),
        (labelled(LOW - 20.0, None), None),
    ],
)
def test_a_rigid_part_stands_on_the_freeze_rating(product: Product, safe: object) -> None:
    """Guards that where slush has no room only the label's freezing point counts."""
    state = filled(FULL, "flowed")
    assert proofs(state, product)["kitchen"].safe is safe
    opened = state.with_setting("kitchen.hot", "open").with_setting("kitchen.cold", "open")
    assert proofs(opened, product)["kitchen"].safe is True


def test_a_trap_is_open_whatever_stands_beside_it() -> None:
    """Guards that slush in a trap has room: the same glycol is a gap in a closed tap."""
    state = filled(STRONG, "flowed")
    trap = np.array([0.65, 0.35, 0.0, 0.0, 0.0]) * NETWORK.pools["kitchen-trap"].volume_m3
    state = replace(state, pools=MappingProxyType({**state.pools, "kitchen-trap": trap}))
    found = proofs(state, None)
    assert (found["kitchen-trap"].safe, found["kitchen"].safe) == (True, False)
    assert found["kitchen-trap"].reason == "slush is harmless"


def test_what_has_no_model_is_named() -> None:
    """Guards that a fitting no model is known for is unproven, by its own name and kind."""
    network = replace(NETWORK, unmodelled=("strainer",))
    bench = Bench(COACH, network, filled(STRONG, "flowed"), LOW, None)
    found = [p for p in prove_parts(bench) if p.id == "strainer"][-1]
    assert (found.kind, found.claim, found.safe) == ("strainer", "unproven", None)
    assert (found.reason, found.look_at) == ("no model", True)
    assert found.evidence == (Evidence("assumed", "no model"),)
    assert found.volume_m3 > 0.0


def test_water_that_may_have_run_out_is_no_known_gap() -> None:
    """Guards the reason of an uncertain drain: what is not known to be there is unproven."""
    found = proofs(filled(Contents(), "drain uncertain"), None)["kitchen-cold"]
    assert (found.safe, found.reason) == (None, "may not have drained")


def test_a_shower_needs_its_head_open_too() -> None:
    """Guards that handles alone do not relieve a mixer whose head is shut."""
    coach = card(TEXT)
    network = build_network(coach, BEST)
    state = arriving_state(network)
    for control in ("shower.hot", "shower.cold", "shower/head"):
        state = state.with_setting(control, "open")
    assert is_relieved(coach.fitting["shower"], network, state)
    shut = state.with_setting("shower/head", "shut")
    assert not is_relieved(coach.fitting["shower"], network, shut)


def test_a_sprayer_is_relieved_by_itself() -> None:
    """Guards that a hand sprayer's pocket is open once it is, and not before."""
    coach = load_card(DEMO / "cards" / "full-fifth-wheel.toml")
    network = build_network(coach, BEST)
    state = arriving_state(network)
    (name,) = [f.id for f in coach.fittings if f.kind == "bidet sprayer"]
    (control,) = [c.id for c in network.controls.values() if c.part == name]
    assert not is_relieved(coach.fitting[name], network, state)
    assert is_relieved(coach.fitting[name], network, state.with_setting(control, "open"))


@pytest.mark.parametrize(
    ("worse", "better"),
    [
        # unsafe before unproven, though nobody knows how much ice a blend has
        (Contents(glycol=0.10), Contents(glycol=0.25, ethanol=0.25)),
        # unproven before safe, though it has half as much ice
        (Contents(ethanol=0.35), Contents(glycol=0.33)),
        # more ice before more water
        (Contents(glycol=0.09, air=0.06), Contents(glycol=0.14)),
        # more water where both are all ice
        (Contents(), Contents(air=0.05)),
        # nobody knows how much ice a blend has: no more than water, which is all ice
        (Contents(), Contents(glycol=0.10, ethanol=0.10)),
        # what is mostly air has little ice, however frozen that is
        (Contents(glycol=0.33), Contents(air=0.95)),
    ],
)
@pytest.mark.parametrize("swapped", [False, True])
def test_the_worse_of_two_sections_is_told(
    worse: Contents,
    better: Contents,
    swapped: bool,  # noqa: FBT001 - a column
) -> None:
    """Guards each step of the order, wherever the worse stretch lies in the line."""
    name = "suction-b"
    state = filled(STRONG, "drained")
    volume = NETWORK.links[name].volume_m3
    first, second = (better, worse) if swapped else (worse, better)
    line = PlugHeld(volume, shares_of(first))
    line.push(Stream.of(volume / 2.0, shares_of(second)), forward=True)
    part = proofs(replace(state, held=MappingProxyType({**state.held, name: line})), None)[name]
    found = (part.worst.glycol, part.worst.ethanol, part.worst.air)
    assert found == pytest.approx((worse.glycol, worse.ethanol, worse.air))
