"""French: what stands in the way of a method at a place, and what is looked at on the lot."""

from collections.abc import Mapping
from types import MappingProxyType

HINDRANCES: Mapping[str, str] = MappingProxyType(
    {
        "door too low": "Hauteur de la porte : {door_m} ; du véhicule : {coach_m}.",
        "door may be too low": "Mesurer la porte et le véhicule : il ne passe peut-être pas.",
        "water has nowhere to go": "L'eau n'a pas le droit de s'y écouler.",
        "no compressor": "Il n'y a pas de compresseur.",
        "no power for the compressor": "Il n'y a pas de courant pour le compresseur.",
        "no 12 volts": (
            "La batterie est à plat et il n'y a pas de courant : la pompe ne tourne pas."
        ),
        "pump cannot run dry": (
            "La pompe ne peut pas tourner à sec : débrancher sa conduite et la laisser s'écouler."
        ),
        "plug in": "Brancher le véhicule au courant.",
        "check battery": "Vérifier que la batterie suffit pour la pompe.",
        "set up generator": "Installer le groupe électrogène.",
        "generator outside": (
            "Le groupe électrogène reste dehors : aucun moteur ne tourne à l'intérieur."
        ),
        "no warmth": "Il n'y a pas de courant pour le réchauffer.",
        "bring warm air": "Apporter des chauffages et des ventilateurs.",
        "dump elsewhere": "Les réservoirs d'eaux usées se vident ailleurs.",
        "carry water": "Apporter de l'eau pour rincer ou pour essayer.",
        "bring basins": "Apporter des bacs pour l'antigel qui goutte.",
        "measure slope": "Poser un niveau sur le plancher, dans les deux sens.",
    }
)
"""By key of the hindrance."""

PRECONDITIONS: Mapping[str, str] = MappingProxyType(
    {
        "already frozen": "Regarder si quelque chose a déjà gelé : alors on dégèle d'abord.",
        "already frozen: wrong": "Cela a gelé : dégeler d'abord, sans pompe et sans air.",
        "keys": "Vérifier que toutes les clés sont là.",
        "keys: wrong": "Trouver les clés qui manquent.",
        "slides": (
            "Vérifier que les extensions sont sorties : il y a des panneaux derrière. Les"
            " extensions et les marchepieds pincent."
        ),
        "slides: wrong": (
            "Sortir les extensions : il y a des panneaux derrière. Les extensions et les"
            " marchepieds pincent."
        ),
        "battery": "Vérifier que la batterie tient sa charge.",
        "battery: wrong": (
            "La batterie est à plat : la charger, ou brancher le véhicule au courant."
        ),
        "battery frozen": (
            "Une batterie à plat à acide liquide gèle vers {freezes_degC} : la regarder avant de la"
            " charger ou de la ponter."
        ),
        "waste tanks": "Vérifier que les réservoirs d'eaux usées sont vides.",
        "waste tanks: wrong": "Vider les réservoirs d'eaux usées à une station de vidange.",
        "heater hot": (
            "Couper maintenant : {part}. Il faut des heures de refroidissement avant d'ouvrir."
        ),
        "heater hot: wrong": "Encore chaud : {part}. Ne pas ouvrir avant que ce soit froid.",
        "fresh tank": "Vidanger maintenant : {part}. Pour {volume_m3}, cela prend un moment.",
        "fresh tank: wrong": "Il y a encore de l'eau : {part}. Vidanger maintenant.",
        "appliance": "Vérifier que l'on n'y a rien laissé : {part}.",
        "appliance: wrong": "Enlever le linge, la vaisselle ou les glaçons : {part}.",
    }
)
"""By key of the precondition; "key: wrong" where it was looked at and found so."""

PLACES: Mapping[str, str] = MappingProxyType(
    {
        "at": "Lieu : {place}. {more} de plus que dans un atelier tout équipé. {told}",
        "at, no longer": "Lieu : {place}.",
        "not at": "Impossible dans ce lieu : {place}. {told}",
        "bay": "atelier",
        "lot": "parc",
        "yard": "terrain de remisage",
        "driveway": "entrée de garage",
        "before": "Avant le créneau, sur le parc",
        "waits": "Prend jusqu'à {time} sans qu'on s'en occupe.",
        "advised": "Seulement conseillé.",
        "assumed": "Ce que personne n'a noté est pris comme d'habitude dans un tel lieu.",
    }
)
"""What is said of a place as a whole."""
