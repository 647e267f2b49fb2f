"""French: what is different between two cards of a coach."""

from collections.abc import Mapping
from types import MappingProxyType

CHANGES: Mapping[str, str] = MappingProxyType(
    {
        "added: compartment": "{part} : ajout sur la fiche, un compartiment.",
        "added: fitting": "{part} : ajout sur la fiche ({kind}).",
        "added: line": "{part} : ajout sur la fiche, une conduite.",
        "added: looked for": "{part} : on a cherché, et ce véhicule n'en a pas.",
        "removed: compartment": "{part} : n'est plus sur la fiche, un compartiment.",
        "removed: fitting": "{part} : n'est plus sur la fiche ({kind}).",
        "removed: line": "{part} : n'est plus sur la fiche, une conduite.",
        "removed: looked for": "{part} : la fiche ne dit plus que ce véhicule n'en a pas.",
        "given": "{part}, {field} : {after} ; rien avant.",
        "changed": "{part}, {field} : avant {before}, maintenant {after}.",
        "no longer given": "{part}, {field} : avant {before}, maintenant rien.",
        "heading": "{coach}, puis {other} : {count}.",
        "heading with earlier": "{coach} : {count} avec la fiche remplacée le {day} ({why}).",
        "amended": "{file} : {count}. La fiche d'avant reste dans son historique.",
        "amended anew": (
            "{file} : {count}. La fiche a été réécrite, sans ses commentaires ; celle d'avant reste"
            " dans son historique."
        ),
        "amended nothing": "{file} : c'est déjà ce que dit la fiche ; rien n'a été écrit.",
        "none": "aucune différence",
        "one": "1 différence",
        "many": "{count} différences",
    }
)

SUBJECTS: Mapping[str, str] = MappingProxyType(
    {"card": "fiche", "coach": "véhicule", "site": "lieu d'hivernage", "antifreeze": "antigel"}
)
"""What a field belongs to that is of no part."""

FIELDS: Mapping[str, str] = MappingProxyType(
    {
        "id": "numéro",
        "name": "nom",
        "kind": "sorte",
        "length": "longueur",
        "height": "hauteur",
        "year": "année de modèle",
        "floor_above_ground": "hauteur du plancher",
        "vin": "numéro du véhicule",
        "note": "remarque",
        "design_low_degC": "froid à tenir",
        "power": "courant du secteur",
        "water": "alimentation en eau",
        "dump": "endroit pour vider les eaux usées",
        "product": "produit",
        "heated": "chauffage",
        "closed": "fermeture de tous les côtés",
        "role": "utilité",
        "seen": "inspection",
        "at": "emplacement",
        "at_within_m": "précision de l'emplacement",
        "compartment": "compartiment",
        "access": "accès",
        "panel": "panneau devant",
        "screws": "vis du panneau",
        "photo": "photo",
        "opening_s": "temps d'accès",
        "volume": "volume",
        "flow": "débit",
        "cut_off": "pression de coupure",
        "tank": "réservoir",
        "heat": "source de chaleur",
        "only": "seul côté",
        "drains_to": "où cela se vide",
        "positions": "positions de la poignée",
        "makers_steps": "étapes du fabricant",
        "start": "un bout",
        "end": "autre bout",
        "size": "taille",
        "material": "matière",
        "bore": "diamètre intérieur",
        "bends": "coudes",
        "start_height_m": "hauteur d'un bout",
        "end_height_m": "hauteur de l'autre bout",
        "lowest_m": "point le plus bas",
        "highest_m": "point le plus haut",
    }
)

WAYS: Mapping[str, str] = MappingProxyType(
    {
        "quantity": "{value} ({how}, à {spread} près)",
        "measured": "par mesure",
        "told": "sur parole",
        "guessed": "au jugé",
        "yes": "oui",
        "no": "non",
        "text": "« {text} »",
    }
)
"""How a value of a card is said."""
