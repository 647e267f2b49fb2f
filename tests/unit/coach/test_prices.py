"""The price table of a shop's list: what it says, and each way in which it can be wrong."""

from decimal import Decimal
from pathlib import Path

import pytest

from wintertight.coach.shop import load_shop, read_shop
from wintertight.errors import InputError
from wintertight.units import FOOT_M, GALLON_M3

FILE = Path(__file__).parents[3] / "src/wintertight/demo/shop.toml"
TEXT = FILE.read_text("utf-8")


def test_the_table_reads_as_written() -> None:
    """Guards amounts as decimals, limits in SI, rates as shares, and what was left out."""
    prices = load_shop(FILE).prices
    assert prices is not None
    assert (prices.currency, prices.decimals, prices.rounding) == ("USD", 2, "half-up")
    assert (prices.valid_days, prices.approval_limit) == (30, Decimal("400.00"))
    small = next(t for t in prices.tiers if t.name.startswith("Small"))
    assert small.price == Decimal("119.00")
    assert small.length_up_to_m == pytest.approx(20 * FOOT_M)
    assert (small.outlets_up_to, small.kinds, small.methods) == (16, (), ())
    assert small.included_m3 == pytest.approx(2 * GALLON_M3)
    assert prices.tiers[-1].length_up_to_m is None
    assert prices.further is not None
    assert (prices.further.per, prices.further.price) == ("container", Decimal("6.50"))
    state, county = prices.taxes
    assert (state.rate, state.on) == (Decimal("0.06"), ("material",))
    assert (county.rate, county.on) == (Decimal("0.0125"), ("labour", "material"))
    optional = {extra.name for extra in prices.extras if extra.optional}
    assert "Ice maker" in optional
    assert "Dishwasher" not in optional


def test_a_list_without_prices_is_a_list() -> None:
    """Guards that a shop need not write down what it takes."""
    assert read_shop(TEXT.partition("[prices]")[0]).prices is None


COMPOUND = 'rate = "1.25 %"\non = ["labour"]\ncompound = true'


@pytest.mark.parametrize(
    ("old", "new", "field", "says"),
    [
        ('"USD"', '"QQQ"', "currency", "no currency of ISO 4217"),
        ('price = "119.00"', "price = 119.00", "prices.tier[3].price", "an amount in quotes"),
        ('price = "119.00"', 'price = "-1.00"', "prices.tier[3].price", "an amount in quotes"),
        ('price = "119.00"', 'price = "1e3"', "prices.tier[3].price", "an amount in quotes"),
        ('price = "119.00"', 'price = "1.005"', "prices.tier[3].price", "at most 2 digits"),
        ('price = "18.00"', 'price = "18.001"', "prices.extra[3].price", "at most 2 digits"),
        ('"400.00"', '"400.001"', "prices.approval_limit", "at most 2 digits"),
        ("Large coach", "Small coach, up to 20 ft", "prices.tier[5].name", "a second tier"),
        ('name = "Ice maker"', 'name = "dishwasher"', "prices.extra[3].name", "a second extra"),
        ('rate = "6 %"', 'rate = "6"', "prices.tax[1].rate", "up to 100 %"),
        ('rate = "6 %"', "rate = 0.06", "prices.tax[1].rate", "up to 100 %"),
        ('rate = "6 %"', 'rate = "160 %"', "prices.tax[1].rate", "up to 100 %"),
        ('on = ["material"]', "on = []", "prices.tax[1].on", "at least 1"),
        ('on = ["material"]', 'on = ["time"]', "prices.tax[1].on[1]", "'labour' or 'material'"),
        ('"half-up"', '"up"', "prices.rounding", "'half-even' or 'half-up'"),
        ("valid_days = 30", "valid_days = 0", "prices.valid_days", "at least 1"),
        ("valid_days = 30", 'valid_days = "30"', "prices.valid_days", "a whole number"),
        ("valid_days = 30\n", "", "prices.valid_days", "missing"),
        ('fitting = "ice maker"', 'fitting = "ice makr"', "prices.extra[3].fitting", "ice maker"),
        ('methods = ["thaw"]', 'methods = ["Thaw!"]', "prices.tier[1].methods[1]", "a method"),
        ('length_up_to = "20 ft"', "length_up_to = 20", "prices.tier[3].length_up_to", "unit"),
        ('per = "container"\nprice = "6.50"', 'per = "gallon"', "prices.further", "missing"),
        ('per = "container"', 'per = "barrel"', "prices.further.per", "'gallon' or 'container'"),
        ("optional = true", "optional = 1", "prices.extra[3].optional", "true or false"),
        ("approval_limit", "aproval_limit", "prices.aproval_limit", "approval_limit"),
    ],
)
def test_a_wrong_price_table_is_one_line(old: str, new: str, field: str, says: str) -> None:
    """Guards file, line, field and words of the error for each kind of wrong table."""
    assert old in TEXT
    with pytest.raises(InputError) as caught:
        read_shop(TEXT.replace(old, new, 1), "shop.toml")
    error = caught.value
    assert str(error).startswith(f"{error.code} shop.toml:{error.place.line} {field}"), str(error)
    assert says in str(error)
    assert len(str(error).splitlines()) == 1


def test_a_compound_tax_on_half_of_another_is_refused() -> None:
    """Guards that no tax is taken on a part of another tax that nobody could work out by hand."""
    text = TEXT.replace('on = ["material"]', 'on = ["labour", "material"]')
    with pytest.raises(InputError, match="on all that 'State sales tax' is on"):
        read_shop(text.replace('rate = "1.25 %"', COMPOUND))
    assert read_shop(text.replace('rate = "1.25 %"', COMPOUND.replace('on = ["labour"]\n', "")))


def test_a_table_without_a_tier_is_refused() -> None:
    """Guards that a table which takes no coach is no table."""
    text = TEXT.partition("[prices]")[0] + '[prices]\nrounding = "half-up"\nvalid_days = 30\n'
    with pytest.raises(InputError, match="'tier' is missing"):
        read_shop(text)
