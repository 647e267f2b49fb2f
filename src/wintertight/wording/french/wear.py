"""French: what is said of the anode rods of heaters."""

from collections.abc import Mapping
from types import MappingProxyType

ANODES: Mapping[str, str] = MappingProxyType(
    {
        "at half": (
            "{part} : {share} de l'anode est mangé ({share_low} à {share_high}). Une anode se"
            " remplace à la moitié : la remplacer maintenant."
        ),
        "half before autumn": (
            "{part} : {share} de l'anode est mangé ({share_low} à {share_high}). La moitié est"
            " atteinte dans {left} saisons ({left_low} à {left_high}), au moins une chance sur deux"
            " que ce soit avant l'automne prochain : la remplacer maintenant."
        ),
        "half after autumn": (
            "{part} : {share} de l'anode est mangé ({share_low} à {share_high}). La moitié est"
            " atteinte dans {left} saisons ({left_low} à {left_high}) : la remplacer l'automne"
            " prochain."
        ),
        "lasts": (
            "{part} : {share} de l'anode est mangé ({share_low} à {share_high}). La moitié est"
            " atteinte dans {left} saisons ({left_low} à {left_high}) : regarder de nouveau"
            " l'automne prochain."
        ),
        "no reading": (
            "{part} : on ne sait rien de son anode. La regarder quand le bouchon est sorti, et"
            " noter combien en est mangé."
        ),
        "no reading: tank not said": (
            "{part} : la fiche ne dit pas s'il y a une anode. Regarder quand le bouchon est sorti,"
            " et inscrire sur la fiche de quoi est fait le réservoir."
        ),
        "goes down": (
            "{part} : un relevé plus récent dit que moins d'anode est mangé qu'un relevé plus"
            " ancien. Ou l'un des deux est faux, ou personne n'a noté que l'anode a été remplacée :"
            " la regarder de nouveau."
        ),
    }
)
"""What is said of one anode, by key."""

NO_ANODES: Mapping[str, str] = MappingProxyType(
    {
        "aluminum": "{part} : son réservoir est en aluminium et n'a pas d'anode.",
        "stainless steel": "{part} : son réservoir est en acier inoxydable et n'a pas d'anode.",
        "on-demand heater": "{part} : pas de réservoir, donc pas d'anode.",
        "hydronic coil": "{part} : pas de réservoir, donc pas d'anode.",
        "not looked at": "{part} : personne n'a regardé, on ne sait donc rien d'une anode.",
        "no heater": "D'après la fiche, ce véhicule n'a pas de chauffe-eau, donc pas d'anode.",
    }
)
"""Why a heater has no anode that could be looked at."""

WEAR_PHRASES: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Anodes de {coach}, au {day}",
        "heading without day": "Anodes de {coach}",
        "assumed": (
            "Avant tout relevé, on compte qu'une anode dure une à cinq saisons, une saison étant un"
            " an d'usage ; usage courant du métier. Une saison en mange {rate_low} à {rate_high}."
        ),
        "looks": "Vue : {looks}.",
        "look": "{day} {share}",
        "new rod": "{day} neuve",
        "nothing known": "personne n'a noté de relevé",
        "no day": "aucun compte rendu ne donne de jour",
        "contradiction": "les relevés se contredisent",
    }
)
"""Headings and pieces."""
