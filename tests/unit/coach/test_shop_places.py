"""The shop's places of work and its compressor, as its list writes them."""

from pathlib import Path

import pytest

from wintertight.coach.place import PLACE_KINDS, usual_place
from wintertight.coach.shop import Compressor, find_place, load_shop, read_shop
from wintertight.errors import ChoiceError, InputError
from wintertight.units import FOOT_M, GALLON_M3, INCH_M, PSI_PA

FILE = Path(__file__).parents[3] / "src/wintertight/demo/shop.toml"
TEXT = FILE.read_text("utf-8")
SHOP = load_shop(FILE)
HEAD = 'schema = "wintertight/shop/1"\nname = "x"\ncurrency = "USD"\n'
PLACE = '[[place]]\nname = "a"\nkind = "bay"\n'


def test_places_read_as_written() -> None:
    """Guards units, signs, and that what is left out is as usual and marked so."""
    bay, yard = SHOP.places
    assert bay.door_height_m == pytest.approx(13.0 * FOOT_M + 6.0 * INCH_M)
    assert (bay.slope_along, bay.slope_across) == (0.0, -0.015)
    assert (yard.power, yard.compressor) == ("generator", True)
    assert (yard.slope_along, yard.slope_across) == (None, None)
    assert {"water", "dump"} <= yard.assumed
    assert not {"power", "compressor"} & yard.assumed
    assert yard.water is usual_place("yard").water


def test_a_place_is_found_by_its_name_or_kind() -> None:
    """Guards that capitals do not matter, and that a kind gives a usual place."""
    assert find_place(SHOP, "HERON lake bay 2") is SHOP.places[0]
    for kind in PLACE_KINDS:
        assert find_place(SHOP, kind) == usual_place(kind)
    with pytest.raises(ChoiceError, match="no place called 'attic'"):
        find_place(SHOP, "attic")


def test_the_compressor_reads_as_written() -> None:
    """Guards units, and that what is left out stays open."""
    found = SHOP.compressor
    assert found.receiver_m3 == pytest.approx(20.0 * GALLON_M3)
    assert found.delivery_m3_s == pytest.approx(5.0 * FOOT_M**3 / 60.0)
    assert found.regulator_Pa == pytest.approx(40.0 * PSI_PA)
    assert read_shop(HEAD).compressor == Compressor()


@pytest.mark.parametrize(
    ("text", "code", "field", "says"),
    [
        (PLACE.replace("bay", "moon"), "WT-120", "place[1].kind", "bay"),
        (PLACE.replace('name = "a"\n', ""), "WT-120", "place[1].name", "missing"),
        (PLACE + PLACE.replace('"a"', '"A"'), "WT-120", "place[2].name", "a second place"),
        (PLACE + 'power = "sun"\n', "WT-120", "place[1].power", "mains"),
        (PLACE + 'water = "yes"\n', "WT-120", "place[1].water", "true or false"),
        (PLACE + 'slope_along = "40 %"\n', "WT-110", "place[1].slope_along", "15%"),
        (PLACE + 'slope_along = "2"\n', "WT-110", "place[1].slope_along", "slope"),
        (PLACE + 'door_height = "13"\n', "WT-110", "place[1].door_height", "unit"),
        (PLACE + "indoors = false\nheated = true\n", "WT-120", "place[1].heated", "indoors"),
        (PLACE + "windows = 3\n", "WT-120", "place[1].windows", "windows"),
        ('[compressor]\nreceiver = "6"\n', "WT-110", "compressor.receiver", "unit"),
        ('[compressor]\nregulator = "0 psi"\n', "WT-110", "compressor.regulator", "above zero"),
        ('[compressor]\npower = "2 hp"\n', "WT-120", "compressor.power", "power"),
    ],
)
def test_bad_places_and_compressors_are_one_line(
    text: str, code: str, field: str, says: str
) -> None:
    """Guards the words, the code and the field of each fault."""
    with pytest.raises(InputError) as caught:
        read_shop(HEAD + text, "shop.toml")
    line = str(caught.value)
    assert "\n" not in line
    assert line.startswith(f"{code} shop.toml")
    assert field in line
    assert says in line
