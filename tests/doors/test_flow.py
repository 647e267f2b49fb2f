import math

import pytest

from tests.doors.door import CARD, Door
from wintertight.coach.load import load_card
from wintertight.units import GALLON_M3, PSI_PA

GPM = GALLON_M3 / 60.0


def test_the_keys_are_those_of_the_contract(door: Door) -> None:
    """Guards the names that other programs read: each line of the card, and no other."""
    found = door("flow", CARD, "--open", "kitchen", "--json").object()
    assert found["schema"] == "wintertight/flow/1"
    assert isinstance(found["engine"], str)
    assert found["flows_m3_s"].keys() == {line.id for line in load_card(CARD).lines}
    assert {"kitchen.hot", "pump.out", "suction-tee"} <= found["pressures_Pa"].keys()
    nulls = {node for node, pressure in found["pressures_Pa"].items() if pressure is None}
    assert nulls == found["why_null"].keys()


def test_what_comes_out_went_in(door: Door) -> None:
    """Guards continuity from the pump to two open taps."""
    found = door("flow", CARD, "--open", "kitchen,lavatory.cold", "--json").object()
    out = found["outlet_flows_m3_s"]
    assert out.keys() == {"kitchen.hot", "kitchen.cold", "lavatory.cold"}
    assert sum(out.values()) == pytest.approx(found["flows_m3_s"]["pump-out"], rel=1e-9)


def test_a_tap_and_the_pump_meet(door: Door) -> None:
    """Guards flow and pressures against the two laws they must meet: tap and pump."""
    found = door("flow", CARD, "--open", "kitchen.hot", "--json").object()
    flow, pressures = found["flows_m3_s"]["kitchen-hot"], found["pressures_Pa"]
    # A kitchen tap passes 1.8 gal/min at 40 psi; the pump 3 gal/min free, and stops at 55 psi.
    tap = 1.8 * GPM * math.sqrt(pressures["kitchen.hot"] / (40.0 * PSI_PA))
    rise = pressures["pump.out"] - pressures["pump.in"]
    pump = 3.0 * GPM * (1.0 - rise / (55.0 * PSI_PA))
    # The density at which the two were converted differs in the fifth digit.
    assert flow == pytest.approx(tap, rel=1e-4)
    assert flow == pytest.approx(pump, rel=1e-4)


def test_settings_turn_the_water(door: Door) -> None:
    """Guards that the heater's bypass takes the flow once it is set so, one option each or none."""
    bypass = ("heater-cold-valve=across", "heater-hot-valve=across", "bypass-valve=along")
    once = door("flow", CARD, "--open", "kitchen.hot", "--set", ",".join(bypass), "--json")
    each = door(
        "flow", CARD, "--open=kitchen.hot", *(f"--set={order}" for order in bypass), "--json"
    )
    bare = door("flow", CARD, "--open", "kitchen.hot", "--set", *bypass, "--json")
    assert once == each == bare
    flows = once.object()["flows_m3_s"]
    assert flows["bypass-a"] == pytest.approx(flows["kitchen-hot"])
    assert flows["heater-cold-a"] == 0.0


def test_the_city_feeds_what_the_pump_feeds(door: Door) -> None:
    """Guards the source: town water comes in by its inlet, and none from the tank."""
    found = door("flow", CARD, "--open", "toilet", "--source", "city", "--json").object()
    assert found["source"] == "city"
    assert found["flows_m3_s"]["city-branch"] == pytest.approx(found["flows_m3_s"]["toilet-line"])
    assert found["flows_m3_s"]["tank-stub"] == 0.0


def test_the_table_names_outlets_first(door: Door) -> None:
    """Guards what people read."""
    done = door("flow", CARD, "--open", "kitchen")
    assert done.status == 0
    lines = done.out.splitlines()
    assert lines[lines.index("Out of") + 1].startswith("kitchen.hot ")
    assert door("flow", CARD, "--open", "kitchen", "--set", "pump=off").out.endswith(
        "Nothing moves.\n"
    )


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("--open", "kichen"), ("--open:", "kitchen")),
        (("--open", ""), ("--open:",)),
        (("--open", "kitchen,"), ("--open:",)),
        (("--open", "pump"), ("--open:", "demand pump", "lavatory")),
        (("--open", "kitchen", "--set", "tank-valve=ajar"), ("--set:", "along, across or half")),
        (("--open", "kitchen", "--set", "tank-valv=along"), ("--set:", "tank-valve")),
        (("--open", "kitchen", "--set", "tank-valve"), ("--set:", "VALVE=SETTING")),
        (("--open", "kitchen", "--set", "heater=on"), ("--set:", "heater/burner")),
        (("--open", "kitchen", "loose"), ("--set:", "'loose'")),
        (("--open", "kitchen", "--source", "well"), ("--source:", "pump, city or hand")),
    ],
)
def test_a_wrong_name_is_one_line(
    door: Door, arguments: tuple[str, ...], words: tuple[str, ...]
) -> None:
    """Guards that the line names the option and what there is."""
    door("flow", CARD, *arguments, "--json").refused("WT-140", *words)
