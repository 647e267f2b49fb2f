"""The shop's own list: its antifreeze, as labels print it, its places of work and its prices."""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from os import PathLike
from typing import Annotated, Literal, Self

from pydantic import AfterValidator, Field, StrictInt, ValidationError, model_validator

from wintertight.coach.card import Part, Text, card_error, nearest
from wintertight.coach.faults import Fault, card_fault, faults_of, gathered
from wintertight.coach.place import PLACE_KINDS, Place, WrittenPlace, usual_place
from wintertight.coach.prices import Prices, WrittenPrices, price_faults
from wintertight.coach.quantity import (
    CubicMetres,
    CubicMetresPerSecond,
    DegreesCelsius,
    Pascals,
    Share,
)
from wintertight.coach.read_toml import read_file, read_toml
from wintertight.errors import ChoiceError
from wintertight.fluids.product import Product

SCHEMA = "wintertight/shop/1"

MOST_IN_STOCK = 100_000
"""Most containers a shelf can hold [1]; more is a slip of the pen."""


@dataclass(frozen=True, slots=True)
class Compressor:
    """The shop's compressor; what is None is a small one's.

    Attributes:
        receiver_m3: volume of its tank [m3].
        delivery_m3_s: free air it delivers [m3/s].
        regulator_Pa: what its regulator is set to, above the atmosphere [Pa].
    """

    receiver_m3: float | None = None
    delivery_m3_s: float | None = None
    regulator_Pa: float | None = None


@dataclass(frozen=True, slots=True)
class Shop:
    """A shop, what it has to sell, and where it works.

    Attributes:
        name: what the shop is called.
        currency: three letters, as in ISO 4217.
        products: its antifreeze, in the order of the file.
        compressor: what it blows out with.
        places: where it works on coaches, in the order of the file.
        prices: what it takes for the work; None where the list has no price table.
    """

    name: str
    currency: str
    products: tuple[Product, ...]
    compressor: Compressor = Compressor()
    places: tuple[Place, ...] = ()
    prices: Prices | None = None


def load_shop(path: str | PathLike[str]) -> Shop:
    """Read a shop's list from a file.

    Args:
        path: the TOML file, UTF-8, at most 4 MB.

    Returns:
        The shop.

    Raises:
        UnreadableFile: missing, a folder, not UTF-8, too large or nested too deep.
        SyntaxFault: not TOML.
        QuantityError: a quantity lacks its unit or has a wrong one.
        CardError: a field is missing, unknown or wrong.
    """
    return read_shop(read_file(path), str(path))


def read_shop(text: str, name: str = "shop") -> Shop:
    """Read a shop's list from its text; errors as in `load_shop`."""
    document = read_toml(text, name)
    try:
        written = WrittenShop.model_validate(document.data)
    except ValidationError as error:
        faults = faults_of(error, WrittenShop)
        raise gathered(faults, name, document.lines, document.data) from None
    twice = [
        *_twice("product", [product.name for product in written.products]),
        *_twice("place", [place.name for place in written.places], str.lower),
        *(price_faults(written.prices, written.currency) if written.prices else ()),
    ]
    if twice:
        raise gathered(twice, name, document.lines, document.data)
    products = tuple(product.product() for product in written.products)
    places = tuple(place.place() for place in written.places)
    compressor = written.compressor.compressor()
    prices = written.prices.prices(written.currency) if written.prices else None
    return Shop(written.name, written.currency, products, compressor, places, prices)


def _twice(table: str, names: Sequence[str], alike: Callable[[str], str] = str) -> list[Fault]:
    """Give a fault for each thing that is called as one before it."""
    same = [alike(name) for name in names]
    return [
        card_fault(f"a second {table} is called '{name}'", table, place, "name")
        for place, name in enumerate(names)
        if same[place] in same[:place]
    ]


def find_product(shop: Shop, name: str) -> Product:
    """Find a product by its name.

    Args:
        shop: the shop.
        name: name of the product; small and capital letters are alike.

    Returns:
        The product.

    Raises:
        ChoiceError: the shop has no such product; the message gives the nearest names.
    """
    products = {product.name: product for product in shop.products}
    same = [product for known, product in products.items() if known.lower() == name.lower()]
    if name in products:
        return products[name]
    if len(same) == 1:
        return same[0]
    hint = nearest(name, products) or f"; it has {', '.join(products) or 'none'}"
    message = f"{shop.name} has no product called '{name}'{hint}"
    raise ChoiceError(message)


