"""French: what to ask and where to look, once a card was read."""

from collections.abc import Mapping
from types import MappingProxyType

QUESTIONS: Mapping[str, str] = MappingProxyType(
    {
        "nobody has looked": "{kind} : y en a-t-il ? {where}",
        "not looked at": "{part} : est-ce vraiment là, et où ? {where}",
        "no trap": "{part} : aucun siphon n'est noté dessous. Y en a-t-il un ? {where}",
        "no way to waste": (
            "{part} : dans quel réservoir cela se vide-t-il ? Suivre le tuyau qui descend."
        ),
        "trap without a sink": "{part} : qu'est-ce qui s'y vide ? Regarder juste au-dessus.",
        "toilet without a tank": (
            "{part} : dans quel réservoir cela se vide-t-il ? Regarder juste au-dessous."
        ),
        "no shut-off": (
            "{part} : pas de vanne d'arrêt sur sa branche. Y en a-t-il une ? Regarder derrière le"
            " portillon et là où la branche quitte la conduite principale. Sans vanne, faire couler"
            " les deux côtés."
        ),
        "no ice maker shut-off": (
            "{part} : pas de vanne d'arrêt sur sa conduite. Y en a-t-il une ? Regarder derrière le"
            " réfrigérateur et sous l'évier de la cuisine."
        ),
        "no strainer": (
            "{part} : aucune crépine n'est notée avant. Y en a-t-il une ? Regarder à l'entrée de la"
            " pompe : son bol contient de l'eau."
        ),
        "tank not known": (
            "{part} : de quoi est fait son réservoir, et a-t-il une anode ? Lire sa plaque, ou"
            " regarder son bouchon de vidange : celui d'une anode a un plus gros hexagone."
        ),
        "several heaters": (
            "Il y a {count} chauffe-eau. Chacun a-t-il son bypass ? Regarder les tuyaux derrière"
            " chacun."
        ),
        "no bypass": (
            "{part} : aucun bypass n'est noté. Y en a-t-il un ? Chercher derrière un tuyau qui va"
            " de son côté froid à son côté chaud. Sans bypass, le remplir prend tout son volume en"
            " antigel."
        ),
        "heater not isolated": (
            "{part} : un bypass, mais il manque ceci : {missing}. Y en a-t-il ? Regarder ses"
            " tuyaux. Sans cela, l'antigel peut encore entrer."
        ),
        "no low point": (
            "Aucun point bas n'est noté. Y en a-t-il un ? Chercher sous le plancher deux tubes"
            " courts avec bouchons, et à côté du chauffe-eau."
        ),
        "no antifreeze inlet": (
            "Aucun tuyau d'antigel ni aucune vanne d'entrée n'est noté. Y en a-t-il ? Regarder à"
            " l'entrée de la pompe. Sans cela, le tuyau se branche à l'aspiration de la pompe."
        ),
        "no tank suction": (
            "Aucune vanne n'est notée entre le réservoir d'eau propre et la pompe. Y en a-t-il une"
            " ? Suivre la conduite de l'entrée de la pompe jusqu'au réservoir. Sans vanne, la pompe"
            " peut aussi aspirer dans le réservoir."
        ),
        "valve without role": "{part} : à quoi sert cette vanne ? Suivre ses deux tuyaux.",
        "no site": "Où passe-t-il l'hiver ? La fiche ne nomme aucun lieu d'hivernage.",
        "design low missing": (
            "Jusqu'où le froid descend-il à cet endroit ? La fiche ne donne pas le froid à tenir."
        ),
        "design low implausible": (
            "Froid à tenir de {design_low_degC} : est-ce une faute de frappe ?"
        ),
        "design low above freezing": (
            "Froid à tenir de {design_low_degC}, au-dessus du point de congélation : est-ce voulu ?"
        ),
        "no product": "Avec quel antigel est-il rempli ? La fiche n'en nomme aucun.",
        "heights inconsistent": (
            "{part} : le point le plus bas ({lowest_m}) et le plus haut ({highest_m}) ne vont pas"
            " avec les deux bouts. Lequel est faux ? Les mesurer à partir du plancher."
        ),
        "sag longer than line": (
            "{part} : {length_m} de long, mais les hauteurs demandent {needed_m}. Lequel est faux ?"
        ),
        "outside the coach": (
            "{part} : à {along_m} de l'avant, et le véhicule a {length_m} de long. Lequel est faux"
            " ?"
        ),
        "vin has a wrong shape": (
            "Le numéro du véhicule {vin} n'a pas la bonne forme. Le relire sur sa plaque."
        ),
        "vin check digit": (
            "Le numéro du véhicule {vin} a une faute : son chiffre de contrôle devrait être"
            " {expected}. Le relire sur sa plaque."
        ),
    }
)
"""What ``coach check`` asks; a plan says the same as a statement, in ``FINDINGS``."""

