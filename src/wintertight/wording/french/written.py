"""French: what a command adds to its screen: files written, and where its list is from."""

from collections.abc import Mapping
from types import MappingProxyType

WRITTEN: Mapping[str, str] = MappingProxyType(
    {
        "job sheet": "Fiche de travail : {file}",
        "guide": "Guide du propriétaire : {file}",
        "drawing": "Dessin : {file}",
        "record": "Dossier d'hiver : {file}",
        "tag": "Étiquette : {file}",
        "estimate": "Devis : {file}",
        "bundled list": "Antigel de la liste d'exemple fournie ; donner la vôtre avec --shop FILE.",
        "bundled prices": (
            "Les prix de la liste d'exemple fournie sont inventés ;"
            " donner les vôtres avec --shop FILE."
        ),
        "no prices": "Pas de devis : la liste de l'atelier n'a pas de tarif.",
        "not recorded": "Le dossier ne dit rien de : {steps}.",
    }
)
"""By what was written, or noted."""
