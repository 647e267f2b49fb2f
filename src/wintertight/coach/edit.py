"""A card edited after somebody has looked: what is not on this coach is taken off."""

from collections import Counter
from typing import Any, TypeVar

from pydantic import BaseModel

from wintertight.coach.card import Card, Fitting, Line
from wintertight.coach.joints import ALIKE
from wintertight.coach.plumbing import plumbing_faults

Model = TypeVar("Model", bound=BaseModel)

SOURCES = frozenset({"demand pump", "fresh tank", "city inlet", "tank heater", "on-demand heater"})
"""Kinds that a coach is not thinkable without once its card has them: they are never taken off on
a technician's word alone."""


def changed(model: Model, **changes: Any) -> Model:
    """Give a frozen model with some fields changed, and nothing remembered of what it was.

    Args:
        model: a card, or a part of one.
        changes: new values by the names of the fields; they are not checked.

    Returns:
        The changed copy.
    """
    fields = {name: getattr(model, name) for name in type(model).model_fields}
    return type(model).model_construct(**{**fields, **changes})


def without_fitting(card: Card, name: str) -> Card | None:
    """Give a card without one fitting, and without the branch that led to nothing else.

    Args:
        card: the card; its plumbing was checked.
        name: id of the fitting.

    Returns:
        The card with the fitting absent, its lines gone with whatever they passed on the way to
        it, and what drained into it draining on; None where the coach would not hold together, as
        with a fitting that others are fed through.
    """
    fitting = card.fitting.get(name)
    if fitting is None or fitting.kind in SOURCES or fitting.seen != "present":
        return None
    gone = {name}
    lines = [line for line in card.lines if name not in _ends(line)]
    while True:
        joined = Counter(end for line in lines for end in _ends(line))
        left = {
            f.id
            for f in card.fittings
            if f.id not in gone and _passes_on(f) and joined[f.id] == 1 and _was(card, f.id) > 1
        }
        if not left:
            break
        gone |= left
        lines = [line for line in lines if not left & set(_ends(line))]
    below = {f.id: f.drains_to for f in card.fittings if f.id in gone}
    fittings = tuple(_edited(f, gone, below) for f in card.fittings)
    edited = changed(card, fittings=fittings, lines=tuple(lines))
    return None if plumbing_faults(edited) else edited


def _edited(fitting: Fitting, gone: set[str], below: dict[str, str | None]) -> Fitting:
    if fitting.id in gone:
        return changed(fitting, seen="absent", drains_to=None)
    if fitting.drains_to in gone:
        return changed(fitting, drains_to=below[fitting.drains_to])
    return fitting


def _passes_on(fitting: Fitting) -> bool:
    """Tell whether a fitting is only a way to others: a tee, or a valve with two like sides."""
    return fitting.kind == "tee" or fitting.ports == ALIKE


def _was(card: Card, name: str) -> int:
    return sum(name in _ends(line) for line in card.lines)


def _ends(line: Line) -> tuple[str, str]:
    return line.start.fitting, line.end.fitting
