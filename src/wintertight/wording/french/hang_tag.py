"""French: the tag that hangs at the main tap."""

from collections.abc import Mapping
from types import MappingProxyType

TAG: Mapping[str, str] = MappingProxyType(
    {
        "title": "Étiquette {id}",
        "protected to": "Protégé d'après le compte rendu jusqu'à",
        "void": (
            "SANS VALEUR DÈS QUE L'EAU COULE : un seul robinet, une seule chasse, un seul tuyau"
            " branché."
        ),
        "not finished": "NON TERMINÉ",
        "do not count on it": "Ne pas s'y fier par temps de gel avant que ceci soit réglé :",
        "and more": "Et {count} de plus : voir le compte rendu d'hivernage.",
        "speaks for": "Chronomètre, bidons ou gobelets penchent pour ceci : {cause}.",
        "hold": "Un sursis au gel vaut pour une nuit froide, pas pour un hiver.",
        "refused": "D'après le compte rendu : {hazard}",
        "not on coach": (
            "Le compte rendu dit que ce n'est pas sur ce véhicule, la fiche dit que si : {parts}."
            " Corriger la fiche."
        ),
        "heater": "Chauffe-eau, d'après le compte rendu",
        "heater line": "{part} : {facts}.",
        "heat off": "chauffage coupé",
        "heat not off": "chauffage NON noté comme coupé",
        "bypassed": "en bypass",
        "empty": "vide",
        "antifreeze": "remplissage complet à l'antigel",
        "plug in": "bouchon EN PLACE",
        "plug out": "bouchon ENLEVÉ",
        "content unknown": "contenu SANS PREUVE",
        "before water": "Avant que l'eau coule",
        "thawed": "Partout au-dessus du point de congélation, et rien de fissuré.",
        "plug in again": "Remettre le bouchon : {parts}.",
        "lever down": "Rabaisser le levier de la soupape : {parts}.",
        "back in place": "Remettre en place : {parts}.",
        "cartridge in": "Remettre la cartouche : {parts}.",
        "bowl tight": "Resserrer le bol : {parts}.",
        "set back": "Remettre comme à l'usage : {parts}.",
        "set back: bypassed": (
            "Remettre comme à l'usage : {parts} ; au chauffe-eau, seulement quand les conduites"
            " sont rincées."
        ),
        "shut": "Fermer tout ce qui est ouvert : robinets, points bas, vidanges.",
        "rinse": (
            "Rincer chaque sortie jusqu'à ce que l'eau vienne claire, avant que quiconque en boive."
        ),
        "before heat": "Avant de rallumer le chauffage",
        "full": (
            "{parts} : remplir d'eau, et laisser couler un robinet d'eau chaude à plein jet, sans"
            " air. Ne jamais chauffer à vide ni en bypass."
        ),
        "day": "Jour",
        "method": "Méthode",
        "product": "Antigel",
        "no product": "aucun",
        "card": "Fiche",
        "technician": "Technicien",
        "manual": (
            "D'après le compte rendu seulement. Le manuel du véhicule et la règle locale passent"
            " avant cette étiquette."
        ),
    }
)
"""Everything that is printed on it."""
