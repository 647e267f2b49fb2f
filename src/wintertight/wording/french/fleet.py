"""French: what is said of many coaches at once."""

from collections.abc import Mapping
from types import MappingProxyType

FLEET: Mapping[str, str] = MappingProxyType(
    {
        "coach": "Véhicule",
        "antifreeze": "Antigel",
        "work": "Travail",
        "jugs": "Bidons",
        "verdict": "Verdict",
        "band": "{middle} ({low} à {high})",
        "band in a row": "{middle} ({low}-{high})",
        "minutes in a row": "{middle} min ({low}-{high})",
        "jugs in a row": "{count}",
        "jugs and spare in a row": "{count} + {spare}",
        "safe": "protégé jusqu'à {low}",
        "some": "{what} : {count}",
        "how to read": (
            "Entre parenthèses : 5 de ces véhicules sur 100 prennent moins, 5 prennent plus. Bidons"
            " : à apporter + en réserve."
        ),
        "in all": "En tout ({count})",
        "all safe": (
            "protection comme prévu, toutes étapes faites ; sans valeur dès que l'eau coule"
        ),
        "all gap": "avec un élément que le gel ferait éclater",
        "all unproven": "avec un élément sans preuve, et aucun que le gel ferait éclater",
        "all failed": "sans plan : la fiche, ou ce qu'elle demande, est inutilisable",
        "all antifreeze": "Antigel {volume} ; travail {time}.",
        "separately": (
            "À condition que le reste d'un bidon serve au véhicule suivant ; {jugs} si chaque"
            " véhicule a les siens."
        ),
        "progress": "Plans des véhicules",
    }
)
"""Columns and rows of a folder of cards, and what stands below them."""
