import pytest

from tests.doors.door import Door, as_program

KEYS = {
    "freezing_point_degC",
    "verdict_margin_K",
    "burst_limit_degC",
    "ice_fraction",
    "density_kg_m3",
    "viscosity_Pa_s",
}


def test_the_keys_are_those_of_the_contract(door: Door) -> None:
    """Guards the names that other programs read."""
    found = door("fluid", "--glycol-mass", "0.30", "--json").object()
    assert found["schema"] == "wintertight/fluid/1"
    assert isinstance(found["engine"], str)
    assert found.keys() >= KEYS
    assert found["why_null"] == {}


def test_water_by_the_real_entry() -> None:
    """Guards the installed program with what everybody knows of water at 20 degC."""
    found = as_program("fluid", "--json").object()
    assert found["freezing_point_degC"] == 0.0
    assert found["ice_fraction"] == 0.0
    assert found["density_kg_m3"] == pytest.approx(998.2, abs=0.05)
    assert found["viscosity_Pa_s"] == pytest.approx(1.0016e-3, abs=5e-8)


@pytest.mark.parametrize(
    "spelled",
    [
        ("--at", "-20F"),
        ("--at=-20F",),
        ("--at", "-20 °F"),
        ("--at=-20degF",),
        ("--at", "\u221220F"),
    ],
)
def test_cold_can_be_spelled_in_many_ways(door: Door, spelled: tuple[str, ...]) -> None:
    """Guards that a minus in front is no option, whichever way the temperature is written."""
    found = door("fluid", "--glycol-volume", "35%", *spelled, "--json").object()
    assert found["at_degC"] == pytest.approx(-52.0 / 1.8)


@pytest.mark.parametrize("share", ["0.3", "30%", "30 %", ".3", "3e-1"])
def test_shares_can_be_spelled_in_many_ways(door: Door, share: str) -> None:
    """Guards that a share and a percentage are the same."""
    plain = door("fluid", "--glycol-mass", "0.30", "--json")
    assert door("fluid", "--glycol-mass", share, "--json") == plain


def test_what_is_not_known_is_null_with_its_reason(door: Door) -> None:
    """Guards that each null is explained, and nothing else is."""
    for arguments in (
        ("--glycol-mass", "0.2", "--at", "-40F"),
        ("--glycol-volume", "0.9"),
        ("--ethanol-mass", "0.2", "--at", "-60C"),
        ("--ethanol-mass", "0.8"),
        ("--at", "500C"),
        ("--at", "-273C"),
    ):
        found = door("fluid", *arguments, "--json").object()
        assert {key for key in KEYS if found[key] is None} == found["why_null"].keys()
        assert all(found["why_null"].values())


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("--at", "-20"), ("--at:", "with its unit", '"-20"')),
        (("--at=20",), ("--at:", '"20"')),
        (("--at", "nan"), ("--at:", "nan")),
        (("--at", "infC"), ("--at:",)),
        (("--at", "1e999C"), ("--at:",)),
        (("--at", "-500C"), ("--at:",)),
        (("--at", "--json"), ("--at:", '"--json"')),
        (("--at", ""), ("--at:",)),
        (("--at", "20 psi"), ("--at:",)),
        (("--glycol-mass", "30"), ("--glycol-mass:", "0 to 1", '"30"')),
        (("--glycol-mass", "-0.1"), ("--glycol-mass:",)),
        (("--glycol-mass", "nan"), ("--glycol-mass:",)),
        (("--ethanol-mass", "much"), ("--ethanol-mass:",)),
        (("--glycol-volume", "30 gal"), ("--glycol-volume:",)),
        (("--glycol-volume", 9999 * "3"), ("--glycol-volume:",)),
    ],
)
def test_a_wrong_quantity_is_one_line(
    door: Door, arguments: tuple[str, ...], words: tuple[str, ...]
) -> None:
    """Guards that the line names the option and what was expected."""
    door("fluid", *arguments, "--json").refused("WT-110", "expected", *words)


def test_two_kinds_at_once_are_refused(door: Door) -> None:
    """Guards that a blend, which has no published values, is not made up."""
    door("fluid", "--glycol-mass", "0.2", "--ethanol-mass", "0.2").refused("WT-140", "only one")


def test_the_table_says_the_same(door: Door) -> None:
    """Guards that people read what programs read."""
    arguments = ("fluid", "--glycol-mass", "0.30", "--at", "-20F")
    table, found = door(*arguments).out, door(*arguments, "--json").object()
    assert f"{found['freezing_point_degC']:.1f} °C" in table
    assert f"{found['burst_limit_degC']:.1f} °C" in table
    assert f"{100 * found['ice_fraction']:.0f} % of the mass" in table
    assert table.count("not known: frozen") == 2
    assert "nan" not in table
