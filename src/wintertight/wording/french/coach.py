"""French: what the parts of a coach are called, and what about its card deserves a word."""

from collections.abc import Mapping
from types import MappingProxyType

KINDS: Mapping[str, str] = MappingProxyType(
    {
        "line": "conduite",
        "tee": "té",
        "manifold": "collecteur",
        "capped tee": "té bouché",
        "prepared stub": "attente pour un futur appareil",
        "fresh tank": "réservoir d'eau propre",
        "antifreeze hose": "tuyau d'antigel",
        "strainer": "crépine de pompe",
        "demand pump": "pompe à eau",
        "filter housing": "boîtier de filtre",
        "accumulator": "accumulateur d'eau",
        "pressure regulator": "régulateur de pression",
        "supply hose": "tuyau d'alimentation",
        "outside filter": "filtre à eau extérieur",
        "softener": "adoucisseur",
        "UV sleeve": "gaine de lampe UV",
        "membrane filter": "filtre à membrane",
        "city inlet": "prise d'eau de ville",
        "ball valve": "vanne",
        "check valve": "clapet anti-retour",
        "three-way valve": "vanne à trois voies",
        "service panel": "panneau de service",
        "tempering valve": "mitigeur thermostatique",
        "low point": "point bas",
        "tank heater": "chauffe-eau",
        "on-demand heater": "chauffe-eau instantané",
        "hydronic coil": "serpentin hydronique",
        "kitchen tap": "robinet de cuisine",
        "lavatory tap": "robinet de lavabo",
        "shower": "douche",
        "tub": "baignoire",
        "outside shower": "douche extérieure",
        "outside kitchen": "cuisine extérieure",
        "spray port": "prise de douchette",
        "whirlpool": "baignoire à remous",
        "recirculating diverter": "inverseur de recirculation",
        "bidet sprayer": "douchette de WC",
        "gravity toilet": "WC",
        "vacuum toilet": "WC à dépression",
        "macerating toilet": "WC à broyeur",
        "cassette toilet": "WC à cassette",
        "ice maker": "machine à glaçons",
        "door dispenser": "distributeur d'eau dans la porte du réfrigérateur",
        "fridge filter": "filtre à eau du réfrigérateur",
        "washer": "machine à laver",
        "dishwasher": "lave-vaisselle",
        "trap": "siphon",
        "gray tank": "réservoir d'eaux grises",
        "black tank": "réservoir d'eaux noires",
        "tank rinse": "rinçage de réservoir",
        "macerator": "pompe broyeuse",
    }
)

ROLES: Mapping[str, str] = MappingProxyType(
    {
        "tank suction": "vanne du réservoir d'eau propre",
        "antifreeze inlet": "vanne du tuyau d'antigel",
        "heater cold": "vanne d'entrée du chauffe-eau",
        "heater hot": "vanne de sortie du chauffe-eau",
        "heater bypass": "vanne de bypass",
        "branch shut-off": "vanne d'arrêt",
        "pump suction": "vanne à l'entrée de la pompe",
    }
)
"""What a valve is called that has no name of its own."""

NAMES: Mapping[str, str] = MappingProxyType(
    {
        "hot": "{part} côté chaud",
        "cold": "{part} côté froid",
        "sump": "{part} (puisard)",
        "jets": "{part} (buses)",
        "mould": "{part} (moule)",
        "inside": "{part} (réservoir)",
        "one of several": "{part} ({id})",
        "jug": "bidon neuf",
        "line": "conduite {id}",
        "any": "{part} (s'il y en a)",
    }
)
"""How a part is pointed out."""

SOURCES_OF_HEAT: Mapping[str, str] = MappingProxyType(
    {
        "burner": "brûleur",
        "element": "résistance électrique",
        "coolant": "liquide de refroidissement du moteur",
        "heat": "toutes les sources de chaleur",
    }
)

FINDINGS: Mapping[str, str] = MappingProxyType(
    {
        "nobody has looked": "{kind} : personne n'a regardé si ce véhicule en a.",
        "not looked at": "{part} : sur la fiche, mais personne n'a regardé.",
        "no trap": (
            "{part} : aucun siphon n'est noté dessous. Un siphon que personne ne connaît ne reçoit"
            " pas d'antigel."
        ),
        "no way to waste": "{part} : la fiche ne dit pas dans quel réservoir cela se vide.",
        "no shut-off": (
            "{part} : pas de vanne d'arrêt sur sa branche. Souvent oublié : faire couler les deux"
            " côtés."
        ),
        "several heaters": "Il y a {count} chauffe-eau ; regarder si chacun a son bypass.",
        "no bypass": "{part} : pas de bypass. Le remplir prend tout son volume en antigel.",
        "heater not isolated": (
            "{part} : un bypass, mais il manque ceci : {missing}. L'antigel peut encore entrer."
        ),
        "no low point": (
            "Aucun point bas n'est noté. Sans point bas, il reste beaucoup d'eau à chasser."
        ),
        "no antifreeze inlet": (
            "Aucun tuyau d'antigel ni aucune vanne d'entrée n'est noté : le tuyau se branche à"
            " l'aspiration de la pompe."
        ),
        "no tank suction": (
            "Aucune vanne n'est notée entre le réservoir d'eau propre et la pompe : la pompe peut"
            " aussi aspirer dans le réservoir."
        ),
        "valve without role": "{part} : la fiche ne dit pas à quoi sert cette vanne.",
        "no site": "La fiche ne nomme aucun lieu d'hivernage.",
        "design low missing": (
            "La fiche ne donne pas le froid à tenir : jusqu'où le froid descend-il à cet endroit ?"
        ),
        "design low implausible": (
            "Froid à tenir de {design_low_degC} : est-ce une faute de frappe ?"
        ),
        "design low above freezing": (
            "Froid à tenir de {design_low_degC} : c'est au-dessus du point de congélation."
        ),
        "no product": "La fiche ne nomme aucun antigel.",
        "heights inconsistent": (
            "{part} : le point le plus bas ({lowest_m}) et le plus haut ({highest_m}) ne vont pas"
            " avec les deux bouts."
        ),
        "sag longer than line": (
            "{part} : {length_m} de long, mais les hauteurs demandent {needed_m}. L'un des deux est"
            " faux."
        ),
        "outside the coach": (
            "{part} : à {along_m} de l'avant, et le véhicule a {length_m} de long."
        ),
        "vin has a wrong shape": "Le numéro du véhicule {vin} n'a pas la bonne forme.",
        "vin check digit": (
            "Le numéro du véhicule {vin} a une faute : son chiffre de contrôle devrait être"
            " {expected}."
        ),
    }
)
