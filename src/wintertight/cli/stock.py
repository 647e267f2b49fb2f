"""Which antifreeze: the shop's list, and the product of it that a coach is filled with."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from importlib.resources import files
from pathlib import Path
from typing import TYPE_CHECKING

from wintertight.cli.asked import quantity
from wintertight.errors import ChoiceError, InputError, Place

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.coach.place import Place as WorkPlace
    from wintertight.coach.shop import Shop
    from wintertight.flow.air.supply import AirSupply
    from wintertight.fluids.product import Product

BESIDE = "shop.toml"
BUNDLED = "bundled example"
"""What the list is called that comes with the program."""
BY_OPTION = Place(field="--product")


def list_notes(list_file: str, language: str, *keys: str) -> list[str]:
    """Say where antifreeze or prices are from, where the list is the one that comes with us.

    Args:
        list_file: what `shop_list` calls the list.
        language: two letters.
        keys: "bundled list", "bundled prices".

    Returns:
        A sentence for each key; none where the shop gave a list of its own.
    """
    from wintertight.wording.catalogue import say

    return [say("written", key, language) for key in keys] if list_file == BUNDLED else []


def shop_list(named: str | None, card: str) -> tuple["Shop", str]:
    """Read the list that is named, else the one beside the card, else the bundled one.

    Args:
        named: file of the list, if one was named.
        card: file of the card.

    Returns:
        The list, and the file it came from or ``BUNDLED``.

    Raises:
        InputError: the list cannot be read.
    """
    from wintertight.coach.shop import load_shop, read_shop

    beside = Path(card).parent / BESIDE
    file = named if named is not None else str(beside) if beside.is_file() else None
    if file is not None:
        return load_shop(file), file
    bundled = files("wintertight").joinpath("demo", BESIDE)
    return read_shop(bundled.read_text("utf-8"), BUNDLED), BUNDLED


def air_of(shop: "Shop", regulator: str | None = None) -> "AirSupply":
    """Give the compressor of a shop, its regulator set as asked.

    Args:
        shop: whose it is; what its list leaves open is a small one's.
        regulator: what to set the regulator to, with its unit, if it was named.

    Returns:
        The supply.

    Raises:
        InputError: more than fittings stand, or no pressure.
        QuantityError: the pressure has no unit, or a wrong one.
    """
    from wintertight.flow.air.supply import AirSupply

    known = shop.compressor
    named = {
        "receiver_m3": known.receiver_m3,
        "delivery_m3_s": known.delivery_m3_s,
        "regulator_Pa": known.regulator_Pa,
    }
    place = Place(field="compressor.regulator")
    if regulator is not None:
        named["regulator_Pa"] = quantity(regulator, "--regulator", "pressure")
        place = Place(field="--regulator")
    try:
        return AirSupply(**{key: value for key, value in named.items() if value is not None})
    except InputError as error:
        raise InputError(error.message, place) from None


def place_named(shop: "Shop", named: str | None) -> "WorkPlace | None":
    """Find the place of work that is named; None where none is.

    Args:
        shop: whose places they are.
        named: name of one, or of a kind of place.

    Returns:
        The place.

    Raises:
        ChoiceError: there is no such place.
    """
    from wintertight.coach.shop import find_place

    if named is None:
        return None
    try:
        return find_place(shop, named)
    except ChoiceError as error:
        raise ChoiceError(error.message, Place(field="--place")) from None


def product_for(
    card: "Card", file: str, named: str | None, shop: "Shop", *, by: Place = BY_OPTION
) -> "Product":
    """Find the product that is named, else the card's.

    Args:
        card: the coach.
        file: the card's file, for the message.
        named: name of a product, if one was named.
        shop: who sells it.
        by: where the product was named, for the message.

    Returns:
        The product.

    Raises:
        ChoiceError: nobody names one, or the shop does not have it.
    """
    there = ", ".join(product.name for product in shop.products) or "none"
    if named is not None:
        place = by
    elif card.antifreeze is not None and card.antifreeze.product:
        named, place = card.antifreeze.product, Place(file, field="antifreeze.product")
    else:
        message = f"the card names no antifreeze; expected --product, one of: {there}"
        raise ChoiceError(message, Place(file, field="antifreeze.product"))
    return named_product(named, shop, place)


def named_product(named: str, shop: "Shop", place: Place = BY_OPTION) -> "Product":
    """Find a product.

    Args:
        named: its name.
        shop: who sells it.
        place: where it was named, for the message.

    Returns:
        The product.

    Raises:
        ChoiceError: the shop does not have it.
    """
    from wintertight.coach.shop import find_product

    try:
        return find_product(shop, named)
    except ChoiceError as error:
        raise ChoiceError(error.message, place) from None
