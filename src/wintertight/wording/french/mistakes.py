"""French: what can stand wrongly at a coach, what is seen of it, and what settles it.

Pieces of one sentence: none begins with a capital letter or ends in a stop. The name of a part
stands in parentheses, so that no article and no ending depends on it.
"""

from collections.abc import Mapping
from types import MappingProxyType

MISTAKES: Mapping[str, str] = MappingProxyType(
    {
        "heater left open: full": (
            "vannes laissées ouvertes à côté du bypass, et le chauffe-eau encore plein ({heater}) :"
            " une partie du débit le traverse et pousse son eau dans le côté chaud"
        ),
        "heater left open: drained": (
            "vannes laissées ouvertes à côté du bypass, le bouchon du chauffe-eau remis ({heater})"
            " : une partie du débit entre dans l'appareil vide et pousse son air dans le côté chaud"
        ),
        "heater left open: plug out": (
            "vannes laissées ouvertes et le bouchon du chauffe-eau enlevé ({heater}) : l'antigel"
            " coule là par terre au lieu d'arriver aux robinets"
        ),
        "bypass shut: full": (
            "bypass laissé comme en été ({part}), et le chauffe-eau encore plein : tout ce qui va"
            " au côté chaud le traverse et ressort comme son eau"
        ),
        "bypass shut: drained": (
            "bypass laissé comme en été ({part}), le bouchon du chauffe-eau remis : le chauffe-eau"
            " se remplit avant que quelque chose vienne à un robinet d'eau chaude"
        ),
        "bypass shut: plug out": (
            "bypass laissé comme en été ({part}) et le bouchon du chauffe-eau enlevé : l'antigel"
            " coule là par terre au lieu d'arriver au côté chaud"
        ),
        "inlet half open: alone": (
            "poignée à moitié seulement dans l'axe du tuyau ({part}) : la pompe tire plus fort et"
            " n'aspire encore que de l'antigel"
        ),
        "inlet half open: tank valve too": (
            "poignée à mi-course ({part}), celle de la vanne du réservoir aussi, et le réservoir"
            " encore plein : la pompe aspire de l'antigel et de l'eau en même temps"
        ),
        "tank valve half open: full": (
            "vanne pas tout à fait fermée ({part}), et le réservoir encore plein : la pompe aspire"
            " de l'eau avec l'antigel"
        ),
        "tank valve half open: empty": (
            "vanne pas tout à fait fermée ({part}), et le réservoir vide : l'air y entre si"
            " facilement que la pompe n'aspire pas d'antigel"
        ),
        "shower crossing": (
            "les deux poignées laissées ouvertes et la pomme fermée ({part}) : le chaud et le froid"
            " s'y mélangent pendant qu'un autre robinet est ouvert"
        ),
        "pause button": (
            "les deux poignées laissées ouvertes et le bouton d'arrêt enfoncé ({part}) : le chaud"
            " et le froid s'y mélangent pendant qu'un autre robinet est ouvert"
        ),
        "tempering valve one-sided": (
            "rien de chaud n'arrive au mitigeur ({part}) : il se met à fond sur le chaud, et aucun"
            " antigel ne passe par son côté froid"
        ),
        "diverter left off": (
            "inverseur pas mis pour que l'eau tourne en rond ({part}) : les conduites qui y vont et"
            " en viennent gardent leur eau"
        ),
        "low point left open": (
            "point bas laissé ouvert ({part}) : une partie de ce que donne la pompe s'y écoule, et"
            " chaque robinet reçoit moins dans les mêmes secondes"
        ),
        "suction leak: some air": (
            "un raccord mal serré entre le bidon et la pompe : {share} de ce que la pompe aspire"
            " est de l'air, et chaque robinet reçoit moins d'antigel dans les mêmes secondes"
        ),
        "suction leak: too much air": (
            "un raccord défait entre le bidon et la pompe : plus de la moitié de ce que la pompe"
            " aspire est de l'air, et elle ne monte pas d'antigel"
        ),
        "jug ran dry: run on": (
            "bidon vide au milieu de la coulée ({part}) : la pompe aspire de l'air pendant"
            " {seconds} jusqu'au bidon suivant, puis on fait couler comme le dit la feuille"
        ),
        "jug ran dry: left so": (
            "bidon vide à la fin de la coulée ({part}) : la pompe aspire de l'air pendant {seconds}"
            " jusqu'au bidon suivant, et personne ne refait couler cette sortie"
        ),
        "weak product": (
            "un bidon allongé d'eau jusqu'à en contenir {share} : chaque élément reçoit ce mélange"
            " plus faible"
        ),
        "wrong product": (
            "un autre antigel avec la même température sur l'étiquette : personne ne sait ce qu'il"
            " y a dedans, et aucun élément qui contient encore un peu d'eau ne peut être calculé"
        ),
        "cartridge left in": (
            "cartouche laissée en place ({part}) : ce dont elle s'est imbibée ne se rince pas"
        ),
        "branch left shut": (
            "vanne laissée fermée ({part}) : rien derrière elle n'est vidé ni rempli"
        ),
        "failed check": "clapet qui ne ferme plus ({part}) : ce qui est derrière peut revenir",
        "failed check: hole": (
            "clapet qui ne ferme plus ({part}) : l'antigel revient par là dans le chauffe-eau et"
            " sort par le trou du bouchon"
        ),
    }
)
"""What stands wrongly, and what that does inside the walls."""

