"""French: what the technician is told to do, why, and what to mind."""

from collections.abc import Mapping
from types import MappingProxyType

STEPS: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "Couper le chauffage de l'eau ({part}) : {sources}. Laisser refroidir.",
        "pressure off": "Débrancher le tuyau d'eau de ville ({part}) et arrêter la pompe.",
        "pressure off: demand pump": "Arrêter : {part}.",
        "open shut-off": "Ouvrir : {part} (poignée dans l'axe du tuyau).",
        "open bypass to drain": (
            "Ouvrir pendant la vidange : {part} (poignée dans l'axe du tuyau)."
        ),
        "open taps": "Ouvrir tous les robinets, chaud et froid : {parts}.",
        "open tank drain": "Ouvrir la vidange : {part}.",
        "open handles": "Mettre ces poignées dans l'axe du tuyau (ouvert) : {parts}.",
        "open handles: hose": (
            "Mettre ces poignées dans l'axe du tuyau (ouvert) et laisser pendre librement le bout"
            " du tuyau d'antigel : {parts}."
        ),
        "caps off": (
            "Enlever les bouchons et ouvrir les bouts de conduite, un seau dessous : {parts}."
        ),
        "caps on": "Remettre les bouchons et refermer les bouts de conduite : {parts}.",
        "hold open": "{part} ({how}) : jusqu'à ce que plus rien ne coule.",
        "hold open: city inlet": (
            "{part} : enlever le tamis, enfoncer le clapet avec un outil à bout arrondi jusqu'à ce"
            " que plus rien ne coule, remettre le tamis."
        ),
        "work positions": (
            "{part} : passer par chaque position l'une après l'autre ({positions}), attendre chaque"
            " fois que plus rien ne coule, puis revenir sur {back}."
        ),
        "work positions: pressed": (
            "{part} : passer par chaque position l'une après l'autre ({positions}), attendre chaque"
            " fois que plus rien ne coule, en tenant le clapet de la prise d'eau de ville enfoncé"
            " avec un outil à bout arrondi, puis revenir sur {back}."
        ),
        "empty bowl": "{part} : dévisser le bol, le vider et le revisser sans serrer.",
        "open low points": "Ouvrir les points bas : {parts}.",
        "open relief": "{part} : lever le levier de la soupape, le laisser levé.",
        "plug out": "{part} : enlever le bouchon de vidange et ne pas le remettre.",
        "plug out: anode": (
            "{part} : enlever le bouchon avec son anode et ne pas le remettre. Regarder ce qui"
            " reste de l'anode."
        ),
        "let it drain": "Laisser s'égoutter jusqu'au bout, env. {handling}.",
        "drain panel": (
            "{part} : mettre sur {position}, enfoncer le clapet de la prise d'eau de ville avec un"
            " outil à bout arrondi jusqu'à ce que plus rien ne coule, puis revenir sur {back}."
        ),
        "cartridge out": (
            "{part} : sortir la cartouche, vider le bol et le revisser sans cartouche."
        ),
        "open rinse inlet": "Ouvrir l'entrée et laisser s'écouler : {part}.",
        "take out": "Enlever du véhicule, vider et ranger au chaud : {part}.",
        "take out: bridged": (
            "Démonter, vider, et relier les deux bouts libres par un tuyau court : {part}."
        ),
        "take out: membrane filter": (
            "{part} : démonter, vider aussi son réservoir, et ranger le tout au chaud."
        ),
        "carry in": "Vider et rentrer au chaud : {parts}.",
        "fridge filter out": "{part} : sortir la cartouche et mettre le bouchon de bypass.",
        "clear ice maker": (
            "{part} : débrancher sa conduite, laisser couler sa vanne et son tube de remplissage,"
            " et vider le moule à la main. Il ne faut pas qu'elle fasse des glaçons d'antigel."
        ),
        "maker's steps": "{part}, selon les étapes du fabricant : {steps}.",
        "run pump dry": (
            "Ouvrir : {outlet}. Faire tourner {seconds}, réservoir vide, puis arrêter : {part}."
        ),
        "empty waste tanks": "À une station de vidange, vider, rincer et refermer : {parts}.",
        "shut everything": "Tout fermer : {parts}.",
        "set bypass": "Mettre le chauffe-eau en bypass. {handles}",
        "close heater": (
            "Pas de bypass ({part}) : remettre le bouchon et rabaisser le levier de la soupape."
            " L'appareil reste vide."
        ),
        "close heater: filled": (
            "Pas de bypass ({part}) : remettre le bouchon et rabaisser le levier de la soupape."
            " L'appareil sera rempli."
        ),
        "air on": (
            "{handles} Brancher le tuyau d'air, régulateur réglé à {regulator_Pa}, pas plus :"
            " {part}."
        ),
        "blow outlet": (
            "{part} : ouvrir, souffler {blow_s} jusqu'à ce qu'il ne vienne que de la brume, fermer."
        ),
        "blow outlet: its own way": (
            "{part} ({how}) : souffler {blow_s} jusqu'à ce qu'il ne vienne que de la brume,"
            " arrêter."
        ),
        "blow outlet: never done": (
            "{part} : ouvrir. D'après le calcul, ce compresseur ne peut pas chasser l'eau de là ; à"
            " compter comme non soufflé."
        ),
        "air off": (
            "Couper l'air, ouvrir un robinet jusqu'au silence, débrancher le tuyau d'air : {part}."
        ),
        "draw from jug": "{handles} Plonger le tuyau d'antigel dans un bidon plein de {product}.",
        "draw from jug: city inlet": (
            "{handles} Brancher un tuyau court ({part}) et plonger son bout dans un bidon plein de"
            " {product}."
        ),
        "draw from jug: demand pump": (
            "{handles} À l'entrée de la pompe ({part}), débrancher la conduite du réservoir,"
            " brancher un tuyau court et plonger son bout dans un bidon plein de {product}."
        ),
        "draw from jug: strainer": (
            "{handles} Avant la pompe, à l'entrée de la crépine ({part}), débrancher la conduite du"
            " réservoir ; brancher un tuyau court et plonger son bout dans un bidon plein de"
            " {product}."
        ),
        "open diverter": "{part} : mettre de façon que l'eau tourne en rond au lieu de sortir.",
        "close diverter": "{part} : remettre comme avant.",
        "pump on": "Démarrer : {part}. Ne jamais mettre un bidon à sec.",
        "hand pump on": (
            "{handles} Brancher la pompe à main ({part}) et plonger son tuyau dans un bidon plein"
            " de {product}."
        ),
        "run outlet": (
            "{part} : ouvrir, laisser couler jusqu'à ce que la couleur reste ({colour}), puis"
            " {run_on} en plus, fermer."
        ),
        "run outlet: its own way": (
            "{part} ({how}) : laisser couler jusqu'à ce que la couleur reste ({colour}), puis"
            " {run_on} en plus, arrêter."
        ),
        "run outlet: gravity toilet": (
            "{part} : tenir la pédale enfoncée jusqu'à ce que la couleur reste ({colour}), puis"
            " {run_on} en plus, lâcher."
        ),
        "run outlet: city inlet": (
            "{part} : enlever le tamis, enfoncer le clapet avec un outil à bout arrondi jusqu'à ce"
            " que la couleur reste ({colour}), puis {run_on} en plus, lâcher, remettre le tamis."
        ),
        "run outlet: low point": (
            "{part} : un seau dessous, ouvrir, laisser couler jusqu'à ce que la couleur reste"
            " ({colour}), puis {run_on} en plus, fermer."
        ),
        "run outlet: no colour": (
            "{part} : ouvrir. D'après le calcul, la couleur ne vient pas en {volume}. Si elle ne"
            " vient pas, fermer et compter comme non rempli."
        ),
        "pump off": "Arrêter : {part}.",
        "hand pump off": "Débrancher la pompe à main : {part}.",
        "leave taps open": "Rouvrir les robinets et les laisser ouverts : {parts}.",
        "work pedal": "Appuyer une fois sur la pédale : {part}.",
        "work pedal: macerating toilet": "Tirer la chasse une fois : {part}.",
        "work pedal: cassette toilet": "Tirer la chasse une fois : {part}.",
        "loosen bowl": "Desserrer le bol d'un quart de tour : {part}.",
        "pour a cup": "{part} : y verser {cups} d'antigel.",
        "warm it": (
            "Mettre le véhicule au chaud, ou le réchauffer à l'air, placards et trappes ouverts, un"
            " jour ou deux : jusqu'à ce que le coin le plus froid soit resté des heures bien"
            " au-dessus du point de congélation."
        ),
        "let it thaw out": "Laisser s'écouler ce qui dégèle, environ {handling}.",
        "look for cracks": (
            "Regarder chaque raccord, vanne, robinet, bol et réservoir, la pompe et le chauffe-eau"
            " : fissures, bosses, gouttes. Marquer ce qui est fissuré ; ne jamais le mettre sous"
            " pression."
        ),
        "test trunk": (
            "Fermer tous les robinets et toutes les vannes d'arrêt. Mettre l'eau à {pressure_Pa},"
            " pas plus, pendant {seconds} ({part}) ; regarder chaque raccord ; relâcher la"
            " pression."
        ),
        "test branch": (
            "Ouvrir : {part}. Mettre l'eau à {pressure_Pa} pendant {seconds}, regarder tout ce qui"
            " est derrière, relâcher la pression."
        ),
        "plan anew": (
            "Réparer ce qui est fissuré, puis refaire le plan du véhicule. D'ici là, on ne sait pas"
            " ce que cela demandera."
        ),
        "take reading": (
            "Relever un gobelet du bidon et un du robinet chaud le plus éloigné, même instrument,"
            " fait pour ce produit."
        ),
        "hang tag for the night": (
            "Étiquette au robinet principal : pour cette nuit froide seulement."
        ),
        "hang tag": "Étiquette au robinet principal : nulle dès que l'eau coule.",
        "added setting": "{part} : réglage changé, en plus de ce que demande la feuille.",
        "added run": "{part} : coulée de plus, en plus de ce que demande la feuille.",
        "added pour": "{part} : antigel versé en plus.",
    }
)
"""By key of the step; "key: word" is said where the word fits: a kind, a circumstance."""

