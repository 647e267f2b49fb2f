"""French: what to mind at a step, and why an order is refused."""

from collections.abc import Mapping
from types import MappingProxyType

CAUTIONS: Mapping[str, str] = MappingProxyType(
    {
        "hot water": "Brûlures : laisser refroidir avant d'ouvrir.",
        "plug under pressure": (
            "Laisser refroidir le chauffe-eau et ouvrir un robinet avant de sortir le bouchon : eau"
            " brûlante sous pression. Le manuel du véhicule a le dernier mot."
        ),
        "low pressure by hand": (
            "Pomper doucement : un bras peut dépasser la pression que tiennent les raccords."
        ),
        "air pressure": (
            "Jamais plus de 50 psi d'air, quelle que soit la pression nominale des conduites : les"
            " raccords cèdent les premiers."
        ),
        "clean air": (
            "Air sans huile ou filtré seulement : l'huile n'a rien à faire dans des conduites d'eau"
            " potable."
        ),
        "eyes": "Lunettes de protection ; personne devant une sortie ouverte.",
        "no engine indoors": "Aucun moteur ne tourne dans un atelier fermé.",
        "no flame": (
            "Pas de flamme, pas de décapeur thermique, pas de vapeur : de l'air chaud seulement."
            " Gaz (GPL) et 120 V : travail réservé aux professionnels agréés."
        ),
        "stop at a leak": (
            "Quelqu'un surveille chaque raccord. À la première goutte : couper la pression,"
            " marquer, arrêter."
        ),
        "sewer hose apart": (
            "Tuyau de vidange et gants ne touchent rien qui porte de l'eau potable. Se laver les"
            " mains."
        ),
        "right product": (
            "Lire l'étiquette : fait pour les conduites d'eau potable, non dilué. Jamais d'antigel"
            " de moteur : l'éthylène glycol est un poison."
        ),
        "face clear of the inlet": (
            "Visage à l'écart de la prise : elle gicle tant que le clapet est enfoncé."
        ),
        "waste antifreeze": (
            "L'antigel va dans le réservoir d'eaux usées ou à une station de vidange, jamais par"
            " terre ; la règle locale décide. Tenir les bidons loin des enfants et des animaux."
        ),
        "pink proves little": "La couleur prouve peu : un antigel faible l'a.",
    }
)

HAZARDS: Mapping[str, str] = MappingProxyType(
    {
        "plug under pressure": (
            "Le bouchon sortirait sous pression : d'abord fermer l'eau, arrêter la pompe et ouvrir"
            " un robinet."
        ),
        "plug while hot": (
            "Le bouchon sortirait d'un chauffe-eau en marche : d'abord couper le chauffage et"
            " laisser refroidir."
        ),
        "heat without water": (
            "On chaufferait le chauffe-eau vide ou en bypass : le remplir, et laisser couler un"
            " robinet d'eau chaude à plein jet, sans air, avant de rallumer le chauffage."
        ),
        "heater drained while heated": (
            "On viderait le chauffe-eau pendant qu'il chauffe : couper le chauffage."
        ),
        "spirit by a flame": (
            "Ce produit peut prendre feu, et un brûleur est allumé : d'abord éteindre toute flamme."
        ),
        "pressure on ice": (
            "Il peut y avoir de la glace dans les conduites : ni pompe, ni air, ni pression d'eau"
            " avant le dégel."
        ),
        "heat on ice": (
            "Il peut y avoir de la glace dans le chauffe-eau : ni brûleur ni résistance avant qu'il"
            " soit dégelé, plein, et que l'eau y coule."
        ),
        "bowl under pressure": (
            "On ouvrirait le bol sous pression : d'abord arrêter la pompe et ouvrir un robinet."
        ),
    }
)
