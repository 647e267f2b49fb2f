"""What a part of a coach is called: by its name on the card, else by its kind."""

import re

from wintertight.coach.card import Card, Fitting
from wintertight.wording.catalogue import catalogue, say

_SIDES = frozenset({"hot", "cold"})
_INSIDE = {"sump": "sump", "jets": "jets", "mould": "mould", "tank": "inside"}
"""What is inside a fitting and holds water of its own, and how it is named."""

_ANY = "any "
"""In front of a kind nobody has looked for, in the ids of proofs."""


def part_name(card: Card, part: str, language: str = "en") -> str:
    """Give what a part, a control or an outlet is called.

    Args:
        card: the coach's card.
        part: id of a line or fitting, "fitting.side" or "fitting/thing".
        language: two letters.

    Returns:
        The fitting's name on the card; else what its kind is called, with its id where there are
        several of that kind. A line is called by its id.
    """
    if part.startswith(_ANY):
        kind = kind_name(part.removeprefix(_ANY), language)
        return say("name", "any", language, part=kind)
    bare, _, side = part.partition("/")[0].partition(".")
    fitting = card.fitting.get(bare)
    if fitting is None:
        return _line_name(bare, language)
    name = _fitting_name(card, fitting, language)
    inside = part.partition("/")[2]
    if inside in _INSIDE:
        return say("name", _INSIDE[inside], language, part=name)
    if side in _SIDES:
        return say("name", side, language, part=name)
    return name


def kind_name(kind: str, language: str = "en") -> str:
    """Give what a kind of fitting is called, or "line"."""
    return say("kind", kind, language)


def _fitting_name(card: Card, fitting: Fitting, language: str) -> str:
    if fitting.name:
        return fitting.name
    called = _called(fitting, language)
    like = [f for f in card.fittings if not f.name and _called(f, language) == called]
    if len(like) == 1:
        return called
    return say("name", "one of several", language, part=called, id=_readable(fitting.id))


def _called(fitting: Fitting, language: str) -> str:
    if fitting.role in catalogue(language)["role"]:
        return say("role", str(fitting.role), language)
    return kind_name(fitting.kind, language)


def _line_name(line: str, language: str) -> str:
    name = _readable(line)
    if re.search(r"[^\W\d_]{3}", name):
        return name
    return say("name", "line", language, id=name)


def _readable(name: str) -> str:
    return name.replace("-", " ").replace("_", " ")
