"""French: what is asked about a coach, where to look, and why it matters."""

from collections.abc import Mapping
from types import MappingProxyType

QUESTIONS: Mapping[str, str] = MappingProxyType(
    {
        "shape": "Quelle sorte de véhicule est-ce ?",
        "length": "Quelle longueur, du pare-chocs à l'attelage ?",
        "design low": "Jusqu'où le froid descend-il là où il reste ?",
        "heater": "Qu'est-ce qui chauffe l'eau ?",
        "bypass": "Quelles vannes y a-t-il au chauffe-eau ?",
        "baths": "Combien de salles de bain ?",
        "appliances": "Lesquels de ces appareils marchent à l'eau ?",
        "outside": "Qu'est-ce qui donne de l'eau à l'extérieur ?",
        "antifreeze inlet": "Par où l'antigel arrive-t-il à la pompe ?",
        "water treatment": "Qu'est-ce qui filtre ou traite l'eau ?",
        "toilet": "Quelle sorte de WC ?",
        "tub": "Y a-t-il une baignoire ?",
        "sprayer": "Y a-t-il une douchette aux WC ?",
        "dead ends": "Y a-t-il des bras morts, des conduites qui ne mènent nulle part ?",
        "mixing": "Quelque chose mélange-t-il le chaud et le froid avant les robinets ?",
        "waste side": "Qu'y a-t-il sur les réservoirs d'eaux usées ?",
        "fridge filter": "Y a-t-il un filtre pour l'eau du réfrigérateur ?",
        "accumulator": "Y a-t-il un accumulateur d'eau à la pompe ?",
        "branches": "Comment les conduites se séparent-elles ?",
        "low points": "Quelles vidanges de points bas y a-t-il ?",
        "city inlet": "Y a-t-il une prise d'eau de ville ?",
        "outside shut-off": "La douche extérieure a-t-elle sa propre vanne d'arrêt ?",
        "fridge shut-off": "La conduite du réfrigérateur a-t-elle sa propre vanne d'arrêt ?",
        "galley slide": "La cuisine est-elle sur une extension coulissante ?",
        "belly": "Qu'y a-t-il sous le plancher ?",
        "pipe": "En quoi sont les conduites d'eau ?",
        "heater tank": "En quoi est le réservoir du chauffe-eau ?",
        "on the hose": "Que laisse-t-on sur le tuyau d'alimentation ?",
        "fresh tank": "Combien contient le réservoir d'eau propre ?",
        "go on": "C'est tout pour le téléphone. Faire maintenant le tour du véhicule ?",
        "write": "Écrire la fiche ainsi ?",
        "write: again": "Réécrire {file} ? Ce qui a été mesuré, et chaque remarque, est gardé.",
    }
)
"""What is asked, and what is asked at the two crossroads."""

