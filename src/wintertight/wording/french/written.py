"""French: what a command adds to its screen: files written, and where its list is from."""

from collections.abc import Mapping
from types import MappingProxyType

WRITTEN: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Feuille de travail : {file}",
        "guide": "Guide du propriétaire : {file}",
        "drawing": "Dessin : {file}",
        "record": "Compte rendu d'hivernage : {file}",
        "tag": "Étiquette : {file}",
        "estimate": "Devis : {file}",
        "card holds": "{coach} : pièces {fittings}, conduites {lines}, et tout se tient.",
        "bundled list": "Antigel de la liste d'exemple fournie ; donner la vôtre avec --shop FILE.",
        "bundled prices": (
            "Les prix de la liste d'exemple fournie sont inventés ;"
            " donner les vôtres avec --shop FILE."
        ),
        "no prices": "Pas de devis : la liste de l'atelier n'a pas de tarif.",
        "not recorded": "Le compte rendu ne dit rien de : {steps}.",
        "no time": "à un moment qu'elle ne dit pas",
        "signed, believed": (
            "Signé par {by}, {at} à l'horloge du signataire ; rien n'a été changé ni ajouté depuis."
        ),
        "signed, by somebody": (
            "Signé par {by}, {at} à l'horloge du signataire ; rien n'a été changé ni ajouté"
            " depuis. Qui c'est n'est pas prouvé : donner son certificat avec --trust."
        ),
    }
)
"""By what was written, or noted."""
