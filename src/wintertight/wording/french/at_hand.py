"""French: what has to be at hand for a job: tools, and small parts that wear out."""

from collections.abc import Mapping
from types import MappingProxyType

AT_HAND: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Outils et petites pièces",
        "tools": "Outils : {tools}.",
        "tool": "Outils",
        "spare": "Petites pièces à changer peut-être",
    }
)
"""The sentences that list them."""

TOOLS: Mapping[str, str] = MappingProxyType(
    {
        "watch": "une montre qui donne les secondes",
        "bucket": "un seau",
        "screwdriver": "un tournevis pour les panneaux",
        "plug wrench": "une clé pour le bouchon ({parts})",
        "bowl wrench": "une clé pour le bol ({parts})",
        "blunt tool": "un outil à bout arrondi pour enfoncer le clapet de la prise d'eau de ville",
        "bridge hose": "un tuyau court pour relier les deux bouts libres ({parts})",
        "jug hose": "un tuyau court à brancher ({parts}) et à plonger dans le bidon",
        "hand pump": "une pompe à main avec un tuyau, et de quoi la brancher ({parts})",
        "compressor": (
            "un compresseur à air propre et sans huile, un régulateur réglé à {regulator_Pa} et"
            " jamais à 50 psi ou plus, et de quoi le brancher ({parts})"
        ),
        "eyes": "des lunettes de protection",
        "test hose": "un tuyau avec un manomètre et un régulateur réglé à {pressure_Pa}",
        "cup": "une tasse à mesurer (une tasse fait 250 mL)",
        "reading": "un instrument pour relever la force de cet antigel et deux gobelets propres",
        "sewer gloves": "un tuyau de vidange et des gants rangés à part",
        "tag": "une étiquette pour le robinet principal, avec un stylo",
    }
)
"""By key of the tool."""

SPARES: Mapping[str, str] = MappingProxyType(
    {
        "thread tape": "du ruban d'étanchéité pour le filet du bouchon ({parts})",
        "anode rod": "une tige d'anode, s'il reste peu de l'ancienne ({parts})",
        "bowl seal": "un joint pour le bol ({parts})",
        "cap": "un capuchon avec son joint ({parts})",
        "screen washer": "un joint à tamis ({parts})",
    }
)
"""By key of the part."""