WHY: Mapping[str, str] = MappingProxyType(
    {
        "heat off": "Un chauffe-eau vide que l'on chauffe est perdu.",
        "pressure off": "Rien ne doit pousser de l'eau dans des conduites que l'on vide.",
        "open shut-off": "Ce qui est fermé ne se remplit pas.",
        "open bypass to drain": (
            "Le côté chaud n'a pas de point bas à lui : il se vide par le bypass."
        ),
        "open taps": "L'eau ne s'écoule que là où l'air peut entrer.",
        "open tank drain": "L'eau laissée dans le réservoir finit à la pompe.",
        "open handles": (
            "Une poignée en travers du tuyau retient de l'eau derrière elle, et dans sa propre"
            " bille."
        ),
        "caps off": "Derrière un bouchon, il y a de l'eau qu'aucun robinet ne laisse sortir.",
        "caps on": "Aucune bête ne doit entrer pendant l'hiver.",
        "hold open": "Rien d'autre n'ouvre le bout de sa conduite.",
        "work positions": "Chaque position isole une autre conduite, avec son eau dedans.",
        "empty bowl": "Quoi qu'on fasse couler ou souffler, un bol garde son eau.",
        "open low points": "Ce qui s'écoule ici tout seul n'est plus à chasser ensuite.",
        "open relief": "L'air entre par le haut, alors le chauffe-eau se vide par le bas.",
        "open relief: finish": "Un levier ouvert laisse à ce qui peut geler la place de gonfler.",
        "plug out": "Le chauffe-eau est vidé et en bypass : on n'y gaspille pas d'antigel.",
        "plug out: filled": "Il sera rempli : vidé d'abord, il ne prend que ce qu'il contient.",
        "let it drain": "L'eau qui reste dilue l'antigel.",
        "drain panel": (
            "Toute autre position isole la conduite de la prise d'eau, avec son eau dedans."
        ),
        "cartridge out": "Une cartouche garde de l'eau, et l'antigel l'abîme.",
        "open rinse inlet": "Le rinçage se vide tout seul une fois son entrée ouverte.",
        "take out": "Cela ne peut pas se remplir, et ce qui y reste gèle.",
        "carry in": "Ce qui pend dehors gèle en premier.",
        "fridge filter out": "Une cartouche garde de l'eau, et l'antigel l'abîme.",
        "clear ice maker": "Ce que contient une machine à glaçons finit dans un verre.",
        "maker's steps": "Le fabricant sait ce qu'il y a dedans.",
        "run pump dry": "La conduite du réservoir n'a pas d'autre moyen de se vider.",
        "empty waste tanks": "Ce qui reste dans un réservoir gèle contre sa vanne.",
        "shut everything": "La pompe remplit une sortie à la fois.",
        "set bypass": "Sinon le chauffe-eau avale l'antigel du côté chaud.",
        "close heater": "Sinon tout sort par son bouchon ouvert.",
        "close heater: filled": "Sinon l'antigel s'en écoule.",
        "air on": "L'air chasse ce qui ne s'écoule pas tout seul.",
        "blow outlet": (
            "Seul le chemin vers l'unique sortie ouverte a de l'air assez rapide pour emporter"
            " l'eau."
        ),
        "air off": "Rien ne doit être sous pression quand on ouvre les bols.",
        "draw from jug": "La pompe doit aspirer dans le bidon et nulle part ailleurs.",
        "open diverter": "Ses deux conduites courtes ne se remplissent que dans cette position.",
        "close diverter": "Comme à l'usage.",
        "pump on": "Elle remplit les conduites et tient la pression d'une sortie à la suivante.",
        "hand pump on": (
            "Elle pousse l'antigel à chaque sortie, là où la pompe du véhicule ne peut pas tourner."
        ),
        "run outlet": (
            "La première couleur est encore faible ; le temps en plus rend la conduite assez"
            " concentrée."
        ),
        "pump off": "On ouvre ensuite les robinets ; rien ne doit suivre.",
        "hand pump off": "On ouvre ensuite les robinets ; rien ne doit suivre.",
        "leave taps open": "Un robinet ouvert laisse à la bouillie glacée la place de gonfler.",
        "work pedal": "Cela détend la pression dans la vanne, qui se referme toute seule.",
        "loosen bowl": "Un bol desserré laisse à son contenu la place de gonfler.",
        "pour a cup": "Ce qui y est venu des robinets est trop dilué pour s'y fier.",
        "warm it": "La pression sur la glace fait éclater ce que la glace a épargné.",
        "let it thaw out": "Ce qui a dégelé ne doit pas regeler.",
        "look for cracks": "Une fissure se voit à sec ; avec l'eau, on la voit trop tard.",
        "test trunk": "Un peu de pression trouve la fissure ; la pleine pression en fait un dégât.",
        "test branch": "Une section à la fois : on sait où cela fuit.",
        "plan anew": (
            "Personne ne peut répondre d'un véhicule qui a gelé avant qu'il ait tenu la pression."
        ),
        "take reading": "Un chiffre en dit plus qu'une couleur.",
        "hang tag for the night": "Un sursis a une fin ; le suivant doit savoir quand.",
        "hang tag": "Qui ouvre un robinet en hiver doit savoir ce qu'il défait.",
        "added setting": "Fait à l'atelier ; la preuve en tient compte.",
        "added run": "Fait à l'atelier ; la preuve en tient compte.",
        "added pour": "Fait à l'atelier ; la preuve en tient compte.",
    }
)
"""By key of the step: one short sentence."""

