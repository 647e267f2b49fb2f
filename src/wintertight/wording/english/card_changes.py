"""English: what is different between two cards of a coach."""

from collections.abc import Mapping
from types import MappingProxyType

CHANGES: Mapping[str, str] = MappingProxyType(
    {
        "added: compartment": "{part}: new on the card, a compartment.",
        "added: fitting": "{part}: new on the card ({kind}).",
        "added: line": "{part}: new on the card, a line.",
        "added: looked for": "{part}: looked for, and this coach has none.",
        "removed: compartment": "{part}: no longer on the card, a compartment.",
        "removed: fitting": "{part}: no longer on the card ({kind}).",
        "removed: line": "{part}: no longer on the card, a line.",
        "removed: looked for": "{part}: no longer said to be absent.",
        "given": "{part}: {field} is {after}; it was not given.",
        "changed": "{part}: {field} was {before}, is {after}.",
        "no longer given": "{part}: {field} was {before}, is no longer given.",
        "heading": "{coach}, then {other}: {count}.",
        "heading with earlier": "{coach}: {count} from the card replaced {day} ({why}).",
        "amended": "{file}: {count}. The card as it was stays in its history.",
        "amended anew": "{file}: {count}. The card was written anew, without its comments; as it"
        " was it stays in its history.",
        "amended nothing": "{file}: this is what the card says already; nothing was written.",
        "none": "no difference",
        "one": "1 difference",
        "many": "{count} differences",
    }
)

SUBJECTS: Mapping[str, str] = MappingProxyType(
    {"card": "card", "coach": "coach", "site": "site", "antifreeze": "antifreeze"}
)
"""What a field belongs to that is of no part."""

FIELDS: Mapping[str, str] = MappingProxyType(
    {
        "id": "number",
        "name": "name",
        "kind": "kind",
        "length": "length",
        "height": "height",
        "year": "model year",
        "floor_above_ground": "height of the floor",
        "vin": "vehicle number",
        "note": "note",
        "design_low_degC": "design low",
        "power": "mains power",
        "water": "water supply",
        "dump": "place to empty waste tanks",
        "product": "product",
        "heated": "heated",
        "closed": "closed in all round",
        "role": "what it is for",
        "seen": "seen",
        "at": "place",
        "at_within_m": "how well its place is known",
        "compartment": "compartment",
        "access": "access",
        "panel": "panel in front of it",
        "screws": "screws of the panel",
        "photo": "picture",
        "opening_s": "time to get at it",
        "volume": "volume",
        "flow": "flow",
        "cut_off": "cut-off pressure",
        "tank": "tank",
        "heat": "source of heat",
        "only": "its one side",
        "drains_to": "what it drains to",
        "positions": "positions of its handle",
        "makers_steps": "its maker's steps",
        "start": "one end",
        "end": "other end",
        "size": "size",
        "material": "material",
        "bore": "inside diameter",
        "bends": "bends",
        "start_height_m": "height of one end",
        "end_height_m": "height of the other end",
        "lowest_m": "lowest height",
        "highest_m": "highest height",
    }
)

WAYS: Mapping[str, str] = MappingProxyType(
    {
        "quantity": "{value} ({how}, within {spread})",
        "measured": "measured",
        "told": "told",
        "guessed": "guessed",
        "yes": "yes",
        "no": "no",
        "text": '"{text}"',
    }
)
"""How a value of a card is said."""