WHERE: Mapping[str, str] = MappingProxyType(
    {
        "shape": "Prendre celui qui lui ressemble le plus ; le nom de la brochure importe peu.",
        "length": "Sur les papiers ou l'étiquette près de la porte. À peu près suffit : 27 ft.",
        "design low": "La nuit la plus froide à tenir, pas la nuit habituelle : -20F.",
        "heater": "La porte à grille sur la paroi : une étiquette dedans dit les gallons.",
        "bypass": "Ouvrir le panneau derrière, souvent sous un lit ou un tiroir de cuisine.",
        "baths": "Compter les pièces avec lavabo. WC et lavabo sans douche : une demie.",
        "appliances": (
            "Un bac à glaçons avec tuyau au congélateur ? Regarder aussi près de l'évier."
        ),
        "outside": "Les portillons de la paroi, derrière les roues arrière ou près de l'auvent.",
        "antifreeze inlet": "À la pompe : suivre la conduite côté réservoir, vers l'eau propre.",
        "water treatment": "Sous l'évier, à la pompe, et au compartiment où se branche le tuyau.",
        "toilet": "La pédale : cela tombe, aspire ou ronfle ? Une cassette a sa propre trappe.",
        "tub": "Regarder la douche. À remous : buses dans la paroi, pompe derrière un panneau.",
        "sprayer": "Au mur près des WC : un tuyau court avec une gâchette.",
        "dead ends": "Derrière les placards, où irait une machine à laver, et sous chaque évier.",
        "mixing": "Sous la douche et derrière le chauffe-eau : molette graduée, ou bouton.",
        "waste side": "Aux vannes de vidange : une entrée de tuyau pour rincer, ou une pompe.",
        "fridge filter": "Une cartouche dans le réfrigérateur, sa grille, ou la conduite derrière.",
        "accumulator": "Un petit réservoir, acier ou plastique, près de la pompe, comme un pain.",
        "branches": "Près de la pompe : beaucoup de conduites sur un bloc, ou une qui se divise ?",
        "low points": "Sous le châssis : bouts de tuyau à bouchon ou vanne, un rouge, un bleu.",
        "city inlet": "Dehors, souvent du côté de la route : là où se visse le tuyau.",
        "outside shut-off": "Suivre les conduites à l'intérieur : sous un lit ou un siège.",
        "fridge shut-off": "Une petite vanne derrière la grille du réfrigérateur, ou sous l'évier.",
        "galley slide": "L'évier bouge-t-il quand l'extension sort ?",
        "belly": "Se coucher et regarder : une tôle partout, ou des tuyaux ? De l'air chaud ?",
        "pipe": "Sous l'évier : que lit-on sur le tube ? Gris, c'est peut-être PB, ou PEX.",
        "heater tank": "Le bouchon du bas : une longue tige y pend si le réservoir est en acier.",
        "on the hose": "Dans le compartiment du tuyau et à la prise d'eau.",
        "fresh tank": "Sur le réservoir ou les papiers : 40 gal.",
        "go on": "On peut s'arrêter là : ce que personne n'a regardé reste ouvert.",
        "write": "< ramène à la dernière question.",
    }
)
"""Where to look, in one line."""

