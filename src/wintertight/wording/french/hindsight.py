"""French: what a record tells beyond what it says, and how sure that is.

Pieces of sentences do not begin with a capital letter or end in a stop; ``PIECES`` puts them
together.
"""

from collections.abc import Mapping
from types import MappingProxyType

CAUSES: Mapping[str, str] = MappingProxyType(
    {
        "as recorded": (
            "ce qui a été chronométré, compté et relevé va avec un travail fait comme au compte"
            " rendu"
        ),
        "forgotten outlet": "une sortie cochée, et qui n'a sans doute jamais coulé ({part})",
        "longer line": (
            "une conduite qui contient plus que ne le dit la fiche ({part}) : moitié plus, ou"
            " jusqu'à plus du double"
        ),
        "water run since": "de l'eau qui a coulé depuis le remplissage ({part})",
        "something else": (
            "autre chose, que l'on ne connaît pas ici : aucune cause de la liste ne va"
        ),
    }
)
"""What probably happened, where no wrong setting has words for it."""

SHORT: Mapping[str, str] = MappingProxyType(
    {
        "as recorded": "le travail comme au compte rendu",
        "wrong bypass": "un chauffe-eau qui n'est pas en bypass",
        "inlet half open": "de l'eau aspirée avec l'antigel",
        "crossover": "le chaud et le froid qui se mélangent",
        "low point open": "un point bas resté ouvert",
        "suction leak": "de l'air aspiré par la pompe",
        "jug dry": "un bidon qui s'est vidé",
        "weak product": "un antigel faible ou le mauvais antigel",
        "filter left in": "une cartouche restée en place",
        "branch shut": "une branche restée fermée",
        "failed check": "un clapet anti-retour qui laisse revenir l'eau",
        "forgotten outlet": "une sortie cochée sans avoir coulé",
        "longer line": "une conduite plus longue que sur la fiche",
        "water run since": "de l'eau qui a coulé depuis",
        "something else": "autre chose, que l'on ne connaît pas ici",
    }
)
"""What each cause is called in passing."""

SIGHTS: Mapping[str, str] = MappingProxyType(
    {
        "colour": "couleur {value} ({outlet})",
        "run on": "temps en plus : {value} ({outlet})",
        "jugs": "{value} partis des bidons",
        "strength": "{value} de ce que dit l'étiquette dans un gobelet ({outlet})",
        "beside the jug": "{value} de la force du bidon dans un gobelet ({outlet})",
        "strength: jug": "{value} de ce que dit l'étiquette dans le bidon lui-même",
        "none": "pas de couleur ({outlet})",
        "untimed": "aucun temps noté là où il en fallait un ({outlet})",
        "as recorded": "{seen}, attendu {expected} selon le compte rendu",
        "and if so": "{seen}, attendu {expected} selon le compte rendu, {if_so} dans ce cas-ci",
        "nothing expected": "{seen}, rien n'est attendu selon le compte rendu",
        "after": "après {time}",
        "at once": "tout de suite",
        "none expected": "rien",
    }
)
"""What was observed, and what was to be expected."""

PIECES: Mapping[str, str] = MappingProxyType(
    {
        "heading": "Ce que disent chronomètre, bidons et gobelets",
        "fits": "Tout va ensemble : {cause} ({fits}).",
        "speaks for": "Ils penchent pour ceci : {cause} ({fits}).",
        "then": "Ensuite, le plus vraisemblable : {cause} ({fits}).",
        "strange": "Étrange : {sights}.",
        "cup": (
            "Pour trancher : un gobelet pris ici : {outlet}. S'il a {here} de la force du bidon,"
            " c'est la première cause ; s'il en a {there}, la seconde."
        ),
        "look": "Pour trancher : regarder ceci : {part}.",
        "eyes": (
            "Pour trancher : plus rien ne peut se relever ; refaire le tour du véhicule étape par"
            " étape."
        ),
        "cure": "Si c'est le cas : {settle}.",
        "cure: weak product": (
            "Si c'est le cas : refaire couler chaque sortie avec un produit dont on a fait le"
            " relevé dans un gobelet du bidon."
        ),
        "cure: forgotten outlet": (
            "Si c'est le cas : la faire couler comme le dit la feuille, puis refaire les suivantes."
        ),
        "cure: longer line": (
            "Si c'est le cas : faire couler plus longtemps à ses sorties, et inscrire sa longueur"
            " sur la fiche."
        ),
        "cure: water run since": "Si c'est le cas : refaire couler de l'antigel dedans.",
        "cure: something else": "Alors prendre un gobelet à chaque robinet, et le geler.",
        "learned heading": "Ce que ce véhicule nous apprend",
        "learned heading many": "Ce que ce véhicule nous apprend en {count} visites",
        "next time": (
            "La prochaine fois, il faut {low} à {high} d'antigel ; la fiche seule disait {was}."
        ),
        "taught": (
            "D'après les visites d'avant, il faut {low} à {high} d'antigel ; la fiche seule disait"
            " {was}."
        ),
        "not taught": (
            "Les visites d'avant n'apprennent rien ici : elles ne vont avec aucun travail fait"
            " comme au compte rendu."
        ),
        "habit": "Ici, le temps en plus fait {percent} de ce que demande la feuille.",
        "line": "Conduite ({part}) : {low} à {high} ; la fiche seule disait {was}.",
        "range": "{low} à {high}",
        "not here": (
            "Pas sur ce véhicule, d'après le compte rendu : {parts}. Ôté de la fiche pour cette"
            " preuve ; l'y inscrire."
        ),
        "still here": (
            "Le compte rendu dit que ce n'est pas sur ce véhicule : {parts}. D'autres éléments sont"
            " alimentés par là sur la fiche ; cela y reste donc, et compte comme non fait. Inscrire"
            " ce qu'il y a vraiment."
        ),
        "given less weight": "Compte moins, car cela ne va avec rien d'autre : {sights}.",
    }
)
"""How the pieces are put together."""

WHY_NONE: Mapping[str, str] = MappingProxyType(
    {
        "nothing observed": (
            "rien n'a été chronométré, compté ni relevé, alors le compte rendu n'en dit pas plus"
            " qu'il n'en dit"
        ),
        "left out": "laissé de côté, comme demandé",
        "not as recorded": (
            "cela ne semble pas s'être passé comme au compte rendu, et n'apprend donc rien"
        ),
    }
)
"""Why nothing can be said."""
