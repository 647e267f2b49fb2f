"""Records of earlier visits, read and proven for what they teach."""

# ruff: noqa: PLC0415 - heavy layers load only with their command, so that help stays quick

from collections.abc import Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from wintertight.coach.card import Card
    from wintertight.fluids.product import Product
    from wintertight.procedure.as_done import AsDone


def earlier_visits(
    card: "Card", files: Sequence[str] | None, product: "Product", low_degC: float
) -> "list[AsDone]":
    """Prove the records of earlier visits.

    Args:
        card: the coach's card.
        files: the records; none where None.
        product: what the coach was filled with.
        low_degC: design low [degC].

    Returns:
        What each proves, in order.

    Raises:
        InputError: a record cannot be read, or is of another card.
    """
    from wintertight.procedure.as_done import prove_record
    from wintertight.procedure.record import load_record

    return [prove_record(card, load_record(file), product, low_degC, file) for file in files or ()]