WHY: Mapping[str, str] = MappingProxyType(
    {
        "shape": (
            "Elle dit où sont sans doute réservoir, chauffe-eau, cuisine et salle de bain. Sans"
            " elle, tout est estimé comme pour une longue caravane à lits superposés."
        ),
        "length": (
            "Des conduites plus longues contiennent plus d'eau ; il faut plus d'antigel et plus de"
            " temps."
        ),
        "design low": (
            "Un antigel qui tient à -18 °C fait éclater des conduites à -34 °C. Le plan est fait"
            " pour cette nuit-là."
        ),
        "heater": (
            "Un réservoir se vide et se met en bypass. Un chauffe-eau instantané et un serpentin"
            " contiennent peu, et suivent les étapes de leur fabricant."
        ),
        "bypass": (
            "Sans bypass, le réservoir se remplit aussi, et prend tous ses gallons en antigel avant"
            " que le premier robinet d'eau chaude montre la couleur."
        ),
        "baths": "Une salle de bain, c'est un lavabo, une douche, des WC, et des siphons dessous.",
        "appliances": (
            "Chacun a sa vanne et son tuyau, qu'aucun robinet ne peut débarrasser de leur eau."
        ),
        "outside": "Gèle en premier, et s'oublie souvent : de l'intérieur, personne ne le voit.",
        "antifreeze inlet": (
            "Cela dit ce qu'il faut tourner. S'il n'y a rien, on débranche la conduite à la pompe"
            " et on met un tuyau à la place."
        ),
        "water treatment": (
            "Un boîtier contient un litre d'eau, et sa cartouche boit l'antigel si on la laisse."
        ),
        "toilet": "Leur vanne casse en premier. Chaque sorte a sa façon de tirer la chasse.",
        "tub": (
            "Une baignoire à remous garde de l'eau dans ses buses et sa pompe ; une baignoire a son"
            " propre bec."
        ),
        "sprayer": "Son tuyau garde de l'eau derrière une gâchette à laquelle personne ne pense.",
        "dead ends": "Rien ne coule où rien ne s'ouvre : ce qui y est reste, et fait éclater.",
        "mixing": (
            "Un mitigeur ou un inverseur peut retenir l'eau chaude pendant que le robinet froid"
            " coule déjà en couleur."
        ),
        "waste side": (
            "Une conduite de rinçage et une pompe broyeuse gardent de l'eau qu'aucun robinet"
            " n'atteint."
        ),
        "fridge filter": "Il contient de l'eau, et la cartouche doit sortir.",
        "accumulator": (
            "Il prend de l'antigel et rend de l'eau plus tard, quand personne ne regarde."
        ),
        "branches": "Sur un collecteur, chaque robinet a sa conduite, qu'on fait couler à part.",
        "low points": "Ce qui s'y écoule n'est plus à chasser : cela épargne des gallons.",
        "city inlet": "Son clapet anti-retour garde une gorgée d'eau derrière le tamis.",
        "outside shut-off": (
            "Fermée, elle prive la douche d'antigel, et garde l'eau qui s'y trouve."
        ),
        "fridge shut-off": (
            "Fermée, rien n'atteint la machine à glaçons, si longtemps que coulent les autres."
        ),
        "galley slide": (
            "Ses conduites pendent en boucle sous le plancher, et une boucle ne se vide pas."
        ),
        "belly": "Cela décide du temps que mettent les conduites sous le plancher à geler.",
        "pipe": "La matière donne le diamètre, et avec lui les gallons.",
        "heater tank": (
            "Un réservoir en acier a une anode qui s'use ; on la regarde quand le bouchon est"
            " sorti."
        ),
        "on the hose": "Un régulateur ou un filtre laissé dehors casse à la première nuit froide.",
        "fresh tank": (
            "Cela dit combien de temps il se vide, et ce qui y reste affaiblit l'antigel."
        ),
        "go on": (
            "En faisant le tour, on regarde le reste. D'ici là, un plan dit ces éléments sans"
            " preuve ; il ne les tient jamais pour absents."
        ),
        "write": (
            "Tout plan se fait d'après la fiche. On peut la refaire quand on en sait plus : la même"
            " commande reprend ici."
        ),
    }
)
"""Why it matters, in a sentence or two."""

SUBJECTS: Mapping[str, str] = MappingProxyType(
    {
        "shape": "sorte de véhicule",
        "length": "longueur",
        "design low": "nuit la plus froide",
        "heater": "chauffe-eau",
        "bypass": "bypass du chauffe-eau",
        "baths": "salles de bain",
        "appliances": "appareils à eau",
        "outside": "eau à l'extérieur",
        "antifreeze inlet": "arrivée de l'antigel",
        "water treatment": "traitement de l'eau",
        "toilet": "WC",
        "tub": "baignoire",
        "sprayer": "douchette aux WC",
        "dead ends": "bras morts",
        "mixing": "mélange du chaud et du froid",
        "waste side": "sur les réservoirs d'eaux usées",
        "fridge filter": "filtre du réfrigérateur",
        "accumulator": "accumulateur d'eau",
        "branches": "séparation des conduites",
        "low points": "vidanges de points bas",
        "city inlet": "prise d'eau de ville",
        "outside shut-off": "vanne d'arrêt de la douche extérieure",
        "fridge shut-off": "vanne d'arrêt du réfrigérateur",
        "galley slide": "cuisine sur une extension",
        "belly": "sous le plancher",
        "pipe": "matière des conduites",
        "heater tank": "matière du réservoir du chauffe-eau",
        "on the hose": "laissé sur le tuyau",
        "fresh tank": "taille du réservoir d'eau propre",
    }
)
"""What a question is about, in a list."""
