from decimal import Decimal
from pathlib import Path

import pytest

from wintertight.coach.shop import find_product, load_shop, read_shop
from wintertight.errors import ChoiceError, InputError

FILE = Path(__file__).parents[3] / "src/wintertight/demo/shop.toml"
TEXT = FILE.read_text("utf-8")
SHOP = load_shop(FILE)


def test_the_list_reads_as_written() -> None:
    """Guards units, and that what the label does not print stays unknown."""
    pink, _, thrift, spirit = SHOP.products
    assert (SHOP.name, SHOP.currency) == ("Heron Lake Coach Care", "USD")
    assert pink.glycol == pytest.approx(0.35)
    assert pink.burst_rating_degC == pytest.approx((-50 - 32) / 1.8)
    assert pink.container_m3 == pytest.approx(231 * 0.0254**3)
    assert pink.price == Decimal("4.25")
    assert (pink.ethanol, pink.freeze_rating_degC) == (None, None)
    assert (thrift.glycol, thrift.ethanol) == (None, None)
    assert spirit.ethanol == pytest.approx(0.28)


def test_a_product_is_found_by_its_name() -> None:
    """Guards that capitals do not matter, and that the nearest name is offered."""
    assert find_product(SHOP, "heron PINK -50") is SHOP.products[0]
    with pytest.raises(ChoiceError, match="did you mean 'Heron blue -100'"):
        find_product(SHOP, "Heron blue 100")
    with pytest.raises(ChoiceError, match="it has Heron pink -50, Heron blue -100"):
        find_product(SHOP, "xyz")


@pytest.mark.parametrize(("written", "stock"), [("", None), ("stock = 0", 0), ("stock = 7", 7)])
def test_the_shelf_is_counted_or_not(written: str, stock: int | None) -> None:
    """Guards that no count is unknown, and not none."""
    shop = read_shop(TEXT.replace('"4.25"', f'"4.25"\n{written}', 1))
    assert shop.products[0].stock == stock


@pytest.mark.parametrize(
    ("old", "new", "code", "field", "says"),
    [
        ('"USD"', '"dollars"', "WT-120", "currency", "three capital letters"),
        ('"4.25"', "4.25", "WT-120", "product[1].price", "text in quotes"),
        ('"4.25"', '"-4.25"', "WT-120", "product[1].price", "an amount in quotes"),
        ('"4.25"', '"4.257"', "WT-120", "product[1].price", "an amount in quotes"),
        ('"35 %"', '"135 %"', "WT-110", "product[1].glycol", "a share from 0 to 1"),
        ('"35 %"', '"35 %"\nethanol = "70 %"', "WT-120", "product[1].ethanol", "the whole"),
        ('"1 gal"', '"0 gal"', "WT-110", "product[1].container", "above zero"),
        ('container = "1 gal"\n', "", "WT-120", "product[1].container", "missing"),
        ("burst_rating", "brust_rating", "WT-120", "product[1].brust_rating", "burst_rating"),
        ("Heron blue -100", "Heron pink -50", "WT-120", "product[2].name", "a second product"),
        ('"4.25"', '"4.25"\nstock = -1', "WT-120", "product[1].stock", "at least 0, not -1"),
        ('"4.25"', '"4.25"\nstock = "3"', "WT-120", "product[1].stock", "a whole number"),
        ('"4.25"', '"4.25"\nstock = 2.5', "WT-120", "product[1].stock", "a whole number"),
        ('"4.25"', '"4.25"\nstock = true', "WT-120", "product[1].stock", "a whole number"),
        ('"4.25"', '"4.25"\nstock = 100001', "WT-120", "product[1].stock", "at most 100000"),
        ("shop/1", "shop/2", "WT-120", "schema", "expected 'wintertight/shop/1'"),
    ],
)
def test_a_bad_list_is_one_line(old: str, new: str, code: str, field: str, says: str) -> None:
    """Guards code, field and words of the error for each kind of bad list."""
    with pytest.raises(InputError) as caught:
        read_shop(TEXT.replace(old, new, 1), "shop.toml")
    text = str(caught.value)
    assert text.startswith(f"{code} shop.toml:{caught.value.place.line} {field}: ")
    assert says in text
    assert len(text.splitlines()) == 1
