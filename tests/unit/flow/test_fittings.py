"""What a hand can move on each kind of fitting, and what then opens or shuts."""

from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

import wintertight
from wintertight.coach.card import Fitting
from wintertight.coach.load import load_card
from wintertight.flow.build import build_network
from wintertight.flow.coach_network import CoachNetwork

CARDS = sorted((Path(wintertight.__file__).parent / "demo" / "cards").glob("*.toml"))

TAP = "tap: shut | open"
MACHINE = "valve of a machine: shut | open"
HOT_COLD = {".hot": TAP, ".cold": TAP}
BODY = {"/body": "body: in place | removed"}
HEATS = {"/burner": "burner: on | off", "/element": "element: on | off"}
HANDS: dict[str, dict[str, str]] = {
    "accumulator": {},
    "antifreeze hose": {"": "hose: stowed | in the jug | open to the air"},
    "ball valve": {"": "handle: along | across | half"},
    "bidet sprayer": {"": TAP},
    "black tank": {"/gate": "gate: shut | open"},
    "capped tee": {"": "cap: on | off"},
    "cassette toilet": {"": TAP},
    "check valve": {},
    "city inlet": {
        "/hose": "hose: off | on | in the jug | hand pump | air line",
        "": "check: free | pressed",
    },
    "demand pump": {
        "/switch": "switch: off | on",
        "/suction": "hose: tank line | in the jug | open to the air",
    },
    "dishwasher": {"": MACHINE},
    "door dispenser": {"": "lever: shut | open"},
    "filter housing": {"/cartridge": "cartridge: in | out", "/bowl": "bowl: tight | loose | off"},
    "fresh tank": {"/drain": "drain: shut | open", "": "tank: in use"},
    "fridge filter": {"/filter": "filter: cartridge in | bypass plug in"},
    "gravity toilet": {"": TAP},
    "gray tank": {"/gate": "gate: shut | open"},
    "hydronic coil": HEATS,
    "ice maker": {"": "line end: joined | off", "/mould": "mould: full | emptied"},
    "kitchen tap": HOT_COLD,
    "lavatory tap": HOT_COLD,
    "low point": {"": "valve: shut | open"},
    "macerating toilet": {"": MACHINE},
    "macerator": {},
    "manifold": {},
    "membrane filter": {**BODY, "": "line end: joined | off"},
    "on-demand heater": {"/burner": "burner: on | off", "/plug": "plug: in | out"},
    "outside filter": BODY,
    "outside kitchen": {"/head": "head: shut | open", ".cold": TAP},
    "outside shower": {"/head": "head: shut | open", **HOT_COLD},
    "prepared stub": {"": "cap: on | off"},
    "pressure regulator": BODY,
    "recirculating diverter": {"": "diverter: off | recirculate"},
    "service panel": {"": "named handle: DRY CAMP | WINTER | CITY | FILL TANK"},
    "shower": {"/head": "head: open | shut", **HOT_COLD},
    "softener": BODY,
    "spray port": {"": TAP},
    "strainer": {"/bowl": "bowl: tight | loose | off"},
    "supply hose": BODY,
    "tank heater": {**HEATS, "/relief": "relief lever: shut | open", "/plug": "plug: in | out"},
    "tank rinse": {"/inlet": "rinse inlet: shut | open"},
    "tee": {},
    "tempering valve": {},
    "three-way valve": {"": "named handle: TANK | HOSE"},
    "trap": {},
    "tub": HOT_COLD,
    "UV sleeve": BODY,
    "vacuum toilet": {"": TAP},
    "washer": {".hot": MACHINE, ".cold": MACHINE},
    "whirlpool": {**HOT_COLD, "/maker's steps": "maker's steps: to do | done"},
}
"""By kind: each control by the end of its id, what it is, and its settings, as found first."""

NOT_ON_EACH = {".hot", ".cold", "/element", "/burner", "/suction"}
"""Ports and burners that the card may leave out; a pump's suction is moved only without a hose."""

STIRRED = {"trap", "accumulator", "macerator", "macerating toilet"}
STIRRED |= {"dishwasher", "washer", "whirlpool"}
"""Kinds whose open water stays in them, and is mixed with what comes."""

ONE_WAY = {"demand pump", "check valve", "fresh tank"}
"""Kinds that water passes in one direction, besides outlets and sources."""


@cache
def built() -> list[tuple[CoachNetwork, tuple[Fitting, ...]]]:
    """Give the coaches of the demo."""
    cards = [load_card(path) for path in CARDS]
    return [(build_network(card), tuple(card.fittings)) for card in cards]