HOW_TO_OPEN: Mapping[str, str] = MappingProxyType(
    {
        "gravity toilet": "pédale enfoncée",
        "vacuum toilet": "pédale enfoncée",
        "macerating toilet": "tirer la chasse plusieurs fois de suite",
        "cassette toilet": "tenir la chasse",
        "bidet sprayer": "tenir la gâchette, au-dessus de la cuvette",
        "spray port": "douchette branchée, gâchette bloquée",
        "washer: hot": "lancer le remplissage, eau chaude",
        "washer: cold": "lancer le remplissage, eau froide",
        "dishwasher": "lancer le remplissage",
        "ice maker": "débrancher la conduite et la tenir dans un gobelet",
        "door dispenser": "tenir le levier, un verre dessous",
        "membrane filter": "conduite débranchée, dans un seau",
        "capped tee": "bouchon enlevé, un seau dessous",
        "prepared stub": "bouchon enlevé, un seau dessous",
        "outside shower": "gâchette bloquée",
        "outside kitchen": "gâchette bloquée",
        "city inlet": "tamis enlevé ; clapet enfoncé, outil arrondi",
        "low point": "un seau dessous",
    }
)
"""How outlets are opened that have no handle to turn, as a note in a table.

By kind; "kind: side" is said where the side needs words of its own.
"""

