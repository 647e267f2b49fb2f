"""The anode rods of a coach, for a screen and for programs."""

from typing import Any

from wintertight.coach.card import Card
from wintertight.documents.plan_json import band_object
from wintertight.documents.screen_blocks import joined, wrapped
from wintertight.procedure.wear import Anode, RodReading, Wear, prior_rate
from wintertight.wording.catalogue import say
from wintertight.wording.names import part_name
from wintertight.wording.wear import (
    anode_text,
    assumed_text,
    looks_text,
    no_anode_text,
    wear_heading,
)

Plain = dict[str, Any]


def wear_object(wear: Wear, card: Card, language: str = "en") -> Plain:
    """Give the anodes as plain data, ready for `json.dumps`.

    Args:
        wear: the anodes.
        card: the coach's card.
        language: two letters; only texts depend on it.

    Returns:
        The object without its schema.
    """
    values: Plain = {
        "card_hash": card.card_hash,
        "coach": {"id": card.id, "name": card.name},
        "on": None if wear.on is None else wear.on.isoformat(),
        "anodes": [_anode(anode, card, language) for anode in wear.anodes],
        "without_anode": [
            {"part": part or None, "why": key, "text": no_anode_text(part, key, card, language)}
            for part, key in wear.without
            if part
        ],
        "assumed": {"share_a_season": band_object(prior_rate()), "text": assumed_text(language)},
        "text": " ".join(_sentences(wear, card, language)),
    }
    if wear.on is None:
        values["why_null"] = {"on": say("wear", "no day", language)}
    return values


def _anode(anode: Anode, card: Card, language: str) -> Plain:
    values: Plain = {
        "part": anode.part,
        "name": part_name(card, anode.part, language),
        "readings": [_reading(reading) for reading in anode.readings],
        "share_now": None if anode.share_now is None else band_object(anode.share_now),
        "seasons_left": None if anode.seasons_left is None else band_object(anode.seasons_left),
        "half_before_next_autumn": anode.chance,
        "replace": anode.replace,
        "text": anode_text(anode, card, language),
    }
    if anode.share_now is None:
        why = say("wear", "contradiction" if anode.readings else "nothing known", language)
        values["why_null"] = {k: why for k, value in values.items() if value is None}
    return values


def _reading(reading: RodReading) -> Plain:
    return {
        "date": reading.on.isoformat(),
        "share": float(reading.share),
        "sd": float(reading.sd),
        "new_rod": reading.new,
    }


def _sentences(wear: Wear, card: Card, language: str) -> list[str]:
    return [
        *(anode_text(anode, card, language) for anode in wear.anodes),
        *(no_anode_text(part, key, card, language) for part, key in wear.without),
    ]


def wear_screen(wear: Wear, card: Card, language: str = "en") -> str:
    """Give the anodes as text.

    Args:
        wear: the anodes.
        card: the coach's card.
        language: two letters.

    Returns:
        A heading and a paragraph a heater, with a line feed at the end.
    """
    blocks = [[wrapped(wear_heading(wear, card, language))]]
    for anode in wear.anodes:
        looks = [wrapped(looks_text(anode.readings, language), "     ")] if anode.readings else []
        blocks.append([wrapped(anode_text(anode, card, language)), *looks])
    blocks += [[wrapped(no_anode_text(part, key, card, language))] for part, key in wear.without]
    if wear.anodes:
        blocks.append([wrapped(assumed_text(language))])
    return joined(blocks)
