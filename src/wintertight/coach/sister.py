"""The card of a sister coach: another one of the same floor plan.

What is of the floor plan travels along: where things are, what joins them, how they are reached,
notes of parts, what is called what. Two coaches off one line still differ by what the plumber had
in hand that day, so a number measured on the one is not as good on the other (common practice):

- measured lengths, bores and what was learned to be in a line stay measured, with a spread of at
  least 5 %;
- anything else that was measured (tanks, pump, heights of the coach) becomes told, with at least
  the usual spread of what is told: tank, pump and wheels may be of another make.

Vehicle number, and the notes of the coach and of its site, belong to one coach and are dropped.
"""

from typing import Any, TypeVar

from pydantic import TypeAdapter, ValidationError

from wintertight.coach.card import Card, Id, Part, Text
from wintertight.coach.edit import changed
from wintertight.coach.kind_fields import APPLIANCES, HEATERS, TOILETS
from wintertight.coach.quantity import USUAL_SPREAD, Quantity
from wintertight.errors import CardError, Place

SISTER_SPREAD = 0.05
"""Least spread of a length of the floor plan that was measured on the sister [1]; common
practice."""

QUESTIONS: tuple[str, ...] = (
    "number",
    "vin",
    "year",
    "site",
    "design low",
    "product",
    "outside shower shut-off",
    "filters",
    "heater",
    "toilet",
    "appliances",
    "absent",
)
"""Every key that `what_differs` can give."""

_FLOOR_PLAN = frozenset({"length", "bore"})
_OF_A_LINE = _FLOOR_PLAN | {"volume"}

Table = TypeVar("Table", bound=Part)


def sister_card(card: Card, new_id: str, new_name: str | None = None) -> Card:
    """Give the card of another coach of the same floor plan.

    Args:
        card: the card of a coach that is known; its plumbing was checked.
        new_id: the shop's number of the other coach.
        new_name: what people call it; None leaves the name.

    Returns:
        The card. Its plumbing holds together as the first one's does: spreads only grow.

    Raises:
        CardError: the number is none, or is the first coach's; the name is empty or too long.
    """
    number = _read(Id, new_id, "id", "letters, figures, - and _, at most 64")
    if number == card.id:
        message = f"'{number}' is the number of the coach it is made from; expected another one"
        raise CardError(message, Place(field="id"))
    name = card.name
    if new_name is not None:
        name = _read(Text, new_name, "name", "a name of at most 400 signs")
    site = card.site
    return changed(
        card,
        id=number,
        name=name,
        coach=changed(_weaker(card.coach, _FLOOR_PLAN), vin=None, note=None),
        site=changed(site, note=None) if site is not None else None,
        fittings=tuple(_weaker(fitting, frozenset()) for fitting in card.fittings),
        lines=tuple(_weaker(line, _OF_A_LINE) for line in card.lines),
    )


def what_differs(card: Card) -> tuple[str, ...]:
    """Give what is to be asked of a sister coach before its card is trusted.

    Args:
        card: the card of either coach.

    Returns:
        Keys of `QUESTIONS`, in their order: what belongs to one coach, then what is often added or
        changed after the coach left its maker; of the fittings, what this floor plan has.
    """
    kinds = {fitting.kind for fitting in card.fittings if fitting.seen != "absent"}
    only_with = {
        "outside shower shut-off": frozenset({"outside shower"}),
        "heater": HEATERS,
        "toilet": TOILETS,
        "appliances": APPLIANCES,
    }
    return tuple(key for key in QUESTIONS if kinds & only_with.get(key, kinds))


def _weaker(table: Table, of_the_floor_plan: frozenset[str]) -> Table:
    """Give a table with what was measured on another coach told less surely."""
    return changed(
        table,
        **{
            name: _on_a_sister(value, floor_plan=name in of_the_floor_plan)
            for name in type(table).model_fields
            if isinstance(value := getattr(table, name), Quantity)
        },
    )


def _on_a_sister(quantity: Quantity, *, floor_plan: bool) -> Quantity:
    if quantity.how != "measured":
        return quantity
    if floor_plan:
        return Quantity(quantity.value, "measured", max(quantity.spread, SISTER_SPREAD))
    return Quantity(quantity.value, "told", max(quantity.spread, USUAL_SPREAD["told"]))


def _read(kind: Any, text: str, field: str, expected: str) -> str:
    try:
        return str(TypeAdapter(kind).validate_python(text))
    except ValidationError:
        message = f"expected {expected}"
        raise CardError(message, Place(field=field)) from None
