"""Spanish: what is said of many coaches at once."""

from collections.abc import Mapping
from types import MappingProxyType

FLEET: Mapping[str, str] = MappingProxyType(
    {
        "coach": "Casa rodante",
        "antifreeze": "Anticongelante",
        "work": "Trabajo",
        "jugs": "Garrafas",
        "verdict": "Veredicto",
        "band": "{middle} (de {low} a {high})",
        "band in a row": "{middle} ({low}-{high})",
        "minutes in a row": "{middle} min ({low}-{high})",
        "jugs in a row": "{count}",
        "jugs and spare in a row": "{count} + {spare}",
        "safe": "protegida hasta {low}",
        "some": "{count} {what}",
        "how to read": (
            "Entre paréntesis: de 100 casas rodantes así, 5 llevan menos y 5 llevan más. Garrafas:"
            " para llevar, y para tener además."
        ),
        "in all": "En total ({count})",
        "all safe": (
            "con protección según el plan, una vez hechos todos los pasos; sin validez si corre"
            " agua"
        ),
        "all gap": "con una parte que reventaría",
        "all unproven": "con una parte sin comprobar, y ninguna que reventaría",
        "all failed": "sin plan: la ficha, o lo que pide, no se puede usar",
        "all antifreeze": "Anticongelante {volume}; trabajo {time}.",
        "separately": (
            "Eso, si lo que sobra de una garrafa pasa a la siguiente casa rodante; {jugs} si a cada"
            " una se le llevan las suyas."
        ),
        "progress": "Planificando casas rodantes",
    }
)
"""Columns and rows of a folder of cards, and what stands below them."""