WHERE: Mapping[str, str] = MappingProxyType(
    {
        "any": "Regarder là où mènent ses conduites.",
        "accumulator": "Chercher un petit réservoir à côté de la pompe à eau.",
        "bidet sprayer": "Regarder à côté des WC.",
        "capped tee": "Chercher le long des conduites une branche bouchée.",
        "city inlet": "Regarder sur la paroi extérieure et dans le compartiment d'eau.",
        "dishwasher": "Chercher dans la cuisine une façade ou un tiroir.",
        "door dispenser": "Regarder la porte du réfrigérateur.",
        "fridge filter": "Regarder dans le réfrigérateur, derrière sa grille et sur sa conduite.",
        "hydronic coil": (
            "Chercher dans le compartiment du chauffage un appareil à liquide caloporteur."
        ),
        "ice maker": (
            "Regarder dans le congélateur, et derrière le réfrigérateur s'il y a une conduite fine."
        ),
        "macerator": "Chercher à la sortie des réservoirs d'eaux usées une pompe avec un tuyau.",
        "manifold": (
            "Chercher derrière les panneaux un bloc avec beaucoup de conduites et de petites"
            " poignées."
        ),
        "membrane filter": "Chercher sous l'évier des filtres avec un petit réservoir.",
        "on-demand heater": (
            "Chercher sur la paroi extérieure la porte d'un chauffe-eau sans bouchon de vidange."
        ),
        "outside kitchen": "Regarder derrière les grandes portes de la paroi extérieure.",
        "outside shower": "Regarder derrière les portillons de la paroi extérieure.",
        "prepared stub": (
            "Chercher dans le placard et derrière le réfrigérateur des conduites bouchées."
        ),
        "recirculating diverter": "Chercher à la douche un bouton qui renvoie l'eau encore froide.",
        "service panel": (
            "Chercher dans le compartiment d'eau un panneau avec poignées et raccords de tuyau."
        ),
        "softener": "Chercher dans le compartiment d'eau une bouteille haute sur l'alimentation.",
        "spray port": "Chercher sur la paroi extérieure et aux WC un raccord à emboîtement rapide.",
        "tank rinse": (
            "Chercher sur la paroi extérieure un second raccord de tuyau, près du réservoir d'eaux"
            " noires."
        ),
        "tempering valve": "Regarder à la sortie chaude du chauffe-eau.",
        "three-way valve": "Regarder à l'entrée de la pompe et derrière le chauffe-eau.",
        "tub": "Regarder dans chaque salle de bain.",
        "UV sleeve": "Chercher à côté des filtres un tube d'acier avec un câble.",
        "washer": "Chercher dans les placards une machine à laver, ou ses deux robinets.",
        "whirlpool": "Chercher des buses dans la baignoire.",
        "trap below kitchen tap": "Regarder dans le meuble au-dessous.",
        "trap below lavatory tap": "Regarder dans le meuble au-dessous.",
        "trap below shower": "Regarder sous le plancher, et derrière un panneau à côté.",
        "trap below tub": "Regarder derrière un panneau au bout, et sous le plancher.",
    }
)
"""Where a kind of fitting is found, as coaches are usually built; common practice."""

SISTER: Mapping[str, str] = MappingProxyType(
    {
        "written": "{file} : la fiche de {coach}, faite d'après la fiche de {sister}.",
        "ask": "À demander ou à regarder avant de s'y fier :",
        "head": "Faite d'après la fiche de {sister}, un véhicule de même plan.",
        "head next": (
            "Ce qui a été mesuré là-bas compte comme moins certain ici. À demander avant de s'y"
            " fier :"
        ),
        "number": "Son numéro et son nom : sont-ils justes sur la fiche ?",
        "vin": "Le numéro du véhicule : le lire sur la plaque.",
        "year": (
            "Son année de modèle : est-ce la même ? Les fabricants déplacent des conduites d'une"
            " année à l'autre."
        ),
        "site": "Son lieu d'hivernage : où passe-t-il l'hiver ?",
        "design low": "Le froid à tenir : jusqu'où le froid descend-il à cet endroit ?",
        "product": "Son antigel : faut-il le remplir avec le même ?",
        "outside shower shut-off": (
            "Sa douche extérieure : y a-t-il une vanne d'arrêt ? Regarder derrière son portillon."
        ),
        "filters": "Les filtres : quelqu'un en a-t-il ajouté un, ou enlevé un ?",
        "heater": (
            "Son chauffe-eau : est-ce la même marque et la même taille, et a-t-il son bypass ?"
        ),
        "toilet": "Ses WC : sont-ils de la même sorte ?",
        "appliances": (
            "Machine à glaçons, machine à laver, lave-vaisselle : sont-ce les mêmes appareils ?"
        ),
        "absent": "Ce que l'autre véhicule n'a pas : celui-ci ne l'a-t-il pas non plus ?",
    }
)
"""What is said of a sister coach's card."""

HISTORY: Mapping[str, str] = MappingProxyType(
    {
        "none": "{coach} : cette fiche n'a jamais été remplacée.",
        "none readable": "{coach} : aucune ancienne fiche n'est lisible.",
        "heading one": "{coach} : 1 ancienne fiche, la plus vieille en premier.",
        "heading many": "{coach} : {count} anciennes fiches, la plus vieille en premier.",
        "entry": "{day}  {why} : {count} avec la suivante.",
        "unreadable": "{day}  {why} : cette fiche, ou la suivante, n'est pas lisible.",
        "damaged": (
            "Illisible dans {file}, ligne {lines} : une écriture a été coupée. Les autres lignes"
            " sont entières."
        ),
    }
)
"""What is said of the earlier selves of a card."""
