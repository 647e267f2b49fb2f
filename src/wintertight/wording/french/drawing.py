"""French: titles, legends and labels of drawings."""

from collections.abc import Mapping
from types import MappingProxyType

DRAWING: Mapping[str, str] = MappingProxyType(
    {
        "whole coach": "Schéma des conduites : {coach}",
        "whole coach words": (
            "Conduites et pièces vues du côté trottoir, l'avant à gauche, avec ces noms : {parts}."
        ),
        "pattern cold": "froid",
        "pattern hot": "chaud",
        "pattern neither": "chaud et froid, ou ni l'un ni l'autre",
        "pattern antifreeze": "antigel",
        "pattern mixed": "dilué",
        "pattern water": "eau",
        "pattern air": "vide",
        "pattern unproven": "sans preuve",
        "pattern gap": "éclaterait",
        "stands": "{part} :\n{setting}",
        "then back": "{setting}, puis {back}",
        "stands along": "DANS L'AXE du tuyau",
        "stands across": "EN TRAVERS du tuyau",
        "seen isometric": "Vu du côté trottoir, l'avant à gauche.",
        "seen plan": "Vu d'en haut, l'avant à gauche.",
        "seen side": "Vu du côté trottoir, à l'horizontale, l'avant à gauche.",
        "pictures": "Schémas",
        "step": "Étape {n} : {text}",
        "front at": "Étape {n} : où est l'antigel quand la couleur se montre à : {part}",
        "colour here": "couleur ici",
        "end": "Comment cela finit : {coach}",
        "claimed": "{part} : {claim}",
        "claim filled": "antigel",
        "claim drained": "vidange",
        "claim swept": "soufflage",
        "claim kept warm": "au chaud",
        "claim removed": "hors du véhicule",
        "front": "avant",
        "rear": "arrière",
    }
)