OUTCOMES: Mapping[str, str] = MappingProxyType(
    {
        "same": "cela n'aggrave rien",
        "gap": "éclatement par le gel ({parts})",
        "unproven": "personne ne pourrait en répondre ({parts})",
        "hazard": "il en vient un ordre qui est refusé ({hazard})",
        "doubtful": "personne ne pourrait répondre de {parts} en plus",
        "water": "il reste {volume} d'eau",
        "more": "il faut {volume} d'antigel de plus que prévu",
        "less": "il part des bidons {volume} d'antigel de moins que prévu",
    }
)
"""What comes of it, and what it costs."""

SIGNS: Mapping[str, str] = MappingProxyType(
    {
        "nothing comes": "rien ne vient ({outlets})",
        "never clears": "la couleur ne vient pas ({outlets})",
        "stays pale": "il ne vient que {share} de la pleine force ({outlets})",
        "late": "la couleur a {seconds} de retard ({outlets})",
        "early": "la couleur a {seconds} d'avance ({outlets})",
        "sputters": "cela crache de l'air ({outlets})",
        "trickles": "cela ne fait que couler en filet ({outlets})",
        "runs elsewhere": "de l'antigel s'écoule ({outlets})",
        "seen": "à voir : {signs}",
        "cup": "les robinets ne montrent rien, un gobelet tenu à côté du bidon si : {signs}",
        "none": "aucun robinet ne le montre",
    }
)
"""What would be seen; "seen", "cup" and "none" begin what is said of it."""

SETTLE: Mapping[str, str] = MappingProxyType(
    {
        "heater left open: full": (
            "les fermer, vider le chauffe-eau, et refaire couler chaque robinet d'eau chaude"
        ),
        "heater left open: drained": (
            "les fermer, enlever le bouchon, et refaire couler chaque robinet d'eau chaude"
        ),
        "heater left open: plug out": "les fermer et recommencer au premier robinet",
        "bypass shut": (
            "mettre le bypass, vider le chauffe-eau, et refaire couler chaque robinet d'eau chaude"
        ),
        "bypass shut: plug out": "mettre le bypass et recommencer au premier robinet",
        "inlet half open: alone": "la tourner jusqu'au bout",
        "inlet half open": (
            "fermer celle du réservoir, ouvrir celle du bidon, vider le réservoir, et recommencer"
        ),
        "tank valve half open": "la fermer, vider le réservoir, et recommencer au premier robinet",
        "tank valve half open: empty": "la fermer jusqu'au bout et recommencer au premier robinet",
        "shower crossing": "fermer les deux poignées, et refaire couler cette douche à la fin",
        "pause button": (
            "relâcher le bouton, fermer les deux poignées, et faire couler encore chaque robinet"
        ),
        "tempering valve one-sided": (
            "desserrer son raccord froid au-dessus d'un seau jusqu'à ce que la couleur vienne"
        ),
        "diverter left off": (
            "le mettre pour que l'eau tourne en rond, et refaire couler cette douche"
        ),
        "low point left open": (
            "le fermer, faire couler encore chaque robinet, et verser une tasse dans chaque siphon"
        ),
        "suction leak": (
            "serrer le tuyau jusqu'à ce qu'il n'aspire plus de bulles, et refaire couler chaque"
            " robinet"
        ),
        "jug ran dry: run on": (
            "faire couler encore ce robinet jusqu'à ce que la couleur reste, comme le dit la"
            " feuille"
        ),
        "jug ran dry: left so": (
            "refaire couler ce robinet jusqu'à ce que la couleur reste, et ceux d'après"
        ),
        "weak product": (
            "relever la force du bidon avant de s'en servir, et celle du robinet le plus éloigné à"
            " la fin"
        ),
        "wrong product": (
            "lire les étiquettes des bidons vides, et faire un relevé qui convient à ce produit"
        ),
        "cartridge left in": "la sortir, vider le bol, et laisser le bol desserré",
        "branch left shut": "l'ouvrir et faire couler chaque sortie derrière elle",
        "failed check": "fermer une vanne à côté, ou le remplacer",
        "failed check: hole": "fermer la vanne du chauffe-eau à côté, ou remettre le bouchon",
    }
)
"""What settles it, by key; "key: circumstance" is said where that has words of its own."""

PIECES: Mapping[str, str] = MappingProxyType(
    {
        "sentence": "{wrong} ; {comes} ; {seen} ; remède : {settle}.",
        "and more": "{outlet}, et {count} de plus",
        "hazard: no tap shows it": "Mauvais réglages : refusés",
        "hazard: seen": "Mauvais réglages : refusés",
        "gap: no tap shows it": "Mauvais réglages : cela éclaterait, et aucun robinet ne le montre",
        "gap: seen": "Mauvais réglages : cela éclaterait, et cela se voit",
        "unproven: no tap shows it": (
            "Mauvais réglages : personne ne pourrait en répondre, et aucun robinet ne le montre"
        ),
        "unproven: seen": "Mauvais réglages : personne ne pourrait en répondre, et cela se voit",
        "same: no tap shows it": (
            "Mauvais réglages : rien n'est aggravé, et aucun robinet ne le montre"
        ),
        "same: seen": "Mauvais réglages : rien n'est aggravé, et cela se voit",
    }
)
"""How the pieces are put together."""