PHASES: Mapping[str, str] = MappingProxyType(
    {
        "make safe": "Mettre en sécurité",
        "thaw": "Dégeler",
        "drain": "Vidanger",
        "test": "Essayer, une section à la fois",
        "set": "Régler les poignées",
        "blow": "Souffler, une sortie à la fois",
        "fill": "Remplir, une sortie à la fois",
        "finish": "Finir",
    }
)

PHRASES: Mapping[str, str] = MappingProxyType(
    {
        "handles across": "Poignée en travers du tuyau (fermé) : {parts}.",
        "handles along": "Poignée dans l'axe du tuyau (ouvert) : {parts}.",
        "left full": (
            "Pas de bypass : laissé plein, le chauffe-eau prendrait environ {left_full_m3}"
            " d'antigel et garderait encore {share} d'eau ; vidé, il prend {own_m3}, ce qu'il"
            " contient."
        ),
        "shared hose": "seule compte celle qui reste",
        "note": "({note})",
        "reach": "{part} : {how}",
        "behind": "derrière : {panel}",
        "picture": "voir {photo}",
        "screws one": "1 vis",
        "screws many": "{count} vis",
        "notes": "{first} ; {last}",
        "colour at once": "tout de suite",
        "colour about": "env. {time}",
        "never": "pas attendue",
        "share under": "moins de {share}",
        "per cent": "{number} %",
        "thousands": "\N{NARROW NO-BREAK SPACE}",
        "and": "{first} et {last}",
        "and: i": "{first} et {last}",
        "and: hi": "{first} et {last}",
        "and: hie": "{first} et {last}",
        "comma": ", ",
        "semicolon": " ; ",
        "more": "{parts}, et {count} de plus",
        "cups one": "1 tasse",
        "cups many": "{count} tasses",
        "handles named": "{part} : mettre sur {position}.",
        "jugs one": "1 bidon",
        "jugs many": "{count} bidons",
        "parts one": "1 élément",
        "parts many": "{count} éléments",
        "water ran at": "De l'eau a coulé depuis : {parts}.",
        "water stands in": "De l'eau a été versée depuis : {parts}.",
        "void are": "Sans valeur : ce qui était dit de {count}.",
        "as it stands": "En l'état : {verdict} Le plan ci-dessous y remédie.",
        "holds": (
            "Tient {time} à {low} dès la première minute, en partant de {start}, et pas plus. Cède"
            " en premier : {part}."
        ),
        "holds on": "Plus rien ne gèle avec dommage à {low} : ce sursis n'a pas de fin.",
        "bring nothing": "Pas besoin d'antigel.",
        "bring": "Apporter {jugs} de {size} de {product}.",
        "bring and have one": "Apporter {jugs} de {size} de {product}, plus 1 en réserve.",
        "bring and have more": "Apporter {jugs} de {size} de {product}, plus {spare} en réserve.",
        "minutes": "Environ {time} de travail.",
        "minutes: thaw": (
            "Un jour ou deux pour dégeler, et environ {time} de travail ; la suite reste ouverte."
        ),
        "held in": (
            "Tient dans {held} tirages sur {draws} de ce que la fiche laisse ouvert ; le plus"
            " faible : {part}, dans {share}."
        ),
        "used": (
            "Environ {volume} de {product} et {time} de travail, calculés d'après le compte rendu."
        ),
        "not done one": "Étape {steps} non faite : la faire maintenant, puis refaire la preuve.",
        "not done many": (
            "Étapes {steps} non faites : les faire maintenant, puis refaire la preuve."
        ),
        "some done": "{done} sur {all}",
    }
)
"""Pieces of sentences, and ways to count."""