def find_place(shop: Shop, name: str) -> Place:
    """Find a place of work by its name, or give the usual one of a kind.

    Args:
        shop: the shop.
        name: name of the place; small and capital letters are alike. Where the shop has no place
            of that name, "bay", "lot", "yard" and "driveway" give a place as such places usually
            are.

    Returns:
        The place.

    Raises:
        ChoiceError: the shop has no such place; the message gives the nearest names.
    """
    places = {place.name.lower(): place for place in shop.places}
    wanted = name.strip().lower()
    if wanted in places:
        return places[wanted]
    kind = next((kind for kind in PLACE_KINDS if kind == wanted), None)
    if kind is not None:
        return usual_place(kind)
    known = dict.fromkeys([*(place.name for place in shop.places), *PLACE_KINDS], True)
    hint = nearest(name, known) or f"; expected one of {', '.join(known)}"
    message = f"{shop.name} has no place called '{name}'{hint}"
    raise ChoiceError(message)


def _money(text: str) -> str:
    if not re.fullmatch(r"[0-9]{1,6}(\.[0-9]{1,2})?", text):
        message = f"expected an amount in quotes, such as \"4.25\", not '{text}'"
        raise card_error(message)
    return text


def _three_letters(text: str) -> str:
    if not re.fullmatch(r"[A-Z]{3}", text):
        message = f"expected three capital letters, such as USD, not '{text}'"
        raise card_error(message)
    return text


Price = Annotated[str, AfterValidator(_money)]
Count = Annotated[StrictInt, Field(ge=0, le=MOST_IN_STOCK)]
Currency = Annotated[str, AfterValidator(_three_letters)]


class WrittenProduct(Part):
    """A product as the list writes it; what is not printed on its label is left out."""

    name: Text = Field(description="what the shop calls it")
    glycol: Share | None = Field(default=None, description="propylene glycol by volume")
    ethanol: Share | None = Field(default=None, description="ethanol by volume")
    burst_rating: DegreesCelsius | None = Field(default=None, description="printed burst rating")
    freeze_rating: DegreesCelsius | None = Field(default=None, description="printed freeze rating")
    container: CubicMetres = Field(description="content of one container")
    price: Price | None = Field(default=None, description='price of one container, "4.25"')
    stock: Count | None = Field(default=None, description="containers on the shelf")

    @model_validator(mode="after")
    def _shares_fit(self) -> Self:
        if (self.glycol or 0.0) + (self.ethanol or 0.0) > 1.0:
            message = "glycol and ethanol together are more than the whole"
            raise card_error(message, "ethanol")
        return self

    def product(self) -> Product:
        """Give the product it describes."""
        return Product(
            name=self.name,
            glycol=self.glycol,
            ethanol=self.ethanol,
            burst_rating_degC=self.burst_rating,
            freeze_rating_degC=self.freeze_rating,
            container_m3=self.container,
            price=None if self.price is None else Decimal(self.price),
            stock=self.stock,
        )


class WrittenCompressor(Part):
    """A compressor as the list writes it."""

    receiver: CubicMetres | None = Field(default=None, description="volume of its tank")
    delivery: CubicMetresPerSecond | None = Field(default=None, description="free air it delivers")
    regulator: Pascals | None = Field(default=None, description="what its regulator is set to")

    def compressor(self) -> Compressor:
        """Give the compressor it describes."""
        return Compressor(self.receiver, self.delivery, self.regulator)


class WrittenShop(Part):
    """A shop's list as the file writes it."""

    format: Literal["wintertight/shop/1"] = Field(alias="schema", description="this format")
    name: Text = Field(description="what the shop is called")
    currency: Currency = Field(description="three letters of ISO 4217")
    products: tuple[WrittenProduct, ...] = Field(
        default=(), alias="product", description="the products"
    )
    compressor: WrittenCompressor = Field(
        default=WrittenCompressor(), description="what the shop blows out with"
    )
    places: tuple[WrittenPlace, ...] = Field(
        default=(), alias="place", description="the places where coaches are worked on"
    )
    prices: WrittenPrices | None = Field(default=None, description="what the shop takes")