def of_kind(*kinds: str) -> Iterator[tuple[CoachNetwork, Fitting]]:
    """Give every fitting of some kinds in the demo."""
    for network, fittings in built():
        yield from ((network, f) for f in fittings if f.kind in kinds)


@pytest.mark.parametrize("kind", sorted(HANDS))
def test_each_kind_has_what_a_hand_can_move(kind: str) -> None:
    """Guards names and settings, on which steps and cards stand, and how each is found."""
    found = list(of_kind(kind))
    assert found
    for network, fitting in found:
        mine = [c for c in network.controls.values() if c.part == fitting.id]
        hands = {c.id.removeprefix(fitting.id): c for c in mine}
        assert set(hands) <= set(HANDS[kind])
        assert set(HANDS[kind]) - set(hands) <= NOT_ON_EACH
        for name, control in hands.items():
            thing, _, settings = HANDS[kind][name].partition(": ")
            assert (control.thing, set(control.settings)) == (thing, set(settings.split(" | ")))
            assert control.as_found in control.settings
            if kind != "ball valve":  # which way it stands is on the card
                assert " | ".join(control.settings) == settings


def test_no_kind_is_left_out() -> None:
    """Guards that the table above has every kind that is on a card."""
    assert {f.kind for _, fittings in built() for f in fittings} == set(HANDS)


def test_gates_stand_on_what_hands_can_do() -> None:
    """Guards that what opens a way is a setting of a control that is there."""
    for network, _ in built():
        gates = [k.gate for k in network.links.values() if k.gate]
        gates += [o.gate for o in network.openings]
        for gate in gates:
            settings = set(network.controls[gate.control].settings)
            assert gate.passes
            assert gate.passes <= settings
            assert gate.half is None or gate.half in settings
        for outlet in network.outlets.values():
            assert outlet.control in dict(outlet.opens)
            for control, setting in outlet.opens:
                assert setting in network.controls[control].settings
            last = network.links[outlet.link].gate
            assert last is not None
            assert dict(outlet.opens)[last.control] in last.passes
            assert outlet.node in network.heights_m


def test_a_body_taken_out_stops_the_way_and_a_bridge_opens_it() -> None:
    """Guards softeners and sleeves: one way in place, another one without."""
    for network, fitting in of_kind("softener", "UV sleeve"):
        ways = [k for k in network.links.values() if k.part == fitting.id]
        open_at = {k.id.removeprefix(fitting.id): set(k.gate.passes) for k in ways if k.gate}
        assert open_at == {"": {"in place"}, "(bridge)": {"removed"}}


def test_what_lets_water_through_one_way() -> None:
    """Guards that pumps and check valves pass one way, and what is open both ways does not."""
    for network, fittings in built():
        kinds = {f.id: f.kind for f in fittings}
        ends = {o.link for o in network.outlets.values()}
        for link in network.links.values():
            kind = kinds.get(link.part)
            if kind is None or link.id in ends or "/" in link.id or link.id.endswith("(outlet)"):
                continue
            assert link.one_way is (kind in ONE_WAY), link.id


def test_traps_keep_their_water_and_tanks_give_it_up() -> None:
    """Guards which open water is mixed with what comes, and where a trap runs over to."""
    for network, fittings in built():
        kinds = {f.id: f.kind for f in fittings}
        for pool in network.pools.values():
            kind = kinds[pool.part]
            assert pool.stirred is (kind in STIRRED), pool.part
            if kind == "trap":
                assert kinds[pool.drops_to] in {"gray tank", "black tank"}


def test_a_drained_heater_opens_at_its_bottom() -> None:
    """Guards that a heater's plug lies below its ports, and its relief valve above its plug."""
    found = list(of_kind("tank heater", "on-demand heater"))
    assert {f.kind for _, f in found} == {"tank heater", "on-demand heater"}
    for network, fitting in found:
        plugs = [o for o in network.openings if o.gate.control == f"{fitting.id}/plug"]
        assert plugs
        assert all(o.gate.passes == {"out"} for o in plugs)
        ports = [network.heights_m[f"{fitting.id}.{port}"] for port in fitting.ports]
        assert 0.0 < min(ports) - min(o.height_m for o in plugs) < 0.6, fitting.id


def test_an_accumulator_breathes_through_one_line() -> None:
    """Guards that it is one line, and one that ends at it."""
    found = list(of_kind("accumulator"))
    assert found
    for network, fitting in found:
        (breather,) = [b for b in network.breathers if b.pool == fitting.id]
        line = network.links[breather.line]
        assert line.way == "pipe"
        assert fitting.id in line.start + line.end
