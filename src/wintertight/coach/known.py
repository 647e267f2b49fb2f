"""A card that was made anew keeps what somebody already knew of the coach."""

from typing import TypeVar

from wintertight.coach.card import HOW_TO_REACH, Card, Fitting, Line, Part
from wintertight.coach.edit import changed
from wintertight.coach.plumbing import plumbing_faults
from wintertight.coach.quantity import Quantity

Table = TypeVar("Table", bound=Part)

_SAID_BY_PEOPLE = ("name", "note", "access", "makers_steps", *HOW_TO_REACH)
_OF_THE_TUBE = ("volume", "bore")


def with_known(fresh: Card, known: Card) -> Card:
    """Give a card that was made anew, with what an earlier one knew better.

    A quantity is taken over where the fresh one is missing or guessed and the known one was
    measured or told, or was guessed more narrowly. Names, notes, how one gets at a part and a
    maker's own steps are taken over wherever the known card has them. A fitting is the same if its
    id and its kind are; a line, if its id and the fittings at its ends are, and what it holds only
    if size and material are the same too. Where it runs, what joins what, and what was seen are the
    fresh card's.

    Args:
        fresh: the card made anew; its plumbing was checked.
        known: the earlier card.

    Returns:
        The card; its plumbing holds together. A known length that no longer spans its ends, because
        something was moved, is left out.
    """
    coach = _better(fresh.coach, known.coach, ("vin", "note"))
    fittings = tuple(_fitting(fitting, known) for fitting in fresh.fittings)
    lines = tuple(_line(line, known) for line in fresh.lines)
    rooms = tuple(
        _better(room, known.compartment[room.id], ("name", "note"))
        if room.id in known.compartment
        else room
        for room in fresh.compartments
    )
    card = changed(fresh, coach=coach, compartments=rooms, fittings=fittings, lines=lines)
    wrong = {fault.path[1] for fault in plumbing_faults(card) if fault.path[:1] == ("line",)}
    if not wrong:
        return card
    kept = [
        changed(line, length=fresh.lines[place].length) if place in wrong else line
        for place, line in enumerate(lines)
    ]
    return changed(card, lines=tuple(kept))


def _fitting(fitting: Fitting, known: Card) -> Fitting:
    same = known.fitting.get(fitting.id)
    if same is None or same.kind != fitting.kind:
        return fitting
    return _better(fitting, same, _SAID_BY_PEOPLE)


def _line(line: Line, known: Card) -> Line:
    same = known.line.get(line.id)
    if same is None or _ends(same) != _ends(line):
        return line
    better = _better(line, same, _SAID_BY_PEOPLE)
    if (same.size, same.material) == (line.size, line.material):
        return better
    return changed(better, **{name: getattr(line, name) for name in _OF_THE_TUBE})


def _ends(line: Line) -> frozenset[str]:
    return frozenset({line.start.fitting, line.end.fitting})


def _better(fresh: Table, known: Table, said: tuple[str, ...]) -> Table:
    """Give a table with the quantities the other knows better, and what people said of it."""
    taken: dict[str, object] = {}
    for name in type(fresh).model_fields:
        old, new = getattr(known, name), getattr(fresh, name)
        if (isinstance(old, Quantity) and _knows_better(old, new)) or (name in said and old):
            taken[name] = old
    return changed(fresh, **taken)


def _knows_better(old: Quantity, new: Quantity | None) -> bool:
    if new is None:
        return True
    return new.how == "guessed" and (old.how != "guessed" or old.spread < new.spread)
